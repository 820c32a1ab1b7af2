import { describe, expect, test } from 'vitest';
import { chargeFromBotanical, exampleScenario, type Scenario } from '../../../sim/index.ts';
import { withValueAtPath } from '../../../src/state/field-path.ts';
import { nameAfter, withName } from '../../../src/pages/bench/settings/named-after.ts';

const lavender = exampleScenario('gentle-lavender');
const rosemary = Object.fromEntries(
  Object.entries(chargeFromBotanical('rosemary', 'dry')).map(([key, value]) => [`charge.${key}`, value]),
);
const changed = (scenario: Scenario, values: Readonly<Record<string, unknown>>): Scenario =>
  Object.entries(values).reduce((whole, [path, value]) => withValueAtPath(whole, path, value), scenario);

describe('a still that nobody has named', () => {
  test('is called after its new plant, and drops the note that spoke of the old one', () => {
    expect(withName(rosemary, lavender)).toMatchObject({ ...rosemary, name: 'Rosemary over water', note: '' });
  });

  test('goes on being called after plant and place', () => {
    const still = changed(lavender, withName(rosemary, lavender));
    expect(withName({ 'pot.layout': 'steam' }, still)).toMatchObject({ name: 'Rosemary by steam from a boiler' });
    expect(withName({ 'pot.layout': 'water' }, still)).toMatchObject({ name: 'Rosemary in water' });
  });

  test('keeps its name and note where plant and place stay', () => {
    expect(withName({ 'condenser.length_m': 3 }, lavender)).toEqual({ 'condenser.length_m': 3 });
    expect(withName({ 'charge.state': lavender.charge.state }, lavender)).toEqual({
      'charge.state': lavender.charge.state,
    });
  });
});

describe('a still that the reader has named, or written a note for', () => {
  test('keeps the name', () => {
    const named = { ...lavender, name: 'South bed, first cut' };
    expect(withName(rosemary, named)).toEqual(rosemary);
  });

  test('keeps the note', () => {
    const noted = { ...lavender, note: 'Mine.' };
    expect(withName(rosemary, noted)).not.toHaveProperty('note');
  });

  test('is not named for a plant of one’s own', () => {
    const own = { ...lavender, charge: { ...lavender.charge, botanical: 'own' } };
    expect(nameAfter(own)).toBeNull();
    expect(withName({ 'charge.botanical': 'own' }, lavender)).toEqual({ 'charge.botanical': 'own' });
  });
});
