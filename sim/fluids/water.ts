/**
 * Water and steam on the saturation line, 0–130 °C: what a still at about one atmosphere needs.
 *
 * Liquid by IAPWS-IF97 region 1, steam by region 2, the line between them by region 4, transport by the IAPWS
 * releases, each evaluated at saturation. Every function takes one scalar, throws a `RangeError` that names quantity,
 * value and range outside 273.15–403.15 K, and is exact to the formulation. The step loop uses the tables of
 * `water-table.ts` built from these.
 */
import { correlation, type Argument, type Correlation, type CorrelationEntry } from '../correlation.ts';
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
/** What a relation with these properties does outside its ranges. */
export const whereWaterEnds = 'evaluated; gives no value where the properties of water end';
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

/** Density of saturated water: entry `liquid-density`. */
export const liquidDensity = (T: number): number => 1 / boilingWater('liquid density', T).volume;

/** Enthalpy of saturated water: entry `liquid-enthalpy`. */
export const liquidEnthalpy = (T: number): number => boilingWater('liquid enthalpy', T).enthalpy;

/** Heat capacity of saturated water: entry `liquid-heat-capacity`. */
export const liquidHeatCapacity = (T: number): number => boilingWater('liquid heat capacity', T).heatCapacity;

/** Expansivity of saturated water: entry `liquid-expansivity`. */
export const liquidExpansivity = (T: number): number => boilingWater('liquid expansivity', T).expansivity;

/** Density of saturated steam: entry `vapour-density`. */
export const vapourDensity = (T: number): number => 1 / saturatedSteam('vapour density', T).volume;

/** Enthalpy of saturated steam: entry `vapour-enthalpy`. */
export const vapourEnthalpy = (T: number): number => saturatedSteam('vapour enthalpy', T).enthalpy;

/** Heat capacity of saturated steam: entry `vapour-heat-capacity`. */
export const vapourHeatCapacity = (T: number): number => saturatedSteam('vapour heat capacity', T).heatCapacity;

/** Latent heat of vaporisation of water: entry `latent-heat`. */
export const latentHeat = (T: number): number =>
  saturatedSteam('latent heat', T).enthalpy - boilingWater('latent heat', T).enthalpy;

/** Viscosity of saturated water: entry `liquid-viscosity`. */
export const liquidViscosity = (T: number): number => waterViscosity(T, 1 / boilingWater('liquid viscosity', T).volume);

/** Viscosity of saturated steam: entry `vapour-viscosity`. */
export const vapourViscosity = (T: number): number =>
  waterViscosity(T, 1 / saturatedSteam('vapour viscosity', T).volume);

/** Conductivity of saturated water: entry `liquid-conductivity`. */
export const liquidConductivity = (T: number): number =>
  waterConductivity(T, 1 / boilingWater('liquid conductivity', T).volume);

/** Conductivity of saturated steam: entry `vapour-conductivity`. */
export const vapourConductivity = (T: number): number =>
  waterConductivity(T, 1 / saturatedSteam('vapour conductivity', T).volume);

/** Surface tension of water, N/m. T in K, 273.15–403.15. IAPWS R1-76(2014). */
export function surfaceTension(T: number): number {
  boilingPressure('surface tension', T);
  return waterSurfaceTension(T);
}

/** Prandtl number of saturated water: entry `liquid-prandtl`. */
export function liquidPrandtl(T: number): number {
  boilingPressure('liquid Prandtl number', T);
  return (liquidHeatCapacity(T) * liquidViscosity(T)) / liquidConductivity(T);
}

/** Prandtl number of saturated steam: entry `vapour-prandtl`. */
export function vapourPrandtl(T: number): number {
  boilingPressure('vapour Prandtl number', T);
  return (vapourHeatCapacity(T) * vapourViscosity(T)) / vapourConductivity(T);
}

const IF97 = 'IAPWS R7-97(2012)';
const VISCOSITY = 'IAPWS R12-08, μ₂ = 1, at the IF97 density';
const CONDUCTIVITY = 'IAPWS R15-11, λ₂ = 0, at the IF97 density';
const temperature: Argument = { unit: 'K', says: 'temperature', range: [WATER_MIN_TEMPERATURE, WATER_MAX_TEMPERATURE] };

const onSaturationLine = (entry: Omit<CorrelationEntry, 'arguments' | 'outside'>): Correlation =>
  correlation({ ...entry, arguments: { T: temperature }, outside: 'gives no value' });

