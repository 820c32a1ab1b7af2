import { describe, expect, test } from 'vitest';
import { plainPath, plainScale } from '../../../src/charts/plain/plain-scale.ts';
import { CURVE_PLACES, drawnOn, noCurve, placeTimes } from '../../../src/pages/lessons/commitments.ts';
import { termsIn, termsOf } from '../../../src/pages/lessons/terms.ts';
import { englishReader, glossaryMessages } from '../../../sim/index.ts';

const AXES = { until_s: 6000, min: 283.15, max: 383.15, quantity: 'temperature' } as const;
const SIZE = { width: 660, height: 360, text: 14 };

describe('a curve drawn by hand', () => {
  test('fills the places that a quick hand passes over', () => {
    const drawn = drawnOn(noCurve(), { place: 2, value: 10 }, { place: 6, value: 30 });
    expect(drawn.slice(0, 8)).toEqual([null, null, 10, 15, 20, 25, 30, null]);
    expect(drawnOn(drawn, { place: 6, value: 30 }, { place: 4, value: 0 }).slice(4, 7)).toEqual([0, 15, 30]);
    expect(drawnOn(noCurve(), null, { place: 3, value: 1 }).filter((value) => value !== null)).toEqual([1]);
  });

  test('has a place at either end of the axis', () => {
    expect(placeTimes(6000)[0]).toBe(0);
    expect(placeTimes(6000)[CURVE_PLACES - 1]).toBe(6000);
  });
});

describe.each(['metric', 'us'] as const)('axes in %s units', (system) => {
  const scale = plainScale(AXES, SIZE, system);

  test('lead from a value to its pixels and back', () => {
    for (const value of [283.15, 300, 383.15]) expect(scale.valueAt(scale.y(value))).toBeCloseTo(value, 9);
    for (const time_s of [0, 1234, 6000]) expect(scale.timeAt(scale.x(time_s))).toBeCloseTo(time_s, 9);
    expect(scale.valueAt(-1000)).toBe(383.15);
    expect(scale.timeAt(-1000)).toBe(0);
  });

  test('show round numbers inside them', () => {
    expect(scale.valueTicks.length).toBeGreaterThan(2);
    for (const { y } of scale.valueTicks) {
      expect(y).toBeGreaterThanOrEqual(scale.top - 1e-9);
      expect(y).toBeLessThanOrEqual(scale.bottom + 1e-9);
    }
  });

  test('break a curve where it has no value, and at the time mark', () => {
    expect(plainPath(scale, [0, 1000, 2000, 3000], [300, 310, null, 320]).match(/M/gu)).toHaveLength(2);
    expect(plainPath(scale, [0, 1000, 2000], [300, 310, 320], 1500).match(/L/gu)).toHaveLength(1);
    expect(plainPath(scale, [0, 1000], [300, null])).toMatch(/h0$/u);
  });
});

describe('words of the trade in a text', () => {
  const glossary = glossaryMessages(englishReader('metric'));

  test('are found once each, whole and in whatever case, and the text stays as it is', () => {
    const text = 'Steam leaves the pot; steam in a coil. Spots are no pots.';
    const parts = termsIn(text, glossary);
    expect(parts.map(({ words }) => words).join('')).toBe(text);
    expect(parts.flatMap(({ entry, words }) => (entry ? [words] : []))).toEqual(['Steam', 'pot', 'coil']);
  });

  test('prefer the longer word', () => {
    expect(termsOf(['Catch the first drop.'], glossary).map(({ term }) => term)).toEqual(['first drop']);
  });
});
