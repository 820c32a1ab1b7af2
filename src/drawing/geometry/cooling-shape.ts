/** Cooling water in pixels: the tub or barrel, the way in, the way out. */
import type { Scenario } from '../../../sim/index.ts';
import type { Arrangement } from './along.ts';
import type { CondenserShape } from './condenser-shape.ts';
import { TUB_WALL } from './line-weights.ts';
import { bottom, boxesAlong, right, roundCorners, subdivide, type Box, type Point } from './shapes.ts';

export interface TubShape {
  /** Inside up to the overflow: where water can stand. */
  readonly water: Box;
  readonly rimY: number;
  readonly outer: Box;
  readonly pxPerMetre: number;
}

export interface CoolingShape {
  readonly tub: TubShape | null;
  readonly supply: readonly Point[];
  /** Holes of a perforated pipe on the bottom. */
  readonly holes: readonly Point[];
  /** Where what comes in mixes the tub: up from its bottom or down from its surface. */
  readonly mixes: 'upward' | 'downward';
  readonly drain: readonly Point[];
  /** A tap at the beginning of the supply, or a pump in a barrel. */
  readonly source: 'tap' | 'pump' | null;
  /** Where the drain ends at the floor; null when it runs back to a barrel. */
  readonly gully: Point | null;
  readonly box: Box;
}

export const tubShape = (
  centreX: number,
  overflowY: number,
  baseY: number,
  inside: number,
  freeboard: number,
  pxPerMetre: number,
): TubShape => {
  const water = {
    x: centreX - inside / 2,
    y: overflowY,
    width: inside,
    height: Math.max(2, baseY - TUB_WALL - overflowY),
  };
  const rimY = overflowY - Math.max(5, freeboard);
  return {
    water,
    rimY,
    outer: { x: water.x - TUB_WALL, y: rimY, width: inside + 2 * TUB_WALL, height: baseY - rimY },
    pxPerMetre,
  };
};

const HOSE_CORNER = 9;
/** From the tub's wall to the tap, px. */
const TAP_AWAY: Readonly<Record<Arrangement, number>> = { along: 62, upright: 38 };

type Inlet = Scenario['cooling']['inlet'];

/** Share of the tub's width at which a hose on the bottom ends. */
const LAID_END = 0.3;
const HOLES_DRAWN = 7;

/** The hose inside the tub, from where it enters, to its end. */
function hoseIn({ water, outer, rimY }: TubShape, inlet: Inlet, foot: number): readonly Point[] {
  const across = (share: number): number => water.x + share * water.width;
  switch (inlet) {
    case 'laid':
      return [{ x: across(LAID_END), y: foot }];
    case 'pointing-up':
      return [
        { x: across(0.5), y: foot },
        { x: across(0.5), y: foot - Math.min(16, 0.12 * water.height) },
      ];
    case 'perforated':
      return [{ x: across(0.95), y: foot }];
    case 'top': {
      const over = Math.min(rimY, outer.y) - 9;
      const drop = across(0) + Math.min(12, 0.1 * water.width);
      return [
        { x: drop, y: over },
        { x: drop, y: water.y + 2 },
      ];
    }
  }
}

/** A coil's tub: water in from a tap standing left of it, over the brim to a gully on the right. */
export function tubCooling(tub: TubShape, inlet: Inlet | null, floorY: number, arrangement: Arrangement): CoolingShape {
  const mixes = inlet === 'top' ? 'downward' : 'upward';
  if (inlet === null)
    return { tub, supply: [], holes: [], mixes, drain: [], source: null, gully: null, box: tub.outer };
  const low = bottom(tub.water) - Math.min(6, 0.05 * tub.water.height);
  const inside = hoseIn(tub, inlet, low);
  const foot = (inside[0] as Point).y;
  const away = TAP_AWAY[arrangement];
  const tapX = tub.outer.x - away;
  const tapY = Math.min(low, floorY - 26);
  const hoseX = right(tub.outer) + 13;
  const supply = roundCorners(
    [{ x: tapX, y: tapY }, { x: tapX + 0.42 * away, y: tapY }, { x: tapX + 0.42 * away, y: foot }, ...inside],
    HOSE_CORNER,
  );
  const holes =
    inlet === 'perforated'
      ? Array.from({ length: HOLES_DRAWN }, (_, k) => ({
          x: tub.water.x + ((k + 1) / (HOLES_DRAWN + 1)) * 0.95 * tub.water.width,
          y: foot - 2,
        }))
      : [];
  const lip = tub.water.y + 2;
  const drain = roundCorners(
    [
      { x: right(tub.water) - 1, y: lip },
      { x: hoseX, y: lip + 2 },
      { x: hoseX, y: floorY - 2 },
    ],
    HOSE_CORNER,
  );
  return {
    tub,
    supply,
    holes,
    mixes,
    drain,
    source: 'tap',
    gully: { x: hoseX, y: floorY },
    box: { x: tapX - 12, y: tub.outer.y, width: hoseX + 8 - (tapX - 12), height: floorY - tub.outer.y },
  };
}

