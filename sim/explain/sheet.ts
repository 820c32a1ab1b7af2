/**
 * Sheets of working: how a headline number came about, step by step, with the equation, the values put in, where each
 * comes from, and whether the relation is used where it holds. The numbers are terms that the run itself reports.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
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
  /** Entry of the desk reference that gives the result; `null` for an own equation such as a balance. */
  readonly relation: string | null;
}

export interface WorkingSheet {
  readonly id: string;
  readonly title: string;
  /** What the number is and at what moment. */
  readonly says: string;
  /** Moment of the run that is shown; `null` for the run as a whole. */
  readonly time_s: number | null;
  readonly steps: readonly WorkingStep[];
  /** The number itself, which is that of the last step, and where the run has it. */
  readonly result: { readonly value: number; readonly unit: string; readonly from: string };
}

/** Where values come from that many steps share. */
export const RUN = 'the run at this moment';
export const STEP = 'step above';
export const BEFORE = 'the run, one step before';
export const LEDGER = 'ledger of the run';
export const TABLES = 'IAPWS R7-97(2012), read from the run’s tables';
export const BALANCE = 'balance of heat';
export const TIME_STEP = 'time step of the run';

/** A symbol of an own equation. */
export type Row = readonly [tex: string, value: number, unit: string, says: string, from: string];

/** What an own equation gives; `found` where that is not its left side. */
type Found = readonly [value: number, unit: string, source?: string, found?: string];

const written = (
  tex: string,
  symbols: readonly WorkingSymbol[],
  { tex: found, value, unit }: WorkingStep['result'],
): string => {
  const put = substituteTex(tex, symbols);
  const upright = unitTex(unit);
  const repeated = (put.match(/=/g) ?? []).length > 1 ? `\\ \\Rightarrow\\ ${found}` : '';
  return `${put}${repeated} = ${numberTex(value)}${upright === '' ? '' : `\\,${upright}`}`;
};

/**
 * A step written out: an own equation, such as a balance or a definition.
 * @param tex what stands behind `,\quad` only explains the equation
 */
export function writtenStep(title: string, tex: string, found: Found, ...given: readonly (Row | false)[]): WorkingStep {
  const [value, unit, source = 'definition', left = tex.slice(0, tex.indexOf('=')).trim()] = found;
  const rows = given.filter((row) => row !== false);
  const symbols = rows.map(([symbol, amount, of, says, from]) => ({
    tex: symbol,
    value: amount,
    unit: of,
    says,
    from,
  }));
  const result = { tex: left, value, unit };
  const valid = { inside: true, says: [] };
  return { title, tex, symbols, substituted: written(tex, symbols, result), result, valid, source, relation: null };
}

type Head = readonly [id: WorkingSheet['id'], title: string, time_s: number | null];

/** A sheet that ends in its last step's number; `from` says where the run has it. */
export function sheetOf(
  [id, title, time_s]: Head,
  says: string,
  from: string,
  ...given: readonly (WorkingStep | false | null)[]
): WorkingSheet {
  const steps = given.filter((step) => step !== false && step !== null);
  const { value, unit } = (steps.at(-1) as WorkingStep).result;
  return { id, title, says, time_s, steps, result: { value, unit, from } };
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

/** A step by a published relation: text, evaluation and range come from its entry, which takes what it needs. */
export function entryStep(name: string, given: Readonly<Record<string, Given>>, title?: string): WorkingStep {
  const entry = entryNamed(name);
  const all: Readonly<Record<string, Given>> = {
    g: [STANDARD_GRAVITY, 'standard acceleration of free fall'],
    ...given,
  };
  const symbols = Object.entries(entry.arguments).map(([key, { says, unit }]): WorkingSymbol => {
    const found = all[key];
    if (!found) throw new RangeError(`${name}: argument ${key} is missing`);
    return { tex: symbolTex(key), says, value: found[0], unit, from: found[1] };
  });
  const values = Object.fromEntries(Object.keys(entry.arguments).map((key, k) => [key, symbols[k]?.value as number]));
  const result = { tex: symbolTex(entry.result.symbol), value: entry.evaluate(values), unit: entry.result.unit };
  return {
    title: title ?? entry.says,
    tex: entry.tex,
    symbols,
    substituted: written(entry.tex, symbols, result),
    result,
    valid: validityOf(entry, values),
    source: entry.source,
    relation: name,
  };
}
