/**
 * An ensemble: the same still run many times with what is uncertain drawn anew each time. The design is worked out
 * once from a seed; any worker may then compute any member alone, in any order.
 *
 * Rows of a design: first the scenario as it stands, then every doubt alone at its 10th and its 90th percentile, then
 * the Latin-hypercube draws of all doubts together.
 */
import { ZERO_CELSIUS } from '../../constants.ts';
import { columnAt, rowAt, type RunRecord } from '../../run/record.ts';
import type { EndReason, RunResult } from '../../run/result.ts';
import { simulate } from '../../run/simulate.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import {
  uncertainties,
  unchangedValue,
  valueAtShare,
  withDrawn,
  type OwnBands,
  type Uncertain,
  type UncertainId,
} from './factors.ts';
import { waterStands } from '../../still/coil-tub.ts';
import { latinHypercube, Xoshiro128 } from './random.ts';

export interface DesignRow {
  readonly kind: 'as-planned' | 'swing' | 'draw';
  /** Set for a swing: the doubt that is moved, and to which side. */
  readonly swing: { readonly id: UncertainId; readonly side: 'low' | 'high' } | null;
  /** Multipliers and shifts, in the order of the design's doubts. */
  readonly values: readonly number[];
}

/** Plain data: may be sent to workers as it is. */
export interface Design {
  readonly scenario: Scenario;
  readonly seed: number;
  /** Draws, not counting the other rows. */
  readonly members: number;
  readonly doubts: readonly Uncertain[];
  readonly rows: readonly DesignRow[];
}

/** Draws and seed where the user names none, and the most that is possible. */
export const USUAL_MEMBERS = 100;
export const MOST_MEMBERS = 100_000;
export const USUAL_SEED = 1;
export const MOST_SEED = 4_294_967_295;
/** Points of the common time grid; the last is the planned end of the run. */
export const GRID_POINTS = 121;
/** Steps of a member's run; tests hold the error that this brings. */
const MEMBER_STEPS = 2400;
const SHORTEST_STEP = 1;
const LONGEST_STEP = 5;
const MEMBER_SEGMENTS = 40;

/** Headline numbers of a member and their units. */
export const HEADLINE_UNITS = {
  oil_mL: 'mL',
  /** Oil collected as a share of the oil in the charge. */
  recovery: '1',
  /** Oil dissolved in the hydrosol, that which makes it cloudy, and that gone as vapour. */
  oilDissolved_kg: 'kg',
  oilHaze_kg: 'kg',
  oilEscaped_kg: 'kg',
  firstDrop_s: 's',
  /** Times to half and to 90 % of the oil that the run collects. */
  t50_s: 's',
  t90_s: 's',
  end_s: 's',
  /** Distillate water kept. */
  hydrosol_kg: 'kg',
  /** Longest tube needed to condense, and warmest distillate, at the points of the time grid. */
  condensingLength_m: 'm',
  distillateWarmest_K: 'K',
  /** Warmest cooling water leaving, or tub surface. */
  coolantWarmest_K: 'K',
  /** Water and oil that left uncondensed. */
  escaped_kg: 'kg',
  /** Tap water used. */
  coolantUsed_kg: 'kg',
  /** Energy taken by the source. */
  energyFuel_J: 'J',
  /** Price of energy and tap water. */
  cost: '1',
} as const;

export type HeadlineName = keyof typeof HEADLINE_UNITS;
export const HEADLINE_NAMES = Object.keys(HEADLINE_UNITS) as readonly HeadlineName[];
/** A number is `null` where the run never got that far. */
export type Headline = Readonly<Record<HeadlineName, number | null>>;

export interface MemberResult {
  readonly index: number;
  readonly oil_mL: Float64Array;
  readonly recovery: Float64Array;
  readonly headline: Headline;
  readonly endReason: EndReason;
}

/** Shares of the distributions at which a doubt alone is tried. */
const SWING_SHARES = { low: 0.1, high: 0.9 } as const;

/**
 * @param members number of draws
 * @param seed whole number; the same seed gives the same design on every machine
 * @param own widths that replace the stated ones
 */
