import { describe, expect, it } from 'vitest';
import { quantile, spearman } from '../../../sim/answers/ensemble/summary.ts';

describe('quantiles', () => {
  it('run straight between order statistics (Hyndman and Fan, definition 7)', () => {
    expect(quantile([1, 2, 3, 4], 0.5)).toBeCloseTo(2.5, 12);
    expect(quantile([1, 2, 3, 4], 0.1)).toBeCloseTo(1.3, 12);
    expect(quantile([5], 0.9)).toBe(5);
    expect(quantile([1, 2], 1)).toBe(2);
  });
});

describe('rank correlation', () => {
  it('is one for any rising and minus one for any falling relation', () => {
    expect(spearman([1, 2, 3, 4], [1, 8, 27, 64])).toBe(1);
    expect(spearman([1, 2, 3, 4], [9, 4, 1, 0])).toBe(-1);
  });

  it('gives −0.175 758 for ten people’s IQ against hours of television, the common textbook example', () => {
    const iq = [106, 100, 86, 101, 99, 103, 97, 113, 112, 110];
    const hours = [7, 27, 2, 50, 28, 29, 20, 12, 6, 17];
    expect(spearman(iq, hours)).toBeCloseTo(-29 / 165, 12);
  });

  it('shares ranks among equals', () => expect(spearman([1, 1, 2, 3], [1, 1, 2, 3])).toBeCloseTo(1, 12));

  it('says nothing where nothing varies or too little is known', () => {
    expect(spearman([1, 2, 3], [5, 5, 5])).toBeNull();
    expect(spearman([1, 2], [1, 2])).toBeNull();
  });
});
