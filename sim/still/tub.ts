/**
 * A tub of water in layers (with one layer: a barrel): heat from the coil's segments into the layer they lie in, cold
 * water in, overflow at the top, mixing, loss through the wall, evaporation and convection at the surface, ice.
 *
 * States: water [kg], enthalpy of each layer [J], from the top down, which temperatures follow [K]; ice [kg].
 * Equations: layers of equal mass, each with a straight line of temperature as steep as its neighbours allow, which the
 * water pushed up and the coil's segments read; a layer warmer than the one above turns over with it; jet, stream from
 * above and stirring as `tub-mixing.ts` says; ice melts in the top layer through a film under a cold plate.
 * Assumptions: no heat conduction between layers, the coil's own plumes mix no more than turning over does, the ice
 * floats in the uppermost layer.
 * Limits: evaporation above 50 °C is good to ±30 %.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import { vapourPressureInAir } from '../fluids/atmosphere.ts';
import {
  tableLatentHeat,
  tableLiquidConductivity,
  tableLiquidDensity,
  tableLiquidEnthalpy,
  tableLiquidExpansivity,
  tableLiquidHeatCapacity,
  tableLiquidViscosity,
  tableSaturationPressure,
  tableSaturationTemperature,
  tableVapourEnthalpy,
} from '../fluids/water-table.ts';
import { circleArea } from '../geometry/cylinder.ts';
import { tubCapacity } from '../geometry/tub.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { nusseltHotSideUp, rayleighNumber } from '../transfer/natural-convection.ts';
import { evaporationRateCarrier } from '../transfer/evaporation.ts';
import { limitedSlopes, turnOver } from '../transfer/tub-layers.ts';
import { ENTHALPY_ZERO } from './stream.ts';
import { LossTable } from './surface-loss.ts';
import { TubMixing } from './tub-mixing.ts';

/** Heat of melting of ice at 0 °C, J/kg (handbook value 333.6 kJ/kg). */
export const ICE_MELTING = 333_600;
/** Time after which losses are worked out anew, s. */
const LOSS_REFRESH = 5;
/** Share of the top layer's heat, counted from 0 °C, that evaporation takes in a step at most: it never freezes. */
const DRYING_SHARE = 0.25;
/**
 * Longest step of the tub itself, s, unless the scenario's is longer: warmed water rises, turns over and mixes many times
 * in several steps of the still at once.
 */
const OWN_STEP = 1;
/** Heat capacity of water for following the enthalpy with the temperature, J/kgK; within 1 % from 0 to 100 °C. */
const WATER_HEAT_CAPACITY = 4190;

export class Tub {
  water: number;
  readonly temperature: Float64Array;
  /** Rise of temperature from the bottom of each layer to its top, K. */
  readonly rise: Float64Array;
  ice = 0;
  iceAdded = 0;
  overflow = 0;
  overflowEnthalpy = 0;
  evaporated = 0;
  evaporatedEnthalpy = 0;
  lossEnergy = 0;
  readonly area: number;
  readonly fullMass: number;
  /** Heat into each layer in one of the tub's own steps, J; before a step, in all of it. */
  private readonly heatIn: Float64Array;
  /** Longest of the tub's own steps, s, and how many it took in the last step. */
  private readonly longestStep: number;
  private ownSteps = 1;
  /** Enthalpy of each layer from the top down, J: the state; temperatures follow it. */
  private readonly enthalpies: Float64Array;
  private readonly mixing: TubMixing;
  private readonly lossRate: Float64Array;
  private evaporationRate = 0;
  private lossAge = Infinity;
  private readonly wallLoss: LossTable;
  private readonly surfaceLoss: LossTable;
  private readonly airVapourPressure: number;
  private readonly boiling: number;
  private readonly boilingEnthalpy: number;
  private nextIce = 0;
  private readonly iceByTime: Scenario['cooling']['ice'];

  private readonly cooling: Scenario['cooling'];
  private readonly site: Scenario['site'];
  private readonly evaporationFactor: number;
  readonly layerCount: number;

