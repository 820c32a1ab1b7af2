import { describe, expect, test } from 'vitest';
import { fullRun, openBench, press, seconds, typedValue } from './bench-page.ts';

describe('the time mark', () => {
  test('is moved by keys: seconds, minutes, ends and events', async () => {
    const { page, timeMark } = await openBench();
    await fullRun(page);
    await page.locator('body').click({ position: { x: 4, y: 300 } });
    await page.keyboard.press('Home');
    expect(await seconds(timeMark)).toBe(0);
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    expect(await seconds(timeMark)).toBe(70);
    await page.keyboard.press('ArrowLeft');
    expect(await seconds(timeMark)).toBe(60);
    await page.keyboard.press('n');
    const boil = await seconds(timeMark);
    expect(boil).toBeGreaterThan(600);
    await page.keyboard.press('n');
    expect(await seconds(timeMark)).toBeGreaterThan(boil);
    await page.keyboard.press('Shift+N');
    expect(await seconds(timeMark)).toBe(boil);
    await page.keyboard.press('End');
    expect(await seconds(timeMark)).toBe(Number(await timeMark.getAttribute('max')));
  });

  test('moves the same whether it has the focus or not', async () => {
    const { page, timeMark } = await openBench();
    await timeMark.focus();
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    expect(await seconds(timeMark)).toBe(10);
    await page.keyboard.press('Shift+ArrowRight');
    expect(await seconds(timeMark)).toBe(70);
  });

  test('is dragged along the line, and what is drawn moves with it', async () => {
    const { page, timeMark } = await openBench();
    const box = await timeMark.boundingBox();
    if (!box) throw new Error('the time mark is not on the page');
    const y = box.y + box.height / 2;
    const max = Number(await timeMark.getAttribute('max'));
    await page.mouse.move(box.x + 9 + ((await seconds(timeMark)) / max) * (box.width - 18), y);
    await page.mouse.down();
    const drawn: (string | null)[] = [];
    for (const share of [0.5, 0.7, 0.9]) {
      await page.mouse.move(box.x + 9 + share * (box.width - 18), y, { steps: 4 });
      await expect.poll(() => seconds(timeMark)).toBeGreaterThan((share - 0.02) * max);
      await page.waitForTimeout(50);
      drawn.push(await page.getByRole('group', { name: /still in section/ }).textContent());
    }
    await page.mouse.up();
    expect(new Set(drawn).size).toBe(3);
    expect(await page.locator('.playback-now').textContent()).toMatch(/h|min/);
  });

  test('stays in reach while the charts are looked at, and stands in them where it stands on its line', async () => {
    const { page, timeMark } = await openBench();
    await page.getByRole('region', { name: 'Tap temperature' }).waitFor();
    await timeMark.fill('4200');
    const chart = page.getByRole('figure', { name: 'Recovery', exact: true });
    await chart.scrollIntoViewIfNeeded();
    await expect.poll(async () => (await timeMark.boundingBox())?.y ?? Infinity).toBeLessThan(40);
    const share = 4200 / Number(await timeMark.getAttribute('max'));
    const pane = await chart.getByRole('slider').boundingBox();
    if (!pane) throw new Error('the chart is not on the page');
    for (const line of [chart.locator('.chart-time-mark'), page.locator('.schedule-time-mark').first()])
      await expect.poll(() => line.count()).toBe(1);
    await expect
      .poll(async () =>
        Math.abs(((await chart.locator('.chart-time-mark').boundingBox())?.x ?? 0) - pane.x - share * pane.width),
      )
      .toBeLessThan(2.5);
  });

  test('is followed by what is off the screen once it rests', async () => {
    const { page, timeMark } = await openBench();
    const note = page.getByRole('figure', { name: 'Energy' }).locator('.chart-note');
    await note.waitFor();
    await timeMark.fill('3600');
    await expect.poll(() => note.textContent()).toMatch(/to 1\sh/);
    expect((await note.boundingBox())?.y).toBeGreaterThan(900);
  });

  test('plays and pauses with a key, and goes through the whole run in ten seconds when asked', async () => {
    const { page, timeMark } = await openBench({ reducedMotion: 'no-preference' });
    await page.getByRole('combobox', { name: 'Speed' }).selectOption('the run in 10 seconds');
    await page.getByRole('button', { name: 'Pause' }).click();
    await page.locator('body').click({ position: { x: 4, y: 300 } });
    await page.keyboard.press('Home');
    await page.keyboard.press('p');
    const max = Number(await timeMark.getAttribute('max'));
    await expect.poll(() => seconds(timeMark), { interval: 30 }).toBeGreaterThan(max * 0.08);
    await page.keyboard.press('p');
    const rest = await seconds(timeMark);
    await page.waitForTimeout(300);
    expect(await seconds(timeMark)).toBe(rest);
    await page.getByRole('button', { name: 'Play', exact: true }).waitFor();
  });

  test('is left alone by keys typed into a field, and by all single keys once they are turned off', async () => {
    const { page, timeMark } = await openBench();
    const before = await seconds(timeMark);
    await typedValue(page, 'Heat').focus();
    for (const key of ['Home', 'ArrowLeft', 'n', 'q', '?']) await page.keyboard.press(key);
    await page.keyboard.press('Escape');
    expect(await seconds(timeMark)).toBe(before);
    await press(page, 'Show', 'Keys');
    const dialog = page.getByRole('dialog', { name: 'Keys' });
    await dialog.getByRole('checkbox', { name: 'Use these keys' }).uncheck();
    await page.keyboard.press('Escape');
    await page.locator('body').click({ position: { x: 4, y: 300 } });
    await page.keyboard.press('Home');
    expect(await seconds(timeMark)).toBe(before);
  });

  test('goes to the minute that a sentence of the verdict speaks of, and its part is opened', async () => {
    const { page, verdict, timeMark } = await openBench();
    await verdict.getByRole('link', { name: /of this run’s oil is collected by/ }).click();
    await page.getByRole('complementary', { name: 'Settings' }).waitFor();
    expect(await page.getByRole('tab', { selected: true }).textContent()).toContain('Separator');
    const told = /by 1\sh\s(\d+)/.exec((await verdict.textContent()) ?? '');
    expect(Math.abs((await seconds(timeMark)) / 60 - 60 - Number(told?.[1]))).toBeLessThanOrEqual(1);
  });
});
