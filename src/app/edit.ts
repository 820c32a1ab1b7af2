/** Edits of a scenario, checked before they count: a wrong one says what is wrong and leaves everything as it was. */
import { readScenario, type Problem, type Scenario } from '../../sim/index.ts';
import { valueAtPath, withValueAtPath } from './change-at-path.ts';

export type Edit = { readonly ok: true; readonly scenario: Scenario } | { readonly ok: false; readonly problems: readonly Problem[] };

/** Several fields at once, so that rules that join fields see the whole change. What is not touched is shared. */
export function changeMany(scenario: Scenario, values: Readonly<Record<string, unknown>>): Edit {
  const next = Object.entries(values).reduce(
    (whole, [path, value]) => (Object.is(valueAtPath(whole, path), value) ? whole : withValueAtPath(whole, path, value)),
    scenario,
  );
  if (next === scenario) return { ok: true, scenario };
  const read = readScenario(next);
  return read.ok ? { ok: true, scenario: next } : { ok: false, problems: read.problems };
}

export const change = (scenario: Scenario, path: string, value: unknown): Edit => changeMany(scenario, { [path]: value });
