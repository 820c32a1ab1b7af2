import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AskedQuantity, UnitSystem } from '../../../sim/units/index.ts';
import { entry, read, refusal } from './typing.ts';

const potDiameter: AskedQuantity = { title: 'Pot diameter', unit: 'm', path: 'pot.diameter_m', min: 0.05, max: 1.5 };
const length: AskedQuantity = { title: 'Length', unit: 'm', path: 'size' };
const power: AskedQuantity = { title: 'Rated power', unit: 'W', path: 'heat.ratedPower_W', min: 50, max: 60_000 };
const air: AskedQuantity = {
  title: 'Air temperature',
  unit: 'K',
  path: 'site.airTemperature_K',
  min: 253.15,
  max: 318.15,
};
const rise: AskedQuantity = { title: 'Rise', unit: 'K', path: 'temperatureDifference' };
const water: AskedQuantity = { title: 'Water in the pot', unit: 'kg', path: 'pot.water_kg', min: 0.05, max: 1500 };
const charge: AskedQuantity = { title: 'Charge', unit: 'kg', path: 'charge.mass_kg', min: 0, max: 1000 };
const flow: AskedQuantity = { title: 'Water flow', unit: 'kg/s', path: 'cooling.flow_kg_s', min: 0, max: 2 };
const runLength: AskedQuantity = { title: 'Run length', unit: 's', path: 'run.duration_s', min: 60, max: 259_200 };
const fill: AskedQuantity = { title: 'Tub filled to', unit: '1', path: 'cooling.tubFill', min: 0.1, max: 1 };
const oilContent: AskedQuantity = { title: 'Oil content', unit: 'kg/kg', path: 'charge.oilContent', min: 0, max: 0.3 };
const tubes: AskedQuantity = { title: 'Tubes', unit: '1', path: 'condenser.tubes', min: 1, max: 200, kind: 'integer' };
const barometer: AskedQuantity = {
  title: 'Barometer',
  unit: 'Pa',
  path: 'site.barometer_Pa',
  min: 55_000,
  max: 108_000,
  nullable: true,
};

describe('typed quantities are read in any unit (values by hand)', () => {
  test.each<[string, AskedQuantity, number]>([
    ['3/8 in', length, 0.009525],
    ['1 1/2 in', length, 0.0381],
    ['1½"', length, 0.0381],
    ['5 ft 3 in', length, 1.6002],
    ['0,8 mm', length, 0.0008],
    ['0.8 mm', length, 0.0008],
    ['32 cm', potDiameter, 0.32],
    ['1.2 kW', power, 1200],
    ['1.2 KW', power, 1200],
    ['1\u202f800\u202fW', power, 1800],
    ['10 000 W', power, 10_000],
    ['65 °F', air, 291.483_333_333_333],
    ['65 F', air, 291.483_333_333_333],
    ['−5 °C', air, 268.15],
    ['18 degrees Celsius', air, 291.15],
    ['290 K', air, 290],
    ['8.3 kg', water, 8.3],
    ['2.5 gal', water, 9.463_529_46],
    ['8 litres', water, 8],
    ['12 fl oz', water, 0.354_882_354_75],
    ['2 imp gal', water, 9.092_18],
    ['12 L/min', flow, 0.2],
    ['3 gpm', flow, 0.189_270_589_2],
    ['4 lb 6 oz', charge, 1.984_466_618_75],
    ['40 %', fill, 0.4],
    ['18 g/kg', oilContent, 0.018],
    ['1 h 30', runLength, 5400],
    ['1h30', runLength, 5400],
    ['1:52', runLength, 6720],
    ['90 min', runLength, 5400],
    ['1 1/2 h', runLength, 5400],
    ['2 min 30', runLength, 150],
    ['1.5 hours', runLength, 5400],
    ['29.92 in Hg', barometer, 101_320.75],
    ['0.30 per kWh', { title: 'Energy price', unit: '1/J' }, 0.3 / 3.6e6],
    ['£0.30/kWh', { title: 'Energy price', unit: '1/J' }, 0.3 / 3.6e6],
    ['10 per 1000 gal', { title: 'Water price', unit: '1/m³' }, 10 / 3.785_411_784],
    ['0.048 1/min', { title: 'Release rate', unit: '1/s' }, 0.0008],
    ['19 ft² h °F/BTU', { title: 'Wall', unit: 'm² K/W' }, 3.346_093_49],
    ['5.7°', { title: 'Slope', unit: 'rad' }, 0.099_483_77],
  ])('%s', async (typed, asked, expected) => {
    const { value } = await read(typed, asked);
    expect(Math.abs((value ?? Number.NaN) / expected - 1)).toBeLessThan(1e-7);
  });
});

