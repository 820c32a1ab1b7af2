import { describe, expect, test, vi } from 'vitest';
import { type AskedQuantity, type UnitSystem } from '../../../sim/units/index.ts';
import { readQuantity } from '../../../sim/units/read-quantity.ts';
import { read, refusal } from './typing.ts';

const diameter: AskedQuantity = { title: 'Pot diameter', unit: 'm', path: 'pot.diameter_m', min: 0.05, max: 1.5 };
const length: AskedQuantity = { title: 'Tube length', unit: 'm', path: 'condenser.length_m' };
const charge: AskedQuantity = { title: 'Charge', unit: 'kg', path: 'charge.mass_kg', min: 0, max: 1000 };
const water: AskedQuantity = { title: 'Water in the pot', unit: 'kg', path: 'pot.water_kg' };
const flow: AskedQuantity = { title: 'Water flow', unit: 'kg/s', path: 'cooling.flow_kg_s' };
const power: AskedQuantity = { title: 'Rated power', unit: 'W', path: 'heat.ratedPower_W' };
const time: AskedQuantity = { title: 'Run length', unit: 's', path: 'run.duration_s' };
const share: AskedQuantity = { title: 'Tub filled to', unit: '1', path: 'cooling.tubFill' };
const air: AskedQuantity = { title: 'Air temperature', unit: 'K', path: 'site.airTemperature_K' };
const rise: AskedQuantity = { title: 'Rise', unit: 'K', path: 'temperatureDifference' };
const weightByLength: AskedQuantity = { title: 'Tube', unit: 'kg/m' };
const conductance: AskedQuantity = { title: 'Heat', unit: 'W/K' };

describe('before anything is fetched', () => {
  test.each<[string, AskedQuantity, number]>([
    ['12 mm', length, 0.012],
    ['12', diameter, 0.012],
    ['3/8 in + 2 mm', length, 0.011525],
    ['2 * 1.5 kg', charge, 3],
    ['2 L + 300 mL', water, 2.3],
  ])('%s is read, for the page shows such units', (typed, asked, expected) => {
    const parsed = readQuantity(typed, { ...asked, min: 0, max: 1e6 }, 'metric');
    expect(parsed).toMatchObject({ ok: true, value: expected });
  });

  test('other units, and products of units, are to be fetched first', async () => {
    // Whatever other tests have fetched, a fresh copy has fetched nothing.
    vi.resetModules();
    const fresh = await import('../../../sim/units/read-quantity.ts');
    expect(fresh.readQuantity('2 furlongs', length, 'metric')).toBeNull();
    expect(fresh.readQuantity('2 kW * 3 h', { title: 'Energy', unit: 'J' }, 'metric')).toBeNull();
  });
});

describe('sums and products are read (values by hand, with factors by definition)', () => {
  test.each<[string, AskedQuantity, number]>([
    ['3/8 in + 2 mm', length, 0.375 * 0.0254 + 0.002],
    ['2 * 1.5 kg', charge, 3],
    ['2 × 1.5 kg', charge, 3],
    ['2 x 1.5 kg', charge, 3],
    ['2 lb + 3 oz', charge, 2 * 0.4535924 + 3 * 0.02834952],
    ['5 ft 3 in - 3 in', length, 5 * 0.3048],
    ['5 ft -3 in', length, 5 * 0.3048 - 3 * 0.0254],
    ['1½" − 1 mm', length, 1.5 * 0.0254 - 0.001],
    ['(3/8 + 1/4) in', length, 0.625 * 0.0254],
    ['2 * (30 cm + 5 mm)', length, 0.61],
    ['-(2 mm - 14 mm)', length, 0.012],
    ['3.2 m / 4', length, 0.8],
    ['10 mm + 2 * 5 mm', length, 0.02],
    ['20 mm - 5 mm - 5 mm', length, 0.01],
    ['24 mm / 2 / 3', length, 0.004],
    ['24 mm/2/3', length, 0.004],
    ['6 mm / 1 1/2', length, 0.004],
    ['2 m * 3/8', length, 0.75],
    ['5 ft 3/8 in + 1 mm', length, 5 * 0.3048 + 0.375 * 0.0254 + 0.001],
    ['10 / 2.5 * 1 m', length, 4],
    ['3/8/2 * 1 m', length, 0.1875],
    ['12 / 4 / 2 * 1 m', length, 1.5],
    ['12 m2 / 4 m', length, 3],
    ['16 oz / 12 in', weightByLength, 0.45359237 / 0.3048],
    ['12 L / 2 min', flow, 0.1],
    ['0.5 L/min + 1 gpm', flow, 0.5 / 60 + 3.785412 / 60],
    ['1 L + 200 g', water, 1.2],
    ['230 V * 8 A', power, 1840],
    ['1 h 30 + 15 min', time, 6300],
    ['1:30 + 15 min', time, 6300],
    ['40 % + 10 %', share, 0.5],
    ['2 * 40 %', share, 0.8],
    ['50 % * 3 kg', charge, 1.5],
    ['10 °C + 9 °F', rise, 15],
    ['250 W/(m² K) * 2 m²', conductance, 500],
    ['250 W/(m² K) * (1 m² + 10 000 cm²)', conductance, 500],
    ['1e-3 m + 1 mm', length, 0.002],
  ])('%s', async (typed, asked, expected) => {
    const { value } = await read(typed, asked);
    expect(Math.abs((value ?? Number.NaN) / expected - 1)).toBeLessThan(1e-6);
  });

  test('a volume in a sum of water is taken as water, and the answer says so', async () => {
    expect((await read('1 L + 200 g', water)).note).toBe('Taken as water, 1 kg to the litre.');
    expect((await read('1 kg + 200 g', water)).note).toBeNull();
  });
});

