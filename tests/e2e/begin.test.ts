import { describe, expect, test } from 'vitest';
import { DRAWS, goTo } from './answers-page.ts';
import { choose, enter, fullRun, openBench, press } from './bench-page.ts';

describe('a new user with a pot, a gas ring and a tub', () => {
  test('comes from the first screen to a sheet to print in a few actions, in either system of units', async () => {
    const { page } = await openBench();
    await fullRun(page);
    await goTo(page, 'Begin');
    const field = (name: string) => page.getByRole('textbox', { name });
    await field('Volume of the pot').waitFor();
    expect(await page.locator('.begin-row.is-assumed').count()).toBe(11);
    await enter(field('Volume of the pot'), '30 L');
    await page.getByRole('combobox', { name: 'Heat', exact: true }).selectOption('outdoor-gas-burner');
    await enter(field('Full power of the heat'), '7 kW');
    await enter(field('Water in the tub'), '60');
    await expect.poll(() => page.locator('.begin-row.is-assumed').count()).toBe(7);
    await page.getByRole('button', { name: 'Work out this still' }).press('Enter');
    const told = page.getByRole('region', { name: 'What comes of it' });
    await told.waitFor(DRAWS);
    const bought = await told.locator('.begin-next li').first().textContent();
    expect(bought).toMatch(/7\.0\u202fkW full out .* into a 60\u202fL tub .* nine runs of ten/);
    expect(await told.getByRole('heading').allTextContents()).toEqual([
      'Does it work?',
      'The weakest part',
      'What to buy next',
    ]);

    await choose(page, 'Units', 'us');
    await page.keyboard.press('Escape');
    await expect.poll(() => told.textContent()).toMatch(/gal tub at 59\u202f°F/);
    expect(await field('Volume of the pot').inputValue()).toMatch(/^7\.9/);
    await told.getByRole('link', { name: 'Building sheet' }).click();
    await page.locator('.sheet-figure.is-coil svg').waitFor(DRAWS);
    await page.getByRole('button', { name: 'Print the sheet' }).waitFor();
    expect(await page.getByRole('radio', { name: 'for full heat' }).isChecked()).toBe(true);

    await goTo(page, 'Begin');
    await page.getByRole('button', { name: /^Skip.*Water in the tub$/ }).click();
    expect(await page.locator('.begin-row.is-assumed').count()).toBe(8);
    await press(page, 'Files', 'Examples');
    await page
      .getByRole('dialog', { name: 'Start from' })
      .getByRole('link', { name: /A few questions/ })
      .click();
    await page.getByRole('dialog').waitFor({ state: 'hidden' });
  });
});
