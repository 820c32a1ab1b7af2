import { correlation, type Argument, type Correlation } from '../correlation.ts';

/**
 * Error function and its complement by Cody's rational Chebyshev approximations (Math. Comp. 23 (1969) 631–637),
 * relative error below 10⁻¹⁵ against tabulated values. They serve the log-normal drop sizes.
 */

const ratio = (numerator: readonly number[], denominator: readonly number[], x: number): number => {
  let top = 0;
  for (const coefficient of numerator) top = top * x + coefficient;
  let bottom = 1;
  for (const coefficient of denominator) bottom = bottom * x + coefficient;
  return top / bottom;
};

const NEAR_TOP = [0.18577770618460315, 3.1611237438705655, 113.86415415105016, 377.485237685302, 3209.3775891384694];
const NEAR_BOTTOM = [23.601290952344122, 244.02463793444417, 1282.6165260773723, 2844.236833439171];

const MIDDLE_TOP = [
  2.1531153547440383e-8, 0.5641884969886701, 8.883149794388377, 66.11919063714163, 298.6351381974001, 881.952221241769,
  1712.0476126340707, 2051.0783778260716, 1230.3393547979972,
];
const MIDDLE_BOTTOM = [
  15.744926110709835, 117.6939508913125, 537.1811018620099, 1621.3895745666903, 3290.7992357334597, 4362.619090143247,
  3439.3676741437216, 1230.3393548037495,
];

const FAR_TOP = [
  0.016315387137302097, 0.30532663496123236, 0.36034489994980445, 0.12578172611122926, 0.016083785148742275,
  0.0006587491615298378,
];
const FAR_BOTTOM = [
  2.568520192289822, 1.8729528499234673, 0.5279051029514285, 0.06051834131244132, 0.0023352049762686918,
];

/** e^(−y²) with y² split, so that the rounding of the square does not grow in the exponential. */
const gaussian = (y: number): number => {
  const coarse = Math.trunc(y * 16) / 16;
  return Math.exp(-coarse * coarse) * Math.exp(-(y - coarse) * (y + coarse));
};

/** erfc(y) for y > 0.46875. */
const complementBeyondNear = (y: number): number => {
  if (y <= 4) return gaussian(y) * ratio(MIDDLE_TOP, MIDDLE_BOTTOM, y);
  if (y > 27.3) return 0;
  const inverse = 1 / (y * y);
  const tail = inverse * ratio(FAR_TOP, FAR_BOTTOM, inverse);
  return (gaussian(y) * (1 / Math.sqrt(Math.PI) - tail)) / y;
};

const NEAR = 0.46875;

/** Error function: entry `error-function`. */
export const erf = (x: number): number => {
  const y = Math.abs(x);
  if (y <= NEAR) return x * ratio(NEAR_TOP, NEAR_BOTTOM, y * y);
  return Math.sign(x) * (1 - complementBeyondNear(y));
};

/** Its complement: entry `complementary-error-function`. */
export const erfc = (x: number): number => {
  if (Math.abs(x) <= NEAR) return 1 - erf(x);
  return x > 0 ? complementBeyondNear(x) : 2 - complementBeyondNear(-x);
};

/** Share of a standard normal distribution below a value: entry `normal-share-below`. */
export const normalShareBelow = (z: number): number => 0.5 * erfc(-z * Math.SQRT1_2);

const pure: Argument = { unit: '1', says: 'any number' };

export const errorFunctionCorrelations: readonly Correlation[] = [
  correlation({
    name: 'error-function',
    says: 'Error function.',
    arguments: { x: pure },
    result: { symbol: '\\operatorname{erf}x', unit: '1' },
    tex: '\\operatorname{erf}x = \\frac{2}{\\sqrt\\pi}\\int_0^xe^{-t^2}dt',
    source: 'Cody, Math. Comp. 23 (1969) 631–637',
    outside: 'any argument',
    compute: erf,
  }),
  correlation({
    name: 'complementary-error-function',
    says: 'One less the error function, accurate in the tail.',
    arguments: { x: pure },
    result: { symbol: '\\operatorname{erfc}x', unit: '1' },
    tex: '\\operatorname{erfc}x = 1-\\operatorname{erf}x',
    source: 'Cody, Math. Comp. 23 (1969) 631–637',
    outside: 'any argument',
    compute: erfc,
  }),
  correlation({
    name: 'normal-share-below',
    says: 'Share of a standard normal distribution below a value.',
    arguments: { z: pure },
    result: { symbol: '\\Phi', unit: '1' },
    tex: '\\Phi(z) = \\tfrac12\\operatorname{erfc}\\left(-z/\\sqrt2\\right)',
    source: 'definition, with Cody’s error function',
    outside: 'any argument',
    compute: normalShareBelow,
  }),
];
