import { describe, expect, test } from 'vitest';
import { chargeFromBotanical, heatSources, fieldAt, scenarioFields, type FieldInfo } from '../../../sim/index.ts';
import { defaultOf, valueWords } from '../../../src/pages/bench/settings/field-values.ts';
import { whatGoesAlong } from '../../../src/pages/bench/settings/goes-along.ts';
import { scheduleWords } from '../../../src/pages/bench/settings/schedule-words.ts';
import { said, still } from './still.ts';

const field = (path: string): FieldInfo => {
  const found = fieldAt(path);
  if (found?.path !== path) throw new Error(`no field ${path}`);
  return found;
};
describe('a value in words', () => {
  test.each<[string, unknown, string]>([
    ['pot.diameter_m', 0.32, '320 mm'],
    ['condenser.slope_rad', Math.PI / 36, '5°'],
    ['site.barometer_Pa', null, 'left open'],
    ['condenser.kind', 'jacketed-tube', 'tube in a jacket'],
    ['charge.botanical', 'rosemary', '“rosemary”'],
    ['note', '', 'empty'],
    ['cooling.ice', [], 'none'],
    [
      'cooling.ice',
      [
        { at_s: 0, mass_kg: 4 },
        { at_s: 60, mass_kg: 6 },
      ],
      '10 kg in 2 lots',
    ],
    [
      'charge.composition',
      [
        { constituent: 'linalool', share: 0.7 },
        { constituent: 'camphor', share: 0.3 },
      ],
      'linalool and camphor',
    ],
  ])('%s %o', (path, value, expected) => {
    expect(said(valueWords(value, field(path), 'metric'))).toBe(expected);
  });

  test('every field can say its own value and default, in both systems', () => {
    const scenario = still();
    for (const each of scenarioFields)
      for (const units of ['metric', 'us'] as const)
        expect(valueWords(defaultOf(each, scenario), each, units)).not.toMatch(/undefined|NaN|object/u);
  });
});

describe('the default of a plant’s figure', () => {
  test('is that of the chosen plant in its state', () => {
    const scenario = still({ 'charge.botanical': 'rosemary', 'charge.state': 'dry' });
    expect(defaultOf(field('charge.moisture'), scenario)).toBe(chargeFromBotanical('rosemary', 'dry').moisture);
    expect(defaultOf(field('charge.release.heldRate_1_s.oxygenate'), scenario)).toBe(
      chargeFromBotanical('rosemary', 'dry').release?.heldRate_1_s.oxygenate,
    );
  });

  test('is the schema’s for a plant of one’s own and for the weight', () => {
    expect(defaultOf(field('charge.moisture'), still({ 'charge.botanical': 'own' }))).toBe(
      field('charge.moisture').default,
    );
    expect(defaultOf(field('charge.mass_kg'), still())).toBe(field('charge.mass_kg').default);
  });
});

describe('turning fresh into dried', () => {
  test('brings the dried plant’s figures and keeps the weight', () => {
    const along = whatGoesAlong(
      'charge.state',
      'dry',
      still({ 'charge.botanical': 'rosemary', 'charge.state': 'fresh' }),
    );
    expect(along?.values['charge.moisture']).toBe(chargeFromBotanical('rosemary', 'dry').moisture);
    expect(Object.keys(along?.values ?? {})).not.toContain('charge.mass_kg');
  });

  test('brings nothing for other choices or a plant of one’s own', () => {
    expect(whatGoesAlong('condenser.kind', 'bundle', still())).toBeNull();
    expect(whatGoesAlong('charge.state', 'dry', still({ 'charge.botanical': 'own' }))).toBeNull();
  });
});

