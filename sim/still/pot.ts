/**
 * The boiling water: pot (or separate boiler) with its wall, and in water distillation the submerged charge.
 *
 * States: water [kg], enthalpy of water, wetted wall, submerged plant and oil [J], oil in the water [kg].
 * Equations: lumped heat balance; below the boil heat raises the temperature, at the boil what exceeds the enthalpy
 * of liquid at the boiling point makes steam. Boiling point at P_air + Δp of everything downstream, taken implicitly
 * (the drop made linear about the last step) so that a narrow outlet cannot make the balance swing; in water distillation at
 * the co-boiling temperature while free oil is there. Oil in the water (from cohobation) leaves with the steam in
 * proportion to its concentration over its solubility.
 * Assumptions: one temperature; no evaporation below the boil; wall up to the first water level or the grid (a separate
 * boiler's whole wall and lid) is as hot as the water, whether water or steam stands on it: what it loses condenses there.
 */
import { WATER_MOLAR_MASS } from '../constants.ts';
import {
  tableLatentHeat,
  tableLiquidDensity,
  tableLiquidEnthalpy,
  tableLiquidHeatCapacity,
  tableSaturationSlope,
  tableSaturationTemperature,
  tableVapourEnthalpy,
} from '../fluids/water-table.ts';
import { WATER_MIN_TEMPERATURE } from '../fluids/water.ts';
import { circleArea } from '../geometry/cylinder.ts';
import type { Oil } from './oil.ts';
import { shareLeaving, type Release } from './release.ts';
import { ENTHALPY_ZERO, VapourStream, type LiquidStream } from './stream.ts';
import type { LossTable } from './surface-loss.ts';

/**
 * Exponent of the drop over the steam rate for the step's linearisation: turbulent friction (1.75) times a condensing
 * length that grows with the rate (1). It only steers how fast pressure settles, not where.
 */
const DROP_EXPONENT = 2.75;

/** Time over which the steam rate is smoothed for the approach to saturation, s: steam and boiling point then settle together. */
export const FLUX_MEMORY = 20;

/** Time that oil dripping back needs to spread and meet the rising steam, s; estimated, it only bounds the rate. */
const STRIP_TIME = 20;
/** Share of the way that a smoothed value goes in a step. */
export const relaxation = (dt: number): number => -Math.expm1(-dt / FLUX_MEMORY);
/** Time in which pressure follows the drop, s: the vapour space is soft, and a puff does not blow it up. */
export const PRESSURE_MEMORY = 5;
/** Gauge pressure that the steam tables still cover, Pa; the run stops long before. */
export const HIGHEST_GAUGE = 150_000;

/** Steam through the bed below which the slope of its drop is not taken, kg/s: dividing by less overflows. */
const LEAST_THROUGH = 1e-12;

/**
 * Heat of the pot above its boil, K, that is left where a step brings more than the straight line of the boiling point
 * holds for: what exceeds it leaves as steam in the same step.
 */
const LEFT_ABOVE_BOIL = 2;

/** Most of its water that the pot boils off in one step, as a share. */
export const MOST_BOILED_OFF = 0.999;

export interface PotGeometry {
  readonly diameter: number;
  readonly height: number;
  /** Height of the wall that is as hot as the water, m. */
  readonly warmHeight: number;
  /** Heat capacity of the wall and base that warm with the water, J/K. */
  readonly wallCapacity: number;
  /** Volume taken by the submerged charge, m³; zero unless water distillation. */
  readonly submergedVolume: number;
  /** Heat capacity of the submerged dry plant, J/K. */
  readonly plantCapacity: number;
}

/** Terms of the last step's balance of heat; NaN before the first. */
export class PotTerms {
  /** Temperature that the loss to the air goes by, K. */
  temperature = NaN;
  /** Enthalpy before the heat of this step, J, and heat through the base, J. */
  enthalpy = NaN;
  heat = NaN;
  /** Before it boils: water, kg, and heat capacity of everything else, J/K. */
  water = NaN;
  capacity = NaN;
  /** Pressure above the air that the step began with, Pa, oil per water in the vapour, mol/mol, and the boil there, K. */
  gaugeBefore = NaN;
  molarRatio = NaN;
  boiling = NaN;
  /** Enthalpy above that of liquid at the boil, J. */
  surplus = NaN;
  /** Heat capacity of pot and content over the slope of the boiling line: heat that a pascal more keeps, J/Pa. */
  perPascal = NaN;
  /** Latent heat of the oil that goes with a kilogram of steam, J/kg. */
  oilLatent = NaN;
}

