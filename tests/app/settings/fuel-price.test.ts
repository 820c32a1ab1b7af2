import { describe, expect, test } from 'vitest';
import { defaultEnergyPrice, fieldAt, findHeatSource, heatFromSource, type FieldInfo } from '../../../sim/index.ts';
import { fuelPriceField } from '../../../src/pages/bench/settings/fuel-price.ts';
import { said, still } from './still.ts';

const price = fieldAt('heat.energyPrice_J') as FieldInfo;
const burning = (id: string) =>
  fuelPriceField(
    price,
    still(Object.fromEntries(Object.entries(heatFromSource(id)).map(([key, value]) => [`heat.${key}`, value]))),
    'metric',
  );

describe('the price of what heats the pot', () => {
  test.each([
    ['outdoor-gas-burner', 2.5, 46.33e6, 'bottled gas', 'standard enthalpies of combustion'],
    ['wood-fire', 0.4, 14.5e6, 'wood', 'air-dry wood at 20 % moisture'],
  ])('of a %s is that of a kilogram, by its heating value', (id, perKilogram, heatingValue, fuel, source) => {
    const { field, times } = burning(id);
    expect(field.unit).toBe('1/kg');
    expect(times).toBe(heatingValue);
    expect(times * defaultEnergyPrice(findHeatSource(id))).toBeCloseTo(perKilogram, 12);
    expect(field.default).toBe(defaultEnergyPrice(findHeatSource(id)));
    expect(field.source).toContain(
      `default price, an invented round figure: ${perKilogram.toFixed(2)} per kg of ${fuel}`,
    );
    expect(said(field.says)).toContain(source);
    expect(said(field.says)).toMatch(/Each gives \d+ MJ\/kg|Each gives [\d ]+(\.\d+)? [kM]J\/kg/);
    expect(field.max).toBeCloseTo((price.max as number) * heatingValue, 3);
  });

  test.each([
    ['electric-plate', 'electricity', '0.30'],
    ['gas-ring', 'natural gas', '0.10'],
  ])('of a %s stays that of its energy', (id, fuel, amount) => {
    const { field, times } = burning(id);
    expect([field.unit, times]).toEqual(['1/J', 1]);
    expect(field.source).toContain(`${amount} per kWh of ${fuel}`);
  });
});
