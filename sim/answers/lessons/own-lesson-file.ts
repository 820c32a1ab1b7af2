/** A teacher's lesson as a file: what it holds, its version, and what is wrong with one that cannot be taught. */
import * as z from 'zod/mini';
import { exampleScenario, examples } from '../../run/examples.ts';
import { isObject } from '../../scenario/json.ts';
import type { Problem } from '../../scenario/problem.ts';
import { readScenario } from '../../scenario/read-scenario.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { CURVE_COLUMNS, type CurveQuantity, type LessonQuantity } from './lesson.ts';
import {
  CURVE_AXES,
  findMeasure,
  LONGEST_CURVE_S,
  MEASURE_IDS,
  SHORTEST_CURVE_S,
  type OwnLesson,
  type OwnQuestion,
} from './own-lesson.ts';

export const OWN_LESSON_KIND = 'limbeck-lesson';
export const OWN_LESSON_VERSION = 1;

/** Most characters of each text. */
export const TEXT_LENGTHS = { title: 80, setUp: 400, ask: 200, option: 100, explanation: 700, safety: 300 } as const;
export const FEWEST_OPTIONS = 2;
export const MOST_OPTIONS = 4;

/** One mistake: the field by its path in the file, what stands there, and what is allowed. */
export type OwnLessonProblem = {
  readonly [K in keyof OwnProblemValues]: {
    readonly kind: K;
    readonly path: string;
    readonly value: unknown;
    readonly values: OwnProblemValues[K];
  };
}[keyof OwnProblemValues];

type Nothing = Readonly<Record<never, never>>;

export interface OwnProblemValues {
  'not-a-lesson': Nothing;
  'other-version': { readonly version: number };
  'unknown-field': Nothing;
  'no-text': { readonly most: number };
  'too-long': { readonly length: number; readonly most: number };
  /** Text only: a page of its own could do anything to the reader's. */
  'has-tags': Nothing;
  'not-an-option': { readonly options: readonly string[] };
  'option-count': { readonly least: number; readonly most: number };
  'no-such-option': { readonly count: number };
  'outside-range': { readonly quantity: LessonQuantity | CurveQuantity; readonly least: number; readonly most: number };
  'ends-reversed': { readonly quantity: LessonQuantity | CurveQuantity; readonly min: number };
  'bad-still': { readonly problem: Problem };
}

export type ReadOwnLesson =
  | { readonly ok: true; readonly lesson: OwnLesson }
  | { readonly ok: false; readonly problems: readonly OwnLessonProblem[] };

const anything = z.unknown();
const base = { ask: anything };
const shape = z.strictObject({
  kind: z.literal(OWN_LESSON_KIND),
  version: z.literal(OWN_LESSON_VERSION),
  title: anything,
  still: z.union([z.strictObject({ example: anything }), z.strictObject({ scenario: anything })]),
  setUp: anything,
  question: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('choice'), ...base, options: z.array(anything), right: anything }),
    z.strictObject({ kind: z.literal('number'), ...base, measure: anything, min: anything, max: anything }),
    z.strictObject({
      kind: z.literal('curve'),
      ...base,
      column: anything,
      min: anything,
      max: anything,
      until_s: anything,
    }),
  ]),
  explanation: anything,
  safety: z._default(anything, ''),
});

const KINDS = ['choice', 'number', 'curve'] as const;
const TAG = /<\/?[a-z][^>]*>/iu;

