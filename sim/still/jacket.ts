/**
 * Cooling water in the jacket of a straight tube or tube bundle, once through from the tap or pumped round from a
 * barrel. One cell of water per segment; outside film by the VDI annulus relations on the hydraulic diameter.
 *
 * States: temperature of each cell [K]; the barrel is a one-layer tub.
 * Equations: M c dT/dt = ṁ c (T_upstream − T) + q, implicit in T; counterflow enters at the condensate end. The heat of
 * a step is worked out with the water temperatures that it will lead to, so that slow water is not taken above the vapour.
 * Assumptions: a bundle's shell is treated as an annulus of the same hydraulic diameter and inner wetted width
 * (estimate). Limits: laminar annuli are taken as forced flow only, a lower bound (hot-wall buoyancy helps in reality).
 */
import {
  tableLiquidConductivity,
  tableLiquidEnthalpy,
  tableLiquidHeatCapacity,
  tableLiquidViscosity,
  tableTemperatureFromLiquidEnthalpy,
} from '../fluids/water-table.ts';
import { jacketFlowArea, jacketHydraulicDiameter, tubeCount } from '../geometry/jacket.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { nusseltAnnulus } from '../transfer/annulus.ts';
import { Coolant, type OutsideFilm } from './coolant.ts';
import { Tub } from './tub.ts';

/** Heat capacity of cooling water for predicting its temperature, J/kgK; the heat itself goes by enthalpy. */
const WATER_HEAT_CAPACITY = 4186;

export class Jacket extends Coolant {
  private readonly barrel: Tub | null;
  private readonly cellMass: number;
  private readonly flowArea: number;
  private readonly hydraulicDiameter: number;
  /** Wetted width inside, as the outside diameter of an annulus' inner tube, m. */
  readonly innerWidth: number;
  private readonly length: number;
  private readonly counterflow: boolean;
  private readonly cellEnthalpy: Float64Array;
  /** Temperature of each cell, K; `segmentTemperature` holds what the coming step is predicted to make of it. */
  private readonly cellTemperature: Float64Array;

  constructor(scenario: Scenario, airPressure: number) {
    const { condenser, cooling, factors, advanced, site } = scenario;
    super(advanced.segments, cooling.startTemperature_K);
    const tubes = tubeCount(condenser);
    const D_o = condenser.outsideDiameter_m;
    const D_s = condenser.jacketDiameter_m;
    this.flowArea = jacketFlowArea(D_s, D_o, tubes);
    this.hydraulicDiameter = jacketHydraulicDiameter(D_s, D_o, tubes);
    this.innerWidth = tubes === 1 ? D_o : Math.min(0.95 * D_s, Math.sqrt(tubes) * D_o);
    this.length = condenser.length_m;
    this.cellMass = (this.flowArea * condenser.length_m * 998) / advanced.segments;
    this.counterflow = condenser.flow === 'counterflow';
    this.barrel = cooling.jacketSupply === 'barrel' ? new Tub(cooling, site, airPressure, factors, 1) : null;
    this.cellEnthalpy = new Float64Array(advanced.segments).fill(tableLiquidEnthalpy(cooling.startTemperature_K));
    this.cellTemperature = this.cellEnthalpy.map((h) => tableTemperatureFromLiquidEnthalpy(h));
  }

  filmCoefficient(segment: number, wallTemperature: number, film: OutsideFilm): number {
    const bulk = this.segmentTemperature[segment] as number;
    const T = Math.min(400, bulk);
    const k = tableLiquidConductivity(T);
    const mu = tableLiquidViscosity(T);
    const Re = (Math.max(0, this.flow) * this.hydraulicDiameter) / (this.flowArea * mu);
    const Pr = (mu * tableLiquidHeatCapacity(T)) / k;
    const outer = this.innerWidth + this.hydraulicDiameter;
    const Nu = nusseltAnnulus(Re, Pr, this.innerWidth, outer, this.length);
    film.T_c = bulk;
    film.T_w = wallTemperature;
    film.D = this.hydraulicDiameter;
    film.k = k;
    film.Pr = Pr;
    film.Re = Re;
    film.Nu = Nu;
    film.coefficient = (Nu * k) / this.hydraulicDiameter;
    return film.coefficient;
  }

