import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { DRAWS, goTo } from './answers-page.ts';
import { choose, enter, fullRun, openBench, press } from './bench-page.ts';

/** What a reader may do on the way from a fresh page to a printed sheet. */
const MOST_ACTIONS = 12;

/** Does and counts what a reader does: to fill a field, to choose and to press are one each. */
function createHand(page: Page, by: 'mouse' | 'keyboard') {
  let actions = 0;
  const counted = async (doing: Promise<unknown>): Promise<void> => {
    actions += 1;
    await doing;
  };
  const byKeys = async (target: Locator, ...keys: readonly string[]): Promise<void> => {
    await target.focus();
    for (const key of keys) await page.keyboard.press(key);
  };
  return {
    actions: () => actions,
    press: (target: Locator) => counted(by === 'mouse' ? target.click() : byKeys(target, 'Enter')),
    fill: (field: Locator, text: string) => counted(enter(field, text)),
    /** By the keyboard an option is found by its first letters. */
    choose: (box: Locator, option: string) =>
      counted(by === 'mouse' ? box.selectOption({ label: option }) : byKeys(box, ...option.slice(0, 7).split(''))),
  };
}

describe('a new user with a pot, a gas ring and a tub', () => {
  test.each([
    ['metric', 'mouse', '30 L', '60 L'],
    ['us', 'keyboard', '7.9 gal', '16 gal'],
  ] as const)(
    'comes in %s units, by %s, from a fresh page to a printed sheet in a dozen actions',
    async (units, by, pot, tub) => {
      const { page } = await openBench();
      await fullRun(page);
      if (units === 'us') {
        await choose(page, 'Units', 'us');
        await page.keyboard.press('Escape');
      }
      const hand = createHand(page, by);
      await hand.press(
        page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Begin', exact: true }),
      );
      const field = (name: string) => page.getByRole('textbox', { name });
      await field('Volume of the pot').waitFor();
      expect(await page.locator('.begin-row.is-assumed').count()).toBe(11);
      await hand.fill(field('Volume of the pot'), pot);
      const heat = page.getByRole('combobox', { name: 'Heat', exact: true });
      const ring = (await heat.locator('option[value="outdoor-gas-burner"]').textContent()) ?? '';
      await hand.choose(heat, ring);
      expect(await heat.inputValue()).toBe('outdoor-gas-burner');
      await hand.fill(field('Full power of the heat'), '7 kW');
      await hand.fill(field('Water in the tub'), tub);
      await expect.poll(() => page.locator('.begin-row.is-assumed').count()).toBe(7);
      await hand.press(page.getByRole('button', { name: 'Work out this still' }));
      const told = page.getByRole('region', { name: 'What comes of it' });
      await told.waitFor(DRAWS);
      expect(await told.locator('.begin-next li').first().textContent()).toMatch(
        units === 'us'
          ? /7\.0\skW full out .*\sgal tub at 59\s°F .* nine runs of ten/
          : /7\.0\skW full out .* into a 60\sL tub .* nine runs of ten/,
      );
      expect(await told.getByRole('heading').allTextContents()).toEqual([
        'Does it work?',
        'The weakest part',
        'What to buy next',
      ]);
      await hand.press(told.getByRole('link', { name: 'Building sheet' }));
      await page.locator('.sheet-figure.is-coil svg').waitFor(DRAWS);
      await page.evaluate(() => {
        globalThis.print = () => document.body.setAttribute('data-printed', '');
      });
      await hand.press(page.getByRole('button', { name: 'Print the sheet' }));
      await page.locator('body[data-printed]').waitFor();
      expect(hand.actions()).toBeLessThanOrEqual(MOST_ACTIONS);

      expect(await page.getByRole('radio', { name: 'for full heat' }).isChecked()).toBe(true);
      const pdf = (await page.pdf({ format: units === 'us' ? 'Letter' : 'A4' })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b/g)?.length).toBeLessThanOrEqual(2);
      if (units === 'us') return;

      await goTo(page, 'Begin');
      await page.getByRole('button', { name: /^Skip.*Water in the tub$/ }).click();
      expect(await page.locator('.begin-row.is-assumed').count()).toBe(8);
      await press(page, 'Files', 'Examples');
      await page
        .getByRole('dialog', { name: 'Start from' })
        .getByRole('link', { name: /A few questions/ })
        .click();
      await page.getByRole('dialog').waitFor({ state: 'hidden' });
    },
  );
});
