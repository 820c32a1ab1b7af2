import { exampleScenario } from '../../sim/index.ts';
import { expect, test } from 'vitest';
import { choose, enter, fullRun, goTo, openBench, openFile } from './bench-page.ts';

test('a currency, chosen once, stands wherever a cost does and is kept', async () => {
  const { page, verdict } = await openBench();
  await fullRun(page);
  await choose(page, 'Currency', 'EUR');
  await page.keyboard.press('Escape');
  await expect.poll(() => verdict.textContent()).toMatch(/costs €\d+\.\d\d at default prices/);
  await goTo(page, 'Run length');
  await expect.poll(() => page.locator('.answers-place').textContent()).toMatch(/€\d+\.\d\d/);
  await goTo(page, 'Size');
  await expect.poll(() => page.locator('.answers-place').textContent()).toMatch(/€\d+\.\d\d at the default price/);
  await page.reload();
  await goTo(page, 'Bench');
  await expect.poll(() => verdict.textContent()).toMatch(/costs €\d/);
});

test('gas is priced by the kilogram, as it is sold', async () => {
  const { page, verdict } = await openBench();
  const juniper = exampleScenario('juniper-dry-pot');
  await openFile(page, 'juniper.json', JSON.stringify(juniper));
  await fullRun(page);
  await page.getByRole('button', { name: /^Gas burner,/ }).press('Enter');
  const settings = page.getByRole('complementary', { name: 'Settings' });
  const price = settings.getByRole('textbox', { name: 'Energy price' });
  await price.waitFor();
  expect(await price.inputValue()).toBe('2.5');
  expect(await settings.textContent()).toMatch(/Price of bottled gas by its weight\. Each gives/);
  const before = await verdict.textContent();
  await enter(price, '5');
  await expect.poll(() => verdict.textContent()).not.toBe(before);
  expect(await price.inputValue()).toBe('5');
  await expect.poll(() => verdict.textContent()).toMatch(/at the prices in the settings/);
});
