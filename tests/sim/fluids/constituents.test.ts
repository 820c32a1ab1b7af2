import { describe, expect, it } from 'vitest';
import {
  constituentById,
  constituents,
  heatCapacity,
  latentHeat,
  liquidDensity,
  liquidViscosity,
  OIL_MAX_TEMPERATURE,
  OIL_MIN_TEMPERATURE,
  vapourPressure,
  waterSolubility,
} from '../../../sim/fluids/constituents.ts';
import { constituentSources } from '../../../sim/fluids/constituents-sources.ts';
import { GAS_CONSTANT } from '../../../sim/constants.ts';

const KINDS = ['published', 'derived', 'computed', 'estimated', 'memory'];
const ATOMS = { C: 0.0120107, H: 0.00100794, O: 0.0159994 } as const;

/** Molar mass of a formula such as C10H16O, kg/mol. */
const massOf = (formula: string): number =>
  [...formula.matchAll(/([CHO])(\d*)/g)].reduce(
    (sum, [, atom, count]) => sum + ATOMS[atom as keyof typeof ATOMS] * Number(count || 1),
    0,
  );

describe('the oil constituents', () => {
  it('are 36, each with its own id', () => {
    expect(constituents.length).toBe(36);
    expect(new Set(constituents.map(({ id }) => id)).size).toBe(36);
    for (const constituent of constituents) expect(constituentById(constituent.id)).toBe(constituent);
  });

  it('state for every value how it is known and where it comes from', () => {
    const visit = (value: unknown, path: string): void => {
      if (value === null || typeof value !== 'object') return;
      const entry = value as Record<string, unknown>;
      if ('value' in entry || 'A' in entry || 'valueAt25C' in entry) {
        expect(KINDS, path).toContain(entry['kind']);
        expect(String(entry['source']).length, path).toBeGreaterThan(3);
      }
      for (const [key, child] of Object.entries(entry)) visit(child, `${path}.${key}`);
    };
    for (const constituent of constituents) visit(constituent, constituent.id);
  });

  it('use source keys that are spelt out', () => {
    for (const { vapourPressure: fit, criticalTemperature } of constituents) {
      for (const { kind, source } of [fit, criticalTemperature]) {
        if (kind === 'published' && /^[A-Za-z-]+$/.test(source))
          expect(Object.keys(constituentSources)).toContain(source);
      }
    }
  });

  it('have the molar mass of their formula and are oxygenates if it holds oxygen', () => {
    for (const { formula, molarMass, group, id } of constituents) {
      expect(Math.abs(massOf(formula) / molarMass.value - 1), id).toBeLessThan(2e-4);
      const carbons = Number(/^C(\d+)/.exec(formula)?.[1]);
      expect(group, id).toBe(carbons >= 14 ? 'sesquiterpene' : formula.includes('O') ? 'oxygenate' : 'hydrocarbon');
    }
  });

  it('keep values inside their published ranges', () => {
    for (const { waterSolubility: entry, id } of constituents) {
      const [low, high] = entry.range ?? [entry.value, entry.value];
      expect(entry.value, id).toBeGreaterThanOrEqual(low);
      expect(entry.value, id).toBeLessThanOrEqual(high);
    }
  });

  it('have a heat of vaporisation at 100 °C that is the slope of their vapour pressure', () => {
    for (const constituent of constituents) {
      const T = 373.15;
      const slope = Math.log(vapourPressure(constituent, T + 0.5) / vapourPressure(constituent, T - 0.5));
      const molar = GAS_CONSTANT * T * T * slope;
      expect(Math.abs(latentHeat(constituent, T) * constituent.molarMass.value - molar), constituent.id).toBeLessThan(
        100,
      );
    }
  });

  it('have finite, positive properties that move the right way over the whole span of temperatures', () => {
    for (const constituent of constituents) {
      for (let T = OIL_MIN_TEMPERATURE + 35; T < OIL_MAX_TEMPERATURE; T += 5) {
        expect(vapourPressure(constituent, T)).toBeGreaterThan(vapourPressure(constituent, T - 5));
        expect(liquidDensity(constituent, T)).toBeLessThan(liquidDensity(constituent, T - 5));
        expect(liquidDensity(constituent, T)).toBeGreaterThan(600);
        expect(heatCapacity(constituent, T)).toBeGreaterThan(heatCapacity(constituent, T - 5));
        expect(latentHeat(constituent, T)).toBeGreaterThan(1e5);
        expect(liquidViscosity(constituent, T)).toBeLessThan(liquidViscosity(constituent, T - 5));
        expect(liquidViscosity(constituent, T)).toBeGreaterThan(1e-4);
      }
    }
  });

  it('give their reference values back where those hold', () => {
    for (const constituent of constituents) {
      const { liquidDensity: density, heatCapacity: capacity, viscosity, latentHeatAt25C, molarMass } = constituent;
      expect(liquidDensity(constituent, density.at)).toBe(density.value);
      expect(heatCapacity(constituent, 298.15)).toBe(capacity.valueAt25C);
      expect(heatCapacity(constituent, 363.15)).toBeCloseTo(capacity.valueAt90C, 9);
      expect(liquidViscosity(constituent, viscosity.at)).toBeCloseTo(viscosity.value, 12);
      expect(latentHeat(constituent, 298.15)).toBeCloseTo(latentHeatAt25C.value / molarMass.value, 6);
      if (constituent.fusionHeat === undefined)
        expect(waterSolubility(constituent, 298.15)).toBe(constituent.waterSolubility.value);
    }
  });

  it('dissolve out of an oil as subcooled liquids: 1.34, 1.92, 2.54 and 2.93 times as much as their crystals', () => {
    const times = (id: string) =>
      waterSolubility(constituentById(id), 298.15) / constituentById(id).waterSolubility.value;
    expect(times('menthol')).toBeCloseTo(1.34, 1);
    expect(times('thymol')).toBeCloseTo(1.92, 1);
    expect(times('camphor')).toBeCloseTo(2.54, 2);
    expect(times('borneol')).toBeCloseTo(2.93, 1);
  });

  it('thin with heat as tea-tree oil does: 2.54 mPa s at 20 °C, 1.52 at 40 °C (REACH registration), to 15 %', () => {
    const known = 2.54 ** -0.2661;
    const law = (known + 20 / 233) ** (-1 / 0.2661);
    expect(Math.abs(law / 1.52 - 1)).toBeLessThan(0.15);
    const ratio =
      liquidViscosity(constituentById('terpinen_4_ol'), 313.15) /
      liquidViscosity(constituentById('terpinen_4_ol'), 293.15);
    expect(ratio).toBeLessThan(1.52 / 2.54);
  });
});
