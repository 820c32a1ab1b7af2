/** The reader's own stills, walked by keyboard, and stills of somebody else beside them. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { exampleScenario } from '../../sim/index.ts';
import { shareHash } from '../../src/state/share-link.ts';
import { axeFaults, downloaded, enter, onBench, openBench, openFile, press, typedValue } from './bench-page.ts';
import { openPage } from './open-page.ts';

const sheetOf = (page: Page) => page.getByRole('dialog', { name: 'My stills' });
const namesIn = (page: Page, list: string) =>
  sheetOf(page).getByRole('list', { name: list, exact: true }).locator('.shelf-name').allTextContents();
const titleOf = (page: Page) => page.locator('h1').textContent();

/** Presses what a name stands on, as a hand on the keyboard does. */
async function pressKeyOn(page: Page, name: string): Promise<void> {
  await sheetOf(page).getByRole('button', { name, exact: true }).focus();
  await page.keyboard.press('Enter');
}

describe('my stills', () => {
  test('are opened, renamed, copied, deleted and had back by keyboard', async () => {
    const { page } = await openBench();
    await enter(typedValue(page, 'Coil'), '2.35 m');
    await page.locator('h1').click();
    await page.keyboard.press('m');
    await expect.poll(() => namesIn(page, 'My stills')).toEqual(['Open Gentle lavender']);

    await pressKeyOn(page, 'Copy Gentle lavender');
    await expect.poll(() => namesIn(page, 'My stills')).toHaveLength(2);
    await pressKeyOn(page, 'Rename Gentle lavender (2)');
    await page.keyboard.type('Tern Hollow, row two');
    await page.keyboard.press('Enter');
    await expect
      .poll(async () => (await namesIn(page, 'My stills')).sort())
      .toEqual(['Open Gentle lavender', 'Open Tern Hollow, row two']);
    // Escape leaves the field first, then the sheet.
    await pressKeyOn(page, 'Rename Tern Hollow, row two');
    await page.keyboard.type('not this');
    await page.keyboard.press('Escape');
    expect(await sheetOf(page).isVisible()).toBe(true);
    await pressKeyOn(page, 'Open Tern Hollow, row two');
    await expect.poll(() => titleOf(page)).toBe('Tern Hollow, row two');
    expect(await sheetOf(page).isVisible()).toBe(false);
    await enter(typedValue(page, 'Coil'), '3 m');

    await press(page, 'Files', 'My stills');
    await pressKeyOn(page, 'Delete Gentle lavender');
    await expect.poll(() => namesIn(page, 'My stills')).toEqual(['Open Tern Hollow, row two']);
    await pressKeyOn(page, 'Undo');
    await expect.poll(() => namesIn(page, 'My stills')).toHaveLength(2);
    await pressKeyOn(page, 'Delete Gentle lavender');
    await page.keyboard.press('Escape');
    await page.waitForTimeout(900);
    await page.reload();
    await onBench(page).lead.waitFor();
    expect([await titleOf(page), await typedValue(page, 'Coil').inputValue()]).toEqual(['Tern Hollow, row two', '3']);
    await page.keyboard.press('m');
    await sheetOf(page).getByText('Deleted (1)').click();
    await sheetOf(page)
      .getByText(/^Kept until /)
      .waitFor();
    await pressKeyOn(page, 'Restore');
    await expect.poll(() => namesIn(page, 'My stills')).toHaveLength(2);
  });

  test('have their versions, and go back to one', async () => {
    const { page } = await openBench();
    const coil = typedValue(page, 'Coil');
    await enter(coil, '2.35 m');
    await page.locator('h1').click();
    await page.keyboard.press('m');
    await pressKeyOn(page, 'Versions of Gentle lavender');
    const back = sheetOf(page).getByRole('button', { name: /^Go back to this version of/ });
    await expect.poll(() => back.count()).toBe(1);
    await back.press('Enter');
    await expect.poll(() => coil.inputValue()).toBe('1.5');
    await page.keyboard.press('m');
    await pressKeyOn(page, 'Versions of Gentle lavender');
    await expect.poll(() => back.count()).toBe(2);
    await back.first().press('Enter');
    await expect.poll(() => coil.inputValue()).toBe('2.35');
  });

  test('are found by name when there are many', async () => {
    const { page } = await openBench();
    await enter(typedValue(page, 'Coil'), '2.35 m');
    await page.locator('h1').click();
    await page.keyboard.press('m');
    for (let count = 0; count < 8; count++) await pressKeyOn(page, 'Copy Gentle lavender');
    const find = sheetOf(page).getByRole('searchbox', { name: 'Find' });
    await find.fill('(4)');
    await expect.poll(() => namesIn(page, 'My stills')).toEqual(['Open Gentle lavender (4)']);
    await find.fill('elderflower');
    await sheetOf(page).getByText('No still has this in its name.').waitFor();
  });
});

