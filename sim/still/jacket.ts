/**
 * Cooling water in the jacket of a straight tube or tube bundle, once through from the tap or pumped round from a
 * barrel. One cell of water per segment; outside film by the VDI annulus relations on the hydraulic diameter.
 *
 * States: enthalpy [J/kg], which temperatures follow [K], and water [kg] of each cell; the barrel is a one-layer tub.
 * Equations: M c dT/dt = ṁ c (T_upstream − T) + q, implicit in T; counterflow enters at the condensate end. The heat of
 * a step is worked out with the water temperatures that it will lead to, so that slow water is not taken above the vapour.
 * Water that a tube under pressure heats past its boiling point in the open boils off: M h + ṁ h_upstream dt + q is shared
 * between water at the boil and steam. What comes in fills up what has boiled away; a cell that is dry takes up nothing.
 * Assumptions: the jacket is open to the air, its steam leaves at once, and a cell that boils wets all its tube until it
 * is dry; a bundle's shell is treated as an annulus of the same hydraulic diameter and inner wetted width
 * (estimate). Limits: laminar annuli are taken as forced flow only, a lower bound (hot-wall buoyancy helps in reality).
 */
import {
  tableLatentHeat,
  tableLiquidConductivity,
  tableLiquidEnthalpy,
  tableLiquidHeatCapacity,
  tableLiquidViscosity,
  tableSaturationTemperature,
  tableTemperatureFromLiquidEnthalpy,
} from '../fluids/water-table.ts';
import { jacketFlowArea, jacketHydraulicDiameter, tubeCount } from '../geometry/jacket.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { nusseltAnnulus } from '../transfer/annulus.ts';
import { Coolant, type OutsideFilm } from './coolant.ts';
import { Tub } from './tub.ts';

/** Heat capacity of cooling water for predicting its temperature, J/kgK; the heat itself goes by enthalpy. */
const WATER_HEAT_CAPACITY = 4186;
/** Share of a barrel that no pump draws and no jacket boils off: its hose does not lie on the ground. */
const BARREL_LEFT = 0.02;

