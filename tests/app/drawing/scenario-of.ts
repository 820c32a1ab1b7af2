/** A complete scenario from the few fields a test speaks of. */
import { readScenario, type Scenario, type ScenarioInput } from '../../../sim/index.ts';

export function scenarioOf(input: ScenarioInput = {}): Scenario {
  const read = readScenario(input);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.scenario;
}
