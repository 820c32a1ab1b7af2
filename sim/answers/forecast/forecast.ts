/**
 * How a run that is under way will end, from its plan and from what was read of it: an ensemble of the plan, weighed by
 * the readings with their uncertainties (`particle-filter.ts`).
 */
import type { EventTimes } from '../../run/schedule-value.ts';
import { stopRule, type StopRule } from '../../run/stop-rules.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import type { CurveBand } from '../ensemble/summary.ts';
import { uncertainties, type OwnBands } from '../ensemble/factors.ts';
import { normalScore } from '../ensemble/random.ts';
import { COURSE_COLUMNS, courseAt, runCourses, type Course, type CourseColumn, type CoursesAsked } from './course.ts';
import { followed, type Turn } from './followed.ts';
import { courseReading, HEAT_UNCERTAINTY, residualOf, sigmaOf, type Seen } from './forecast-readings.ts';
import { effectiveSize, sharesOf, weightedQuantiles } from './normal-cloud.ts';
import { ParticleFilter, type CourseWork, type Population } from './particle-filter.ts';

/** The middle, and the range in which eight of ten likely runs lie. */
export interface Likely {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** Something that not every likely run comes to. */
export interface LikelyTime {
  /** Share of the likely runs that come to it. */
  readonly share: number;
  /** When; `null` where fewer than half do. */
  readonly at_s: Likely | null;
}

export interface JudgedReading extends Seen {
  readonly sigma: number;
  /** What the likely runs say of it; `null` where they give no such reading then. */
  readonly predicted: Likely | null;
  /** `impossible`: no likely run comes near, so it was left out; `odd`: the others speak against it. */
  readonly fits: 'yes' | 'odd' | 'impossible';
}

export interface Forecast {
  /** Since the heat went on: the moment of the forecast, and the end of the plan, or now where that is past. */
  readonly at_s: number;
  readonly end_s: number;
  readonly members: number;
  /** How many equal draws the weighted ones are worth. */
  readonly effective: number;
  readonly rule: StopRule;
  readonly oilNow_mL: Likely;
  /** What the plan gives by now, and by its end. */
  readonly plannedNow_mL: number;
  readonly plannedAtEnd_mL: number;
  readonly oilAtEnd_mL: Likely;
  readonly obtainable_mL: Likely;
  readonly firstDrop_s: LikelyTime;
  /** When 90 % of the oil that can come is collected. */
  readonly t90_s: LikelyTime;
  /** When the rule says stop. */
  readonly stop_s: LikelyTime;
  readonly potWaterAtEnd_kg: Likely;
  /** When the pot's water runs low, of the runs in which it does before the end. */
  readonly potLow_s: LikelyTime;
  readonly tubAtEnd_K: Likely;
  readonly readings: readonly JudgedReading[];
  readonly times_s: Float64Array;
  readonly bands: Readonly<Record<CourseColumn, CurveBand>>;
  /** The plan's own course at these times. */
  readonly planned: Readonly<Record<CourseColumn, Float64Array>>;
}

/** What is known of the run when it is forecast. */
export interface RunSoFar {
  readonly at_s: number;
  readonly readings: readonly Seen[];
  readonly turns: readonly Turn[];
}

export interface ForecastOptions {
  readonly members?: number;
  readonly seed?: number;
  readonly rule?: StopRule;
  readonly own?: OwnBands;
}

export const FORECAST_MEMBERS = 300;
export const FORECAST_SEED = 1;
/** Less than this from the mean of the likely runs, in uncertainties, agrees with them. */
const ODD = 3;
const POINTS = 61;
/** Ends and middle of a range in which eight of ten lie. */
const TENTHS = [0.1, 0.5, 0.9];

/** Scores between which eight of ten lie are this far from the middle. */
const Z_90 = normalScore(0.9);

/** The range of a time to the first drop with the doubt of the heat, which the likely runs do not draw. */
function withHeatDoubt(time: LikelyTime): LikelyTime {
  if (time.at_s === null) return time;
  const { low, middle, high } = time.at_s;
  const heat_s = Z_90 * HEAT_UNCERTAINTY * middle;
  return {
    ...time,
    at_s: { low: middle - Math.hypot(middle - low, heat_s), middle, high: middle + Math.hypot(high - middle, heat_s) },
  };
}

/** Work that yields the courses it needs, with the forecast as far as it goes meanwhile. */
export type ForecastWork = Generator<
  { readonly asked: CoursesAsked; readonly soFar: (() => Forecast) | null },
  Forecast,
  readonly (Course | null)[]
>;

/** When the events came that plans count from; the first boil, which nobody reads, as long before the drop as planned. */
function eventsSeen({ readings }: RunSoFar, { firstBoil_s, firstDrop_s }: Course): EventTimes {
  const drop = readings.find(({ kind }) => kind === 'firstDrop_s')?.value ?? null;
  if (drop === null) return { firstBoil: null, firstDrop: null };
  const before = firstDrop_s === null || firstBoil_s === null ? 0 : firstDrop_s - firstBoil_s;
  return { firstBoil: Math.max(0, drop - before), firstDrop: drop };
}

/** Forecasts of one run, each from all that was read so far. */
export class RunForecaster {
  private readonly plan: Scenario;
  private planned: Course | null = null;
  private readonly rule: StopRule;
  private readonly members: number;
  private readonly filter: ParticleFilter;

  constructor(plan: Scenario, options: ForecastOptions = {}) {
    const { members = FORECAST_MEMBERS, seed = FORECAST_SEED, rule = stopRule('share'), own = {} } = options;
    this.plan = plan;
    this.rule = rule;
    this.members = members;
    this.filter = new ParticleFilter(plan, uncertainties(plan, own), rule, seed);
  }