describe('a bare number has the unit that is shown', () => {
  test.each<[string, AskedQuantity, UnitSystem, number]>([
    ['320', potDiameter, 'metric', 0.32],
    ['10', potDiameter, 'us', 0.254],
    ['20', air, 'metric', 293.15],
    ['50', air, 'us', 283.15],
    ['1.5', flow, 'metric', 0.025],
    ['90', runLength, 'metric', 5400],
    ['40', fill, 'metric', 0.4],
  ])('%s in %o (%s)', async (typed, asked, system, expected) => {
    expect((await read(typed, asked, system)).value).toBeCloseTo(expected, 10);
  });
});

describe('temperatures and their differences are kept apart', () => {
  test('10 °C is 283.15 K as a temperature and 10 K as a rise', async () => {
    expect((await read('10 °C', air)).value).toBe(283.15);
    expect((await read('10 °C', rise)).value).toBe(10);
  });

  test('18 °F as a rise is 10 K', async () => {
    expect((await read('18 °F', rise)).value).toBeCloseTo(10, 12);
    expect((await read('18 F', rise)).value).toBeCloseTo(10, 12);
  });

  test('two temperatures are not added up', async () => {
    expect(await refusal('10 °C 5 °C', air)).toContain('one temperature is needed');
  });
});

describe('water may be typed as a volume', () => {
  test('and the answer says that a litre was taken as a kilogram', async () => {
    expect((await read('8 L', water)).note).toBe('Taken as water, 1 kg to the litre.');
    expect((await read('8 kg', water)).note).toBeNull();
  });

  test('but a charge of plant may not', async () => {
    expect(await refusal('2 gal', charge)).toBe('Charge: “2 gal” is not a weight; allowed is 0–1000 kg.');
  });
});

describe('a refusal names field, value and allowed range in the shown unit', () => {
  test.each<[string, AskedQuantity, UnitSystem, string]>([
    ['5 m', potDiameter, 'metric', 'Pot diameter: 5000 mm is too much; allowed is 50–1500 mm.'],
    ['5 m', potDiameter, 'us', 'Pot diameter: 196.9 in is too much; allowed is 1.969–59.05 in.'],
    ['1 mm', potDiameter, 'metric', 'Pot diameter: 1 mm is too little; allowed is 50–1500 mm.'],
    ['1.2 kW', potDiameter, 'metric', 'Pot diameter: “1.2 kW” is not a length; allowed is 50–1500 mm.'],
    [
      '2 parsnips',
      potDiameter,
      'metric',
      'Pot diameter: the unit “parsnips” is not known here; allowed is 50–1500 mm.',
    ],
    ['', potDiameter, 'metric', 'Pot diameter: a number is needed; allowed is 50–1500 mm.'],
    ['2.5', tubes, 'metric', 'Tubes: 2.5 is not a whole number; allowed is 1–200.'],
    ['30', barometer, 'metric', 'Barometer: 30 hPa is too little; allowed is 550–1080 hPa, or leave it empty.'],
  ])('%s for %o (%s)', async (typed, asked, system, expected) => {
    expect(await refusal(typed, asked, system)).toBe(expected);
  });

  test('a comma that could be either is asked about, except where only one reading makes sense', async () => {
    expect(await refusal('1,500 W', power)).toContain('leave it out or use a point');
    expect((await read('1,500 W', power, 'us')).value).toBe(1500);
    expect((await read('1,500.5 W', power)).value).toBe(1500.5);
    expect((await read('1,5 kW', power)).value).toBe(1500);
  });

  test('a field that may be left open takes an empty text', async () => {
    expect((await read('', barometer)).value).toBeNull();
    expect((await read('open', barometer)).value).toBeNull();
  });
});

describe('whatever is typed', () => {
  test('ends in a finite number inside the range or in a sentence, never in an exception', async () => {
    const pieces = fc.array(
      fc.constantFrom(
        '1',
        '0',
        '/',
        ' ',
        '.',
        ',',
        '-',
        'mm',
        'in',
        'kW',
        'h',
        '°',
        'C',
        '(',
        ')',
        '^',
        '²',
        'per',
        '%',
        'constructor',
        'e',
        '½',
      ),
      { maxLength: 8 },
    );
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          fc.string({ unit: 'grapheme', maxLength: 20 }),
          pieces.map((list) => list.join('')),
        ),
        fc.constantFrom(potDiameter, power, air, runLength, fill),
        async (typed, asked) => {
          const parsed = await entry(typed, asked);
          if (parsed.ok)
            expect(parsed.value).toSatisfy(
              (value: number) => value >= (asked.min ?? -Infinity) && value <= (asked.max ?? Infinity),
            );
          else expect(parsed.message.startsWith(`${asked.title}: `)).toBe(true);
        },
      ),
      { numRuns: 1500 },
    );
  });
});
