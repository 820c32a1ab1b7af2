/**
 * The bed: layers of plant from the grid up, each with water, heat and oil (see `release.ts`).
 *
 * States per layer: water [kg], enthalpy of plant, water, oil and wall [J], ready and held oil [kg].
 * Equations, from the bottom layer up: the layer takes all vapour that enters; what its enthalpy exceeds that of
 * liquid at the local boiling point leaves again as vapour. So a cold layer condenses everything and a steam front
 * climbs the bed. The local boiling point is that of water at its partial pressure beside the oil vapour. Water above
 * the holding capacity drains to the layer below in the same step. Liquid from lid and neck is soaked up by the top
 * tenth, however many layers that is.
 * Assumptions: one temperature per layer, no conduction between layers, plant and water in equilibrium.
 */
import { WATER_MOLAR_MASS } from '../constants.ts';
import {
  tableLatentHeat,
  tableLiquidEnthalpy,
  tableLiquidHeatCapacity,
  tableSaturationSlope,
  tableSaturationTemperature,
} from '../fluids/water-table.ts';
import { circleArea } from '../geometry/cylinder.ts';
import { packedHeight } from '../geometry/pot.ts';
import type { Scenario } from '../scenario/scenario.ts';
import type { Oil } from './oil.ts';
import { relaxation } from './pot.ts';
import type { Release } from './release.ts';
import { ENTHALPY_ZERO, startTemperature, VapourStream, type LiquidStream } from './stream.ts';
import type { LossTable } from './surface-loss.ts';

/** Heat capacity of water near the boil, J/kgK: only finds the temperature of a layer within a hair of the boil. */
const WATER_HEAT_CAPACITY = 4217;
/** Pressure ratios nearer to one than this move the boiling point in a straight line, to 0.002 K. */
const NEAR_ONE = 0.99;
/**
 * Share of the bed's height over which liquid falling from lid and neck spreads its water and oil; an estimate. On one
 * thin layer alone the oil that falls back would lie where hardly any steam passes it.
 */
const WETTED_SHARE = 0.1;

export class Bed {
  readonly layers: number;
  readonly water: Float64Array;
  readonly enthalpy: Float64Array;
  readonly temperature: Float64Array;
  /** Vapour leaving the top. */
  readonly out: VapourStream;
  /** Heat lost to the air in the last step, J. */
  loss = 0;
  /** Layers, from below, that let steam through in the last step. */
  private passed = 0;
  /** Steam flux into the bed, smoothed, kg/m²s. */
  private meanFlux = 0;
  /** Water consumed by hydrolysis so far, kg. */
  waterConsumed = 0;
  /** Enthalpy that left with it, J. */
  consumedEnthalpy = 0;
  readonly height: number;
  private readonly holding: number;
  private readonly solidCapacity: number;
  private readonly startTemperature: number;
  private readonly sideArea: number;
  private readonly section: number;
  private readonly molarRatio: Float64Array;
  private readonly oilLatent: Float64Array;
  private readonly passing: VapourStream;
  /** Share of the liquid falling on the bed that each layer soaks up, and the lowest layer that has one. */
  private readonly dripShare: Float64Array;
  private readonly lowestWetted: number;

  private readonly oil: Oil;
  readonly release: Release;
  private readonly lossTable: LossTable;

