/**
 * The inverse questions of a given condenser: the hardest boil it holds and the least cooling water it needs, each as
 * one constant setting over the whole run, by bracketed root-finds on the real model. `tryCondenser` says what holding
 * means; the value given holds at the scenario's own step, 3 % beyond it does not.
 */
import { celsius, kilowatts, litres, minutes } from '../../run/words.ts';
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
const MOST_FLOW = 2;

const constant = (value: number): Scenario['heat']['setting'] => [{ at_s: 0, value, shape: 'step' }];

export const withHeat = (scenario: Scenario, setting: number): Scenario => ({
  ...scenario,
  heat: { ...scenario.heat, control: 'schedule', setting: constant(setting) },
});

export const withFlow = (scenario: Scenario, flow_kg_s: number): Scenario => ({
  ...scenario,
  cooling: { ...scenario.cooling, flow_kg_s: constant(flow_kg_s) },
});

const failureWords: Readonly<Record<CondenserFailure, string>> = {
  'vapour-escapes': 'vapour leaves the outlet',
  'outlet-warm': 'the distillate leaves warmer than the limit',
  pressure: 'the tube holds back too much vapour',
};

const failsBecause = ({ failure }: CondenserTrial): string =>
  failure === null ? '' : `${failureWords[failure.reason]} at ${minutes(failure.time_s)}`;

export interface HardestBoil {
  /** Largest constant heat setting that is held, share of rated power; `null` when even the least is not. */
  readonly setting: number | null;
  /** Power taken and power into the pot at that setting, W. */
  readonly power_W: number | null;
  readonly potPower_W: number | null;
  /** Largest vapour rate at that setting, kg/s. */
  readonly peakVapour_kg_s: number | null;
  /** Whether vapour comes over at that setting for more than a minute of the run. */
  readonly boils: boolean;
  /** What fails above it; `null` when full heat is held. */
  readonly limitedBy: CondenserFailure | null;
  readonly says: string;
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
      setting: null,
      power_W: null,
      potPower_W: null,
      peakVapour_kg_s: null,
      boils: failed.vapourCame,
      limitedBy: failed.failure?.reason ?? null,
      says: `Even the gentlest boil is not held: ${failsBecause(failed)}.`,
    };
  const setting = 1 / reciprocal;
  const { vapourCame, peakVapour_kg_s } = held as CondenserTrial;
  const limitedBy = setting >= 1 ? null : (failed.failure?.reason ?? null);
  const power = `${(100 * setting).toFixed(0)} % of ${kilowatts(ratedPower_W)}`;
  const says = !vapourCame
    ? `Hardly anything comes over at ${power} within the run; any boil harder than that is not held.`
    : limitedBy === null
      ? `The condenser holds even full heat, ${kilowatts(ratedPower_W)}.`
      : `It holds up to ${power} throughout; above that ${failsBecause(failed)}.`;
  return {
    setting,
    power_W: setting * ratedPower_W,
    potPower_W: setting * ratedPower_W * shareToPot,
    peakVapour_kg_s,
    boils: vapourCame,
    limitedBy,
    says,
  };
}

export interface LeastWater {
  /** Smallest constant flow that is enough, kg/s; zero when the tub lasts by itself; `null` when none is. */
  readonly flow_kg_s: number | null;
  /** Water let in over the run at that flow, kg. */
  readonly used_kg: number | null;
  /** What fails below it, or at any flow; `null` when no flow is needed. */
  readonly limitedBy: CondenserFailure | null;
  readonly says: string;
}

/** Smallest constant cooling-water flow with which the given condenser holds over the whole run. */
export function leastWater(scenario: Scenario): LeastWater {
  const attempt = (flow: number, step: number): CondenserTrial => tryCondenser(withFlow(scenario, flow), step);
  const dry = attempt(0, scenario.advanced.step_s);
  if (dry.holds)
    return {
      flow_kg_s: 0,
      used_kg: 0,
      limitedBy: null,
      says: dry.vapourCame
        ? 'No water need be let in: what is there lasts the run.'
        : 'Hardly anything comes over in this run, so no water is needed.',
    };
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
  const limitedBy = failed.failure?.reason ?? null;
  if (flow === null || held === null)
    return {
      flow_kg_s: null,
      used_kg: null,
      limitedBy,
      says: `No flow is enough: even at ${MOST_FLOW} kg/s ${failsBecause(failed)}, with cooling water at ${celsius(failed.failure?.coolant_K ?? Number.NaN)}: it needs more tube or less heat.`,
    };
  const { coolantUsed_kg } = held as CondenserTrial;
  const tap = scenario.condenser.kind === 'coil-in-tub' || scenario.cooling.jacketSupply === 'tap';
  const amount = tap ? `, ${litres(coolantUsed_kg)} in all` : ', pumped round';
  return {
    flow_kg_s: flow,
    used_kg: tap ? coolantUsed_kg : 0,
    limitedBy,
    says: `${(60 * flow).toFixed(2)} L/min are enough${amount}; with less, ${failsBecause(failed)}.`,
  };
}
