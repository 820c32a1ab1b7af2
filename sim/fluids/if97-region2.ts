/**
 * Steam by IAPWS-IF97 region 2: Gibbs energy as an ideal-gas part of 9 terms and a residual part of 43, all
 * properties by differentiation.
 *
 * Source: IAPWS R7-97(2012), section 6, equations 15 to 17, Tables 10 and 11; boundary to region 3: equation 5.
 */
import type { Correlation } from '../correlation.ts';
import { regionCorrelations } from './if97-entries.ts';
import { saturationPressureUnchecked } from './if97-region4.ts';
import { requireWithin } from './range.ts';

/** Specific gas constant of IF97, J/(kg K). */
const R = 461.526;
const P_STAR = 1e6;
const T_STAR = 540;

export const REGION_2_MIN_TEMPERATURE = 273.15;
export const REGION_2_MAX_TEMPERATURE = 1073.15;
export const REGION_2_MAX_PRESSURE = 100e6;

/** Steam has no volume at no pressure; a millipascal is far below anything a still meets. */
const LEAST_PRESSURE = 1e-3;

/** How far past the saturation line a state may lie, as a share: room for a saturated state typed with rounded digits. */
const METASTABLE_SHARE = 1e-3;

/** J, n of Table 10. */
const IDEAL_TERMS = (
  [
    [0, -0.96927686500217e1],
    [1, 0.10086655968018e2],
    [-5, -0.5608791128302e-2],
    [-4, 0.71452738081455e-1],
    [-3, -0.40710498223928],
    [-2, 0.14240819171444e1],
    [-1, -0.4383951131945e1],
    [2, -0.28408632460772],
    [3, 0.21268463753307e-1],
  ] as const
).map(([J, n]) => ({ J, n }));

/** I, J, n of Table 11. */
const RESIDUAL_TERMS = (
  [
    [1, 0, -0.17731742473213e-2],
    [1, 1, -0.17834862292358e-1],
    [1, 2, -0.45996013696365e-1],
    [1, 3, -0.57581259083432e-1],
    [1, 6, -0.5032527872793e-1],
    [2, 1, -0.33032641670203e-4],
    [2, 2, -0.18948987516315e-3],
    [2, 4, -0.39392777243355e-2],
    [2, 7, -0.43797295650573e-1],
    [2, 36, -0.26674547914087e-4],
    [3, 0, 0.20481737692309e-7],
    [3, 1, 0.43870667284435e-6],
    [3, 3, -0.3227767723857e-4],
    [3, 6, -0.15033924542148e-2],
    [3, 35, -0.40668253562649e-1],
    [4, 1, -0.78847309559367e-9],
    [4, 2, 0.12790717852285e-7],
    [4, 3, 0.48225372718507e-6],
    [5, 7, 0.22922076337661e-5],
    [6, 3, -0.16714766451061e-10],
    [6, 16, -0.21171472321355e-2],
    [6, 35, -0.23895741934104e2],
    [7, 0, -0.5905956432427e-17],
    [7, 11, -0.12621808899101e-5],
    [7, 25, -0.38946842435739e-1],
    [8, 8, 0.11256211360459e-10],
    [8, 36, -0.82311340897998e1],
    [9, 13, 0.19809712802088e-7],
    [10, 4, 0.10406965210174e-18],
    [10, 10, -0.10234747095929e-12],
    [10, 14, -0.10018179379511e-8],
    [16, 29, -0.80882908646985e-10],
    [16, 50, 0.10693031879409],
    [18, 57, -0.33662250574171],
    [20, 20, 0.89185845355421e-24],
    [20, 35, 0.30629316876232e-12],
    [20, 48, -0.42002467698208e-5],
    [21, 21, -0.59056029685639e-25],
    [22, 53, 0.37826947613457e-5],
    [23, 39, -0.12768608934681e-14],
    [24, 26, 0.73087610595061e-28],
    [24, 40, 0.55414715350778e-16],
    [24, 58, -0.9436970724121e-6],
  ] as const
).map(([I, J, n]) => ({ I, J, n }));

/** Properties of one state of steam, SI. */
export interface Region2State {
  readonly volume: number;
  readonly enthalpy: number;
  readonly entropy: number;
  readonly heatCapacity: number;
  readonly isochoricHeatCapacity: number;
  readonly compressibility: number;
}

