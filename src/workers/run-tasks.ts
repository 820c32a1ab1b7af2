/** What the page asks before anything else: a run, from any JSON, and the example it opens with. */
import { openingExample, readScenario, simulate, type Example, type Problem, type RunResult } from '../../sim/index.ts';
import { errorMessage } from './errors.ts';

export type RunAnswer =
  | { readonly kind: 'ran'; readonly result: RunResult }
  | { readonly kind: 'invalid'; readonly problems: readonly Problem[] }
  | { readonly kind: 'failed'; readonly message: string };

export const runTasks = {
  run(input: unknown): RunAnswer {
    const read = readScenario(input);
    if (!read.ok) return { kind: 'invalid', problems: read.problems };
    try {
      return { kind: 'ran', result: simulate(read.scenario) };
    } catch (error) {
      return { kind: 'failed', message: errorMessage(error) };
    }
  },
  openingExample: (): Example => openingExample,
} as const;