describe('bare numbers alone have the unit that is shown', () => {
  test.each<[string, AskedQuantity, UnitSystem, number]>([
    ['300 + 20', diameter, 'metric', 0.32],
    ['5 * 2', diameter, 'us', 0.254],
    ['2 * (10 + 5)', time, 'metric', 1800],
    ['20 + 5', air, 'metric', 298.15],
    ['40 + 10', share, 'metric', 0.5],
  ])('%s in %o (%s)', async (typed, asked, system, expected) => {
    expect((await read(typed, asked, system)).value).toBeCloseTo(expected, 10);
  });

  test('or are in SI where that is asked for', () => {
    expect(readQuantity('0.3 + 0.02', { ...diameter, bareNumbers: 'SI' }, 'metric')).toMatchObject({ value: 0.32 });
  });
});

describe('a refusal names the field, the odd part and what is allowed', () => {
  test.each<[string, AskedQuantity, string]>([
    [
      '120 mm + 2 kg',
      diameter,
      "Pot diameter: “120 mm + 2 kg” can't be read: “2 kg” is not a length; allowed is 50–1500 mm.",
    ],
    [
      '3/8 in + 2',
      diameter,
      "Pot diameter: “3/8 in + 2” can't be read: “2” needs a unit, such as mm; allowed is 50–1500 mm.",
    ],
    ['2 kg * 3', diameter, "Pot diameter: “2 kg * 3” can't be read: “2 kg” is not a length; allowed is 50–1500 mm."],
    ['2 m * 3 m', diameter, 'Pot diameter: “2 m * 3 m” is not a length; allowed is 50–1500 mm.'],
    ['6 in / 2 in', diameter, 'Pot diameter: “6 in / 2 in” is not a length; allowed is 50–1500 mm.'],
    ['2 parsnips + 3 mm', diameter, 'Pot diameter: the unit “parsnips” is not known here; allowed is 50–1500 mm.'],
    ['2 * 1 m', diameter, 'Pot diameter: “2 * 1 m” comes to 2000 mm, which is too much; allowed is 50–1500 mm.'],
    ['50-120', diameter, 'Pot diameter: “50-120” comes to −70 mm, which is too little; allowed is 50–1500 mm.'],
    [
      '10-12 in',
      diameter,
      "Pot diameter: “10-12 in” can't be read: “10” needs a unit, such as mm; allowed is 50–1500 mm.",
    ],
    ['2 gal + 1 kg', charge, "Charge: “2 gal + 1 kg” can't be read: “2 gal” is not a weight; allowed is 0–1000 kg."],
    ['2 kg / 0', charge, "Charge: “2 kg / 0” can't be read: it divides by zero; allowed is 0–1000 kg."],
    [
      '2 kg / (1 m - 1 m)',
      charge,
      "Charge: “2 kg / (1 m - 1 m)” can't be read: it divides by zero; allowed is 0–1000 kg.",
    ],
    [
      '1 W * (2 m + 1 kg)',
      charge,
      "Charge: “1 W * (2 m + 1 kg)” can't be read: “2 m” and “1 kg” can't be added up; allowed is 0–1000 kg.",
    ],
    [
      '(2 kg + 1 kg',
      charge,
      "Charge: “(2 kg + 1 kg” can't be read: a closing bracket is missing; allowed is 0–1000 kg.",
    ],
    [
      '2 kg) + 1 kg',
      charge,
      "Charge: “2 kg) + 1 kg” can't be read: an opening bracket is missing; allowed is 0–1000 kg.",
    ],
    ['2 (3 kg)', charge, "Charge: “2 (3 kg)” can't be read: a sign is missing before a bracket; allowed is 0–1000 kg."],
    ['40 % + 2 kg', share, "Tub filled to: “40 % + 2 kg” can't be read: “2 kg” is not a plain number."],
    ['20 °C + 5 K', air, "Air temperature: “20 °C + 5 K” can't be read: one temperature is needed."],
  ])('%s', async (typed, asked, expected) => {
    expect(await refusal(typed, asked)).toBe(expected);
  });
});

describe('only numbers, units, four signs and brackets mean anything', () => {
  test.each([
    'sqrt(4) m',
    'pi * 1 m',
    'a = 2 m',
    '2 m; 3 m',
    '[1, 2] m',
    '2 m ^ 2 m',
    'f(x) = x',
    'import("fs")',
    'constructor * 2 m',
    '2 m + toString',
    '1 m + unit("2 m")',
    '2! m',
    '2 m to cm',
    'max(1 m, 2 m)',
    `${'('.repeat(5000)}1${')'.repeat(5000)}`,
    `1 m${' + 1 m'.repeat(5000)}`,
  ])('%s is refused', async (typed) => {
    expect(await refusal(typed, length)).toMatch(/^Tube length: /u);
  });
});
