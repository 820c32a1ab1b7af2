/** The condenser tube in pixels: coil or straight, as runs along which vapour and liquid can be shown. */
import { drawnCoil } from './along.ts';
import { coilEnd } from './heights.ts';
import { tubeWidth } from './line-weights.ts';
import { boxOf, boxesAlong, cutPath, pathThrough, subdivide, type Box, type Frame, type Point } from './shapes.ts';
import type { CoilSize, StraightSize, TubSize } from './true-sizes.ts';

/** A visible piece of tube that covers the cooled length from one share to another. */
export interface TubeRun {
  readonly points: readonly Point[];
  readonly from: number;
  readonly to: number;
}

export interface CondenserShape {
  readonly kind: 'coil' | 'straight';
  readonly tubeWidth: number;
  /** In front, from the vapour end. */
  readonly runs: readonly TubeRun[];
  /** Hidden halves of the turns. */
  readonly behind: readonly (readonly Point[])[];
  /** From the neck down to the first turn; empty for a straight tube. */
  readonly feed: readonly Point[];
  /** From the last turn or the tube's end to the tip from which it drips. */
  readonly tail: readonly Point[];
  readonly box: Box;
  /** Jacket of a straight condenser with its heads, closed outline. */
  readonly jacket: readonly Point[];
  /** Half the jacket's bore as drawn; zero for a coil. */
  readonly jacketHalf: number;
  /** Nozzles on the jacket: at the vapour end and at the outlet end, with the direction they point. */
  readonly nozzles: readonly { readonly at: Point; readonly away: Point }[];
  /** Where a tube too long to draw whole is broken. */
  readonly breakAt: Point | null;
  readonly axis: { readonly dx: number; readonly dy: number };
}

const HALF_TURN_STEPS = 20;
/** Turns closer than this are drawn at this pitch, fewer than there are. */
const CLOSEST_PITCH = 3.5;

/** Points of half a turn from left to right (front) or right to left (behind), descending half a pitch. */
function halfTurn(
  centreX: number,
  radius: number,
  lift: number,
  top: number,
  fall: number,
  front: boolean,
  share: number,
): Point[] {
  const steps = Math.max(2, Math.ceil(HALF_TURN_STEPS * share));
  return Array.from({ length: steps + 1 }, (_, index) => {
    const part = (share * index) / steps;
    const angle = Math.PI * part;
    const side = front ? -1 : 1;
    return {
      x: centreX + side * radius * Math.cos(angle),
      y: top + fall * part + (front ? lift : -lift) * Math.sin(angle),
    };
  });
}

export interface CoilPlace {
  readonly centreX: number;
  /** Water surface at the overflow. */
  readonly overflowY: number;
  readonly tubBaseY: number;
  readonly inletTop: Point;
  readonly tip: Point;
}

/** A coil that reaches deeper than its tub is drawn squeezed into it. */
export function coilShape(coil: CoilSize, tub: TubSize, frame: Frame, place: CoilPlace): CondenserShape {
  const s = frame.pxPerMetre;
  const width = tubeWidth(coil.tube_m, s);
  const radius = (drawnCoil(coil, tub.diameter_m) * s) / 2;
  const topY = Math.min(place.overflowY + coil.topDepth_m * s, place.tubBaseY - 2 * width);
  const endY = Math.min(
    Math.max(place.tubBaseY - coilEnd(coil, tub.height_m) * s, topY + 1),
    place.tubBaseY - width / 2 - 1,
  );
  const turns = Math.min(Math.max(coil.turns, 0.05), Math.max(1, (endY - topY) / CLOSEST_PITCH));
  const pitch = (endY - topY) / turns;
  const lift = Math.min(0.14 * radius, Math.max(1.5, 0.3 * pitch));
  const runs: TubeRun[] = [];
  const behind: Point[][] = [];
  for (let turn = 0; turn < turns; turn++) {
    const left = turns - turn;
    const top = topY + turn * pitch;
    runs.push({
      points: halfTurn(place.centreX, radius, lift, top, pitch / 2, true, Math.min(1, left / 0.5)),
      from: turn / turns,
      to: Math.min(1, (turn + 0.5) / turns),
    });
    if (left > 0.5)
      behind.push(
        halfTurn(place.centreX, radius, lift, top + pitch / 2, pitch / 2, false, Math.min(1, (left - 0.5) / 0.5)),
      );
  }
  const lastFront = runs[runs.length - 1]?.points ?? [];
  const lastBehind = behind[behind.length - 1] ?? [];
  const endsBehind = behind.length === runs.length;
  const end = (endsBehind ? lastBehind[lastBehind.length - 1] : lastFront[lastFront.length - 1]) ?? {
    x: place.centreX,
    y: endY,
  };
  const first = { x: place.centreX - radius, y: topY };
  const outside = { x: place.tip.x, y: Math.min(end.y + 0.1 * (place.tip.x - end.x), place.tip.y - width) };
  const edge = place.centreX + radius + width / 2;
  const hidden = endsBehind && end.x < edge - 1;
  const emerges = hidden ? { x: edge, y: end.y + ((edge - end.x) / (outside.x - end.x)) * (outside.y - end.y) } : end;
  if (hidden) behind.push([end, emerges]);
  const tail = [emerges, outside, place.tip];
  const box = {
    x: place.centreX - radius - width / 2,
    y: topY - lift - width / 2,
    width: 2 * radius + width,
    height: endY - topY + 2 * lift + width,
  };
  return {
    kind: 'coil',
    tubeWidth: width,
    runs,
    behind,
    feed: [place.inletTop, first],
    tail,
    box,
    jacket: [],
    jacketHalf: 0,
    nozzles: [],
    breakAt: null,
    axis: { dx: 1, dy: 0 },
  };
}

