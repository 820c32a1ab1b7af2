/**
 * Sheets of working: how a headline number came about, step by step, with the equation, the values put in, where each
 * comes from, and whether the relation is used where it holds.
 */
import type { Correlation } from '../correlation.ts';
import { fluidCorrelations } from '../fluids/index.ts';
import { transferCorrelations } from '../transfer/index.ts';
import { numberTex, substituteTex, symbolTex, unitTex } from './tex.ts';

export interface WorkingSymbol {
  readonly tex: string;
  /** What it is, in plain words. */
  readonly says: string;
  readonly value: number;
  readonly unit: string;
  /** Where the value comes from: a field of the scenario, the run at this moment, a step above, a property. */
  readonly from: string;
}

export interface WorkingValidity {
  readonly inside: boolean;
  /** One sentence a limit: the number and its range; empty for balances and definitions. */
  readonly says: readonly string[];
}

export interface WorkingStep {
  readonly title: string;
  /** The equation with symbols, TeX. */
  readonly tex: string;
  readonly symbols: readonly WorkingSymbol[];
  /** The same equation with numbers and the result, TeX. */
  readonly substituted: string;
  readonly result: { readonly tex: string; readonly value: number; readonly unit: string };
  readonly valid: WorkingValidity;
  readonly source: string;
}

export interface WorkingSheet {
  readonly id: string;
  readonly title: string;
  /** What the number is and at what moment. */
  readonly says: string;
  /** Moment of the run that is shown; `null` for the run as a whole. */
  readonly time_s: number | null;
  readonly steps: readonly WorkingStep[];
  readonly result: { readonly value: number; readonly unit: string };
  /** The run's own number, which the result equals, and where it stands. */
  readonly ofRun: { readonly value: number; readonly from: string };
}

export const symbol = (tex: string, says: string, value: number, unit: string, from: string): WorkingSymbol => ({
  tex,
  says,
  value,
  unit,
  from,
});

const EXACT: WorkingValidity = { inside: true, says: [] };

export interface StepText {
  readonly title: string;
  readonly tex: string;
  readonly symbols: readonly WorkingSymbol[];
  readonly result: { readonly tex: string; readonly value: number; readonly unit: string };
  readonly source: string;
  readonly valid?: WorkingValidity;
}

/** A step written out: an own equation, such as a balance or a definition. */
export function writtenStep({ title, tex, symbols, result, source, valid = EXACT }: StepText): WorkingStep {
  const unit = unitTex(result.unit);
  const put = substituteTex(tex, symbols);
  return {
    title,
    tex,
    symbols,
    result,
    source,
    valid,
    substituted: `${put}${(put.match(/=/g) ?? []).length > 1 ? `\\ \\Rightarrow\\ ${result.tex}` : ''} = ${numberTex(result.value)}${unit === '' ? '' : `\\,${unit}`}`,
  };
}

const entries: ReadonlyMap<string, Correlation> = new Map(
  [...transferCorrelations, ...fluidCorrelations].map((entry) => [entry.name, entry]),
);

/** An entry of the desk reference by its name. */
export function entryNamed(name: string): Correlation {
  const found = entries.get(name);
  if (!found) throw new RangeError(`no relation is called “${name}”`);
  return found;
}

const span = ([low, high]: readonly [number, number]): string =>
  high >= 1e300
    ? `from ${Number(low.toPrecision(4))} up`
    : `${Number(low.toPrecision(4))} to ${Number(high.toPrecision(4))}`;

/** Whether the values lie where the source supports a relation. */
function validityOf(entry: Correlation, values: Readonly<Record<string, number>>): WorkingValidity {
  const limits: { readonly name: string; readonly value: number; readonly range: readonly [number, number] }[] = [];
  for (const [key, { says, range }] of Object.entries(entry.arguments)) {
    const value = values[key];
    if (range !== undefined && value !== undefined) limits.push({ name: says, value, range });
  }
  for (const check of entry.checks ?? [])
    limits.push({ name: check.says, value: check.value(values), range: check.range });
  const within = ({ value, range: [low, high] }: (typeof limits)[number]) => value >= low && value <= high;
  return {
    inside: limits.every(within),
    says: limits.map(
      (limit) =>
        `${limit.name}: ${Number(limit.value.toPrecision(4))} is ${within(limit) ? 'within' : 'outside'} ${span(limit.range)}${within(limit) ? '' : `; the relation is ${entry.outside}`}`,
    ),
  };
}

/** A value for an argument of an entry, and where it comes from. */
export type Given = readonly [value: number, from: string];

/** A step by a published relation: text, evaluation and range come from its entry. */
export function entryStep(name: string, given: Readonly<Record<string, Given>>, title?: string): WorkingStep {
  const entry = entryNamed(name);
  const values = Object.fromEntries(Object.entries(given).map(([key, [value]]) => [key, value]));
  const symbols = Object.entries(entry.arguments).map(([key, { says, unit }]): WorkingSymbol => {
    const [value, from] = given[key] ?? [Number.NaN, 'missing'];
    return symbol(symbolTex(key), says, value, unit, from);
  });
  return writtenStep({
    title: title ?? entry.says,
    tex: entry.tex,
    symbols,
    result: { tex: symbolTex(entry.result.symbol), value: entry.evaluate(values), unit: entry.result.unit },
    source: entry.source,
    valid: validityOf(entry, values),
  });
}
