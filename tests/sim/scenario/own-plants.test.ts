/** Plants of the reader's own: read from files, refused where they are wrong, charged like those of the library. */
import { describe, expect, it } from 'vitest';
import {
  botanicalOfOwn,
  botanicals,
  chargeFromBotanical,
  chargeFromPlant,
  dilutionMessages,
  englishReader,
  exampleScenario,
  isOwnPlant,
  judgeDilution,
  ownPlantLike,
  ownPlantMessages,
  ownPlantName,
  ownPlantProblems,
  ownPlantsJsonSchema,
  readOwnPlants,
  readScenario,
  simulate,
  wordsOfOwn,
  type OwnPlant,
} from '../../../sim/index.ts';
import { neverDistilled } from '../../../sim/library/look-alikes.ts';

const clary: OwnPlant = {
  ...ownPlantLike('sage'),
  name: 'Clary sage',
  latinName: 'Salvia sclarea',
  lookAlikes: [{ plant: 'foxglove', tellApart: 'No {smell}', severity: 'deadly' }],
};
const asFile = (...plants: readonly unknown[]) => JSON.parse(JSON.stringify({ version: 2, plants })) as unknown;
const kinds = (plant: OwnPlant) => ownPlantProblems(plant).map(({ kind }) => kind);

describe('a file of plants', () => {
  it('gives back what was written', () => {
    const read = readOwnPlants(asFile(clary));
    expect(read).toEqual({ ok: true, plants: [JSON.parse(JSON.stringify(clary))] });
  });

  it('of the first version, which knew no plants gathered wild, is still read', () => {
    const before = { ...clary, wild: undefined, identifiedBy: undefined };
    const read = readOwnPlants(JSON.parse(JSON.stringify({ version: 1, plants: [before] })));
    expect(read).toEqual({ ok: true, plants: [JSON.parse(JSON.stringify(clary))] });
  });

  it('is refused whole where anything in it is wrong, and says what', () => {
    const told = (input: unknown) => {
      const read = readOwnPlants(input);
      return read.ok ? [] : read.problems.map(ownPlantMessages(englishReader('us')).problem);
    };
    expect(told('nothing')).toEqual(['This file holds no plants.']);
    expect(told({ version: 9, plants: [] })).toEqual([expect.stringContaining('version 9')]);
    expect(told(asFile({ ...clary, kind: 'root' }))).toEqual([expect.stringContaining('plants.0.kind')]);
    expect(told(asFile(clary, { ...clary, name: 'clary SAGE' }))).toEqual([expect.stringContaining('another plant')]);
    expect(told(asFile({ ...clary, name: 'x'.repeat(51) }))).toEqual([expect.stringContaining('plants.0.name')]);
  });

  it('has a schema with a unit at every number', () => {
    const numbers: unknown[] = [];
    const walk = (node: unknown): void => {
      if (Array.isArray(node)) node.forEach(walk);
      else if (typeof node === 'object' && node !== null) {
        const of = node as Record<string, unknown>;
        if (of['type'] === 'number' && of['title'] !== undefined) numbers.push(of['unit']);
        Object.values(of).forEach(walk);
      }
    };
    walk(ownPlantsJsonSchema());
    expect(numbers.length).toBeGreaterThan(5);
    expect(numbers.every((unit) => typeof unit === 'string')).toBe(true);
  });
});

