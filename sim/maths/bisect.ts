/** Halving: where a condition that holds at the lower end of a bracket, and not at the upper, ceases to hold. */

export interface Bracket {
  /** Highest value found at which the condition holds, or the lower end as given. */
  readonly low: number;
  /** Lowest value found at which it does not, or the upper end as given. */
  readonly high: number;
}

/**
 * Halves a bracket a fixed number of times; 60 take it to the last bit of a number.
 * @param isBelow whether the boundary lies above a value; asked once a halving, last at the closest value
 */
export function bisect(isBelow: (value: number) => boolean, low: number, high: number, halvings: number): Bracket {
  for (let halving = 0; halving < halvings; halving++) {
    const middle = 0.5 * (low + high);
    if (isBelow(middle)) low = middle;
    else high = middle;
  }
  return { low, high };
}

/** The boundary itself: the middle of what is left of the bracket. Arguments as `bisect`. */
export function bisectedRoot(isBelow: (value: number) => boolean, low: number, high: number, halvings = 60): number {
  const left = bisect(isBelow, low, high, halvings);
  return 0.5 * (left.low + left.high);
}
