/**
 * A lesson that a teacher wrote: text, a still, one question with its kind of commitment. What is asked of the run is
 * worked out from it when it is asked for, like in every lesson; only which choice is right is told by who wrote it.
 */
import { simulate } from '../../run/simulate.ts';
import type { RunResult } from '../../run/result.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import {
  curveOfRun,
  type CurveColumn,
  type CurveQuantity,
  type LessonQuantity,
  type Question,
  type Truth,
} from './lesson.ts';

/** What can be asked of a run as one number, and what numbers it may be. SI. */
export interface Measure {
  readonly quantity: LessonQuantity;
  readonly least: number;
  readonly most: number;
  /** `null` where the run never comes to it. */
  of(run: RunResult): number | null;
}

const ZERO_CELSIUS_K = 273.15;
const DAY_S = 86_400;

const duration = (of: Measure['of']): Measure => ({ quantity: 'duration', least: 0, most: DAY_S, of });

export const MEASURES = {
  'first-boil': duration(({ summary }) => summary.firstBoil_s),
  'first-drop': duration(({ summary }) => summary.firstDrop_s),
  'half-of-oil': duration(({ summary }) => summary.t50_s),
  'nine-tenths-of-oil': duration(({ summary }) => summary.t90_s),
  'pot-dry': duration(({ summary }) => (summary.endReason === 'pot-dry' ? summary.end_s : null)),
  oil: { quantity: 'oilVolume', least: 0, most: 1e-3, of: ({ summary }) => summary.oilCollected_mL * 1e-6 },
  'water-over': { quantity: 'water', least: 0, most: 200, of: ({ summary }) => summary.hydrosol_kg },
  'water-left': { quantity: 'water', least: 0, most: 200, of: ({ summary }) => summary.potWaterLeft_kg },
  'warmest-distillate': {
    quantity: 'temperature',
    least: ZERO_CELSIUS_K,
    most: 403.15,
    of: ({ summary }) => (summary.condensatePeak_C === null ? null : summary.condensatePeak_C + ZERO_CELSIUS_K),
  },
  'warmest-cooling-water': {
    quantity: 'temperature',
    least: ZERO_CELSIUS_K,
    most: 403.15,
    of: ({ summary }) => summary.coolantPeakOut_C + ZERO_CELSIUS_K,
  },
  'steam-in-coil': { quantity: 'run', least: 0, most: 100, of: ({ summary }) => summary.condensingLengthPeak_m },
} as const satisfies Readonly<Record<string, Measure>>;

export type MeasureId = keyof typeof MEASURES;
export const MEASURE_IDS = Object.keys(MEASURES) as readonly MeasureId[];
export const findMeasure = (id: MeasureId): Measure => MEASURES[id];

/** The axis up of a curve: its kind of quantity, and what numbers it may span. SI. */
export const CURVE_AXES: Readonly<
  Record<CurveColumn, { readonly quantity: CurveQuantity; readonly least: number; readonly most: number }>
> = {
  potTemperature_K: { quantity: 'temperature', least: ZERO_CELSIUS_K, most: 403.15 },
  condensateTemperature_K: { quantity: 'temperature', least: ZERO_CELSIUS_K, most: 403.15 },
  coolantOut_K: { quantity: 'temperature', least: ZERO_CELSIUS_K, most: 403.15 },
  oilCollected_kg: { quantity: 'oilVolume', least: 0, most: 1e-3 },
  steamRate_kg_s: { quantity: 'steamFlow', least: 0, most: 0.02 },
  potWater_kg: { quantity: 'water', least: 0, most: 200 },
};

export const SHORTEST_CURVE_S = 600;
export const LONGEST_CURVE_S = 43_200;

export type OwnQuestion =
  | {
      readonly kind: 'choice';
      readonly ask: string;
      readonly options: readonly string[];
      /** Place of the right one in the list. */
      readonly right: number;
    }
  | {
      readonly kind: 'number';
      readonly ask: string;
      readonly measure: MeasureId;
      readonly min: number;
      readonly max: number;
    }
  | {
      readonly kind: 'curve';
      readonly ask: string;
      readonly column: CurveColumn;
      readonly min: number;
      readonly max: number;
      readonly until_s: number;
    };

export type OwnQuestionKind = OwnQuestion['kind'];

export interface OwnLesson {
  readonly title: string;
  readonly still: { readonly example: string } | { readonly scenario: Scenario };
  readonly setUp: string;
  readonly question: OwnQuestion;
  readonly explanation: string;
  readonly safety: string;
}

/** The one question of such a lesson. */
export const OWN_QUESTION = 'own';

/** A number is set in so many steps of its line; times in whole minutes. */
const LINE_STEPS = 100;
const MINUTE_S = 60;

const optionId = (place: number): string => `option-${place}`;

/** The question as the class meets it. */
export function askedOf(question: OwnQuestion): Question {
  if (question.kind === 'choice')
    return { kind: 'choice', id: OWN_QUESTION, options: question.options.map((_, place) => optionId(place)) };
  const { min, max } = question;
  if (question.kind === 'curve')
    return { ...question, id: OWN_QUESTION, quantity: CURVE_AXES[question.column].quantity };
  const { quantity } = findMeasure(question.measure);
  const even = (max - min) / LINE_STEPS;
  const step = quantity === 'duration' ? MINUTE_S * Math.max(1, Math.round(even / MINUTE_S)) : even;
  return { kind: 'number', id: OWN_QUESTION, quantity, min, max, step };
}

/** The options of a choice by the ids of the question. */
export const optionWords = (question: OwnQuestion): Readonly<Record<string, string>> =>
  question.kind === 'choice'
    ? Object.fromEntries(question.options.map((words, place) => [optionId(place), words]))
    : {};

export interface OwnAnswer {
  readonly id: 'own';
  readonly runs: readonly RunResult[];
  /** Nothing where the run never comes to what is asked. */
  readonly truths: Readonly<Record<string, Truth>>;
  readonly asked: { readonly measure: MeasureId; readonly value: number | null } | null;
}

function truthOf(question: OwnQuestion, run: RunResult): Truth | null {
  if (question.kind === 'choice') return { kind: 'choice', option: optionId(question.right) };
  if (question.kind === 'curve') return curveOfRun(run, question.column, question.until_s);
  const value = findMeasure(question.measure).of(run);
  return value === null ? null : { kind: 'number', value };
}

/** Runs the still of such a lesson and answers its question. */
export function answerOwnLesson(scenario: Scenario, question: OwnQuestion): OwnAnswer {
  const run = simulate(scenario);
  const truth = truthOf(question, run);
  return {
    id: 'own',
    runs: [run],
    truths: truth === null ? {} : { [OWN_QUESTION]: truth },
    asked:
      question.kind === 'number' ? { measure: question.measure, value: findMeasure(question.measure).of(run) } : null,
  };
}
