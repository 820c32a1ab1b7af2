/**
 * How well the tube cools what runs through it, without steam: hot water runs in at the top as a rivulet, the tube lies
 * in still water, and the outlet is read. In a coil the bend decides, so its share is found; in a straight tube the
 * factor of the condensate.
 */
import { tableLiquidHeatCapacity } from '../../fluids/water-table.ts';
import { standardPressure } from '../../fluids/atmosphere.ts';
import { isBundle, isCoil } from '../../geometry/condenser-kind.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { CoilTub } from '../../still/coil-tub.ts';
import { CondensateCooling, CondensateFilm } from '../../still/condensate-cooling.ts';
import { OutsideFilm } from '../../still/coolant.ts';
import {
  evenly,
  profile,
  ratios,
  refused,
  SPARE_READINGS,
  squaresOf,
  THERMOMETER_K,
  type TestProblem,
  type TestResult,
} from './home-test.ts';

export interface CoilReading {
  /** Water caught at the outlet, kg, in how long, s. */
  readonly caught_kg: number;
  readonly caught_s: number;
  readonly inlet_K: number;
  readonly outlet_K: number;
  /** The water round the tube, halfway down, K. */
  readonly bath_K: number;
}

export interface CoilTest {
  /** Tube under water, m. */
  readonly length_m: number;
  readonly readings: readonly CoilReading[];
}

const PIECES = 40;
const PASSES = 3;
/** Bath and inlet are read as well as the outlet; what they are off by reaches it in part. */
const SIGMA_K = 1.25 * THERMOMETER_K;
const LEAST_APART_K = 3;
/** Least bend: below it a coil cools as a straight tube does. */
const BEND = [0.02, 1.2] as const;
const FACTOR = [0.1, 10] as const;

export type CoilPath = 'factors.curvature' | 'factors.rivulet';
export const coilTestPath = ({ condenser }: Scenario): CoilPath =>
  isCoil(condenser) ? 'factors.curvature' : 'factors.rivulet';

/** Where the water comes out, and what a metre of the tube takes on the mean. */
interface Walk {
  readonly outlet_K: number;
  readonly conductance_W_mK: number;
}

/** Runs water down the tube in still water. */
export function waterThroughTube(
  scenario: Scenario,
  length_m: number,
  { caught_kg, caught_s, inlet_K, bath_K }: Omit<CoilReading, 'outlet_K'>,
): Walk {
  const { condenser, cooling, site, factors } = scenario;
  const flow = caught_kg / caught_s;
  const inside = new CondensateCooling(scenario);
  const film = new CondensateFilm();
  // A straight tube lies in its trough as a coil with wide turns does in a tub.
  const around = new CoilTub(
    {
      ...scenario,
      condenser: isCoil(condenser)
        ? condenser
        : { ...condenser, kind: 'coil-in-tub', coilPitch_m: 2 * condenser.outsideDiameter_m },
      cooling: { ...cooling, tubFill: 1, ice: [], startTemperature_K: bath_K, stir_m_s: 0 },
    },
    site.barometer_Pa ?? standardPressure(site.altitude_m),
  );
  const outsideFilm = new OutsideFilm();
  const lowest = around.segmentHeat.length - 1;
  const filmAt = (wall_K: number): number => factors.coolantFilm * around.filmCoefficient(lowest, wall_K, outsideFilm);
  const piece = length_m / PIECES;
  let T = inlet_K;
  let wall = 0.5 * (inlet_K + bath_K);
  let taken = 0;
  for (let k = 0; k < PIECES; k++) {
    for (let pass = 0; pass < PASSES; pass++) {
      inside.evaluate(film, flow, T, k * piece, piece, filmAt(wall));
      wall = bath_K + ((T - bath_K) * film.outerResistance) / film.resistance;
    }
    taken += piece / film.resistance;
    T = bath_K + (T - bath_K) * Math.exp(-piece / (film.resistance * flow * tableLiquidHeatCapacity(T)));
  }
  return { outlet_K: T, conductance_W_mK: taken / length_m };
}

const withBend = (scenario: Scenario, value: number): Scenario => {
  const name = isCoil(scenario.condenser) ? 'curvature' : 'rivulet';
  return { ...scenario, factors: { ...scenario.factors, [name]: value } };
};

/** Outlets that a value gives, K. */
export const outletsOf = (scenario: Scenario, { length_m, readings }: CoilTest, value: number): readonly number[] =>
  readings.map((each) => waterThroughTube(withBend(scenario, value), length_m, each).outlet_K);

export const coilTestHindrance = ({ condenser }: Scenario): TestProblem | null =>
  isBundle(condenser) ? { kind: 'bundle' } : null;

/** Flows to choose from, kg/s: what a kettle and a clamp can do. */
const FLOWS = [3, 6, 12, 20].map((kg_h) => kg_h / 3600);
const CLEAR_K = 10;

/** The gentlest flow whose outlet stands clear of the bath, so that a degree there tells something; with its outlet. */
export function flowToTry(
  scenario: Scenario,
  length_m: number,
  inlet_K: number,
  bath_K: number,
): { readonly flow_kg_s: number; readonly outlet_K: number } {
  const tried = FLOWS.map((flow_kg_s) => ({
    flow_kg_s,
    outlet_K: waterThroughTube(scenario, length_m, { caught_kg: flow_kg_s, caught_s: 1, inlet_K, bath_K }).outlet_K,
  }));
  return tried.find(({ outlet_K }) => outlet_K - bath_K >= CLEAR_K) ?? (tried.at(-1) as (typeof tried)[number]);
}

export function coilTest(scenario: Scenario, given: CoilTest): TestResult {
  const hindrance = coilTestHindrance(scenario);
  if (hindrance) return refused('coil', hindrance);
  const { readings } = given;
  const needed = 1 + SPARE_READINGS;
  if (readings.length < needed) return refused('coil', { kind: 'too-few-readings', readings: readings.length, needed });
  const odd = readings.findIndex(({ inlet_K, outlet_K, bath_K }) => outlet_K > inlet_K || outlet_K < bath_K - 2);
  if (odd >= 0)
    return refused('coil', { kind: 'impossible', reading: odd + 1, value_K: (readings[odd] as CoilReading).outlet_K });
  const clear_K = Math.max(...readings.map(({ outlet_K, bath_K }) => outlet_K - bath_K));
  if (clear_K < LEAST_APART_K) return refused('coil', { kind: 'too-close', apart_K: clear_K, needed_K: LEAST_APART_K });
  const path = coilTestPath(scenario);
  const read = readings.map(({ outlet_K }) => ({ value_K: outlet_K, sigma_K: SIGMA_K }));
  const found = profile(
    (value) => squaresOf(read, outletsOf(scenario, given, value)),
    path === 'factors.curvature' ? evenly(...BEND) : ratios(...FACTOR),
    readings.length - 1,
  );
  if (!found) return refused('coil', { kind: 'nothing-shown' });
  const predicted = outletsOf(scenario, given, found.value);
  const { value, low, high, open, squares } = found;
  const start = path === 'factors.curvature' ? scenario.factors.curvature : scenario.factors.rivulet;
  return {
    ok: true,
    test: 'coil',
    values: [{ path, start, value, low, high, open }],
    readings: read.map((each, k) => ({ ...each, predicted_K: predicted[k] as number })),
    reducedChiSquare: squares / (readings.length - 1),
  };
}