  predictTemperature(conductance: Float64Array, inside: Float64Array, dt: number): void {
    const count = this.cellEnthalpy.length;
    const held = this.cellMass / dt;
    // A pump that outruns its barrel sends the same water round again: only what the barrel holds is fresh.
    const outrun = this.barrel !== null && this.flow * dt > this.barrel.water;
    const flow = outrun ? this.barrel.water / dt : this.flow;
    let upstream = this.barrel ? (this.barrel.temperature[0] as number) : this.inletTemperature;
    if (outrun) {
      this.segmentHeat.fill(0);
      upstream = tableTemperatureFromLiquidEnthalpy(this.drawFrom(this.barrel, this.flow * dt));
    }
    for (let index = 0; index < count; index++) {
      const s = this.counterflow ? count - 1 - index : index;
      const now = this.cellTemperature[s] as number;
      const g = (conductance[s] as number) / WATER_HEAT_CAPACITY;
      const whole = held + flow + g;
      upstream = (held * now + flow * upstream + g * (inside[s] as number)) / whole;
      this.segmentTemperature[s] = upstream;
      this.room[s] = whole * WATER_HEAT_CAPACITY * dt;
    }
  }

  /** Predicted temperatures do what `implicitFactor` does for a tub. */
  updateImplicitFactor(): void {}

  /** Passes water of a supply enthalpy through the cells for a step; returns what leaves, J/kg. */
  private pass(through: number, supply: number, keep: boolean): number {
    const { cellEnthalpy } = this;
    const count = cellEnthalpy.length;
    let upstream = supply;
    for (let index = 0; index < count; index++) {
      const s = this.counterflow ? count - 1 - index : index;
      upstream =
        (this.cellMass * (cellEnthalpy[s] as number) + through * upstream + (this.segmentHeat[s] as number)) /
        (this.cellMass + through);
      if (keep) {
        cellEnthalpy[s] = upstream;
        const T = tableTemperatureFromLiquidEnthalpy(upstream);
        this.cellTemperature[s] = T;
        this.segmentTemperature[s] = T;
      }
    }
    return upstream;
  }

  /**
   * Enthalpy of the water drawn from the barrel, J/kg, implicit so that a fast pump cannot outrun a small barrel: what
   * leaves the jacket is a h + b with a = (m/(M + m))^n, and the barrel takes up the difference within the step.
   */
  private drawFrom(barrel: Tub, through: number): number {
    const carried = Math.pow(through / (this.cellMass + through), this.cellEnthalpy.length);
    const fromCells = this.pass(through, 0, false);
    return (barrel.water * barrel.bottomEnthalpy() + through * fromCells) / (barrel.water + through * (1 - carried));
  }

  step(time: number, dt: number): void {
    const { barrel } = this;
    const through = this.flow * dt;
    const supply = barrel ? this.drawFrom(barrel, through) : tableLiquidEnthalpy(this.inletTemperature);
    const leaving = this.pass(through, supply, true);
    this.outletTemperature = tableTemperatureFromLiquidEnthalpy(leaving);
    if (barrel) {
      barrel.addHeat(0, through * (leaving - supply));
      barrel.step(time, 0, this.inletTemperature, dt);
      this.inletTemperature = barrel.temperature[0] as number;
      this.evaporated = barrel.evaporated;
      this.evaporatedEnthalpy = barrel.evaporatedEnthalpy;
      this.lossEnergy = barrel.lossEnergy;
      this.overflow = barrel.overflow;
      this.overflowEnthalpy = barrel.overflowEnthalpy;
      this.iceLeft = barrel.ice;
      this.iceAdded = barrel.iceAdded;
    } else {
      this.used += through;
      this.enthalpyIn += through * supply;
      this.overflow += through;
      this.overflowEnthalpy += through * leaving;
    }
  }

  mass(): number {
    return this.cellMass * this.cellEnthalpy.length + (this.barrel ? this.barrel.water + this.barrel.ice : 0);
  }

  enthalpy(): number {
    let sum = this.barrel ? this.barrel.enthalpy() : 0;
    for (let s = 0; s < this.cellEnthalpy.length; s++) sum += this.cellMass * (this.cellEnthalpy[s] as number);
    return sum;
  }

  meanTemperature(): number {
    if (this.barrel) return this.barrel.mean();
    let sum = 0;
    for (let s = 0; s < this.segmentTemperature.length; s++) sum += this.segmentTemperature[s] as number;
    return sum / this.segmentTemperature.length;
  }

  depth(): number {
    return this.barrel ? this.barrel.depth() : 0;
  }

  override nextIce(): number {
    return this.barrel?.nextIceTime() ?? Infinity;
  }

  layers(): Float64Array {
    return this.barrel ? this.barrel.temperature : this.segmentTemperature;
  }
}
