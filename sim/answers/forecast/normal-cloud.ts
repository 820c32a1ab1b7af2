/** A cloud of weighted points in several dimensions as a normal distribution: mean, covariance, and draws from it. */
import { positionOf, valueAt } from '../../maths/interpolate.ts';
import { normalScore, type Xoshiro128 } from '../ensemble/random.ts';

export type Point = readonly number[];

/** Shares of the whole from logarithms of weights, largest first subtracted so that none overflows. */
export function sharesOf(logWeights: readonly number[]): readonly number[] {
  const most = Math.max(...logWeights);
  const weights = logWeights.map((log) => Math.exp(log - most));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}

/** Effective sample size (Kish): how many equal draws tell as much as these weighted ones. */
export const effectiveSize = (shares: readonly number[]): number =>
  1 / shares.reduce((sum, share) => sum + share * share, 0);

/** Places drawn by weight, evenly spaced from one random start (systematic resampling). */
export function resampled(shares: readonly number[], chance: Xoshiro128): readonly number[] {
  const count = shares.length;
  const places: number[] = [];
  let place = 0;
  let sum = shares[0] ?? 1;
  const start = chance.share();
  for (let k = 0; k < count; k++) {
    const wanted = (k + start) / count;
    while (sum < wanted && place + 1 < count) sum += shares[++place] as number;
    places.push(place);
  }
  return places;
}

/**
 * Values below which some shares of the weight lie, in a straight line between the middles of the sorted weights.
 * @param wanted shares, rising
 */
export function weightedQuantiles(
  values: readonly number[],
  shares: readonly number[],
  wanted: readonly number[],
): readonly number[] {
  const order = values.map((_, index) => index).sort((a, b) => (values[a] as number) - (values[b] as number));
  const whole = shares.reduce((sum, share) => sum + share, 0);
  const middles: number[] = [];
  let below = 0;
  for (const index of order) {
    const weight = (shares[index] as number) / whole;
    middles.push(below + weight / 2);
    below += weight;
  }
  const sorted = Float64Array.from(order, (index) => values[index] as number);
  return wanted.map((share) => valueAt(sorted, positionOf(Float64Array.from(middles), share, sorted.length)));
}

export class NormalCloud {
  readonly mean: Point;
  /** Lower triangle whose product with its transpose is the covariance. */
  private readonly root: readonly (readonly number[])[];

  constructor(points: readonly Point[], shares: readonly number[]) {
    const dimensions = points[0]?.length ?? 0;
    const axes = Array.from({ length: dimensions }, (_, d) => d);
    const mean = axes.map((d) =>
      points.reduce((sum, point, index) => sum + (shares[index] as number) * (point[d] as number), 0),
    );
    // Few points know little of how the dimensions hang together: the more of them, the more that counts.
    const size = effectiveSize(shares);
    const trust = size / (size + dimensions);
    const covariance = axes.map((i) =>
      axes.map((j) => {
        const raw = points.reduce(
          (sum, point, index) =>
            sum +
            (shares[index] as number) *
              ((point[i] as number) - (mean[i] as number)) *
              ((point[j] as number) - (mean[j] as number)),
          0,
        );
        return i === j ? raw + 1e-6 : trust * raw;
      }),
    );
    this.mean = mean;
    this.root = cholesky(covariance);
  }

  /** A step from a point that leaves the cloud as it is: nearer to its mean by √(1 − h²), and h of its spread. */
  near(point: Point, h: number, chance: Xoshiro128): Point {
    const drawn = this.mean.map(() => normalScore(chance.share()));
    const keep = Math.sqrt(1 - h * h);
    return this.mean.map((middle, i) => {
      const row = this.root[i] as readonly number[];
      const spread = row.reduce((sum, factor, j) => sum + factor * (drawn[j] as number), 0);
      return middle + keep * ((point[i] as number) - middle) + h * spread;
    });
  }

  /** Logarithm of the density but for a constant. */
  logDensity(point: Point): number {
    const solved: number[] = [];
    let squares = 0;
    this.root.forEach((row, i) => {
      let left = (point[i] as number) - (this.mean[i] as number);
      for (let j = 0; j < i; j++) left -= (row[j] as number) * (solved[j] as number);
      const value = left / (row[i] as number);
      solved.push(value);
      squares += value * value;
    });
    return -0.5 * squares;
  }
}

/** Lower triangular root of a symmetric positive definite matrix. */
function cholesky(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const root: number[][] = [];
  matrix.forEach((row, i) => {
    const made: number[] = [];
    for (let j = 0; j <= i; j++) {
      let sum = row[j] as number;
      for (let k = 0; k < j; k++) sum -= (made[k] as number) * ((root[j] ?? made)[k] as number);
      made.push(i === j ? Math.sqrt(Math.max(sum, 1e-12)) : sum / ((root[j] as number[])[j] as number));
    }
    root.push(made);
  });
  return root;
}
