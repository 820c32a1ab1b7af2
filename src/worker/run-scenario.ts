/** One request, wherever it is carried out: from any JSON to a run, to the mistakes in it, or to why it failed. */
import { readScenario, simulate, type Problem, type RunResult } from '../../sim/index.ts';

export type RunAnswer =
  | { readonly kind: 'ran'; readonly result: RunResult }
  | { readonly kind: 'invalid'; readonly problems: readonly Problem[] }
  | { readonly kind: 'failed'; readonly message: string };

export function runScenario(input: unknown): RunAnswer {
  const read = readScenario(input);
  if (!read.ok) return { kind: 'invalid', problems: read.problems };
  try {
    return { kind: 'ran', result: simulate(read.scenario) };
  } catch (error) {
    return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
  }
}
