/**
 * About what length a condenser needs, from trials with long steps, few segments and few layers: several times faster
 * than a trial as the scenario asks for, and nearly always within a few thousandths of it.
 */
import type { Scenario } from '../../scenario/scenario.ts';
import { LONGEST_TUBE, withLength } from './shortest-length.ts';
import { searchStep, tryCondenser, type CondenserTrial } from './trial.ts';

const COARSE_STEP_s = 10;
const COARSE_LAYERS = 3;
/** Enough to put lengths into an order, and enough to tell them: the profile in the tube is read between segments. */
const FEW_SEGMENTS = 24;
const MORE_SEGMENTS = 40;

const coarse = (scenario: Scenario, segments: number): Scenario => ({
  ...scenario,
  advanced: {
    ...scenario.advanced,
    segments: Math.min(segments, scenario.advanced.segments),
    bedLayers: Math.min(COARSE_LAYERS, scenario.advanced.bedLayers),
  },
});

const coarseStep = ({ advanced }: Scenario): number => Math.max(COARSE_STEP_s, advanced.step_s);

/** A quick trial, a percent or so beside one as the scenario asks for. */
export const coarseTrial = (scenario: Scenario): CondenserTrial =>
  tryCondenser(coarse(scenario, FEW_SEGMENTS), coarseStep(scenario));

/** Looked-at over needed length within which the profile in the tube tells the need to a few thousandths. */
export const TELLING = 1.06;
/** Where to look for that, over the need as it is known so far. */
export const OVER = 1.02;
/** Strides on from a length that does not hold. */
const STRIDES: readonly number[] = [1.06, 1.12, 1.25, 1.6];
const MOST_TRIALS = 14;

export interface CoarseNeed {
  readonly need_m: number;
  /** With a little more than that. */
  readonly trial: CondenserTrial;
}

/**
 * About the shortest length that is enough; `null` where these trials find none: too narrow a tube, water too warm, no
 * vapour.
 * @param start_m where to look first: a little more than what it may be
 * @param until_s time after which nothing worse comes, s
 * @param detail by such trials, or in the same way by trials as the scenario asks for
 */
export function coarseLength(
  scenario: Scenario,
  start_m: number,
  until_s?: number,
  detail: 'coarse' | 'as-asked' = 'coarse',
): CoarseNeed | null {
  const [tried, step_s] =
    detail === 'coarse' ? [coarse(scenario, MORE_SEGMENTS), coarseStep(scenario)] : [scenario, searchStep(scenario)];
  let failing = 0;
  let held: { readonly length: number; readonly trial: CondenserTrial } | null = null;
  let next = Math.min(LONGEST_TUBE, start_m);
  for (let trials = 0, strides = 0; trials < MOST_TRIALS; trials++) {
    const trial = tryCondenser(withLength(tried, next), step_s, until_s);
    if (trial.holds) {
      if (!trial.vapourCame) return null;
      held = { length: next, trial };
      const need_m = Math.max(failing, trial.cooledBy_m);
      if (next <= TELLING * need_m) return { need_m, trial };
      next = Math.max(OVER * need_m, Math.sqrt(failing * next));
    } else {
      failing = next;
      if (trial.failure?.kind === 'pressure' || trial.failure?.kind === 'calculation' || next >= LONGEST_TUBE)
        return null;
      const stride = STRIDES[Math.min(strides++, STRIDES.length - 1)] as number;
      next = held ? Math.sqrt(failing * held.length) : Math.min(LONGEST_TUBE, stride * next);
    }
  }
  return null;
}