export class Pot {
  readonly terms = new PotTerms();
  water: number;
  enthalpy: number;
  temperature: number;
  /** Oil dissolved or afloat in the water (not in the plant), kg by constituent. */
  readonly oil: Float64Array;
  readonly out: VapourStream;
  /** Heat lost to the air in the last step, and so far, J. */
  loss = 0;
  lossEnergy = 0;
  /** Water consumed by ester hydrolysis so far, kg, and the enthalpy it took, J. */
  waterConsumed = 0;
  consumedEnthalpy = 0;
  /** Pressure above the air that this step's steam rate asks for, Pa. */
  gauge = 0;
  /** Boiling temperature of the last step, K. */
  boilingTemperature = 373.15;
  private drop = 0;
  private dropSlope = 0;
  /** Steam expected to pass the bed in the last step, kg/s. */
  private through = 0;
  /** Moles of oil per mole of water in the vapour, smoothed; negative before the first step. */
  private molarRatio = -1;
  /** Steam rate, smoothed, that the approach to saturation is worked out with, kg/s; negative before the first step. */
  private meanRate = -1;
  private oilLatent = 0;
  /** Whether the heat of this step is more than all the water can take up: its last steam carries the rest off. */
  private boilsDry = false;
  private readonly fromWater: Float64Array;
  readonly section: number;

  readonly geometry: PotGeometry;
  private readonly mixture: Oil;
  private readonly submerged: Release | null;
  readonly lossTable: LossTable;

  constructor(
    geometry: PotGeometry,
    mixture: Oil,
    submerged: Release | null,
    lossTable: LossTable,
    water: number,
    temperature: number,
  ) {
    this.geometry = geometry;
    this.mixture = mixture;
    this.submerged = submerged;
    this.lossTable = lossTable;
    this.section = circleArea(geometry.diameter);
    this.water = water;
    this.temperature = temperature;
    this.oil = new Float64Array(mixture.count);
    this.fromWater = new Float64Array(mixture.count);
    this.out = new VapourStream(mixture.count);
    this.enthalpy = water * tableLiquidEnthalpy(temperature) + this.capacity() * (temperature - ENTHALPY_ZERO);
  }

  /** Heat capacity of everything but the water, J/K. */
  capacity(): number {
    let oil = this.submerged ? (this.submerged.oilIn[0] as number) : 0;
    for (let i = 0; i < this.oil.length; i++) oil += this.oil[i] as number;
    return this.geometry.wallCapacity + this.geometry.plantCapacity + oil * this.mixture.heatCapacity;
  }

  private settle(capacity: number): void {
    let T = this.temperature;
    for (let pass = 0; pass < 4; pass++) {
      // From hot to nearly freezing in one step, a first guess may lie below what the tables hold.
      const at = T < WATER_MIN_TEMPERATURE ? WATER_MIN_TEMPERATURE : T;
      const off = this.enthalpy - this.water * tableLiquidEnthalpy(at) - capacity * (at - ENTHALPY_ZERO);
      const change = off / (this.water * tableLiquidHeatCapacity(at) + capacity);
      T = at + change;
      if (change * change < 1e-14) break;
    }
    this.temperature = T;
  }

  /** Depth of the liquid, m, counting the submerged charge. */
  depth(): number {
    return (this.water / tableLiquidDensity(this.temperature) + this.geometry.submergedVolume) / this.section;
  }

  /** Tells the pot the pressure drop downstream that its last steam caused, Pa. */
  setBackPressure(drop: number): void {
    this.drop = drop;
    this.dropSlope = this.through > 0 ? (DROP_EXPONENT * drop) / Math.max(LEAST_THROUGH, this.through) : 0;
  }

  /** Liquid running back into the pot. */
  receive(liquid: LiquidStream): void {
    this.water += liquid.water;
    this.enthalpy += liquid.enthalpy;
    for (let i = 0; i < this.oil.length; i++) this.oil[i] = (this.oil[i] as number) + (liquid.oil[i] as number);
  }

