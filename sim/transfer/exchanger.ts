import { type Argument, type Correlation, positionalCorrelation } from '../correlation.ts';

/** Heat exchangers by effectiveness and number of transfer units, and by the log-mean temperature difference. */

/**
 * Effectiveness when one side condenses or boils (C_r = 0), pure number: 1 − e^(−NTU), without loss of figures at
 * small NTU. Exact. Source: see the entry.
 */
export const effectivenessCondenser = (NTU: number): number => -Math.expm1(-NTU);

/**
 * Effectiveness in counterflow, pure number: [1 − e^(−N(1 − C))] / [1 − C e^(−N(1 − C))]; N/(1 + N) in the limit
 * C = 1, reached smoothly.
 * @param NTU U A/C_min; @param C_r C_min/C_max, 0–1. Exact. Source: see the entry.
 */
export const effectivenessCounterflow = (NTU: number, C_r: number): number => {
  const spare = 1 - C_r;
  if (spare === 0) return NTU / (1 + NTU);
  const gained = -Math.expm1(-NTU * spare);
  return gained / (spare + C_r * gained);
};

/**
 * Effectiveness in parallel flow, pure number: [1 − e^(−N(1 + C))] / (1 + C). Arguments as
 * `effectivenessCounterflow`. Exact. Source: see the entry.
 */
export const effectivenessParallel = (NTU: number, C_r: number): number => -Math.expm1(-NTU * (1 + C_r)) / (1 + C_r);

/**
 * Effectiveness in cross flow with the larger capacity stream mixed, the smaller unmixed, pure number:
 * {1 − exp[−C (1 − e^(−N))]} / C; the condenser's value in the limit C = 0. Arguments as
 * `effectivenessCounterflow`. Exact. Source: see the entry.
 */
export const effectivenessCrossMaxMixed = (NTU: number, C_r: number): number => {
  const single = -Math.expm1(-NTU);
  return C_r === 0 ? single : -Math.expm1(-C_r * single) / C_r;
};

/** Effectiveness from temperatures, pure number: change of the stream that changes most over the inlet difference. */
export const effectivenessFromTemperatures = (T_hi: number, T_ho: number, T_ci: number, T_co: number): number =>
  T_hi === T_ci ? 0 : Math.max(Math.abs(T_hi - T_ho), Math.abs(T_co - T_ci)) / Math.abs(T_hi - T_ci);

/** Capacity ratio from temperatures, pure number: the smaller change over the larger; 0 when nothing changes. */
export const capacityRatioFromTemperatures = (T_hi: number, T_ho: number, T_ci: number, T_co: number): number => {
  const hot = Math.abs(T_hi - T_ho);
  const cold = Math.abs(T_co - T_ci);
  const most = Math.max(hot, cold);
  return most === 0 ? 0 : Math.min(hot, cold) / most;
};

/**
 * Logarithmic mean of the temperature differences at the two ends, K: (a − b)/ln(a/b). Equal ends give their value;
 * near it ln is taken as log1p, so that no figures are lost. A zero or reversed end gives 0: such an exchanger would
 * need an endless area.
 */
export const logMeanDifference = (a: number, b: number): number => {
  if (!(a > 0) || !(b > 0)) return 0;
  const relative = (a - b) / b;
  return relative === 0 ? a : (a - b) / Math.log1p(relative);
};

/** Log-mean difference in counterflow, K, from the four end temperatures, K or °C alike. */
export const logMeanCounterflow = (T_hi: number, T_ho: number, T_ci: number, T_co: number): number =>
  logMeanDifference(T_hi - T_co, T_ho - T_ci);

/** Log-mean difference in parallel flow, K, from the four end temperatures, K or °C alike. */
export const logMeanParallel = (T_hi: number, T_ho: number, T_ci: number, T_co: number): number =>
  logMeanDifference(T_hi - T_ci, T_ho - T_co);

/**
 * Mean coefficient from a tube at constant wall temperature, W/m²K: C/(π D L) ln[(T_w − T_in)/(T_w − T_out)].
 * @param C flow's heat capacity rate m c_p, W/K; @param D bore, m; @param L length, m; temperatures in K or °C alike
 * The outlet at or past the wall temperature would need an endless coefficient; it gives 0.
 */
export const coefficientFromOutlet = (
  C: number,
  T_in: number,
  T_out: number,
  T_w: number,
  D: number,
  L: number,
): number => {
  const ratio = (T_w - T_in) / (T_w - T_out);
  return ratio > 0 && Number.isFinite(ratio) ? (C * Math.log(ratio)) / (Math.PI * D * L) : 0;
};

const units: Argument = { unit: '1', says: 'number of transfer units U A / C_min' };
const ratio: Argument = { unit: '1', says: 'smaller over larger heat capacity rate', range: [0, 1] };
const ends: Readonly<Record<string, Argument>> = {
  T_hi: { unit: 'K', says: 'hot stream entering' },
  T_ho: { unit: 'K', says: 'hot stream leaving' },
  T_ci: { unit: 'K', says: 'cold stream entering' },
  T_co: { unit: 'K', says: 'cold stream leaving' },
};
const effectiveness = { symbol: '\\varepsilon', unit: '1' };
const logMean = { symbol: '\\Delta T_{lm}', unit: 'K' };
const source = 'Kays and London, Compact Heat Exchangers; Incropera et al. 6e Table 11.3';
const outside = 'exact for constant U and heat capacities';

