/**
 * Viscosity, conductivity and surface tension of water against the values printed in the IAPWS releases R12-08
 * (Table 4), R15-11 (Tables 4 and 7 to 9) and R1-76(2014) (Table 1). Rows marked `memory` were recalled from the same
 * tables and not read again.
 */
import { describe, expect, it } from 'vitest';
import {
  waterConductivity,
  waterConductivityIndustrial,
  waterSurfaceTension,
  waterViscosity,
} from '../../sim/fluids/transport.ts';
import { liquidConductivity, saturationPressure, vapourConductivity } from '../../sim/fluids/water.ts';

/** Check, T in K, ρ in kg/m³, expected in µPa s, relative tolerance. */
const VISCOSITY = [
  ['water-030', 298.15, 998, 889.7351, 1e-7],
  ['water-031', 298.15, 1200, 1437.649467, 1e-7],
  ['water-032', 433.15, 1, 14.538324, 1e-7],
  ['water-033', 433.15, 1000, 217.685358, 1e-7],
  ['water-034', 873.15, 100, 35.802262, 1e-7],
  ['memory', 373.15, 1000, 307.883622, 1e-7],
  ['memory', 873.15, 1, 32.619287, 1e-7],
  ['memory', 873.15, 600, 77.430195, 1e-7],
  ['memory', 1173.15, 1, 44.217245, 1e-7],
  ['memory', 1173.15, 100, 47.640433, 1e-7],
  ['memory', 1173.15, 400, 64.154608, 1e-7],
] as const;

/** Check, T in K, ρ in kg/m³, expected in mW/(m K), relative tolerance. */
const CONDUCTIVITY = [
  ['water-038', 298.15, 0, 18.4341883, 1e-8],
  ['water-039', 298.15, 998, 607.712868, 1e-8],
  ['water-040', 873.15, 0, 79.1034659, 1e-8],
  ['memory', 298.15, 1200, 799.038144, 1e-8],
] as const;

/** Check, T in K, p in MPa, expected in mW/(m K), relative tolerance. */
const INDUSTRIAL_CONDUCTIVITY = [
  ['water-042', 620, 20, 481.485195, 1e-7],
  ['water-043', 650, 0.3, 52.2311024, 1e-7],
] as const;

/** Check, t in °C, expected in mN/m, absolute tolerance. */
const SURFACE_TENSION = [
  ['water-045', 0.01, 75.65, 0.005],
  ['water-046', 20, 72.74, 0.005],
  ['water-047', 40, 69.6, 0.005],
  ['water-048', 60, 66.24, 0.005],
  ['water-049', 80, 62.67, 0.005],
  ['water-050', 100, 58.91, 0.005],
] as const;

const within = (value: number, expected: number, rel: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThanOrEqual(rel);

describe('IAPWS transport releases', () => {
  it.each(VISCOSITY)('%s: viscosity at %d K and %d kg/m³ is %d µPa s', (_, T, rho, expected, rel) => {
    within(waterViscosity(T, rho) * 1e6, expected, rel);
  });

  it.each(CONDUCTIVITY)('%s: conductivity at %d K and %d kg/m³ is %d mW/(m K)', (_, T, rho, expected, rel) => {
    within(waterConductivity(T, rho) * 1e3, expected, rel);
  });

  it.each(INDUSTRIAL_CONDUCTIVITY)(
    '%s: conductivity with enhancement at %d K and %d MPa is %d mW/(m K)',
    (_, T, p, expected, rel) => {
      within(waterConductivityIndustrial(T, p * 1e6) * 1e3, expected, rel);
    },
  );

  it.each(SURFACE_TENSION)(
    '%s: surface tension at %d °C is %d mN/m to the printed digits',
    (_, celsius, expected, abs) => {
      expect(Math.abs(waterSurfaceTension(celsius + 273.15) * 1e3 - expected)).toBeLessThanOrEqual(abs);
    },
  );

  it('loses at most 0.006 % on the saturation line up to 105 °C by leaving the enhancement out', () => {
    for (let celsius = 1; celsius <= 105; celsius += 4) {
      const T = celsius + 273.15;
      const p = saturationPressure(T);
      within(liquidConductivity(T), waterConductivityIndustrial(T, p * (1 + 1e-9)), 6e-5);
      within(vapourConductivity(T), waterConductivityIndustrial(T, p), 6e-5);
    }
  });
});
