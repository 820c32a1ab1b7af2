import { describe, expect, it } from 'vitest';
import { bisect, bisectedRoot } from '../../../sim/maths/bisect.ts';

describe('halving a bracket', () => {
  it('closes in on the boundary from both sides', () => {
    expect(bisect((x) => x < 0.3, 0, 1, 2)).toEqual({ low: 0.25, high: 0.5 });
    expect(bisect((x) => x < 0.3, 0, 1, 4)).toEqual({ low: 0.25, high: 0.3125 });
  });

  it('finds a root to the last bits of a number', () => {
    expect(bisectedRoot((x) => x * x < 2, 1, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(bisectedRoot((x) => Math.log(x) < 1, 1, 10)).toBeCloseTo(Math.E, 14);
  });

  it('ends at the end beyond which the boundary lies', () => {
    expect(bisectedRoot(() => true, 0, 1)).toBeCloseTo(1, 15);
    expect(bisectedRoot(() => false, 0, 1)).toBeCloseTo(0, 15);
    expect(bisect(() => true, 3, 3, 10)).toEqual({ low: 3, high: 3 });
  });

  it('asks once a halving, last at the closest value', () => {
    const asked: number[] = [];
    bisect((x) => (asked.push(x), x < 0.7), 0, 1, 3);
    expect(asked).toEqual([0.5, 0.75, 0.625]);
  });
});