export function ensembleDesign(scenario: Scenario, members: number, seed: number, own: OwnBands = {}): Design {
  if (!Number.isInteger(members) || members < 1 || members > MOST_MEMBERS)
    throw new RangeError(`ensemble: ${members} members; 1 to ${MOST_MEMBERS} are possible`);
  const doubts = uncertainties(scenario, own);
  const unchanged = doubts.map(unchangedValue);
  const swings = doubts.flatMap((doubt, index) =>
    (['low', 'high'] as const).map((side): DesignRow => ({
      kind: 'swing',
      swing: { id: doubt.id, side },
      values: unchanged.map((value, at) => (at === index ? valueAtShare(doubt, SWING_SHARES[side]) : value)),
    })),
  );
  const draws = latinHypercube(members, doubts.length, Xoshiro128.fromSeed(seed)).map((point): DesignRow => ({
    kind: 'draw',
    swing: null,
    values: doubts.map((doubt, index) => valueAtShare(doubt, point[index] as number)),
  }));
  return {
    scenario,
    seed,
    members,
    doubts,
    rows: [{ kind: 'as-planned', swing: null, values: unchanged }, ...swings, ...draws],
  };
}

/** The scenario of a row, at the user's own resolution. */
export function memberScenario(design: Design, index: number): Scenario {
  const row = design.rows[index];
  if (!row) throw new RangeError(`ensemble: member ${index} is not among the ${design.rows.length} rows of the design`);
  return withDrawn(
    design.scenario,
    Object.fromEntries(design.doubts.map(({ id }, index) => [id, row.values[index] as number])),
  );
}

/**
 * Coarser steps and fewer kept points: what a member, or any run of which only the course of the oil is wanted, needs.
 * A whole number of steps lies between two points of the time grid, so that rows fall on it.
 */
export function coarseScenario(scenario: Scenario): Scenario {
  const { advanced, run } = scenario;
  const interval = run.duration_s / (GRID_POINTS - 1);
  const wanted = Math.max(
    advanced.step_s,
    Math.min(LONGEST_STEP, Math.max(SHORTEST_STEP, run.duration_s / MEMBER_STEPS)),
  );
  return {
    ...scenario,
    advanced: {
      ...advanced,
      step_s: interval / Math.ceil(interval / wanted),
      recordEvery_s: interval,
      // The thin layers of standing water would each be met by a part of a long segment only.
      segments: waterStands(scenario) ? advanced.segments : Math.min(advanced.segments, MEMBER_SEGMENTS),
    },
  };
}

/** The times of the common grid, s. */
export const ensembleTimes = (scenario: Scenario): Float64Array =>
  Float64Array.from({ length: GRID_POINTS }, (_, k) => (scenario.run.duration_s * k) / (GRID_POINTS - 1));

/** Computes one row of the design; a pure function of both arguments. */
export function runMember(design: Design, index: number): MemberResult {
  const result = simulate(coarseScenario(memberScenario(design, index)));
  const times = ensembleTimes(design.scenario);
  const oil = times.map((time) => columnAt(result.record, 'oilCollected_kg', time));
  const { summary } = result;
  const perKilogram = summary.oilDensity_kg_m3 === null ? 0 : 1e6 / summary.oilDensity_kg_m3;
  return {
    index,
    oil_mL: oil.map((mass) => mass * perKilogram),
    recovery: oil.map((mass) => (summary.oilInCharge_kg > 0 ? mass / summary.oilInCharge_kg : 0)),
    headline: headlineOf(result, times),
    endReason: summary.endReason,
  };
}

/** Largest value of a column at the points of the grid, up to the end of the record. */
function largest(
  record: RunRecord,
  name: 'condensingLength_m' | 'condensateTemperature_K',
  times: Float64Array,
): number {
  const end = record.columns.time_s[record.rows - 1] as number;
  let most = -Infinity;
  for (const time of times) if (time <= end) most = Math.max(most, record.columns[name][rowAt(record, time)] as number);
  return most;
}

/** Headline numbers of any run, taken as for the members. */
export function headlineOf({ record, summary }: RunResult, times: Float64Array): Headline {
  return {
    oil_mL: summary.oilCollected_mL,
    recovery: summary.recovery,
    oilDissolved_kg: summary.oilDissolved_kg,
    oilHaze_kg: summary.oilHaze_kg,
    oilEscaped_kg: summary.oilUncondensed_kg,
    firstDrop_s: summary.firstDrop_s,
    t50_s: summary.t50_s,
    t90_s: summary.t90_s,
    end_s: summary.end_s,
    hydrosol_kg: summary.hydrosol_kg,
    condensingLength_m: largest(record, 'condensingLength_m', times),
    distillateWarmest_K: summary.firstDrop_s === null ? null : largest(record, 'condensateTemperature_K', times),
    coolantWarmest_K: summary.coolantPeakOut_C + ZERO_CELSIUS,
    escaped_kg: summary.waterUncondensed_kg + summary.oilUncondensed_kg,
    coolantUsed_kg: summary.coolantUsed_kg,
    energyFuel_J: summary.energyFuel_J,
    cost: summary.energyCost + summary.waterCost,
  };
}
