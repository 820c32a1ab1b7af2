import { buffer } from 'node:stream/consumers';
import { describe, expect, test } from 'vitest';
import { downloaded, openBench, seconds } from './bench-page.ts';

const CHARTS = [
  'Temperatures',
  'Heat',
  'Steam and distillate',
  'Cooling water',
  'Oil out',
  'Recovery',
  'Heat in the bed',
  'Along the condenser',
  'Drops caught',
  'Separator, close up',
  'Energy',
];

describe('the charts', () => {
  test('are all there, each with a name, a table and ways to save it', async () => {
    const { page } = await openBench();
    for (const name of CHARTS) {
      const chart = page.getByRole('figure', { name, exact: true });
      await chart.waitFor();
      await chart.getByRole('button', { name: `Table of ${name}` }).click();
      expect(await chart.locator('table tbody tr').count()).toBeGreaterThan(2);
      await chart.getByRole('button', { name: `Table of ${name}` }).click();
    }
  });

  test('are saved as a drawing, a picture and numbers', async () => {
    const { page } = await openBench();
    const chart = page.getByRole('figure', { name: 'Oil out', exact: true });
    await chart.getByRole('button', { name: 'Save Oil out', exact: true }).click();
    const svg = await downloaded(page, () => chart.getByRole('button', { name: 'SVG' }).click());
    expect(svg.name).toMatch(/^gentle-lavender.*oil-out\.svg$/);
    expect(svg.text).toMatch(/^<(\?xml|svg)/);
    expect(svg.text).toContain('linalyl acetate');
    const csv = await downloaded(page, () => chart.getByRole('button', { name: 'CSV' }).click());
    expect(csv.text.split('\n').length).toBeGreaterThan(50);
    const [picture] = await Promise.all([
      page.waitForEvent('download'),
      chart.getByRole('button', { name: 'PNG' }).click(),
    ]);
    const bytes = await buffer(await picture.createReadStream());
    expect([...bytes.subarray(1, 4)].map((byte) => String.fromCharCode(byte)).join('')).toBe('PNG');
    expect(bytes.length).toBeGreaterThan(5000);
  });

  test('are read by pointer and by arrow keys, the same moment in all', async () => {
    const { page } = await openBench();
    const chart = page.getByRole('figure', { name: 'Temperatures', exact: true });
    const pane = chart.getByRole('slider');
    const box = await pane.boundingBox();
    if (!box) throw new Error('the chart is not on the page');
    await pane.scrollIntoViewIfNeeded();
    await pane.hover({ position: { x: box.width / 2, y: box.height / 2 } });
    const chips = page.locator('.chart-reading-line .chart-chip');
    await chips.first().waitFor();
    const told = await chips.first().textContent();
    expect(told).toMatch(/1\sh/);
    expect(new Set(await chips.allTextContents()).size).toBe(1);
    await page.mouse.move(5, 5);
    await expect.poll(() => chips.count()).toBe(0);
    await pane.focus();
    await page.keyboard.press('ArrowRight');
    await chips.first().waitFor();
    const first = await chips.first().textContent();
    await page.keyboard.press('Shift+ArrowRight');
    await expect.poll(() => chips.first().textContent()).not.toBe(first);
    await page.keyboard.press('Escape');
    await expect.poll(() => chips.count()).toBe(0);
  });

  test('take the time mark along when dragged', async () => {
    const { page, timeMark } = await openBench();
    const pane = page.getByRole('figure', { name: 'Heat', exact: true }).getByRole('slider');
    await pane.scrollIntoViewIfNeeded();
    const box = await pane.boundingBox();
    if (!box) throw new Error('the chart is not on the page');
    const max = Number(await timeMark.getAttribute('max'));
    await page.mouse.move(box.x + 0.3 * box.width, box.y + 20);
    await page.mouse.down();
    await page.mouse.move(box.x + 0.75 * box.width, box.y + 24, { steps: 5 });
    await page.mouse.up();
    await expect.poll(async () => Math.abs((await seconds(timeMark)) / max - 0.75)).toBeLessThan(0.02);
  });

  test('keep long names whole on a phone', async () => {
    const { page } = await openBench({ viewport: { width: 390, height: 844 } });
    const chart = page.getByRole('figure', { name: 'Oil out', exact: true });
    await chart.locator('.chart-name-words').first().waitFor({ state: 'attached' });
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    const cut = () =>
      chart
        .locator('.chart-name-words')
        .evaluateAll((names) =>
          names.filter((name) => name.scrollWidth > name.clientWidth).map((name) => name.textContent),
        );
    await expect.poll(cut).toEqual([]);
  });
});
