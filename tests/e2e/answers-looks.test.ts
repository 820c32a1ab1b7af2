import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { goTo, openAnswer, SEARCH } from './answers-page.ts';
import { axeFaults, choose, LOOKS } from './bench-page.ts';

/** What must stand before a place is judged. */
const ready: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  Size: async (page) => page.locator('.tube-table tbody tr').first().waitFor(SEARCH),
  'Run length': async (page) => page.locator('.spread-row').first().waitFor(SEARCH),
  Compare: async (page) => page.locator('.compare-now').first().waitFor(SEARCH),
  'Run book': async (page) => page.getByRole('heading', { name: 'Fitted stills' }).waitFor(SEARCH),
};

describe('the answers', () => {
  test('hold no fault that axe can find, in any look', async () => {
    const { page } = await openAnswer('run-book', { bypassCSP: true });
    await page.getByRole('button', { name: 'New log' }).click();
    for (const [place, stands] of Object.entries(ready)) {
      await goTo(page, place);
      await stands(page);
      for (const [look, ask] of LOOKS) {
        await choose(page, 'Theme', look);
        expect(await axeFaults(page, ask), `${place}, ${look}`).toEqual([]);
      }
    }
  });

  test('fit a phone and a wide screen without scrolling sideways', async () => {
    const { page } = await openAnswer('size', { viewport: { width: 360, height: 740 } });
    for (const [place, stands] of Object.entries(ready)) {
      await goTo(page, place);
      await stands(page);
      for (const [width, height] of [
        [2560, 1440],
        [360, 740],
      ] as const) {
        await page.setViewportSize({ width, height });
        await expect
          .poll(
            () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
            { message: `${place} on ${width} px` },
          )
          .toBeLessThanOrEqual(0);
      }
    }
  });
});

describe('the working', () => {
  test('opens from the keyboard, is typeset in the page’s own fonts, can be saved, and gives the focus back', async () => {
    const { page } = await openAnswer('run-length');
    const button = page.getByRole('button', { name: 'Show the working' });
    await button.focus();
    await page.keyboard.press('Enter');
    const sheet = page.getByRole('dialog', { name: 'The working' });
    await sheet.locator('.katex').first().waitFor(SEARCH);
    expect(await sheet.locator('.working-result').textContent()).toMatch(/^Time to 90 % of the oil: 1\sh/);
    await expect
      .poll(() =>
        page.evaluate(
          () =>
            [...document.fonts].filter(({ family, status }) => family.includes('KaTeX_Main') && status === 'loaded')
              .length,
        ),
      )
      .toBeGreaterThan(0);
    const numbers = sheet.getByRole('combobox', { name: 'Number' });
    await numbers.selectOption({ label: 'Tube needed to condense' });
    await expect.poll(() => sheet.locator('.working-step').count()).toBeGreaterThan(3);
    expect(await sheet.locator('.working-source').first().textContent()).toMatch(/^Source: .{5}/);
    expect(await sheet.locator('.working-origin').textContent()).toBe(
      'The number comes from the run’s summary: peak of the condensing length.',
    );
    await page.keyboard.press('Escape');
    await expect.poll(() => sheet.count()).toBe(0);
    expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
  });

  test('holds no fault that axe can find', async () => {
    const { page } = await openAnswer('run-length', { bypassCSP: true });
    await page.getByRole('button', { name: 'Show the working' }).click();
    await page.locator('.katex').first().waitFor(SEARCH);
    expect(await axeFaults(page)).toEqual([]);
  });
});
