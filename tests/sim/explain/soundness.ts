/** What makes a sheet a derivation and not only a caption. */
import { entryNamed } from '../../../sim/explain/sheet.ts';
import type { WorkingSheet, WorkingStep } from '../../../sim/index.ts';
import { mismatch } from './equation.ts';

/** Share of what a side is summed from by which the two sides of an equation may differ: rounding, and what an iteration leaves. */
const ROUNDING = 1e-9;

/** A relation of the desk reference, evaluated anew from the values that are shown. */
function evaluated({ relation, symbols }: WorkingStep): number {
  const entry = entryNamed(relation as string);
  const keys = Object.keys(entry.arguments);
  return entry.evaluate(Object.fromEntries(keys.map((key, k) => [key, symbols[k]?.value as number])));
}

/**
 * Faults of a sheet: a number that is none; a step whose result does not follow from the values that it shows; a value
 * said to come from the step above that no step above has; a result that is not that of the last step.
 */
export function faults({ id, steps, result }: WorkingSheet): string[] {
  const found: string[] = [];
  const results: number[] = [];
  for (const step of steps) {
    const fault = (what: string) => found.push(`${id}, ${step.title}: ${what}`);
    if (!Number.isFinite(step.result.value)) fault(`the result is ${step.result.value}`);
    for (const { tex, value, from } of step.symbols) {
      if (!Number.isFinite(value)) fault(`${tex} is ${value}`);
      if (from === 'step above' && !results.includes(value)) fault(`no step above has ${tex} = ${value}`);
    }
    if (step.relation === null) {
      const off = mismatch(step);
      if (!(off <= ROUNDING)) fault(`the two sides differ by ${off} of their size`);
    } else if (evaluated(step) !== step.result.value) fault(`${step.relation} gives ${evaluated(step)}`);
    results.push(step.result.value);
  }
  if (results.at(-1) !== result.value)
    found.push(`${id}: ends in ${results.at(-1)}, and its result is ${result.value}`);
  return found;
}
