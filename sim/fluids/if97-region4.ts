/**
 * Saturation line of water by IAPWS-IF97 region 4: one quadratic equation solved either way, so that pressure and
 * temperature are exact inverses of each other.
 *
 * Source: IAPWS R7-97(2012), section 8, equations 29 to 31, Table 34.
 */
import { correlation, type Correlation } from '../correlation.ts';
import { requireWithin } from './range.ts';

export const REGION_4_MIN_TEMPERATURE = 273.15;
export const REGION_4_MAX_TEMPERATURE = 647.096;
export const REGION_4_MIN_PRESSURE = 611.213;
export const REGION_4_MAX_PRESSURE = 22.064e6;

const N1 = 0.11670521452767e4;
const N2 = -0.72421316703206e6;
const N3 = -0.17073846940092e2;
const N4 = 0.1202082470247e5;
const N5 = -0.32325550322333e7;
const N6 = 0.1491510861353e2;
const N7 = -0.48232657361591e4;
const N8 = 0.40511340542057e6;
const N9 = -0.23855557567849;
const N10 = 0.65017534844798e3;
const P_STAR = 1e6;

/** Equation 30 without a range check, Pa. T in K. For callers that have checked the range themselves. */
export function saturationPressureUnchecked(T: number): number {
  const theta = T + N9 / (T - N10);
  const a = theta * (theta + N1) + N2;
  const b = theta * (N3 * theta + N4) + N5;
  const c = theta * (N6 * theta + N7) + N8;
  const root = (2 * c) / (-b + Math.sqrt(b * b - 4 * a * c));
  const square = root * root;
  return P_STAR * square * square;
}

/** Equation 31 without a range check, K. p in Pa. For callers that have checked the range themselves. */
export function saturationTemperatureUnchecked(p: number): number {
  const beta = Math.sqrt(Math.sqrt(p / P_STAR));
  const e = beta * (beta + N3) + N6;
  const f = beta * (N1 * beta + N4) + N7;
  const g = beta * (N2 * beta + N5) + N8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  const sum = N10 + d;
  return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2;
}

/** dp/dT along the saturation line without a range check, Pa/K: equation 29 differentiated implicitly. T in K. */
export function saturationSlopeUnchecked(T: number): number {
  const theta = T + N9 / (T - N10);
  const beta = Math.sqrt(Math.sqrt(saturationPressureUnchecked(T) / P_STAR));
  const byTheta = beta * (beta * (2 * theta + N1) + 2 * N3 * theta + N4) + 2 * N6 * theta + N7;
  const byBeta = 2 * beta * (theta * (theta + N1) + N2) + theta * (N3 * theta + N4) + N5;
  const thetaByT = 1 - N9 / ((T - N10) * (T - N10));
  return -4 * P_STAR * beta * beta * beta * (byTheta / byBeta) * thetaByT;
}

/** Saturation pressure of water: entry `saturation-pressure`. */
export function region4SaturationPressure(T: number): number {
  requireWithin('saturation pressure', 'temperature', T, 'K', REGION_4_MIN_TEMPERATURE, REGION_4_MAX_TEMPERATURE);
  return saturationPressureUnchecked(T);
}

/** Saturation temperature of water: entry `saturation-temperature`. */
export function region4SaturationTemperature(p: number): number {
  requireWithin('saturation temperature', 'pressure', p, 'Pa', REGION_4_MIN_PRESSURE, REGION_4_MAX_PRESSURE);
  return saturationTemperatureUnchecked(p);
}

/** Slope of the saturation line: entry `saturation-slope`. */
export function region4SaturationSlope(T: number): number {
  requireWithin('saturation slope', 'temperature', T, 'K', REGION_4_MIN_TEMPERATURE, REGION_4_MAX_TEMPERATURE);
  return saturationSlopeUnchecked(T);
}

const temperature = {
  unit: 'K',
  says: 'temperature',
  range: [REGION_4_MIN_TEMPERATURE, REGION_4_MAX_TEMPERATURE],
} as const;

const implicit =
  '\\beta^2\\vartheta^2+n_1\\beta^2\\vartheta+n_2\\beta^2+n_3\\beta\\vartheta^2+n_4\\beta\\vartheta+n_5\\beta+n_6\\vartheta^2+n_7\\vartheta+n_8=0,\\quad ' +
  '\\beta=(p/p^*)^{1/4},\\ \\vartheta=T+\\frac{n_9}{T-n_{10}}';

export const region4Correlations: readonly Correlation[] = [
  correlation({
    name: 'saturation-pressure',
    says: 'Pressure at which water boils at a given temperature.',
    arguments: { T: temperature },
    result: { symbol: 'p_sat', unit: 'Pa' },
    tex: implicit,
    source: 'IAPWS R7-97(2012), region 4, equation 30',
    outside: 'gives no value',
    compute: region4SaturationPressure,
  }),
  correlation({
    name: 'saturation-temperature',
    says: 'Temperature at which water boils at a given pressure.',
    arguments: { p: { unit: 'Pa', says: 'pressure', range: [REGION_4_MIN_PRESSURE, REGION_4_MAX_PRESSURE] } },
    result: { symbol: 'T_sat', unit: 'K' },
    tex: implicit,
    source: 'IAPWS R7-97(2012), region 4, equation 31',
    outside: 'gives no value',
    compute: region4SaturationTemperature,
  }),
  correlation({
    name: 'saturation-slope',
    says: 'Rise of the boiling pressure of water per degree.',
    arguments: { T: temperature },
    result: { symbol: 'dp_sat/dT', unit: 'Pa/K' },
    tex: `\\frac{dp}{dT}=-4p^*\\beta^3\\,\\frac{\\partial F/\\partial\\vartheta}{\\partial F/\\partial\\beta}\\,\\frac{d\\vartheta}{dT},\\quad F:\\ ${implicit}`,
    source: 'IAPWS R7-97(2012), region 4, equation 29 differentiated implicitly',
    outside: 'gives no value',
    role: 'other-form',
    compute: region4SaturationSlope,
  }),
];
