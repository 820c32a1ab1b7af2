/** Two to four runs side by side: a table of their numbers and what it comes to. */
import type { RunResult } from '../../run/result.ts';
import { concludeComparison, type Conclusion } from './conclusion.ts';
import { compareHeads, compareRows, type CompareRow, type CompareRun } from './table.ts';

export interface Comparison {
  readonly runs: readonly CompareRun[];
  readonly rows: readonly CompareRow[];
  /** Two to five of them. */
  readonly conclusion: readonly Conclusion[];
}

export const MOST_COMPARED = 4;

/** Compares two to four runs; the differences are from the first. */
export function compareRuns(results: readonly RunResult[]): Comparison {
  if (results.length < 2 || results.length > MOST_COMPARED)
    throw new RangeError(`compare: ${results.length} runs; two to four can be compared`);
  const runs = compareHeads(results);
  const rows = compareRows(results);
  return { runs, rows, conclusion: concludeComparison(runs, rows) };
}
