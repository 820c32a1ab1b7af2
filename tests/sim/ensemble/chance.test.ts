import { describe, expect, it } from 'vitest';
import { latinHypercube, normalScore, Xoshiro128 } from '../../../sim/answers/ensemble/random.ts';
import { normalShareBelow } from '../../../sim/maths/error-function.ts';

describe('the generator', () => {
  it('gives the words of the authors’ reference program from the states 0, 1, 2, 3 and four arbitrary words', () => {
    const small = new Xoshiro128([0, 1, 2, 3]);
    expect(Array.from({ length: 13 }, () => small.word())).toEqual([
      5760, 17280, 2966400, 32451840, 2604340873, 3891234569, 1254043636, 216095511, 3291724652, 2070429911, 3403762308,
      371730125, 2871333640,
    ]);
    const large = new Xoshiro128([0x964d4a0c, 0xd40ab895, 0xad7fdecb, 0x3006f0f0]);
    expect(Array.from({ length: 4 }, () => large.word())).toEqual([0xf1391922, 0x6fe53806, 0xa5be2840, 0xf510ee70]);
  });

  it('gives other numbers for other seeds and the same for the same', () => {
    const first = (seed: number) => Xoshiro128.fromSeed(seed).word();
    expect(first(1)).toBe(first(1));
    expect(new Set([0, 1, 2, 3, -1, 1e9].map(first)).size).toBe(6);
  });

  it('spreads shares evenly and keeps whole numbers below their bound', () => {
    const chance = Xoshiro128.fromSeed(7);
    const shares = Array.from({ length: 20_000 }, () => chance.share());
    expect(Math.abs(shares.reduce((sum, x) => sum + x, 0) / 20_000 - 0.5)).toBeLessThan(0.01);
    const whole = Array.from({ length: 6000 }, () => chance.below(6));
    for (let k = 0; k < 6; k++) expect(Math.abs(whole.filter((x) => x === k).length - 1000)).toBeLessThan(120);
  });

  it('never stands still at zero', () => {
    const chance = new Xoshiro128([0, 0, 0, 0]);
    expect(new Set(Array.from({ length: 20 }, () => chance.word())).size).toBeGreaterThan(10);
  });
});

describe('normal scores', () => {
  it('turn the normal distribution round to a part in 1e13, also in the tails', () => {
    for (const p of [1e-300, 1e-100, 1e-20, 1e-9, 1e-4, 0.05, 0.3, 0.5])
      expect(normalShareBelow(normalScore(p)) / p).toBeCloseTo(1, 12);
    for (let k = 1; k < 200; k++) expect(normalScore(k / 200)).toBeCloseTo(-normalScore(1 - k / 200), 11);
  });

  it('print the table value 1.959 963 985 for 0.975 (any table of the normal distribution)', () => {
    expect(normalScore(0.975)).toBeCloseTo(1.959963985, 9);
  });
});

describe('the Latin hypercube', () => {
  it('has one point in every slice of every dimension', () => {
    const points = latinHypercube(50, 4, Xoshiro128.fromSeed(3));
    for (let d = 0; d < 4; d++)
      expect(points.map((point) => Math.floor((point[d] as number) * 50)).sort((a, b) => a - b)).toEqual(
        Array.from({ length: 50 }, (_, k) => k),
      );
  });

  it('does not tie one dimension to another', () => {
    const points = latinHypercube(400, 2, Xoshiro128.fromSeed(11));
    const cross = points.reduce((sum, [a = 0, b = 0]) => sum + (a - 0.5) * (b - 0.5), 0) / 400;
    expect(Math.abs(cross) * 12).toBeLessThan(0.12);
  });
});
