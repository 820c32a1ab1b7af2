import { describe, expect, test } from 'vitest';
import { examples, readScenario, type Scenario } from '../../../sim/index.ts';
import { valueAtPath } from '../../../src/state/field-path.ts';
import { changeMany } from '../../../src/state/edit.ts';
import { madeToFit } from '../../../src/pages/bench/pickers/make-it-fit.ts';
import { createOwnEntries, type TextStore } from '../../../src/pages/bench/pickers/own-entries.ts';
import { PART_PICKERS } from '../../../src/pages/bench/pickers/part-picker-list.ts';
import { withFuelPrice } from '../../../src/pages/bench/settings/goes-along.ts';
import { isInUse, matching } from '../../../src/pages/bench/pickers/picker-row.ts';
import { said, still } from './still.ts';

const picker = (id: string) => {
  const found = PART_PICKERS.find((each) => each.id === id);
  if (!found) throw new Error(`no picker ${id}`);
  return found;
};
const row = (pickerId: string, id: string) => {
  const found = picker(pickerId)
    .rows('metric')
    .find((each) => each.id === id);
  if (!found) throw new Error(`no row ${id}`);
  return found;
};
const exampleScenarios: readonly Scenario[] = examples.map(({ scenario }) => {
  const read = readScenario(scenario);
  if (!read.ok) throw new Error('an example is wrong');
  return read.scenario;
});

describe('whatever is picked from the library', () => {
  test.each(PART_PICKERS.map(({ id }) => id))('%s: gives a still that holds together, on every example', (id) => {
    for (const scenario of exampleScenarios) {
      for (const { id: rowId, values } of picker(id).rows('metric')) {
        const edit = changeMany(scenario, madeToFit(scenario, values, 'metric').values);
        expect([rowId, edit.ok ? [] : edit.problems]).toEqual([rowId, []]);
      }
    }
  });

  test.each(PART_PICKERS.map(({ id }) => id))('%s: has a fact for every column and a source for its numbers', (id) => {
    const { columns, rows } = picker(id);
    for (const units of ['metric', 'us'] as const) {
      for (const each of rows(units)) {
        expect([
          each.id,
          each.facts.length,
          each.facts.filter((fact) => fact === '' || /NaN|undefined|–$/u.test(fact)),
        ]).toEqual([each.id, columns.length, []]);
        expect(each.origins.every(({ provenance }) => provenance.source.length > 0)).toBe(true);
      }
    }
  });

  test.each(PART_PICKERS.map(({ id }) => id))('%s: is marked as in use afterwards', (id) => {
    const scenario = still();
    const { rows, knownBy } = picker(id);
    for (const { id: rowId, values } of rows('metric')) {
      const edit = changeMany(scenario, madeToFit(scenario, values, 'metric').values);
      expect([rowId, edit.ok && isInUse(values, knownBy, (path) => valueAtPath(edit.scenario, path))]).toEqual([
        rowId,
        true,
      ]);
    }
  });
});

describe('a pick that needs more than itself', () => {
  test('a small pot takes less water and plant, and says so', () => {
    const { values, notes } = madeToFit(
      still({ 'pot.water_kg': 8, 'charge.mass_kg': 2 }),
      row('vessel', 'catering-pot-20').values,
      'metric',
    );
    expect(Number(values['pot.water_kg'])).toBeLessThan(3);
    expect(said(notes.join('; '))).toMatch(/the water to .* L/u);
  });

  test('a thick tube widens the pitch of the coil', () => {
    const thick = { 'condenser.insideDiameter_m': 0.05, 'condenser.outsideDiameter_m': 0.054 };
    const { values } = madeToFit(still(), thick, 'metric');
    expect(values['condenser.coilPitch_m']).toBe(0.081);
  });

  test('one that fits is left as picked', () => {
    const { values } = row('tube', 'astm-b88-l-1-4');
    expect(madeToFit(still(), values, 'metric')).toEqual({ values, notes: [] });
  });

  test('one that nothing can help is left for the model to refuse', () => {
    const impossible = { 'pot.diameter_m': 9 };
    expect(madeToFit(still(), impossible, 'metric').values).toEqual(impossible);
  });
});

