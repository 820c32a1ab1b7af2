/** What the length of one's own tube depends on, and nothing else, so that moving that length asks nothing anew. */
import type { Scenario } from '../../sim/index.ts';

/** Any length in the scenario: the question does not depend on it. */
const ANY_LENGTH = 5;

export const sizeQuestion = (scenario: Scenario): Scenario => ({
  ...scenario,
  name: '',
  note: '',
  condenser: { ...scenario.condenser, length_m: ANY_LENGTH, tubePrice_m: 1 },
});
