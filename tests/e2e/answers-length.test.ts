import { describe, expect, test } from 'vitest';
import { UNCERTAIN_IDS } from '../../sim/answers/ensemble/factors.ts';
import { goTo, openAnswer, SEARCH } from './answers-page.ts';
import { exampleScenario } from '../../sim/index.ts';
import { downloaded, enter, openFile, press } from './bench-page.ts';

/** The typical run, each uncertain value alone at both ends, and 2000 random ones. */
const ALL = 1 + 2 * UNCERTAIN_IDS.length + 2000;

describe('how long to run', () => {
  test('is answered by shares of the oil and by a rule of one’s own, refuses in words, and follows the bench', async () => {
    const { page, lead } = await openAnswer('run-length');
    await expect
      .poll(() => lead.textContent(), SEARCH)
      .toMatch(/^Half of the \d+\smL of oil that can come is collected by \d+\smin, 90 % by .+\.$/);
    const rows = page.getByRole('region', { name: /each share of the oil/ }).locator('tbody tr');
    expect(await rows.locator('th').allTextContents()).toEqual([
      '50\u202f%',
      '80\u202f%',
      '90\u202f%',
      '95\u202f%',
      '99\u202f%',
    ]);

    for (const [field, text] of [
      ['Runs', '3'],
      ['Runs', 'many'],
      ['Seed', '1.5'],
      ['Share of the oil to stop at', '120 %'],
      ['Oil of ten minutes to stop at', '3 kg'],
    ] as const) {
      const typed = page.getByRole('textbox', { name: field, exact: true });
      await enter(typed, text);
      await page.getByRole('alert').first().waitFor();
      await typed.press('Escape');
      await expect.poll(() => page.getByRole('alert').count(), { message: `${field}: ${text}` }).toBe(0);
    }

    const advice = page.locator('.stop-advice');
    await expect.poll(() => advice.textContent()).toMatch(/^Stop at .+ 90\s% of the oil that can come\./);
    await page.getByRole('radio', { name: /this share of the oil/ }).focus();
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => page.getByRole('radio', { name: /ten minutes bring less/ }).isChecked()).toBe(true);
    await enter(page.getByRole('textbox', { name: 'Share of the oil to stop at' }), '80');
    await expect.poll(() => advice.textContent(), SEARCH).toMatch(/80\s% of the oil that can come\./);
    const minute = /^Stop at ([^:,]+)/.exec((await advice.textContent()) ?? '')?.[1] ?? '';
    await page.getByRole('button', { name: 'End the run there' }).click();
    await expect
      .poll(() => page.locator('.answer-more').first().textContent(), SEARCH)
      .toMatch(/^The planned run ends at .+, with \d+\smL collected: \d+\s% of the oil that can come\./);
    await goTo(page, 'Bench');
    await expect.poll(() => page.locator('.playback-of').textContent()).toBe(`of ${minute}`);

    await goTo(page, 'Run length');
    const before = await lead.textContent();
    await press(page, 'Files', 'Examples');
    await page
      .getByRole('dialog', { name: 'Start from' })
      .getByRole('button', { name: /Rosemary in a large pot/ })
      .click();
    await expect.poll(() => lead.textContent(), SEARCH).not.toBe(before);
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/^Half of the \d+\smL/);
  });

  test('says on every answer what would hurt someone, and where a run that was to go on really ends', async () => {
    const { page, lead } = await openAnswer('run-length');
    await openFile(
      page,
      'dry.json',
      JSON.stringify({
        ...exampleScenario('gentle-lavender'),
        name: 'Runs dry',
        pot: { ...exampleScenario('gentle-lavender').pot, water_kg: 2.5 },
      }),
    );
    await expect.poll(() => page.locator('h1').textContent()).toBe('Runs dry');
    const dangers = page.getByRole('list', { name: 'Dangers of this run' });
    await expect.poll(() => dangers.textContent(), SEARCH).toMatch(/^Danger: At .+ only .+ of water is left/);
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/^Half of/);
    await expect
      .poll(() => page.locator('.answer-more').first().textContent(), SEARCH)
      .toMatch(/because the pot runs dry/);
    await expect
      .poll(() => page.locator('.stop-advice .answer-problem').textContent(), SEARCH)
      .toMatch(/^The pot’s water runs low at/);
    await goTo(page, 'Size');
    await dangers.waitFor();
    await goTo(page, 'Compare');
    await expect
      .poll(() => page.locator('.compared .answer-problem').first().textContent(), SEARCH)
      .toMatch(/water is left/);
  });

  test('has no empty words where no oil comes', async () => {
    const { page, lead } = await openAnswer('run-length');
    await openFile(
      page,
      'bare.json',
      JSON.stringify({
        ...exampleScenario('gentle-lavender'),
        name: 'Water alone',
        charge: { ...exampleScenario('gentle-lavender').charge, mass_kg: 0 },
      }),
    );
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/^No oil comes over/);
    await expect
      .poll(() => page.locator('.stop-advice').textContent(), SEARCH)
      .toMatch(/^No oil comes over in this run\./);
    await page.locator('.spread-row').first().waitFor(SEARCH);
    expect(await page.locator('.spread-row').first().textContent()).toMatch(/^Oilnone/);
    expect(await page.getByRole('region', { name: /each share of the oil/ }).count()).toBe(0);
  });

  test('comes with how sure it is: some runs already say it, and stopping keeps them', async () => {
    const { page } = await openAnswer('run-length');
    await enter(page.getByRole('textbox', { name: 'Runs' }), '2000');
    await page.getByRole('button', { name: /Start again|Run again/ }).click();
    await page.locator('.spread-row').first().waitFor(SEARCH);
    await expect
      .poll(
        async () =>
          Number(/^(\d+) of/.exec((await page.locator('.answer-progress-words').textContent()) ?? '')?.[1] ?? 0),
        SEARCH,
      )
      .toBeGreaterThan(24);
    await page.getByRole('button', { name: new RegExp(`^Stop with \\d+ of ${ALL} runs$`, 'u') }).click();
    await expect
      .poll(() => page.locator('.answer-progress').getByRole('status').textContent())
      .toMatch(new RegExp(`^Stopped with \\d+ of ${ALL} runs; what was found stays\\.$`, 'u'));
    expect(await page.locator('.spread-row').first().textContent()).toMatch(/^Oil\d+\smL\d+\smL to \d+\smL$/);
    expect(await page.locator('.influence').count()).toBeGreaterThanOrEqual(0);
    const saved = await downloaded(page, () =>
      page.getByRole('button', { name: 'Save JSON of how long to run' }).click(),
    );
    const answer = JSON.parse(saved.text) as {
      likely: { finished: number; seed: number; doubts: unknown[] };
      length: { shares: unknown[] };
    };
    expect(answer.likely.finished).toBeGreaterThan(10);
    expect(answer.likely.seed).toBe(1);
    expect(answer.length.shares).toHaveLength(5);
    const bands = await page
      .getByRole('figure', { name: 'Oil, and how sure it is' })
      .getByRole('button', { name: 'Save Oil, and how sure it is' })
      .click()
      .then(() =>
        downloaded(page, () =>
          page
            .getByRole('group', { name: 'Save Oil, and how sure it is' })
            .getByRole('button', { name: 'CSV' })
            .click(),
        ),
      );
    expect(bands.text.split('\n')[0]).toMatch(/High, 1 in 10.*Typical run.*Low, 1 in 10.*As planned/);
  });
});