  /**
   * @param heat heat through the base in this step, J
   * @param downstreamCapacity heat capacity of the hot bed, J/K: when the pressure rises it, too, takes up steam
   */
  step(heat: number, airPressure: number, downstreamCapacity: number, dt: number): void {
    const { out, submerged } = this;
    out.clear();
    if (submerged) {
      const consumed = submerged.advance(0, this.temperature, this.water, dt);
      this.water -= consumed;
      this.waterConsumed += consumed;
      const taken = consumed * tableLiquidEnthalpy(this.temperature);
      this.enthalpy -= taken;
      this.consumedEnthalpy += taken;
    }
    const wettedHeight = Math.min(this.geometry.height, this.depth());
    this.terms.temperature = this.temperature;
    this.terms.enthalpy = this.enthalpy;
    this.terms.heat = heat;
    const capacity = this.capacity();
    const perKelvin = this.water * tableLiquidHeatCapacity(this.temperature) + capacity;
    this.loss = this.lossTable.inStep(this.temperature, dt, perKelvin);
    // The heat capacity of the water is another at the coldest that it may become in this step.
    const coldest = this.lossTable.coldest();
    if (this.temperature > coldest) {
      const spare = this.enthalpy - this.water * tableLiquidEnthalpy(coldest) - capacity * (coldest - ENTHALPY_ZERO);
      if (this.loss > spare) this.loss = spare;
    }
    this.lossEnergy += this.loss;
    this.enthalpy += heat - this.loss;
    if (submerged) {
      if (this.meanRate < 0) this.meanRate = heat / (dt * tableLatentHeat(this.boilingTemperature));
      submerged.setApproach(wettedHeight, this.meanRate / this.section);
    }
    const memory = relaxation(dt);
    const expected = this.expectedRatio(submerged);
    this.molarRatio = this.molarRatio < 0 ? expected : this.molarRatio + (expected - this.molarRatio) * memory;
    const steam = this.steamMade(airPressure, downstreamCapacity, dt);
    if (steam > 0) this.evaporate(steam, this.boilingTemperature, dt);
    this.meanRate +=
      ((steam > 0 ? steam / dt : heat / (dt * tableLatentHeat(this.boilingTemperature))) - this.meanRate) * memory;
    this.settle(this.capacity());
    out.temperature = this.boilingTemperature;
  }

  /**
   * Steam of this step, kg, with the pressure it causes. With E the surplus of enthalpy at the last pressure p_0, C the
   * heat capacity of pot and hot bed, s = dT/dp and the drop linear about the last step, Δp = Δp_1 + S (ṁ − ṁ_1), which
   * the pressure follows with a short lag:  ṁ h = E/Δt − C s (p − p_0)/Δt,  p = p_0 + a (Δp − p_0).
   */
  private steamMade(airPressure: number, downstreamCapacity: number, dt: number): number {
    const { terms } = this;
    const capacity = this.capacity();
    const boiling = tableSaturationTemperature((airPressure + this.gauge) / (1 + this.molarRatio));
    const surplus = this.enthalpy - this.water * tableLiquidEnthalpy(boiling) - capacity * (boiling - ENTHALPY_ZERO);
    const latent = tableLatentHeat(boiling) + this.oilLatent;
    const perPascal = 1 / tableSaturationSlope(boiling);
    const own = (this.water * tableLiquidHeatCapacity(boiling) + capacity) * perPascal;
    const all = own + downstreamCapacity * perPascal;
    const before = this.gauge;
    terms.water = this.water;
    terms.capacity = capacity;
    terms.gaugeBefore = before;
    terms.molarRatio = this.molarRatio;
    terms.boiling = boiling;
    terms.surplus = surplus;
    terms.perPascal = own;
    terms.oilLatent = this.oilLatent;
    const share = -Math.expm1(-dt / PRESSURE_MEMORY);
    const slope = share * this.dropSlope;
    const offset = (1 - share) * before + share * this.drop - slope * this.through;
    const through = Math.max(0, (surplus - all * (offset - before)) / (dt * latent + all * slope));
    this.gauge = Math.min(HIGHEST_GAUGE, Math.max(0, offset + slope * through));
    this.through = through;
    this.boilingTemperature = tableSaturationTemperature((airPressure + this.gauge) / (1 + this.molarRatio));
    const wanted = (surplus - own * (this.gauge - before)) / latent;
    const steam = Math.min(Math.max(0, wanted), MOST_BOILED_OFF * this.water);
    this.boilsDry = wanted > steam;
    return steam;
  }

