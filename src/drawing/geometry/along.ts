/**
 * Where everything stands from left to right, in pixels. Parts keep their true widths at one scale; only the neck's
 * run between pot and condenser gives way: where its true length would overlap the parts or leave one lost at the far
 * end, the run is stretched or shortened and drawn with a break across it.
 */
import { bisect } from '../../../sim/index.ts';
import type { Heights } from './heights.ts';
import { GLASS_WALL, insulationWidth, TUB_WALL, wallWidth } from './line-weights.ts';
import type { CoilSize, StraightSize, TrueSizes, VesselSize } from './true-sizes.ts';

/** How a still is drawn: from left to right, or upright on a narrow sheet with the jug under the condenser. */
export type Arrangement = 'along' | 'upright';

export interface PotGroup {
  /** Centres and edges from the group's own left edge. */
  readonly cabinet: number | null;
  readonly boiler: number | null;
  readonly pot: number;
  /** Right edge of the pot. */
  readonly potRight: number;
  readonly width: number;
}

export interface CondenserGroup {
  readonly inlet: number;
  /** Left and right edge of tub or tube. */
  readonly left: number;
  readonly right: number;
  readonly separator: number;
  readonly jug: number;
  readonly barrel: number | null;
  readonly width: number;
}

export interface Along {
  readonly pot: PotGroup;
  readonly condenser: CondenserGroup;
  /** Pixels from the drawing's left edge to the left edge of each group. */
  readonly potX: number;
  readonly condenserX: number;
  readonly neck: 'true' | 'stretched' | 'shortened';
}

/** Room that pipes, taps and people's eyes need whatever the scale, px. */
const PIPE_GAP: Readonly<Record<Arrangement, number>> = { along: 52, upright: 28 };
const TAP_GAP: Readonly<Record<Arrangement, number>> = { along: 104, upright: 66 };
const TERMINAL = 26;
const BARE_GAP: Readonly<Record<Arrangement, number>> = { along: 40, upright: 24 };
const OVERFLOW_HOSE = 22;
const TAIL_GAP = 18;
const UPRIGHT_TAIL_GAP = 8;
const LEG_GAP = 10;
const SPILL = 16;
const BARREL_GAP: Readonly<Record<Arrangement, number>> = { along: 100, upright: 16 };
const UPRIGHT_TAP = 92;
const UPRIGHT_BARE = 34;

export const CABINET_SHARE = 0.62;

export const vesselOuter = (size: VesselSize, s: number): number =>
  size.diameter_m * s + 2 * (wallWidth(size.wall_m, s) + insulationWidth(size.insulation_m, s));

/** A source reaches a little beyond the vessel it carries. */
export const SOURCE_OVERHANG = 1.14;

const footprint = (size: VesselSize, s: number): number =>
  Math.max(vesselOuter(size, s), SOURCE_OVERHANG * size.diameter_m * s);

export const cabinetWidth = (sizes: TrueSizes, s: number): number =>
  Math.max(34, CABINET_SHARE * sizes.pot.diameter_m * s);

/** A heating element's terminals stand out from the vessel on the left. */
const terminals = ({ heat, boiler }: TrueSizes): number =>
  heat.kind === 'immersion-element' || (heat.kind === 'steam-generator' && boiler) ? TERMINAL : 0;

export function potGroup(sizes: TrueSizes, s: number, arrangement: Arrangement): PotGroup {
  const lead = terminals(sizes);
  const pot = footprint(sizes.pot, s);
  const outer = vesselOuter(sizes.pot, s);
  if (sizes.boiler) {
    const boiler = lead + footprint(sizes.boiler, s);
    const centre = boiler + PIPE_GAP[arrangement] + outer / 2;
    return {
      cabinet: null,
      boiler: (lead + boiler) / 2,
      pot: centre,
      potRight: centre + outer / 2,
      width: centre + outer / 2,
    };
  }
  if (sizes.heat.kind === 'steam-generator') {
    const cabinet = cabinetWidth(sizes, s);
    const centre = cabinet + PIPE_GAP[arrangement] + outer / 2;
    return { cabinet: cabinet / 2, boiler: null, pot: centre, potRight: centre + outer / 2, width: centre + outer / 2 };
  }
  return { cabinet: null, boiler: null, pot: lead + pot / 2, potRight: lead + (pot + outer) / 2, width: lead + pot };
}

/** Coil diameter as drawn: a coil wider than its tub is drawn touching the wall. */
export const drawnCoil = (coil: CoilSize, tubDiameter: number): number =>
  Math.min(coil.coil_m, tubDiameter - coil.tube_m);

interface Reach {
  readonly inlet: number;
  readonly left: number;
  readonly right: number;
  readonly separator: number;
}

function coilReach(sizes: TrueSizes, coil: CoilSize, s: number, tail: number): Reach {
  const diameter = sizes.tub?.diameter_m ?? coil.coil_m * 1.2;
  const outer = diameter * s + 2 * TUB_WALL;
  const right = outer + (sizes.flowing ? OVERFLOW_HOSE : 0);
  const separator = sizes.separator.bore_m * s + 2 * GLASS_WALL;
  return {
    inlet: outer / 2 - (drawnCoil(coil, diameter) * s) / 2,
    left: 0,
    right: outer,
    separator: right + tail + separator / 2,
  };
}

