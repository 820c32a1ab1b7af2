import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { constituentById, constituents, vapourPressure, curveOf } from '../../../sim/fluids/constituents.ts';
import {
  coBoilingOilShare,
  coBoilingTemperature,
  coBoilingTemperatureQuick,
  moleFractions,
  oilVapourPressure,
  oilViscosity,
  saturationOilPerSteam,
} from '../../../sim/fluids/immiscible.ts';
import {
  saturationPressure,
  saturationTemperature,
  WATER_MAX_PRESSURE,
  WATER_MIN_PRESSURE,
} from '../../../sim/fluids/water.ts';

const oil = ['alpha_pinene', 'limonene', 'cineole_1_8', 'linalool', 'camphor', 'beta_caryophyllene'].map(
  constituentById,
);
const curves = oil.map(curveOf);
const ATMOSPHERE = 101_325;

/** Mole fractions of an oil of the six, some of them possibly absent. */
const compositions = fc
  .array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 })
  .filter((parts) => parts.some((part) => part > 1e-3))
  .map((parts) => {
    const sum = parts.reduce((total, part) => total + part, 0);
    return parts.map((part) => part / sum);
  });

describe('water and oil boiling together', () => {
  it('boils where the two pressures add up, for any mixture, pressure and first guess', () => {
    fc.assert(
      fc.property(
        compositions,
        fc.double({ min: 20_000, max: 270_000, noNaN: true }),
        fc.oneof(fc.constant(Number.NaN), fc.double({ min: 200, max: 500, noNaN: true })),
        (x, P, guess) => {
          const T = coBoilingTemperatureQuick(P, x, curves, guess);
          const total = saturationPressure(T) + oilVapourPressure(x, curves, T);
          expect(Math.abs(total / P - 1)).toBeLessThan(1e-9);
        },
      ),
      { seed: 11, numRuns: 2000 },
    );
  });

  it('boils below water alone, and at water’s boiling point when there is no oil', () => {
    const x = [0, 0, 0, 0, 0, 0];
    expect(coBoilingTemperatureQuick(ATMOSPHERE, x, curves, Number.NaN)).toBeCloseTo(
      saturationTemperature(ATMOSPHERE),
      9,
    );
    for (const constituent of constituents) {
      expect(coBoilingTemperature(ATMOSPHERE, [1], [constituent])).toBeLessThan(saturationTemperature(ATMOSPHERE));
    }
  });

  it('gives NaN to the step loop where water and oil do not boil between 0 and 130 °C', () => {
    for (const P of [WATER_MIN_PRESSURE + 100, WATER_MIN_PRESSURE - 1, WATER_MAX_PRESSURE + 1, Number.NaN]) {
      expect(coBoilingTemperatureQuick(P, [1, 0, 0, 0, 0, 0], curves, Number.NaN)).toBeNaN();
    }
    expect(coBoilingTemperatureQuick(ATMOSPHERE, [Number.NaN, 0, 0, 0, 0, 0], curves, Number.NaN)).toBeNaN();
    expect(() => coBoilingTemperature(WATER_MIN_PRESSURE + 100, [1], [oil[0] as (typeof oil)[number]])).toThrow(
      /co-boiling temperature: pressure 711.2127 Pa is outside/,
    );
  });

  it('is the same for a constituent split into two equal parts', () => {
    const [pinene] = oil as [(typeof oil)[number]];
    expect(coBoilingTemperature(ATMOSPHERE, [0.3, 0.7], [pinene, pinene])).toBeCloseTo(
      coBoilingTemperature(ATMOSPHERE, [1], [pinene]),
      9,
    );
    expect(coBoilingOilShare(ATMOSPHERE, [0.3, 0.7], [pinene, pinene])).toBeCloseTo(
      coBoilingOilShare(ATMOSPHERE, [1], [pinene]),
      9,
    );
  });

  it('carries each constituent in proportion to its fraction, pressure and molar mass', () => {
    const T = 370;
    const x = [0.5, 0, 0, 0.5, 0, 0];
    const byHand = [0, 3].reduce((sum, i) => {
      const entry = oil[i] as (typeof oil)[number];
      return sum + (0.5 * vapourPressure(entry, T) * entry.molarMass.value) / (saturationPressure(T) * 0.018015268);
    }, 0);
    expect(saturationOilPerSteam(T, x, oil)).toBeCloseTo(byHand, 12);
  });
});

describe('a mixture of oil constituents', () => {
  it('lies between its constituents in viscosity, and equals the one of which it consists', () => {
    fc.assert(
      fc.property(compositions, fc.double({ min: 285, max: 370, noNaN: true }), (w, T) => {
        const unit = oil.map((_, i) => oil.map((__, j) => (i === j ? 1 : 0)));
        const viscosities = unit.map((pure) => oilViscosity(T, pure, oil));
        const viscosity = oilViscosity(T, w, oil);
        expect(viscosity).toBeGreaterThanOrEqual(Math.min(...viscosities) * (1 - 1e-12));
        expect(viscosity).toBeLessThanOrEqual(Math.max(...viscosities) * (1 + 1e-12));
      }),
      { seed: 12, numRuns: 200 },
    );
  });

  it('has mole fractions that add up to one and favour the lighter molecules', () => {
    const x = moleFractions([0.5, 0, 0, 0, 0, 0.5], oil);
    expect(x.reduce((sum, part) => sum + part, 0)).toBeCloseTo(1, 12);
    expect((x[0] as number) / (x[5] as number)).toBeCloseTo(204.357 / 136.238, 4);
  });
});
