/**
 * How fast the answers are, in a real browser: from the click on their place to the first contours of the condenser's
 * picture, its last point, the inverse answers and the tubes of the table, and 300 likely runs.
 *
 * Run by hand with `npx tsx tests/bench/answers-speed.ts`; nothing is asserted. Best of a few tries.
 */
import { chromium, type Page } from 'playwright-core';
import { startApp } from '../e2e/served-app.ts';

const TRIES = Number(process.env['TRIES'] ?? 3);
/** With the one-at-a-time runs, two for each doubt and the plan itself, these make a little over 300. */
const DRAWS = 279;
/** A hand needs so long from coming near a word to pressing it. */
const HAND_MS = 150;

interface Moments {
  clicked?: number;
  first?: number;
  whole?: number;
  inverse?: number;
  rows?: number;
  tubes?: number;
}
type Watched = typeof globalThis & { moments: Moments };

/** Runs in the page. */
function watchMoments(): void {
  const moments: Moments = {};
  (globalThis as Watched).moments = moments;
  document.addEventListener('click', () => (moments.clicked ??= performance.now()), { capture: true });
  new MutationObserver(() => {
    const now = performance.now();
    if (document.querySelector('.map-isotherm')) moments.first ??= now;
    if (moments.first !== undefined && document.querySelector('.map-state')?.textContent === '') moments.whole ??= now;
    if (document.querySelectorAll('.inverse button').length === 2) moments.inverse ??= now;
    const tried = Number(
      /^(\d+) of 124/u.exec(document.querySelector('.answer-progress-words')?.textContent ?? '')?.[1],
    );
    if (tried >= 8) moments.rows ??= now;
    if (tried === 124) moments.tubes ??= now;
  }).observe(document.body, { subtree: true, childList: true, characterData: true });
}

const { address, browser: server, stop } = await startApp();
const browser = await chromium.connect(server.wsEndpoint());

async function pictureTimes(page: Page): Promise<Required<Moments>> {
  await page.evaluate(watchMoments);
  const link = page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Size', exact: true });
  await link.hover();
  await page.waitForTimeout(HAND_MS);
  await link.click();
  await page.waitForFunction(() => Object.keys((globalThis as Watched).moments).length === 6, undefined, {
    timeout: 180_000,
  });
  return page.evaluate(() => (globalThis as Watched).moments as Required<Moments>);
}

async function ensembleTime(page: Page): Promise<number> {
  await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: 'Run length', exact: true }).click();
  const allOf = (least: number) =>
    page.waitForFunction(
      (runs) => {
        const words = document.querySelector('.answer-progress-words')?.textContent ?? '';
        const [, done, of] = /^(\d+) of (\d+) runs/u.exec(words) ?? [];
        return done === of && Number(done) >= runs;
      },
      least,
      { timeout: 60_000 },
    );
  await allOf(1);
  const field = page.getByRole('textbox', { name: 'Runs' });
  await field.fill(String(DRAWS));
  await field.press('Enter');
  const from = performance.now();
  await page.getByRole('button', { name: 'Run again' }).click();
  await allOf(DRAWS);
  return performance.now() - from;
}

const best = {
  first: Infinity,
  whole: Infinity,
  inverse: Infinity,
  rows: Infinity,
  tubes: Infinity,
  ensemble: Infinity,
};
for (let tried = 0; tried < TRIES; tried++) {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    reducedMotion: 'reduce',
  });
  const page = await context.newPage();
  // Whatever runs TypeScript here may mark functions so; the page must not stumble over it.
  await page.addInitScript('globalThis.__name = (named) => named');
  await page.goto(address);
  await page.locator('.headline-lead').waitFor();
  await page.waitForTimeout(3000);
  const { clicked, first, whole, inverse, rows, tubes } = await pictureTimes(page);
  best.first = Math.min(best.first, first - clicked);
  best.whole = Math.min(best.whole, whole - clicked);
  best.inverse = Math.min(best.inverse, inverse - clicked);
  best.rows = Math.min(best.rows, rows - clicked);
  best.tubes = Math.min(best.tubes, tubes - clicked);
  best.ensemble = Math.min(best.ensemble, await ensembleTime(page));
  await context.close();
}
console.log(
  `first contours: ${best.first.toFixed(0)} ms; whole picture: ${best.whole.toFixed(0)} ms; hardest boil and least water: ${best.inverse.toFixed(0)} ms`,
);
console.log(`first eight tubes: ${best.rows.toFixed(0)} ms; all of them: ${best.tubes.toFixed(0)} ms`);
console.log(`300 likely runs: ${best.ensemble.toFixed(0)} ms`);
await browser.close();
await stop();
