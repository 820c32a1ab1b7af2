/** The swan neck in pixels: up out of the lid, over, and down to the condenser. */
import type { Along } from './along.ts';
import { neckWidth, insulationWidth } from './line-weights.ts';
import { cutPath, roundCorners, type Point } from './shapes.ts';

export interface NeckShape {
  readonly width: number;
  readonly insulation: number;
  /** From the lid to the condenser. */
  readonly run: readonly Point[];
  /** Marks where the run is not drawn at its length, with the direction of the run there. */
  readonly breaks: readonly { readonly at: Point; readonly dx: number; readonly dy: number }[];
  /** The words' side of the neck: a point on the middle of the run. */
  readonly midRun: Point;
}

export interface NeckPlace {
  readonly lidTop: Point;
  readonly apex: Point;
  readonly inlet: Point;
  /** Down into a tub or upright tube, or straight on along a sloping one. */
  readonly endsUpright: boolean;
}

const sampleAt = (points: readonly Point[], share: number): { at: Point; dx: number; dy: number } => {
  const piece = cutPath(points, share - 0.02, share + 0.02);
  const a = piece[0] as Point;
  const b = piece[piece.length - 1] as Point;
  const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return { at: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, dx: (b.x - a.x) / length, dy: (b.y - a.y) / length };
};

function riseCorners(place: NeckPlace): Point[] {
  const climb = place.lidTop.y - place.apex.y;
  return [place.lidTop, { x: place.lidTop.x, y: place.lidTop.y - 0.45 * climb }, place.apex];
}

export function neckShape(
  bore_m: number,
  insulation_m: number,
  s: number,
  place: NeckPlace,
  along: Along['neck'],
): NeckShape {
  const width = neckWidth(bore_m, s);
  const insulation = insulationWidth(insulation_m, s);
  const radius = Math.max(26, 3 * width);
  const elbow = {
    x: place.inlet.x,
    y: place.inlet.y - Math.min(Math.max(8, 1.1 * width), Math.max(1, place.inlet.y - place.apex.y)),
  };
  const corners = place.endsUpright
    ? [...riseCorners(place), elbow, place.inlet]
    : [...riseCorners(place), place.inlet];
  const points = roundCorners(corners, radius);
  const mid = sampleAt(points, 0.62);
  return { width, insulation, run: points, breaks: along === 'true' ? [] : [mid], midRun: mid.at };
}
