import { describe, expect, it } from 'vitest';
import * as table from '../../../sim/fluids/water-table.ts';
import * as water from '../../../sim/fluids/water.ts';

const LOW = water.WATER_MIN_TEMPERATURE;
const HIGH = water.WATER_MAX_TEMPERATURE;

/** Every 0.043 K from end to end, so that no sample of the tables is favoured. */
const temperatures = Array.from({ length: 3025 }, (_, k) => Math.min(HIGH, LOW + k * 0.043));

/** Table, formulation, and a size below which the quantity counts as zero (it changes sign or starts from zero). */
const PAIRS = [
  ['saturation pressure', table.tableSaturationPressure, water.saturationPressure, 0],
  ['saturation slope', table.tableSaturationSlope, water.saturationSlope, 0],
  ['liquid density', table.tableLiquidDensity, water.liquidDensity, 0],
  ['liquid enthalpy', table.tableLiquidEnthalpy, water.liquidEnthalpy, 100],
  ['liquid heat capacity', table.tableLiquidHeatCapacity, water.liquidHeatCapacity, 0],
  ['liquid expansivity', table.tableLiquidExpansivity, water.liquidExpansivity, 1e-5],
  ['liquid viscosity', table.tableLiquidViscosity, water.liquidViscosity, 0],
  ['liquid conductivity', table.tableLiquidConductivity, water.liquidConductivity, 0],
  ['latent heat', table.tableLatentHeat, water.latentHeat, 0],
  ['vapour density', table.tableVapourDensity, water.vapourDensity, 0],
  ['vapour enthalpy', table.tableVapourEnthalpy, water.vapourEnthalpy, 0],
  ['vapour viscosity', table.tableVapourViscosity, water.vapourViscosity, 0],
] as const;

describe('the water tables of the step loop', () => {
  it.each(PAIRS)('reads the %s within 1e-5 of the formulation from 0 to 130 °C', (_, read, formulation, floor) => {
    let worst = 0;
    for (const T of temperatures) {
      const exact = formulation(T);
      worst = Math.max(worst, Math.abs(read(T) - exact) / Math.max(Math.abs(exact), floor));
    }
    expect(worst).toBeLessThan(1e-5);
  });

  it.each(PAIRS)('gives NaN, not a clamped %s, outside its range', (_, read) => {
    for (const T of [LOW - 1e-9, HIGH + 1e-9, 0, -1, Number.NaN, Number.POSITIVE_INFINITY]) expect(read(T)).toBeNaN();
    for (const T of [LOW, HIGH]) expect(read(T)).not.toBeNaN();
  });

  it('finds the boiling point within 1e-5 of the formulation, from the pressure', () => {
    for (let k = 0; k <= 1000; k++) {
      const p = Math.min(
        water.WATER_MAX_PRESSURE,
        water.WATER_MIN_PRESSURE * (water.WATER_MAX_PRESSURE / water.WATER_MIN_PRESSURE) ** (k / 1000),
      );
      expect(Math.abs(table.tableSaturationTemperature(p) / water.saturationTemperature(p) - 1)).toBeLessThan(1e-5);
    }
    for (const p of [0, water.WATER_MIN_PRESSURE * 0.999_999, water.WATER_MAX_PRESSURE * 1.000_001, Number.NaN]) {
      expect(table.tableSaturationTemperature(p)).toBeNaN();
    }
  });

  it('turns pressure back into the temperature it came from', () => {
    for (const T of temperatures)
      expect(Math.abs(table.tableSaturationTemperature(table.tableSaturationPressure(T)) - T)).toBeLessThan(1e-10);
  });

  it('turns the enthalpy of water back into its temperature, ends included', () => {
    for (const T of temperatures) {
      expect(Math.abs(table.tableTemperatureFromLiquidEnthalpy(table.tableLiquidEnthalpy(T)) - T)).toBeLessThan(1e-9);
    }
    for (const h of [table.tableLiquidEnthalpy(LOW) - 1e-3, table.tableLiquidEnthalpy(HIGH) + 1e-3, Number.NaN]) {
      expect(table.tableTemperatureFromLiquidEnthalpy(h)).toBeNaN();
    }
  });

  it('makes the enthalpy of steam exactly that of water plus the latent heat', () => {
    for (const T of temperatures)
      expect(table.tableVapourEnthalpy(T)).toBe(table.tableLiquidEnthalpy(T) + table.tableLatentHeat(T));
  });

  it('has no step between intervals larger than rounding', () => {
    for (let k = 1; k < 65; k++) {
      const T = LOW + 2 * k;
      for (const [, read, , floor] of PAIRS) {
        const step = Math.abs(read(T + 1e-9) - read(T - 1e-9));
        expect(step / Math.max(Math.abs(read(T)), floor)).toBeLessThan(1e-8);
      }
    }
  });

  it('has a saturation slope that is the derivative of the pressure', () => {
    for (const T of [280, 320, 373.15, 400]) {
      const difference = (table.tableSaturationPressure(T + 0.01) - table.tableSaturationPressure(T - 0.01)) / 0.02;
      expect(Math.abs(table.tableSaturationSlope(T) / difference - 1)).toBeLessThan(1e-6);
    }
  });
});
