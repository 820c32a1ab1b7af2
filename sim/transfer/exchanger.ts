import { forReaders, type Argument, type Correlation } from '../correlation.ts';

/** Heat exchangers by effectiveness and number of transfer units, and by the log-mean temperature difference. */

/** Effectiveness when one side condenses or boils: entry `effectiveness-condenser`. */
export const effectivenessCondenser = (NTU: number): number => -Math.expm1(-NTU);

/** Effectiveness in counterflow: entry `effectiveness-counterflow`. Reaches its limit at C_r = 1 smoothly. */
export const effectivenessCounterflow = (NTU: number, C_r: number): number => {
  const spare = 1 - C_r;
  if (spare === 0) return NTU / (1 + NTU);
  const gained = -Math.expm1(-NTU * spare);
  return gained / (spare + C_r * gained);
};

/** Effectiveness in parallel flow: entry `effectiveness-parallel`. */
export const effectivenessParallel = (NTU: number, C_r: number): number => -Math.expm1(-NTU * (1 + C_r)) / (1 + C_r);

/** Effectiveness in cross flow, larger stream mixed: entry `effectiveness-cross-max-mixed`. */
export const effectivenessCrossMaxMixed = (NTU: number, C_r: number): number => {
  const single = -Math.expm1(-NTU);
  return C_r === 0 ? single : -Math.expm1(-C_r * single) / C_r;
};

/** Effectiveness from the end temperatures: entry `effectiveness-from-temperatures`. */
export const effectivenessFromTemperatures = (T_hi: number, T_ho: number, T_ci: number, T_co: number): number =>
  T_hi === T_ci ? 0 : Math.max(Math.abs(T_hi - T_ho), Math.abs(T_co - T_ci)) / Math.abs(T_hi - T_ci);

/** Capacity ratio from the end temperatures: entry `capacity-ratio-from-temperatures`. */
export const capacityRatioFromTemperatures = (T_hi: number, T_ho: number, T_ci: number, T_co: number): number => {
  const hot = Math.abs(T_hi - T_ho);
  const cold = Math.abs(T_co - T_ci);
  const most = Math.max(hot, cold);
  return most === 0 ? 0 : Math.min(hot, cold) / most;
};

/**
 * Logarithmic mean of two temperature differences: entry `log-mean-difference`. Near equal ends ln is taken as log1p,
 * so that no figures are lost.
 */
export const logMeanDifference = (a: number, b: number): number => {
  if (!(a > 0) || !(b > 0)) return 0;
  const relative = (a - b) / b;
  return relative === 0 ? a : (a - b) / Math.log1p(relative);
};

/** Log-mean difference in counterflow: entry `log-mean-counterflow`. */
export const logMeanCounterflow = (T_hi: number, T_ho: number, T_ci: number, T_co: number): number =>
  logMeanDifference(T_hi - T_co, T_ho - T_ci);

/** Log-mean difference in parallel flow: entry `log-mean-parallel`. */
export const logMeanParallel = (T_hi: number, T_ho: number, T_ci: number, T_co: number): number =>
  logMeanDifference(T_hi - T_ci, T_ho - T_co);

/** Mean coefficient in a tube from inlet and outlet: entry `coefficient-from-outlet-temperature`. */
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
  T_hi: { unit: 'K', says: 'temperature of the hot stream entering' },
  T_ho: { unit: 'K', says: 'temperature of the hot stream leaving' },
  T_ci: { unit: 'K', says: 'temperature of the cold stream entering' },
  T_co: { unit: 'K', says: 'temperature of the cold stream leaving' },
};
const effectiveness = { symbol: '\\varepsilon', unit: '1' };
const logMean = { symbol: '\\Delta T_{lm}', unit: 'K', isDifference: true } as const;
const source = 'Kays and London, Compact Heat Exchangers; Incropera et al. 6e Table 11.3';
const outside = 'exact for constant U and heat capacities';

