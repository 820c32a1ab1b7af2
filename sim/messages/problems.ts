/**
 * Problems with an input as sentences that name the field, the value and what is allowed: for the page in the reader's
 * units, for a file in the names and SI numbers that stand in it.
 */
import type { Problem, ProblemKind, ProblemValues } from '../scenario/problem.ts';
import { THIN_SPACE } from '../units/index.ts';
import { problems, type FieldFigures } from './english/problems.ts';
import type { Reader } from './language.ts';
import { quantities } from './quantities.ts';
import { section } from './section.ts';

export type ProblemMessages = ReturnType<typeof problems>;

const problemMessages = section<ProblemMessages>({ en: problems });

const LONGEST_VALUE = 60;
const shortened = (text: string): string =>
  text.length > LONGEST_VALUE ? `${text.slice(0, LONGEST_VALUE - 3)}…` : text;

const allowedOf = <K extends ProblemKind>(
  problem: Problem<K>,
  words: ProblemMessages,
  figures: FieldFigures,
): string => {
  const { kind, values } = problem as { readonly kind: K; readonly values: ProblemValues[K] };
  return words.allowed[kind](values, figures);
};

/** A problem as it is said beside the field. */
export function problemMessage(problem: Problem, reader: Reader): string {
  const words = problemMessages(reader);
  const q = quantities(reader);
  const { path, title, unit, value } = problem;
  const given = (): string => {
    if (value === undefined || value === null) return words.nothing;
    if (typeof value === 'number') return Number.isFinite(value) ? q.typed(value, unit, path) : String(value);
    return typeof value === 'string' ? `“${shortened(value)}”` : words.something;
  };
  const limit = (which: 'least' | 'most') => (limit: number) => q.limit(which, limit, unit, path);
  const allowed = allowedOf(problem, words, {
    range: (min, max) => q.range(min, max, unit, path),
    least: limit('least'),
    most: limit('most'),
    at: q.time,
    option: (id) => `“${id}”`,
    orOpen: words.orEmpty,
  });
  return words.sentence(title ?? (path === '' ? words.wholeFile : path), given(), allowed);
}

/** Any value as JSON; its type where JSON cannot hold it (a program may hand over anything). */
const asJson = (value: unknown): string => {
  try {
    return JSON.stringify(value) ?? typeof value;
  } catch {
    return typeof value;
  }
};

/** A problem as it stands in a file: with the path, and every number in SI. */
export function fileProblemMessage(problem: Problem, reader: Reader): string {
  const words = problemMessages(reader);
  const { path, title, unit, value } = problem;
  const stored = (number: number): string => (unit === '1' ? String(number) : `${number}${THIN_SPACE}${unit}`);
  const given = (): string => {
    if (value === undefined) return words.nothing;
    return typeof value === 'number' ? String(value) : shortened(asJson(value));
  };
  const limit = (number: number): string => stored(Number(number.toPrecision(6)));
  const allowed = allowedOf(problem, words, {
    range: (min, max) => `${min}–${stored(max)}`,
    least: limit,
    most: limit,
    at: (time_s) => `${time_s}${THIN_SPACE}s`,
    option: (id) => JSON.stringify(id),
    orOpen: words.orNull,
  });
  const name = title === null ? path : `${title} (${path})`;
  return words.sentence(name === '' ? words.wholeFile : name, given(), allowed);
}