export const exchangerCorrelations: readonly Correlation[] = [
  positionalCorrelation(
    {
      name: 'effectiveness-condenser',
      says: 'Share of the possible heat exchanged when one side condenses.',
      arguments: { NTU: units },
      result: effectiveness,
      tex: '\\varepsilon = 1-e^{-NTU}',
      source,
      outside,
    },
    effectivenessCondenser,
  ),
  positionalCorrelation(
    {
      name: 'effectiveness-counterflow',
      says: 'Share of the possible heat exchanged in counterflow.',
      arguments: { NTU: units, C_r: ratio },
      result: effectiveness,
      tex: '\\varepsilon = \\frac{1-e^{-NTU(1-C_r)}}{1-C_re^{-NTU(1-C_r)}}',
      source,
      outside,
    },
    effectivenessCounterflow,
  ),
  positionalCorrelation(
    {
      name: 'effectiveness-parallel',
      says: 'Share of the possible heat exchanged in parallel flow.',
      arguments: { NTU: units, C_r: ratio },
      result: effectiveness,
      tex: '\\varepsilon = \\frac{1-e^{-NTU(1+C_r)}}{1+C_r}',
      source,
      outside,
    },
    effectivenessParallel,
  ),
  positionalCorrelation(
    {
      name: 'effectiveness-cross-max-mixed',
      says: 'Share of the possible heat exchanged in cross flow, larger stream mixed.',
      arguments: { NTU: units, C_r: ratio },
      result: effectiveness,
      tex: '\\varepsilon = \\frac{1}{C_r}\\left\\{1-\\exp\\left[-C_r(1-e^{-NTU})\\right]\\right\\}',
      source,
      outside,
    },
    effectivenessCrossMaxMixed,
  ),
  positionalCorrelation(
    {
      name: 'effectiveness-from-temperatures',
      says: 'Share of the possible heat exchanged, from the four end temperatures.',
      arguments: ends,
      result: effectiveness,
      tex: '\\varepsilon = \\frac{\\max(T_{hi}-T_{ho},\\,T_{co}-T_{ci})}{T_{hi}-T_{ci}}',
      source,
      outside,
    },
    effectivenessFromTemperatures,
  ),
  positionalCorrelation(
    {
      name: 'capacity-ratio-from-temperatures',
      says: 'Smaller over larger heat capacity rate, from the four end temperatures.',
      arguments: ends,
      result: { symbol: 'C_r', unit: '1' },
      tex: 'C_r = \\frac{\\min(T_{hi}-T_{ho},\\,T_{co}-T_{ci})}{\\max(T_{hi}-T_{ho},\\,T_{co}-T_{ci})}',
      source,
      outside,
    },
    capacityRatioFromTemperatures,
  ),
  positionalCorrelation(
    {
      name: 'log-mean-counterflow',
      says: 'Log-mean temperature difference in counterflow.',
      arguments: ends,
      result: logMean,
      tex: '\\Delta T_{lm} = \\frac{(T_{hi}-T_{co})-(T_{ho}-T_{ci})}{\\ln\\dfrac{T_{hi}-T_{co}}{T_{ho}-T_{ci}}}',
      source,
      outside: 'zero when an end difference is not positive',
    },
    logMeanCounterflow,
  ),
  positionalCorrelation(
    {
      name: 'log-mean-parallel',
      says: 'Log-mean temperature difference in parallel flow.',
      arguments: ends,
      result: logMean,
      tex: '\\Delta T_{lm} = \\frac{(T_{hi}-T_{ci})-(T_{ho}-T_{co})}{\\ln\\dfrac{T_{hi}-T_{ci}}{T_{ho}-T_{co}}}',
      source,
      outside: 'zero when an end difference is not positive',
    },
    logMeanParallel,
  ),
  positionalCorrelation(
    {
      name: 'coefficient-from-outlet-temperature',
      says: 'Mean coefficient in a tube at constant wall temperature, from inlet and outlet temperatures.',
      arguments: {
        C: { unit: 'W/K', says: 'heat capacity rate of the flow' },
        T_in: { unit: 'K', says: 'inlet' },
        T_out: { unit: 'K', says: 'outlet' },
        T_w: { unit: 'K', says: 'wall' },
        D: { unit: 'm', says: 'bore' },
        L: { unit: 'm', says: 'length' },
      },
      result: { symbol: '\\bar h', unit: 'W/(m² K)' },
      tex: '\\bar h = \\frac{\\dot m c_p}{\\pi DL}\\ln\\frac{T_w-T_{in}}{T_w-T_{out}}',
      source: 'Incropera et al. 6e eq. 8.41b',
      outside: 'zero when the outlet passes the wall temperature',
    },
    coefficientFromOutlet,
  ),
];
