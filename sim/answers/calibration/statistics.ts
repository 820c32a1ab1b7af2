/** The little statistics that a fit needs: quantiles of Student's t and the spread of a few parameters. */
import { bisectedRoot } from '../../maths/bisect.ts';

/**
 * Share of Student's t distribution with ν degrees of freedom between −t and t, by the finite series of Abramowitz
 * and Stegun 26.7.3 and 26.7.4 (from memory). @param theta arctan(t/√ν), rad
 */
function shareWithin(theta: number, nu: number): number {
  const cos2 = Math.cos(theta) ** 2;
  const even = nu % 2 === 0;
  let term = even ? 1 : Math.cos(theta);
  let sum = nu > 1 ? term : 0;
  for (let k = even ? 2 : 3; k < nu; k += 2) {
    term *= (cos2 * (k - 1)) / k;
    sum += term;
  }
  return even ? Math.sin(theta) * sum : (2 / Math.PI) * (theta + Math.sin(theta) * sum);
}

/**
 * Half width t of the interval that holds a share of Student's t distribution, by bisection on its angle.
 * @param share 0–1, e.g. 0.9; @param nu degrees of freedom, whole, at least 1
 */
export function studentHalfWidth(share: number, nu: number): number {
  return Math.sqrt(nu) * Math.tan(bisectedRoot((theta) => shareWithin(theta, nu) < share, 0, Math.PI / 2));
}

export type Matrix = readonly (readonly number[])[];

/** Eigenvalues of a small symmetric matrix with their unit vectors, by Jacobi's rotations; smallest first. */
export function symmetricEigen(
  matrix: Matrix,
): readonly { readonly value: number; readonly vector: readonly number[] }[] {
  const n = matrix.length;
  const a = matrix.map((row) => [...row]);
  const v = a.map((_, i) => a.map((_row, j) => (i === j ? 1 : 0)));
  const at = (m: number[][], i: number, j: number): number => m[i]?.[j] ?? 0;
  const rotate = (m: number[][], i: number, j: number, k: number, l: number, c: number, s: number): void => {
    const x = at(m, i, j);
    const y = at(m, k, l);
    (m[i] as number[])[j] = c * x - s * y;
    (m[k] as number[])[l] = s * x + c * y;
  };
  for (let sweep = 0; sweep < 30; sweep++) {
    for (let p = 0; p < n; p++) {
      for (let q = p + 1; q < n; q++) {
        if (at(a, p, q) === 0) continue;
        const tau = (at(a, q, q) - at(a, p, p)) / (2 * at(a, p, q));
        const t = (tau >= 0 ? 1 : -1) / (Math.abs(tau) + Math.sqrt(1 + tau * tau));
        const c = 1 / Math.sqrt(1 + t * t);
        for (let k = 0; k < n; k++) rotate(a, k, p, k, q, c, t * c);
        for (let k = 0; k < n; k++) rotate(a, p, k, q, k, c, t * c);
        for (let k = 0; k < n; k++) rotate(v, k, p, k, q, c, t * c);
      }
    }
  }
  return a
    .map((_, i) => ({ value: at(a, i, i), vector: v.map((row) => row[i] ?? 0) }))
    .sort((x, y) => x.value - y.value);
}

export interface Spread {
  /** Inverse of the normal matrix. */
  readonly covariance: Matrix;
  readonly correlation: Matrix;
  /** Ratio of the largest to the smallest eigenvalue of the normal matrix scaled to a unit diagonal. */
  readonly condition: number;
}

/** Smallest eigenvalue, of the scaled matrix, that still counts: below it a direction is taken as free. */
const LEAST_EIGENVALUE = 1e-12;

/** Covariance and correlation of least-squares parameters from their normal matrix JᵀJ (unit weights). */
export function spreadOf(normal: Matrix): Spread {
  const scale = normal.map((row, i) => Math.sqrt(Math.max(row[i] ?? 0, Number.MIN_VALUE)));
  const eigen = symmetricEigen(
    normal.map((row, i) => row.map((value, j) => value / ((scale[i] ?? 1) * (scale[j] ?? 1)))),
  );
  const least = Math.max(LEAST_EIGENVALUE, eigen[0]?.value ?? 1);
  const covariance = normal.map((row, i) =>
    row.map(
      (_, j) =>
        eigen.reduce(
          (sum, { value, vector }) => sum + ((vector[i] ?? 0) * (vector[j] ?? 0)) / Math.max(LEAST_EIGENVALUE, value),
          0,
        ) /
        ((scale[i] ?? 1) * (scale[j] ?? 1)),
    ),
  );
  const deviation = covariance.map((row, i) => Math.sqrt(row[i] ?? 0));
  return {
    covariance,
    correlation: covariance.map((row, i) =>
      row.map((value, j) => (i === j ? 1 : value / ((deviation[i] ?? 1) * (deviation[j] ?? 1)))),
    ),
    condition: (eigen[eigen.length - 1]?.value ?? 1) / least,
  };
}
