import { describe, expect, test } from 'vitest';
import { changedFrom, goTo, onBench, openBench, press, seconds, turnUpHeat } from './bench-page.ts';

describe('someone who has never been here', () => {
  test('sees a still at work and, in one sentence, what its run comes to', async () => {
    const { page, lead, timeMark } = await openBench();
    expect(await lead.textContent()).toMatch(
      /^The coil condenses everything in [\d.]+\sm of its [\d.]+\sm, but the cooling water runs off at up to \d+\s°C: it scalds in minutes, a child sooner\.$/,
    );
    await page.getByRole('button', { name: 'Understood' }).click();
    expect(await page.locator('.headline-facts').textContent()).toMatch(
      /first drop at \d+\smin · 90\s% of \d+\smL of oil by .+ · \d+\sL of cooling water/,
    );
    expect(await seconds(timeMark)).toBeGreaterThan(600);
    expect(await page.getByRole('group', { name: /still in section/ }).count()).toBe(1);
  });

  test('turns up the heat, sees the coil fail, is told what would hold, and tries it', async () => {
    const { page, lead } = await openBench();
    const before = await lead.textContent();
    await turnUpHeat(page);
    expect(await changedFrom(lead, before)).toMatch(
      /^The coil does not condense everything: steam escapes from the outlet from /,
    );
    const give = page.getByRole('button', { name: /^Make it [\d.]+\sm long$/ });
    await give.waitFor({ timeout: 30_000 });
    expect(await lead.textContent()).toMatch(/too short by [\d.]+\sm: .+ [\d.]+\sm is enough\.$/);
    const failing = await lead.textContent();
    await give.click();
    expect(await changedFrom(lead, failing)).not.toMatch(/steam escapes|does not condense/);
  });

  test('is told what mends it, and then asked a question that the model has tried', async () => {
    const { page, lead } = await openBench();
    const question = page.locator('.question button');
    await question.waitFor();
    expect(await question.textContent()).toMatch(/^Set the water to [\d.]+\sL\/min$/);
    await question.click();
    await expect
      .poll(() => lead.textContent(), { timeout: 20_000 })
      .toMatch(
        /^The coil condenses everything in the first [\d.]+\sm of its [\d.]+\sm, even in its busiest half minute\. The rest cools the distillate\.$/,
      );
    await expect.poll(() => question.textContent(), { timeout: 20_000 }).toMatch(/^What if .+\?$/);
    const sees = (await page.locator('#question-sees').textContent()) ?? '';
    expect(sees).toMatch(/^The model gets \d+\smL of oil \(now \d+\smL\)/);
    const failing = /But: (.+)$/.exec(sees)?.[1];
    await question.click();
    if (failing !== undefined)
      await expect.poll(() => page.locator('.headline-lead').textContent()).toContain(failing.slice(0, 30));
    await expect.poll(() => question.textContent(), { timeout: 20_000 }).not.toBeNull();
  });

  test('is told the same length by the place that sizes condensers', async () => {
    const { page, lead } = await openBench();
    const before = await lead.textContent();
    await turnUpHeat(page);
    await changedFrom(lead, before);
    await expect.poll(() => lead.textContent(), { timeout: 30_000 }).toMatch(/is enough\.$/);
    const told = Number(/([\d.]+)\sm is enough/.exec((await lead.textContent()) ?? '')?.[1]);
    await goTo(page, 'Size');
    const sized = page.getByText(/[\d.]+\sm of 12 × 1 mm copper is enough in nine runs of ten/).first();
    await sized.waitFor({ timeout: 30_000 });
    const length = Number(/([\d.]+)\sm of 12 × 1 mm copper/.exec((await sized.textContent()) ?? '')?.[1]);
    expect(Math.abs(told - length)).toBeLessThan(0.011);
  });

  test('reads in one line what this is, once, and never again', async () => {
    const { page } = await openBench();
    const line = page.getByText('Try a still before you build it');
    expect(await line.count()).toBe(1);
    await page.getByRole('button', { name: 'Understood' }).click();
    expect(await line.count()).toBe(0);
    await page.waitForTimeout(900);
    await page.reload();
    await onBench(page).lead.waitFor();
    expect(await line.count()).toBe(0);
  });

  test('finds the run already playing where motion is welcome', async () => {
    const { page, timeMark } = await openBench({ reducedMotion: 'no-preference' });
    const first = await seconds(timeMark);
    await expect.poll(() => seconds(timeMark)).toBeGreaterThan(first + 30);
    await page.getByRole('button', { name: 'Pause' }).click();
    const rest = await seconds(timeMark);
    await page.waitForTimeout(300);
    expect(await seconds(timeMark)).toBe(rest);
  });

  test('chooses another example, or a blank still, and can have the one before back', async () => {
    const { page, lead } = await openBench();
    const title = page.getByRole('heading', { level: 1 });
    expect(await title.textContent()).toBe('Gentle lavender');
    await press(page, 'Files', 'Examples');
    const dialog = page.getByRole('dialog', { name: 'Start from' });
    await dialog.getByRole('button', { name: /boiled hard/ }).click();
    await expect.poll(() => title.textContent()).toBe('Lavender, boiled hard');
    expect(await lead.textContent()).toMatch(/^The coil (does not condense everything|is too short)/);
    await press(page, 'Files', 'Examples');
    await dialog.getByRole('button', { name: /A blank still/ }).click();
    await expect.poll(() => title.textContent()).toBe('My still');
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect.poll(() => title.textContent()).toBe('Gentle lavender');
  });
});
