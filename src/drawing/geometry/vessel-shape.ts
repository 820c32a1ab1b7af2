/** Pot and boiler in section: inside measures true, wall and insulation outward of them. */
import { insulationWidth, wallWidth } from './line-weights.ts';
import { boxAround, pathThrough, rectPath, right, bottom, type Box, type Frame, yAt } from './shapes.ts';
import type { BedSize, VesselSize } from './true-sizes.ts';

export interface VesselShape {
  readonly inner: Box;
  readonly centreX: number;
  readonly wall: number;
  readonly insulation: number;
  /** Walls and insulation, from the rim to the underside. */
  readonly outer: Box;
  /** Cut metal, for hatching. */
  readonly wallPath: string;
  /** Outer contour of the wall. */
  readonly outline: string;
  readonly insulationPath: string | null;
  readonly lidPath: string;
  readonly lidTop: number;
  /** The same inside the lid, closed along the rim: where steam stands. */
  readonly lidInside: string;
}

/** The U of a cut wall: sides and base, open at the rim. */
export const cutWall = (inner: Box, thickness: number): string =>
  pathThrough(
    [
      { x: inner.x - thickness, y: inner.y },
      { x: inner.x - thickness, y: bottom(inner) + thickness },
      { x: right(inner) + thickness, y: bottom(inner) + thickness },
      { x: right(inner) + thickness, y: inner.y },
      { x: right(inner), y: inner.y },
      { x: right(inner), y: bottom(inner) },
      { x: inner.x, y: bottom(inner) },
      { x: inner.x, y: inner.y },
    ],
    true,
  );

/** The outer contour of such a wall. */
export const wallOutline = (inner: Box, thickness: number): string =>
  pathThrough([
    { x: inner.x - thickness, y: inner.y },
    { x: inner.x - thickness, y: bottom(inner) + thickness },
    { x: right(inner) + thickness, y: bottom(inner) + thickness },
    { x: right(inner) + thickness, y: inner.y },
  ]);

const dome = (left: number, rightEdge: number, rim: number, rise: number): string => {
  const half = (rightEdge - left) / 2;
  const step = Math.min(3, rise / 3);
  return `M${left} ${rim}v${-step}A${half} ${Math.max(1, rise - step)} 0 0 1 ${rightEdge} ${rim - step}v${step}`;
};

/**
 * @param baseHeight inside base above the frame's floor, m
 */
export function vesselShape(size: VesselSize, frame: Frame, centreX: number, baseHeight: number): VesselShape {
  const s = frame.pxPerMetre;
  const wall = wallWidth(size.wall_m, s);
  const insulation = insulationWidth(size.insulation_m, s);
  const height = size.height_m * s;
  const inner = boxAround(centreX, yAt(frame, baseHeight) - wall - height, size.diameter_m * s, height);
  const sides = wall + insulation;
  const outer = { x: inner.x - sides, y: inner.y, width: inner.width + 2 * sides, height: height + wall };
  const rise = Math.max(size.lid_m * s, 8);
  const lag = (x: number) => rectPath({ x, y: inner.y, width: insulation, height: height + wall });
  return {
    inner,
    centreX,
    wall,
    insulation,
    outer,
    wallPath: cutWall(inner, wall),
    outline: wallOutline(inner, wall),
    insulationPath: insulation > 0 ? lag(outer.x) + lag(right(outer) - insulation) : null,
    lidPath: dome(inner.x - wall - 2, right(inner) + wall + 2, inner.y, rise),
    lidTop: inner.y - rise,
    lidInside: `${dome(inner.x, right(inner), inner.y, Math.max(3, rise - wall))}Z`,
  };
}

export interface BedShape {
  readonly box: Box;
  /** Grid or false floor under the bed; null when the charge lies in the water. */
  readonly gridY: number | null;
  readonly submerged: boolean;
  /** Where the charge is at the start, to be picked and pointed at. */
  readonly place: Box;
}

/** A bed too thin to see keeps this height, so that it can be picked. */
const LEAST_BED = 6;

export function bedShape(bed: BedSize, pot: VesselShape, depth_m: number, pxPerMetre: number): BedShape {
  const { inner } = pot;
  const foot = bottom(inner) - bed.bottom_m * pxPerMetre;
  const tall = bed.submerged
    ? inner.height
    : Math.min(foot - inner.y, bed.height_m > 0 ? Math.max(LEAST_BED, bed.height_m * pxPerMetre) : 0);
  const box = { x: inner.x + 1, y: foot - tall, width: Math.max(1, inner.width - 2), height: tall };
  const deep = Math.max(LEAST_BED, depth_m * pxPerMetre);
  return {
    box,
    place: bed.submerged ? { ...box, y: foot - deep, height: deep } : box,
    gridY: bed.submerged ? null : foot,
    submerged: bed.submerged,
  };
}