/** All properties from the Gibbs energy and its derivatives (Table 12), without a range check. */
function evaluateRegion2(T: number, p: number): Region2State {
  const pi = p / P_STAR;
  const tau = T_STAR / T;
  let gamma = Math.log(pi);
  let byTau = 0;
  let byTauTau = 0;
  for (const { J, n } of IDEAL_TERMS) {
    const term = n * tau ** J;
    gamma += term;
    byTau += J * term;
    byTauTau += J * (J - 1) * term;
  }
  byTau /= tau;
  byTauTau /= tau * tau;
  const b = tau - 0.5;
  let residual = 0;
  let residualByTau = 0;
  let residualByTauTau = 0;
  // Times π, π² and π of the derivatives by π, π twice, and π and τ.
  let piByPi = 0;
  let piByPiPi = 0;
  let piByPiTau = 0;
  for (const { I, J, n } of RESIDUAL_TERMS) {
    const term = n * pi ** I * b ** J;
    residual += term;
    piByPi += I * term;
    piByPiPi += I * (I - 1) * term;
    residualByTau += J * term;
    residualByTauTau += J * (J - 1) * term;
    piByPiTau += I * J * term;
  }
  byTau += residualByTau / b;
  byTauTau += residualByTauTau / (b * b);
  const mixed = 1 + piByPi - (tau * piByPiTau) / b;
  const heatCapacity = -R * tau * tau * byTauTau;
  return {
    volume: ((R * T) / p) * (1 + piByPi),
    enthalpy: R * T_STAR * byTau,
    entropy: R * (tau * byTau - gamma - residual),
    heatCapacity,
    isochoricHeatCapacity: heatCapacity - (R * mixed * mixed) / (1 - piByPiPi),
    compressibility: (1 - piByPiPi) / (1 + piByPi) / p,
  };
}

/** Pressure on the boundary between regions 2 and 3, Pa. T in K, 623.15–863.15. IAPWS R7-97(2012) equation 5. */
export const boundary23Pressure = (T: number): number =>
  1e6 * (0.34805185628969e3 + T * (-0.11671859879975e1 + T * 0.10192970039326e-2));

/** Highest pressure of region 2 at a temperature, Pa. */
function highestPressure(T: number): number {
  if (T <= 623.15) return saturationPressureUnchecked(T);
  return T <= 863.15 ? boundary23Pressure(T) : REGION_2_MAX_PRESSURE;
}

function requireRegion2(quantity: string, T: number, p: number): void {
  requireWithin(quantity, 'temperature', T, 'K', REGION_2_MIN_TEMPERATURE, REGION_2_MAX_TEMPERATURE);
  const highest = highestPressure(T);
  if (p > highest && p <= highest * (1 + METASTABLE_SHARE)) return;
  requireWithin(quantity, 'pressure', p, 'Pa', LEAST_PRESSURE, highest);
}

/**
 * Properties of steam: volume m³/kg, enthalpy J/kg, entropy and heat capacities J/(kg K), compressibility
 * −(∂v/∂p)_T/v 1/Pa.
 * @param T temperature, K, 273.15–1073.15.
 * @param p pressure, Pa, from 0.001 to saturation, to the region 3 boundary or to 100e6, whichever is met first.
 * @throws RangeError outside. Source: IAPWS R7-97(2012) equations 15 to 17, Table 12.
 */
export function region2State(T: number, p: number): Region2State {
  requireRegion2('steam state', T, p);
  return evaluateRegion2(T, p);
}

/** Specific volume of steam: entry `region-2-volume`. */
export function region2Volume(T: number, p: number): number {
  requireRegion2('steam volume', T, p);
  return evaluateRegion2(T, p).volume;
}

/** Specific enthalpy of steam: entry `region-2-enthalpy`. */
export function region2Enthalpy(T: number, p: number): number {
  requireRegion2('steam enthalpy', T, p);
  return evaluateRegion2(T, p).enthalpy;
}

/** Specific entropy of steam: entry `region-2-entropy`. */
export function region2Entropy(T: number, p: number): number {
  requireRegion2('steam entropy', T, p);
  return evaluateRegion2(T, p).entropy;
}

/** Isobaric heat capacity of steam: entry `region-2-heat-capacity`. */
export function region2HeatCapacity(T: number, p: number): number {
  requireRegion2('steam heat capacity', T, p);
  return evaluateRegion2(T, p).heatCapacity;
}

export const region2Correlations: readonly Correlation[] = regionCorrelations({
  region: 2,
  fluid: 'steam',
  temperature: [REGION_2_MIN_TEMPERATURE, REGION_2_MAX_TEMPERATURE],
  pressure: [LEAST_PRESSURE, REGION_2_MAX_PRESSURE],
  gibbs:
    '\\gamma(\\pi,\\tau)=\\ln\\pi+\\sum_{i=1}^{9}n_i^{\\mathrm o}\\tau^{J_i^{\\mathrm o}}+\\sum_{i=1}^{43}n_i\\pi^{I_i}(\\tau-0.5)^{J_i},\\ \\pi=\\tfrac{p}{1\\,\\mathrm{MPa}},\\ \\tau=\\tfrac{540\\,\\mathrm{K}}{T}',
  source: 'IAPWS R7-97(2012), region 2, equations 15 to 17 and Table 12',
  volume: region2Volume,
  enthalpy: region2Enthalpy,
  entropy: region2Entropy,
  heatCapacity: region2HeatCapacity,
});
