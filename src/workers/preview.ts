/** A run in longer steps, to follow a hand at once; the full run comes when the hand rests. */
import type { Scenario } from '../../sim/index.ts';

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
