import { correlation, type Argument, type Correlation } from '../correlation.ts';
import { normalShareBelow } from '../maths/error-function.ts';

/**
 * Log-normal drop sizes by volume, and the share of the oil that a separator keeps of them. Sizes of oil drops in
 * condensate have not been measured in the sources read: median and spread are assumptions.
 */

/** Share of the oil in drops smaller than a size: entry `share-below-size`. */
export const shareBelowSize = (d: number, median: number, spread: number): number => {
  const sigma = Math.log(spread);
  if (!(d > 0)) return 0;
  if (!(sigma > 0)) return d > median ? 1 : d === median ? 0.5 : 0;
  return normalShareBelow(Math.log(d / median) / sigma);
};

/**
 * Share of the oil that an ideal separator keeps: entry `captured-share`. Drops above the cut are kept whole, smaller
 * ones in the proportion (d/d_c)², as Hazen with Stokes has it.
 */
export const capturedShare = (cut: number, median: number, spread: number): number => {
  if (!(cut > 0)) return 1;
  const sigma = Math.log(spread);
  if (!(sigma > 0)) {
    const single = median / cut;
    return Math.min(1, single * single);
  }
  const z = Math.log(cut / median) / sigma;
  // Past 38 standard deviations the lower tail is zero and the exponential would overflow.
  if (z < -38) return 1;
  return normalShareBelow(-z) + Math.exp(2 * sigma * (sigma - z)) * normalShareBelow(z - 2 * sigma);
};

const medianSize: Argument = { unit: 'm', says: 'median size by volume' };
const spreadOf: Argument = { unit: '1', says: 'geometric standard deviation, at least 1', range: [1, 5] };

export const dropSizeCorrelations: readonly Correlation[] = [
  correlation({
    name: 'share-below-size',
    says: 'Share of the oil that is in drops smaller than a size.',
    arguments: { d: { unit: 'm', says: 'size of a drop' }, median: medianSize, spread: spreadOf },
    result: { symbol: 'F', unit: '1' },
    tex: 'F = \\Phi\\left[\\frac{\\ln(d/d_{50})}{\\ln\\sigma_g}\\right]',
    source: 'log-normal distribution by volume',
    outside: 'between 0 and 1 for any sizes; a spread of 1 puts all drops at the median',
    compute: shareBelowSize,
  }),
  correlation({
    name: 'captured-share',
    says: 'Share of the oil that an ideal separator keeps when the drops are log-normal in size.',
    arguments: { cut: { unit: 'm', says: 'cut size' }, median: medianSize, spread: spreadOf },
    result: { symbol: '\\eta', unit: '1' },
    tex: '\\eta = \\Phi(-z)+e^{2\\sigma^2-2\\sigma z}\\,\\Phi(z-2\\sigma),\\quad z=\\frac{\\ln(d_c/d_{50})}{\\sigma},\\ \\sigma=\\ln\\sigma_g',
    source: 'log-normal partial moments; Hazen capture with Stokes velocities',
    outside: 'between 0 and 1 for any sizes; a spread of 1 gives min[1, (d_50/d_c)²]',
    compute: capturedShare,
  }),
];
