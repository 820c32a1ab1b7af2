/** A valid scenario with a few fields set, for tests of the settings. */
import { readScenario, type Scenario } from '../../../sim/index.ts';
import { withValueAtPath } from '../../../src/state/field-path.ts';

export function still(values: Readonly<Record<string, unknown>> = {}): Scenario {
  const read = readScenario({});
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return Object.entries(values).reduce((whole, [path, value]) => withValueAtPath(whole, path, value), read.scenario);
}

/** Thin and narrow spaces as plain ones. */
export const said = (text: string): string => text.replace(/\u202f/gu, ' ');