  constructor(scenario: Scenario, oil: Oil, release: Release, lossTable: LossTable, wallCapacityPerMetre: number) {
    this.oil = oil;
    this.release = release;
    this.lossTable = lossTable;
    const { charge, pot, site, advanced } = scenario;
    this.layers = advanced.bedLayers;
    this.section = circleArea(pot.diameter_m);
    this.height = packedHeight(charge, pot.diameter_m);
    const dry = (charge.mass_kg * (1 - charge.moisture)) / this.layers;
    this.holding = Math.max(charge.holding_kg_kg * dry, (charge.mass_kg * charge.moisture) / this.layers);
    this.solidCapacity = dry * charge.heatCapacity_J_kgK + (wallCapacityPerMetre * this.height) / this.layers;
    this.sideArea = (Math.PI * pot.diameter_m * this.height) / this.layers;
    this.startTemperature = startTemperature(site.airTemperature_K);
    this.water = new Float64Array(this.layers).fill((charge.mass_kg * charge.moisture) / this.layers);
    this.temperature = new Float64Array(this.layers).fill(this.startTemperature);
    this.molarRatio = new Float64Array(this.layers);
    this.oilLatent = new Float64Array(this.layers);
    this.out = new VapourStream(oil.count);
    this.passing = new VapourStream(oil.count);
    const wettedLayers = Math.max(1, WETTED_SHARE * this.layers);
    this.dripShare = Float64Array.from({ length: this.layers }, (_, j) => {
      const layersAbove = this.layers - 1 - j;
      return Math.min(1, Math.max(0, wettedLayers - layersAbove)) / wettedLayers;
    });
    this.lowestWetted = this.dripShare.findIndex((share) => share > 0);
    this.enthalpy = Float64Array.from({ length: this.layers }, (_, j) => this.enthalpyAt(j, this.startTemperature));
  }

  private capacity(layer: number): number {
    return this.solidCapacity + (this.release.oilIn[layer] as number) * this.oil.heatCapacity;
  }

  private enthalpyAt(layer: number, T: number): number {
    return (this.water[layer] as number) * tableLiquidEnthalpy(T) + this.capacity(layer) * (T - ENTHALPY_ZERO);
  }

  /** Temperature that matches the layer's enthalpy, by two Newton steps from the last temperature. */
  private settle(layer: number): void {
    const capacity = this.capacity(layer);
    const water = this.water[layer] as number;
    let T = this.temperature[layer] as number;
    for (let pass = 0; pass < 3; pass++) {
      const off = (this.enthalpy[layer] as number) - water * tableLiquidEnthalpy(T) - capacity * (T - ENTHALPY_ZERO);
      const change = off / (water * tableLiquidHeatCapacity(T) + capacity);
      T += change;
      if (change * change < 1e-12) break;
    }
    this.temperature[layer] = T;
  }

  /**
   * Steam through the bed for one step.
   * @param entering vapour from below
   * @param bottomPressure absolute pressure under the bed, Pa
   * @param drop pressure drop of the bed, Pa
   */
  step(entering: VapourStream, bottomPressure: number, drop: number, dt: number): void {
    const { passing, oil, release } = this;
    passing.copyFrom(entering);
    const memory = relaxation(dt);
    this.meanFlux += (entering.water / (dt * this.section) - this.meanFlux) * memory;
    release.setApproach(this.height / this.layers, this.meanFlux);
    this.loss = 0;
    this.passed = 0;
    let oilMass = passing.oilTotal();
    const bottomBoiling = tableSaturationTemperature(bottomPressure);
    const perLogPressure = bottomPressure / tableSaturationSlope(bottomBoiling);
    for (let j = 0; j < this.layers; j++) {
      const T = this.temperature[j] as number;
      const consumed = release.advance(j, T, this.water[j] as number, dt);
      if (consumed > 0) this.consume(j, consumed);
      const ownCapacity = (this.water[j] as number) * WATER_HEAT_CAPACITY + this.capacity(j);
      const lost = this.lossTable.inStep(T, dt, ownCapacity, this.sideArea);
      this.loss += lost;
      const held = (this.enthalpy[j] as number) - lost + passing.enthalpy;
      const water = (this.water[j] as number) + passing.water;
      if ((this.molarRatio[j] as number) === 0 && passing.water > 0)
        this.molarRatio[j] = release.expectedRatio(j, passing.temperature, passing.oil, passing.water);
      const pressure = bottomPressure - (drop * (j + 0.5)) / this.layers;
      const lowering = pressure / (bottomPressure * (1 + (this.molarRatio[j] as number)));
      const target =
        lowering > NEAR_ONE
          ? bottomBoiling + perLogPressure * (lowering - 1)
          : tableSaturationTemperature(lowering * bottomPressure);
      const capacity = this.capacity(j) + oilMass * oil.heatCapacity;
      const liquid = tableLiquidEnthalpy(target);
      const surplus = held - water * liquid - capacity * (target - ENTHALPY_ZERO);
      if (surplus <= 0) {
        this.water[j] = water;
        this.enthalpy[j] = held;
        if (oilMass > 0) release.deposit(j, passing.oil);
        passing.clear();
        oilMass = 0;
        this.molarRatio[j] = 0;
        this.oilLatent[j] = 0;
        this.settle(j);
      } else {
        this.passed = j + 1;
        const latentHeat = tableLatentHeat(target);
        const steam = Math.min(surplus / (latentHeat + (this.oilLatent[j] as number)), 0.999 * water);
        release.takeUp(j, target, steam, passing.oil, passing.oil);
        oilMass = release.outMass;
        passing.water = steam;
        passing.temperature = target;
        const left = water - steam;
        passing.enthalpy =
          steam < 0.999 * water
            ? steam * (liquid + latentHeat) + release.outLatent + oilMass * oil.heatCapacity * (target - ENTHALPY_ZERO)
            : held - left * liquid - this.capacity(j) * (target - ENTHALPY_ZERO);
        this.water[j] = left;
        this.enthalpy[j] = held - passing.enthalpy;
        this.molarRatio[j] =
          (this.molarRatio[j] as number) +
          memory * ((release.outMoles * WATER_MOLAR_MASS) / steam - (this.molarRatio[j] as number));
        this.oilLatent[j] = release.outLatent / steam;
        const stays = this.capacity(j);
        const off = (this.enthalpy[j] as number) - left * liquid - stays * (target - ENTHALPY_ZERO);
        this.temperature[j] = target + off / (left * WATER_HEAT_CAPACITY + stays);
      }
    }
    this.out.copyFrom(passing);
  }

