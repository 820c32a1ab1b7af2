/**
 * The desk reference answers: evaluates the very function that the model calls, and says whether the values lie in the
 * range of the source. Reads values as typed at the command line; what is wrong with them is told as facts.
 */
import { ZERO_CELSIUS } from '../constants.ts';
import type { Argument, Correlation, Role } from '../correlation.ts';
import { closestWords } from './closest-words.ts';
import { correlations, findCorrelation } from './entries.ts';

export type LookUpProblem =
  | { readonly kind: 'unknown-name'; readonly name: string; readonly closest: readonly string[] }
  | { readonly kind: 'missing'; readonly symbol: string; readonly argument: Argument }
  | { readonly kind: 'unreadable'; readonly symbol: string; readonly argument: Argument; readonly typed: string }
  | { readonly kind: 'not-an-argument'; readonly symbol: string; readonly entry: Correlation }
  | { readonly kind: 'no-value'; readonly entry: Correlation; readonly values: Readonly<Record<string, number>> }
  | { readonly kind: 'out-of-range'; readonly name: string; readonly detail: string };

export interface LimitCheck {
  readonly symbol: string;
  readonly says: string;
  readonly unit: string;
  readonly value: number;
  readonly range: readonly [number, number] | null;
  readonly inRange: boolean;
}

export interface LookUpAnswer {
  readonly name: string;
  readonly says: string;
  readonly role: Role;
  readonly symbol: string;
  readonly value: number;
  readonly unit: string;
  readonly inRange: boolean;
  /** Every argument, then every limit on something computed from them. */
  readonly limits: readonly LimitCheck[];
  /** What the relation does outside its range. */
  readonly outside: string;
  readonly source: string;
  readonly tex: string;
}

export type LookUp =
  | { readonly ok: true; readonly answer: LookUpAnswer }
  | { readonly ok: false; readonly problems: readonly LookUpProblem[] };

const within = (value: number, range: readonly [number, number] | undefined): boolean =>
  !range || (value >= range[0] && value <= range[1]);

/** Every argument against its range, then every limit on something computed from them. */
export function limitsOf(entry: Correlation, values: Readonly<Record<string, number>>): readonly LimitCheck[] {
  return [
    ...Object.entries(entry.arguments).map(([symbol, { says, unit, range }]) => ({
      symbol,
      says,
      unit,
      value: values[symbol] as number,
      range: range ?? null,
      inRange: within(values[symbol] as number, range),
    })),
    ...(entry.checks ?? []).map((check) => {
      const value = check.value(values);
      const { symbol, says, range } = check;
      return { symbol, says, unit: '1', value, range, inRange: within(value, range) };
    }),
  ];
}

/** A quantity beyond all measure is told by the largest number. */
const isMeasurable = (value: number): boolean => Number.isFinite(value) && Math.abs(value) < Number.MAX_VALUE;

/** The value, or `null` where the relation gives none. */
export function evaluateAt(entry: Correlation, values: Readonly<Record<string, number>>): number | null {
  try {
    const value = entry.evaluate(values);
    return isMeasurable(value) ? value : null;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return null;
  }
}

const NUMBER = /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i;
const CELSIUS = /^(.*?)\s*(°\s?c|c|degc)$/i;
const KELVIN = /^(.*?)\s*k$/i;

/** A typed value in the argument's SI unit: a number, for temperatures also `100C` or `373.15K`. NaN when it is neither. */
export function readValue(argument: Argument, typed: string): number {
  const text = typed.trim();
  if (NUMBER.test(text)) return Number(text);
  if (argument.unit !== 'K') return Number.NaN;
  const kelvin = KELVIN.exec(text)?.[1];
  if (kelvin !== undefined && NUMBER.test(kelvin)) return Number(kelvin);
  const celsius = CELSIUS.exec(text)?.[1];
  if (celsius === undefined || !NUMBER.test(celsius) || argument.isDifference) return Number.NaN;
  return Number((Number(celsius) + ZERO_CELSIUS).toPrecision(15));
}

function readArguments(
  entry: Correlation,
  typed: Readonly<Record<string, string>>,
): { values: Record<string, number>; problems: LookUpProblem[] } {
  const values: Record<string, number> = {};
  const problems: LookUpProblem[] = [];
  for (const [symbol, argument] of Object.entries(entry.arguments)) {
    const text = Object.hasOwn(typed, symbol) ? typed[symbol] : undefined;
    if (text === undefined) {
      problems.push({ kind: 'missing', symbol, argument });
      continue;
    }
    const value = readValue(argument, text);
    if (!Number.isFinite(value)) problems.push({ kind: 'unreadable', symbol, argument, typed: text });
    values[symbol] = value;
  }
  for (const symbol of Object.keys(typed))
    if (!Object.hasOwn(entry.arguments, symbol)) problems.push({ kind: 'not-an-argument', symbol, entry });
  return { values, problems };
}

/** Evaluates an entry for typed values, or tells of each mistake what it is about and what is allowed. */
export function lookUp(name: string, typed: Readonly<Record<string, string>>): LookUp {
  const entry = findCorrelation(name);
  const refused = (...problems: readonly LookUpProblem[]): LookUp => ({ ok: false, problems });
  if (!entry) {
    const closest = closestWords(
      name,
      correlations.map((known) => known.name),
    );
    return refused({ kind: 'unknown-name', name, closest });
  }
  const { values, problems } = readArguments(entry, typed);
  if (problems.length > 0) return refused(...problems);
  try {
    const value = entry.evaluate(values);
    return Number.isFinite(value)
      ? { ok: true, answer: answerOf(entry, values, value) }
      : refused({ kind: 'no-value', entry, values });
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return refused({ kind: 'out-of-range', name, detail: error.message });
  }
}

function answerOf(entry: Correlation, values: Readonly<Record<string, number>>, value: number): LookUpAnswer {
  const limits = limitsOf(entry, values);
  return {
    name: entry.name,
    says: entry.says,
    role: entry.role ?? 'engine',
    symbol: entry.result.symbol,
    value,
    unit: entry.result.unit,
    inRange: limits.every((limit) => limit.inRange),
    limits,
    outside: entry.outside,
    source: entry.source,
    tex: entry.tex,
  };
}
