/** Which run does best in a row of a comparison. */
import type { CompareRow } from '../../../sim/index.ts';

/** Parts of the larger value below which two are alike. */
const ALIKE = 0.005;

/** Place of the better value of a row, where one is; `null` where none is better or all are alike. */
export function bestOf({ better, values }: Pick<CompareRow, 'better' | 'values'>): number | null {
  if (better === 'neither') return null;
  const known = values.filter((value) => value !== null);
  if (known.length < 2) return null;
  const best = better === 'more' ? Math.max(...known) : Math.min(...known);
  const worst = better === 'more' ? Math.min(...known) : Math.max(...known);
  if (Math.abs(best - worst) <= ALIKE * Math.max(Math.abs(best), Math.abs(worst))) return null;
  return values.indexOf(best);
}
