/**
 * How fast the page is, in a real browser: from a change to the first paint of its run in the charts, a blend in a drag, frames a second
 * while a run plays, layout shift, bytes of script of the first load.
 *
 * Run by hand with `npx tsx tests/bench/page-speed.ts`; nothing is asserted. Every number is the best of a few tries,
 * because whatever else runs on the machine only ever makes it worse.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { quantileSorted } from 'd3-array';
import { chromium, type BrowserContextOptions, type CDPSession, type Page } from 'playwright-core';
import { startApp } from '../e2e/served-app.ts';
import { watchFrames, watchRedraws, type PageWatch } from './page-watch.ts';

const TRIES = Number(process.env['TRIES'] ?? 3);
const CHANGES = 32;
/** A change is made when the one before has long been shown. */
const BETWEEN_CHANGES_MS = 500;
const THROTTLE = 4;
const PLAYED_MS = 6000;
const DESKTOP = { width: 1440, height: 900 };
/** High enough for every chart to be on the screen at once. */
const ALL_CHARTS = { width: 1440, height: 5400 };

type Watched = typeof globalThis & { pageWatch: PageWatch };

const sorted = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);
const at = (values: readonly number[], share: number): number => quantileSorted(sorted(values), share) ?? NaN;
const ms = (value: number): string => `${value.toFixed(1)} ms`;

const { address, folder, browser: server, stop } = await startApp();
const browser = await chromium.connect(server.wsEndpoint());

interface Opened {
  readonly page: Page;
  readonly cdp: CDPSession;
}

async function withPage<T>(options: BrowserContextOptions, work: (opened: Opened) => Promise<T>): Promise<T> {
  const context = await browser.newContext({ viewport: DESKTOP, locale: 'en-GB', reducedMotion: 'reduce', ...options });
  try {
    const page = await context.newPage();
    // Whatever runs TypeScript here may mark functions so; the page must not stumble over it.
    await page.addInitScript('globalThis.__name = (named) => named');
    await page.addInitScript(watchRedraws);
    const cdp = await context.newCDPSession(page);
    await page.goto(address);
    await page.getByRole('region', { name: 'Tap temperature' }).waitFor();
    // What is fetched ahead of need comes three seconds in.
    await page.waitForTimeout(4000);
    return await work({ page, cdp });
  } finally {
    await context.close();
  }
}

/** Steps of a live control, one at a time: from each input event to the paint of the charts that show it. */
const redraws = (viewport: typeof DESKTOP): Promise<readonly number[]> =>
  withPage({ viewport }, async ({ page }) => {
    const sliders = ['Heat', 'Tap', 'Coil', 'Charge'];
    await page.locator('.first-live').evaluate((live) => live.scrollIntoView({ block: 'start' }));
    for (let change = 0; change < CHANGES; change++) {
      await page.getByRole('slider', { name: sliders[change % sliders.length] as string, exact: true }).focus();
      await page.keyboard.press(change % 8 < 4 ? 'ArrowRight' : 'ArrowLeft');
      await page.waitForTimeout(BETWEEN_CHANGES_MS);
    }
    return page.evaluate(() => (globalThis as Watched).pageWatch.redraws_ms);
  });

/** A slider dragged across, an input event each frame or so: how old the hand's last move is when charts are painted. */
const dragged = (): Promise<readonly number[]> =>
  withPage({}, async ({ page }) => {
    await page.locator('.first-live').evaluate((live) => live.scrollIntoView({ block: 'start' }));
    const box = await page.getByRole('slider', { name: 'Heat', exact: true }).boundingBox();
    if (!box) throw new Error('the slider is not on the page');
    const y = box.y + box.height / 2;
    await page.mouse.move(box.x + box.width / 2, y);
    await page.mouse.down();
    for (let step = 0; step < 150; step++) {
      await page.mouse.move(box.x + box.width * (0.55 + 0.25 * Math.sin(step / 20)), y);
      await page.waitForTimeout(16);
    }
    await page.mouse.up();
    await page.waitForTimeout(500);
    return page.evaluate(() => (globalThis as Watched).pageWatch.redraws_ms);
  });

