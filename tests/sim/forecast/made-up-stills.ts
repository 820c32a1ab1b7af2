/** Courses by a formula instead of the model, so that many hidden stills take no time; and noisy readings of one. */
import type { DrawnValues } from '../../../sim/answers/forecast/course.ts';
import { courseReading, sigmaOf } from '../../../sim/answers/forecast/forecast-readings.ts';
import { drawnAt } from '../../../sim/answers/forecast/particle-filter.ts';
import { uncertainties } from '../../../sim/answers/ensemble/factors.ts';
import { normalScore, Xoshiro128 } from '../../../sim/answers/ensemble/random.ts';
import {
  exampleScenario,
  scheduleValue,
  type Course,
  type CoursesAsked,
  type Scenario,
  type Seen,
  type SeenKind,
} from '../../../sim/index.ts';

const glass = exampleScenario('class-glass');
/** An hour by the clock, full heat. */
export const plan: Scenario = {
  ...glass,
  heat: { ...glass.heat, control: 'schedule', setting: [{ at_s: 0, value: 1, shape: 'step' }] },
  run: { ...glass.run, duration_s: 3600 },
  advanced: { ...glass.advanced, step_s: 10, segments: 20 },
};

const EVERY_S = 60;
const POINTS = 121;
const OBTAINABLE_ML = 20;

/** Ready oil comes at once and held oil slowly, both faster with more heat; heat loss puts off the first drop. */
export function madeUpCourse(scenario: Scenario, drawn: DrawnValues): Course {
  const {
    oilContent = 1,
    readyShare = 1,
    heldRate = 1,
    takeUp = 1,
    heatLoss = 1,
    rivulet = 1,
    tapTemperature = 0,
  } = drawn;
  const firstDrop_s = 900 * (0.8 + 0.2 * heatLoss);
  const setting = scenario.heat.setting.map(({ at_s, value, shape }) => ({ at_s, value, shape }));
  const steam = new Float64Array(POINTS);
  const isSteady = setting.length === 1;
  for (let k = 1; k < POINTS; k++) {
    const heat = isSteady ? (setting[0]?.value ?? 0) : scheduleValue(setting, k * EVERY_S);
    const on_s = Math.max(0, Math.min(EVERY_S, k * EVERY_S - firstDrop_s));
    steam[k] = (steam[k - 1] as number) + on_s * heat;
  }
  const obtainable_mL = OBTAINABLE_ML * oilContent;
  const ready = Math.min(0.95, 0.4 * readyShare);
  const oil = steam.map(
    (time) =>
      obtainable_mL *
      (ready * -Math.expm1((-takeUp * time) / 400) + (1 - ready) * -Math.expm1((-heldRate * time) / 1500)),
  );
  const t90 = oil.findIndex((value) => value >= 0.9 * obtainable_mL);
  const [below, above] = [oil[t90 - 1] ?? 0, oil[t90] ?? 0];
  const t90_s = t90 < 0 ? null : EVERY_S * (t90 - (above - 0.9 * obtainable_mL) / (above - below));
  const column = (read: (time_s: number, k: number) => number) =>
    Float32Array.from({ length: POINTS }, (_, k) => read(k * EVERY_S, k));
  return {
    every_s: EVERY_S,
    columns: {
      oil_mL: column((_, k) => oil[k] as number),
      outlet_K: column(() => 303 + tapTemperature - 8 * (rivulet - 1)),
      tub_K: column((time) => 288 + tapTemperature + time / 200),
      distillate_kg: column((_, k) => (steam[k] as number) * 0.0005),
      potWater_kg: column((_, k) => 4 - (steam[k] as number) * 0.0005),
    },
    firstBoil_s: firstDrop_s - 120,
    firstDrop_s,
    obtainable_mL,
    t90_s,
    stop_s: t90_s,
    potLow_s: null,
    oilPerKilogram_mL: 1100,
  };
}

export const madeUpRuns = ({ scenario, draws }: CoursesAsked): readonly Course[] =>
  draws.map((drawn) => madeUpCourse(scenario, drawn));

const doubts = uncertainties(plan);

/** A still whose true values nobody knows. */
export function hiddenStill(seed: number, scenario: Scenario = plan): Course {
  const chance = Xoshiro128.fromSeed(seed);
  return madeUpCourse(
    scenario,
    drawnAt(
      doubts,
      doubts.map(() => normalScore(chance.share())),
    ),
  );
}

/** What somebody reads at it, with errors of the stated size. */
export function readAt(
  truth: Course,
  kinds: readonly SeenKind[],
  minutes: readonly number[],
  seed: number,
): readonly Seen[] {
  const chance = Xoshiro128.fromSeed(seed);
  return minutes.flatMap((minute) =>
    kinds.map((kind) => {
      const time_s = 60 * minute;
      const exact = courseReading(truth, { kind, time_s });
      const sigma = sigmaOf({ kind, time_s, value: exact });
      return { kind, time_s, value: Math.max(0, exact + sigma * normalScore(chance.share())) };
    }),
  );
}
