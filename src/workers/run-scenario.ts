/** One request, wherever it is carried out: from any JSON to a run, to the mistakes in it, or to why it failed. */
import { readScenario, simulate, type Problem, type RunResult } from '../../sim/index.ts';
import { preview } from './preview.ts';

/** `preview` where a run in longer steps is enough for now. */
export type Fidelity = 'full' | 'preview';

export type RunAnswer =
  /** `fidelity` says what was done: a short run is run in full even when a preview was asked for. */
  | { readonly kind: 'ran'; readonly result: RunResult; readonly fidelity: Fidelity }
  | { readonly kind: 'invalid'; readonly problems: readonly Problem[] }
  | { readonly kind: 'failed'; readonly message: string };

export function runScenario(input: unknown, fidelity: Fidelity = 'full'): RunAnswer {
  const read = readScenario(input);
  if (!read.ok) return { kind: 'invalid', problems: read.problems };
  try {
    const coarser = fidelity === 'preview' ? preview(read.scenario) : null;
    if (!coarser) return { kind: 'ran', result: simulate(read.scenario), fidelity: 'full' };
    return { kind: 'ran', result: { ...simulate(coarser), scenario: read.scenario }, fidelity: 'preview' };
  } catch (error) {
    return { kind: 'failed', message: error instanceof Error ? error.message : String(error) };
  }
}
