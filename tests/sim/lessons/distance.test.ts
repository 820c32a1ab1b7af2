import { expect, test } from 'vitest';
import { curveAt, curveDistance } from '../../../sim/answers/lessons/distance.ts';

const line = { at_s: [0, 100], values: [0, 10] };

test('a drawn curve is read in straight lines, and nowhere beyond its ends', () => {
  expect(curveAt(line, 0)).toBe(0);
  expect(curveAt(line, 25)).toBe(2.5);
  expect(curveAt(line, 100)).toBe(10);
  expect(curveAt(line, 101)).toBeNaN();
  expect(curveAt({ at_s: [10, 20], values: [1, 2] }, 5)).toBeNaN();
});

test('the distance is the mean where both have a value', () => {
  const truth = { at_s: [0, 50, 100, 150], values: [2, 7, 12, 90] };
  expect(curveDistance(line, truth)).toBe(2);
  expect(curveDistance({ at_s: [], values: [] }, truth)).toBeNull();
});
