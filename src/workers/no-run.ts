/** Why there is no run, in words: fetched where that happens. */
import {
  englishReader,
  failureMessages,
  problemMessage,
  wholeMessage,
  type Problem,
  type UnitSystem,
} from '../../sim/index.ts';
import type { NoRun } from './run-client.ts';

const MOST_PROBLEMS_TOLD = 3;

const problemsInWords = (problems: readonly Problem[], units: UnitSystem): string =>
  problems
    .slice(0, MOST_PROBLEMS_TOLD)
    .map((problem) => problemMessage(problem, englishReader(units)))
    .join(' ');

/** Why there is no run, in words. */
export function whyNoRun(reply: NoRun, units: UnitSystem): string {
  switch (reply.kind) {
    case 'invalid':
      return problemsInWords(reply.problems, units);
    case 'broke-off':
      return wholeMessage(failureMessages(englishReader(units)).brokeOff(reply.failure));
    case 'failed':
      return `The model could not run it: ${reply.message}`;
    case 'stopped':
      return 'You stopped the run before it was done.';
    case 'superseded':
      return 'Another change came first, so it was not opened. Try again.';
  }
}
