/** Checks against figures as they stand in print. */
import { expect, it } from 'vitest';

/** Where a figure is printed: the work with its edition, and the page, example, equation or table in it. */
export interface Publication {
  readonly work: string;
  readonly place: string;
}

/** A wider limit than half the last printed digit, in the printed unit, and what in the publication calls for it. */
export interface Scatter {
  readonly within: number;
  readonly because: string;
}

/** What is checked, what we compute in the printed unit, the figure as printed, where, and a stated scatter if any. */
export type PrintedRow = readonly [
  what: string,
  computed: () => number,
  printed: string,
  source: Publication,
  scatter?: Scatter,
];

/** A work, to name places in it: `incropera('Example 10.3, p. 648')`. */
export const work =
  (title: string) =>
  (place: string): Publication => ({ work: title, place });

/** Half a unit of the last digit of a figure such as 66.62 or 7.02e5. */
export function halfLastDigit(printed: string): number {
  const [mantissa = '', exponent = '0'] = printed.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

/** Fails unless the value is the printed figure to half its last digit or the stated scatter. */
export function expectPrinted(value: number, printed: string, scatter?: Scatter): void {
  const limit = scatter?.within ?? halfLastDigit(printed);
  // A billionth for the decimal digits that binary numbers cannot hold.
  const allowed = limit * (1 + 1e-9);
  const why = scatter === undefined ? 'half its last digit' : scatter.because;
  expect(Math.abs(value - Number(printed)), `${value} for ${printed} ± ${limit}: ${why}`).toBeLessThanOrEqual(allowed);
}

/** Makes a test of every row. */
export function checkPrinted(rows: readonly PrintedRow[]): void {
  for (const [what, computed, printed, { work: title, place }, scatter] of rows)
    it(`${what}: ${printed} (${title}, ${place})`, () => {
      expectPrinted(computed(), printed, scatter);
    });
}

/** The scatter of an example whose data have so many figures, although its answer is printed with more. */
export const figures = (count: number, printed: string): Scatter => ({
  within: 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(Number(printed)))) - count + 1),
  because: `the example's data have ${count} figures`,
});
