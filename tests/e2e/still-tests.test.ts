/** A test of the still without plant, from empty sheet to the next plan. */
import { expect, test } from 'vitest';
import { goTo, SEARCH } from './answers-page.ts';
import { enter } from './bench-page.ts';
import { openPage } from './open-page.ts';

test('a heat-up test sets the heat that arrives and the heat loss, and is kept', async () => {
  const { page } = await openPage('#still-tests');
  const field = (name: string) => page.getByRole('textbox', { name, exact: true });
  const row = (place: number) => page.getByRole('group', { name: `Reading ${place}`, exact: true });
  const found = page.getByRole('table', { name: /^Found values/ });

  await page.getByText('Still to fill in: Water in the pot', { exact: false }).waitFor(SEARCH);
  await enter(field('Water in the pot'), '2 gal');
  await enter(field('Water at the start'), '61 F');
  await enter(field('Air'), '20');
  await enter(field('Setting of the heat'), '100 %');
  await enter(field('Heat off after'), '20 min');
  const readings = [
    ['5 min', '35'],
    ['10 min', '55'],
    ['20 min', '88'],
    ['50 min', '79'],
  ] as const;
  for (const [k, [time, warmth]] of readings.entries()) {
    await enter(row(k + 1).getByRole('textbox', { name: 'Time since heat on' }), time);
    await enter(row(k + 1).getByRole('textbox', { name: 'Water', exact: true }), warmth);
  }
  await found.waitFor(SEARCH);
  expect(await found.getByRole('row').count()).toBe(3);
  await page.getByRole('button', { name: /how the found value is worked out/ }).click();
  await page.getByRole('dialog').locator('.katex').first().waitFor(SEARCH);
  await page.getByRole('dialog').getByRole('button', { name: 'Close', exact: true }).click();
  const share = (await found.getByRole('row').nth(1).getByRole('cell').first().textContent()) ?? '';
  await page.getByRole('button', { name: 'Set on the bench' }).click();
  // Once it is set, the still of the bench begins where the test ended.
  await expect.poll(() => found.getByRole('row').nth(1).textContent(), SEARCH).toContain(`was set to ${share}`);

  await goTo(page, 'Run book');
  await page.locator('.kept-name').filter({ hasText: ', tested' }).waitFor(SEARCH);
  await page.goto(new URL('#still-tests', page.url()).href);
  await page.reload();
  await expect.poll(() => field('Water at the start').inputValue(), SEARCH).toMatch(/^16\.1/u);
  expect(await row(3).getByRole('textbox', { name: 'Water', exact: true }).inputValue()).toMatch(/^88/u);

  await page.getByRole('radio', { name: 'How well does the coil cool?' }).check();
  await page.getByText(/^Set the clamp to about/).waitFor();
  await page.getByRole('radio', { name: 'How far does the water mix the tub?' }).check();
  await page.getByText('let in about half the tub', { exact: false }).waitFor();
});
