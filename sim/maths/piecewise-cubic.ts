/**
 * Cubic tables: a smooth function of one variable, sampled once and read in a few nanoseconds.
 *
 * The range is cut into equal intervals; in each, the cubic through four equally spaced samples, both ends included,
 * stands for the function. Neighbours share their end samples, so the table is continuous. The error is at most
 * f⁗ h⁴/1944 for an interval of width h.
 */

export interface PiecewiseCubic {
  readonly low: number;
  readonly high: number;
  readonly intervals: number;
  readonly intervalsPerUnit: number;
  /** Four coefficients an interval, lowest power first, in the position within the interval from 0 to 1. */
  readonly coefficients: Float64Array;
}

/** The places at which a function must be sampled: three an interval and the upper end, exact at both ends. */
export function samplePlaces(low: number, high: number, intervals: number): Float64Array {
  const last = 3 * intervals;
  return Float64Array.from({ length: last + 1 }, (_, j) => (j === last ? high : low + ((high - low) * j) / last));
}

/** Table from samples taken at `samplePlaces(low, high, intervals)`. */
export function tableFromSamples(samples: ArrayLike<number>, low: number, high: number): PiecewiseCubic {
  const intervals = (samples.length - 1) / 3;
  const coefficients = new Float64Array(4 * intervals);
  for (let k = 0; k < intervals; k++) {
    const y0 = samples[3 * k] as number;
    const y1 = samples[3 * k + 1] as number;
    const y2 = samples[3 * k + 2] as number;
    const y3 = samples[3 * k + 3] as number;
    coefficients[4 * k] = y0;
    coefficients[4 * k + 1] = -5.5 * y0 + 9 * y1 - 4.5 * y2 + y3;
    coefficients[4 * k + 2] = 9 * y0 - 22.5 * y1 + 18 * y2 - 4.5 * y3;
    coefficients[4 * k + 3] = -4.5 * y0 + 13.5 * y1 - 13.5 * y2 + 4.5 * y3;
  }
  return { low, high, intervals, intervalsPerUnit: intervals / (high - low), coefficients };
}

/** Table of a function of one variable. */
export const tabulate = (f: (x: number) => number, low: number, high: number, intervals: number): PiecewiseCubic =>
  tableFromSamples(samplePlaces(low, high, intervals).map(f), low, high);

/** Value of the table at x; NaN outside its range. Allocates nothing. */
export function readTable(table: PiecewiseCubic, x: number): number {
  if (!(x >= table.low && x <= table.high)) return Number.NaN;
  const position = (x - table.low) * table.intervalsPerUnit;
  let k = position | 0;
  if (k >= table.intervals) k = table.intervals - 1;
  const t = position - k;
  const c = table.coefficients;
  const at = 4 * k;
  return (c[at] as number) + t * ((c[at + 1] as number) + t * ((c[at + 2] as number) + t * (c[at + 3] as number)));
}
