/** A lesson that a teacher writes: its fields, what can be asked, and what is wrong with it, in English. */
import type { CurveColumn } from '../../answers/lessons/lesson.ts';
import type { OwnProblemValues } from '../../answers/lessons/own-lesson-file.ts';
import type { MeasureId, OwnQuestionKind } from '../../answers/lessons/own-lesson.ts';
import type { Quantities } from '../quantities.ts';
import { kindUnit, type KindName } from '../../units/index.ts';

const FIELDS: Readonly<Record<string, string>> = {
  title: 'Title',
  still: 'Still',
  'still.example': 'Example',
  setUp: 'The still, and what is done with it',
  'question.kind': 'The class answers by',
  'question.ask': 'Question',
  'question.options': 'Answers to choose from',
  'question.right': 'The right answer',
  'question.measure': 'Asked of the run',
  'question.column': 'Drawn over time',
  'question.min': 'From',
  'question.max': 'To',
  'question.until_s': 'Length of the time axis',
  explanation: 'Why it is so',
  safety: 'Safety note',
};

const KINDS: Readonly<Record<OwnQuestionKind, string>> = {
  choice: 'choosing',
  number: 'setting a number',
  curve: 'drawing a curve',
};

const MEASURES: Readonly<Record<MeasureId, string>> = {
  'first-boil': 'time until it boils',
  'first-drop': 'time until the first drop',
  'half-of-oil': 'time until half the oil is over',
  'nine-tenths-of-oil': 'time until nine tenths of the oil are over',
  'pot-dry': 'time until the pot is dry',
  oil: 'oil collected',
  'water-over': 'water that came over',
  'water-left': 'water left in the pot',
  'warmest-distillate': 'warmest distillate',
  'warmest-cooling-water': 'warmest cooling water',
  'steam-in-coil': 'how far the steam got in the coil',
};

const COLUMNS: Readonly<Record<CurveColumn, string>> = {
  potTemperature_K: 'temperature in the pot',
  condensateTemperature_K: 'temperature of the distillate',
  coolantOut_K: 'temperature of the cooling water that runs off',
  oilCollected_kg: 'oil collected',
  steamRate_kg_s: 'steam',
  potWater_kg: 'water in the pot',
};

const LONGEST_SHOWN = 60;

export const ownLesson = (q: Quantities) => {
  const range = (kind: KindName, least: number, most: number) => q.range(least, most, kindUnit(kind), kind);
  const given = (value: unknown, kind?: KindName): string => {
    if (typeof value === 'number') return kind === undefined ? String(value) : q.typed(value, kindUnit(kind), kind);
    if (typeof value !== 'string') return 'this';
    return `“${value.length > LONGEST_SHOWN ? `${value.slice(0, LONGEST_SHOWN - 1)}…` : value}”`;
  };
  const allowed: {
    readonly [K in Exclude<keyof OwnProblemValues, 'bad-still'>]: (values: OwnProblemValues[K]) => string;
  } = {
    'not-a-lesson': () => 'a lesson’s file is needed, as this page saves it',
    'other-version': ({ version }) => `this program reads version ${version}`,
    'unknown-field': () => 'no field has this name',
    'no-text': ({ most }) => `a text of at most ${most} letters is needed`,
    'too-long': ({ length, most }) => `it has ${length} letters, at most ${most} are allowed`,
    'has-tags': () => 'only plain text is allowed, no tags in angle brackets',
    'not-an-option': ({ options }) => `allowed is ${options.join(', ')}`,
    'option-count': ({ least, most }) => `${least} to ${most} answers are allowed`,
    'no-such-option': ({ count }) => `mark one of the ${count} answers as right`,
    'outside-range': ({ quantity, least, most }) => `allowed is ${range(quantity, least, most)}`,
    'ends-reversed': ({ quantity, min }) => `it must be more than ${q.typed(min, kindUnit(quantity), quantity)}`,
  };
  return {
    fields: FIELDS,
    kinds: KINDS,
    measures: MEASURES,
    columns: COLUMNS,
    given,
    allowed,
    notALesson: (what: string): string => `This is not a lesson; ${what}.`,
    missing: (name: string, what: string): string => `${name} is missing; ${what}.`,
    sentence: (name: string, value: string, what: string): string => `${name}: ${value} is not possible; ${what}.`,
    /** The field, where a file names it. */
    option: (place: number): string => `Answer ${place}`,
    ofStill: (sentence: string): string => `The lesson’s still. ${sentence}`,
  };
};