  /**
   * Oil that steam carries out of the pot's water at the present concentrations, kg by constituent for a kilogram of
   * steam, written to `fromWater`: activity a_i = n_i/(Σ n_j + s_i), s_i the moles the water can dissolve, so that it is
   * c_i/S_i in dilute water and Raoult's x_i under floating oil.
   */
  private carriedFromWater(T: number): boolean {
    const { mixture, oil, fromWater } = this;
    let moles = 0;
    for (let i = 0; i < oil.length; i++) moles += (oil[i] as number) / (mixture.molarMass[i] as number);
    if (!(moles > 0)) return false;
    mixture.pressureRatios(T, fromWater);
    for (let i = 0; i < oil.length; i++) {
      const M = mixture.molarMass[i] as number;
      const room = moles + (mixture.solubilityRatio(i, T) * this.water) / M;
      fromWater[i] = ((fromWater[i] as number) * (oil[i] as number)) / (room * WATER_MOLAR_MASS);
    }
    return true;
  }

  /**
   * Moles of oil per mole of water in the vapour that boils off now; oil in the water counts with what it can give over
   * the smoothing time, so that a trace that is gone in a moment does not move the boiling point.
   */
  private expectedRatio(submerged: Release | null): number {
    const T = this.boilingTemperature;
    const some = this.carriedFromWater(T);
    if (some && this.meanRate > 0) {
      const soon = this.meanRate * FLUX_MEMORY;
      for (let i = 0; i < this.oil.length; i++) {
        const stock = this.oil[i] as number;
        if (!(stock > 0)) continue;
        const lambda = (soon * (this.fromWater[i] as number)) / stock;
        this.fromWater[i] = (stock * shareLeaving(lambda / (1 + (lambda * STRIP_TIME) / FLUX_MEMORY))) / soon;
      }
    }
    if (submerged) return submerged.expectedRatio(0, T, this.fromWater, some ? 1 : 0);
    return some ? this.mixture.molarRatio(this.fromWater, 1) : 0;
  }

  private evaporate(steam: number, T: number, dt: number): void {
    const { out, mixture, submerged, fromWater, oil } = this;
    if (this.carriedFromWater(T)) {
      for (let i = 0; i < oil.length; i++) {
        const stock = oil[i] as number;
        if (!(stock > 0)) continue;
        const lambda = (steam * (fromWater[i] as number)) / stock;
        const lifted = stock * shareLeaving(lambda / (1 + (lambda * STRIP_TIME) / dt));
        oil[i] = stock - lifted;
        out.oil[i] = lifted;
      }
    }
    if (submerged) submerged.takeUp(0, T, steam, out.oil, out.oil);
    const latent = mixture.latentOf(out.oil);
    out.water = steam;
    out.enthalpy =
      steam * tableVapourEnthalpy(T) + latent + out.oilTotal() * mixture.heatCapacity * (T - ENTHALPY_ZERO);
    this.water -= steam;
    if (this.boilsDry) {
      const left = this.water * tableLiquidEnthalpy(T) + this.capacity() * (T - ENTHALPY_ZERO);
      out.enthalpy += Math.max(0, this.enthalpy - out.enthalpy - left);
    }
    this.enthalpy -= out.enthalpy;
    this.oilLatent = latent / steam;
    this.flash(T);
  }

  /** Lets what is left far above the boil leave as steam too, hotter where it is more than all the water can take up. */
  private flash(T: number): void {
    const { out } = this;
    const capacity = this.capacity();
    const over = this.enthalpy - this.water * tableLiquidEnthalpy(T) - capacity * (T - ENTHALPY_ZERO);
    if (!(over > LEFT_ABOVE_BOIL * (this.water * tableLiquidHeatCapacity(T) + capacity))) return;
    const more = Math.min(over / tableLatentHeat(T), MOST_BOILED_OFF * this.water);
    const heat = more * tableLiquidEnthalpy(T) + over;
    this.water -= more;
    this.enthalpy -= heat;
    out.water += more;
    out.enthalpy += heat;
  }
}
