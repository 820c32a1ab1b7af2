/** Sums for stacked amounts; all series of a stack share their rows. */

interface Amounts {
  readonly values: Float64Array;
}

/** Sum of all amounts, row by row. */
export function stackTotals(series: readonly Amounts[]): Float64Array {
  return stackTops(series).at(-1) ?? new Float64Array();
}

/** Upper edge of each layer, the first layer at the bottom. */
export function stackTops(series: readonly Amounts[]): readonly Float64Array[] {
  const tops: Float64Array[] = [];
  for (const { values } of series) {
    const below = tops.at(-1);
    tops.push(below ? values.map((value, row) => value + (below[row] as number)) : Float64Array.from(values));
  }
  return tops;
}
