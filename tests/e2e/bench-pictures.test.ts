/** Pictures of single parts at the moment of the time mark. */
import { expect, test } from 'vitest';
import { openBench } from './bench-page.ts';

test('the separator close up is reached from the separator, follows the time mark and tells what it shows', async () => {
  const { page, timeMark } = await openBench({ viewport: { width: 1280, height: 720 } });
  await page
    .getByRole('button', { name: /^Separator,/ })
    .first()
    .press('Enter');
  await page.getByRole('button', { name: 'See it close up' }).click();
  await page.getByRole('complementary', { name: 'Settings' }).waitFor({ state: 'hidden' });
  expect(await page.getByRole('combobox', { name: 'Chart', exact: true }).inputValue()).toBe('separator');
  const shown = page.locator('.first-chart').getByRole('img', { name: /^The separator at this moment/ });
  await shown.waitFor();
  const saying = () => shown.getAttribute('aria-label');
  await timeMark.fill('0');
  await expect.poll(saying).toContain('Oil layer none yet.');
  await timeMark.fill('5000');
  await expect.poll(saying).toMatch(/Oil layer \d.*mm thick.*Drops over \d+\Wµm: all caught\./u);
  const [picture, place] = await Promise.all([shown.boundingBox(), page.locator('.first-chart').boundingBox()]);
  expect((picture?.y ?? 0) + (picture?.height ?? 0)).toBeLessThanOrEqual((place?.y ?? 0) + (place?.height ?? 0) + 1);
});

test('the condenser close up is reached from the condenser and follows the time mark', async () => {
  const { page, timeMark } = await openBench({ viewport: { width: 390, height: 844 } });
  await page
    .getByRole('button', { name: /^Coil,/ })
    .first()
    .press('Enter');
  await page.getByRole('button', { name: 'See it close up' }).click();
  const shown = page.locator('.first-chart').getByRole('img', { name: /^The condenser at this moment/ });
  await shown.waitFor();
  const saying = () => shown.getAttribute('aria-label');
  await timeMark.fill('0');
  await expect.poll(saying).toContain('No vapour comes at this moment.');
  await timeMark.fill('5000');
  await expect.poll(saying).toMatch(/All has condensed after .+ of 1\.50\Wm\..+half of it in the first/u);
});
