/** Edits of a scenario, checked before they count: a wrong one says what is wrong and leaves everything as it was. */
import { readScenario, type Problem, type Scenario } from '../../sim/index.ts';
import { valueAtPath, withValueAtPath } from './field-path.ts';

export type Edit =
  { readonly ok: true; readonly scenario: Scenario } | { readonly ok: false; readonly problems: readonly Problem[] };

const problemsOf = (scenario: Scenario): readonly Problem[] => {
  const read = readScenario(scenario);
  return read.ok ? [] : read.problems;
};

const sameProblem = (a: Problem, b: Problem): boolean => a.path === b.path && a.kind === b.kind;

/**
 * Several fields at once, so that rules that join fields see the whole change. What is not touched is shared. Only
 * problems that the edit brings are held against it; those that were there stay the scenario's own.
 */
export function changeMany(scenario: Scenario, values: Readonly<Record<string, unknown>>): Edit {
  const next = Object.entries(values).reduce(
    (whole, [path, value]) =>
      Object.is(valueAtPath(whole, path), value) ? whole : withValueAtPath(whole, path, value),
    scenario,
  );
  if (next === scenario) return { ok: true, scenario };
  const after = problemsOf(next);
  if (after.length === 0) return { ok: true, scenario: next };
  const before = problemsOf(scenario);
  const edited = Object.keys(values);
  const brought = after.filter(
    (problem) =>
      edited.some((path) => problem.path === path || problem.path.startsWith(`${path}.`)) ||
      !before.some((known) => sameProblem(known, problem)),
  );
  return brought.length === 0 ? { ok: true, scenario: next } : { ok: false, problems: brought };
}

export const change = (scenario: Scenario, path: string, value: unknown): Edit =>
  changeMany(scenario, { [path]: value });
