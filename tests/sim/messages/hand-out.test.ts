import { describe, expect, test } from 'vitest';
import { englishReader, exampleScenario, examples, handOutOf, simulate, type Scenario } from '../../../sim/index.ts';

const sheetOf = (scenario: Scenario, units: 'metric' | 'us' = 'metric') =>
  handOutOf(simulate(scenario), null, null, englishReader(units));

describe('the sheet to take to the still', () => {
  test('tells heat and tap by the minute among what is to be seen, in the order of time', () => {
    const { plan } = sheetOf(exampleScenario('gentle-lavender'));
    const doing = plan.filter(({ does }) => does).map(({ time, sentence }) => `${time}: ${sentence}`);
    expect(doing[0]).toMatch(/^0\s\w+: Heat to 90\s%$/);
    expect(doing).toContainEqual(expect.stringMatching(/^26\smin: Heat to 50\s%$/));
    expect(doing).toContainEqual(expect.stringMatching(/Tap to 0.33\sL\/min/));
    expect(plan.some(({ does }) => !does)).toBe(true);
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
});
