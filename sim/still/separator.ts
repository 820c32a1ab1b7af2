/**
 * Florentine separator: oil drops rise (or sink) out of the water that flows through.
 *
 * States: enthalpy of the hold-up [J], oil layer [kg by constituent].
 * Equations: dissolved oil from equilibrium between the arriving water and oil (Raoult times solubility, solved by
 * Newton); drops log-normal by volume; a drop is caught whole when it rises faster than the overflow rate Q/A (Hazen,
 * times the turbulence factor), and in the proportion v/(Q/A) when slower; rise by Stokes with optional surface
 * mobility. What is not caught leaves as haze. Water leaves as it comes; hold-up is one stirred temperature.
 * Assumptions: no coalescence on the way; fresh water does not dissolve the resting layer.
 * Limits: the drop sizes are an assumption, so haze is an estimate.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import {
  tableLiquidDensity,
  tableLiquidEnthalpy,
  tableLiquidHeatCapacity,
  tableLiquidViscosity,
  tableTemperatureFromLiquidEnthalpy,
} from '../fluids/water-table.ts';
import { circleArea } from '../geometry/cylinder.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { capturedShare } from '../transfer/drop-sizes.ts';
import { cutDiameter, hadamardFactor, overflowRate } from '../transfer/settling.ts';
import type { Oil } from './oil.ts';
import { ENTHALPY_ZERO, LiquidStream, startTemperature } from './stream.ts';
import type { LossTable } from './surface-loss.ts';

/** Time after which cut size and dissolved shares are worked out anew, s. */
const REFRESH_TIME = 5;
/** Coldest and warmest that a receiver is kept, K. */
const COLDEST_RECEIVER = 278.15;
const WARMEST_RECEIVER = 323.15;
/** Relative change of flow, or of oil per water, at which they are worked out at once. */
const REFRESH_CHANGE = 0.005;

/** Terms of the cut size and captured share, from when they were last worked out. */
export class SeparatorTerms {
  /** Of the water: density, kg/m³, viscosity, Pa s, and flow, kg/s. */
  rho = NaN;
  mu = NaN;
  waterRate = NaN;
  /** Density of the oil that arrives, kg/m³. */
  oilDensity = NaN;
  /** Flow with the allowance for turbulence, m³/s, and over the plan area, m/s. */
  flow = NaN;
  overflow = NaN;
  /** By what factor drops with a wholly moving skin are faster, and those here. */
  hadamard = NaN;
  mobile = NaN;
}

export class Separator {
  readonly terms = new SeparatorTerms();
  enthalpy: number;
  temperature: number;
  /** Oil collected, kg by constituent. */
  readonly collected: Float64Array;
  readonly dissolved: Float64Array;
  readonly haze: Float64Array;
  /** Water leaving in the last step, with the oil it carries. */
  readonly out: LiquidStream;
  /** Oil caught in the last step, kg by constituent. */
  readonly caught: Float64Array;
  /** Oil dissolved and oil in haze in the last step, kg by constituent. */
  readonly dissolving: Float64Array;
  readonly hazing: Float64Array;
  /** Share of each arriving constituent that the water dissolves. */
  private readonly dissolvedShare: Float64Array;
  readonly holdUp: number;
  readonly area: number;
  cutSize = 0;
  captureShare = 1;
  /** Water less oil, kg/m³; negative when the oil sinks; NaN before any oil has come. */
  densityDifference = NaN;
  /** Heat lost to the air so far, J. */
  lossEnergy = 0;
  /** Heat carried off in oil and water so far, J. */
  productEnthalpy = 0;
  /** Viscosity of the charge's oil at 25 °C, Pa s, for the mobility of the drops' surface. */
  readonly oilViscosity: number;
  readonly median: number;
  private age = Infinity;
  private refreshedFlow = 0;
  private refreshedRatio = 0;
  private readonly settings: Scenario['separator'];

  private readonly oil: Oil;
  private readonly lossTable: LossTable;

