/**
 * The moments of a run that the working shows. The run is gone through once to find them and once more to look at them:
 * the still after the step, and what it held before.
 */
import { tableLiquidEnthalpy } from '../fluids/water-table.ts';
import { Run } from '../run/simulate.ts';
import { Peaks } from '../run/summary.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Still } from '../still/still.ts';
import { ENTHALPY_ZERO } from '../still/stream.ts';
import { ICE_MELTING } from '../still/tub.ts';

/** What a still held before a step; energies and masses are totals as the still keeps them. */
export interface Before {
  readonly potWater: number;
  readonly potEnthalpy: number;
  readonly potTemperature: number;
  readonly potDepth: number;
  readonly potGauge: number;
  /** Oil in the pot's water and in a submerged charge, kg. */
  readonly potOil: number;
  /** Latent heat of the oil that goes with a kilogram of steam, of the last step that made any, J/kg. */
  readonly oilLatent: number;
  readonly waterConsumed: number;
  readonly consumedEnthalpy: number;
  readonly oilHydrolysed: number;
  readonly coolant: CoolantState;
  readonly separatorTemperature: number;
  readonly condenserDrop: number;
  readonly condensateTemperature: number;
}

export interface CoolantState {
  /** Water without ice, kg, and its enthalpy, J. */
  readonly water: number;
  readonly enthalpy: number;
  readonly enthalpyIn: number;
  readonly overflowEnthalpy: number;
  readonly evaporatedEnthalpy: number;
  readonly lossEnergy: number;
  /** Ice that has melted so far, kg. */
  readonly melted: number;
}

export interface Moment {
  readonly time_s: number;
  readonly dt: number;
  readonly scenario: Scenario;
  readonly still: Still;
  readonly before: Before;
  /** State of the cooling water when the heat went on. */
  readonly coolantAtStart: CoolantState;
}

export function coolantState({ coolant }: Still): CoolantState {
  return {
    water: coolant.mass() - coolant.iceLeft,
    enthalpy: coolant.enthalpy() + coolant.iceLeft * ICE_MELTING,
    enthalpyIn: coolant.enthalpyIn,
    overflowEnthalpy: coolant.overflowEnthalpy,
    evaporatedEnthalpy: coolant.evaporatedEnthalpy,
    lossEnergy: coolant.lossEnergy,
    melted: coolant.iceAdded - coolant.iceLeft,
  };
}

const total = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);

/** Oil in the pot: what its water carries, and the charge when it lies in the water, kg. */
export const oilInPot = ({ pot, release, bed }: Still): number => total(pot.oil) + (bed ? 0 : total(release.oilIn));

function stateBefore(still: Still, oilLatent: number): Before {
  const { pot, release, separator, condenser } = still;
  return {
    potWater: pot.water,
    potEnthalpy: pot.enthalpy,
    potTemperature: pot.temperature,
    potDepth: pot.depth(),
    potGauge: pot.gauge,
    potOil: oilInPot(still),
    oilLatent,
    waterConsumed: pot.waterConsumed,
    consumedEnthalpy: pot.consumedEnthalpy,
    oilHydrolysed: release.hydrolysed - release.alcoholFormed,
    coolant: coolantState(still),
    separatorTemperature: separator.temperature,
    condenserDrop: condenser.drop,
    condensateTemperature: condenser.condensateTemperature,
  };
}

/** Time over which the summary smooths rates before it takes their peak, s. */
export const PEAK_MEMORY = 30;

/** Share by which a smoothed number follows in a step of length dt. */
export const smoothingShare = (dt: number): number => -Math.expm1(-dt / PEAK_MEMORY);

/** A peak of a smoothed number: the step, the number in that step, and its smoothed value before and after. */
export interface Peak {
  readonly step: number;
  readonly instant: number;
  readonly smoothedBefore: number;
  readonly smoothed: number;
}

/** Follows one number, smoothed as the summary smooths it, and keeps the step at which the summary's peak last rose. */
class PeakWatch {
  peak: Peak | null = null;
  private now = 0;
  private highest = -Infinity;

  /** @param summary the summary's peak after this step; @returns whether it rose */
  see(step: number, dt: number, instant: number, summary: number): boolean {
    const smoothedBefore = this.now;
    this.now += smoothingShare(dt) * (instant - smoothedBefore);
    if (!(summary > Math.max(0, this.highest))) return false;
    this.highest = summary;
    this.peak = { step, instant, smoothedBefore, smoothed: this.now };
    return true;
  }
}

/** How the pot came to the boil, up to the step before its first steam. */
export interface WarmUp {
  readonly boilStep: number;
  readonly water: number;
  readonly startTemperature: number;
  readonly temperature: number;
  /** Heat capacity of everything in the pot but the water, J/K. */
  readonly capacity: number;
  readonly energyToPot: number;
  /** Lost to the air and taken by chemistry, J. */
  readonly lost: number;
}

