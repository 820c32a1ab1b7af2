/** What builds before the one store kept on this device is there in this one. */
import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { readScenario } from '../../sim/index.ts';
import { onAnswer } from './answers-page.ts';
import { choiceOf, onBench } from './bench-page.ts';
import { openPage } from './open-page.ts';

function scenarioNamed(name: string, length_m: number) {
  const read = readScenario({ name, condenser: { length_m }, run: { duration_s: 3600 } });
  if (!read.ok) throw new Error('no such scenario');
  return read.scenario;
}

/** As the older builds wrote them: a database each, and a draft noted as the page was left. */
const OLD = [
  {
    database: 'limbeck',
    store: 'work',
    key: 'bench',
    value: {
      scenario: scenarioNamed('Kept before', 1.8),
      time_s: 600,
      speed: 60,
      units: 'us',
      theme: 'dark',
      foldedCharts: ['bed'],
      hintsDismissed: true,
      keysOn: true,
    },
  },
  {
    database: 'limbeck-boils',
    store: 'boils',
    key: 'boils',
    value: [scenarioNamed('One way', 1.2), scenarioNamed('Another way', 2.2)],
  },
  {
    database: 'limbeck-run-book',
    store: 'runs',
    key: 'book',
    value: {
      kind: 'limbeck-run-book',
      version: 1,
      logs: [
        {
          id: 'mb3k2x0a-1',
          name: 'First of June',
          notes: 'windy',
          scenario: scenarioNamed('Kept before', 1.8),
          units: { oil: 'mL', temperature: '°C', distillate: 'L' },
          rows: [{ time: '30', oil: '2.5', outlet: '28', tub: '', distillate: '0.6' }],
          draft: '',
          factors: ['oilContent'],
        },
      ],
      stills: [{ id: 'mb3k2x0a-2', name: 'As logged', scenario: scenarioNamed('As logged', 1.8), bands: {} }],
      unread: [{ from: 'another time' }],
    },
  },
];

/** Puts old values on a page of the same place that does not open the app. */
async function seed(page: Page, notes: Readonly<Record<string, unknown>>): Promise<void> {
  await page.evaluate(
    async ({ old, notes }) => {
      for (const { database, store, key, value } of old)
        await new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open(database);
          opening.onupgradeneeded = () => opening.result.createObjectStore(store);
          opening.onerror = () => reject(new Error('no storage'));
          opening.onsuccess = () => {
            const change = opening.result.transaction(store, 'readwrite');
            change.objectStore(store).put(value, key);
            change.oncomplete = () => {
              opening.result.close();
              resolve();
            };
          };
        });
      for (const [name, note] of Object.entries(notes))
        localStorage.setItem(`limbeck-parting-${name}`, JSON.stringify(note));
    },
    { old: OLD, notes },
  );
}

describe('what an older build kept', () => {
  test('stands on the bench, in the comparison and in the run book, and changes from here on are kept', async () => {
    const { page } = await openPage('favicon.svg');
    await seed(page, {});
    await page.goto(inject('appAddress'));
    const { lead, timeMark } = onBench(page);
    await lead.waitFor();
    expect(await page.locator('h1').textContent()).toBe('Kept before');
    expect(await timeMark.inputValue()).toBe('600');
    expect(await (await choiceOf(page, 'Units')).inputValue()).toBe('us');
    expect(await page.locator('html').getAttribute('data-theme')).toBe('dark');
    expect(await page.getByRole('button', { name: /^Heat in the bed/ }).getAttribute('aria-expanded')).toBe('false');

    await page.goto(new URL('#boils', inject('appAddress')).href);
    await onAnswer(page).lead.waitFor();
    const names = page.locator('.compare-name');
    await expect
      .poll(() => names.evaluateAll((fields) => fields.map((each) => (each as HTMLInputElement).value)))
      .toEqual(['One way', 'Another way']);

    await page.goto(new URL('#my-runs', inject('appAddress')).href);
    const notes = page.getByRole('textbox', { name: /^Notes/ });
    await notes.waitFor();
    expect(await notes.inputValue()).toBe('windy');
    expect(await page.getByText('1 entries cannot be read').count()).toBe(1);
    expect(await page.getByText('As logged').count()).toBeGreaterThan(0);
    await notes.fill('calm');
    await page.reload();
    await notes.waitFor();
    expect(await notes.inputValue()).toBe('calm');
  });

  test('and noted as its page was left comes before what it had written', async () => {
    const { page } = await openPage('favicon.svg');
    await seed(page, { bench: { ...OLD[0]?.value, scenario: scenarioNamed('Noted last', 1.9) } });
    await page.goto(inject('appAddress'));
    await onBench(page).lead.waitFor();
    expect(await page.locator('h1').textContent()).toBe('Noted last');
  });
});
