/** Polylines to path text or onto a canvas, by one generator. */
import { line } from 'd3-shape';
import type { Polyline } from './decimate.ts';

/** The generator asks for as many points as there are pairs and finds each by its place. */
const pairsOf = (points: Polyline): undefined[] => ({ length: points.length / 2 }) as undefined[];

const lineThrough = (points: Polyline) =>
  line<undefined>()
    .defined((_, pair) => !Number.isNaN(points[2 * pair + 1]))
    .x((_, pair) => points[2 * pair] as number)
    .y((_, pair) => points[2 * pair + 1] as number);

/** Path text of a polyline; `NaN` pairs break it. */
export function tracePath(points: Polyline): string {
  return lineThrough(points).digits(2)(pairsOf(points)) ?? '';
}

/** Adds a polyline to the current path of a canvas. */
export function traceOnto(context: CanvasRenderingContext2D, points: Polyline): void {
  lineThrough(points).context(context)(pairsOf(points));
}

/** Corners of the area between two polylines, which may be thinned differently: along the upper, back along the lower. */
function outline(upper: Polyline, lower: Polyline): Polyline {
  const corners: number[] = [];
  for (let at = 0; at < upper.length; at += 2)
    if (!Number.isNaN(upper[at])) corners.push(upper[at] as number, upper[at + 1] as number);
  for (let at = lower.length - 2; at >= 0; at -= 2)
    if (!Number.isNaN(lower[at])) corners.push(lower[at] as number, lower[at + 1] as number);
  return Float64Array.from(corners);
}

export function areaPath(upper: Polyline, lower: Polyline): string {
  const path = tracePath(outline(upper, lower));
  return path === '' ? '' : `${path}Z`;
}

export function areaOnto(context: CanvasRenderingContext2D, upper: Polyline, lower: Polyline): void {
  traceOnto(context, outline(upper, lower));
  context.closePath();
}
