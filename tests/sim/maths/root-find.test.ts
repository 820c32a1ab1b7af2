import { describe, expect, it } from 'vitest';
import { confirmSmallest, largestPassing, smallestPassing } from '../../../sim/maths/root-find.ts';

const limits = { low: 0.05, high: 100, closeness: 0.985 } as const;

describe('the smallest value that passes', () => {
  it.each([0.06, 0.7, 1.3, 8, 99])('is bracketed within the closeness asked for: %d', (boundary) => {
    for (const start of [0.05, 1, 100]) {
      const { passing, failing } = smallestPassing((value) => ({ passes: value >= boundary }), { ...limits, start });
      expect(passing).toBeGreaterThanOrEqual(boundary);
      expect(failing).toBeLessThan(boundary);
      expect((failing as number) / (passing as number)).toBeGreaterThanOrEqual(0.985);
    }
  });

  it('takes few trials where passing trials hint at the boundary, and does not trust a hint that fails', () => {
    const honest = smallestPassing((value) => ({ passes: value >= 1.3, hint: 1.3 }), { ...limits, start: 3 });
    expect(honest.passing).toBeCloseTo(1.3, 1);
    expect(honest.trials).toBeLessThanOrEqual(3);
    const low = smallestPassing((value) => ({ passes: value >= 1.3, hint: 0.2 }), { ...limits, start: 3 });
    expect(low.passing).toBeGreaterThanOrEqual(1.3);
    expect((low.failing as number) / (low.passing as number)).toBeGreaterThanOrEqual(0.985);
  });

  it('is null where nothing passes, and the lower limit where everything does', () => {
    expect(smallestPassing(() => ({ passes: false }), { ...limits, start: 1 })).toMatchObject({
      passing: null,
      failing: 100,
    });
    expect(smallestPassing(() => ({ passes: true }), { ...limits, start: 1 })).toMatchObject({
      passing: 0.05,
      failing: null,
    });
  });

  it('gives up at once where a trial says that no value will pass', () => {
    expect(smallestPassing(() => ({ passes: false, hopeless: true }), { ...limits, start: 1 })).toEqual({
      passing: null,
      failing: 1,
      trials: 1,
    });
  });

  it('ends after a bounded number of trials whatever it is told', () => {
    let turn = false;
    expect(
      smallestPassing(() => ({ passes: (turn = !turn), hint: Number.NaN }), { ...limits, start: 1 }).trials,
    ).toBeLessThanOrEqual(60);
  });
});

describe('the largest value that passes', () => {
  it.each([0.03, 0.4, 0.97])('is bracketed within the closeness asked for: %d', (boundary) => {
    const { passing, failing } = largestPassing((value) => ({ passes: value <= boundary }), {
      low: 0.02,
      high: 1,
      start: 1,
      closeness: 0.99,
    });
    expect(passing).toBeLessThanOrEqual(boundary);
    expect(failing).toBeGreaterThan(boundary);
    expect((passing as number) / (failing as number)).toBeGreaterThanOrEqual(0.99 - 1e-12);
  });

  it('is the upper limit where everything passes', () => {
    expect(largestPassing(() => ({ passes: true }), { low: 0.02, high: 1, start: 1, closeness: 0.99 })).toEqual({
      passing: 1,
      failing: null,
      trials: 1,
    });
  });
});

describe('a coarse boundary, confirmed', () => {
  it.each([0.9, 0.99, 1, 1.02, 1.2])(
    'passes where it is set and fails at 97 % of it, wherever the finer boundary lies: %d',
    (boundary) => {
      const settled = confirmSmallest((value) => value >= boundary, 1, 0.05, 100) as number;
      expect(settled).toBeGreaterThanOrEqual(boundary);
      expect(0.97 * settled).toBeLessThan(boundary);
    },
  );

  it('does so on a ragged boundary too', () => {
    const settled = confirmSmallest(
      (value) => value >= 0.9 && Math.floor(400 * value) % 3 !== 0,
      1,
      0.05,
      100,
    ) as number;
    expect(Math.floor(400 * settled) % 3).not.toBe(0);
    expect(0.97 * settled < 0.9 || Math.floor(400 * 0.97 * settled) % 3 === 0).toBe(true);
  });

  it('is null where nothing up to the limit passes, and goes no lower than the limit', () => {
    expect(confirmSmallest(() => false, 99, 0.05, 100)).toBe(null);
    expect(confirmSmallest(() => true, 0.051, 0.05, 100)).toBe(0.05);
  });
});
