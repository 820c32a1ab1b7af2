/**
 * The desk reference: every property and relation the model uses, by name. Reads typed values, says whether they lie in
 * the range of the source, and evaluates the very function that the model calls.
 */
import type { Argument, Correlation } from '../correlation.ts';
import { ZERO_CELSIUS } from '../constants.ts';
import { fluidCorrelations } from '../fluids/index.ts';
import { blockedOutletCorrelations } from '../still/blocked-outlet.ts';
import { transferCorrelations } from '../transfer/index.ts';
import { coilGeometryCorrelations } from '../geometry/coil.ts';

export const correlations: readonly Correlation[] = [
  ...fluidCorrelations,
  ...transferCorrelations,
  ...blockedOutletCorrelations,
  ...coilGeometryCorrelations,
];

const byName = new Map(correlations.map((entry) => [entry.name, entry]));

export const findCorrelation = (name: string): Correlation | undefined => byName.get(name);

/** Fewest letters to change, add or drop to turn one word into another. */
function distance(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let i = 1; i <= from.length; i++) {
    const next = [i];
    for (let j = 1; j <= to.length; j++) {
      const swap = (row[j - 1] as number) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] as number) + 1, (next[j - 1] as number) + 1));
    }
    row = next;
  }
  return row[to.length] as number;
}

/** The few words of a list nearest to a mistyped one, best first: those that hold its parts, then those a few letters off. */
export function closestWords(typed: string, known: readonly string[], most = 5): string[] {
  const wanted = typed.toLowerCase();
  const parts = wanted.split(/[^a-z0-9]+/).filter((part) => part.length > 2);
  const score = (word: string): number =>
    distance(wanted, word) - 4 * parts.filter((part) => word.includes(part)).length;
  return [...known].sort((a, b) => score(a) - score(b) || a.length - b.length || (a < b ? -1 : 1)).slice(0, most);
}

/** Entries in whose name, sentence, symbol or source every word is found. */
export function searchCorrelations(words: string): readonly Correlation[] {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  return correlations.filter((entry) => {
    const text = [
      entry.name,
      entry.says,
      entry.source,
      entry.result.symbol,
      ...Object.values(entry.arguments).map(({ says }) => says),
    ]
      .join(' ')
      .toLowerCase();
    return wanted.every((word) => text.includes(word));
  });
}

/** Shown beside a value: `273.15 to 403.15 K`, or that the source gives no limits. */
export function rangeWords({ range, unit }: Pick<Argument, 'range' | 'unit'>): string {
  if (!range) return 'no limits given';
  const suffix = unit === '1' ? '' : ` ${unit}`;
  return range[1] >= Number.MAX_VALUE
    ? `at least ${plain(range[0])}${suffix}`
    : `${plain(range[0])} to ${plain(range[1])}${suffix}`;
}

/** Up to seven significant figures, as a reader would write the number. */
const plain = (value: number): string => String(Number(value.toPrecision(7)));

export interface LookUpProblem {
  /** The argument it is about, or the name that was asked for. */
  readonly about: string;
  readonly message: string;
}

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

/** A difference of temperatures, which no °C can state. */
const isDifference = (symbol: string): boolean => symbol.startsWith('dT');

const NUMBER = /^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i;
const CELSIUS = /^(.*?)\s*(°\s?c|c|degc)$/i;
const KELVIN = /^(.*?)\s*k$/i;

/** A typed value in the argument's SI unit: a number, for temperatures also `100C` or `373.15K`. NaN when it is neither. */
export function readValue(symbol: string, argument: Argument, typed: string): number {
  const text = typed.trim();
  if (NUMBER.test(text)) return Number(text);
  if (argument.unit !== 'K') return Number.NaN;
  const kelvin = KELVIN.exec(text)?.[1];
  if (kelvin !== undefined && NUMBER.test(kelvin)) return Number(kelvin);
  const celsius = CELSIUS.exec(text)?.[1];
  if (celsius === undefined || !NUMBER.test(celsius) || isDifference(symbol)) return Number.NaN;
  return Number((Number(celsius) + ZERO_CELSIUS).toPrecision(15));
}

/** `T is the temperature in K, 273.15 to 403.15 K`. */
const argumentWords = (symbol: string, argument: Argument): string =>
  `${symbol} is the ${argument.says} ${argument.unit === '1' ? 'as a pure number' : `in ${argument.unit}`}, ${rangeWords(argument)}`;

const within = (value: number, range: readonly [number, number] | undefined): boolean =>
  !range || (value >= range[0] && value <= range[1]);

function readArguments(
  entry: Correlation,
  typed: Readonly<Record<string, string>>,
): { values: Record<string, number>; problems: LookUpProblem[] } {
  const values: Record<string, number> = {};
  const problems: LookUpProblem[] = [];
  for (const [symbol, argument] of Object.entries(entry.arguments)) {
    const text = Object.hasOwn(typed, symbol) ? typed[symbol] : undefined;
    if (text === undefined) {
      problems.push({ about: symbol, message: `${symbol} is missing: ${argumentWords(symbol, argument)}.` });
      continue;
    }
    const value = readValue(symbol, argument, text);
    if (!Number.isFinite(value))
      problems.push({
        about: symbol,
        message: `${symbol}=${text} is not a number: ${argumentWords(symbol, argument)}.`,
      });
    values[symbol] = value;
  }
  const symbols = Object.keys(entry.arguments);
  for (const symbol of Object.keys(typed))
    if (!symbols.includes(symbol))
      problems.push({
        about: symbol,
        message: `${symbol} is not an argument of ${entry.name}; it takes ${symbols.map((known) => argumentWords(known, entry.arguments[known] as Argument)).join('; ')}.`,
      });
  return { values, problems };
}

/** Evaluates an entry for typed values, or says of each mistake what it is about and what is allowed. */
export function lookUp(name: string, typed: Readonly<Record<string, string>>): LookUp {
  const entry = findCorrelation(name);
  if (!entry)
    return {
      ok: false,
      problems: [
        {
          about: name,
          message: `“${name}” is not in the desk reference; the closest are ${closestWords(name, [...byName.keys()]).join(', ')}.`,
        },
      ],
    };
  const { values, problems } = readArguments(entry, typed);
  if (problems.length > 0) return { ok: false, problems };
  try {
    const value = entry.evaluate(values);
    if (!Number.isFinite(value))
      return {
        ok: false,
        problems: [
          {
            about: name,
            message: `${name} has no finite value for ${Object.entries(values)
              .map(([symbol, given]) => `${symbol} = ${given}`)
              .join(', ')}.`,
          },
        ],
      };
    return { ok: true, answer: answerOf(entry, values, value) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ok: false, problems: [{ about: name, message: `${error.message}.` }] };
  }
}

function answerOf(entry: Correlation, values: Readonly<Record<string, number>>, value: number): LookUpAnswer {
  const limits: LimitCheck[] = [
    ...Object.entries(entry.arguments).map(([symbol, { says, unit, range }]) => ({
      symbol,
      says,
      unit,
      value: values[symbol] as number,
      range: range ?? null,
      inRange: within(values[symbol] as number, range),
    })),
    ...(entry.checks ?? []).map((check) => {
      const found = check.value(values);
      return {
        symbol: check.symbol,
        says: check.says,
        unit: '1',
        value: found,
        range: check.range,
        inRange: within(found, check.range),
      };
    }),
  ];
  return {
    name: entry.name,
    says: entry.says,
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
