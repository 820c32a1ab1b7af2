/**
 * How long to run: time, distillate, water, energy and cost to shares of the obtainable oil, and when to stop by a
 * rule that the user picks.
 *
 * Obtainable oil is what this still would collect if it ran on as it is set at the end. Of a run that was carried on
 * until the oil had all but stopped (`runOn`) it is what was collected. Of a run that ended sooner, the rest is added
 * that the charge would still give: the oil left in the plant times the share of the oil that left the plant in the
 * last stretch and was caught. That holds while the steam goes on: it does not ask whether the pot's water lasts,
 * which the stop advice answers.
 */
import { columnAt, type RunRecord } from '../../run/record.ts';
import type { RunResult } from '../../run/result.ts';
import { Run } from '../../run/simulate.ts';
import { OIL_RATE_SPAN_S } from '../../run/stop-rules.ts';
import { timeToCollect } from '../../run/summary.ts';
import { LONGEST_RUN_S } from '../../scenario/limits.ts';
import type { Scenario } from '../../scenario/scenario.ts';

export const OIL_SHARES = [0.5, 0.8, 0.9, 0.95, 0.99] as const;

/** What has been spent and gained by a time of a run. */
export interface Spent {
  readonly time_s: number;
  readonly oil_kg: number;
  readonly oil_mL: number;
  /** Water that has come over, kept or returned, and oil, as volume. */
  readonly distillate_L: number;
  readonly coolantUsed_L: number;
  readonly potWaterLeft_kg: number;
  readonly energy_J: number;
  readonly energyCost: number;
  readonly waterCost: number;
  readonly cost: number;
}

export interface ShareReached {
  readonly share: number;
  /** `null` when the run ends before. */
  readonly at: Spent | null;
}

export interface RunLength {
  readonly obtainable_kg: number;
  readonly obtainable_mL: number;
  /** The part of it that was not collected in this run but would have come. */
  readonly stillToCome_kg: number;
  /** Whether the oil had all but stopped when the run ended. */
  readonly ranOut: boolean;
  readonly shares: readonly ShareReached[];
}

/** Oil of ten minutes, as a share of all collected, below which a run has given its oil. */
const SPENT_SHARE = 0.002;
/** Longest carrying on: this many times the planned run, and at least so many seconds more. */
const MOST_TIMES = 4;
const LEAST_EXTRA = 14_400;
const ROWS_WANTED = 1500;
/** Density of water by which kilograms are shown as litres, kg/m³; the same as in the summary's water price. */
const WATER_DENSITY = 998;

/** The scenario without stop rules and with time to spare. */
function carriedOn(scenario: Scenario): Scenario {
  const { duration_s } = scenario.run;
  const duration = Math.min(LONGEST_RUN_S, Math.max(MOST_TIMES * duration_s, duration_s + LEAST_EXTRA));
  return {
    ...scenario,
    run: {
      ...scenario.run,
      duration_s: duration,
      stopAtShare: null,
      stopAtOilRate_kg_s: null,
      stopAtDistillate_kg: null,
    },
    advanced: {
      ...scenario.advanced,
      recordEvery_s: Math.min(60, Math.max(scenario.advanced.recordEvery_s, duration / ROWS_WANTED)),
    },
  };
}

/**
 * Runs a scenario on past its planned end, with its last settings, until the oil of ten minutes has fallen to
 * 0.2 % of all collected, the pot is dry, or four times the planned time is over.
 */
export function runOn(scenario: Scenario): RunResult {
  const run = new Run(carriedOn(scenario));
  const collected = (): number => run.still.separator.collected.reduce((sum, mass) => sum + mass, 0);
  let before = 0;
  for (let until = OIL_RATE_SPAN_S; !run.ended; until += OIL_RATE_SPAN_S) {
    run.advance(until);
    const now = collected();
    if (until >= scenario.run.duration_s && now > 0 && now - before < SPENT_SHARE * now) break;
    before = now;
  }
  return run.result();
}

const end = (record: RunRecord): number => record.columns.time_s[record.rows - 1] as number;

/** Oil volume per mass in a run, mL/kg, by the density of all that it collected at 20 °C. */
const volumePerMass = ({ summary }: RunResult): number =>
  summary.oilDensity_kg_m3 === null ? 0 : 1e6 / summary.oilDensity_kg_m3;

/** What a run has spent and gained by a time. */
export function spentAt(result: RunResult, time_s: number): Spent {
  const { record, scenario } = result;
  const at = (name: Parameters<typeof columnAt>[1]): number => columnAt(record, name, time_s);
  const oil = at('oilCollected_kg');
  const energyCost = at('fuelEnergy_J') * scenario.heat.energyPrice_J;
  const coolant = at('coolantUsed_kg');
  const waterCost = (coolant / WATER_DENSITY) * scenario.cooling.waterPrice_m3;
  const oil_mL = oil * volumePerMass(result);
  return {
    time_s,
    oil_kg: oil,
    oil_mL,
    distillate_L: ((at('hydrosol_kg') + at('returned_kg')) / WATER_DENSITY) * 1000 + oil_mL / 1000,
    coolantUsed_L: (coolant / WATER_DENSITY) * 1000,
    potWaterLeft_kg: at('potWater_kg'),
    energy_J: at('fuelEnergy_J'),
    energyCost,
    waterCost,
    cost: energyCost + waterCost,
  };
}

/** Oil in the plant at a time, kg. */
const inPlant = (record: RunRecord, time_s: number): number =>
  columnAt(record, 'oilReady_kg', time_s) + columnAt(record, 'oilHeld_kg', time_s);

/**
 * Oil that would still come after the end of a run, kg: what is left in the plant times the share of the oil leaving
 * it that was caught in the last half hour (or since the first oil, when that is less).
 */
function oilToCome(record: RunRecord): number {
  const last = end(record);
  const from = Math.max(timeToCollect(record, Number.MIN_VALUE) ?? last, last - 3 * OIL_RATE_SPAN_S);
  const released = inPlant(record, from) - inPlant(record, last);
  const caught = columnAt(record, 'oilCollected_kg', last) - columnAt(record, 'oilCollected_kg', from);
  if (!(released > 0) || !(caught > 0)) return 0;
  return inPlant(record, last) * Math.min(1, caught / released);
}

/** Times and costs to shares of the obtainable oil. Give it the run as planned, or `runOn` of it to see past its end. */
export function runLength(result: RunResult): RunLength {
  const { record, summary } = result;
  const last = end(record);
  const collected = summary.oilCollected_kg;
  const inLastTen = collected - columnAt(record, 'oilCollected_kg', last - OIL_RATE_SPAN_S);
  const ranOut = collected > 0 && inLastTen < SPENT_SHARE * collected;
  const toCome = ranOut ? 0 : oilToCome(record);
  const obtainable = collected + toCome;
  return {
    obtainable_kg: obtainable,
    obtainable_mL: obtainable * volumePerMass(result),
    stillToCome_kg: toCome,
    ranOut,
    shares: OIL_SHARES.map((share) => {
      const time = timeToCollect(record, share * obtainable);
      return { share, at: time === null ? null : spentAt(result, time) };
    }),
  };
}