describe('searching the plants', () => {
  const plants = picker('botanical').rows('metric');
  test.each([
    ['lavender', 'lavender-true'],
    ['LAVANDULA angust', 'lavender-true'],
    ['sinks', 'clove-bud'],
  ])('“%s” finds %s', (typed, id) => {
    expect(matching(plants, typed, '').map((each) => each.id)).toContain(id);
  });

  test('may be narrowed to a part of the plant', () => {
    const seeds = matching(plants, '', 'seed');
    expect(seeds.length).toBeGreaterThan(0);
    expect(seeds.every(({ group }) => group === 'seed')).toBe(true);
  });

  test('for a word that is not there finds nothing', () => {
    expect(matching(plants, 'parsnip', '')).toEqual([]);
  });
});

describe('entries of one’s own', () => {
  const memory = (): TextStore & { kept: Map<string, string> } => {
    const kept = new Map<string, string>();
    return { kept, getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
  };

  test('are kept by library and can be removed', () => {
    const store = memory();
    const own = createOwnEntries(store);
    expect(own.keep('tube', '  Scrap yard coil ', { 'condenser.insideDiameter_m': 0.009 })).toBe(true);
    expect(createOwnEntries(store).list('tube')).toEqual([
      { id: 'scrap-yard-coil', name: 'Scrap yard coil', values: { 'condenser.insideDiameter_m': 0.009 } },
    ]);
    expect(own.list('tub')).toEqual([]);
    expect(own.remove('tube', 'scrap-yard-coil')).toBe(true);
    expect(own.list('tube')).toEqual([]);
  });

  test('of the same name replace each other; without a name nothing is kept', () => {
    const own = createOwnEntries(memory());
    own.keep('vessel', 'Old churn', { 'pot.height_m': 0.5 });
    own.keep('vessel', 'old churn', { 'pot.height_m': 0.6 });
    expect(own.list('vessel').map(({ values }) => values['pot.height_m'])).toEqual([0.6]);
    expect(own.keep('vessel', '  ', {})).toBe(false);
  });

  test.each(['not json', '[]', '{"tube":7}', '{"tube":[{"id":1}]}', 'null'])(
    'that were damaged (%s) are left out without a word',
    (text) => {
      const store = memory();
      store.kept.set('limbeck.own', text);
      expect(createOwnEntries(store).list('tube')).toEqual([]);
    },
  );

  test('that a full browser refuses are reported', () => {
    const full: TextStore = {
      getItem: () => null,
      setItem: () => {
        throw new Error('full');
      },
    };
    expect(createOwnEntries(full).keep('tub', 'Bath', {})).toBe(false);
  });
});

describe('a heat source from the library', () => {
  const own = 1e-7;
  const price = 'heat.energyPrice_J';
  const plate = still({ 'heat.kind': 'electric-plate', [price]: own });

  test('leaves one’s own price where it takes the same', () => {
    const same = withFuelPrice(row('heat-source', 'induction').values, plate);
    expect(same.values).not.toHaveProperty([price]);
    expect(same.says).toBe('');
  });

  const airing = /Flames give off carbon monoxide: use it outdoors/;

  test('brings the default price of another fuel and says so, and that a flame needs air', () => {
    const { values } = row('heat-source', 'wood-stove');
    const wood = withFuelPrice(values, plate);
    expect(wood.values).toEqual(values);
    expect(wood.says).toMatch(/^The price is now a default price: 0\.40 per kg of wood\. /);
    expect(wood.says).toMatch(airing);
    expect(values[price]).toBeCloseTo(0.4 / 14.5e6, 14);
  });

  test('kept under one’s own name brings the price one gave it', () => {
    const kept = { ...row('heat-source', 'wood-stove').values, [price]: own };
    const { says, ...also } = withFuelPrice(kept, plate);
    expect(also).toEqual({ values: kept });
    expect(says).toMatch(airing);
    expect(says).not.toContain('default price');
  });

  test('is known in the list whatever its fuel costs', () => {
    const { knownBy } = picker('heat-source');
    const { values } = row('heat-source', 'catering-plate');
    const edit = changeMany(plate, { ...values, [price]: own });
    expect(edit.ok && isInUse(values, knownBy, (path) => valueAtPath(edit.scenario, path))).toBe(true);
  });
});
