/** A polyline measured once, so that a mark can be put at any distance along it without searching. */
import type { Point } from '../geometry/shapes.ts';

export interface FlowLine {
  /** Pixels from end to end. */
  readonly length: number;
  /** x, y at every whole pixel. */
  readonly xs: Float32Array;
  readonly ys: Float32Array;
}

export function flowLine(points: readonly Point[]): FlowLine {
  const legs = points
    .slice(1)
    .map((point, index) => Math.hypot(point.x - (points[index] as Point).x, point.y - (points[index] as Point).y));
  const length = legs.reduce((sum, leg) => sum + leg, 0);
  const count = Math.max(1, Math.floor(length) + 1);
  const xs = new Float32Array(count);
  const ys = new Float32Array(count);
  let leg = 0;
  let before = 0;
  for (let at = 0; at < count; at++) {
    while (leg < legs.length - 1 && at > before + (legs[leg] as number)) {
      before += legs[leg] as number;
      leg++;
    }
    const a = points[leg] ?? { x: 0, y: 0 };
    const b = points[leg + 1] ?? a;
    const share = Math.min(1, (at - before) / ((legs[leg] ?? 0) || 1));
    xs[at] = a.x + (b.x - a.x) * share;
    ys[at] = a.y + (b.y - a.y) * share;
  }
  return { length, xs, ys };
}
