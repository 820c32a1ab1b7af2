/** Shares of an oil while they are edited: they need not add up until they are handed on. */
import type { Scenario } from '../../../../sim/index.ts';

export type Composition = Scenario['charge']['composition'];

/** Shares as shown are rounded; a sum this near to one is one. */
const NEAR_ONE = 5e-5;
export const MOST_CONSTITUENTS = 12;

export const shareSum = (rows: Composition): number => rows.reduce((sum, { share }) => sum + share, 0);

export const addsUp = (rows: Composition): boolean => rows.length > 0 && Math.abs(shareSum(rows) - 1) < NEAR_ONE;

/** All shares scaled alike until they add up to one; equal shares when there is nothing to scale. */
export function normalised(rows: Composition): Composition {
  const sum = shareSum(rows);
  if (rows.length === 0) return rows;
  const scaled = rows.map((row) => ({
    ...row,
    share: sum > 0 ? Number((row.share / sum).toPrecision(12)) : 1 / rows.length,
  }));
  const [largest] = [...scaled].sort((a, b) => b.share - a.share);
  // What rounding leaves goes to the largest share.
  return scaled.map((row) => (row === largest ? { ...row, share: row.share + (1 - shareSum(scaled)) } : row));
}

const replaced = (rows: Composition, index: number, change: Partial<Composition[number]>): Composition =>
  rows.map((row, at) => (at === index ? { ...row, ...change } : row));

export const withShare = (rows: Composition, index: number, share: number): Composition =>
  replaced(rows, index, { share });
export const withConstituent = (rows: Composition, index: number, constituent: string): Composition =>
  replaced(rows, index, { constituent });
export const without = (rows: Composition, index: number): Composition => rows.filter((_, at) => at !== index);

/** One more constituent, the first that is not there yet, with what is missing to one. */
export function withAnother(rows: Composition, ids: readonly string[]): Composition {
  const free = ids.find((id) => !rows.some(({ constituent }) => constituent === id));
  if (free === undefined || rows.length >= MOST_CONSTITUENTS) return rows;
  return [...rows, { constituent: free, share: Math.max(0, Number((1 - shareSum(rows)).toPrecision(6))) }];
}