/** The shares of a blend of five oils dragged at a throttled pace: from an input event to the end of its frame. */
const blended = (): Promise<readonly number[]> =>
  withPage({}, async ({ page, cdp }) => {
    await page.evaluate(() => (location.hash = '#blend'));
    await page.locator('.fade-area').first().waitFor();
    for (const oil of ['Rosemary', 'Peppermint']) {
      await page.getByRole('combobox', { name: 'Add' }).selectOption(oil);
      await page.getByRole('button', { name: 'Add this oil' }).click();
    }
    await cdp.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
    return page.evaluate(async () => {
      const slider = document.querySelector<HTMLInputElement>('.blend-slider');
      if (!slider) throw new Error('no share to drag');
      const times: number[] = [];
      for (let step = 0; step < 120; step++) {
        await new Promise((resolve) => requestAnimationFrame(resolve));
        const began = performance.now();
        slider.value = String(50 + Math.round(30 * Math.sin(step / 12)));
        slider.dispatchEvent(new InputEvent('input', { bubbles: true }));
        document.body.getBoundingClientRect();
        times.push(performance.now() - began);
      }
      return times;
    });
  });

interface Played {
  readonly frames_ms: readonly number[];
  readonly shift: number;
}

const played = (viewport: typeof DESKTOP, throttle: number): Promise<Played> =>
  withPage({ viewport, reducedMotion: 'no-preference' }, async ({ page, cdp }) => {
    const pause = page.getByRole('button', { name: 'Pause' });
    if (await pause.isVisible()) await pause.click();
    await page.getByRole('slider', { name: 'Time mark' }).fill('1200');
    if (viewport.height < 2000)
      await page.locator('.bench-charts').evaluate((charts) => charts.scrollIntoView({ block: 'start' }));
    await cdp.send('Emulation.setCPUThrottlingRate', { rate: throttle });
    await page.evaluate(() => document.querySelector<HTMLElement>('.playback-play')?.click());
    await page.waitForTimeout(500);
    const frames_ms = await page.evaluate(watchFrames, PLAYED_MS);
    await cdp.send('Emulation.setCPUThrottlingRate', { rate: 1 });
    const shift = await page.evaluate(() => (globalThis as Watched).pageWatch.shift);
    return { frames_ms, shift };
  });

async function firstScripts(): Promise<{ readonly files: number; readonly bytes: number }> {
  const context = await browser.newContext({ viewport: DESKTOP, reducedMotion: 'reduce' });
  const page = await context.newPage();
  const scripts = new Set<string>();
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    if (pathname.endsWith('.js')) scripts.add(pathname);
  });
  await page.goto(address, { waitUntil: 'networkidle' });
  await context.close();
  const bytes = [...scripts].reduce((sum, path) => sum + gzipSync(readFileSync(join(folder, path))).length, 0);
  return { files: scripts.size, bytes };
}

async function best<T>(measure: () => Promise<T>, score: (result: T) => number): Promise<T> {
  const tries: T[] = [];
  for (let count = 0; count < TRIES; count++) tries.push(await measure());
  return tries.reduce((a, b) => (score(b) < score(a) ? b : a));
}

const sayTimes = (what: string, times: readonly number[]): void =>
  console.log(
    `${what}: p50 ${ms(at(times, 0.5))}, p95 ${ms(at(times, 0.95))}, worst ${ms(at(times, 1))} (${times.length})`,
  );

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const sayFrames = (what: string, { frames_ms, shift }: Played): void => {
  const late = frames_ms.filter((frame) => frame > 25).length;
  console.log(
    `${what}: ${(1000 / mean(frames_ms)).toFixed(1)} frames a second, p95 ${ms(at(frames_ms, 0.95))}, ` +
      `${late} of ${frames_ms.length} frames late; layout shift ${shift.toFixed(4)}`,
  );
};

const p95 = (times: readonly number[]): number => at(times, 0.95);
const late = ({ frames_ms }: Played): number => mean(frames_ms);

const wanted = new Set(process.argv.slice(2));
const isWanted = (name: string): boolean => wanted.size === 0 || wanted.has(name);

try {
  if (isWanted('script')) {
    const { files, bytes } = await firstScripts();
    console.log(`first scripts: ${(bytes / 1000).toFixed(1)} kB gzipped in ${files} files`);
  }
  if (isWanted('redraw')) {
    sayTimes('redraw after a change', await best(() => redraws(DESKTOP), p95));
    sayTimes('redraw after a change, all charts on the screen', await best(() => redraws(ALL_CHARTS), p95));
    sayTimes('redraw in a drag', await best(dragged, p95));
  }
  if (isWanted('blend'))
    sayTimes(
      `a blend of five oils in a drag at ${THROTTLE}× throttle, computed and laid out`,
      await best(blended, p95),
    );
  if (isWanted('play')) {
    sayFrames('playback', await best(() => played(DESKTOP, 1), late));
    sayFrames(`playback at ${THROTTLE}× throttle`, await best(() => played(DESKTOP, THROTTLE), late));
    sayFrames(
      `playback at ${THROTTLE}× throttle, all charts on the screen`,
      await best(() => played(ALL_CHARTS, THROTTLE), late),
    );
  }
} finally {
  await browser.close();
  await stop();
}