test.each(['light', 'dark'] as const)(
  'have no accessibility fault that axe can find on a %s ground',
  async (colorScheme) => {
    const { page } = await openBench({ colorScheme, bypassCSP: true });
    await enter(typedValue(page, 'Coil'), '2.35 m');
    await openFile(page, 'class.json', JSON.stringify({ name: 'Of the class' }));
    await page.getByText('This still came from a file.').waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await press(page, 'Files', 'My stills');
    await pressKeyOn(page, 'Copy Gentle lavender');
    await pressKeyOn(page, 'Delete Gentle lavender (2)');
    await pressKeyOn(page, 'Versions of Gentle lavender');
    await sheetOf(page)
      .getByText(/^Deleted/)
      .click();
    await sheetOf(page).locator('.shelf-versions').waitFor();
    expect(await axeFaults(page)).toEqual([]);
  },
);

describe('a still of somebody else', () => {
  const glass = exampleScenario('class-glass');

  test('stands beside one’s own, keeps its changes over a reload, and goes when asked', async () => {
    const { page } = await openBench();
    const coil = typedValue(page, 'Coil');
    await enter(coil, '2.35 m');
    await openFile(page, 'class.json', JSON.stringify({ ...exampleScenario('gentle-lavender'), name: 'Of the class' }));
    const strip = page.getByText('This still came from a file. Yours is as you left it.');
    await strip.waitFor();
    await enter(coil, '4 m');
    await page.waitForTimeout(900);
    await page.reload();
    await strip.waitFor();
    expect([await titleOf(page), await coil.inputValue()]).toEqual(['Of the class', '4']);

    const [hash, name] = [await shareHash(glass), glass.name];
    await page.evaluate((link) => (location.hash = link), hash);
    await page.getByText('This still came from a link.').waitFor();
    expect(await titleOf(page)).toBe(name);
    await page.getByRole('button', { name: 'Back to my still' }).press('Enter');
    await expect.poll(() => coil.inputValue()).toBe('2.35');
    expect(await page.getByRole('button', { name: 'Back to my still' }).count()).toBe(0);
    await page.keyboard.press('m');
    await expect.poll(() => namesIn(page, 'From a link or a file')).toEqual(['Open Of the class']);
    expect(await namesIn(page, 'My stills')).toEqual(['Open Gentle lavender']);
    await pressKeyOn(page, 'Keep as mine');
    await expect.poll(() => namesIn(page, 'My stills')).toHaveLength(2);
  });

  test('is one’s own once it is kept, and a visitor again by undo', async () => {
    const { page } = await openPage(await shareHash(glass));
    const keep = page.getByRole('button', { name: 'Keep as mine' });
    // Nothing of the reader's own stands on this bench yet.
    expect(await page.getByText('This still came from a link.').textContent()).not.toContain('Yours');
    expect(await page.getByRole('button', { name: 'Back to the one before' }).count()).toBe(1);
    await keep.press('Enter');
    await expect.poll(() => keep.count()).toBe(0);
    await page.keyboard.press('m');
    await expect.poll(() => namesIn(page, 'My stills')).toEqual([`Open ${glass.name}`]);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await keep.waitFor();
  });

  test('that this version cannot read is offered as a file, and nothing else happens', async () => {
    const { page, lead } = await openBench();
    const before = await lead.textContent();
    const newer = { ...glass, version: 99 };
    const hash = await shareHash(newer as unknown as typeof glass);
    await page.evaluate((link) => (location.hash = link), hash);
    const save = page.getByRole('button', { name: 'Save what it holds' });
    await save.waitFor();
    const saved = await downloaded(page, () => save.click());
    expect(JSON.parse(saved.text)).toMatchObject({ version: 99, name: glass.name });
    await page.evaluate(() => (location.hash = '#still=9.abc'));
    const link = await downloaded(page, () => page.getByRole('button', { name: 'Save the link' }).click());
    expect(link.text.trim()).toMatch(/#still=9\.abc$/);
    expect(await lead.textContent()).toBe(before);
  });
});