function straightReach(sizes: TrueSizes, tube: StraightSize, drawn: number, s: number): Reach {
  const half = (sizes.separator.bore_m * s) / 2 + GLASS_WALL;
  if (tube.upright) {
    const tapped = sizes.tub ? UPRIGHT_BARE : UPRIGHT_TAP;
    const centre = Math.max(tapped, half + 16) + (tube.jacket_m * s) / 2;
    return { inlet: centre, left: 0, right: centre + (tube.jacket_m * s) / 2 + 16, separator: centre };
  }
  const across = drawn * Math.cos(tube.slope_rad) * s;
  const end = across + Math.max(12, tube.tube_m * s);
  const push = Math.max(0, half - end);
  return { inlet: push, left: 0, right: push + across, separator: push + end };
}

/** Whether the jug stands under the condenser, left of the separator. */
export const isTucked = ({ condenser }: TrueSizes, arrangement: Arrangement): boolean =>
  arrangement === 'upright' && (condenser.kind === 'coil' || !condenser.upright);

/** @param tailRoom spare pixels between tub and separator, for words */
export function condenserGroup(
  sizes: TrueSizes,
  tubeDrawn: number,
  s: number,
  tailRoom: number,
  arrangement: Arrangement,
): CondenserGroup {
  const { condenser, separator, jug, tub } = sizes;
  const tail = arrangement === 'upright' ? UPRIGHT_TAIL_GAP : TAIL_GAP + tailRoom;
  const reach =
    condenser.kind === 'coil' ? coilReach(sizes, condenser, s, tail) : straightReach(sizes, condenser, tubeDrawn, s);
  const half = (separator.bore_m * s) / 2 + GLASS_WALL;
  const jugWidth = jug.diameter_m * s + 2 * GLASS_WALL;
  const aside = half + LEG_GAP + SPILL + jugWidth / 2;
  const tucked = isTucked(sizes, arrangement);
  const jugCentre = tucked ? reach.separator - aside : reach.separator + aside;
  // A wide jug under a narrow condenser pushes everything right.
  const push = Math.max(0, jugWidth / 2 - jugCentre);
  const end = Math.max(jugCentre + jugWidth / 2, reach.separator + half, reach.right) + push;
  const barrelled = condenser.kind === 'straight' && tub !== null;
  const barrelWidth = barrelled ? tub.diameter_m * s + 2 * TUB_WALL : 0;
  const barrelLeft = end + BARREL_GAP[arrangement];
  return {
    inlet: reach.inlet + push,
    left: reach.left + push,
    right: reach.right + push,
    separator: reach.separator + push,
    jug: jugCentre + push,
    barrel: barrelled ? barrelLeft + barrelWidth / 2 : null,
    width: barrelled ? barrelLeft + barrelWidth : end,
  };
}

const tapInGap = (sizes: TrueSizes): boolean => sizes.condenser.kind === 'coil' && sizes.flowing;

/** Spare pixels for words: between tub and separator, and right of the pot. */
export interface WordRoom {
  readonly tail: number;
  readonly besidePot: number;
}

/** How much farther than the nearest the condenser may stand, as a share of the parts' widths. */
const FARTHEST: Readonly<Record<Arrangement, number>> = { along: 0.55, upright: 0.12 };

/** Both groups on one floor, joined by the neck; widths only, from the pot group's left edge. */
export function joinedAlong(
  sizes: TrueSizes,
  heights: Heights,
  tubeDrawn: number,
  s: number,
  room: WordRoom,
  arrangement: Arrangement,
): Along & { readonly width: number } {
  const pot = potGroup(sizes, s, arrangement);
  const condenser = condenserGroup(sizes, tubeDrawn, s, room.tail, arrangement);
  const trueX = pot.pot + (heights.riseAcross + heights.fallAcross) * s - condenser.inlet;
  const nearest = pot.width + Math.max(room.besidePot, (tapInGap(sizes) ? TAP_GAP : BARE_GAP)[arrangement]);
  const farthest = nearest + FARTHEST[arrangement] * (pot.width + condenser.width);
  const condenserX = Math.min(farthest, Math.max(nearest, trueX));
  const neck = trueX < nearest - 1 ? 'stretched' : trueX > farthest + 1 ? 'shortened' : 'true';
  return { pot, condenser, potX: 0, condenserX, neck, width: condenserX + condenser.width };
}

/** A tube on a narrow sheet is drawn at most so many times as long as the pot is large. */
const UPRIGHT_TUBE = 2;

/** Tubes longer than this would dwarf the pot; they are drawn this long with a break. */
export function tubeDrawn(sizes: TrueSizes, arrangement: Arrangement): number {
  const tube = sizes.condenser;
  if (tube.kind === 'coil') return 0;
  const body = Math.max(sizes.pot.height_m, sizes.pot.diameter_m);
  const most = tube.upright ? Math.max(1.2, 3 * body) : Math.max(3, 6 * body);
  return Math.min(tube.length_m, arrangement === 'upright' ? Math.min(most, UPRIGHT_TUBE * body) : most);
}

/** The greatest scale, at most `most`, at which `widthAt(scale)` fits; widths grow with the scale. */
export function greatestScale(widthAt: (scale: number) => number, room: number, most: number): number {
  if (widthAt(most) <= room) return most;
  return bisect((scale) => widthAt(scale) <= room, 0, most, 40).low;
}
