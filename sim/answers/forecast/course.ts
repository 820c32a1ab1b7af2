/** The course of one likely run: what can be read at the still over time, and what is to be forecast. */
import { stopAdvice } from '../run-length/stop-advice.ts';
import { runLength, runOn } from '../run-length/run-length.ts';
import { coarseScenario } from '../ensemble/ensemble.ts';
import { withDrawn, type UncertainId } from '../ensemble/factors.ts';
import { columnAt } from '../../run/record.ts';
import type { RunResult } from '../../run/result.ts';
import type { StopRule } from '../../run/stop-rules.ts';
import type { Scenario } from '../../scenario/scenario.ts';

export const COURSE_COLUMNS = ['oil_mL', 'outlet_K', 'tub_K', 'distillate_kg', 'potWater_kg'] as const;
export type CourseColumn = (typeof COURSE_COLUMNS)[number];

/** Plain data: may be sent between threads. */
export interface Course {
  /** Distance of the points in time, from heat on. */
  readonly every_s: number;
  readonly columns: Readonly<Record<CourseColumn, Float32Array>>;
  readonly firstBoil_s: number | null;
  readonly firstDrop_s: number | null;
  /** Oil that can come, if the run goes on as it is set. */
  readonly obtainable_mL: number;
  /** When 90 % of it is collected. */
  readonly t90_s: number | null;
  /** When the reader's rule says stop. */
  readonly stop_s: number | null;
  /** When little or no water is left in the pot. */
  readonly potLow_s: number | null;
  /** Millilitres of oil in a kilogram. */
  readonly oilPerKilogram_mL: number;
}

export type DrawnValues = Readonly<Partial<Record<UncertainId, number>>>;

/** Runs that a forecast needs; any worker can make any of them. */
export interface CoursesAsked {
  readonly scenario: Scenario;
  readonly rule: StopRule;
  readonly draws: readonly DrawnValues[];
}

/** Points over the planned time; a run that goes on has more. */
const POINTS = 120;
/**
 * Steps of such a run and segments of its condenser. Between the lengthened steps of the engine they change the oil of
 * the built-in stills by less than 1 % once a third is collected, the time of 90 % by half a minute, outlet and tub by
 * a few tenths of a kelvin.
 */
const STEP_S = 20;
const SEGMENTS = 16;

/** A draw's run, carried on past its plan; `null` where the calculation breaks off. */
export function runCourse(scenario: Scenario, rule: StopRule, drawn: DrawnValues): Course | null {
  const coarse = coarseScenario(withDrawn(scenario, drawn));
  const every_s = scenario.run.duration_s / POINTS;
  const step = Math.max(coarse.advanced.step_s, STEP_S);
  return courseOf(
    runOn({
      ...coarse,
      advanced: {
        ...coarse.advanced,
        step_s: every_s / Math.max(1, Math.ceil(every_s / step)),
        segments: Math.min(SEGMENTS, coarse.advanced.segments),
      },
    }),
    rule,
    every_s,
  );
}

/** The course of a run that was carried on; `null` where its calculation broke off. */
export function courseOf(result: RunResult, rule: StopRule, every_s: number): Course | null {
  const { record, summary, events } = result;
  if (result.failure !== null) return null;
  const points = Math.ceil(summary.end_s / every_s) + 1;
  const oilPerKilogram_mL = summary.oilDensity_kg_m3 === null ? 0 : 1e6 / summary.oilDensity_kg_m3;
  const column = (read: (time_s: number) => number): Float32Array =>
    Float32Array.from({ length: points }, (_, index) => read(index * every_s));
  const firstDrop = summary.firstDrop_s ?? Infinity;
  return {
    every_s,
    columns: {
      oil_mL: column((time) => columnAt(record, 'oilCollected_kg', time) * oilPerKilogram_mL),
      outlet_K: column((time) =>
        columnAt(record, 'condensateTemperature_K', Math.min(summary.end_s, Math.max(time, firstDrop + every_s))),
      ),
      tub_K: column((time) => columnAt(record, 'tubMean_K', time)),
      distillate_kg: column(
        (time) =>
          columnAt(record, 'hydrosol_kg', time) +
          columnAt(record, 'returned_kg', time) +
          columnAt(record, 'oilCollected_kg', time),
      ),
      potWater_kg: column((time) => columnAt(record, 'potWater_kg', time)),
    },
    firstBoil_s: summary.firstBoil_s,
    firstDrop_s: summary.firstDrop_s,
    obtainable_mL: runLength(result).obtainable_mL,
    t90_s: runLength(result).shares.find(({ share }) => share === 0.9)?.at?.time_s ?? null,
    stop_s: stopAdvice(result, rule).stop?.time_s ?? null,
    potLow_s: events.find(({ kind }) => kind === 'pot-low' || kind === 'pot-dry')?.time_s ?? null,
    oilPerKilogram_mL,
  };
}

export const runCourses = ({ scenario, rule, draws }: CoursesAsked): readonly (Course | null)[] =>
  draws.map((drawn) => runCourse(scenario, rule, drawn));

/** A column at a time, in a straight line between points; what stood at the end stays. */
export function courseAt({ columns, every_s }: Course, name: CourseColumn, time_s: number): number {
  const column = columns[name];
  const place = Math.min(column.length - 1, Math.max(0, time_s / every_s));
  const row = Math.min(column.length - 2, Math.floor(place));
  const from = column[Math.max(0, row)] as number;
  return from + (place - Math.max(0, row)) * ((column[row + 1] as number) - from);
}
