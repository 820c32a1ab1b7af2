/**
 * How much of the source's heat reaches the pot, and how much the pot loses: water alone, heated with the lid on and
 * left to cool. The first minutes show the heat that arrives, for cold water loses none; the hot ones and the cooling
 * show the loss. Least squares in the logarithms of both.
 */
import { leastSquares, normalMatrix, slopesOf } from '../../maths/least-squares.ts';
import { columnAt } from '../../run/record.ts';
import { simulate } from '../../run/simulate.ts';
import { fieldAt } from '../../scenario/fields.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { spreadOf, studentHalfWidth } from '../calibration/statistics.ts';
import { refused, SPARE_READINGS, squaresOf, THERMOMETER_K, type TestedValue, type TestResult } from './home-test.ts';

export interface HeatUpTest {
  readonly water_kg: number;
  readonly start_K: number;
  readonly air_K: number;
  /** Setting of the source, share of its rated power. */
  readonly setting: number;
  /** When the heat was turned off, s since it went on; `null` where it stayed on. */
  readonly off_s: number | null;
  /** The water, stirred or well below the surface, K. */
  readonly readings: readonly { readonly time_s: number; readonly value_K: number }[];
}

const LEAST_RISE_K = 20;
const STEP_S = 10;
const LOSS = [0.05, 10] as const;
const SHARE = [0.05, 1] as const;
const SLOPE_STEP = 0.03;
/** Doubling what moves all readings together by less than this many uncertainties is not shown by them. */
const LEAST_INFLUENCE = 1;

/** The still with nothing in it but water. */
function waterAlone({ charge, pot, site, heat, run, advanced, ...rest }: Scenario, given: HeatUpTest): Scenario {
  const last = Math.max(...given.readings.map(({ time_s }) => time_s));
  const off = given.off_s === null ? [] : [{ at_s: given.off_s, value: 0, shape: 'step' as const }];
  return {
    ...rest,
    charge: { ...charge, mass_kg: fieldAt('charge.mass_kg')?.min ?? charge.mass_kg },
    pot: { ...pot, water_kg: given.water_kg, waterTemperature_K: given.start_K },
    site: { ...site, airTemperature_K: given.air_K },
    heat: { ...heat, control: 'schedule', setting: [{ at_s: 0, value: given.setting, shape: 'step' }, ...off] },
    run: {
      ...run,
      duration_s: Math.max(60, last),
      stopAtShare: null,
      stopAtOilRate_kg_s: null,
      stopAtDistillate_kg: null,
    },
    // Nothing comes over: condenser, tub and bed only stand by.
    advanced: {
      ...advanced,
      step_s: STEP_S,
      recordEvery_s: Math.max(STEP_S, last / 500),
      segments: 10,
      bedLayers: 3,
      tubLayers: 3,
    },
  };
}

/** What the water would show, K. */
export function waterHeated(
  scenario: Scenario,
  given: HeatUpTest,
  shareToPot: number,
  heatLoss: number,
): readonly number[] {
  const still = waterAlone(scenario, given);
  const { record } = simulate({
    ...still,
    heat: { ...still.heat, shareToPot },
    factors: { ...still.factors, heatLoss },
  });
  return given.readings.map(({ time_s }) => columnAt(record, 'potTemperature_K', time_s));
}

export function heatUpTest(scenario: Scenario, given: HeatUpTest): TestResult {
  const { readings } = given;
  const needed = 2 + SPARE_READINGS;
  if (readings.length < needed)
    return refused('heat-up', { kind: 'too-few-readings', readings: readings.length, needed });
  const rise = Math.max(...readings.map(({ value_K }) => value_K)) - given.start_K;
  if (rise < LEAST_RISE_K) return refused('heat-up', { kind: 'too-close', apart_K: rise, needed_K: LEAST_RISE_K });
  const read = readings.map(({ value_K }) => ({ value_K, sigma_K: THERMOMETER_K }));
  const predict = (logs: readonly number[]) =>
    waterHeated(scenario, given, Math.min(1, Math.exp(logs[0] as number)), Math.exp(logs[1] as number));
  const scaled = (logs: readonly number[]) => predict(logs).map((value) => value / THERMOMETER_K);
  const start = [scenario.heat.shareToPot, Math.max(LOSS[0], scenario.factors.heatLoss)] as const;
  const begun = start.map((value, k) =>
    Math.log(Math.min((k === 0 ? SHARE : LOSS)[1], Math.max((k === 0 ? SHARE : LOSS)[0], value))),
  );
  const { parameters } = leastSquares(
    scaled,
    read.map(({ value_K, sigma_K }) => value_K / sigma_K),
    {
      start: begun,
      least: [Math.log(SHARE[0]), Math.log(LOSS[0])],
      most: [Math.log(SHARE[1]), Math.log(LOSS[1])],
      slopeStep: SLOPE_STEP,
      leastGain: 1e-4,
      leastMove: 1e-3,
      mostSteps: 20,
    },
  );
  // From the end of its range a slope is taken inwards, where there is a range.
  const inside = parameters.map((log, k) => (k === 0 ? Math.min(log, Math.log(SHARE[1]) - SLOPE_STEP) : log));
  const slopes = slopesOf(scaled, inside, SLOPE_STEP);
  const isShown = slopes.map((row) => Math.LN2 * Math.hypot(...row) >= LEAST_INFLUENCE);
  if (isShown[0] !== true) return refused('heat-up', { kind: 'nothing-shown' });
  const { covariance } = spreadOf(normalMatrix(slopes));
  const predicted = predict(parameters);
  const squares = squaresOf(read, predicted);
  const degrees = readings.length - 2;
  const widening = studentHalfWidth(0.9, degrees) * Math.sqrt(Math.max(1, squares / degrees));
  const valueOf = (k: 0 | 1, path: TestedValue['path'], [least, most]: readonly [number, number]): TestedValue => {
    const log = parameters[k] as number;
    const half = widening * Math.sqrt(covariance[k]?.[k] ?? 0);
    const low = Math.max(least, Math.exp(log - half));
    const high = Math.min(most, Math.exp(log + half));
    const ends = [low <= least * 1.001 ? 'low' : null, high >= most * 0.999 ? 'high' : null] as const;
    const open = ends[0] !== null && ends[1] !== null ? 'both' : (ends[0] ?? ends[1]);
    return { path, start: start[k], value: Math.min(most, Math.max(least, Math.exp(log))), low, high, open };
  };
  return {
    ok: true,
    test: 'heat-up',
    values: [valueOf(0, 'heat.shareToPot', SHARE), valueOf(1, 'factors.heatLoss', LOSS)],
    readings: read.map((each, k) => ({ ...each, predicted_K: predicted[k] as number })),
    reducedChiSquare: squares / degrees,
  };
}