  private consume(layer: number, water: number): void {
    const heat = water * tableLiquidEnthalpy(this.temperature[layer] as number);
    this.water[layer] = (this.water[layer] as number) - water;
    this.enthalpy[layer] = (this.enthalpy[layer] as number) - heat;
    this.waterConsumed += water;
    this.consumedEnthalpy += heat;
  }

  /** Whether steam passes all layers but the last, or that as well. */
  nearlyThrough(): boolean {
    return this.passed >= this.layers - 1;
  }

  /** Heat capacity of the layers that steam passes, J/K. */
  hotCapacity(): number {
    let sum = 0;
    for (let j = 0; j < this.layers; j++)
      if (j < this.passed)
        sum += (this.water[j] as number) * tableLiquidHeatCapacity(this.temperature[j] as number) + this.capacity(j);
    return sum;
  }

  /** Liquid falling on the bed, which the top tenth soaks up. */
  receive(drip: LiquidStream): void {
    for (let j = this.layers - 1; j >= this.lowestWetted; j--) {
      const share = this.dripShare[j] as number;
      this.water[j] = (this.water[j] as number) + share * drip.water;
      this.enthalpy[j] = (this.enthalpy[j] as number) + share * drip.enthalpy;
      this.release.deposit(j, drip.oil, share);
    }
  }

  /** Water above the holding capacity runs down; writes what leaves the bottom. */
  drain(out: LiquidStream): void {
    out.clear();
    for (let j = this.layers - 1; j >= 0; j--) {
      const excess = (this.water[j] as number) - this.holding;
      if (excess <= 0) continue;
      const heat = excess * tableLiquidEnthalpy(this.temperature[j] as number);
      this.water[j] = this.holding;
      this.enthalpy[j] = (this.enthalpy[j] as number) - heat;
      if (j > 0) {
        this.water[j - 1] = (this.water[j - 1] as number) + excess;
        this.enthalpy[j - 1] = (this.enthalpy[j - 1] as number) + heat;
      } else {
        out.water += excess;
        out.enthalpy += heat;
      }
    }
  }

  /** Height of the steam front above the grid, m, counting the warming layer by its share of the way to the boil. */
  frontHeight(boilingTemperature: number): number {
    let height = 0;
    for (let j = 0; j < this.layers; j++) {
      const span = boilingTemperature - this.startTemperature;
      const share = span > 0 ? ((this.temperature[j] as number) - this.startTemperature) / span : 1;
      if (share < 0.985) return height + (Math.max(0, share) * this.height) / this.layers;
      height += this.height / this.layers;
    }
    return height;
  }
}