  constructor(scenario: Scenario, oil: Oil, lossTable: LossTable) {
    this.oil = oil;
    this.lossTable = lossTable;
    this.settings = scenario.separator;
    const { bore_m, height_m } = scenario.separator;
    this.area = circleArea(bore_m);
    this.temperature = startTemperature(scenario.site.airTemperature_K);
    this.holdUp = this.area * height_m * 998;
    this.enthalpy = this.holdUp * tableLiquidEnthalpy(this.temperature);
    this.median = scenario.separator.dropMedian_m * scenario.factors.dropSize;
    this.oilViscosity = oil.viscosity(
      oil.ids.map((id) => scenario.charge.composition.find((entry) => entry.constituent === id)?.share ?? 0),
      298.15,
    );
    this.collected = new Float64Array(oil.count);
    this.dissolved = new Float64Array(oil.count);
    this.haze = new Float64Array(oil.count);
    this.caught = new Float64Array(oil.count);
    this.dissolving = new Float64Array(oil.count);
    this.hazing = new Float64Array(oil.count);
    this.dissolvedShare = new Float64Array(oil.count);
    this.out = new LiquidStream(oil.count);
  }

  /**
   * Splits arriving oil between water and drops, writing `dissolvedShare`: with n moles of oil phase left,
   * x_i = N_i / (n + S_i), S_i the moles of i that the water takes at x_i = 1, and Σ x_i = 1 unless all dissolves.
   */
  private dissolve(water: number, oil: Float64Array): void {
    const { dissolvedShare } = this;
    let needed = 0;
    let n = 0;
    for (let i = 0; i < this.oil.count; i++) {
      const capacity = water * this.oil.solubilityRatio(i, this.temperature);
      needed += (oil[i] as number) / capacity;
      n += (oil[i] as number) / (this.oil.molarMass[i] as number);
      dissolvedShare[i] = capacity;
    }
    if (!(needed > 1)) {
      dissolvedShare.fill(1);
      return;
    }
    for (let pass = 0; pass < 12; pass++) {
      let sum = -1;
      let slope = 0;
      for (let i = 0; i < this.oil.count; i++) {
        const moles = (oil[i] as number) / (this.oil.molarMass[i] as number);
        const room = n + (dissolvedShare[i] as number) / (this.oil.molarMass[i] as number);
        sum += moles / room;
        slope -= moles / (room * room);
      }
      const change = sum / slope;
      n = Math.max(0, n - change);
      if (Math.abs(change) < 1e-12 * (n + 1e-12)) break;
    }
    for (let i = 0; i < this.oil.count; i++) {
      const capacity = (dissolvedShare[i] as number) / (this.oil.molarMass[i] as number);
      dissolvedShare[i] = Math.min(1, capacity / (n + capacity));
    }
  }

  /** Cut size and captured share at the present flow and temperature. */
  private updateCapture(waterRate: number, oil: Float64Array): void {
    const { terms, settings } = this;
    const T = this.temperature;
    terms.rho = tableLiquidDensity(T);
    terms.mu = tableLiquidViscosity(T);
    terms.waterRate = waterRate;
    terms.oilDensity = this.oil.mixtureDensity(oil, T);
    this.densityDifference = terms.rho - terms.oilDensity;
    terms.flow = (waterRate / terms.rho) * settings.turbulenceFactor;
    terms.overflow = overflowRate(terms.flow, this.area);
    terms.hadamard = hadamardFactor(terms.mu, this.oilViscosity);
    terms.mobile = 1 + settings.interfaceMobility * (terms.hadamard - 1);
    const velocity = terms.overflow / terms.mobile;
    this.cutSize = cutDiameter(velocity, this.densityDifference, terms.mu, STANDARD_GRAVITY);
    this.captureShare = capturedShare(this.cutSize, this.median, this.settings.dropSpread);
  }

