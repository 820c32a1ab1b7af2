/**
 * A lesson: stills to run, questions to which a class commits itself, and what the model answers at that moment. Nothing
 * of the answer stands in a lesson itself: it is worked out from the runs when it is asked for.
 */
import { Oil } from '../../still/oil.ts';
import { readScenario } from '../../scenario/read-scenario.ts';
import type { Scenario, ScenarioInput } from '../../scenario/scenario.ts';
import type { ColumnName } from '../../run/record.ts';
import type { RunResult } from '../../run/result.ts';
import type { LessonFacts, LessonId } from './facts.ts';

/** A commitment: one of a few, a place on a line, or a curve on axes that are laid down before the run is known. SI. */
export type Question =
  | { readonly kind: 'choice'; readonly id: string; readonly options: readonly string[] }
  | {
      readonly kind: 'number';
      readonly id: string;
      /** Kind of quantity, which says the unit to show. */
      readonly quantity: LessonQuantity;
      readonly min: number;
      readonly max: number;
      readonly step: number;
    }
  | {
      readonly kind: 'curve';
      readonly id: string;
      readonly column: CurveColumn;
      readonly quantity: CurveQuantity;
      readonly until_s: number;
      readonly min: number;
      readonly max: number;
    };

export type LessonQuantity =
  | 'temperature'
  | 'run'
  | 'duration'
  | 'share'
  | 'altitude'
  | 'water'
  | 'mass'
  | 'size'
  | 'distillateFlow'
  | 'oilVolume';

export type CurveQuantity = 'temperature' | 'oilVolume' | 'steamFlow' | 'water';

/** What can be drawn over time. */
export const CURVE_COLUMNS = [
  'potTemperature_K',
  'condensateTemperature_K',
  'coolantOut_K',
  'oilCollected_kg',
  'steamRate_kg_s',
  'potWater_kg',
] as const satisfies readonly ColumnName[];
export type CurveColumn = (typeof CURVE_COLUMNS)[number];

/** Something to turn: by the class before it commits itself, or afterwards, to try. */
export type Control =
  | {
      readonly kind: 'number';
      readonly id: string;
      readonly quantity: LessonQuantity;
      readonly min: number;
      readonly max: number;
      readonly step: number;
      readonly start: number;
    }
  | { readonly kind: 'choice'; readonly id: string; readonly options: readonly string[]; readonly start: string };

/** Where the controls stand, by their ids; those left out stand at their start. */
export type Turned = Readonly<Record<string, number | string>>;

export type Truth =
  | { readonly kind: 'choice'; readonly option: string }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'curve'; readonly at_s: readonly number[]; readonly values: readonly number[] };

/** What can go wrong with the real thing, and is to be said where the lesson shows it. */
export const LESSON_HAZARDS = ['steam', 'flame', 'hot-water', 'neat-oil', 'closed-outlet', 'dry-pot'] as const;
export type LessonHazard = (typeof LESSON_HAZARDS)[number];

/** Where the working of the number stands: a sheet about the run, or an entry of the reference. */
export type LessonWorking =
  { readonly kind: 'sheet'; readonly id: string } | { readonly kind: 'entry'; readonly name: string };

export interface Lesson<Id extends LessonId = LessonId> {
  readonly id: Id;
  readonly questions: readonly Question[];
  /** Turned by the class before it commits itself. */
  readonly choose: Control | null;
  /** Turned at the end, to try. */
  readonly tryIt: Control;
  readonly hazards: readonly LessonHazard[];
  /** Seen in the model only, never to be tried. */
  readonly modelOnly: boolean;
  readonly working: LessonWorking;
  /** The stills to run; none where the lesson needs no run. */
  stills(turned: Turned): readonly Scenario[];
  answer(runs: readonly RunResult[], turned: Turned): Answered<Id>;
}

export interface Answered<Id extends LessonId> {
  readonly facts: LessonFacts[Id];
  /** By the ids of the questions. */
  readonly truths: Readonly<Record<string, Truth>>;
}

export function completeScenario(input: ScenarioInput): Scenario {
  const read = readScenario(input);
  if (!read.ok) throw new RangeError(`lesson: ${JSON.stringify(read.problems)}`);
  return read.scenario;
}

export function turnedNumber(turned: Turned, control: Control): number {
  const value = turned[control.id] ?? control.start;
  if (typeof value !== 'number' || control.kind !== 'number')
    throw new RangeError(`lesson: ${control.id} is no number`);
  return Math.min(control.max, Math.max(control.min, value));
}

export function turnedOption(turned: Turned, control: Control): string {
  const value = turned[control.id] ?? control.start;
  if (control.kind !== 'choice' || !control.options.includes(String(value)))
    throw new RangeError(`lesson: ${control.id} has no option ${value}`);
  return String(value);
}

export function firstRun(runs: readonly RunResult[]): RunResult {
  const [run] = runs;
  if (!run) throw new RangeError('lesson: no run');
  return run;
}

/** Points of a curve for the eye; a record holds more. */
const MOST_POINTS = 240;

/** A column of a run as a curve, up to a time; oil by volume. Distillate has a temperature only while it runs. */
export function curveOfRun({ record, summary }: RunResult, column: CurveColumn, until_s: number): Truth {
  const { time_s, condensateRate_kg_s } = record.columns;
  const every = Math.max(1, Math.ceil(record.rows / MOST_POINTS));
  const scale = column === 'oilCollected_kg' ? 1 / (summary.oilDensity_kg_m3 ?? NaN) : 1;
  const at_s: number[] = [];
  const values: number[] = [];
  for (let row = 0; row < record.rows; row += every) {
    const time = time_s[row] as number;
    if (time > until_s) break;
    if (column === 'condensateTemperature_K' && !((condensateRate_kg_s[row] as number) > 0)) continue;
    at_s.push(time);
    values.push(scale * (record.columns[column][row] as number));
  }
  return { kind: 'curve', at_s, values };
}

/** First time at or after another when a column reaches a value from below, s. */
export function reaches({ record }: RunResult, column: ColumnName, value: number, after_s: number): number | null {
  const { time_s } = record.columns;
  for (let row = 0; row < record.rows; row++)
    if ((time_s[row] as number) >= after_s && (record.columns[column][row] as number) >= value)
      return time_s[row] as number;
  return null;
}

/** Density of an oil by ideal mixing, kg/m³, at T in K, 273.15–403.15. */
export function oilDensityAt(composition: Scenario['charge']['composition'], T: number): number {
  return new Oil(composition).mixtureDensity(
    Float64Array.from(composition, ({ share }) => share),
    T,
  );
}
