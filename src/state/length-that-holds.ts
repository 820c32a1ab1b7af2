/** Asks for the condenser length that would hold, as the place that sizes condensers asks, so that both say the same. */
import type { EnoughLength, Scenario, TubeSize } from '../../sim/index.ts';
import { workerPool } from '../workers/start-pool.ts';

/** The margin that the place begins with. The length does not depend on it, but the kept answer is found by the whole question. */
export const USUAL_MARGIN = 0;

const STEP_M = 0.01;

/** Lengths are told in centimetres, never shorter than what holds. */
export const inCentimetres = (length_m: number): number =>
  Number((Math.ceil(length_m / STEP_M - 1e-6) * STEP_M).toFixed(2));

/** What nine runs in ten need, or, where no length is enough for so many, what the run as planned needs. */
export const lengthOf = ({
  length_m,
  typical_m,
  verdict,
}: Pick<TubeSize, 'length_m' | 'typical_m' | 'verdict'>): EnoughLength => {
  const enough = length_m ?? typical_m;
  return enough === null ? { length_m: enough, because: verdict } : { length_m: inCentimetres(enough), because: null };
};

/** Any length in the scenario: the question does not depend on it. */
const ANY_LENGTH = 5;

/** What the length of one's own tube depends on, and nothing else, so that moving that length asks nothing anew. */
export const sizeQuestion = (scenario: Scenario): Scenario => ({
  ...scenario,
  name: '',
  note: '',
  condenser: { ...scenario.condenser, length_m: ANY_LENGTH, tubePrice_m: 1 },
});

/** `null` when the question was given up or could not be answered. */
export async function lengthThatHolds(scenario: Scenario, signal: AbortSignal): Promise<EnoughLength | null> {
  try {
    return lengthOf(
      await workerPool().ask('sizeOwnTube', [sizeQuestion(scenario), USUAL_MARGIN], { signal, remember: true }),
    );
  } catch {
    return null;
  }
}
