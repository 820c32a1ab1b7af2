import { expect, it } from 'vitest';
import { transferCorrelations } from '../../../sim/transfer/index.ts';

/** One outside check: its number, what is computed, the numbers it must give, relative tolerance of the source, source. */
export type PublishedRow = readonly [
  id: string,
  what: string,
  computed: () => number | readonly number[],
  published: number | readonly number[],
  tolerance: number,
  source: string,
];

const list = (value: number | readonly number[]): readonly number[] => (typeof value === 'number' ? [value] : value);

/** Makes a test of every row; lists are compared element by element. */
export const checkPublished = (rows: readonly PublishedRow[]): void => {
  for (const [id, what, computed, published, tolerance, source] of rows) {
    it(`agrees on ${what} with ${source} (${id})`, () => {
      const found = list(computed());
      const wanted = list(published);
      expect(found.length).toBe(wanted.length);
      wanted.forEach((value, index) => {
        const departure = Math.abs((found[index] ?? Number.NaN) / value - 1);
        expect(departure, `${value} against ${found[index]}`).toBeLessThanOrEqual(tolerance);
      });
    });
  }
};

const byName = new Map(transferCorrelations.map((entry) => [entry.name, entry]));

/** Evaluates an entry of the desk reference, so that the check covers the function and the order of its arguments. */
export const look = (name: string, values: Readonly<Record<string, number>>): number => {
  const entry = byName.get(name);
  if (entry === undefined) throw new Error(`no entry ${name}`);
  const known = new Set(Object.keys(entry.arguments));
  for (const symbol of Object.keys(values)) if (!known.has(symbol)) throw new Error(`${name} takes no ${symbol}`);
  return entry.evaluate(values);
};

/** K from °C. */
export const celsius = (t: number): number => t + 273.15;

/** kg/s from kg/h. */
export const perHour = (m: number): number => m / 3600;

export const STANDARD_G = 9.80665;
