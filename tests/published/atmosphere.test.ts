/**
 * Standard atmosphere, boiling point with altitude and dry air against outside values: ISO 2533 / U.S. Standard
 * Atmosphere 1976 evaluated with an independent library (`fluids` 1.1.0), IF97, and the full air formulation of Lemmon
 * and Jacobsen at 1 atm (python `iapws`).
 */
import { describe, expect, it } from 'vitest';
import * as air from '../../sim/fluids/air.ts';
import * as atmosphere from '../../sim/fluids/atmosphere.ts';

/** Check, geometric altitude in m, T in K, p in Pa, ρ in kg/m³, relative tolerance of each. */
const STANDARD = [
  ['atmosphere-001', 0, 288.15, 101325.0, 1.2249992, 0.0002],
  ['atmosphere-003', 500, 284.90026, 95461.289, 1.1672725, 0.0002],
  ['atmosphere-005', 1000, 281.65102, 89876.285, 1.111659, 0.0002],
  ['atmosphere-007', 1500, 278.4023, 84559.677, 1.0581039, 0.0002],
  ['atmosphere-009', 2000, 275.15409, 79501.425, 1.0065532, 0.0002],
  ['atmosphere-011', 3000, 268.6592, 70121.162, 0.90925394, 0.0002],
] as const;

/** Check, geometric altitude in m, boiling point in °C, absolute tolerance. */
const BOILING_POINT = [
  ['atmosphere-002', 0, 99.9743, 0.02],
  ['atmosphere-004', 500, 98.312612, 0.02],
  ['atmosphere-006', 1000, 96.649277, 0.02],
  ['atmosphere-008', 1500, 94.984178, 0.02],
  ['atmosphere-010', 2000, 93.317189, 0.02],
  ['atmosphere-012', 3000, 89.977032, 0.02],
] as const;

/** Computed table, printed digits: altitude m, p Pa, T °C, ρ kg/m³, boiling point °C. */
const TABLE = [
  [0, 101325, 15.0, 1.225, 99.97],
  [500, 95461, 11.75, 1.1673, 98.31],
  [1000, 89876, 8.5, 1.1117, 96.65],
  [1500, 84560, 5.25, 1.0581, 94.98],
  [2000, 79501, 2.0, 1.0066, 93.32],
  [2500, 74692, -1.24, 0.957, 91.65],
  [3000, 70121, -4.49, 0.9093, 89.98],
  [4000, 61660, -10.98, 0.8193, 86.63],
] as const;

/** Dry air at 1 atm: t °C, ρ kg/m³, μ µPa s, k mW/(m K), Pr. */
const DRY_AIR = [
  [0, 1.293, 17.22, 24.36, 0.711],
  [20, 1.205, 18.21, 25.87, 0.708],
  [40, 1.127, 19.17, 27.35, 0.706],
  [60, 1.06, 20.1, 28.8, 0.703],
  [80, 1.0, 21.01, 30.23, 0.702],
  [100, 0.946, 21.9, 31.62, 0.7],
] as const;

const within = (value: number, expected: number, rel: number): void =>
  expect(Math.abs(value / expected - 1)).toBeLessThanOrEqual(rel);

describe('the standard atmosphere', () => {
  it.each(STANDARD)('%s: at %d m it is %d K, %d Pa and %d kg/m³', (_, h, T, p, rho, rel) => {
    within(atmosphere.standardTemperature(h), T, rel);
    within(atmosphere.standardPressure(h), p, rel);
    within(atmosphere.standardDensity(h), rho, rel);
  });

  it.each(BOILING_POINT)('%s: at %d m water boils at %d °C', (_, h, celsius, abs) => {
    expect(Math.abs(atmosphere.boilingPointAtAltitude(h) - 273.15 - celsius)).toBeLessThanOrEqual(abs);
  });

  it('atmosphere-019: at 1000 m geopotential it is 89 874.563 Pa (ISO 2533, closed form)', () => {
    within(atmosphere.standardPressureAtGeopotential(1000), 89874.563, 1e-5);
  });

  it.each(TABLE)('agrees at %d m with the computed table to its printed digits', (h, p, celsius, rho, boiling) => {
    expect(Math.abs(atmosphere.standardPressure(h) - p)).toBeLessThanOrEqual(0.51);
    expect(Math.abs(atmosphere.standardTemperature(h) - 273.15 - celsius)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(atmosphere.standardDensity(h) - rho)).toBeLessThanOrEqual(0.000_051);
    expect(Math.abs(atmosphere.boilingPointAtAltitude(h) - 273.15 - boiling)).toBeLessThanOrEqual(0.0051);
  });

  it('has 8.947 352 7 Pa of vapour over ice at 230 K (IAPWS R14-08(2011) verification value, from memory)', () => {
    within(atmosphere.sublimationPressure(230), 8.94735, 1e-6);
  });
});

describe('dry air at one atmosphere', () => {
  // Ideal gas, zero-density transport: the full formulation at 1 atm is up to 0.07 % denser, 0.1 % more viscous and
  // 0.15 % better conducting; the last printed digit adds up to 0.07 %.
  it.each(DRY_AIR)('is within 0.3 % of the full formulation at %d °C', (celsius, rho, mu, k, prandtl) => {
    const T = celsius + 273.15;
    within(air.airDensity(T, 101_325), rho, 0.003);
    within(air.airViscosity(T) * 1e6, mu, 0.003);
    within(air.airConductivity(T) * 1e3, k, 0.003);
    within(air.airPrandtl(T), prandtl, 0.003);
  });

  it('has a heat capacity of 1006–1011 J/(kg K) between 0 and 100 °C, less the 0.25 % that pressure adds', () => {
    within(air.airHeatCapacity(273.15), 1006, 0.0025);
    within(air.airHeatCapacity(373.15), 1011, 0.0025);
  });
});
