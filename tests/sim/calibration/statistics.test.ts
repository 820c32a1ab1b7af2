import { describe, expect, it } from 'vitest';
import { spreadOf, studentHalfWidth, symmetricEigen } from '../../../sim/answers/calibration/statistics.ts';

describe('Student’s t', () => {
  // Any table of the distribution: two-sided 90 % and 95 %.
  it.each([
    [1, 6.3138, 12.7062],
    [2, 2.92, 4.3027],
    [3, 2.3534, 3.1824],
    [5, 2.015, 2.5706],
    [10, 1.8125, 2.2281],
    [30, 1.6973, 2.0423],
    [120, 1.6577, 1.9799],
  ])('prints the table for %s degrees of freedom', (nu, ninety, ninetyFive) => {
    expect(studentHalfWidth(0.9, nu)).toBeCloseTo(ninety, 4);
    expect(studentHalfWidth(0.95, nu)).toBeCloseTo(ninetyFive, 4);
  });
});

describe('the spread of parameters', () => {
  it('has the eigenvalues 2 − √2, 2 and 2 + √2 for the second-difference matrix with 1 beside 2', () => {
    const eigen = symmetricEigen([
      [2, 1, 0],
      [1, 2, 1],
      [0, 1, 2],
    ]);
    expect(eigen.map(({ value }) => value)).toEqual(
      [2 - Math.SQRT2, 2, 2 + Math.SQRT2].map((value) => expect.closeTo(value, 12) as number),
    );
    for (const { vector } of eigen) expect(Math.hypot(...vector)).toBeCloseTo(1, 12);
  });

  it('is the inverse of the normal matrix', () => {
    const { covariance, correlation } = spreadOf([
      [4, 2],
      [2, 3],
    ]);
    expect(covariance.flat()).toEqual([0.375, -0.25, -0.25, 0.5].map((value) => expect.closeTo(value, 12) as number));
    expect(correlation[0]?.[1]).toBeCloseTo(-0.25 / Math.sqrt(0.375 * 0.5), 12);
    expect(correlation[0]?.[0]).toBe(1);
  });

  it('does not depend on the parameters’ units', () => {
    expect(
      spreadOf([
        [4e12, 2e3],
        [2e3, 3e-6],
      ]).condition,
    ).toBeCloseTo(
      spreadOf([
        [4, 2],
        [2, 3],
      ]).condition,
      9,
    );
  });

  it('stays finite and tells when two parameters do the same', () => {
    const { covariance, correlation, condition } = spreadOf([
      [1, 1],
      [1, 1],
    ]);
    expect(condition).toBeGreaterThan(1e10);
    expect(correlation[0]?.[1]).toBeCloseTo(-1, 9);
    expect(covariance.flat().every(Number.isFinite)).toBe(true);
  });
});
