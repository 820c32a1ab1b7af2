/** The first screen: cause, still and effect together, and nothing of it moves. */
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { changedFrom, fullRun, openBench, press, turnUpHeat } from './bench-page.ts';

const DESK = { width: 1280, height: 720 };
const PHONE = { width: 390, height: 844 };

type Boxes = Readonly<Record<string, readonly [x: number, y: number, width: number, height: number]>>;

async function boxesOf(page: Page, parts: Readonly<Record<string, Locator>>): Promise<Boxes> {
  // What was pressed further down may have scrolled the page: that is the reader's doing.
  await page.evaluate(() => scrollTo({ top: 0 }));
  await page.locator('.playback-float:not(.is-afloat)').waitFor();
  await fullRun(page);
  const found = await Promise.all(
    Object.entries(parts).map(async ([name, part]) => {
      await part.waitFor();
      const box = await part.boundingBox();
      if (!box) throw new Error(`${name} is not on the page`);
      const { x, y, width, height } = box;
      return [name, [Math.round(x), Math.round(y), Math.round(width), Math.round(height)]] as const;
    }),
  );
  return Object.fromEntries(found);
}

const always = (page: Page) => ({
  verdict: page.locator('.headline-lead'),
  still: page.locator('.drawing-svg'),
  pot: page.locator('[data-part="pot"] .drawing-target').first(),
  separator: page.locator('[data-part="separator"] .drawing-target').first(),
  play: page.locator('.playback-play'),
  line: page.getByRole('slider', { name: 'Time mark' }),
  numbers: page.locator('.numbers'),
  chart: page.locator('.first-chart'),
});

const controlsOf = (page: Page, role: 'slider' | 'button') =>
  Object.fromEntries(
    ['Heat', 'Tap', 'Coil', 'Charge'].map((name) => [
      name,
      page
        .getByRole('region', { name: 'Live controls' })
        .getByRole(role, { name: new RegExp(`^${name} ?`) })
        .first(),
    ]),
  );

const below = (boxes: Boxes, edge: number): string[] =>
  Object.entries(boxes)
    .filter(([, [, y, , height]]) => y < 0 || y + height > edge)
    .map(([name]) => name);

describe.each([
  ['at a desk', DESK, 'slider'],
  ['on a phone', PHONE, 'button'],
] as const)('the first screen %s', (_where, viewport, role) => {
  test('holds still, time line, controls, verdict, numbers and chart, and none moves', async () => {
    const { page, lead, timeMark } = await openBench({ viewport, reducedMotion: 'reduce' });
    await page.getByRole('button', { name: 'Understood' }).click();
    await page.locator('.chart-of-choice .chart-traces').waitFor();
    const parts = { ...always(page), ...controlsOf(page, role) };
    const before = await boxesOf(page, parts);
    if (viewport === DESK) expect(below(before, viewport.height)).toEqual([]);
    else {
      const { still, play, line, numbers } = before;
      expect(below({ still, play, line, numbers } as Boxes, viewport.height - 60)).toEqual([]);
    }

    // A part is picked: its cautions stand in the drawing, its settings open.
    await page
      .getByRole('button', { name: /^Separator,/ })
      .first()
      .press('Enter');
    await page.getByRole('complementary', { name: 'Settings' }).getByRole('tab').first().waitFor();
    await page.locator('.drawing-hazard').first().waitFor();
    expect(await boxesOf(page, parts)).toEqual(before);
    await page.getByRole('button', { name: 'Close settings' }).click();

    // An alarm comes.
    const told = await lead.textContent();
    if (viewport === DESK) await turnUpHeat(page);
    else {
      const heat = page.getByRole('region', { name: 'Live controls' }).getByRole('button', { name: /^Heat/ }).first();
      await heat.click();
      await page.getByRole('slider', { name: 'Heat', exact: true }).fill('1');
      await heat.click();
    }
    await changedFrom(lead, told);
    await timeMark.fill('7200');
    await page.locator('.drawing-hazard.is-alarm').first().waitFor();
    expect(await boxesOf(page, parts)).toEqual(before);
  });
});

test('the settings leave the drawing three fifths of the window', async () => {
  const { page } = await openBench({ viewport: DESK });
  await page.getByRole('button', { name: /^Pot,/ }).press('Enter');
  await page.getByRole('complementary', { name: 'Settings' }).getByRole('tab').first().waitFor();
  const drawing = await page.locator('.drawing-svg').boundingBox();
  const settings = await page.getByRole('complementary', { name: 'Settings' }).boundingBox();
  expect(drawing?.width).toBeGreaterThanOrEqual(0.6 * DESK.width);
  expect((drawing?.x ?? 0) + (drawing?.width ?? 0)).toBeLessThanOrEqual(settings?.x ?? 0);
});

test('the head of the page holds at most eight things on a line at 1024 px', async () => {
  const { page } = await openBench({ viewport: { width: 1024, height: 768 } });
  const tops = await page
    .getByRole('banner')
    .locator('a, button')
    .filter({ visible: true })
    .evaluateAll((things) =>
      things.map((thing) =>
        Math.round((thing.getBoundingClientRect().top + thing.getBoundingClientRect().bottom) / 20),
      ),
    );
  const lines = [...new Set(tops)].map((top) => tops.filter((other) => Math.abs(other - top) <= 1).length);
  expect(Math.max(...lines)).toBeLessThanOrEqual(8);
  expect(lines.length).toBeGreaterThan(1);
});

test('the chart beside the still is chosen, kept, named dashed after a change, and brought up from below', async () => {
  const { page } = await openBench({ viewport: DESK });
  const choice = page.getByRole('combobox', { name: 'Chart', exact: true });
  await choice.selectOption('Cooling water');
  expect(await page.locator('.first-chart').getByText('dashed: before your last change').count()).toBe(0);
  await turnUpHeat(page);
  await page.locator('.first-chart').getByText('dashed: before your last change').waitFor();
  await page.getByRole('button', { name: 'Show Drops caught beside the still' }).click();
  expect(await choice.inputValue()).toBe('drops');
  await page.waitForTimeout(900);
  await page.reload();
  expect(await choice.inputValue()).toBe('drops');
  await press(page, 'Files', 'Examples');
  await page.getByRole('dialog', { name: 'Start from' }).waitFor();
  await page.keyboard.press('Escape');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Files');
});
