/**
 * The standard atmosphere against python fluids 1.1.0, boiling points with altitude against its pressures on the
 * saturation line of python iapws 1.5.5, and dry air against the full formulation of Lemmon and Jacobsen in the latter.
 */
import { describe, expect, it } from 'vitest';
import * as air from '../../../sim/fluids/air.ts';
import * as atmosphere from '../../../sim/fluids/atmosphere.ts';

/** Geometric altitude in m, T in K, p in Pa, ρ in kg/m³, relative tolerance of each. */
const STANDARD = [
  [0, 288.15, 101325.0, 1.2249992, 0.0002],
  [500, 284.90026, 95461.289, 1.1672725, 0.0002],
  [1000, 281.65102, 89876.285, 1.111659, 0.0002],
  [1500, 278.4023, 84559.677, 1.0581039, 0.0002],
  [2000, 275.15409, 79501.425, 1.0065532, 0.0002],
  [3000, 268.6592, 70121.162, 0.90925394, 0.0002],
] as const;

/** Geometric altitude in m, boiling point in °C, absolute tolerance. */
const BOILING_POINT = [
  [0, 99.9743, 0.02],
  [500, 98.312612, 0.02],
  [1000, 96.649277, 0.02],
  [1500, 94.984178, 0.02],
  [2000, 93.317189, 0.02],
  [3000, 89.977032, 0.02],
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
  it.each(STANDARD)('at %d m it is %d K, %d Pa and %d kg/m³', (h, T, p, rho, rel) => {
    within(atmosphere.standardTemperature(h), T, rel);
    within(atmosphere.standardPressure(h), p, rel);
    within(atmosphere.standardDensity(h), rho, rel);
  });

  it.each(BOILING_POINT)('at %d m water boils at %d °C', (h, celsius, abs) => {
    expect(Math.abs(atmosphere.boilingPointAtAltitude(h) - 273.15 - celsius)).toBeLessThanOrEqual(abs);
  });

  it('at 1000 m geopotential it is 89 874.563 Pa (ISO 2533, closed form)', () => {
    within(atmosphere.standardPressureAtGeopotential(1000), 89874.563, 1e-5);
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