  constructor(
    cooling: Scenario['cooling'],
    site: Scenario['site'],
    airPressure: number,
    { heatLoss, evaporation, jetMixing }: Pick<Scenario['factors'], 'heatLoss' | 'evaporation' | 'jetMixing'>,
    layerCount: number,
    step_s: number = OWN_STEP,
  ) {
    this.longestStep = Math.max(OWN_STEP, step_s);
    this.cooling = cooling;
    this.site = site;
    this.evaporationFactor = heatLoss * evaporation;
    this.layerCount = layerCount;
    this.iceByTime = [...cooling.ice].sort((a, b) => a.at_s - b.at_s);
    this.area = circleArea(cooling.tubDiameter_m);
    this.fullMass = tubCapacity(cooling) * 998;
    this.water = this.fullMass * cooling.tubFill;
    this.temperature = new Float64Array(layerCount).fill(cooling.startTemperature_K);
    this.enthalpies = new Float64Array(layerCount).fill(
      (this.water / layerCount) * tableLiquidEnthalpy(cooling.startTemperature_K),
    );
    this.rise = new Float64Array(layerCount);
    this.mixing = new TubMixing(cooling, jetMixing, layerCount, this.area);
    this.lossRate = new Float64Array(layerCount);
    this.heatIn = new Float64Array(layerCount);
    const resistance = Math.max(1e-6, cooling.tubWallResistance_m2K_W);
    this.wallLoss = new LossTable(
      [
        {
          facing: 'side',
          length: cooling.tubHeight_m,
          area: 1,
          emissivity: 0.9,
          insulation: resistance,
          insulationConductivity: 1,
          radius: null,
        },
      ],
      site.airTemperature_K,
      airPressure,
      heatLoss,
    );
    this.surfaceLoss = new LossTable(
      [
        {
          facing: 'up',
          length: cooling.tubDiameter_m / 4,
          area: 1,
          emissivity: 0.95,
          insulation: 0,
          insulationConductivity: 1,
          radius: null,
        },
      ],
      site.airTemperature_K,
      airPressure,
      heatLoss,
    );
    this.boiling = tableSaturationTemperature(airPressure);
    this.boilingEnthalpy = tableLiquidEnthalpy(this.boiling);
    this.airVapourPressure = vapourPressureInAir(site.airTemperature_K, site.relativeHumidity);
  }

  /** Heat into a layer, counted from the top, J. */
  addHeat(layer: number, heat: number): void {
    this.heatIn[layer] = (this.heatIn[layer] as number) + heat;
  }

  /** Takes water out of a barrel as warm as it lies there, kg. */
  draw(water: number): void {
    const bottom = this.layerCount - 1;
    this.enthalpies[bottom] = (this.enthalpies[bottom] as number) - water * this.bottomEnthalpy();
    this.water -= water;
  }

  /** Water in one layer, kg. */
  layerMass(): number {
    return this.water / this.layerCount;
  }

  /** Depth of the water, m. */
  depth(): number {
    return this.water / (998 * this.area);
  }

  /** Enthalpy of water and ice, J. */
  enthalpy(): number {
    let sum = -this.ice * ICE_MELTING;
    for (let k = 0; k < this.layerCount; k++) sum += this.enthalpies[k] as number;
    return sum;
  }

  /** Enthalpy of a kilogram of water in the lowest layer, J/kg. */
  bottomEnthalpy(): number {
    return (this.enthalpies[this.layerCount - 1] as number) / this.layerMass();
  }

  mean(): number {
    let sum = 0;
    for (let k = 0; k < this.layerCount; k++) sum += this.temperature[k] as number;
    return sum / this.layerCount;
  }

  /** Temperature at the surface, K. */
  surface(): number {
    return (this.temperature[0] as number) + 0.5 * (this.rise[0] as number);
  }

  /** Water that rose through a layer in the last step, kg. */
  rising(layer: number): number {
    return this.ownSteps * this.mixing.risen(layer);
  }

  /** Depth of water that what comes in mixes, m. */
  mixedDepth(): number {
    return this.mixing.mixedDepth(this.enthalpies, this.layerMass(), this.depth() / this.layerCount);
  }

  /**
   * One step of the still, in as many of the tub's own as it takes.
   * @param inflow water let in, kg, at a temperature, K
   */
  step(time: number, inflow: number, temperature: number, dt: number): void {
    const { heatIn } = this;
    this.ownSteps = Math.max(1, Math.ceil(dt / this.longestStep - 1e-9));
    const share = 1 / this.ownSteps;
    for (let k = 0; k < this.layerCount; k++) heatIn[k] = share * (heatIn[k] as number);
    for (let own = 0; own < this.ownSteps; own++)
      this.ownStep(time + own * share * dt, share * inflow, temperature, share * dt);
    heatIn.fill(0);
  }

  private ownStep(time: number, inflow: number, temperature: number, dt: number): void {
    const { enthalpies, mixing } = this;
    const before = this.layerMass();
    const thickness = this.depth() / this.layerCount;
    for (let k = 0; k < this.layerCount; k++) enthalpies[k] = (enthalpies[k] as number) + (this.heatIn[k] as number);
    this.lossAge += dt;
    if (this.lossAge >= LOSS_REFRESH) this.updateLosses();
    this.loseHeat(before, dt);
    const melted = this.melt(time, dt);
    const vapour = this.evaporate(dt);
    const gained = melted - vapour;
    const free = this.water + inflow + gained;
    const spilled = Math.max(0, free - this.fullMass);
    this.water = free - spilled;
    this.overflow += spilled;
    const entering = inflow > 0 ? tableLiquidEnthalpy(temperature) : 0;
    const limit = this.boilingEnthalpy;
    this.overflowEnthalpy += mixing.letIn(enthalpies, before, thickness, inflow, entering, gained, spilled, limit, dt);
    turnOver(enthalpies);
    mixing.mix(enthalpies, this.layerMass(), thickness, dt);
    this.followEnthalpy(temperature);
  }

