import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares, normalMatrix, slopesOf, solveSymmetric } from '../../../sim/maths/least-squares.ts';

const tight = { slopeStep: 1e-5, leastGain: 0, leastMove: 1e-12, mostSteps: 500 };

describe('a symmetric system', () => {
  it('of two is solved as by hand', () => {
    const [x, y] = solveSymmetric(
      [
        [4, 2],
        [2, 3],
      ],
      [2, 5],
    );
    expect([x, y]).toEqual([expect.closeTo(-0.5, 14), expect.closeTo(2, 14)]);
  });

  it('gives back what was put in, whatever the slopes', () => {
    const row = fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 4 }), (slopes) => {
        const matrix = normalMatrix(slopes).map((line, i) => line.map((value, j) => (i === j ? value + 1 : value)));
        const wanted = slopes.map((_, i) => i - 1.5);
        const right = matrix.map((line) => line.reduce((sum, value, j) => sum + value * (wanted[j] as number), 0));
        solveSymmetric(matrix, right).forEach((value, i) => expect(value).toBeCloseTo(wanted[i] as number, 7));
      }),
    );
  });
});

describe('least squares', () => {
  const xs = [0, 1, 2, 3, 4];

  it('of a straight line are those of the closed formula', () => {
    const targets = [1.1, 2.9, 5.2, 6.8, 9.1];
    const slope = targets.reduce((sum, y, k) => sum + ((xs[k] as number) - 2) * y, 0) / 10;
    const mean = targets.reduce((sum, y) => sum + y, 0) / 5;
    const fit = leastSquares(([a, b]) => xs.map((x) => (a as number) + (b as number) * x), targets, {
      ...tight,
      start: [0, 0],
      least: [-10, -10],
      most: [10, 10],
    });
    expect(fit.parameters).toEqual([expect.closeTo(mean - 2 * slope, 8), expect.closeTo(slope, 8)]);
    expect(fit.converged).toBe(true);
  });

  const decay = ([size, rate]: readonly number[]) => xs.map((x) => (size as number) * Math.exp(-(rate as number) * x));

  it('find the numbers behind a curved law', () => {
    const fit = leastSquares(decay, decay([3, 0.7]), { ...tight, start: [1, 0.1], least: [0, 0], most: [10, 5] });
    expect(fit.parameters).toEqual([expect.closeTo(3, 8), expect.closeTo(0.7, 8)]);
    expect(fit.squares).toBeLessThan(1e-16);
  });

  it('stay within their bounds, and fit the rest as well as they can', () => {
    const fit = leastSquares(decay, decay([3, 0.7]), { ...tight, start: [1, 0.1], least: [0, 0], most: [10, 0.5] });
    const best = decay([1, 0.5]);
    const size = decay([3, 0.7]).reduce((sum, y, k) => sum + y * (best[k] as number), 0) / normalMatrix([best])[0]![0]!;
    expect(fit.parameters[1]).toBe(0.5);
    expect(fit.parameters[0]).toBeCloseTo(size, 6);
  });

  it('say when the steps did not suffice', () => {
    const hurried = { ...tight, mostSteps: 2, start: [1, 0.1], least: [0, 0], most: [10, 5] };
    expect(leastSquares(decay, decay([3, 0.7]), hurried).converged).toBe(false);
  });
});

it('slopes are those of the predictions, a row a parameter', () => {
  const slopes = slopesOf(([a, b]) => [(a as number) ** 2, (a as number) * (b as number)], [3, 2], 1e-4);
  expect(slopes[0]).toEqual([expect.closeTo(6, 6), expect.closeTo(2, 6)]);
  expect(slopes[1]).toEqual([expect.closeTo(0, 6), expect.closeTo(3, 6)]);
});
