import { describe, expect, test } from 'vitest';
import { englishReader, exampleScenario, examples, handOutOf, simulate, type Scenario } from '../../../sim/index.ts';

const sheetOf = (scenario: Scenario, units: 'metric' | 'us' = 'metric') =>
  handOutOf(simulate(scenario), null, null, englishReader(units));

describe('the sheet to take to the still', () => {
  test('tells heat and tap by the minute among what is to be seen, in the order of time', () => {
    const { plan } = sheetOf(exampleScenario('gentle-lavender'));
    const doing = plan.filter(({ does }) => does).map(({ time, sentence }) => `${time}: ${sentence}`);
    expect(doing[0]).toMatch(/^0\s\w+: Heat to 90\s%$/);
    expect(doing).toContainEqual(expect.stringMatching(/^2[67]\smin( \d+\ss)?: Heat to 50\s% at the first drop$/));
    expect(doing).toContainEqual(expect.stringMatching(/Tap to 0.33\sL\/min/));
    expect(plan.some(({ does }) => !does)).toBe(true);
  });

  test('says what to wait for, and leaves out what the run never comes to', () => {
    const lavender = exampleScenario('gentle-lavender');
    const plan = (knots: Scenario['heat']['setting'], flow: Scenario['cooling']['flow_kg_s']) =>
      sheetOf({
        ...lavender,
        heat: { ...lavender.heat, setting: knots },
        cooling: { ...lavender.cooling, flow_kg_s: flow },
        run: { ...lavender.run, duration_s: 3600 },
      }).plan.flatMap(({ does, sentence }) => (does ? [sentence.replaceAll('\u202f', ' ')] : []));
    expect(
      plan(
        [
          { at_s: 0, value: 1, shape: 'step' },
          { at_s: 3000, value: 0.9, shape: 'step' },
          { at_s: 600, after: 'first-drop', value: 0.6, shape: 'ramp' },
          { at_s: 3000, after: 'first-drop', value: 0.4, shape: 'step' },
        ],
        [
          { at_s: 0, value: 0.005, shape: 'step' },
          { at_s: 0, after: 'first-boil', value: 0, shape: 'step' },
        ],
      ),
    ).toEqual([
      'Heat to 100 %',
      'Tap to 0.30 L/min',
      'Tap closed at the first boil',
      'Heat evenly up or down to reach 60 % at 10 min after the first drop',
    ]);
  });

  test('names the cost in the reader’s currency, and none where nothing has a price', () => {
    const lavender = exampleScenario('gentle-lavender');
    const costs = (scenario: Scenario) =>
      handOutOf(simulate(scenario), null, null, englishReader('metric', 'EUR')).expected.filter(({ name }) =>
        /cost/.test(name),
      );
    expect(costs(lavender)).toEqual([
      expect.objectContaining({ value: expect.stringMatching(/^€\d+\.\d\d$/) as string }),
    ]);
    expect(
      costs({
        ...lavender,
        heat: { ...lavender.heat, energyPrice_J: 0 },
        cooling: { ...lavender.cooling, waterPrice_m3: 0 },
      }),
    ).toEqual([]);
  });

  test('drops nothing that has to be done or can hurt where a plan is too long for it', () => {
    const lavender = exampleScenario('gentle-lavender');
    const setting = Array.from({ length: 14 }, (_, index) => ({
      at_s: index * 300,
      value: index % 2 === 0 ? 1 : 0.9,
      shape: 'step' as const,
    }));
    const { plan, more } = sheetOf({ ...lavender, heat: { ...lavender.heat, setting } });
    expect(plan.length).toBe(16);
    expect(more).toBeGreaterThan(0);
    expect(plan.filter(({ does }) => does)).toHaveLength(15);
  });

  test.each(examples.map(({ id }) => id))('has sizes, numbers and the licence for %s', (id) => {
    const { sizes, expected, cautions, lead } = sheetOf(exampleScenario(id), 'us');
    expect(sizes.length).toBeGreaterThanOrEqual(6);
    expect(expected.length).toBeGreaterThan(4);
    expect(cautions.join(' ')).toMatch(/licence/);
    expect(lead.length).toBeGreaterThan(10);
    expect(sizes.map(({ value }) => value).join(' ')).not.toMatch(/NaN|undefined|\bmm\b/);
  });

  test('warns of the metal, of what the oil does to it, and of the plant', () => {
    const lavender = exampleScenario('gentle-lavender');
    const cautions = (change: Partial<Scenario>) =>
      handOutOf(simulate({ ...lavender, ...change }), null, null, englishReader('metric'), ['Not for cats.']).cautions;
    const copper = { ...lavender.condenser, material: 'copper' } as const;
    const brass = { ...lavender.condenser, material: 'brass' } as const;
    const clove = { ...lavender.charge, composition: [{ constituent: 'eugenol', share: 1 }] };
    expect(cautions({ condenser: copper }).join(' ')).toMatch(/lead-free solder/);
    expect(cautions({ condenser: copper }).join(' ')).not.toMatch(/phenols/);
    expect(cautions({ condenser: copper, charge: clove }).join(' ')).toMatch(/rich in phenols/);
    expect(cautions({ condenser: brass }).join(' ')).toMatch(/lead and zinc/);
    expect(cautions({ pot: { ...lavender.pot, material: 'carbon-steel' } }).join(' ')).toMatch(/galvanised/);
    expect(cautions({}).at(-1)).toBe('Not for cats.');
  });
});
