/** Two windows of one browser that write at once. */
import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { exampleScenario } from '../../sim/index.ts';
import { enter, onBench, press, typedValue } from './bench-page.ts';
import { openPage } from './open-page.ts';

const logOf = (page: Page) => page.getByRole('combobox', { name: 'Log', exact: true });
const notesOf = (page: Page) => page.getByRole('textbox', { name: /^Notes/ });
const logsOf = (page: Page) => logOf(page).locator('option');

describe('two windows', () => {
  test('that write at once lose nothing, follow each other, and say what both have changed', async () => {
    const { page: one } = await openPage('#run-book');
    const other = await one.context().newPage();
    await other.goto(new URL('#run-book', inject('appAddress')).href);
    const windows = [one, other];
    const begin = windows.map((page) => page.getByRole('button', { name: 'New log' }));
    for (const button of begin) await button.waitFor();
    await Promise.all(begin.map((button) => button.click()));
    for (const page of windows) await expect.poll(() => logsOf(page).count()).toBe(2);
    for (const page of windows) await logOf(page).selectOption({ index: 0 });
    await Promise.all(windows.map((page, index) => notesOf(page).fill(index === 0 ? 'calm' : 'windy')));
    for (const page of windows) await expect.poll(() => logsOf(page).count()).toBe(3);
    const said = () => Promise.all(windows.map((page) => page.getByText('Both are kept').count()));
    await expect.poll(async () => (await said()).sort()).toEqual([0, 1]);

    await one.reload();
    await expect.poll(() => logsOf(one).count()).toBe(3);
    const notes: string[] = [];
    for (const index of [0, 1, 2]) {
      await logOf(one).selectOption({ index });
      notes.push(await notesOf(one).inputValue());
    }
    expect(notes.sort()).toEqual(['', 'calm', 'windy']);
  });

  test('leave a comparison that found no room beside the one at hand, to be shown or deleted', async () => {
    const { page } = await openPage('#run-book');
    await page.getByRole('button', { name: 'New log' }).waitFor();
    await page.evaluate(
      async (scenarios) => {
        const opening = indexedDB.open('limbeck-kept');
        const database = await new Promise<IDBDatabase>((then) => (opening.onsuccess = () => then(opening.result)));
        const writing = database.transaction('entries', 'readwrite');
        const value = scenarios.map((scenario) => ({ scenario, origin: null }));
        writing.objectStore('entries').put({ version: 2, changed_ms: 1, value, revision: 'b.1' }, 'compared-beside/b');
        await new Promise((then) => (writing.oncomplete = then));
        database.close();
      },
      [exampleScenario('class-glass')],
    );
    await page.evaluate(() => (location.hash = '#compare'));
    const names = page.locator('.compare-name');
    const other = page.getByText(/^Kept from another window/);
    await other.waitFor();
    const [atHand, glass] = [await names.first().inputValue(), exampleScenario('class-glass').name];
    expect(await other.textContent()).toContain(glass);
    await page.getByRole('button', { name: 'Show it and keep this one' }).click();
    await expect.poll(() => names.first().inputValue()).toBe(glass);
    await expect.poll(() => other.textContent()).toContain(atHand);
    await page.getByRole('button', { name: 'Delete it' }).click();
    await expect.poll(() => other.count()).toBe(0);
  });

  test('that change a still at once both go on: joined where they touch different fields, else with a still each', async () => {
    const { page: one } = await openPage('');
    await onBench(one).lead.waitFor();
    await enter(typedValue(one, 'Coil'), '2 m');
    await one.waitForTimeout(900);
    const other = await one.context().newPage();
    await other.goto(inject('appAddress'));
    await onBench(other).lead.waitFor();
    const windows = [one, other];
    const valuesOf = (control: string) => Promise.all(windows.map((page) => typedValue(page, control).inputValue()));
    expect(await valuesOf('Coil')).toEqual(['2', '2']);
    // Each looks at what the other does once its stills are fetched.
    for (const page of windows) {
      await press(page, 'Files', 'My stills');
      await page.getByRole('list', { name: 'My stills' }).waitFor();
      await page.keyboard.press('Escape');
    }
    await Promise.all([enter(typedValue(one, 'Coil'), '3 m'), enter(typedValue(other, 'Charge'), '1.5 kg')]);
    await expect.poll(() => valuesOf('Coil')).toEqual(['3', '3']);
    await expect.poll(() => valuesOf('Charge')).toEqual(['1.5', '1.5']);

    await Promise.all([enter(typedValue(one, 'Coil'), '3.5 m'), enter(typedValue(other, 'Coil'), '4 m')]);
    const said = () => Promise.all(windows.map((page) => page.getByText('Both are kept among your stills').count()));
    await expect.poll(said).toEqual([1, 1]);
    expect(await valuesOf('Coil')).toEqual(['3.5', '4']);
    const titles = await Promise.all(windows.map((page) => page.locator('h1').textContent()));
    expect(titles.sort()).toEqual(['Gentle lavender', 'Gentle lavender (other window)']);

    // Each window is opened anew with its own, in whatever order they were left.
    await one.waitForTimeout(900);
    for (const page of windows) await page.reload();
    for (const page of windows) await onBench(page).lead.waitFor();
    expect(await valuesOf('Coil')).toEqual(['3.5', '4']);
  });
});