describe('a plant of one’s own', () => {
  it('is refused by what makes no plant', () => {
    expect(kinds(clary)).toEqual([]);
    expect(kinds({ ...clary, name: ' ' })).toEqual(['no-name']);
    expect(kinds({ ...clary, name: 'Rosemary' })).toEqual(['name-taken']);
    expect(kinds({ ...clary, wild: true })).toEqual(['not-identified']);
    expect(kinds({ ...clary, wild: true, identifiedBy: 'Mara Quill' })).toEqual([]);
    expect(kinds({ ...clary, states: {} })).toEqual(['no-state']);
    expect(kinds({ ...clary, composition: [{ constituent: 'linalool', share: 0.9 }] })).toEqual(['shares-not-whole']);
    expect(
      kinds({
        ...clary,
        composition: [
          { constituent: 'linalool', share: 0.5 },
          { constituent: 'linalool', share: 0.5 },
        ],
      }),
    ).toEqual(['constituent-twice']);
    const fresh = clary.states.fresh;
    if (!fresh) throw new Error('sage is charged fresh');
    const withFresh = (changed: Partial<typeof fresh>) =>
      kinds({ ...clary, states: { fresh: { ...fresh, ...changed } } });
    expect(withFresh({ packing_kg_m3: 800 })).toEqual(['packed-too-tight']);
    expect(withFresh({ oil_m3_kg: { low: 5e-6, typical: 4e-6, high: 6e-6 } })).toEqual(['yields-out-of-order']);
    expect(withFresh({ moisture: 0.95, oil_m3_kg: { low: 1e-5, typical: 2e-5, high: 5e-5 } })).toEqual([
      'too-much-oil',
    ]);
    expect(kinds({ ...clary, homeRun_s: [600, 300] })).toEqual(['range-out-of-order']);
  });

  it.each(['Pennyroyal', 'Garden rue', 'wild wormwood', 'Thuja', 'Bitter almond leaves', 'a mint (Mentha pulegium)'])(
    'is never %s',
    (name) => {
      expect(kinds({ ...clary, name, latinName: '' })).toEqual(['never-distil']);
      expect(neverDistilled(name)?.why).not.toBe('');
    },
  );

  it.each(botanicals.map(({ name, latinName }) => `${name.value} ${latinName.value}`))(
    'may be like %s, which no line of the list forbids',
    (name) => expect(neverDistilled(name)).toBeUndefined(),
  );

  it('that says what its likeness says is charged like it', () => {
    for (const { id } of botanicals) {
      const copy = botanicalOfOwn({ ...ownPlantLike(id), name: 'Copy' });
      const charge = chargeFromPlant(copy);
      const usual = chargeFromBotanical(id);
      expect(charge.botanical).toBe('own: Copy');
      expect(Object.keys(charge)).toEqual(Object.keys(usual));
      // The library rounds the room for steam to a thousandth.
      expect(charge.voidShare).toBeCloseTo(usual.voidShare ?? 0, 3);
      for (const key of ['moisture', 'oilContent', 'bulkDensity_kg_m3', 'particleSize_m'] as const)
        expect(charge[key] as number, `${id} ${key}`).toBeCloseTo(usual[key] as number, 6);
    }
  });

  it('runs in a still, under its own name', () => {
    const still = exampleScenario('gentle-lavender');
    const read = readScenario({
      ...still,
      charge: { ...still.charge, ...chargeFromPlant(botanicalOfOwn(clary)), mass_kg: 1 },
    });
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(isOwnPlant(read.scenario.charge.botanical)).toBe(true);
    expect(ownPlantName(read.scenario.charge.botanical)).toBe('Clary sage');
    expect(simulate(read.scenario).summary.oilCollected_mL).toBeGreaterThan(1);
    expect(readScenario({ charge: { botanical: 'owner' } }).ok).toBe(false);
  });

  it('keeps its words as they were typed, without the marks of quantities', () => {
    expect(wordsOfOwn(clary).lookAlikes[0]?.tellApart).toBe('No (smell)');
  });

  it('has no limits that are known, which is said and is no leave', () => {
    const oil = { botanical: 'own: Clary sage', composition: clary.composition, share: 0.01 };
    const verdict = judgeDilution([oil], 'body');
    expect(verdict.findings.map(({ kind }) => kind)).toContain('limit-unknown');
    const messages = dilutionMessages(englishReader('metric'));
    expect(verdict.findings.map((finding) => messages.finding(finding)).join(' ')).toContain(
      'Clary sage: we know no limits for this oil',
    );
    expect(messages.lead(verdict, 'body')).not.toContain('Within');
  });
});
