import { describe, expect, test } from 'vitest';
import { SEARCH } from './answers-page.ts';
import { axeFaults, fullRun, openBench } from './bench-page.ts';

describe('the verdict’s numbers', () => {
  test('each open their working from the keyboard, and give the focus back', async () => {
    const { page, verdict } = await openBench({ bypassCSP: true });
    await fullRun(page);
    const buttons = verdict.getByRole('button', { name: /^Show the working of: / });
    expect(await buttons.count()).toBeGreaterThanOrEqual(8);
    const sheet = page.getByRole('dialog', { name: 'The working' });

    const outlet = verdict.getByRole('button', { name: /^Show the working of: The distillate comes out/ });
    await outlet.focus();
    await page.keyboard.press('Enter');
    await sheet.locator('.katex').first().waitFor(SEARCH);
    expect(await sheet.locator('.working-result').textContent()).toMatch(/\d\s°C$/);
    expect(await sheet.locator('.working-origin').textContent()).toBe(
      'The number comes from the run’s summary: warmest distillate.',
    );
    expect(await axeFaults(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await expect.poll(() => sheet.isVisible()).toBe(false);
    expect(await outlet.evaluate((element) => element === document.activeElement)).toBe(true);

    await verdict.getByRole('button', { name: /^Show the working of: The coil condenses/ }).click();
    await expect.poll(() => sheet.locator('.working-result').textContent(), SEARCH).toMatch(/\d\sm$/);
    await sheet.getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => sheet.isVisible()).toBe(false);
  });
});
