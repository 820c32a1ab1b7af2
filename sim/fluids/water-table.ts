/**
 * Water and steam for the step loop: the functions of `water.ts` read from tables built once when the module loads.
 *
 * All take positional scalars, allocate nothing and clamp nothing: outside 273.15–403.15 K, or the matching pressures
 * or enthalpies, they give NaN, which the engine's finite check reports. They agree with the formulations to better
 * than 1e-6 relative, away from their zeros; tests/sim/fluids/water-table.test.ts holds them to it. Pressure and
 * temperature of the saturation line are not tabulated: the closed IF97 equations are about as quick as a table and
 * exact inverses of each other.
 */
import { region1State, type Region1State } from './if97-region1.ts';
import { region2State, type Region2State } from './if97-region2.ts';
import {
  saturationPressureUnchecked,
  saturationSlopeUnchecked,
  saturationTemperatureUnchecked,
} from './if97-region4.ts';
import { readTable, samplePlaces, tableFromSamples, tabulate, type PiecewiseCubic } from '../maths/piecewise-cubic.ts';
import { waterConductivity, waterViscosity } from './transport.ts';
import { WATER_MAX_PRESSURE, WATER_MAX_TEMPERATURE, WATER_MIN_PRESSURE, WATER_MIN_TEMPERATURE } from './water.ts';

const LOW = WATER_MIN_TEMPERATURE;
const HIGH = WATER_MAX_TEMPERATURE;
/** Two kelvin an interval. */
const INTERVALS = 65;

const temperatures = samplePlaces(LOW, HIGH, INTERVALS);
const liquids = Array.from(temperatures, (T) => region1State(T, saturationPressureUnchecked(T)));
const vapours = Array.from(temperatures, (T) => region2State(T, saturationPressureUnchecked(T)));

const overTemperature = (property: (T: number, liquid: Region1State, vapour: Region2State) => number): PiecewiseCubic =>
  tableFromSamples(
    temperatures.map((T, j) => property(T, liquids[j] as Region1State, vapours[j] as Region2State)),
    LOW,
    HIGH,
  );

const saturationSlope = overTemperature((T) => saturationSlopeUnchecked(T));
const liquidDensity = overTemperature((_, liquid) => 1 / liquid.volume);
const liquidEnthalpy = overTemperature((_, liquid) => liquid.enthalpy);
const liquidHeatCapacity = overTemperature((_, liquid) => liquid.heatCapacity);
const liquidExpansivity = overTemperature((_, liquid) => liquid.expansivity);
const liquidViscosity = overTemperature((T, liquid) => waterViscosity(T, 1 / liquid.volume));
const liquidConductivity = overTemperature((T, liquid) => waterConductivity(T, 1 / liquid.volume));
const latentHeat = overTemperature((_, liquid, vapour) => vapour.enthalpy - liquid.enthalpy);
const vapourDensity = overTemperature((_, __, vapour) => 1 / vapour.volume);
const vapourViscosity = overTemperature((T, _, vapour) => waterViscosity(T, 1 / vapour.volume));

const LEAST_ENTHALPY = readTable(liquidEnthalpy, LOW);
const GREATEST_ENTHALPY = readTable(liquidEnthalpy, HIGH);
const temperatureFromEnthalpy = tabulate(solveForTemperature, LEAST_ENTHALPY, GREATEST_ENTHALPY, INTERVALS);

/** Temperature at which the enthalpy table reads h, by Newton's method from a straight line between the ends. */
function solveForTemperature(h: number): number {
  let T = LOW + ((HIGH - LOW) * (h - LEAST_ENTHALPY)) / (GREATEST_ENTHALPY - LEAST_ENTHALPY);
  for (let pass = 0; pass < 20; pass++) {
    const step = (readTable(liquidEnthalpy, T) - h) / readTable(liquidHeatCapacity, T);
    T = Math.min(HIGH, Math.max(LOW, T - step));
    if (Math.abs(step) < 1e-10) break;
  }
  return T;
}

/** Pressure at which water boils, Pa. T in K. */
export const tableSaturationPressure = (T: number): number =>
  T >= LOW && T <= HIGH ? saturationPressureUnchecked(T) : Number.NaN;

/** Temperature at which water boils, K. p in Pa. */
export const tableSaturationTemperature = (p: number): number =>
  p >= WATER_MIN_PRESSURE && p <= WATER_MAX_PRESSURE ? saturationTemperatureUnchecked(p) : Number.NaN;

/** Slope of the saturation line, Pa/K. T in K. */
export const tableSaturationSlope = (T: number): number => readTable(saturationSlope, T);

/** Enthalpy of saturated water, J/kg. T in K. */
export const tableLiquidEnthalpy = (T: number): number => readTable(liquidEnthalpy, T);

/** Isobaric heat capacity of saturated water, J/(kg K). T in K. */
export const tableLiquidHeatCapacity = (T: number): number => readTable(liquidHeatCapacity, T);

/** Latent heat of vaporisation, J/kg. T in K. */
export const tableLatentHeat = (T: number): number => readTable(latentHeat, T);

/** Enthalpy of saturated steam, J/kg: the sum of the liquid's and the latent heat, so that balances close. T in K. */
export const tableVapourEnthalpy = (T: number): number => readTable(liquidEnthalpy, T) + readTable(latentHeat, T);

/** Keeps rounding at the ends of the range from leaving it; NaN stays NaN. */
const withinRange = (T: number): number => (T > HIGH ? HIGH : T < LOW ? LOW : T);

/**
 * Temperature of saturated water from its enthalpy, K; inverse of `tableLiquidEnthalpy` to rounding. h in J/kg.
 * One Newton step on the enthalpy table sharpens the inverse table's reading.
 */
export function tableTemperatureFromLiquidEnthalpy(h: number): number {
  const near = withinRange(readTable(temperatureFromEnthalpy, h));
  return withinRange(near - (readTable(liquidEnthalpy, near) - h) / readTable(liquidHeatCapacity, near));
}

const densityFromEnthalpy = tabulate(
  (h) => readTable(liquidDensity, solveForTemperature(h)),
  LEAST_ENTHALPY,
  GREATEST_ENTHALPY,
  INTERVALS,
);

/** Density of saturated water from its enthalpy, kg/m³. h in J/kg. */
export const tableLiquidDensityFromEnthalpy = (h: number): number => readTable(densityFromEnthalpy, h);

/** Density of saturated water, kg/m³. T in K. */
export const tableLiquidDensity = (T: number): number => readTable(liquidDensity, T);

/** Dynamic viscosity of saturated water, Pa s. T in K. */
export const tableLiquidViscosity = (T: number): number => readTable(liquidViscosity, T);

/** Conductivity of saturated water, W/(m K). T in K. */
export const tableLiquidConductivity = (T: number): number => readTable(liquidConductivity, T);

/** Isobaric expansivity of saturated water, 1/K. T in K. */
export const tableLiquidExpansivity = (T: number): number => readTable(liquidExpansivity, T);

/** Density of saturated steam, kg/m³. T in K. */
export const tableVapourDensity = (T: number): number => readTable(vapourDensity, T);

/** Dynamic viscosity of saturated steam, Pa s. T in K. */
export const tableVapourViscosity = (T: number): number => readTable(vapourViscosity, T);