describe('another tap temperature', () => {
  const TAP = 'cooling.tapTemperature_K.0.value';

  test('fills the tub as warm as it, where it was as warm as the tap before', () => {
    const still18 = still({ [TAP]: 291.15, 'cooling.startTemperature_K': 291.15 });
    const along = whatGoesAlong(TAP, 295.15, still18);
    expect(along?.values).toEqual({ [TAP]: 295.15, 'cooling.startTemperature_K': 295.15 });
    expect(along?.says).toMatch(/tub/);
  });

  test('leaves a tub alone that was filled warmer or colder', () => {
    expect(whatGoesAlong(TAP, 295.15, still({ [TAP]: 291.15, 'cooling.startTemperature_K': 285.15 }))).toBeNull();
  });
});

describe('another kind of heat source', () => {
  const mains = still({ 'heat.kind': 'electric-plate' });

  test.each(['gas-ring', 'gas-burner', 'wood-fire', 'induction'] as const)('%s brings its own figures', (kind) => {
    const along = whatGoesAlong('heat.kind', kind, mains);
    const usual = heatSources.find((source) => source.kind === kind);
    expect(along?.values).toMatchObject({
      'heat.kind': kind,
      'heat.ratedPower_W': usual?.ratedPower_W.value.typical,
      'heat.shareToPot': usual?.efficiency.value.typical,
      'heat.lag_s': usual?.lag_s.value.typical,
    });
    expect(along?.says).toContain(usual?.name);
  });

  test.each([
    ['gas-burner', 2.5 / 46.33e6, '2.50 per kg of bottled gas'],
    ['wood-fire', 0.4 / 14.5e6, '0.40 per kg of wood'],
    ['gas-ring', 0.1 / 3.6e6, '0.10 per kWh of natural gas'],
  ] as const)(
    '%s brings the price of its fuel, called a default price, and the danger of its fumes',
    (kind, price, said) => {
      const along = whatGoesAlong('heat.kind', kind, mains);
      expect(along?.values['heat.energyPrice_J']).toBeCloseTo(price, 14);
      expect(along?.says).toContain(`default price: ${said}`);
      expect(along?.says).toMatch(/carbon monoxide/);
    },
  );

  test('with the same fuel keeps one’s own price, and back on the mains brings that of electricity', () => {
    const same = whatGoesAlong('heat.kind', 'induction', mains);
    expect(same?.values).not.toHaveProperty(['heat.energyPrice_J']);
    expect(same?.says).not.toMatch(/price|carbon/);
    const back = whatGoesAlong('heat.kind', 'electric-plate', still({ 'heat.kind': 'wood-fire' }));
    expect(back?.values['heat.energyPrice_J']).toBe(field('heat.energyPrice_J').default);
  });
});

describe('a schedule in one line', () => {
  const heat = field('heat.setting');
  test.each([
    [[{ at_s: 0, value: 1, shape: 'step' as const }], '100 % throughout'],
    [
      [
        { at_s: 0, value: 1, shape: 'step' as const },
        { at_s: 1920, value: 0.6, shape: 'step' as const },
      ],
      '100 %, from 32 min 60 %',
    ],
    [
      [
        { at_s: 0, value: 1, shape: 'step' as const },
        { at_s: 4200, value: 0.4, shape: 'ramp' as const },
      ],
      '100 %, then evenly to 40 % at 1 h 10 min',
    ],
    [
      [
        { at_s: 0, value: 1, shape: 'step' as const },
        { at_s: 0, after: 'first-drop' as const, value: 0.5, shape: 'step' as const },
        { at_s: 600, after: 'first-drop' as const, value: 0.4, shape: 'ramp' as const },
      ],
      '100 %, from the first drop 50 %, then evenly to 40 % at 10 min after the first drop',
    ],
  ])('%o', (knots, expected) => {
    expect(said(scheduleWords(knots, heat, 'metric'))).toBe(expected);
  });

  test('counts what would make it long', () => {
    const many = Array.from({ length: 9 }, (_, index) => ({
      at_s: index * 600,
      value: 1 - index / 10,
      shape: 'step' as const,
    }));
    expect(scheduleWords(many, heat, 'metric')).toMatch(/, and 4 more$/u);
  });
});
