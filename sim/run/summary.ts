/** Headline numbers of a run, read off its record and the still's end state. */
import { ZERO_CELSIUS } from '../constants.ts';
import { heatedBaseArea } from '../geometry/pot.ts';
import { lerp } from '../maths/interpolate.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Still } from '../still/still.ts';
import type { RunRecord } from './record.ts';
import { sum } from './recorder.ts';
import type { EndReason, Summary } from './result.ts';
import { timeToStand } from './standing.ts';

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
    return lerp(t0, time_s[row] as number, share);
  }
  return null;
}

/** Time over which rates are smoothed before their peak is taken, s: one step's puff is not a result. */
const PEAK_MEMORY = 30;

/** Share of the way that a smoothed number goes in a step of length dt. */
export const smoothingShare = (dt: number): number => -Math.expm1(-dt / PEAK_MEMORY);

/** Share of the flow that its smoothed value must have reached before an outlet temperature counts as a peak. */
const SETTLED_SHARE = 0.9;

/** Share of a steady rate that its smoothed value reaches in half a minute. */
const HALF_MINUTE_SHARE = 1 - Math.exp(-1);

/** A number that flickers from step to step, smoothed, and its highest value so far. */
export class Smoothed {
  now = 0;
  /** Smoothed value one step before. */
  before = 0;
  peak = 0;

  /** @param share `smoothingShare` of the step */
  follow(latest: number, share: number): void {
    this.before = this.now;
    this.now += share * (latest - this.now);
    this.peak = Math.max(this.peak, this.now);
  }
}

/** Peaks of smoothed rates, watched every step. */
export class Peaks {
  readonly steam = new Smoothed();
  readonly duty = new Smoothed();
  /** Longest condensing length, weighted by the vapour of the last half minute, m. */
  condensingLength = 0;
  readonly gauge = new Smoothed();
  readonly neckSpeed = new Smoothed();
  readonly vapour = new Smoothed();
  readonly vapourTimesLength = new Smoothed();
  readonly flow = new Smoothed();
  readonly flowTimesTemperature = new Smoothed();
  coolantOut = -Infinity;
  /** Outlet temperature, weighted by flow over the last half minute, K. */
  condensate = -Infinity;
  private coolantNow = NaN;

  watch(still: Still, dt: number): void {
    const { condenser } = still;
    const { flow } = this;
    const share = smoothingShare(dt);
    this.steam.follow(still.pot.out.water / dt, share);
    this.duty.follow(condenser.duty / dt, share);
    const arriving = still.arrivingWater / dt;
    this.vapour.follow(arriving, share);
    this.vapourTimesLength.follow(arriving * condenser.condensingLength, share);
    if (arriving > 0 && this.vapour.now > HALF_MINUTE_SHARE * arriving)
      this.condensingLength = Math.max(this.condensingLength, this.vapourTimesLength.now / this.vapour.now);
    this.gauge.follow(still.gauge(), share);
    this.neckSpeed.follow(still.neckSpeed, share);
    const rate = condenser.condensate.water / dt;
    flow.follow(rate, share);
    this.flowTimesTemperature.follow(rate * condenser.condensateTemperature, share);
    this.coolantNow = Number.isNaN(this.coolantNow)
      ? still.coolant.outletTemperature
      : this.coolantNow + share * (still.coolant.outletTemperature - this.coolantNow);
    this.coolantOut = Math.max(this.coolantOut, this.coolantNow);
    if (flow.now > 0 && flow.now > SETTLED_SHARE * rate)
      this.condensate = Math.max(this.condensate, this.flowTimesTemperature.now / flow.now);
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
  const half = reached(0.5);
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
    t50_s: half,
    t80_s: reached(0.8),
    t90_s: reached(0.9),
    t95_s: reached(0.95),
    t99_s: reached(0.99),
    hydrosol_kg: still.keptWater,
    oilDissolved_kg: sum(separator.dissolved),
    oilHaze_kg: sum(separator.haze),
    hazeClears_s: timeToStand(record, scenario, density),
    oilUncondensed_kg: sum(still.escapedOil),
    oilHydrolysed_kg: release.hydrolysed - release.alcoholFormed,
    oilLeft_kg: oil.ids.reduce((total, _, i) => total + still.storedOil(i), 0),
    waterUncondensed_kg: still.escapedWater,
    peakSteam_kg_s: peaks.steam.peak,
    peakDuty_W: peaks.duty.peak,
    coolantPeakOut_C: peaks.coolantOut - ZERO_CELSIUS,
    coolantUsed_kg: still.coolant.used,
    condensatePeak_C: Number.isFinite(peaks.condensate) ? peaks.condensate - ZERO_CELSIUS : null,
    condensingLengthPeak_m: peaks.condensingLength,
    energyFuel_J: still.fuelEnergy,
    energyToPot_J: still.potEnergy,
    energyCost: still.fuelEnergy * heat.energyPrice_J,
    waterCost: (still.coolant.used / 998) * cooling.waterPrice_m3,
    potWaterLeft_kg: input.potWaterLeft,
    peakPotGauge_Pa: input.endReason === 'over-pressure' ? Math.max(peaks.gauge.peak, still.gauge()) : peaks.gauge.peak,
    peakNeckSpeed_m_s: peaks.neckSpeed.peak,
    baseFlux_W_m2: (heat.ratedPower_W * heat.shareToPot * peakSetting) / heatedBaseArea(scenario),
    oilSinks: separator.densityDifference < 0,
  };
}