interface JacketPlace {
  readonly condenser: CondenserShape;
  readonly counterflow: boolean;
  readonly upright: boolean;
  readonly floorY: number;
}

const nozzlesOf = ({ condenser, counterflow }: JacketPlace) => {
  const [vapourEnd, outletEnd] = condenser.nozzles as readonly [
    CondenserShape['nozzles'][number],
    CondenserShape['nozzles'][number],
  ];
  return counterflow ? { inlet: outletEnd, outlet: vapourEnd } : { inlet: vapourEnd, outlet: outletEnd };
};

/** Under a very small still a hose would sag below the floor; it lies on it instead. */
const aboveFloor = (points: readonly Point[], floorY: number): Point[] =>
  points.map(({ x, y }) => ({ x, y: Math.min(y, floorY - 4) }));

/** A jacket on the tap: water comes from a tap near the floor and runs off into a gully. */
export function tapCooling(place: JacketPlace): CoolingShape {
  const { inlet, outlet } = nozzlesOf(place);
  const { floorY } = place;
  const nozzleLeft = Math.min(inlet.away.x, outlet.away.x);
  const inletLower = inlet.at.y > outlet.at.y;
  let tap: Point;
  let gully: Point;
  let supply: Point[];
  let drain: Point[];
  if (place.upright) {
    const near = nozzleLeft - 14;
    const far = nozzleLeft - 52;
    const tapX = inletLower ? near : far;
    tap = { x: tapX, y: floorY - 28 };
    gully = { x: inletLower ? far : near, y: floorY };
    supply = [tap, { x: tapX, y: inlet.away.y }, inlet.away, inlet.at];
    drain = [outlet.at, outlet.away, { x: gully.x, y: outlet.away.y }, { x: gully.x, y: floorY - 2 }];
  } else {
    const reach = Math.abs(inlet.at.x - outlet.at.x);
    const aside = Math.min(40, Math.max(14, 0.3 * reach));
    const inward = inlet.at.x > outlet.at.x ? -1 : 1;
    tap = { x: inlet.at.x + inward * aside, y: floorY - 28 };
    gully = { x: outlet.at.x - inward * Math.min(24, 0.25 * reach), y: floorY };
    supply = [
      tap,
      { x: tap.x, y: Math.min(tap.y, inlet.away.y + 6) },
      { x: inlet.away.x, y: inlet.away.y + 6 },
      inlet.at,
    ];
    drain = [
      outlet.at,
      { x: outlet.at.x, y: outlet.away.y - 4 },
      { x: gully.x, y: outlet.away.y - 4 },
      { x: gully.x, y: floorY - 2 },
    ];
  }
  const x = Math.min(tap.x, gully.x) - 14;
  const y = Math.min(tap.y - 24, floorY - 60);
  return {
    tub: null,
    supply: roundCorners(aboveFloor(supply, floorY), HOSE_CORNER),
    holes: [],
    mixes: 'upward',
    drain: roundCorners(aboveFloor(drain, floorY), HOSE_CORNER),
    source: 'tap',
    gully,
    box: { x, y, width: Math.abs(tap.x - gully.x) + 28, height: floorY - y },
  };
}

/** A jacket on a barrel: a pump in the barrel, one hose there and one back. */
export function barrelCooling(place: JacketPlace, barrel: TubShape): CoolingShape {
  const { inlet, outlet } = nozzlesOf(place);
  const over = Math.min(barrel.rimY - 12, Math.max(inlet.away.y, outlet.away.y) + 4);
  const pumpX = barrel.water.x + 0.3 * barrel.water.width;
  const backX = barrel.water.x + 0.7 * barrel.water.width;
  const pump = { x: pumpX, y: bottom(barrel.water) - Math.min(16, 0.12 * barrel.water.height) };
  const topOf = (end: { readonly away: Point }, x: number, lane: number): Point[] => {
    const lie = Math.min(over - lane, end.away.y);
    return [{ x, y: lie }, { x: end.away.x, y: lie }, end.away];
  };
  const lower = inlet.at.y > outlet.at.y;
  const supply = [pump, ...topOf(inlet, pumpX, lower ? 0 : 10), inlet.at];
  const back = [...topOf(outlet, backX, lower ? 10 : 0)].reverse();
  const drain = [outlet.at, ...back, { x: backX, y: barrel.water.y + 6 }];
  return {
    tub: barrel,
    supply: roundCorners(supply, HOSE_CORNER),
    holes: [],
    mixes: 'upward',
    drain: roundCorners(drain, HOSE_CORNER),
    source: 'pump',
    gully: null,
    box: barrel.outer,
  };
}

export const coolingBoxes = (cooling: CoolingShape): Box[] => [
  ...(cooling.tub ? [cooling.tub.outer] : []),
  ...boxesAlong(subdivide(cooling.supply, 30), 8),
  ...boxesAlong(subdivide(cooling.drain, 30), 8),
  ...(cooling.source === 'tap' && cooling.supply[0]
    ? [{ x: cooling.supply[0].x - 12, y: cooling.supply[0].y - 16, width: 24, height: 34 }]
    : []),
];
