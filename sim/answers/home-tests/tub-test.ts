/**
 * How far the incoming water mixes the tub: warm water in the tub, none in the coil, and cold water let in as in a run.
 * The temperatures at several heights afterwards show how high the jet mixed (`still/tub.ts`), and so which share of
 * its power does.
 */
import { standardPressure } from '../../fluids/atmosphere.ts';
import { isCoil } from '../../geometry/condenser-kind.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { Tub } from '../../still/tub.ts';
import {
  profile,
  ratios,
  refused,
  SPARE_READINGS,
  squaresOf,
  THERMOMETER_K,
  type TestProblem,
  type TestResult,
} from './home-test.ts';

export interface TubTest {
  /** The tub, stirred, before; and the water let in, K. */
  readonly start_K: number;
  readonly inlet_K: number;
  /** What a bucket caught, kg, in how long, s. */
  readonly caught_kg: number;
  readonly caught_s: number;
  /** Water let in before the readings, kg. */
  readonly letIn_kg: number;
  /** Heights above the floor, m, with what was read there, K. */
  readonly readings: readonly { readonly height_m: number; readonly value_K: number }[];
}

/** How well a height is known that a thermometer is held at, m; judgement. */
const HEIGHT_M = 0.01;
const LEAST_APART_K = 15;
const STEP_S = 5;
const RANGE = [0.02, 20] as const;

/** Temperature at a height above the floor, by the line of the layer it lies in, K. */
function temperatureAt(tub: Tub, height_m: number): number {
  const place = Math.min(1 - 1e-9, Math.max(0, 1 - height_m / tub.depth())) * tub.layerCount;
  const layer = Math.floor(place);
  return (tub.temperature[layer] as number) + (0.5 - (place - layer)) * (tub.rise[layer] as number);
}

/** Temperatures at some heights once the water has been let in, K. */
export function tubAfter(
  { cooling, site, factors, advanced }: Scenario,
  { start_K, inlet_K, caught_kg, caught_s, letIn_kg, readings }: TubTest,
  jetMixing: number,
): readonly number[] {
  const flow = caught_kg / caught_s;
  const steps = Math.max(1, Math.ceil(letIn_kg / flow / STEP_S));
  const pressure = site.barometer_Pa ?? standardPressure(site.altitude_m);
  const tub = new Tub(
    { ...cooling, tubFill: 1, ice: [], startTemperature_K: start_K },
    site,
    pressure,
    { ...factors, jetMixing },
    advanced.tubLayers,
    STEP_S,
  );
  const dt = letIn_kg / flow / steps;
  for (let step = 0; step < steps; step++) tub.step(step * dt, letIn_kg / steps, inlet_K, dt);
  return readings.map(({ height_m }) => temperatureAt(tub, height_m));
}

/** What the thermometer and its height make of a reading: steeper water is read less well. */
function sigmas(readings: TubTest['readings']): readonly number[] {
  return readings.map((each) => {
    const others = readings.filter((other) => other.height_m !== each.height_m);
    const nearest = others.toSorted(
      (a, b) => Math.abs(a.height_m - each.height_m) - Math.abs(b.height_m - each.height_m),
    )[0];
    const slope = nearest ? (nearest.value_K - each.value_K) / (nearest.height_m - each.height_m) : 0;
    return Math.hypot(THERMOMETER_K, slope * HEIGHT_M);
  });
}

/** Why a still has nothing for this test to find; `null` where it has. */
export function tubTestHindrance({ condenser, cooling }: Scenario): TestProblem | null {
  if (!isCoil(condenser)) return { kind: 'no-tub' };
  return cooling.inlet === 'top' ? { kind: 'hose-from-top' } : null;
}

export function tubTest(scenario: Scenario, given: TubTest): TestResult {
  const hindrance = tubTestHindrance(scenario);
  if (hindrance) return refused('tub', hindrance);
  const { readings, start_K, inlet_K } = given;
  const needed = 1 + SPARE_READINGS;
  if (readings.length < needed) return refused('tub', { kind: 'too-few-readings', readings: readings.length, needed });
  if (start_K - inlet_K < LEAST_APART_K)
    return refused('tub', { kind: 'too-close', apart_K: start_K - inlet_K, needed_K: LEAST_APART_K });
  const sure = sigmas(readings);
  const read = readings.map(({ value_K }, k) => ({ value_K, sigma_K: sure[k] as number }));
  const found = profile(
    (factor) => squaresOf(read, tubAfter(scenario, given, factor)),
    ratios(...RANGE),
    readings.length - 1,
  );
  if (!found) return refused('tub', { kind: 'nothing-shown' });
  const predicted = tubAfter(scenario, given, found.value);
  const { value, low, high, open, squares } = found;
  return {
    ok: true,
    test: 'tub',
    values: [{ path: 'factors.jetMixing', start: scenario.factors.jetMixing, value, low, high, open }],
    readings: read.map((each, k) => ({ ...each, predicted_K: predicted[k] as number })),
    reducedChiSquare: squares / (readings.length - 1),
  };
}
