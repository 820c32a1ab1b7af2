/** Messages on runs side by side: what their numbers are called, how they differ, what to conclude. */
import type { Comparison } from '../answers/comparison/compare.ts';
import { comparison } from './english/comparison.ts';
import { eventMessage } from './events.ts';
import type { Reader } from './language.ts';
import { section } from './section.ts';

export type ComparisonMessages = ReturnType<typeof comparison>;

export const comparisonMessages = section<ComparisonMessages>({ en: comparison });

/** A comparison with its words, as it is saved and printed. */
export function toldComparison(facts: Comparison, reader: Reader) {
  const messages = comparisonMessages(reader);
  const { conclusion, runs, rows } = facts;
  return {
    conclusion: conclusion.map((fact) => ({ ...fact, ...messages.conclusion(fact, runs) })),
    runs: runs.map((run) => ({
      ...run,
      cautions: run.cautions.map((event) => ({ ...event, ...eventMessage(event, reader) })),
    })),
    rows: rows.map((row) => ({ ...row, title: messages.rowTitle(row) })),
  };
}
