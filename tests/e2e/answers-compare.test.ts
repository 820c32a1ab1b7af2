import { describe, expect, test } from 'vitest';
import { DRAWS, goTo, openAnswer, SEARCH } from './answers-page.ts';
import { downloaded, enter, onBench, seconds } from './bench-page.ts';

describe('runs side by side', () => {
  test('gentle against hard is one click: conclusion, differences, one time mark, and a file of it', async () => {
    const { page, lead } = await openAnswer('compare');
    await page.getByRole('button', { name: 'Gentle against hard' }).click();
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/“Gentle lavender, gentle” collects the most oil/);
    expect(
      await page
        .getByRole('textbox', { name: /^Name of run/ })
        .evaluateAll((fields) => fields.map((field) => (field as HTMLInputElement).value)),
    ).toEqual(['Gentle lavender, gentle', 'Gentle lavender, hard']);
    const table = page.getByRole('region', { name: /^The runs number by number/ });
    expect(await table.locator('tbody tr').first().textContent()).toMatch(
      /^Oil collected[\d.]+\smL\s+better[\d.]+\smL−[\d.]+\smL$/,
    );

    const now = page.locator('.compare-now').first();
    const atEnd = await now.textContent();
    await onBench(page).timeMark.focus();
    await page.keyboard.press('Home');
    await expect.poll(() => now.textContent()).not.toBe(atEnd);
    expect(await seconds(onBench(page).timeMark)).toBe(0);

    const saved = await downloaded(page, () =>
      page.getByRole('button', { name: 'Save CSV of the comparison' }).click(),
    );
    expect(saved.text.split('\n')[0]).toBe('Number,Unit,"A Gentle lavender, gentle","B Gentle lavender, hard"');
    const json = await downloaded(page, () =>
      page.getByRole('button', { name: 'Save JSON of the comparison' }).click(),
    );
    expect((JSON.parse(json.text) as { conclusion: unknown[] }).conclusion.length).toBeGreaterThanOrEqual(2);
  });

  test('stand on one floor at one scale, each with its events, and end in a recommendation by paired draws', async () => {
    const { page, lead } = await openAnswer('compare');
    await page.getByRole('button', { name: 'Gentle against hard' }).click();
    const progress = page.locator('.compare-draws');
    await expect
      .poll(() => lead.textContent(), DRAWS)
      .toMatch(
        /^“Gentle lavender, hard” lets steam escape.*Take “Gentle lavender, gentle”: no other is safe\. It brings more oil than “Gentle lavender, hard” in \d+ of 20 draws \(typically .*For the same/,
      );
    expect(await progress.textContent()).toMatch(/^Each of the 20 draws gives all that is uncertain/);

    expect(await page.locator('.compared').count()).toBe(2);
    const measured = (selector: string) =>
      page.locator(`.compared ${selector}`).evaluateAll((all) =>
        all.map((each) => {
          const { top, bottom, width } = each.getBoundingClientRect();
          return [top, bottom, width].map(Math.round);
        }),
      );
    await expect.poll(async () => new Set((await measured('.drawing-scale')).map(String)).size).toBe(1);
    const floors = await measured('.drawing-floor');
    expect(floors).toHaveLength(2);
    expect(floors[0]).toEqual(floors[1]);

    const events = (letter: string) => page.getByRole('list', { name: new RegExp(`^Events of ${letter} `) });
    expect(await events('A').textContent()).toContain('first drop');
    expect(await events('B').textContent()).toContain('steam escapes');
    expect(await events('A').textContent()).not.toContain('steam escapes');

    const hard = page.locator('.compared').nth(1);
    expect(await hard.locator('.compare-now').textContent()).toMatch(/^Ended at/);
    expect(await hard.locator('.drawing-escape').count()).toBe(0);
    await page.getByRole('button', { name: /^steam escapes/ }).click();
    await page.keyboard.press('Tab');
    await expect.poll(() => hard.locator('.drawing-escape').count()).toBe(1);

    // Nothing that has the focus is under the time mark.
    await page.getByRole('button', { name: 'Copy run B' }).focus();
    for (let step = 0; step < 24; step++) {
      await page.keyboard.press('Tab');
      const hidden = await page.evaluate(() => {
        const focused = document.activeElement;
        if (!focused || focused === document.body) return null;
        const { left, top, width, height } = focused.getBoundingClientRect();
        const above = document.elementFromPoint(left + width / 2, top + Math.min(height / 2, 200));
        return above?.closest('.compare-playback') && !focused.closest('.compare-playback')
          ? focused.textContent
          : null;
      });
      expect(hidden).toBe(null);
    }
  });

  test('are marked when the still on the bench has changed, and renewed by one button', async () => {
    const { page, lead } = await openAnswer('compare');
    await page.getByRole('button', { name: 'Copy run A' }).click();
    const second = page.locator('.compared').nth(1);
    await enter(second.getByRole('textbox', { name: 'Coil' }), '60 cm');
    await expect.poll(() => second.getByRole('textbox', { name: 'Coil' }).inputValue()).toBe('0.6');
    await lead.waitFor();
    const stale = page.getByText('This comparison is of the one before.');
    expect(await stale.count()).toBe(0);

    await goTo(page, 'Bench');
    await enter(page.getByRole('textbox', { name: 'Charge, typed' }), '1.2 kg');
    await goTo(page, 'Compare');
    await stale.waitFor();
    expect(await page.locator('.compared').first().getByRole('textbox', { name: 'Charge' }).inputValue()).toBe('2');
    await page.getByRole('button', { name: 'Renew the comparison' }).click();
    await expect.poll(() => stale.count(), SEARCH).toBe(0);
    for (const index of [0, 1])
      expect(await page.locator('.compared').nth(index).getByRole('textbox', { name: 'Charge' }).inputValue()).toBe(
        '1.2',
      );
    expect(await second.getByRole('textbox', { name: 'Coil' }).inputValue()).toBe('0.6');
  });

  test('can be stopped while the draws run, and say so', { timeout: 240_000 }, async () => {
    const { page, lead } = await openAnswer('compare');
    await page.getByRole('button', { name: 'Copy run A' }).click();
    await page.getByRole('button', { name: /^Stop with/ }).click(DRAWS);
    const again = page.getByRole('button', { name: 'Try again' });
    await again.waitFor();
    await again.click();
    await expect
      .poll(() => lead.textContent(), DRAWS)
      .toMatch(
        /“Gentle lavender” and “Gentle lavender \(2\)” are the same, as far as can be told: .* in 0 of 20 draws/,
      );
  });

  test('a copy is changed in a field, refused in words where it cannot be, and is there again after a reload', async () => {
    const { page, lead } = await openAnswer('compare');
    await page.getByRole('button', { name: 'Copy run A' }).click();
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/all collect about the same oil/);
    const second = page.locator('.compared').nth(1);
    await enter(second.getByRole('textbox', { name: 'Coil' }), '60 cm');
    await expect.poll(() => second.getByRole('textbox', { name: 'Coil' }).inputValue()).toBe('0.6');
    const conclusion = page.getByRole('region', { name: /^The runs number by number/ });
    await expect
      .poll(() => conclusion.locator('tr', { hasText: 'Warmest distillate' }).textContent(), SEARCH)
      .toMatch(/\+[\d.]+\s°C/);
    await enter(second.getByRole('textbox', { name: 'Charge' }), '60 kg');
    await second.getByRole('alert').filter({ hasText: 'at most' }).waitFor();
    await enter(second.getByRole('textbox', { name: 'Charge' }), 'plenty');
    expect(await second.getByRole('alert').first().textContent()).toMatch(/./);
    await second.getByRole('textbox', { name: 'Charge' }).press('Escape');
    await enter(second.getByRole('textbox', { name: 'Charge' }), '1.5 kg');
    await expect.poll(() => second.getByRole('alert').count()).toBe(0);
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/“Gentle lavender” collects the most oil/);

    await page.reload();
    await expect
      .poll(() => page.locator('.compared').nth(1).getByRole('textbox', { name: 'Charge' }).inputValue(), SEARCH)
      .toBe('1.5');
    await page.getByRole('button', { name: 'Put on the bench run B' }).click();
    await expect.poll(() => page.locator('h1').textContent()).toBe('Gentle lavender (2)');
    await goTo(page, 'Bench');
    await expect.poll(() => page.getByRole('textbox', { name: 'Charge, typed' }).inputValue()).toBe('1.5');
  });
});
