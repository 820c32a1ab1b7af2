/** What may stand in tests/published: figures that a named publication prints, and nothing else. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { figures, halfLastDigit } from '../published/printed.ts';

const folder = fileURLToPath(new URL('../published', import.meta.url));
const files = readdirSync(folder).filter((name) => name.endsWith('.ts'));

/** Words of a value that no publication prints. */
const NOT_PRINTED =
  /\bindependent|\bre-?evaluat|\bevaluation\b|\bpython\b|\biapws \d|\bfrom memory\b|\bcommon practice\b|\bexercise\b|\bcalculation sheet\b|\bcourse question\b|\bcomputed with\b/i;

describe('tests/published', () => {
  it.each(files)('%s names no source that prints nothing', (name) => {
    const text = readFileSync(`${folder}/${name}`, 'utf8');
    expect(text.split('\n').filter((line) => NOT_PRINTED.test(line))).toEqual([]);
  });

  it('would see such words', () => {
    for (const line of ['independent evaluation, IF97', 'python ht 1.0.7', 'McCabe (from memory)', 'a public exercise'])
      expect(line).toMatch(NOT_PRINTED);
  });
});

describe('a printed figure', () => {
  it.each([
    ['66.62', 0.005],
    ['7.02e5', 500],
    ['1060', 0.5],
    ['0.353658941e-2', 5e-12],
  ])('%s is held to %d, half its last digit', (printed, half) => {
    expect(halfLastDigit(printed) / half).toBeCloseTo(1, 12);
  });

  it('of data with three figures is held to half the third', () => {
    expect(figures(3, '66.62').within).toBeCloseTo(0.05, 12);
    expect(figures(3, '9292').within).toBeCloseTo(5, 12);
  });
});
