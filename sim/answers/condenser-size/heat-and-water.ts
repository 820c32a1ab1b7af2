/**
 * The inverse questions of a given condenser: the hardest boil it holds and the least cooling water it needs, each as
 * one constant setting over the whole run, by bracketed root-finds on the real model. `tryCondenser` says what holding
 * means; the value given holds at the scenario's own step, 3 % beyond it does not.
 */
import { isTapFed } from '../../geometry/condenser-kind.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import { searchStep, tryCondenser, type CondenserFailure, type CondenserTrial } from './trial.ts';
import { confirmSmallest, largestPassing, smallestPassing } from '../../maths/root-find.ts';

const CLOSENESS = 0.99;
/** Moved to the safe side of the coarse boundary, so that the finer step holds too. */
const COARSE_GUARD = 1.003;
/** Smallest setting looked at: no source is turned lower. */
const LEAST_SETTING = 0.02;
/** Limits of the cooling-water flow of a scenario above none, kg/s. */
const LEAST_FLOW = 1e-5;
export const MOST_FLOW = 2;

const constant = (value: number): Scenario['heat']['setting'] => [{ at_s: 0, value, shape: 'step' }];

export const withHeat = (scenario: Scenario, setting: number): Scenario => ({
  ...scenario,
  heat: { ...scenario.heat, control: 'schedule', setting: constant(setting) },
});

export const withFlow = (scenario: Scenario, flow_kg_s: number): Scenario => ({
  ...scenario,
  cooling: { ...scenario.cooling, flow_kg_s: constant(flow_kg_s) },
});

export type HardestBoilKind =
  /** Even full heat is held. */
  | 'full-heat'
  /** Held up to the setting. */
  | 'up-to'
  /** Held up to the setting, at which nothing comes over for more than a minute: every boil fails. */
  | 'no-boil'
  /** Even the least setting fails. */
  | 'none'
  /** Nothing comes over for more than a minute even at full heat. */
  | 'no-vapour';

export interface HardestBoil {
  readonly kind: HardestBoilKind;
  /** Largest constant heat setting that is held, share of rated power. */
  readonly setting: number | null;
  /** Power taken and power into the pot at that setting, W. */
  readonly power_W: number | null;
  readonly potPower_W: number | null;
  /** Largest vapour rate at that setting, kg/s. */
  readonly peakVapour_kg_s: number | null;
  /** What fails above it. */
  readonly limitedBy: CondenserFailure | null;
}

/** Largest constant heat setting that still condenses with the given condenser and water over the whole run. */
export function hardestBoil(scenario: Scenario): HardestBoil {
  const attempt = (setting: number, step: number): CondenserTrial => tryCondenser(withHeat(scenario, setting), step);
  const step = searchStep(scenario);
  const found = largestPassing((setting) => ({ passes: attempt(setting, step).holds }), {
    low: LEAST_SETTING,
    high: 1,
    start: 1,
    closeness: CLOSENESS,
  });
  const guarded =
    found.passing === null ? null : found.failing === null ? 1 : Math.max(LEAST_SETTING, found.passing / COARSE_GUARD);
  let held: CondenserTrial | null = null;
  let failed: CondenserTrial = attempt(found.failing ?? 1, step);
  const reciprocal =
    guarded === null
      ? null
      : confirmSmallest(
          (value) => {
            const trial = attempt(1 / value, scenario.advanced.step_s);
            if (trial.holds) held = trial;
            else failed = trial;
            return trial.holds;
          },
          1 / guarded,
          1,
          1 / LEAST_SETTING,
        );
  const { ratedPower_W, shareToPot } = scenario.heat;
  if (reciprocal === null || held === null)
    return {
      kind: 'none',
      setting: null,
      power_W: null,
      potPower_W: null,
      peakVapour_kg_s: null,
      limitedBy: failed.failure,
    };
  const setting = 1 / reciprocal;
  const { vapourCame, peakVapour_kg_s } = held as CondenserTrial;
  const limitedBy = setting >= 1 ? null : failed.failure;
  return {
    kind: hardestKind(limitedBy !== null, vapourCame),
    setting,
    power_W: setting * ratedPower_W,
    potPower_W: setting * ratedPower_W * shareToPot,
    peakVapour_kg_s,
    limitedBy,
  };
}

function hardestKind(limited: boolean, vapourCame: boolean): HardestBoilKind {
  if (limited) return vapourCame ? 'up-to' : 'no-boil';
  return vapourCame ? 'full-heat' : 'no-vapour';
}

export type LeastWaterKind =
  /** The water that is there is enough. */
  | 'none-needed'
  /** Nothing comes over for more than a minute. */
  | 'no-vapour'
  /** With less than the flow it fails. */
  | 'at-least'
  /** It fails even at `MOST_FLOW`. */
  | 'none-enough';

export interface LeastWater {
  readonly kind: LeastWaterKind;
  /** Smallest constant flow that is enough, kg/s. */
  readonly flow_kg_s: number | null;
  /** Water let in over the run at that flow, kg; zero where it is pumped round. */
  readonly used_kg: number | null;
  /** What fails below it, or at any flow; `null` when no flow is needed. */
  readonly limitedBy: CondenserFailure | null;
}

/** Smallest constant cooling-water flow with which the given condenser holds over the whole run. */
export function leastWater(scenario: Scenario): LeastWater {
  const attempt = (flow: number, step: number): CondenserTrial => tryCondenser(withFlow(scenario, flow), step);
  const dry = attempt(0, scenario.advanced.step_s);
  if (dry.holds)
    return { kind: dry.vapourCame ? 'none-needed' : 'no-vapour', flow_kg_s: 0, used_kg: 0, limitedBy: null };
  const step = searchStep(scenario);
  let failed = dry;
  const start = Math.max(LEAST_FLOW, ...scenario.cooling.flow_kg_s.map((knot) => knot.value));
  const found = smallestPassing(
    (flow) => {
      const trial = attempt(flow, step);
      if (!trial.holds) failed = trial;
      return { passes: trial.holds };
    },
    { low: LEAST_FLOW, high: MOST_FLOW, start, closeness: CLOSENESS },
  );
  let held: CondenserTrial | null = null;
  const flow =
    found.passing === null
      ? null
      : confirmSmallest(
          (value) => {
            const trial = attempt(value, scenario.advanced.step_s);
            if (trial.holds) held = trial;
            else failed = trial;
            return trial.holds;
          },
          Math.min(MOST_FLOW, COARSE_GUARD * found.passing),
          LEAST_FLOW,
          MOST_FLOW,
        );
  const limitedBy = failed.failure;
  if (flow === null || held === null) return { kind: 'none-enough', flow_kg_s: null, used_kg: null, limitedBy };
  const { coolantUsed_kg } = held as CondenserTrial;
  const tap = isTapFed(scenario);
  return { kind: 'at-least', flow_kg_s: flow, used_kg: tap ? coolantUsed_kg : 0, limitedBy };
}