export const exchangerCorrelations: readonly Correlation[] = [
  forReaders({
    name: 'effectiveness-condenser',
    says: 'Share of the possible heat exchanged when one side condenses.',
    arguments: { NTU: units },
    result: effectiveness,
    tex: '\\varepsilon = 1-e^{-NTU}',
    source,
    outside,
    compute: effectivenessCondenser,
  }),
  forReaders({
    name: 'effectiveness-counterflow',
    says: 'Share of the possible heat exchanged in counterflow.',
    arguments: { NTU: units, C_r: ratio },
    result: effectiveness,
    tex: '\\varepsilon = \\frac{1-e^{-NTU(1-C_r)}}{1-C_re^{-NTU(1-C_r)}}',
    source,
    outside,
    compute: effectivenessCounterflow,
  }),
  forReaders({
    name: 'effectiveness-parallel',
    says: 'Share of the possible heat exchanged in parallel flow.',
    arguments: { NTU: units, C_r: ratio },
    result: effectiveness,
    tex: '\\varepsilon = \\frac{1-e^{-NTU(1+C_r)}}{1+C_r}',
    source,
    outside,
    compute: effectivenessParallel,
  }),
  forReaders({
    name: 'effectiveness-cross-max-mixed',
    says: 'Share of the possible heat exchanged in cross flow, larger stream mixed.',
    arguments: { NTU: units, C_r: ratio },
    result: effectiveness,
    tex: '\\varepsilon = \\frac{1}{C_r}\\left\\{1-\\exp\\left[-C_r(1-e^{-NTU})\\right]\\right\\}',
    source,
    outside,
    compute: effectivenessCrossMaxMixed,
  }),
  forReaders({
    name: 'effectiveness-from-temperatures',
    says: 'Share of the possible heat exchanged, from the four end temperatures.',
    arguments: ends,
    result: effectiveness,
    tex: '\\varepsilon = \\frac{\\max(T_{hi}-T_{ho},\\,T_{co}-T_{ci})}{T_{hi}-T_{ci}}',
    source,
    outside,
    compute: effectivenessFromTemperatures,
  }),
  forReaders({
    name: 'capacity-ratio-from-temperatures',
    says: 'Smaller over larger heat capacity rate, from the four end temperatures.',
    arguments: ends,
    result: { symbol: 'C_r', unit: '1' },
    tex: 'C_r = \\frac{\\min(T_{hi}-T_{ho},\\,T_{co}-T_{ci})}{\\max(T_{hi}-T_{ho},\\,T_{co}-T_{ci})}',
    source,
    outside,
    compute: capacityRatioFromTemperatures,
  }),
  forReaders({
    name: 'log-mean-difference',
    says: 'Logarithmic mean of the temperature differences at the two ends.',
    arguments: {
      a: { unit: 'K', says: 'difference at one end', isDifference: true },
      b: { unit: 'K', says: 'difference at the other end', isDifference: true },
    },
    result: logMean,
    tex: '\\Delta T_{lm} = \\frac{a-b}{\\ln(a/b)}',
    source,
    outside: 'zero when an end difference is not positive: such an exchanger would need an endless area',
    compute: logMeanDifference,
  }),
  forReaders({
    name: 'log-mean-counterflow',
    says: 'Log-mean temperature difference in counterflow.',
    arguments: ends,
    result: logMean,
    tex: '\\Delta T_{lm} = \\frac{(T_{hi}-T_{co})-(T_{ho}-T_{ci})}{\\ln\\dfrac{T_{hi}-T_{co}}{T_{ho}-T_{ci}}}',
    source,
    outside: 'zero when an end difference is not positive',
    compute: logMeanCounterflow,
  }),
  forReaders({
    name: 'log-mean-parallel',
    says: 'Log-mean temperature difference in parallel flow.',
    arguments: ends,
    result: logMean,
    tex: '\\Delta T_{lm} = \\frac{(T_{hi}-T_{ci})-(T_{ho}-T_{co})}{\\ln\\dfrac{T_{hi}-T_{ci}}{T_{ho}-T_{co}}}',
    source,
    outside: 'zero when an end difference is not positive',
    compute: logMeanParallel,
  }),
  forReaders({
    name: 'coefficient-from-outlet-temperature',
    says: 'Mean coefficient in a tube at constant wall temperature, from inlet and outlet temperatures.',
    arguments: {
      C: { unit: 'W/K', says: 'heat capacity rate of the flow' },
      T_in: { unit: 'K', says: 'temperature at the inlet' },
      T_out: { unit: 'K', says: 'temperature at the outlet' },
      T_w: { unit: 'K', says: 'temperature of the wall' },
      D: { unit: 'm', says: 'bore of the tube' },
      L: { unit: 'm', says: 'length of the tube' },
    },
    result: { symbol: '\\bar h', unit: 'W/(m² K)' },
    tex: '\\bar h = \\frac{\\dot m c_p}{\\pi DL}\\ln\\frac{T_w-T_{in}}{T_w-T_{out}}',
    source: 'Incropera et al. 6e eq. 8.41b',
    outside: 'zero when the outlet passes the wall temperature, which would need an endless coefficient',
    compute: coefficientFromOutlet,
  }),
];