  /** Temperatures and their lines from the enthalpies. */
  private followEnthalpy(entering: number): void {
    const { temperature, rise } = this;
    const layer = this.layerMass();
    for (let k = 0; k < this.layerCount; k++) {
      const T = temperature[k] as number;
      temperature[k] = T + ((this.enthalpies[k] as number) / layer - tableLiquidEnthalpy(T)) / WATER_HEAT_CAPACITY;
    }
    limitedSlopes(temperature, rise, this.mixing.fromBelow() ? entering : Number.NaN);
    // The top line has no neighbour above: it is no steeper than the one below it, and never boils.
    if (this.layerCount > 1)
      rise[0] = Math.max(
        0,
        Math.min(rise[0] as number, rise[1] as number, 2 * (this.boiling - (temperature[0] as number))),
      );
  }

  /** Works out the rates of heat loss and evaporation at the present temperatures. */
  private updateLosses(): void {
    this.lossAge = 0;
    const side = (Math.PI * this.cooling.tubDiameter_m * this.depth()) / this.layerCount;
    for (let k = 0; k < this.layerCount; k++) this.lossRate[k] = this.wallLoss.at(this.temperature[k] as number) * side;
    this.evaporationRate = 0;
    if (this.ice > 0) return;
    const T = this.surface();
    this.lossRate[0] = (this.lossRate[0] as number) + this.surfaceLoss.at(T) * this.area;
    const wet = tableSaturationPressure(Math.min(T, this.boiling));
    this.evaporationRate =
      Math.min(1, Math.max(0, T - ENTHALPY_ZERO)) *
      Math.max(
        0,
        this.evaporationFactor *
          this.area *
          evaporationRateCarrier(wet, this.airVapourPressure, this.site.airSpeed_m_s, tableLatentHeat(T)),
      );
  }

  private loseHeat(layerMass: number, dt: number): void {
    for (let k = 0; k < this.layerCount; k++) {
      const T = this.temperature[k] as number;
      const air = this.site.airTemperature_K;
      const spare = layerMass * WATER_HEAT_CAPACITY * Math.max(0, T - Math.max(air, ENTHALPY_ZERO));
      const room = layerMass * WATER_HEAT_CAPACITY * Math.max(0, air - T);
      const loss = Math.max(-room, Math.min(spare, (this.lossRate[k] as number) * dt));
      this.enthalpies[k] = (this.enthalpies[k] as number) - loss;
      this.lossEnergy += loss;
    }
  }

  /** Time of the next ice, s; infinite where none comes. */
  nextIceTime(): number {
    return this.iceByTime[this.nextIce]?.at_s ?? Infinity;
  }

  /** Adds scheduled ice and melts some; returns the meltwater, kg (its enthalpy is that of the top layer's loss). */
  private melt(time: number, dt: number): number {
    for (let due = this.iceByTime[this.nextIce]; due && due.at_s < time + dt; due = this.iceByTime[++this.nextIce]) {
      this.ice += due.mass_kg;
      this.iceAdded += due.mass_kg;
    }
    if (this.ice <= 0) return 0;
    const T = this.temperature[0] as number;
    const dT = T - 273.15;
    if (dT <= 0.2) return 0;
    const film = Math.max(275, 273.15 + dT / 2);
    const k = tableLiquidConductivity(film);
    const rho = tableLiquidDensity(film);
    const nu = tableLiquidViscosity(film) / rho;
    const alpha = k / (rho * tableLiquidHeatCapacity(film));
    const length = this.cooling.tubDiameter_m / 4;
    const Ra = rayleighNumber(Math.abs(tableLiquidExpansivity(film)), dT, length, nu, alpha, STANDARD_GRAVITY);
    const wanted = ((nusseltHotSideUp(Ra) * k) / length) * this.area * dT * dt;
    const spare = 0.5 * this.layerMass() * tableLiquidHeatCapacity(T) * dT;
    const melted = Math.min(this.ice, Math.min(wanted, spare) / ICE_MELTING);
    this.ice -= melted;
    this.enthalpies[0] = (this.enthalpies[0] as number) - melted * ICE_MELTING;
    return melted;
  }

  private evaporate(dt: number): number {
    const T = Math.min(this.temperature[0] as number, this.boiling);
    const layer = this.layerMass();
    const most = (DRYING_SHARE * Math.max(0, this.enthalpies[0] as number)) / tableVapourEnthalpy(T);
    let vapour = Math.min(this.evaporationRate * dt, most);
    const excess = (this.enthalpies[0] as number) - layer * this.boilingEnthalpy;
    if (excess > 0) vapour += excess / tableLatentHeat(this.boiling);
    vapour = Math.min(vapour, Math.max(0, 0.5 * (layer - (0.02 * this.fullMass) / this.layerCount)));
    if (!(vapour > 0)) return 0;
    const taken = vapour * tableVapourEnthalpy(T);
    this.enthalpies[0] = (this.enthalpies[0] as number) - taken;
    this.evaporated += vapour;
    this.evaporatedEnthalpy += taken;
    return vapour;
  }
}
