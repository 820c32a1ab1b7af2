/**
 * Water and steam on the saturation line, 0–130 °C: what a still at about one atmosphere needs.
 *
 * Liquid by IAPWS-IF97 region 1, steam by region 2, the line between them by region 4, transport by the IAPWS
 * releases, each evaluated at saturation. Every function takes one scalar, throws a `RangeError` that names quantity,
 * value and range outside 273.15–403.15 K, and is exact to the formulation. The step loop uses the tables of
 * `water-table.ts` built from these.
 */
import { region1State, type Region1State } from './if97-region1.ts';
import { region2State, type Region2State } from './if97-region2.ts';
import {
  saturationPressureUnchecked,
  saturationSlopeUnchecked,
  saturationTemperatureUnchecked,
} from './if97-region4.ts';
import { requireWithin } from './range.ts';
import { waterConductivity, waterSurfaceTension, waterViscosity } from './transport.ts';

/** Lowest temperature of the saturation-line functions, K. */
export const WATER_MIN_TEMPERATURE = 273.15;
/** Highest temperature of the saturation-line functions, K. */
export const WATER_MAX_TEMPERATURE = 403.15;
/** Lowest pressure of `saturationTemperature`, Pa. */
export const WATER_MIN_PRESSURE = saturationPressureUnchecked(WATER_MIN_TEMPERATURE);
/** Highest pressure of `saturationTemperature`, Pa. */
export const WATER_MAX_PRESSURE = saturationPressureUnchecked(WATER_MAX_TEMPERATURE);

/** Checks the temperature and gives the saturation pressure, Pa. */
function boilingPressure(quantity: string, T: number): number {
  requireWithin(quantity, 'temperature', T, 'K', WATER_MIN_TEMPERATURE, WATER_MAX_TEMPERATURE);
  return saturationPressureUnchecked(T);
}

/** Pressure at which water boils, Pa. T in K, 273.15–403.15. IAPWS R7-97(2012) equation 30. */
export const saturationPressure = (T: number): number => boilingPressure('saturation pressure', T);

/** Temperature at which water boils, K. p in Pa, 611.2127–270 263. IAPWS R7-97(2012) equation 31. */
export function saturationTemperature(p: number): number {
  requireWithin('saturation temperature', 'pressure', p, 'Pa', WATER_MIN_PRESSURE, WATER_MAX_PRESSURE);
  return saturationTemperatureUnchecked(p);
}

/** Slope of the saturation line dp/dT, Pa/K. T in K, 273.15–403.15. IAPWS R7-97(2012) equation 29, differentiated. */
export function saturationSlope(T: number): number {
  boilingPressure('saturation slope', T);
  return saturationSlopeUnchecked(T);
}

const boilingWater = (quantity: string, T: number): Region1State => region1State(T, boilingPressure(quantity, T));
const saturatedSteam = (quantity: string, T: number): Region2State => region2State(T, boilingPressure(quantity, T));

/** Density of saturated water, kg/m³. T in K, 273.15–403.15. IF97 region 1. */
export const liquidDensity = (T: number): number => 1 / boilingWater('liquid density', T).volume;

/** Enthalpy of saturated water above the liquid at the triple point, J/kg. T in K, 273.15–403.15. IF97 region 1. */
export const liquidEnthalpy = (T: number): number => boilingWater('liquid enthalpy', T).enthalpy;

/** Isobaric heat capacity of saturated water, J/(kg K). T in K, 273.15–403.15. IF97 region 1. */
export const liquidHeatCapacity = (T: number): number => boilingWater('liquid heat capacity', T).heatCapacity;

/** Isobaric expansivity of saturated water, 1/K; negative below 4 °C. T in K, 273.15–403.15. IF97 region 1. */
export const liquidExpansivity = (T: number): number => boilingWater('liquid expansivity', T).expansivity;

/** Density of saturated steam, kg/m³. T in K, 273.15–403.15. IF97 region 2. */
export const vapourDensity = (T: number): number => 1 / saturatedSteam('vapour density', T).volume;

/** Enthalpy of saturated steam, same zero as the liquid, J/kg. T in K, 273.15–403.15. IF97 region 2. */
export const vapourEnthalpy = (T: number): number => saturatedSteam('vapour enthalpy', T).enthalpy;

/** Isobaric heat capacity of saturated steam, J/(kg K). T in K, 273.15–403.15. IF97 region 2. */
export const vapourHeatCapacity = (T: number): number => saturatedSteam('vapour heat capacity', T).heatCapacity;

/** Latent heat of vaporisation of water, J/kg. T in K, 273.15–403.15. IF97 regions 1 and 2. */
export const latentHeat = (T: number): number =>
  saturatedSteam('latent heat', T).enthalpy - boilingWater('latent heat', T).enthalpy;

/** Dynamic viscosity of saturated water, Pa s. T in K, 273.15–403.15. IAPWS R12-08 at the IF97 density. */
export const liquidViscosity = (T: number): number => waterViscosity(T, 1 / boilingWater('liquid viscosity', T).volume);

/** Dynamic viscosity of saturated steam, Pa s. T in K, 273.15–403.15. IAPWS R12-08 at the IF97 density. */
export const vapourViscosity = (T: number): number =>
  waterViscosity(T, 1 / saturatedSteam('vapour viscosity', T).volume);

/** Conductivity of saturated water, W/(m K). T in K, 273.15–403.15. IAPWS R15-11 without enhancement. */
export const liquidConductivity = (T: number): number =>
  waterConductivity(T, 1 / boilingWater('liquid conductivity', T).volume);

/** Conductivity of saturated steam, W/(m K). T in K, 273.15–403.15. IAPWS R15-11 without enhancement. */
export const vapourConductivity = (T: number): number =>
  waterConductivity(T, 1 / saturatedSteam('vapour conductivity', T).volume);

/** Surface tension of water, N/m. T in K, 273.15–403.15. IAPWS R1-76(2014). */
export function surfaceTension(T: number): number {
  boilingPressure('surface tension', T);
  return waterSurfaceTension(T);
}

/** Prandtl number c_p μ/λ of saturated water. T in K, 273.15–403.15. From the three above. */
export function liquidPrandtl(T: number): number {
  boilingPressure('liquid Prandtl number', T);
  return (liquidHeatCapacity(T) * liquidViscosity(T)) / liquidConductivity(T);
}

/** Prandtl number c_p μ/λ of saturated steam. T in K, 273.15–403.15. From the three above. */
export function vapourPrandtl(T: number): number {
  boilingPressure('vapour Prandtl number', T);
  return (vapourHeatCapacity(T) * vapourViscosity(T)) / vapourConductivity(T);
}
