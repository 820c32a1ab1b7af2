/**
 * About what length a condenser needs, from trials with long steps, few segments and few layers: several times faster
 * than a trial as the scenario asks for, and nearly always within a few percent of it. Only ever where to look: what is
 * told is found by trials as the scenario asks for.
 */
import type { Scenario } from '../../scenario/scenario.ts';
import { LONGEST_TUBE, withLength } from './shortest-length.ts';
import { tryCondenser, type CondenserTrial } from './trial.ts';

const COARSE_STEP_s = 10;
const COARSE_SEGMENTS = 24;
const COARSE_LAYERS = 3;
/** Looked-at over needed length within which the profile in the tube tells the need, and where to look for that. */
const NEAR = 1.1;
const OVER = 1.03;
const GROWTH = 1.6;
const MOST_TRIALS = 12;

const coarse = (scenario: Scenario): Scenario => ({
  ...scenario,
  advanced: {
    ...scenario.advanced,
    segments: Math.min(COARSE_SEGMENTS, scenario.advanced.segments),
    bedLayers: Math.min(COARSE_LAYERS, scenario.advanced.bedLayers),
  },
});

/** A quick trial, a percent or so beside one as the scenario asks for. */
export const coarseTrial = (scenario: Scenario): CondenserTrial =>
  tryCondenser(coarse(scenario), Math.max(COARSE_STEP_s, scenario.advanced.step_s));

/**
 * About the shortest length that is enough, m; `null` where these trials find none: too narrow a tube, water too warm,
 * no vapour.
 * @param start_m where to look first: a little more than what it may be
 */
export function coarseLength(scenario: Scenario, start_m: number): number | null {
  let failing = 0;
  let passing = Infinity;
  let next = Math.min(LONGEST_TUBE, start_m);
  for (let trials = 0; trials < MOST_TRIALS; trials++) {
    const trial = coarseTrial(withLength(scenario, next));
    if (trial.holds) {
      if (!trial.vapourCame) return null;
      passing = next;
      const need = Math.max(failing, trial.cooledBy_m);
      if (next <= NEAR * need) return need;
      next = failing > 0 ? Math.max(OVER * need, Math.sqrt(failing * passing)) : OVER * need;
      if (next >= passing) return need;
    } else {
      failing = next;
      if (trial.failure?.kind === 'pressure' || trial.failure?.kind === 'calculation' || next >= LONGEST_TUBE)
        return null;
      next = Number.isFinite(passing) ? Math.sqrt(failing * passing) : Math.min(LONGEST_TUBE, GROWTH * next);
    }
  }
  return Number.isFinite(passing) ? passing : null;
}
