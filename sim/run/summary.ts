/** Headline numbers of a run, read off its record and the still's end state. */
import { ZERO_CELSIUS } from '../constants.ts';
import { heatedBaseArea } from '../geometry/pot.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Still } from '../still/still.ts';
import type { RunRecord } from './record.ts';
import { sum } from './recorder.ts';
import type { EndReason, Summary } from './result.ts';

/** Time at which the collected oil first reaches an amount, in a straight line between rows; `null` when never. */
export function timeToCollect(record: RunRecord, amount_kg: number): number | null {
  const { time_s, oilCollected_kg } = record.columns;
  if (!(amount_kg > 0)) return null;
  for (let row = 1; row < record.rows; row++) {
    const now = oilCollected_kg[row] as number;
    if (now < amount_kg) continue;
    const before = oilCollected_kg[row - 1] as number;
    const share = now > before ? (amount_kg - before) / (now - before) : 1;
    const t0 = time_s[row - 1] as number;
    return t0 + share * ((time_s[row] as number) - t0);
  }
  return null;
}

/** Time over which rates are smoothed before their peak is taken, s: one step's puff is not a result. */
const PEAK_MEMORY = 30;

/** Share of the flow that its smoothed value must have reached before an outlet temperature counts as a peak. */
const SETTLED_SHARE = 0.9;

/** Peaks of smoothed rates, watched every step. */
export class Peaks {
  steam = 0;
  duty = 0;
  coolantOut = -Infinity;
  condensate = -Infinity;
  condensingLength = 0;
  gauge = 0;
  neckSpeed = 0;
  /** Outlet temperature weighted by flow over the last half minute, K; NaN before the first drop. */
  outlet = NaN;
  private steamNow = 0;
  private dutyNow = 0;
  private lengthNow = 0;
  private gaugeNow = 0;
  private speedNow = 0;
  private coolantNow = NaN;
  private flowNow = 0;
  private flowTimesTemperature = 0;

  watch(still: Still, dt: number): void {
    const { condenser } = still;
    const share = -Math.expm1(-dt / PEAK_MEMORY);
    this.steamNow += share * (still.pot.out.water / dt - this.steamNow);
    this.dutyNow += share * (condenser.duty / dt - this.dutyNow);
    this.lengthNow += share * (condenser.condensingLength - this.lengthNow);
    this.gaugeNow += share * (still.gauge() - this.gaugeNow);
    this.speedNow += share * (still.neckSpeed - this.speedNow);
    const flow = condenser.condensate.water / dt;
    this.flowNow += share * (flow - this.flowNow);
    this.flowTimesTemperature += share * (flow * condenser.condensateTemperature - this.flowTimesTemperature);
    this.outlet = this.flowNow > 0 ? this.flowTimesTemperature / this.flowNow : NaN;
    this.steam = Math.max(this.steam, this.steamNow);
    this.duty = Math.max(this.duty, this.dutyNow);
    this.condensingLength = Math.max(this.condensingLength, this.lengthNow);
    this.gauge = Math.max(this.gauge, this.gaugeNow);
    this.neckSpeed = Math.max(this.neckSpeed, this.speedNow);
    this.coolantNow = Number.isNaN(this.coolantNow)
      ? still.coolant.outletTemperature
      : this.coolantNow + share * (still.coolant.outletTemperature - this.coolantNow);
    this.coolantOut = Math.max(this.coolantOut, this.coolantNow);
    if (this.flowNow > SETTLED_SHARE * flow) this.condensate = Math.max(this.condensate, this.outlet);
  }
}

export interface SummaryInput {
  readonly scenario: Scenario;
  readonly still: Still;
  readonly record: RunRecord;
  readonly peaks: Peaks;
  readonly oilAtStart: number;
  readonly firstBoil: number | null;
  readonly firstDrop: number | null;
  readonly end: number;
  readonly endReason: EndReason;
  readonly potWaterLeft: number;
}

export function summarise(input: SummaryInput): Summary {
  const { scenario, still, record, peaks, oilAtStart, end } = input;
  const { separator, release, oil } = still;
  const collected = sum(separator.collected);
  const density = collected > 0 ? oil.mixtureDensity(separator.collected, 293.15) : null;
  const reached = (share: number) => (collected > 0 ? timeToCollect(record, share * collected) : null);
  const { heat, cooling } = scenario;
  const peakSetting = heat.control === 'hold-rate' ? 1 : Math.max(...heat.setting.map((knot) => knot.value));
  return {
    firstBoil_s: input.firstBoil,
    firstDrop_s: input.firstDrop,
    end_s: end,
    endReason: input.endReason,
    oilInCharge_kg: oilAtStart,
    oilCollected_kg: collected,
    oilCollected_mL: density === null ? 0 : (collected / density) * 1e6,
    oilDensity_kg_m3: density,
    oilByConstituent_kg: Object.fromEntries(oil.ids.map((id, i) => [id, separator.collected[i] as number])),
    recovery: oilAtStart > 0 ? collected / oilAtStart : null,
    t50_s: reached(0.5),
    t80_s: reached(0.8),
    t90_s: reached(0.9),
    t95_s: reached(0.95),
    t99_s: reached(0.99),
    hydrosol_kg: still.keptWater,
    oilDissolved_kg: sum(separator.dissolved),
    oilHaze_kg: sum(separator.haze),
    oilUncondensed_kg: sum(still.escapedOil),
    oilHydrolysed_kg: release.hydrolysed - release.alcoholFormed,
    oilLeft_kg: oil.ids.reduce((total, _, i) => total + still.storedOil(i), 0),
    waterUncondensed_kg: still.escapedWater,
    peakSteam_kg_s: peaks.steam,
    peakDuty_W: peaks.duty,
    coolantPeakOut_C: peaks.coolantOut - ZERO_CELSIUS,
    coolantUsed_kg: still.coolant.used,
    condensatePeak_C: Number.isFinite(peaks.condensate) ? peaks.condensate - ZERO_CELSIUS : null,
    condensingLengthPeak_m: peaks.condensingLength,
    energyFuel_J: still.fuelEnergy,
    energyToPot_J: still.potEnergy,
    energyCost: still.fuelEnergy * heat.energyPrice_J,
    waterCost: (still.coolant.used / 998) * cooling.waterPrice_m3,
    potWaterLeft_kg: input.potWaterLeft,
    peakPotGauge_Pa: input.endReason === 'over-pressure' ? Math.max(peaks.gauge, still.gauge()) : peaks.gauge,
    peakNeckSpeed_m_s: peaks.neckSpeed,
    baseFlux_W_m2: (heat.ratedPower_W * heat.shareToPot * peakSetting) / heatedBaseArea(scenario),
    oilSinks: separator.densityDifference < 0,
  };
}
