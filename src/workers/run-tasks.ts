/** What the page asks before anything else: a run, from any JSON, and the scenarios one may start from. */
import {
  examples,
  readScenario,
  simulate,
  type Example,
  type Problem,
  type RunResult,
  type Scenario,
} from '../../sim/index.ts';
import { errorMessage } from './errors.ts';

/** `preview` where a run in longer steps is enough for now. */
export type Fidelity = 'full' | 'preview';

export type RunAnswer =
  /** `fidelity` says what was done: a short run is run in full even when a preview was asked for. */
  | { readonly kind: 'ran'; readonly result: RunResult; readonly fidelity: Fidelity }
  | { readonly kind: 'invalid'; readonly problems: readonly Problem[] }
  | { readonly kind: 'failed'; readonly message: string };

/** Results move by less than half a percent over such a change of the step. */
const STEPS_AT_ONCE = 5;
const LONGEST_STEP_S = 10;
/** Runs of fewer steps than this are quick enough as they are. */
const QUICK_ENOUGH = 1500;

/** The scenario in longer steps, or null where that would gain nothing. */
export function preview(scenario: Scenario): Scenario | null {
  const { step_s, recordEvery_s } = scenario.advanced;
  const longer_s = Math.min(STEPS_AT_ONCE * step_s, LONGEST_STEP_S, Math.max(recordEvery_s, step_s));
  if (scenario.run.duration_s / step_s <= QUICK_ENOUGH || longer_s <= step_s) return null;
  return { ...scenario, advanced: { ...scenario.advanced, step_s: longer_s } };
}

export const runTasks = {
  run(input: unknown, fidelity: Fidelity = 'full'): RunAnswer {
    const read = readScenario(input);
    if (!read.ok) return { kind: 'invalid', problems: read.problems };
    try {
      const coarser = fidelity === 'preview' ? preview(read.scenario) : null;
      if (!coarser) return { kind: 'ran', result: simulate(read.scenario), fidelity: 'full' };
      return { kind: 'ran', result: { ...simulate(coarser), scenario: read.scenario }, fidelity: 'preview' };
    } catch (error) {
      return { kind: 'failed', message: errorMessage(error) };
    }
  },
  examples: (): readonly Example[] => examples,
} as const;
