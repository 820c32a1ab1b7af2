import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  extentOf,
  niceDomain,
  settleDomain,
  tickDecimals,
  valueTicks,
  type DomainPolicy,
} from '../../../src/charts/model/domain.ts';

const free: DomainPolicy = { fromZero: false, leastSpan: 10 };
const fromZero: DomainPolicy = { fromZero: true, leastSpan: 0.1 };

describe('the bounds of an axis', () => {
  it('are round numbers that hold the data with a margin', () => {
    expect(niceDomain([14.2, 99.6], free)).toEqual([0, 120]);
    expect(niceDomain([0, 2.2], fromZero)).toEqual([0, 2.5]);
  });

  it('move outwards before a trace lies on the edge', () => {
    expect(niceDomain([0, 100], fromZero)[1]).toBeGreaterThan(100);
  });

  it('start at zero where that is the policy, and a rounding error below zero does not change it', () => {
    expect(niceDomain([-1e-12, 3], fromZero)[0]).toBe(0);
    expect(niceDomain([-0.8, 3], fromZero)[0]).toBe(-1);
  });

  it('end at a ceiling that the data respect, and pass it when they do not', () => {
    const share: DomainPolicy = { fromZero: true, leastSpan: 100, ceiling: 100 };
    expect(niceDomain([0, 88], share)).toEqual([0, 100]);
    expect(niceDomain([0, 131], share)[1]).toBeGreaterThan(131);
  });

  it('are never empty, whatever a flat line holds', () => {
    const [low, high] = niceDomain([15, 15], free);
    expect(high - low).toBeGreaterThanOrEqual(10);
    expect(low).toBeLessThan(15);
    expect(high).toBeGreaterThan(15);
  });

  it('stand still when a re-run changes the data a little', () => {
    const before = settleDomain(undefined, [14, 99.6], free);
    expect(settleDomain(before, [15, 103], free)).toBe(before);
    expect(settleDomain(before, [16, 70], free)).toBe(before);
  });

  it('grow at once when the data no longer fit, and shrink only when half the axis is empty', () => {
    const before = settleDomain(undefined, [0, 2.2], fromZero);
    expect(settleDomain(before, [0, 4.1], fromZero)).toEqual([0, 5]);
    expect(settleDomain(before, [0, 1.6], fromZero)).toBe(before);
    expect(settleDomain(before, [0, 0.6], fromZero)).toEqual([0, 0.8]);
  });

  it('stay where they are when a run has no data', () => {
    const before = settleDomain(undefined, [0, 2.2], fromZero);
    expect(settleDomain(before, null, fromZero)).toBe(before);
  });

  it('hold the data and settle in one step, for any data before and after', () => {
    const range = fc
      .tuple(fc.double({ min: -1e5, max: 1e5, noNaN: true }), fc.double({ min: 0, max: 1e5, noNaN: true }))
      .map(([low, span]): [number, number] => [low, low + span]);
    fc.assert(
      fc.property(range, range, fc.boolean(), (first, second, isFromZero) => {
        const policy = isFromZero ? fromZero : free;
        const settled = settleDomain(settleDomain(undefined, first, policy), second, policy);
        expect(settled[1]).toBeGreaterThan(settled[0]);
        // From zero, the policy leaves out what lies a fiftieth of the span below it.
        const slack = isFromZero ? 0.02 * (settled[1] - settled[0]) : 0;
        expect(settled[0]).toBeLessThanOrEqual(second[0] + slack);
        expect(settled[1]).toBeGreaterThanOrEqual(second[1] - slack);
        expect(settleDomain(settled, second, policy)).toBe(settled);
      }),
    );
  });
});

describe('the extent of columns', () => {
  it('passes over gaps and converts to the unit shown', () => {
    expect(extentOf([Float64Array.of(NaN, 300), Float64Array.of(280, 290)], (kelvin) => kelvin - 273.15)).toEqual([
      expect.closeTo(6.85, 9),
      expect.closeTo(26.85, 9),
    ]);
  });

  it('is null when there is no number at all', () => {
    expect(extentOf([Float64Array.of(NaN)])).toBe(null);
    expect(extentOf([])).toBe(null);
  });
});

describe('ticks', () => {
  it('are fewer on a lower chart and carry the decimals they need', () => {
    expect(valueTicks([0, 2.5], 180)).toEqual([0, 0.5, 1, 1.5, 2, 2.5]);
    expect(valueTicks([0, 2.5], 60)).toEqual([0, 1, 2]);
    expect(tickDecimals([0, 0.5, 1])).toBe(1);
    expect(tickDecimals([0, 0.25])).toBe(2);
    expect(tickDecimals([0, 20, 40])).toBe(0);
  });
});
