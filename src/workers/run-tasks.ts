/** What the page asks before anything else: a run, from any JSON, and the example it opens with. */
import {
  openingExample,
  readScenario,
  simulate,
  type Example,
  type NonFinite,
  type Problem,
  type RunResult,
} from '../../sim/index.ts';
import { errorMessage } from './errors.ts';

export type RunAnswer =
  | { readonly kind: 'ran'; readonly result: RunResult }
  | { readonly kind: 'invalid'; readonly problems: readonly Problem[] }
  /** The calculation failed on its way: nothing of such a run is an answer, so none of it is given. */
  | { readonly kind: 'broke-off'; readonly failure: NonFinite }
  | { readonly kind: 'failed'; readonly message: string };

export const runTasks = {
  run(input: unknown): RunAnswer {
    const read = readScenario(input);
    if (!read.ok) return { kind: 'invalid', problems: read.problems };
    try {
      const result = simulate(read.scenario);
      return result.failure === null ? { kind: 'ran', result } : { kind: 'broke-off', failure: result.failure };
    } catch (error) {
      return { kind: 'failed', message: errorMessage(error) };
    }
  },
  openingExample: (): Example => openingExample,
} as const;
