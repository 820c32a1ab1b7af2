import { bisectRight } from 'd3-array';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellAt, lastRowUpTo, lerp, positionOf, valueAt } from '../../../sim/maths/interpolate.ts';

const TIMES = [0, 60, 120, 150];

describe('a straight line', () => {
  it('goes from one end to the other', () => {
    expect([lerp(3, 5, 0), lerp(3, 5, 0.5), lerp(3, 5, 1)]).toEqual([3, 4, 5]);
  });
});

describe('a position among rising values', () => {
  it('is a row and a share of the way to the next, at the nearer end outside', () => {
    expect(positionOf(TIMES, 60)).toEqual({ row: 1, share: 0 });
    expect(positionOf(TIMES, 90)).toEqual({ row: 1, share: 0.5 });
    expect(positionOf(TIMES, -5)).toEqual({ row: 0, share: 0 });
    expect(positionOf(TIMES, 999)).toEqual({ row: 3, share: 0 });
  });

  it('counts only the rows that are filled, and takes an empty column', () => {
    expect(positionOf(TIMES, 140, 3)).toEqual({ row: 2, share: 0 });
    expect(positionOf([], 1)).toEqual({ row: 0, share: 0 });
    expect(lastRowUpTo(TIMES, Number.NaN)).toBe(0);
  });

  it('is the row that another search finds', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 1, maxLength: 30 }),
        fc.integer({ min: -60, max: 60 }),
        (values, x) => {
          const rising = [...values].sort((a, b) => a - b);
          expect(lastRowUpTo(rising, x)).toBe(Math.max(0, bisectRight(rising, x) - 1));
        },
      ),
    );
  });
});

describe('the value there', () => {
  it('lies between its rows, and on a row is that row’s even where the next has no number', () => {
    expect(valueAt([10, 20, 40, 0], positionOf(TIMES, 90))).toBe(30);
    expect(valueAt([10, 20, Number.NaN, 0], positionOf(TIMES, 60))).toBe(20);
    expect(valueAt([], positionOf([], 1))).toBeNaN();
  });

  it('of a grid is that of its cell', () => {
    const data = [1, 2, 3, 4, 5, 8, 0, 0];
    expect([0, 1].map((cell) => cellAt(data, 2, cell, positionOf(TIMES, 90)))).toEqual([4, 6]);
    expect(cellAt(data, 2, 1, positionOf(TIMES, 150))).toBe(0);
  });
});
