import { describe, expect, test } from 'vitest';
import { goTo, onBench, openBench, seconds } from './bench-page.ts';

describe('without a network', () => {
  test('the bench opens and runs, and the other places are there', async () => {
    const { page } = await openBench();
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
    await page.context().setOffline(true);
    await page.reload();
    const { lead, timeMark } = onBench(page);
    await lead.waitFor();
    await timeMark.focus();
    await page.keyboard.press('End');
    expect(await seconds(timeMark)).toBeGreaterThan(3600);
    const before = await lead.textContent();
    await page.getByRole('slider', { name: 'Coil' }).fill('0.5');
    await expect.poll(() => lead.textContent()).not.toBe(before);
    await goTo(page, 'Run length');
    await page.locator('.answers-place h2').first().waitFor();
  });

  test('the app may be installed: it has a name, a start and icons that exist', async () => {
    const { page } = await openBench();
    const found = await page.evaluate(async () => {
      const address = document.querySelector<HTMLLinkElement>('link[rel="manifest"]')?.href ?? '';
      const manifest = (await (await fetch(address)).json()) as {
        name: string;
        start_url: string;
        display: string;
        icons: { src: string; sizes: string; type: string }[];
      };
      const icons = await Promise.all(
        manifest.icons.map(async ({ src, sizes, type }) => ({
          sizes,
          is: (await fetch(new URL(src, address))).headers.get('content-type') === type,
        })),
      );
      return { ...manifest, icons };
    });
    expect(found).toMatchObject({ name: 'Limbeck', start_url: './', display: 'standalone' });
    expect(found.icons.every(({ is }) => is)).toBe(true);
    expect(found.icons.map(({ sizes }) => sizes)).toEqual(expect.arrayContaining(['192x192', '512x512']));
  });
});
