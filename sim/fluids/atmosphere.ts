/**
 * The air around the still: standard pressure, temperature and density with altitude, the boiling point that follows,
 * and the water vapour in humid air.
 *
 * Sources: ISO 2533:1975 (troposphere; identical to the U.S. Standard Atmosphere 1976 there), IAPWS R14-08(2011) for
 * vapour over ice.
 */
import { GAS_CONSTANT, STANDARD_ATMOSPHERE, STANDARD_GRAVITY, WATER_MOLAR_MASS } from '../constants.ts';
import { correlation, type Correlation } from '../correlation.ts';
import { AIR_GAS_CONSTANT } from './air.ts';
import { requireWithin } from './range.ts';
import { saturationPressure, saturationTemperature, WATER_MAX_TEMPERATURE } from './water.ts';

/** Nominal earth radius of ISO 2533, m. */
const EARTH_RADIUS = 6_356_766;
const SEA_LEVEL_TEMPERATURE = 288.15;
const LAPSE_RATE = 0.0065;
/** Specific gas constant of air in ISO 2533, J/(kg K). */
const ISO_AIR_GAS_CONSTANT = 287.05287;
const EXPONENT = STANDARD_GRAVITY / (ISO_AIR_GAS_CONSTANT * LAPSE_RATE);

/** Range of altitudes, m: the lowest layer of the standard. */
export const MIN_ALTITUDE = -2000;
export const MAX_ALTITUDE = 11_000;

const requireAltitude = (quantity: string, h: number): void =>
  requireWithin(quantity, 'altitude', h, 'm', MIN_ALTITUDE, MAX_ALTITUDE);

/** Geopotential altitude H = r h/(r + h), m. h geometric altitude, m, −2000–11 000, RangeError outside. ISO 2533. */
export function geopotentialAltitude(h: number): number {
  requireAltitude('geopotential altitude', h);
  return (EARTH_RADIUS * h) / (EARTH_RADIUS + h);
}

const pressureAt = (H: number): number =>
  STANDARD_ATMOSPHERE * (1 - (LAPSE_RATE * H) / SEA_LEVEL_TEMPERATURE) ** EXPONENT;

/** Standard pressure at a geopotential altitude, Pa. H in m, −2000–11 000, RangeError outside. ISO 2533. */
export function standardPressureAtGeopotential(H: number): number {
  requireAltitude('standard pressure', H);
  return pressureAt(H);
}

/** Standard air temperature, K. h geometric altitude, m, −2000–11 000, RangeError outside. ISO 2533. */
export function standardTemperature(h: number): number {
  requireAltitude('standard temperature', h);
  return SEA_LEVEL_TEMPERATURE - LAPSE_RATE * geopotentialAltitude(h);
}

/** Standard air pressure, Pa. h geometric altitude, m, −2000–11 000, RangeError outside. ISO 2533. */
export function standardPressure(h: number): number {
  requireAltitude('standard pressure', h);
  return pressureAt(geopotentialAltitude(h));
}

/** Standard air density, kg/m³. h geometric altitude, m, −2000–11 000, RangeError outside. ISO 2533. */
export function standardDensity(h: number): number {
  requireAltitude('standard density', h);
  return standardPressure(h) / (ISO_AIR_GAS_CONSTANT * standardTemperature(h));
}

/** Boiling point of pure water at the standard pressure, K. h geometric altitude, m. ISO 2533 with IAPWS-IF97. */
export function boilingPointAtAltitude(h: number): number {
  requireAltitude('boiling point', h);
  return saturationTemperature(standardPressure(h));
}

/** Triple point of water, K and Pa, as in IAPWS R14-08. */
const TRIPLE_TEMPERATURE = 273.16;
const TRIPLE_PRESSURE = 611.657;
const MIN_ICE_TEMPERATURE = 223.15;

/**
 * Vapour pressure over ice, Pa.
 * @param T temperature, K, 223.15–273.16 (the formula reaches to 50 K).
 * @throws RangeError outside. Source: IAPWS R14-08(2011) equation 6.
 */
export function sublimationPressure(T: number): number {
  requireWithin('sublimation pressure', 'temperature', T, 'K', MIN_ICE_TEMPERATURE, TRIPLE_TEMPERATURE);
  const theta = T / TRIPLE_TEMPERATURE;
  const sum =
    -21.2144006 * theta ** 0.333333333e-2 + 27.3203819 * theta ** 1.20666667 - 6.1059813 * theta ** 1.70333333;
  return TRIPLE_PRESSURE * Math.exp(sum / theta);
}

/**
 * Partial pressure of water vapour in humid air, Pa: over liquid water from 273.15 K up, over ice below.
 * @param T air temperature, K, 223.15–403.15. @param phi relative humidity, 0–1.
 * @throws RangeError outside. Sources: IAPWS R7-97(2012), R14-08(2011).
 */
