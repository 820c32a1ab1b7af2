/**
 * The bounds of an axis. They are fixed for a run and reluctant between runs: a small change of a setting must not
 * move the axis, or two runs could not be compared by eye.
 */
import { scaleLinear } from 'd3-scale';

export type Domain = readonly [low: number, high: number];

export interface DomainPolicy {
  /** Whether the axis starts at zero whatever the data. */
  readonly fromZero: boolean;
  /** Smallest distance between the bounds, in the unit shown, so that noise does not fill the chart. */
  readonly leastSpan: number;
  /** Bounds that the data never leave (a share ends at 100). */
  readonly ceiling?: number;
}

/** Data nearer to a bound than this part of the span push it outwards. */
const MARGIN = 0.02;
/** Data that use less than this part of the span let it shrink. */
const LEAST_USE = 0.5;
const TICKS = 4;

/** Lowest and highest finite value of several columns, or `null` when there is none. */
export function extentOf(
  columns: Iterable<ArrayLike<number>>,
  convert: (value: number) => number = (value) => value,
): Domain | null {
  let low = Infinity;
  let high = -Infinity;
  for (const column of columns) {
    for (let index = 0; index < column.length; index += 1) {
      const value = column[index] as number;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  }
  return Number.isFinite(low) && Number.isFinite(high) ? [convert(low), convert(high)] : null;
}

/** The smallest round bounds that hold the data with a margin. */
export function niceDomain(data: Domain | null, policy: DomainPolicy): Domain {
  const low = policy.fromZero ? Math.min(0, data?.[0] ?? 0) : (data?.[0] ?? 0);
  const high = policy.fromZero ? Math.max(0, data?.[1] ?? 0) : (data?.[1] ?? 0);
  const span = Math.max(high - low, policy.leastSpan);
  const short = span - (high - low);
  // A little below zero is rounding, not a reason for a negative axis.
  const below = policy.fromZero ? (low < -MARGIN * span ? low - MARGIN * span : 0) : low - short / 2 - MARGIN * span;
  const above = high + (policy.fromZero ? short : short / 2) + MARGIN * span;
  const [niceLow = below, niceHigh = above] = scaleLinear().domain([below, above]).nice(TICKS).domain();
  const ceiling = policy.ceiling;
  return ceiling !== undefined && high <= ceiling && niceHigh > ceiling ? [niceLow, ceiling] : [niceLow, niceHigh];
}

/** The bounds to use now: the earlier ones as long as the data fit them and still fill them well enough. */
export function settleDomain(earlier: Domain | undefined, data: Domain | null, policy: DomainPolicy): Domain {
  const fresh = niceDomain(data, policy);
  if (!earlier || !data) return earlier ?? fresh;
  const fits = earlier[0] <= fresh[0] && earlier[1] >= fresh[1];
  const used = (fresh[1] - fresh[0]) / (earlier[1] - earlier[0]);
  return fits && used >= LEAST_USE ? earlier : fresh;
}

/** Round values inside the bounds, both ends included where they are round themselves. */
export const valueTicks = (domain: Domain, height_px: number): readonly number[] =>
  scaleLinear()
    .domain([...domain])
    .ticks(Math.max(2, Math.min(TICKS, Math.floor(height_px / 32))));

/** Decimals that the ticks of an axis need. */
export function tickDecimals(ticks: readonly number[]): number {
  for (let decimals = 0; decimals < 6; decimals += 1) {
    const factor = 10 ** decimals;
    if (ticks.every((tick) => Math.abs(Math.round(tick * factor) / factor - tick) < 1e-9 * Math.max(1, Math.abs(tick))))
      return decimals;
  }
  return 6;
}
