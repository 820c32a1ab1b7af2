import { describe, expect, test } from 'vitest';
import { changedFrom, enter, fullRun, goTo, openBench, typedValue } from './bench-page.ts';

describe('a control over the run', () => {
  test('is planned from the live control: a knot moved by keys and a row typed change the run', async () => {
    const { page, verdict } = await openBench();
    await page.getByRole('button', { name: /^Set a timetable for\s+Heat/ }).click();
    const plan = page.getByRole('region', { name: 'Heat setting' });
    await expect.poll(() => plan.isVisible()).toBe(true);
    const knot = plan.getByRole('slider', { name: 'Heat setting, change 1' });
    await knot.focus();
    const first = await verdict.textContent();
    await knot.press('ArrowUp');
    const second = await changedFrom(verdict, first);
    expect(Number(await typedValue(page, 'Heat').inputValue())).toBeGreaterThan(50);
    await enter(plan.getByRole('textbox', { name: 'Setting of change 1' }), '75 %');
    await changedFrom(verdict, second);
    expect(await typedValue(page, 'Heat').inputValue()).toBe('75');
  });

  test('waits for an event of the run, which is chosen by keyboard alone', async () => {
    const { page } = await openBench();
    await fullRun(page);
    const plan = page.getByRole('region', { name: 'Heat setting' });
    const knot = plan.getByRole('slider', { name: 'Heat setting, change 1' });
    const from = plan.getByRole('combobox', { name: 'Change 1 counts from' });
    const row = plan.getByRole('row').filter({ has: page.getByRole('combobox', { name: 'Change 1 counts from' }) });
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
    await knot.waitFor();
    expect(await knot.getAttribute('aria-valuetext')).toMatch(/^50\s% from the first drop$/);
    const drop = await row.textContent();
    expect(drop).toMatch(/at 2\d\smin.* in this run/);
    await from.focus();
    await from.press('ArrowUp');
    await expect.poll(() => knot.getAttribute('aria-valuetext')).toMatch(/^50\s% from the first boil$/);
    await expect.poll(() => row.textContent()).not.toBe(drop);
    expect(await focused()).toBe('Change 1 counts from');
    await from.press('Home');
    await expect.poll(() => knot.getAttribute('aria-valuetext')).toMatch(/^50\s% from 2\d\smin/);
    await from.press('End');
    await expect.poll(() => from.inputValue()).toBe('first-drop');
    const time = plan.getByRole('textbox', { name: 'Time of change 1' });
    await enter(time, '5 min');
    await expect.poll(() => knot.getAttribute('aria-valuetext')).toMatch(/^50\s% from 5\smin after the first drop$/);
    await knot.focus();
    await knot.press('ArrowLeft');
    await expect.poll(() => time.inputValue()).toBe('4');
  });

  test('is dragged by hand, and a whole drag is one step back', async () => {
    const { page, verdict } = await openBench();
    const plan = page.getByRole('region', { name: 'Heat setting' });
    const knot = plan.getByRole('slider', { name: 'Heat setting, change 1' });
    await knot.scrollIntoViewIfNeeded();
    const told = await verdict.textContent();
    const box = await knot.boundingBox();
    if (!box) throw new Error('the knot is not on the page');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 60, y - 25, { steps: 6 });
    await page.mouse.up();
    const moved = await changedFrom(verdict, told);
    const row = plan.getByRole('textbox', { name: 'Setting of change 1' });
    expect(Number.parseFloat(await row.inputValue())).toBeGreaterThan(55);
    await page.getByRole('button', { name: 'Undo' }).click();
    await changedFrom(verdict, moved);
    expect(Number.parseFloat(await row.inputValue())).toBe(50);
  });

  test('takes a new change at the time mark and gives it up again', async () => {
    const { page } = await openBench();
    const plan = page.getByRole('region', { name: 'Water flow' });
    await plan.getByRole('button', { name: /^Add a change at/ }).click();
    const added = plan.getByRole('slider', { name: 'Water flow, change 1' });
    await added.waitFor();
    expect(await page.locator('.live-control.is-tap .live-reach').textContent()).toMatch(
      /Changes the run from 28\smin on|Changes the run from the start to 28\smin/,
    );
    await added.press('Delete');
    await added.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Undo' }).click();
    await added.waitFor();
  });

  test('is reached from the settings, which make way for it', async () => {
    const { page } = await openBench();
    await page.getByRole('button', { name: /^Electric plate,/ }).press('Enter');
    const settings = page.getByRole('complementary', { name: 'Settings' });
    await settings
      .getByRole('button', { name: /over the run|schedule|over time/i })
      .first()
      .click();
    await settings.waitFor({ state: 'detached' });
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('schedule-heat-setting');
  });
});

describe('the places of the page', () => {
  test('are reached from its head, and the bench is as it was when one comes back', async () => {
    const { page, lead } = await openBench();
    await enter(typedValue(page, 'Coil'), '2.35 m');
    await expect.poll(() => lead.textContent()).toMatch(/of its 2\.4\sm,/);
    await fullRun(page);
    const told = await lead.textContent();
    const places = page.getByRole('navigation', { name: 'Places' });
    for (const place of ['Size', 'Run length', 'Compare', 'Run book']) {
      await goTo(page, place);
      await expect.poll(() => places.locator('[aria-current="page"]').textContent()).toBe(place);
      await page.locator('.answers-place h2').first().waitFor();
      expect(await page.locator('h1').textContent()).toBe('Gentle lavender');
    }
    await page.goBack();
    await expect.poll(() => places.locator('[aria-current="page"]').textContent()).toBe('Compare');
    await goTo(page, 'Bench');
    await expect.poll(() => lead.textContent()).toBe(told);
    expect(await typedValue(page, 'Coil').inputValue()).toBe('2.35');
  });

  test('leave the keys of the time mark alone', async () => {
    const { page, timeMark } = await openBench();
    const before = await timeMark.inputValue();
    await goTo(page, 'Size');
    await page.locator('.answers-place h2').first().waitFor();
    await page.keyboard.press('Home');
    await goTo(page, 'Bench');
    await timeMark.waitFor();
    expect(await timeMark.inputValue()).toBe(before);
  });
});