  step(entering: LiquidStream, dt: number): void {
    const { out, caught, dissolving, hazing, oil } = this;
    out.clear();
    caught.fill(0);
    dissolving.fill(0);
    hazing.fill(0);
    const oilMass = entering.oilTotal();
    const lost = Math.min(this.lossTable.at(this.temperature) * dt, Math.max(0, 0.5 * this.enthalpy));
    this.lossEnergy += lost;
    this.enthalpy -= lost;
    if (!(entering.water > 0)) {
      this.temperature = tableTemperatureFromLiquidEnthalpy(this.enthalpy / this.holdUp);
      return;
    }
    if (oilMass > 0) {
      this.age += dt;
      const flow = entering.water / dt;
      const ratio = oilMass / entering.water;
      if (
        this.age >= REFRESH_TIME ||
        Math.abs(flow - this.refreshedFlow) > REFRESH_CHANGE * this.refreshedFlow ||
        Math.abs(ratio - this.refreshedRatio) > REFRESH_CHANGE * this.refreshedRatio
      ) {
        this.updateCapture(flow, entering.oil);
        this.dissolve(entering.water, entering.oil);
        this.refreshedFlow = flow;
        this.refreshedRatio = ratio;
        this.age = 0;
      }
      for (let i = 0; i < oil.count; i++) {
        const arriving = entering.oil[i] as number;
        const taken = arriving * (this.dissolvedShare[i] as number);
        const free = arriving - taken;
        const kept = free * this.captureShare;
        dissolving[i] = taken;
        caught[i] = kept;
        hazing[i] = free - kept;
        out.oil[i] = (dissolving[i] as number) + (hazing[i] as number);
        this.collected[i] = (this.collected[i] as number) + kept;
      }
    }
    this.exchange(entering, oilMass);
  }

  /** The hold-up mixes with what enters; as much leaves at the mixed temperature. */
  private exchange(entering: LiquidStream, oilMass: number): void {
    const { oil, out } = this;
    const water = this.holdUp + entering.water;
    const total = this.enthalpy + entering.enthalpy;
    let T = this.temperature;
    for (let pass = 0; pass < 3; pass++) {
      const off = total - water * tableLiquidEnthalpy(T) - oilMass * oil.heatCapacity * (T - ENTHALPY_ZERO);
      T += off / (water * tableLiquidHeatCapacity(T) + oilMass * oil.heatCapacity);
    }
    this.temperature = T;
    this.enthalpy = this.holdUp * tableLiquidEnthalpy(T);
    out.water = entering.water;
    const leaving = total - this.enthalpy;
    const oilOut = oilMass - this.caughtTotal();
    out.enthalpy = out.water * tableLiquidEnthalpy(T) + oilOut * oil.heatCapacity * (T - ENTHALPY_ZERO);
    this.productEnthalpy += leaving - out.enthalpy;
  }

  private caughtTotal(): number {
    let sum = 0;
    for (let i = 0; i < this.caught.length; i++) sum += this.caught[i] as number;
    return sum;
  }

  /** Whether oil came in drops in the last step, not only dissolved. */
  dropsCame(): boolean {
    return this.caughtTotal() > 0;
  }

  /**
   * Temperature, K, nearest to the present one at which the drops of the last step and water differ by a density, kg/m³,
   * the lighter staying the lighter; where no receiver gets so warm or cold, the end of its range. Not for the step loop.
   */
  temperatureForDifference(wanted: number): number {
    const sinks = this.densityDifference < 0;
    // Of a floating oil warmth is lighter by more than of water; of a sinking one cold is heavier by more.
    const stride = sinks ? -1 : 1;
    const end = sinks ? COLDEST_RECEIVER : WARMEST_RECEIVER;
    for (let T = this.temperature; (end - T) * stride > 0; T += stride)
      if (Math.abs(this.differenceAt(T)) >= wanted) return T;
    return end;
  }

  /** Water less the drops of the last step at T, kg/m³. */
  differenceAt(T: number): number {
    return tableLiquidDensity(T) - this.oil.mixtureDensity(this.caught, T);
  }

  /** Water (with its oil) kept as product: the share that is not returned to the pot. */
  keep(share: number): void {
    for (let i = 0; i < this.oil.count; i++) {
      this.dissolved[i] = (this.dissolved[i] as number) + share * (this.dissolving[i] as number);
      this.haze[i] = (this.haze[i] as number) + share * (this.hazing[i] as number);
    }
    this.productEnthalpy += share * this.out.enthalpy;
  }

  /** Thickness of the oil layer, m; what would be more than the separator holds has left by its spout. */
  layer(): number {
    const density = this.oil.mixtureDensity(this.collected, this.temperature);
    let mass = 0;
    for (let i = 0; i < this.oil.count; i++) mass += this.collected[i] as number;
    return mass > 0 ? Math.min(this.settings.height_m, mass / density / this.area) : 0;
  }
}