export const waterCorrelations: readonly Correlation[] = [
  onSaturationLine({
    name: 'liquid-density',
    says: 'Density of water at its boiling pressure.',
    result: { symbol: 'ρ_l', unit: 'kg/m³' },
    tex: "\\rho_l=1/v'(T),\\ v'=\\frac{RT}{p_{sat}}\\pi\\gamma_\\pi",
    source: `${IF97}, region 1`,
    role: 'other-form',
    compute: liquidDensity,
  }),
  onSaturationLine({
    name: 'liquid-enthalpy',
    says: 'Enthalpy of water at its boiling pressure, zero at the triple point.',
    result: { symbol: 'h_l', unit: 'J/kg' },
    tex: "h'(T)=RT\\,\\tau\\gamma_\\tau",
    source: `${IF97}, region 1`,
    role: 'other-form',
    compute: liquidEnthalpy,
  }),
  onSaturationLine({
    name: 'liquid-heat-capacity',
    says: 'Isobaric heat capacity of water at its boiling pressure.',
    result: { symbol: 'c_pl', unit: 'J/(kg K)' },
    tex: 'c_p=-R\\tau^2\\gamma_{\\tau\\tau}',
    source: `${IF97}, region 1`,
    role: 'other-form',
    compute: liquidHeatCapacity,
  }),
  onSaturationLine({
    name: 'liquid-expansivity',
    says: 'Expansivity of water: share by which the volume grows per degree; negative near freezing.',
    result: { symbol: 'β', unit: '1/K' },
    tex: '\\beta=\\frac1v\\Big(\\frac{\\partial v}{\\partial T}\\Big)_p=\\frac1T\\Big(1-\\frac{\\tau\\gamma_{\\pi\\tau}}{\\gamma_\\pi}\\Big)',
    source: `${IF97}, region 1`,
    role: 'other-form',
    compute: liquidExpansivity,
  }),
  onSaturationLine({
    name: 'latent-heat',
    says: 'Heat that turns boiling water to steam, by weight.',
    result: { symbol: 'h_fg', unit: 'J/kg' },
    tex: "h_{fg}=h''(T)-h'(T)",
    source: `${IF97}, regions 1, 2 and 4`,
    compute: latentHeat,
  }),
  onSaturationLine({
    name: 'vapour-density',
    says: 'Density of saturated steam.',
    result: { symbol: 'ρ_v', unit: 'kg/m³' },
    tex: "\\rho_v=1/v''(T),\\ v''=\\frac{RT}{p_{sat}}\\pi(\\gamma^{\\mathrm o}_\\pi+\\gamma^{\\mathrm r}_\\pi)",
    source: `${IF97}, region 2`,
    role: 'other-form',
    compute: vapourDensity,
  }),
  onSaturationLine({
    name: 'vapour-enthalpy',
    says: 'Enthalpy of saturated steam, zero for the liquid at the triple point.',
    result: { symbol: 'h_v', unit: 'J/kg' },
    tex: "h''(T)=RT\\,\\tau(\\gamma^{\\mathrm o}_\\tau+\\gamma^{\\mathrm r}_\\tau)",
    source: `${IF97}, region 2`,
    role: 'other-form',
    compute: vapourEnthalpy,
  }),
  onSaturationLine({
    name: 'vapour-heat-capacity',
    says: 'Isobaric heat capacity of saturated steam.',
    result: { symbol: 'c_pv', unit: 'J/(kg K)' },
    tex: 'c_p=-R\\tau^2(\\gamma^{\\mathrm o}_{\\tau\\tau}+\\gamma^{\\mathrm r}_{\\tau\\tau})',
    source: `${IF97}, region 2`,
    role: 'look-up',
    compute: vapourHeatCapacity,
  }),
  onSaturationLine({
    name: 'liquid-viscosity',
    says: 'Dynamic viscosity of water at its boiling pressure.',
    result: { symbol: 'μ_l', unit: 'Pa s' },
    tex: '\\mu_l=\\mu(T,\\rho_l(T))',
    source: VISCOSITY,
    role: 'other-form',
    compute: liquidViscosity,
  }),
  onSaturationLine({
    name: 'vapour-viscosity',
    says: 'Dynamic viscosity of saturated steam.',
    result: { symbol: 'μ_v', unit: 'Pa s' },
    tex: '\\mu_v=\\mu(T,\\rho_v(T))',
    source: VISCOSITY,
    role: 'other-form',
    compute: vapourViscosity,
  }),
  onSaturationLine({
    name: 'liquid-conductivity',
    says: 'Thermal conductivity of water at its boiling pressure.',
    result: { symbol: 'k_l', unit: 'W/(m K)' },
    tex: 'k_l=\\lambda(T,\\rho_l(T))',
    source: CONDUCTIVITY,
    role: 'other-form',
    compute: liquidConductivity,
  }),
  onSaturationLine({
    name: 'vapour-conductivity',
    says: 'Thermal conductivity of saturated steam.',
    result: { symbol: 'k_v', unit: 'W/(m K)' },
    tex: 'k_v=\\lambda(T,\\rho_v(T))',
    source: CONDUCTIVITY,
    role: 'look-up',
    compute: vapourConductivity,
  }),
  onSaturationLine({
    name: 'liquid-prandtl',
    says: 'Prandtl number of water at its boiling pressure.',
    result: { symbol: 'Pr_l', unit: '1' },
    tex: 'Pr=\\frac{c_p\\mu}{k}',
    source: 'definition, with the IAPWS properties',
    role: 'look-up',
    compute: liquidPrandtl,
  }),
  onSaturationLine({
    name: 'vapour-prandtl',
    says: 'Prandtl number of saturated steam.',
    result: { symbol: 'Pr_v', unit: '1' },
    tex: 'Pr=\\frac{c_p\\mu}{k}',
    source: 'definition, with the IAPWS properties',
    role: 'look-up',
    compute: vapourPrandtl,
  }),
];
