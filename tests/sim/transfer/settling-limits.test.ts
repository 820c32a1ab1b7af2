import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  apiLengthFactor,
  heavyLegHeight,
  interfaceHeight,
  legOffset,
  settlingTimeRule,
} from '../../../sim/transfer/decanter.ts';
import { capturedShare, shareBelowSize } from '../../../sim/transfer/drop-sizes.ts';
import { erf, erfc, normalShareBelow } from '../../../sim/maths/error-function.ts';
import {
  cutDiameter,
  hadamardFactor,
  hazenCapture,
  hazenCaptureNonIdeal,
  settlingVelocityWithDrag,
  stokesVelocity,
} from '../../../sim/transfer/settling.ts';

const within = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

describe('single drops', () => {
  it('rise when lighter, sink when heavier and hang when neither', () => {
    expect(stokesVelocity(1e-4, 120, 8e-4, 9.81)).toBeGreaterThan(0);
    expect(stokesVelocity(1e-4, -40, 8e-4, 9.81)).toBeLessThan(0);
    expect([stokesVelocity(1e-4, 0, 8e-4, 9.81), settlingVelocityWithDrag(1e-4, 0, 996, 8e-4, 9.81)]).toEqual([0, 0]);
  });

  it('balance weight and drag at any size, never faster than Stokes', () => {
    fc.assert(
      fc.property(within(1e-6, 3e-3), within(1, 200), (d, drho) => {
        const v = settlingVelocityWithDrag(d, drho, 996, 8e-4, 9.81);
        const stokes = stokesVelocity(d, drho, 8e-4, 9.81);
        const Re = (996 * v * d) / 8e-4;
        expect((v * (1 + 0.15 * Re ** 0.687)) / stokes).toBeCloseTo(1, 10);
        expect(v).toBeLessThanOrEqual(stokes);
      }),
    );
  });

  it('run up to half as fast again with a free skin', () => {
    expect(hadamardFactor(1e-3, 0)).toBe(1.5);
    expect(hadamardFactor(1e-3, 1e6)).toBeCloseTo(1, 8);
  });

  it('have a cut size that just moves at the overflow rate', () => {
    const d = cutDiameter(2e-4, -45, 8e-4, 9.81);
    expect(-stokesVelocity(d, -45, 8e-4, 9.81)).toBeCloseTo(2e-4, 15);
    expect(cutDiameter(0, 120, 8e-4, 9.81)).toBe(0);
  });
});

describe('what a separator keeps', () => {
  it('keeps all that move in still water, none that hang, and less the faster the flow', () => {
    expect([hazenCapture(1e-4, 0), hazenCapture(0, 1e-4), hazenCapture(-1e-4, 1e-4), hazenCapture(2e-4, 1e-4)]).toEqual(
      [1, 0, 0, 1],
    );
    expect([hazenCaptureNonIdeal(1e-4, 0, 3), hazenCaptureNonIdeal(0, 1e-4, 3)]).toEqual([1, 0]);
    fc.assert(
      fc.property(within(1e-6, 1e-2), within(1e-6, 1e-2), (v, v_c) => {
        expect(hazenCaptureNonIdeal(v, v_c, 3)).toBeLessThanOrEqual(hazenCapture(v, v_c));
        expect(hazenCaptureNonIdeal(v, v_c, 8)).toBeGreaterThan(hazenCaptureNonIdeal(v, v_c, 1));
      }),
    );
  });

  it('keeps a share between nothing and all, less for a larger cut', () => {
    fc.assert(
      fc.property(within(1e-7, 1e-2), within(1.05, 4), within(1.01, 3), (cut, spread, more) => {
        const kept = capturedShare(cut, 120e-6, spread);
        expect(kept).toBeGreaterThanOrEqual(0);
        expect(kept).toBeLessThanOrEqual(1 + 1e-12);
        expect(capturedShare(cut * more, 120e-6, spread)).toBeLessThanOrEqual(kept + 1e-12);
      }),
    );
  });

  it('keeps all without flow, nothing without a density difference, and the single-size share without spread', () => {
    expect(capturedShare(0, 120e-6, 2.2)).toBe(1);
    expect(capturedShare(cutDiameter(1e-4, 0, 8e-4, 9.81), 120e-6, 2.2)).toBe(0);
    expect(capturedShare(240e-6, 120e-6, 1)).toBe(0.25);
    expect(capturedShare(60e-6, 120e-6, 1)).toBe(1);
    expect(capturedShare(240e-6, 120e-6, 1 + 1e-7)).toBeCloseTo(0.25, 5);
  });

  it('splits the oil at the median size', () => {
    expect(shareBelowSize(120e-6, 120e-6, 2.2)).toBe(0.5);
    expect(shareBelowSize(0, 120e-6, 2.2)).toBe(0);
    expect([shareBelowSize(119e-6, 120e-6, 1), shareBelowSize(121e-6, 120e-6, 1)]).toEqual([0, 1]);
    expect(shareBelowSize(264e-6, 120e-6, 2.2)).toBeCloseTo(0.8413447460685429, 12);
  });
});

describe('the error function', () => {
  it('is odd, ends at one, and sums with its complement to one', () => {
    fc.assert(
      fc.property(within(-8, 8), (x) => {
        expect(erf(-x)).toBe(-erf(x));
        expect(erf(x) + erfc(x)).toBeCloseTo(1, 14);
      }),
    );
    expect([erf(30), erfc(30), erfc(-30), erf(0)]).toEqual([1, 0, 2, 0]);
    expect(normalShareBelow(0)).toBe(0.5);
  });

  it('has no seam where its three approximations meet', () => {
    for (const seam of [0.46875, 4]) expect(erfc(seam * (1 - 1e-14)) / erfc(seam * (1 + 1e-14))).toBeCloseTo(1, 11);
  });
});

describe('decanters', () => {
  it('set the heavy leg level with the light one when densities are equal', () => {
    expect(heavyLegHeight(0.22, 0.12, 1000, 1000)).toBeCloseTo(0.22, 12);
    expect(0.22 - heavyLegHeight(0.22, 0.12, 880, 1000)).toBeCloseTo(legOffset(0.1, 120, 1000), 12);
  });

  it('put the interface where the legs balance, and keep it inside the vessel', () => {
    const z_2 = heavyLegHeight(0.22, 0.12, 880, 1000);
    expect(interfaceHeight(z_2, 0.22, 1000, 880)).toBeCloseTo(0.12, 12);
    expect([interfaceHeight(0.3, 0.22, 1000, 990), interfaceHeight(0.1, 0.22, 1000, 990)]).toEqual([0.22, 0]);
    expect([interfaceHeight(0.1, 0.22, 1000, 1000), interfaceHeight(0.22, 0.22, 1000, 1000)]).toEqual([0, 0.22]);
  });

  it('keep the end values of the length factor beyond its table, and stand for ever without a density difference', () => {
    expect([apiLengthFactor(1), apiLengthFactor(3), apiLengthFactor(20), apiLengthFactor(50)]).toEqual([
      1.28, 1.28, 1.74, 1.74,
    ]);
    expect(apiLengthFactor(12.5)).toBeCloseTo(1.58, 12);
    expect(settlingTimeRule(1e-3, 0)).toBe(Number.MAX_VALUE);
  });
});
