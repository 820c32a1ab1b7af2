/**
 * The air around the still: standard pressure, temperature and density with altitude, the boiling point that follows,
 * and the water vapour in humid air.
 *
 * Sources: ISO 2533:1975 (troposphere; identical to the U.S. Standard Atmosphere 1976 there), IAPWS R14-08(2011) for
 * vapour over ice.
 */
import { STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from '../constants.ts';
import { correlation, forReaders, type Correlation, type CorrelationEntry } from '../correlation.ts';
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

/** Geopotential altitude: entry `geopotential-altitude`. */
export function geopotentialAltitude(h: number): number {
  requireAltitude('geopotential altitude', h);
  return (EARTH_RADIUS * h) / (EARTH_RADIUS + h);
}

const pressureAt = (H: number): number =>
  STANDARD_ATMOSPHERE * (1 - (LAPSE_RATE * H) / SEA_LEVEL_TEMPERATURE) ** EXPONENT;

/** Standard pressure at a geopotential altitude: entry `standard-atmosphere-pressure-geopotential`. */
export function standardPressureAtGeopotential(H: number): number {
  requireAltitude('standard pressure', H);
  return pressureAt(H);
}

/** Standard air temperature: entry `standard-atmosphere-temperature`. */
export function standardTemperature(h: number): number {
  requireAltitude('standard temperature', h);
  return SEA_LEVEL_TEMPERATURE - LAPSE_RATE * geopotentialAltitude(h);
}

/** Standard air pressure: entry `standard-atmosphere-pressure`. */
export function standardPressure(h: number): number {
  requireAltitude('standard pressure', h);
  return pressureAt(geopotentialAltitude(h));
}

/** Standard air density: entry `standard-atmosphere-density`. */
export function standardDensity(h: number): number {
  requireAltitude('standard density', h);
  return standardPressure(h) / (ISO_AIR_GAS_CONSTANT * standardTemperature(h));
}

/** Boiling point of water at the standard pressure: entry `boiling-point-at-altitude`. */
export function boilingPointAtAltitude(h: number): number {
  requireAltitude('boiling point', h);
  return saturationTemperature(standardPressure(h));
}

/** Triple point of water, K and Pa, as in IAPWS R14-08. */
const TRIPLE_TEMPERATURE = 273.16;
const TRIPLE_PRESSURE = 611.657;
const MIN_ICE_TEMPERATURE = 223.15;

/** Vapour pressure over ice: entry `sublimation-pressure`. */
export function sublimationPressure(T: number): number {
  requireWithin('sublimation pressure', 'temperature', T, 'K', MIN_ICE_TEMPERATURE, TRIPLE_TEMPERATURE);
  const theta = T / TRIPLE_TEMPERATURE;
  const sum =
    -21.2144006 * theta ** 0.333333333e-2 + 27.3203819 * theta ** 1.20666667 - 6.1059813 * theta ** 1.70333333;
  return TRIPLE_PRESSURE * Math.exp(sum / theta);
}

/** Partial pressure of water vapour in humid air: entry `vapour-pressure-in-air`. */
export function vapourPressureInAir(T: number, phi: number): number {
  requireWithin('vapour in air', 'temperature', T, 'K', MIN_ICE_TEMPERATURE, WATER_MAX_TEMPERATURE);
  requireWithin('vapour in air', 'relative humidity', phi, '1', 0, 1);
  return phi * (T < 273.15 ? sublimationPressure(T) : saturationPressure(T));
}

const altitude = {
  h: { unit: 'm', says: 'geometric altitude above sea level', range: [MIN_ALTITUDE, MAX_ALTITUDE] },
} as const;
const geopotential = 'H=\\frac{rh}{r+h},\\ r=6\\,356\\,766\\,\\mathrm{m}';

const atAltitude = (entry: Omit<CorrelationEntry, 'arguments' | 'outside'>): Correlation =>
  correlation({ ...entry, arguments: altitude, tex: `${entry.tex},\\quad ${geopotential}`, outside: 'gives no value' });

export const atmosphereCorrelations: readonly Correlation[] = [
  correlation({
    name: 'geopotential-altitude',
    says: 'Altitude that allows for gravity falling off with height.',
    arguments: altitude,
    result: { symbol: 'H', unit: 'm' },
    tex: geopotential,
    source: 'ISO 2533:1975',
    outside: 'gives no value',
    compute: geopotentialAltitude,
  }),
  atAltitude({
    name: 'standard-atmosphere-pressure',
    says: 'Air pressure at an altitude on a standard day.',
    result: { symbol: 'p', unit: 'Pa' },
    tex: 'p=101\\,325\\Big(1-\\frac{0.0065\\,H}{288.15}\\Big)^{5.25588}',
    source: 'ISO 2533:1975',
    compute: standardPressure,
  }),
  atAltitude({
    name: 'standard-atmosphere-temperature',
    says: 'Air temperature at an altitude on a standard day.',
    result: { symbol: 'T', unit: 'K' },
    tex: 'T=288.15-0.0065\\,H',
    source: 'ISO 2533:1975',
    role: 'look-up',
    compute: standardTemperature,
  }),
  atAltitude({
    name: 'standard-atmosphere-density',
    says: 'Air density at an altitude on a standard day.',
    result: { symbol: 'ρ', unit: 'kg/m³' },
    tex: '\\rho=\\frac{p}{287.05287\\,T}',
    source: 'ISO 2533:1975',
    role: 'look-up',
    compute: standardDensity,
  }),
  atAltitude({
    name: 'boiling-point-at-altitude',
    says: 'Boiling point of pure water at an altitude on a standard day.',
    result: { symbol: 'T_b', unit: 'K' },
    tex: 'T_b=T_{sat}(p(h))',
    source: 'ISO 2533:1975 with IAPWS R7-97(2012), region 4',
    role: 'look-up',
    compute: boilingPointAtAltitude,
  }),
  forReaders({
    name: 'standard-atmosphere-pressure-geopotential',
    says: 'Air pressure at a geopotential altitude on a standard day.',
    arguments: { H: { unit: 'm', says: 'geopotential altitude', range: [MIN_ALTITUDE, MAX_ALTITUDE] } },
    result: { symbol: 'p', unit: 'Pa' },
    tex: 'p=101\\,325\\Big(1-\\frac{0.0065\\,H}{288.15}\\Big)^{5.25588}',
    source: 'ISO 2533:1975',
    outside: 'gives no value',
    compute: standardPressureAtGeopotential,
  }),
  correlation({
    name: 'sublimation-pressure',
    says: 'Vapour pressure over ice.',
    arguments: { T: { unit: 'K', says: 'temperature', range: [MIN_ICE_TEMPERATURE, TRIPLE_TEMPERATURE] } },
    result: { symbol: 'p_sub', unit: 'Pa' },
    tex: '\\ln\\frac{p}{611.657\\,\\mathrm{Pa}}=\\theta^{-1}\\sum_{i=1}^3a_i\\theta^{b_i},\\ \\theta=T/273.16\\,\\mathrm{K}',
    source: 'IAPWS R14-08(2011), equation 6, from memory',
    outside: 'gives no value, though the formula reaches down to 50 K',
    compute: sublimationPressure,
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
    outside: 'gives no value',
    compute: vapourPressureInAir,
  }),
];