export interface StraightPlace {
  readonly inlet: Point;
  readonly tip: Point;
  /** Both hoses come from above, from a barrel, and not from a tap near the floor. */
  readonly hosesAbove: boolean;
}

/** Tubes of a bundle that a cut through its middle would show. */
export const tubesInSection = (tubes: number): number =>
  tubes <= 1 ? 1 : Math.max(2, Math.round(Math.sqrt(1.27 * tubes)));

/** Share of the cooled length at which the jacket's nozzles sit from either end. */
const NOZZLE = 0.08;

export function straightShape(tube: StraightSize, drawn: number, frame: Frame, place: StraightPlace): CondenserShape {
  const s = frame.pxPerMetre;
  const length = Math.max(8, drawn * s);
  const angle = tube.upright ? Math.PI / 2 : tube.slope_rad;
  const axis = { dx: Math.cos(angle), dy: Math.sin(angle) };
  const across = { dx: -axis.dy, dy: axis.dx };
  const at = (along: number, off: number): Point => ({
    x: place.inlet.x + axis.dx * along + across.dx * off,
    y: place.inlet.y + axis.dy * along + across.dy * off,
  });
  const shown = tubesInSection(tube.tubes);
  const jacketHalf = Math.max(tube.jacket_m * s, (shown + 1) * 3.2 + shown * 3.2, tubeWidth(tube.tube_m, s) + 6) / 2;
  const width = Math.max(3.2, Math.min(tube.tube_m * s, (2 * jacketHalf) / (shown + 1) - 2));
  const offsets = Array.from({ length: shown }, (_, index) =>
    shown === 1 ? 0 : ((index + 0.5) / shown - 0.5) * 2 * (jacketHalf - 2),
  );
  const runs = offsets.map((off) => ({ points: [at(0, off), at(length, off)], from: 0, to: 1 }));
  const jacket = [at(0, -jacketHalf), at(length, -jacketHalf), at(length, jacketHalf), at(0, jacketHalf)];
  const end = at(length, 0);
  const tail = tube.upright
    ? [end, place.tip]
    : [end, { x: place.tip.x, y: end.y + axis.dy * Math.max(0, place.tip.x - end.x) }, place.tip];
  // Water always leaves a jacket from its upper side, so that no air stays in it; an upright one has both nozzles on the left.
  const nozzle = (share: number, up: boolean) => {
    const side = tube.upright || !up ? jacketHalf : -jacketHalf;
    const off = tube.upright ? { dx: -1, dy: 0 } : { dx: 0, dy: up ? -1 : 1 };
    const foot = at(share * length, side);
    return { at: foot, away: { x: foot.x + off.dx * 9, y: foot.y + off.dy * 9 } };
  };
  const supplyAtVapourEnd = !tube.counterflow;
  return {
    kind: 'straight',
    tubeWidth: width,
    runs,
    behind: [],
    feed: [],
    tail,
    box: boxOf(jacket.map((corner) => ({ ...corner, width: 0, height: 0 }))),
    jacket,
    jacketHalf,
    nozzles: [
      nozzle(NOZZLE, place.hosesAbove || !supplyAtVapourEnd),
      nozzle(1 - NOZZLE, place.hosesAbove || supplyAtVapourEnd),
    ],
    breakAt: drawn < tube.length_m - 1e-9 ? at(length * 0.55, 0) : null,
    axis,
  };
}

/** Path of the tube's visible parts between two shares of its cooled length. */
export const cutRuns = (runs: readonly TubeRun[], from: number, to: number): string =>
  runs
    .map((run) => {
      const span = run.to - run.from;
      if (span <= 0 || to <= run.from || from >= run.to) return '';
      return pathThrough(cutPath(run.points, (from - run.from) / span, (to - run.from) / span));
    })
    .join('');

/** Where the cooled length has run so far: the point at a share of it, on the nearest visible run. */
export function pointAlong(runs: readonly TubeRun[], share: number): Point | null {
  for (const run of runs) {
    if (share > run.to) continue;
    const within = Math.min(1, Math.max(0, (share - run.from) / (run.to - run.from)));
    const cut = cutPath(run.points, 0, Math.max(1e-6, within));
    return cut[cut.length - 1] ?? run.points[0] ?? null;
  }
  const last = runs[runs.length - 1]?.points;
  return last?.[last.length - 1] ?? null;
}

/** Where the tube is, for keeping words off it. */
export const condenserBoxes = (shape: CondenserShape): Box[] => [
  ...(shape.kind === 'coil'
    ? [shape.box]
    : boxesAlong(subdivide([...(shape.runs[0]?.points ?? [])], 24), 2 * shape.jacketHalf + 6)),
  ...boxesAlong(subdivide(shape.tail, 24), shape.tubeWidth + 3),
];
