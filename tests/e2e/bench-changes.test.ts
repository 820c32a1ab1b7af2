import { describe, expect, test } from 'vitest';
import { changedFrom, choose, enter, openBench, seconds, turnUpHeat, typedValue } from './bench-page.ts';

describe('a change of the still', () => {
  test('by a slider changes the numbers, and one step back undoes the whole drag', async () => {
    const { page, lead } = await openBench();
    const before = await lead.textContent();
    const coil = page.getByRole('slider', { name: 'Coil' });
    await coil.focus();
    for (let step = 0; step < 20; step++) await page.keyboard.press('ArrowRight');
    const longer = await changedFrom(lead, before);
    expect(longer).toMatch(/ in [\d.]+\sm of its [\d.]+\sm,/);
    await page.locator('h1').click();
    await page.keyboard.press('Control+z');
    await changedFrom(lead, longer);
  });

  test('is typed in whatever unit is at hand', async () => {
    const { page, lead } = await openBench();
    const before = await lead.textContent();
    const coil = typedValue(page, 'Coil');
    await enter(coil, '9 ft');
    await expect.poll(() => coil.inputValue()).toBe('2.7432');
    await changedFrom(lead, before);
    const tap = typedValue(page, 'Tap');
    await enter(tap, '0.1 gal/min');
    await expect.poll(async () => Number(await tap.inputValue())).toBeCloseTo(0.3785, 3);
  });

  test('is made in the part that is picked in the drawing', async () => {
    const { page, verdict } = await openBench();
    const before = await verdict.textContent();
    await page.getByRole('button', { name: /^Pot,/ }).press('Enter');
    const settings = page.getByRole('complementary', { name: 'Settings' });
    expect(await settings.getByRole('tab', { selected: true }).textContent()).toContain('Pot');
    const water = settings.getByRole('textbox', { name: 'Water in the pot' });
    await enter(water, '6.5 L');
    await changedFrom(verdict, before);
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
    await expect.poll(() => settings.count()).toBe(0);
  });

  test('that cannot be is refused in words, and the run stays', async () => {
    const { page, lead } = await openBench();
    const before = await lead.textContent();
    const coil = typedValue(page, 'Coil');
    await enter(coil, '900 m');
    await page.getByRole('alert').filter({ hasText: /100/ }).waitFor();
    expect(await lead.textContent()).toBe(before);
    await enter(coil, 'long');
    await page.getByRole('alert').waitFor();
    expect(await lead.textContent()).toBe(before);
  });

  test('that does not fit the still keeps the last good run, says so, and is taken back', async () => {
    const { page, lead } = await openBench();
    const before = await lead.textContent();
    await enter(typedValue(page, 'Charge'), '60 kg');
    const stale = page.getByRole('region', { name: 'In one line' }).getByRole('alert');
    await stale.waitFor();
    expect(await stale.textContent()).toContain('These numbers are from before your last change.');
    expect(await stale.textContent()).toContain('at most');
    expect(await lead.count()).toBe(0);
    await stale.getByRole('button', { name: 'Undo the change' }).click();
    await expect.poll(() => stale.count()).toBe(0);
    expect(await lead.textContent()).toBe(before);
    expect(await typedValue(page, 'Charge').inputValue()).toBe('2');
  });

  test('of the heat while the run plays takes hold at that minute and leaves what came before', async () => {
    const { page, timeMark } = await openBench({ reducedMotion: 'no-preference' });
    const reach = page.locator('.live-control.is-heat .live-reach');
    await expect.poll(() => reach.textContent()).toMatch(/Changes the run from \d+\smin on/);
    await page.getByRole('button', { name: 'Pause' }).click();
    const here = await seconds(timeMark);
    await enter(typedValue(page, 'Heat'), '90 %');
    await page.locator('h1').click();
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    await expect.poll(() => typedValue(page, 'Heat').inputValue()).toBe('50');
    expect(await reach.textContent()).toMatch(
      new RegExp(`Changes the run from \\d+\\smin to ${Math.round(here / 60)}\\smin`),
    );
  });

  test('that raises an alarm or clears one is spoken, once', async () => {
    const { page, lead } = await openBench();
    const spoken = page.getByRole('status').filter({ hasText: 'steam escapes from the outlet' });
    expect(await spoken.count()).toBe(0);
    await turnUpHeat(page);
    await expect.poll(() => spoken.count(), { timeout: 20_000 }).toBe(1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => lead.textContent()).toMatch(/condenses everything/);
    await expect
      .poll(() => page.getByRole('status').filter({ hasText: 'condenses everything' }).count(), { timeout: 20_000 })
      .toBe(1);
  });

  test('of the units changes what is shown and nothing else', async () => {
    const { page, lead } = await openBench();
    const before = await lead.textContent();
    await choose(page, 'Units', 'US');
    expect(await changedFrom(lead, before)).toMatch(/ of its 4\sft 11\sin, .* at up to \d+\s°F:/);
    expect(Number(await typedValue(page, 'Coil').inputValue())).toBeCloseTo(4.921, 2);
    expect(await page.getByRole('button', { name: 'Undo' }).getAttribute('aria-disabled')).toBe('true');
  });
});
