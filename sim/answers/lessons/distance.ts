/** How far a commitment is from what the model answers. */
import { lerp } from '../../maths/interpolate.ts';

/** A curve as it was drawn: times that rise, and the value at each. */
export interface DrawnCurve {
  readonly at_s: readonly number[];
  readonly values: readonly number[];
}

/** Value of a curve at a time, in straight lines between its points; NaN beyond its ends. */
export function curveAt({ at_s, values }: DrawnCurve, time_s: number): number {
  const after = at_s.findIndex((at) => at >= time_s);
  if (after < 0) return Number.NaN;
  if (at_s[after] === time_s) return values[after] as number;
  if (after === 0) return Number.NaN;
  const from = at_s[after - 1] as number;
  return lerp(values[after - 1] as number, values[after] as number, (time_s - from) / ((at_s[after] as number) - from));
}

/** Mean distance of a drawn curve from the true one where both have a value; `null` where they nowhere do. */
export function curveDistance(drawn: DrawnCurve, truth: DrawnCurve): number | null {
  let sum = 0;
  let count = 0;
  truth.at_s.forEach((time_s, index) => {
    const away = Math.abs(curveAt(drawn, time_s) - (truth.values[index] as number));
    if (!Number.isFinite(away)) return;
    sum += away;
    count += 1;
  });
  return count > 0 ? sum / count : null;
}