export function vapourPressureInAir(T: number, phi: number): number {
  requireWithin('vapour in air', 'temperature', T, 'K', MIN_ICE_TEMPERATURE, WATER_MAX_TEMPERATURE);
  requireWithin('vapour in air', 'relative humidity', phi, '1', 0, 1);
  return phi * (T < 273.15 ? sublimationPressure(T) : saturationPressure(T));
}

/**
 * Density of humid air as a mixture of ideal gases, kg/m³.
 * @param T temperature, K, 223.15–403.15. @param p total pressure, Pa. @param phi relative humidity, 0–1.
 * @throws RangeError outside, and where the vapour alone would exceed the total pressure.
 */
export function humidAirDensity(T: number, p: number, phi: number): number {
  const vapour = vapourPressureInAir(T, phi);
  requireWithin('humid air density', 'pressure', p, 'Pa', vapour, 1e6);
  return (p - vapour) / (AIR_GAS_CONSTANT * T) + (vapour * WATER_MOLAR_MASS) / (GAS_CONSTANT * T);
}

const altitude = {
  h: { unit: 'm', says: 'geometric altitude above sea level', range: [MIN_ALTITUDE, MAX_ALTITUDE] },
} as const;
const geopotential = 'H=\\frac{rh}{r+h},\\ r=6\\,356\\,766\\,\\mathrm{m}';

const atAltitude = (
  name: string,
  says: string,
  symbol: string,
  unit: string,
  tex: string,
  source: string,
  property: (h: number) => number,
): Correlation =>
  correlation({
    name,
    says,
    arguments: altitude,
    result: { symbol, unit },
    tex: `${tex},\\quad ${geopotential}`,
    source,
    outside: 'throws a RangeError',
    evaluate: ({ h = Number.NaN }) => property(h),
  });

export const atmosphereCorrelations: readonly Correlation[] = [
  atAltitude(
    'standard-atmosphere-pressure',
    'Air pressure at an altitude on a standard day.',
    'p',
    'Pa',
    'p=101\\,325\\Big(1-\\frac{0.0065\\,H}{288.15}\\Big)^{5.25588}',
    'ISO 2533:1975',
    standardPressure,
  ),
  atAltitude(
    'standard-atmosphere-temperature',
    'Air temperature at an altitude on a standard day.',
    'T',
    'K',
    'T=288.15-0.0065\\,H',
    'ISO 2533:1975',
    standardTemperature,
  ),
  atAltitude(
    'standard-atmosphere-density',
    'Air density at an altitude on a standard day.',
    'ρ',
    'kg/m³',
    '\\rho=\\frac{p}{287.05287\\,T}',
    'ISO 2533:1975',
    standardDensity,
  ),
  atAltitude(
    'boiling-point-at-altitude',
    'Boiling point of pure water at an altitude on a standard day.',
    'T_b',
    'K',
    'T_b=T_{sat}(p(h))',
    'ISO 2533:1975 with IAPWS R7-97(2012), region 4',
    boilingPointAtAltitude,
  ),
  correlation({
    name: 'standard-atmosphere-pressure-geopotential',
    says: 'Air pressure at a geopotential altitude on a standard day.',
    arguments: { H: { unit: 'm', says: 'geopotential altitude', range: [MIN_ALTITUDE, MAX_ALTITUDE] } },
    result: { symbol: 'p', unit: 'Pa' },
    tex: 'p=101\\,325\\Big(1-\\frac{0.0065\\,H}{288.15}\\Big)^{5.25588}',
    source: 'ISO 2533:1975',
    outside: 'throws a RangeError',
    evaluate: ({ H = Number.NaN }) => standardPressureAtGeopotential(H),
  }),
  correlation({
    name: 'sublimation-pressure',
    says: 'Vapour pressure over ice.',
    arguments: { T: { unit: 'K', says: 'temperature', range: [MIN_ICE_TEMPERATURE, TRIPLE_TEMPERATURE] } },
    result: { symbol: 'p_sub', unit: 'Pa' },
    tex: '\\ln\\frac{p}{611.657\\,\\mathrm{Pa}}=\\theta^{-1}\\sum_{i=1}^3a_i\\theta^{b_i},\\ \\theta=T/273.16\\,\\mathrm{K}',
    source: 'IAPWS R14-08(2011), equation 6, from memory',
    outside: 'throws a RangeError',
    evaluate: ({ T = Number.NaN }) => sublimationPressure(T),
  }),
  correlation({
    name: 'vapour-pressure-in-air',
    says: 'Partial pressure of the water vapour in humid air.',
    arguments: {
      T: { unit: 'K', says: 'air temperature', range: [MIN_ICE_TEMPERATURE, WATER_MAX_TEMPERATURE] },
      phi: { unit: '1', says: 'relative humidity', range: [0, 1] },
    },
    result: { symbol: 'p_w', unit: 'Pa' },
    tex: 'p_w=\\varphi\\,p_{sat}(T)',
    source: 'IAPWS R7-97(2012), region 4; below 0 °C over ice, IAPWS R14-08(2011)',
    outside: 'throws a RangeError',
    evaluate: ({ T = Number.NaN, phi = Number.NaN }) => vapourPressureInAir(T, phi),
  }),
];
