/** The smallest tub without running water that lasts a whole run with a coil. */
import { tubDiameterFor, tubVolume } from '../../geometry/tub.ts';
import { coilFit } from '../../geometry/coil.ts';
import { isCoil } from '../../geometry/condenser-kind.ts';
import { smallestPassing } from '../../maths/root-find.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { withFlow } from '../condenser-size/heat-and-water.ts';
import type { Draw } from '../condenser-size/in-doubt.ts';
import { coarseTrial } from '../condenser-size/coarse-length.ts';
import { searchStep, tryCondenser } from '../condenser-size/trial.ts';
import { withDrawn } from '../ensemble/factors.ts';

/** Largest that is looked at, m³; how near the search goes, and by how much it is then made larger. */
export const LARGEST_TUB = 1;
const CLOSENESS = 0.97;
const GUARD = 1.02;
const MOST_NUDGES = 6;

export interface LeastTub {
  /** For the run as planned, and for the one that decides the length of the coil, m³; `null` where none is large enough. */
  readonly typical_m3: number | null;
  readonly deciding_m3: number | null;
}

const withTub = (scenario: Scenario, volume_m3: number): Scenario => ({
  ...withFlow(scenario, 0),
  cooling: { ...withFlow(scenario, 0).cooling, tubDiameter_m: tubDiameterFor(scenario.cooling, volume_m3) },
});

function leastVolume(scenario: Scenario): number | null {
  const { condenser, cooling } = scenario;
  const low = tubVolume({ ...cooling, tubDiameter_m: coilFit(condenser, cooling).width_m });
  const { passing } = smallestPassing((volume) => ({ passes: coarseTrial(withTub(scenario, volume)).holds }), {
    low,
    high: LARGEST_TUB,
    start: Math.max(low, tubVolume(cooling)),
    closeness: CLOSENESS,
  });
  if (passing === null) return null;
  // Found by coarse trials; what is told holds in one as the scenario asks for.
  let volume = passing;
  for (let nudge = 0; nudge < MOST_NUDGES; nudge++) {
    if (tryCondenser(withTub(scenario, volume), searchStep(scenario)).holds) return volume;
    volume *= GUARD;
  }
  return null;
}

/**
 * @param draw values of the doubts in the run that decides the length
 * @returns `null` where the condenser stands in no tub
 */
export function leastTub(scenario: Scenario, draw: Draw): LeastTub | null {
  if (!isCoil(scenario.condenser)) return null;
  return { typical_m3: leastVolume(scenario), deciding_m3: leastVolume(withDrawn(scenario, draw)) };
}