const valueAt = (json: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>((node, key) => (node as Record<PropertyKey, unknown> | undefined)?.[key], json);

/** The first thing wrong with the shape of a file. */
function shapeProblem(json: unknown, issue: z.core.$ZodIssue): OwnLessonProblem {
  const path = issue.path.map(String).join('.');
  const value = valueAt(json, issue.path);
  if (issue.code === 'unrecognized_keys') {
    const [key = ''] = issue.keys;
    const whole = path === '' ? key : `${path}.${key}`;
    return { kind: 'unknown-field', path: whole, value: valueAt(json, [...issue.path, key]), values: {} };
  }
  if (path === 'question' || path === 'question.kind')
    return {
      kind: 'not-an-option',
      path: 'question.kind',
      value: valueAt(json, ['question', 'kind']),
      values: { options: KINDS },
    };
  if (path === 'question.options')
    return { kind: 'option-count', path, value, values: { least: FEWEST_OPTIONS, most: MOST_OPTIONS } };
  if (path.startsWith('still'))
    return { kind: 'not-an-option', path: 'still', value, values: { options: ['example', 'scenario'] } };
  return { kind: 'not-a-lesson', path, value, values: {} };
}

export function readOwnLesson(json: unknown): ReadOwnLesson {
  if (!isObject(json) || json['kind'] !== OWN_LESSON_KIND)
    return { ok: false, problems: [{ kind: 'not-a-lesson', path: '', value: json, values: {} }] };
  if (json['version'] !== OWN_LESSON_VERSION)
    return {
      ok: false,
      problems: [
        { kind: 'other-version', path: 'version', value: json['version'], values: { version: OWN_LESSON_VERSION } },
      ],
    };
  const read = shape.safeParse(json);
  if (!read.success) return { ok: false, problems: read.error.issues.map((issue) => shapeProblem(json, issue)) };
  const given = read.data;
  const problems: OwnLessonProblem[] = [];

  const text = (path: string, value: unknown, most: number, isNeeded = true): string => {
    if (typeof value !== 'string' || (isNeeded && value.trim() === '')) {
      problems.push({ kind: 'no-text', path, value, values: { most } });
      return '';
    }
    const written = value.trim();
    if (written.length > most)
      problems.push({ kind: 'too-long', path, value, values: { length: written.length, most } });
    if (TAG.test(written)) problems.push({ kind: 'has-tags', path, value, values: {} });
    return written;
  };
  const option = <T extends string>(path: string, value: unknown, options: readonly T[]): T | null => {
    const found = options.find((each) => each === value) ?? null;
    if (found === null) problems.push({ kind: 'not-an-option', path, value, values: { options } });
    return found;
  };
  const number = (
    path: string,
    value: unknown,
    quantity: LessonQuantity | CurveQuantity,
    least: number,
    most: number,
  ): number => {
    if (typeof value === 'number' && value >= least && value <= most) return value;
    problems.push({ kind: 'outside-range', path, value, values: { quantity, least, most } });
    return Number.NaN;
  };
  const ends = (
    { min, max }: { readonly min: unknown; readonly max: unknown },
    {
      quantity,
      least,
      most,
    }: { readonly quantity: LessonQuantity | CurveQuantity; readonly least: number; readonly most: number },
  ) => {
    const low = number('question.min', min, quantity, least, most);
    const high = number('question.max', max, quantity, least, most);
    if (low >= high)
      problems.push({ kind: 'ends-reversed', path: 'question.max', value: max, values: { quantity, min: low } });
    return { min: low, max: high };
  };

  const question = ((): OwnQuestion | null => {
    const asked = given.question;
    const ask = text('question.ask', asked.ask, TEXT_LENGTHS.ask);
    if (asked.kind === 'choice') {
      const options = asked.options.map((words, place) =>
        text(`question.options.${place}`, words, TEXT_LENGTHS.option),
      );
      const count = options.length;
      if (count < FEWEST_OPTIONS || count > MOST_OPTIONS)
        problems.push({
          kind: 'option-count',
          path: 'question.options',
          value: asked.options,
          values: { least: FEWEST_OPTIONS, most: MOST_OPTIONS },
        });
      const { right } = asked;
      if (typeof right !== 'number' || !Number.isInteger(right) || right < 0 || right >= count) {
        problems.push({ kind: 'no-such-option', path: 'question.right', value: right, values: { count } });
        return null;
      }
      return { kind: 'choice', ask, options, right };
    }
    if (asked.kind === 'number') {
      const measure = option('question.measure', asked.measure, MEASURE_IDS);
      return measure && { kind: 'number', ask, measure, ...ends(asked, findMeasure(measure)) };
    }
    const column = option('question.column', asked.column, CURVE_COLUMNS);
    const until_s = number('question.until_s', asked.until_s, 'duration', SHORTEST_CURVE_S, LONGEST_CURVE_S);
    return column && { kind: 'curve', ask, column, ...ends(asked, CURVE_AXES[column]), until_s };
  })();

  const still = ((): OwnLesson['still'] | null => {
    if ('example' in given.still) {
      const example = option(
        'still.example',
        given.still.example,
        examples.map(({ id }) => id),
      );
      return example === null ? null : { example };
    }
    const scenario = readScenario(given.still.scenario);
    if (scenario.ok) return { scenario: scenario.scenario };
    for (const problem of scenario.problems)
      problems.push({
        kind: 'bad-still',
        path: `still.scenario.${problem.path}`,
        value: problem.value,
        values: { problem },
      });
    return null;
  })();

  const lesson = {
    title: text('title', given.title, TEXT_LENGTHS.title),
    setUp: text('setUp', given.setUp, TEXT_LENGTHS.setUp),
    explanation: text('explanation', given.explanation, TEXT_LENGTHS.explanation),
    safety: text('safety', given.safety, TEXT_LENGTHS.safety, false),
  };
  return problems.length > 0 || question === null || still === null
    ? { ok: false, problems }
    : { ok: true, lesson: { ...lesson, still, question } };
}

/** What a file of it holds. */
export const writtenOwnLesson = (lesson: OwnLesson): unknown => ({
  kind: OWN_LESSON_KIND,
  version: OWN_LESSON_VERSION,
  ...lesson,
});

export const stillOf = ({ still }: OwnLesson): Scenario =>
  'example' in still ? exampleScenario(still.example) : still.scenario;