export interface Survey {
  /** Time at the end of every step, s. */
  readonly times: readonly number[];
  readonly warmUp: WarmUp | null;
  readonly steam: Peak | null;
  readonly length: Peak | null;
  readonly gauge: Peak | null;
  /** Flow and flow times temperature of the distillate about the warmest outlet. */
  readonly outlet: { readonly flow: Peak; readonly flowTimesTemperature: Peak } | null;
  /** Step with the warmest cooling water. */
  readonly warmestCoolant: number;
  /** Steps in which the separator's cut was worked out anew, and the one with the coarsest cut. */
  readonly cuts: readonly number[];
  readonly coarsestCut: number | null;
}

/** Goes through a run step by step; `look` may stop it by returning true. */
function goThrough(
  scenario: Scenario,
  look: (run: Run, step: number, before: Before, coolantAtStart: CoolantState) => boolean,
): void {
  const run = new Run(scenario);
  const coolantAtStart = coolantState(run.still);
  let oilLatent = 0;
  for (let step = 1; !run.ended; step++) {
    const before = stateBefore(run.still, oilLatent);
    run.takeStep();
    const { out } = run.still.pot;
    if (out.water > 0) oilLatent = run.still.oil.latentOf(out.oil) / out.water;
    if (look(run, step, before, coolantAtStart)) return;
  }
}

/** The way to the boil, from the state at the start and before the step that boils. */
function warmUpOf(
  { pot, oil }: Still,
  boilStep: number,
  start: Before,
  before: Before,
  energyToPot: number,
  potLoss: number,
): WarmUp {
  const T_0 = start.potTemperature;
  // Ester that turns to alcohol takes water with it, and a little of the oil's mass: their heat at the filling temperature was there from the start.
  const chemistry =
    before.consumedEnthalpy -
    before.waterConsumed * tableLiquidEnthalpy(T_0) -
    (start.potOil - before.potOil) * oil.heatCapacity * (T_0 - ENTHALPY_ZERO);
  return {
    boilStep,
    water: before.potWater,
    startTemperature: T_0,
    temperature: before.potTemperature,
    capacity: pot.geometry.wallCapacity + pot.geometry.plantCapacity + before.potOil * oil.heatCapacity,
    energyToPot,
    lost: potLoss + chemistry,
  };
}

/** Finds the moments that the headline numbers speak of. */
export function surveyRun(scenario: Scenario): Survey {
  const peaks = new Peaks();
  const watch = () => new PeakWatch();
  const [steam, length, gauge, flow, flowTimesTemperature] = [watch(), watch(), watch(), watch(), watch()];
  const state = { warmestCoolant: -Infinity, coarsest: -Infinity, potLoss: 0, potEnergy: 0 };
  let outlet: Survey['outlet'] = null;
  let warmUp: WarmUp | null = null;
  let warmestCoolant = 1;
  let coarsestCut: number | null = null;
  const cuts: number[] = [];
  let cutBefore = [NaN, NaN];
  let atStart: Before | null = null;
  const times: number[] = [];
  goThrough(scenario, (run, step, before) => {
    atStart ??= before;
    const { still, stepLength: dt } = run;
    times.push(run.time());
    const { pot, condenser, coolant, separator } = still;
    if (warmUp === null && pot.out.water > 0)
      warmUp = warmUpOf(still, step, atStart, before, state.potEnergy, state.potLoss);
    state.potLoss += pot.loss;
    state.potEnergy = still.potEnergy;
    peaks.watch(still, dt);
    steam.see(step, dt, pot.out.water / dt, peaks.steam);
    length.see(step, dt, condenser.condensingLength, peaks.condensingLength);
    gauge.see(step, dt, still.gauge(), peaks.gauge);
    const rate = condenser.condensate.water / dt;
    const warmer = flow.see(step, dt, rate, peaks.condensate);
    flowTimesTemperature.see(step, dt, rate * condenser.condensateTemperature, peaks.condensate);
    if (warmer && flow.peak !== null && flowTimesTemperature.peak !== null)
      outlet = { flow: flow.peak, flowTimesTemperature: flowTimesTemperature.peak };
    if (coolant.outletTemperature > state.warmestCoolant) {
      state.warmestCoolant = coolant.outletTemperature;
      warmestCoolant = step;
    }
    const cut = [separator.cutSize, separator.densityDifference];
    if (cut.some((value, at) => !Object.is(value, cutBefore[at])) && Number.isFinite(separator.densityDifference)) {
      cuts.push(step);
      if (separator.cutSize > state.coarsest) {
        state.coarsest = separator.cutSize;
        coarsestCut = step;
      }
    }
    cutBefore = cut;
    return false;
  });
  return {
    times,
    warmUp,
    steam: steam.peak,
    length: length.peak,
    gauge: gauge.peak,
    outlet,
    warmestCoolant,
    cuts,
    coarsestCut,
  };
}

/** Calls each visitor at its step, in one go through the run. */
export function visitMoments(
  scenario: Scenario,
  visits: readonly { readonly step: number; readonly visit: (moment: Moment) => void }[],
): void {
  const last = Math.max(0, ...visits.map(({ step }) => step));
  goThrough(scenario, (run, step, before, coolantAtStart) => {
    for (const { step: wanted, visit } of visits)
      if (wanted === step)
        visit({ time_s: run.time(), dt: run.stepLength, scenario, still: run.still, before, coolantAtStart });
    return step >= last;
  });
}
