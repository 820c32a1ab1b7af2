/** Forecasts by the model itself of hidden stills that are read five times: does their range hold the truth? */
import { withDrawn, uncertainties } from '../../sim/answers/ensemble/factors.ts';
import { normalScore, Xoshiro128 } from '../../sim/answers/ensemble/random.ts';
import { courseAt, courseOf, runCourses, type Course, type CoursesAsked } from '../../sim/answers/forecast/course.ts';
import { FORECAST_MEMBERS, forecastWith, type Likely } from '../../sim/answers/forecast/forecast.ts';
import { drawnAt } from '../../sim/answers/forecast/particle-filter.ts';
import { runOn } from '../../sim/answers/run-length/run-length.ts';
import { exampleScenario, RunForecaster, stopRule } from '../../sim/index.ts';
import { readAt } from '../sim/forecast/made-up-stills.ts';
import type { Part } from './part.ts';

const plan = exampleScenario('gentle-lavender');
const rule = stopRule('share');
const doubts = uncertainties(plan);
const READ_AT_MIN = [45, 55, 65, 75, 90];
const EVERY_S = 60;
const MEMBERS = FORECAST_MEMBERS;

/** Bounds of issue and page alike: a range of eight in ten, and what five readings must take off it. */
const HELD = [0.7, 0.9] as const;
const MOST_WIDTH = 0.6;
/** Fewer say nothing of a share. */
const ENOUGH = 40;

interface Followed {
  readonly oilHeld: boolean;
  /** `null` where too few likely runs, or not the hidden one, come to nine tenths. */
  readonly timeHeld: boolean | null;
  /** Width of the oil's range after the readings, as a share of the width before. */
  readonly width: number;
}

const span = ({ low, high }: Likely): number => high - low;
const holds = ({ low, high }: Likely, value: number): boolean => value >= low && value <= high;

/** A still whose values nobody knows, run in the full number of steps and segments. */
function hiddenCourse(chance: Xoshiro128): Course {
  const scores = doubts.map(() => normalScore(chance.share()));
  const course = courseOf(runOn(withDrawn(plan, drawnAt(doubts, scores))), rule, EVERY_S);
  if (course === null) throw new Error(`the hidden still of ${JSON.stringify(scores)} breaks off`);
  return course;
}

/** Every still's forecast begins with the same likely runs. */
let begun: ReturnType<typeof runCourses> | null = null;
const NOTHING_READ = { at_s: 0, readings: [], turns: [] };

function follow(seed: number): Followed {
  const truth = hiddenCourse(Xoshiro128.fromSeed(seed));
  const forecaster = new RunForecaster(plan, { rule, members: MEMBERS });
  const runs = (asked: CoursesAsked) =>
    forecaster.begun || asked.draws.length < MEMBERS ? runCourses(asked) : (begun ??= runCourses(asked));
  const before = forecastWith(forecaster, NOTHING_READ, runs);
  const readings = readAt(truth, ['oil_mL'], READ_AT_MIN, seed + 1);
  const at_s = 60 * (READ_AT_MIN.at(-1) as number);
  const after = forecastWith(forecaster, { at_s, readings, turns: [] }, runs);
  return {
    oilHeld: holds(after.oilAtEnd_mL, courseAt(truth, 'oil_mL', after.end_s)),
    timeHeld: truth.t90_s === null || after.t90_s.at_s === null ? null : holds(after.t90_s.at_s, truth.t90_s),
    width: span(after.oilAtEnd_mL) / span(before.oilAtEnd_mL),
  };
}

const share = (all: readonly boolean[]): number => all.filter(Boolean).length / all.length;
const isWithin = (value: number): boolean => value >= HELD[0] && value <= HELD[1];

export const forecasts: Part = {
  name: 'forecast',
  says: 'hidden stills read five times',
  few: 0,
  many: 40,
  check: ({ numRuns = 1, seed = 1 }) => {
    const all = Array.from({ length: numRuns }, (_, index) => follow(seed + 1000 * index));
    const times = all.flatMap(({ timeHeld }) => (timeHeld === null ? [] : [timeHeld]));
    const widths = all.map(({ width }) => width).sort((a, b) => a - b);
    const width = widths[Math.floor(widths.length / 2)] as number;
    const oil = share(all.map(({ oilHeld }) => oilHeld));
    const figures =
      `oil at the end in its range in ${Math.round(100 * oil)} %, time of 90 % in ${Math.round(100 * share(times))} % ` +
      `of ${times.length}, range of the oil ${Math.round(100 * (1 - width))} % narrower in the middle`;
    const isGood = numRuns < ENOUGH || (isWithin(oil) && isWithin(share(times)) && width <= MOST_WIDTH);
    return { failed: !isGood, numRuns, errorInstance: new Error(figures), counterexample: null, figures };
  },
};
