import { describe, expect, it } from 'vitest';
import * as air from '../../../sim/fluids/air.ts';
import { vapourPressureInAir } from '../../../sim/fluids/atmosphere.ts';
import { saturationPressure } from '../../../sim/fluids/water.ts';

describe('air', () => {
  it('has a Prandtl number and an expansivity that follow from the rest', () => {
    expect(air.airPrandtl(300)).toBe((air.airHeatCapacity(300) * air.airViscosity(300)) / air.airConductivity(300));
    expect(air.airExpansivity(250)).toBe(1 / 250);
  });

  it('holds vapour in proportion to its humidity, over ice below freezing', () => {
    expect(vapourPressureInAir(303.15, 0.5)).toBeCloseTo(saturationPressure(303.15) / 2, 9);
    expect(vapourPressureInAir(263.15, 1)).toBeCloseTo(259.9, 1);
    expect(vapourPressureInAir(273.149, 1)).toBeCloseTo(vapourPressureInAir(273.15, 1), 0);
  });
});
