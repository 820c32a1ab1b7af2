/**
 * What passes from part to part in one step: amounts, not rates, so that what leaves one part enters the next in the
 * same step to the last bit. Enthalpies count from liquid water, oil and solids at 273.16 K.
 */
import {
  tableLiquidEnthalpy,
  tableLiquidHeatCapacity,
  tableTemperatureFromLiquidEnthalpy,
} from '../fluids/water-table.ts';

/** Zero of every enthalpy in the still: the triple point, where liquid water's IAPWS enthalpy is zero. */
export const ENTHALPY_ZERO = 273.16;

/** Temperature at which parts start that stand in the air: nothing freezes in this still. */
export const startTemperature = (airTemperature: number): number => Math.max(airTemperature, ENTHALPY_ZERO + 0.5);

/** Vapour leaving a part in a step. */
export class VapourStream {
  /** Water, kg. */
  water = 0;
  /** Oil by constituent, kg. */
  readonly oil: Float64Array;
  /** Enthalpy carried, J. */
  enthalpy = 0;
  /** Temperature, K. */
  temperature = ENTHALPY_ZERO;

  constructor(constituents: number) {
    this.oil = new Float64Array(constituents);
  }

  clear(): void {
    this.water = 0;
    for (let i = 0; i < this.oil.length; i++) this.oil[i] = 0;
    this.enthalpy = 0;
  }

  copyFrom(other: VapourStream): void {
    this.water = other.water;
    for (let i = 0; i < this.oil.length; i++) this.oil[i] = other.oil[i] as number;
    this.enthalpy = other.enthalpy;
    this.temperature = other.temperature;
  }

  oilTotal(): number {
    let sum = 0;
    for (let i = 0; i < this.oil.length; i++) sum += this.oil[i] as number;
    return sum;
  }
}

/** Liquid leaving a part in a step: water with the oil it carries. */
export class LiquidStream {
  /** Water, kg. */
  water = 0;
  /** Oil by constituent, kg. */
  readonly oil: Float64Array;
  /** Enthalpy carried, J. */
  enthalpy = 0;

  constructor(constituents: number) {
    this.oil = new Float64Array(constituents);
  }

  clear(): void {
    this.water = 0;
    for (let i = 0; i < this.oil.length; i++) this.oil[i] = 0;
    this.enthalpy = 0;
  }

  add(other: LiquidStream): void {
    this.water += other.water;
    for (let i = 0; i < this.oil.length; i++) this.oil[i] = (this.oil[i] as number) + (other.oil[i] as number);
    this.enthalpy += other.enthalpy;
  }

  oilTotal(): number {
    let sum = 0;
    for (let i = 0; i < this.oil.length; i++) sum += this.oil[i] as number;
    return sum;
  }
}

/** Heat capacity of water, J/kgK, for a first guess. */
const ROUGH_HEAT_CAPACITY = 4190;

/** Temperature of water with oil from their enthalpy, K: by Newton's method from the water's own. oilCapacity in J/K. */
export function liquidTemperature(enthalpy: number, water: number, oilCapacity: number): number {
  let T = tableTemperatureFromLiquidEnthalpy(Math.max(0, enthalpy / (water + oilCapacity / ROUGH_HEAT_CAPACITY)));
  for (let pass = 0; pass < 3; pass++) {
    const off = enthalpy - water * tableLiquidEnthalpy(T) - oilCapacity * (T - ENTHALPY_ZERO);
    T += off / (water * tableLiquidHeatCapacity(T) + oilCapacity);
  }
  return T;
}
