/** A relation over one of its arguments, the others held: points to draw. */
import type { Correlation } from '../correlation.ts';
import { evaluateAt } from './look-up.ts';

export interface Curve {
  /** Argument that is varied. */
  readonly symbol: string;
  readonly from: number;
  readonly to: number;
  /** Steps are even in the logarithm. */
  readonly isLogarithmic: boolean;
  readonly xs: readonly number[];
  /** `null` where the relation gives no value. */
  readonly ys: readonly (number | null)[];
}

const POINTS = 121;
/** A range wider than this is stepped through by ratio. */
const WIDE = 200;

/** The argument's own range, or as far from the value again as from zero. */
function spanOf(range: readonly [number, number] | undefined, value: number): readonly [number, number] {
  if (range === undefined) return value === 0 ? [-1, 1] : value > 0 ? [0, 2 * value] : [2 * value, 0];
  return range[1] < Number.MAX_VALUE ? range : [range[0], Math.max(10 * Math.abs(range[0]), 2 * value)];
}

export function curveOver(
  entry: Correlation,
  values: Readonly<Record<string, number>>,
  symbol: string,
  points = POINTS,
): Curve {
  const [from, to] = spanOf(entry.arguments[symbol]?.range, values[symbol] ?? 0);
  const isLogarithmic = from > 0 && to > WIDE * from;
  const at = (share: number): number =>
    share === 1 ? to : isLogarithmic ? from * (to / from) ** share : from + (to - from) * share;
  const xs = Array.from({ length: points }, (_, index) => at(index / (points - 1)));
  return { symbol, from, to, isLogarithmic, xs, ys: xs.map((x) => evaluateAt(entry, { ...values, [symbol]: x })) };
}
