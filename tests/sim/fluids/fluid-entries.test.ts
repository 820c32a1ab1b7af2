import { describe, expect, it } from 'vitest';
import { fluidCorrelations } from '../../../sim/fluids/index.ts';

const find = (name: string) => {
  const entry = fluidCorrelations.find((candidate) => candidate.name === name);
  if (entry === undefined) throw new Error(`no entry ${name}`);
  return entry;
};

describe('the fluid entries of the desk reference', () => {
  it('have unique kebab-case names, sources, sentences and TeX', () => {
    expect(new Set(fluidCorrelations.map(({ name }) => name)).size).toBe(fluidCorrelations.length);
    for (const { name, says, source, tex, outside } of fluidCorrelations) {
      expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(says).toMatch(/^[A-Z].*\.$/);
      for (const words of [source, tex, outside]) expect(words.length).toBeGreaterThan(3);
      expect((tex.match(/\{/g) ?? []).length, name).toBe((tex.match(/\}/g) ?? []).length);
    }
  });

  // The regions of IF97 and the conductivity built on them hold on one side of the saturation line, not in a whole box.
  const boxed = fluidCorrelations.filter(
    ({ name }) => !name.startsWith('region-') && name !== 'water-conductivity-industrial',
  );

  it.each([0, 0.4, 1])('evaluate to a finite number %d of the way along their ranges', (share) => {
    for (const { name, arguments: args, evaluate } of boxed) {
      const values = Object.fromEntries(
        Object.entries(args).map(([symbol, { range }]) => {
          const [low, high] = range as readonly [number, number];
          return [symbol, share === 1 ? high : low + share * (high - low)];
        }),
      );
      expect(Number.isFinite(evaluate(values)), name).toBe(true);
    }
  });

  it('refuse a missing argument instead of guessing one', () => {
    for (const entry of fluidCorrelations) expect(() => entry.evaluate({}), entry.name).toThrow(RangeError);
  });

  it.each([
    ['saturation-pressure', { T: 300 }, 3536.58941],
    ['region-1-enthalpy', { T: 300, p: 3e6 }, 115_331.273],
    ['region-2-heat-capacity', { T: 300, p: 3500 }, 1913.00162],
    ['water-viscosity', { T: 298.15, rho: 998 }, 889.7351e-6],
    ['water-conductivity-industrial', { T: 650, p: 3e5 }, 52.2311024e-3],
    ['standard-atmosphere-pressure', { h: 1000 }, 89_876.285],
    ['boiling-point-at-altitude', { h: 2000 }, 366.467],
    ['oil-vapour-pressure-alpha-pinene', { T: 373.15 }, 19_149],
    ['co-boiling-temperature-cineole-1-8', { p: 101_325 }, 370.54],
    ['co-boiling-oil-share-linalool', { p: 101_325 }, 0.2268],
  ] as const)('answer %s as the published checks do', (name, values, expected) => {
    expect(Math.abs(find(name).evaluate(values) / expected - 1)).toBeLessThan(2e-4);
  });
});
