/** One request, wherever it is carried out: from any JSON to a run, to the mistakes in it, or to why it failed. */
import { readScenario, simulate, type Problem, type RunResult } from '../../sim/index.ts';
import { quickLook } from './preview.ts';

/** `quick` where a run in longer steps is enough for now. */
export type Care = 'full' | 'quick';

export type RunAnswer =
  /** `care` says what was done: a short run is run in full even when a quick one was asked for. */
  | { readonly kind: 'ran'; readonly result: RunResult; readonly care: Care }
  | { readonly kind: 'invalid'; readonly problems: readonly Problem[] }
  | { readonly kind: 'failed'; readonly message: string };

export function runScenario(input: unknown, care: Care = 'full'): RunAnswer {
  const read = readScenario(input);
  if (!read.ok) return { kind: 'invalid', problems: read.problems };
  try {
    const coarser = care === 'quick' ? quickLook(read.scenario) : null;
    if (!coarser) return { kind: 'ran', result: simulate(read.scenario), care: 'full' };
    return { kind: 'ran', result: { ...simulate(coarser), scenario: read.scenario }, care: 'quick' };
  } catch (error) {
    return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
  }
}
