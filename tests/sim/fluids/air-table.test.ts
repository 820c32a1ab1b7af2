import { describe, expect, it } from 'vitest';
import * as air from '../../../sim/fluids/air.ts';
import { humidAirDensity, vapourPressureInAir } from '../../../sim/fluids/atmosphere.ts';
import { saturationPressure } from '../../../sim/fluids/water.ts';

const PAIRS = [
  ['heat capacity', air.tableAirHeatCapacity, air.airHeatCapacity],
  ['viscosity', air.tableAirViscosity, air.airViscosity],
  ['conductivity', air.tableAirConductivity, air.airConductivity],
] as const;

describe('air', () => {
  it.each(PAIRS)('has a tabulated %s within 1e-8 of the formula, and none outside 230–530 K', (_, read, formula) => {
    for (let T = 230; T <= 530; T += 0.37) expect(Math.abs(read(T) / formula(T) - 1)).toBeLessThan(1e-8);
    for (const T of [229.9, 530.1, Number.NaN]) expect(read(T)).toBeNaN();
  });

  it('has the same density in the step loop as in the checked function', () => {
    expect(air.quickAirDensity(300, 95_000)).toBe(air.airDensity(300, 95_000));
  });

  it('has a Prandtl number and an expansivity that follow from the rest', () => {
    expect(air.airPrandtl(300)).toBe((air.airHeatCapacity(300) * air.airViscosity(300)) / air.airConductivity(300));
    expect(air.airExpansivity(250)).toBe(1 / 250);
  });

  it('is lighter when humid, and holds vapour in proportion to its humidity, over ice below freezing', () => {
    expect(humidAirDensity(303.15, 101_325, 1)).toBeLessThan(air.airDensity(303.15, 101_325));
    expect(humidAirDensity(303.15, 101_325, 0)).toBeCloseTo(air.airDensity(303.15, 101_325), 12);
    expect(vapourPressureInAir(303.15, 0.5)).toBeCloseTo(saturationPressure(303.15) / 2, 9);
    expect(vapourPressureInAir(263.15, 1)).toBeCloseTo(259.9, 1);
    expect(vapourPressureInAir(273.149, 1)).toBeCloseTo(vapourPressureInAir(273.15, 1), 0);
  });
});