  /** Whether the likely runs have been made, so that a forecast only weighs them. */
  get begun(): boolean {
    return this.filter.population.particles.length > 0;
  }

  /** @throws RangeError where the calculation of the plan itself breaks off */
  *forecast(now: RunSoFar): ForecastWork {
    const planned = (this.planned ??= yield* this.planCourse());
    yield* this.told(this.begun ? null : this.filter.begin(this.members), planned, now);
    const scenario = followed(this.plan, now.turns, eventsSeen(now, planned));
    yield* this.told(this.filter.update(scenario, now.readings), planned, now);
    return this.summed(this.filter.population, planned, now);
  }

  private *planCourse(): Generator<
    { readonly asked: CoursesAsked; readonly soFar: null },
    Course,
    readonly (Course | null)[]
  > {
    const [planned] = yield { asked: { scenario: this.plan, rule: this.rule, draws: [{}] }, soFar: null };
    if (!planned) throw new RangeError('forecast: the calculation of the plan breaks off');
    return planned;
  }

  private *told(
    work: CourseWork<void> | null,
    planned: Course,
    now: RunSoFar,
  ): Generator<
    { readonly asked: CoursesAsked; readonly soFar: (() => Forecast) | null },
    void,
    readonly (Course | null)[]
  > {
    if (work === null) return;
    let step = work.next();
    while (step.done !== true) {
      const { asked, soFar } = step.value;
      const courses = yield { asked, soFar: soFar === null ? null : () => this.summed(soFar, planned, now) };
      step = work.next(courses);
    }
  }

  private summed({ particles, logWeights }: Population, planned: Course, now: RunSoFar): Forecast {
    const shares = sharesOf(logWeights);
    const courses = particles.map(({ course }) => course);
    const spread = (values: readonly number[], by: readonly number[]): Likely => {
      const [low, middle, high] = weightedQuantiles(values, by, TENTHS) as [number, number, number];
      return { low, middle, high };
    };
    const likely = (read: (course: Course) => number): Likely => spread(courses.map(read), shares);
    const likelyTime = (read: (course: Course) => number | null): LikelyTime => {
      const found = courses.flatMap((course, index) => {
        const value = read(course);
        return value === null ? [] : [{ value, share: shares[index] as number }];
      });
      const by = found.map(({ share }) => share);
      const share = by.reduce((sum, each) => sum + each, 0);
      const times = found.map(({ value }) => value);
      return { share, at_s: share < 0.5 ? null : spread(times, by) };
    };
    const end_s = Math.max(now.at_s, this.plan.run.duration_s);
    const times_s = Float64Array.from({ length: POINTS }, (_, index) => (end_s * index) / (POINTS - 1));
    const band = (name: CourseColumn): CurveBand => {
      const all = Array.from(times_s, (time) => likely((course) => courseAt(course, name, time)));
      const curve = (end: keyof Likely) => Float64Array.from(all, (each) => each[end]);
      return { p10: curve('low'), p50: curve('middle'), p90: curve('high') };
    };
    const column = <T>(of: (name: CourseColumn) => T) =>
      Object.fromEntries(COURSE_COLUMNS.map((name) => [name, of(name)])) as Record<CourseColumn, T>;
    const impossible = new Set(this.filter.impossible(now.readings));
    const judged = (seen: Seen): JudgedReading => {
      const predicted = likely((course) => courseReading(course, seen));
      const off = courses.reduce((sum, course, index) => sum + (shares[index] as number) * residualOf(course, seen), 0);
      return {
        ...seen,
        sigma: sigmaOf(seen),
        predicted: Number.isNaN(predicted.middle) ? null : predicted,
        fits: impossible.has(seen) ? 'impossible' : Math.abs(off) > ODD ? 'odd' : 'yes',
      };
    };
    return {
      at_s: now.at_s,
      end_s,
      members: particles.length,
      effective: effectiveSize(shares),
      rule: this.rule,
      oilNow_mL: likely((course) => courseAt(course, 'oil_mL', now.at_s)),
      plannedNow_mL: courseAt(planned, 'oil_mL', now.at_s),
      plannedAtEnd_mL: courseAt(planned, 'oil_mL', end_s),
      oilAtEnd_mL: likely((course) => courseAt(course, 'oil_mL', end_s)),
      obtainable_mL: likely(({ obtainable_mL }) => obtainable_mL),
      firstDrop_s: withHeatDoubt(likelyTime(({ firstDrop_s }) => firstDrop_s)),
      t90_s: likelyTime(({ t90_s }) => t90_s),
      stop_s: likelyTime(({ stop_s }) => stop_s),
      potWaterAtEnd_kg: likely((course) => courseAt(course, 'potWater_kg', end_s)),
      potLow_s: likelyTime(({ potLow_s }) => (potLow_s !== null && potLow_s <= end_s ? potLow_s : null)),
      tubAtEnd_K: likely((course) => courseAt(course, 'tub_K', end_s)),
      readings: now.readings.map(judged),
      times_s,
      bands: column(band),
      planned: column((name) => times_s.map((time) => courseAt(planned, name, time))),
    };
  }
}

/** A forecast at once, where no other thread helps. */
export function forecastRun(
  plan: Scenario,
  now: RunSoFar,
  options: ForecastOptions & { readonly runs?: (asked: CoursesAsked) => readonly (Course | null)[] } = {},
): Forecast {
  return forecastWith(new RunForecaster(plan, options), now, options.runs);
}

/** The next forecast of a run that is followed. */
export function forecastWith(
  forecaster: RunForecaster,
  now: RunSoFar,
  runs: (asked: CoursesAsked) => readonly (Course | null)[] = runCourses,
): Forecast {
  const work = forecaster.forecast(now);
  let step = work.next();
  while (step.done !== true) step = work.next(runs(step.value.asked));
  return step.value;
}
