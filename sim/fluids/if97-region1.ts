/**
 * Liquid water by IAPWS-IF97 region 1: Gibbs energy as 34 terms, all properties by differentiation.
 *
 * Source: IAPWS R7-97(2012), section 5, equation 7 and Table 2.
 */
import type { Correlation } from '../correlation.ts';
import { regionCorrelations } from './if97-entries.ts';
import { REGION_4_MIN_PRESSURE, saturationPressureUnchecked } from './if97-region4.ts';
import { requireWithin } from './range.ts';

/** Specific gas constant of IF97, J/(kg K). */
const R = 461.526;
const P_STAR = 16.53e6;
const T_STAR = 1386;

export const REGION_1_MIN_TEMPERATURE = 273.15;
export const REGION_1_MAX_TEMPERATURE = 623.15;
export const REGION_1_MAX_PRESSURE = 100e6;

/** How far past the saturation line a state may lie, as a share: room for a saturated state typed with rounded digits. */
const METASTABLE_SHARE = 1e-3;

/** I, J, n of Table 2. */
const TERMS = (
  [
    [0, -2, 0.14632971213167],
    [0, -1, -0.84548187169114],
    [0, 0, -0.3756360367204e1],
    [0, 1, 0.33855169168385e1],
    [0, 2, -0.95791963387872],
    [0, 3, 0.15772038513228],
    [0, 4, -0.16616417199501e-1],
    [0, 5, 0.81214629983568e-3],
    [1, -9, 0.28319080123804e-3],
    [1, -7, -0.60706301565874e-3],
    [1, -1, -0.18990068218419e-1],
    [1, 0, -0.32529748770505e-1],
    [1, 1, -0.21841717175414e-1],
    [1, 3, -0.5283835796993e-4],
    [2, -3, -0.47184321073267e-3],
    [2, 0, -0.30001780793026e-3],
    [2, 1, 0.47661393906987e-4],
    [2, 3, -0.44141845330846e-5],
    [2, 17, -0.72694996297594e-15],
    [3, -4, -0.31679644845054e-4],
    [3, 0, -0.28270797985312e-5],
    [3, 6, -0.85205128120103e-9],
    [4, -5, -0.22425281908e-5],
    [4, -2, -0.65171222895601e-6],
    [4, 10, -0.14341729937924e-12],
    [5, -8, -0.40516996860117e-6],
    [8, -11, -0.12734301741641e-8],
    [8, -6, -0.17424871230634e-9],
    [21, -29, -0.68762131295531e-18],
    [23, -31, 0.14478307828521e-19],
    [29, -38, 0.26335781662795e-22],
    [30, -39, -0.11947622640071e-22],
    [31, -40, 0.18228094581404e-23],
    [32, -41, -0.93537087292458e-25],
  ] as const
).map(([I, J, n]) => ({ I, J, n }));

/** Properties of one liquid state, SI. */
export interface Region1State {
  readonly volume: number;
  readonly enthalpy: number;
  readonly entropy: number;
  readonly heatCapacity: number;
  readonly isochoricHeatCapacity: number;
  readonly expansivity: number;
  readonly compressibility: number;
}

/** All properties from the Gibbs energy and its derivatives (Table 3), without a range check. */
function evaluateRegion1(T: number, p: number): Region1State {
  const a = 7.1 - p / P_STAR;
  const tau = T_STAR / T;
  const b = tau - 1.222;
  let gamma = 0;
  let byPi = 0;
  let byPiPi = 0;
  let byTau = 0;
  let byTauTau = 0;
  let byPiTau = 0;
  for (const { I, J, n } of TERMS) {
    const term = n * a ** I * b ** J;
    gamma += term;
    byPi -= I * term;
    byPiPi += I * (I - 1) * term;
    byTau += J * term;
    byTauTau += J * (J - 1) * term;
    byPiTau -= I * J * term;
  }
  byPi /= a;
  byPiPi /= a * a;
  byTau /= b;
  byTauTau /= b * b;
  byPiTau /= a * b;
  const mixed = byPi - tau * byPiTau;
  return {
    volume: ((R * T) / P_STAR) * byPi,
    enthalpy: R * T_STAR * byTau,
    entropy: R * (tau * byTau - gamma),
    heatCapacity: -R * tau * tau * byTauTau,
    isochoricHeatCapacity: R * (-tau * tau * byTauTau + (mixed * mixed) / byPiPi),
    expansivity: (1 - (tau * byPiTau) / byPi) / T,
    compressibility: -byPiPi / byPi / P_STAR,
  };
}

function requireRegion1(quantity: string, T: number, p: number): void {
  requireWithin(quantity, 'temperature', T, 'K', REGION_1_MIN_TEMPERATURE, REGION_1_MAX_TEMPERATURE);
  const boiling = saturationPressureUnchecked(T);
  if (p >= boiling * (1 - METASTABLE_SHARE) && p <= boiling) return;
  requireWithin(quantity, 'pressure', p, 'Pa', boiling, REGION_1_MAX_PRESSURE);
}

/**
 * Properties of liquid water: volume m³/kg, enthalpy J/kg, entropy and heat capacities J/(kg K), expansivity
 * (∂v/∂T)_p/v 1/K, compressibility −(∂v/∂p)_T/v 1/Pa.
 * @param T temperature, K, 273.15–623.15.
 * @param p pressure, Pa, from saturation to 100e6.
 * @throws RangeError outside. Source: IAPWS R7-97(2012) equation 7, Table 3.
 */
export function region1State(T: number, p: number): Region1State {
  requireRegion1('liquid water state', T, p);
  return evaluateRegion1(T, p);
}

/** Specific volume of liquid water: entry `region-1-volume`. */
export function region1Volume(T: number, p: number): number {
  requireRegion1('liquid water volume', T, p);
  return evaluateRegion1(T, p).volume;
}

/** Specific enthalpy of liquid water: entry `region-1-enthalpy`. */
export function region1Enthalpy(T: number, p: number): number {
  requireRegion1('liquid water enthalpy', T, p);
  return evaluateRegion1(T, p).enthalpy;
}

/** Specific entropy of liquid water: entry `region-1-entropy`. */
export function region1Entropy(T: number, p: number): number {
  requireRegion1('liquid water entropy', T, p);
  return evaluateRegion1(T, p).entropy;
}

/** Isobaric heat capacity of liquid water: entry `region-1-heat-capacity`. */
export function region1HeatCapacity(T: number, p: number): number {
  requireRegion1('liquid water heat capacity', T, p);
  return evaluateRegion1(T, p).heatCapacity;
}

export const region1Correlations: readonly Correlation[] = regionCorrelations({
  region: 1,
  fluid: 'liquid water',
  temperature: [REGION_1_MIN_TEMPERATURE, REGION_1_MAX_TEMPERATURE],
  pressure: [REGION_4_MIN_PRESSURE, REGION_1_MAX_PRESSURE],
  gibbs:
    '\\gamma(\\pi,\\tau)=\\sum_{i=1}^{34}n_i(7.1-\\pi)^{I_i}(\\tau-1.222)^{J_i},\\ \\pi=\\tfrac{p}{16.53\\,\\mathrm{MPa}},\\ \\tau=\\tfrac{1386\\,\\mathrm{K}}{T}',
  source: 'IAPWS R7-97(2012), region 1, equation 7 and Table 3',
  volume: region1Volume,
  enthalpy: region1Enthalpy,
  entropy: region1Entropy,
  heatCapacity: region1HeatCapacity,
});