export class Jacket extends Coolant {
  private readonly barrel: Tub | null;
  private readonly cellMass: number;
  private readonly flowArea: number;
  private readonly hydraulicDiameter: number;
  /** Wetted width inside, as the outside diameter of an annulus' inner tube, m. */
  readonly innerWidth: number;
  private readonly length: number;
  private readonly counterflow: boolean;
  /** Water in each cell, kg, and what they lack of being full together. */
  private readonly cellWater: Float64Array;
  private lacking = 0;
  private readonly cellEnthalpy: Float64Array;
  /** Temperature of each cell, K; `segmentTemperature` holds what the coming step is predicted to make of it. */
  private readonly cellTemperature: Float64Array;
  /** Water that will come into each cell in the coming step, predicted, kg, and its temperature, K. */
  private readonly entering: Float64Array;
  private readonly enteringTemperature: Float64Array;
  /** Where water in the open boils, K, its enthalpy there and what boiling takes, J/kg. */
  private readonly boiling: number;
  private readonly boilingEnthalpy: number;
  private readonly boilingHeat: number;
  /** Water that left the cells in the last pass, kg, and its steam with the heat it took along. */
  private through = 0;
  private steam = 0;
  private steamEnthalpy = 0;
  /** What has boiled away beside what a barrel evaporates, kg, and its heat, J. */
  private boiledOff = 0;
  private boiledOffEnthalpy = 0;

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
    this.boiling = tableSaturationTemperature(airPressure);
    this.boilingEnthalpy = tableLiquidEnthalpy(this.boiling);
    this.boilingHeat = tableLatentHeat(this.boiling);
    this.cellWater = new Float64Array(advanced.segments).fill(this.cellMass);
    this.entering = new Float64Array(advanced.segments);
    this.enteringTemperature = new Float64Array(advanced.segments).fill(cooling.startTemperature_K);
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
    // A pump that outruns its barrel sends the same water round again: only what the barrel holds is fresh.
    const outrun = this.barrel !== null && this.flow * dt > this.barrel.water;
    let flow = outrun ? this.barrel.water / dt : this.flow;
    let upstream = this.barrel ? (this.barrel.temperature[0] as number) : this.inletTemperature;
    if (outrun) {
      this.segmentHeat.fill(0);
      upstream = tableTemperatureFromLiquidEnthalpy(this.drawFrom(this.barrel, this.flow * dt));
    }
    for (let index = 0; index < count; index++) {
      const s = this.counterflow ? count - 1 - index : index;
      const now = this.cellTemperature[s] as number;
      const water = this.cellWater[s] as number;
      const held = water / dt;
      const g = (conductance[s] as number) / WATER_HEAT_CAPACITY;
      this.entering[s] = flow * dt;
      this.enteringTemperature[s] = upstream;
      const whole = held + flow + g;
      if (whole > 0) upstream = (held * now + flow * upstream + g * (inside[s] as number)) / whole;
      if (upstream > this.boiling) upstream = this.boiling;
      this.segmentTemperature[s] = upstream;
      if (water < this.cellMass) flow = Math.max(0, flow - (this.cellMass - water) / dt);
    }
  }

  override takenUp(segment: number, inside: number, wanted: number): number {
    const held = this.cellWater[segment] as number;
    const now = this.cellTemperature[segment] as number;
    const entering = this.entering[segment] as number;
    const before = held * now + entering * (this.enteringTemperature[segment] as number);
    const water = held + entering;
    const warming = WATER_HEAT_CAPACITY * (water * Math.min(inside, this.boiling) - before);
    if (wanted < 0) return Math.max(wanted, Math.min(0, warming));
    if (wanted <= warming) return wanted;
    const most = Math.max(0, warming);
    if (inside <= this.boiling) return most;
    // Water at the boil takes what the film passes at that temperature, as long as there is water.
    const film = wanted / (inside - (this.segmentTemperature[segment] as number));
    return Math.min(wanted, Math.max(most, film * (inside - this.boiling)), most + water * this.boilingHeat);
  }

  /** Predicted temperatures do what `implicitFactor` does for a tub. */
  updateImplicitFactor(): void {}

  /** Passes water of a supply enthalpy through the cells for a step; returns the enthalpy of what leaves, J/kg. */
  private pass(supplied: number, supply: number, keep: boolean): number {
    const { cellEnthalpy, cellWater } = this;
    const count = cellEnthalpy.length;
    let upstream = supply;
    this.through = supplied;
    this.steam = 0;
    this.steamEnthalpy = 0;
    for (let index = 0; index < count; index++) {
      const s = this.counterflow ? count - 1 - index : index;
      const held = cellWater[s] as number;
      const water = held + this.through;
      const heat = held * (cellEnthalpy[s] as number) + this.through * upstream + (this.segmentHeat[s] as number);
      upstream = heat / water;
      if (!(upstream <= this.boilingEnthalpy) || held < this.cellMass) upstream = this.fill(s, water, heat, keep);
      if (keep) {
        cellEnthalpy[s] = upstream;
        const T = tableTemperatureFromLiquidEnthalpy(upstream);
        this.cellTemperature[s] = T;
        this.segmentTemperature[s] = T;
      }
    }
    return upstream;
  }

  /** Boils off what is hotter than water can be and fills a cell with the rest; returns the enthalpy of that, J/kg. */
  private fill(s: number, water: number, heat: number, keep: boolean): number {
    const steam = Math.min(water, Math.max(0, (heat - water * this.boilingEnthalpy) / this.boilingHeat));
    const left = water - steam;
    const held = Math.min(this.cellMass, left);
    this.through = left - held;
    if (keep) {
      this.lacking += (this.cellWater[s] as number) - held;
      this.cellWater[s] = held;
    }
    if (steam === 0 && water > 0) return heat / water;
    this.steam += steam;
    this.steamEnthalpy += heat - left * this.boilingEnthalpy;
    return this.boilingEnthalpy;
  }

  /**
   * Enthalpy of the water drawn from the barrel, J/kg, implicit so that a fast pump cannot outrun a small barrel: what
   * leaves the jacket is a h + b with a = (m/(M + m))^n, and the barrel takes up the difference within the step.
   */
  private drawFrom(barrel: Tub, through: number): number {
    const carried = Math.pow(through / (this.cellMass + through), this.cellEnthalpy.length);
    const fromCells = this.pass(through, 0, false);
    const supply =
      (barrel.water * barrel.bottomEnthalpy() + through * fromCells) / (barrel.water + through * (1 - carried));
    return Math.min(supply, this.boilingEnthalpy);
  }

  step(time: number, dt: number): void {
    const { barrel } = this;
    let drawn = this.flow * dt;
    let supply = barrel ? this.drawFrom(barrel, drawn) : tableLiquidEnthalpy(this.inletTemperature);
    if (barrel) {
      // A jacket that boils dry takes what is in its barrel once, and leaves what no pump reaches.
      this.pass(drawn, supply, false);
      const spare = Math.max(0, barrel.water - BARREL_LEFT * barrel.fullMass);
      if (drawn - this.through > spare) {
        drawn = spare;
        supply = barrel.bottomEnthalpy();
      }
    }
    const leaving = this.pass(drawn, supply, true);
    this.outletTemperature = tableTemperatureFromLiquidEnthalpy(leaving);
    this.boils = this.steam > 0;
    if (barrel) {
      const kept = drawn - this.through;
      barrel.addHeat(0, drawn * (leaving - supply) - kept * (leaving - barrel.bottomEnthalpy()));
      barrel.draw(kept);
      barrel.step(time, 0, this.inletTemperature, dt);
      this.inletTemperature = barrel.temperature[0] as number;
      this.boiledOff += this.steam;
      this.boiledOffEnthalpy += this.steamEnthalpy;
      this.evaporated = barrel.evaporated + this.boiledOff;
      this.evaporatedEnthalpy = barrel.evaporatedEnthalpy + this.boiledOffEnthalpy;
      this.lossEnergy = barrel.lossEnergy;
      this.overflow = barrel.overflow;
      this.overflowEnthalpy = barrel.overflowEnthalpy;
      this.iceLeft = barrel.ice;
      this.iceAdded = barrel.iceAdded;
    } else {
      this.used += drawn;
      this.enthalpyIn += drawn * supply;
      this.evaporated += this.steam;
      this.evaporatedEnthalpy += this.steamEnthalpy;
      this.overflow += this.through;
      this.overflowEnthalpy += this.through * leaving;
    }
  }

  mass(): number {
    return (
      this.cellMass * this.cellEnthalpy.length - this.lacking + (this.barrel ? this.barrel.water + this.barrel.ice : 0)
    );
  }

  enthalpy(): number {
    let sum = this.barrel ? this.barrel.enthalpy() : 0;
    for (let s = 0; s < this.cellEnthalpy.length; s++)
      sum += (this.cellWater[s] as number) * (this.cellEnthalpy[s] as number);
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
