import { describe, expect, test } from 'vitest';
import {
  LOOKS,
  axeFaults,
  changedFrom,
  choose,
  enter,
  fullRun,
  openBench,
  press,
  turnUpHeat,
  typedValue,
} from './bench-page.ts';

describe('accessibility', () => {
  test('in every look the bench, its settings, a failing run and the dialogs hold no fault that axe can find', async () => {
    const { page, lead } = await openBench({ bypassCSP: true });
    await page.getByRole('region', { name: 'Tap temperature' }).waitFor();
    for (const [look, ask] of LOOKS) {
      await choose(page, 'Theme', look);
      expect(await axeFaults(page, ask), look).toEqual([]);
    }
    await page
      .getByRole('button', { name: /^Separator/ })
      .first()
      .press('Enter');
    await page.getByRole('complementary', { name: 'Settings' }).getByRole('tab').first().waitFor();
    expect(await axeFaults(page), 'settings').toEqual([]);
    await page.getByRole('button', { name: 'Close settings' }).click();
    const before = await lead.textContent();
    await turnUpHeat(page);
    await changedFrom(lead, before);
    for (const [look, ask] of LOOKS) {
      await choose(page, 'Theme', look);
      expect(await axeFaults(page, ask), `failing run, ${look}`).toEqual([]);
    }
    await enter(typedValue(page, 'Charge'), '60 kg');
    await page.getByText('These numbers are from before').waitFor();
    expect(await axeFaults(page), 'stale run').toEqual([]);
    for (const [menu, dialog] of [
      ['Files', 'Examples'],
      ['Show', 'Keys'],
    ] as const) {
      await press(page, menu, dialog);
      await page.getByRole('dialog').waitFor();
      expect(await axeFaults(page), dialog).toEqual([]);
      await page.keyboard.press('Escape');
    }
  });

  test('on a phone, with the menu and a control open, it holds none either', async () => {
    const { page } = await openBench({
      bypassCSP: true,
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    await page.getByRole('region', { name: 'Tap temperature' }).waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'Menu' }).tap();
    expect(await axeFaults(page), 'menu').toEqual([]);
    await page.getByRole('button', { name: 'Menu' }).press('Escape');
    await page.getByRole('button', { name: /^Heat/, expanded: false }).last().tap();
    expect(await axeFaults(page)).toEqual([]);
  });
});

describe('the page', () => {
  test.each([
    ['closed', false],
    ['open', true],
  ])('does not scroll sideways at any width, with the settings %s', async (_how, withSettings) => {
    const { page } = await openBench({ viewport: { width: 1440, height: 900 } });
    await page.getByRole('region', { name: 'Tap temperature' }).waitFor();
    if (withSettings) {
      await page.locator('.headline-lead a').click();
      await page.getByRole('complementary', { name: 'Settings' }).getByRole('tab').first().waitFor();
    }
    for (const width of [320, 390, 720, 768, 1024, 1200, 1440, 2560, 3840]) {
      await page.setViewportSize({ width, height: 900 });
      await expect
        .poll(() => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth), {
          message: `${width} px`,
        })
        .toBeLessThanOrEqual(0);
    }
  });

  test('stands in the order drawing, verdict, charts on a phone, with the controls at the thumb', async () => {
    const { page } = await openBench({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    const tops = await Promise.all(
      ['.first-still', '.bench-verdict', '.bench-charts'].map(
        async (place) => (await page.locator(place).boundingBox())?.y ?? Number.NaN,
      ),
    );
    expect(tops).toEqual([...tops].sort((a, b) => a - b));
    const bar = page.getByRole('region', { name: 'Live controls' });
    const box = await bar.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBe(844);
    await bar.getByRole('button', { name: /^Heat/ }).tap();
    const slider = bar.getByRole('slider', { name: 'Heat' });
    expect((await slider.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    const lead = page.locator('.headline-lead');
    const before = await lead.textContent();
    await slider.fill('1');
    await changedFrom(lead, before);
  });

  test('does not move under the reader while it opens', async () => {
    const { page } = await openBench();
    await page.waitForTimeout(500);
    const shift = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          let sum = 0;
          const observer = new PerformanceObserver((list) => {
            for (const entry of list.getEntries() as (PerformanceEntry & { value: number; hadRecentInput: boolean })[])
              sum += entry.hadRecentInput ? 0 : entry.value;
          });
          observer.observe({ type: 'layout-shift', buffered: true });
          setTimeout(() => resolve(sum), 200);
        }),
    );
    expect(shift).toBeLessThan(0.02);
  });

  test.each([
    ['A4', 'metric'],
    ['Letter', 'US'],
  ] as const)('prints two sheets on %s: sizes, plan, ranges, cautions, blanks and a link', async (format, units) => {
    const { page } = await openBench({ colorScheme: 'dark' });
    await choose(page, 'Units', units);
    await fullRun(page);
    await page.evaluate(() => {
      window.print = () => {
        const sheet = document.querySelector<HTMLElement>('.hand-out');
        document.documentElement.dataset['printed'] = sheet?.innerText ?? '';
      };
    });
    await press(page, 'Files', 'Print');
    const html = page.locator('html');
    await expect.poll(() => html.getAttribute('data-printed'), { timeout: 60_000 }).toMatch(/likely runs/);
    const printed = (await html.getAttribute('data-printed')) ?? '';
    for (const part of [
      /Gentle lavender/,
      /Printed \d+ \w+ \d{4}/,
      /of true lavender, on a grid/,
      /turns/,
      /Heat to 50/,
      /Tap to /,
      /to \d.*\bmL\)/,
      /Owning a still may need a licence/,
      /Weight of the plant/,
      /#still=3\.[\w-]+/,
    ])
      expect(printed).toMatch(part);
    expect(printed).not.toMatch(/[Dd]rag|Undo|Play\b/);

    const pdf = (await page.pdf({ format })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b/g)).toHaveLength(2);
    await page.emulateMedia({ media: 'print' });
    expect(
      await page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue('--paper').trim()),
    ).toBe('rgb(255, 255, 255)');
  });

  test('is laid out for paper while it prints, and put back after', async () => {
    const { page } = await openBench({ colorScheme: 'dark' });
    await page.evaluate(() => {
      window.print = () => {
        const { dataset, clientWidth } = document.documentElement;
        const sheet = document.querySelector('.hand-out .drawing-svg')?.getBoundingClientRect().width ?? 0;
        dataset['printed'] = JSON.stringify({
          theme: dataset['theme'],
          fits: sheet > 300 && sheet < 700 && clientWidth > 1000,
        });
      };
    });
    await press(page, 'Files', 'Print');
    const html = page.locator('html');
    await expect
      .poll(() => html.getAttribute('data-printed'), { timeout: 60_000 })
      .toBe(JSON.stringify({ theme: 'light', fits: true }));
    await expect.poll(() => html.getAttribute('data-paper')).toBeNull();
    expect(await html.getAttribute('data-theme')).toBeNull();
  });
});
