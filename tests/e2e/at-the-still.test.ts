/** A whole run at the still on a phone, with a clock that the test moves. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { SEARCH } from './answers-page.ts';
import { openPage } from './open-page.ts';

const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const MINUTE_MS = 60_000;

const button = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' });

const logged = (page: Page, words: string | RegExp) => page.locator('.logged-what').filter({ hasText: words });

async function typeOn(page: Page, kind: string, digits: string): Promise<void> {
  await button(page, kind).tap();
  for (const digit of digits) await button(page, digit).tap();
  await button(page, `Save ${kind.toLowerCase()}`).tap();
}

/** Does it in each page in one moment, before either hears of the other. */
const atOnce = (acts: readonly (readonly [Page, string])[]): Promise<readonly void[]> =>
  Promise.all(
    acts.map(([page, selector]) =>
      page.evaluate((of) => {
        const found = document.querySelector<HTMLElement>(of);
        if (!found) throw new Error(`nothing is ${of}`);
        found.click();
      }, selector),
    ),
  );

/** Crashes the workers; answers how many. One that is let go of meanwhile answers nothing. */
async function crash(page: Page): Promise<number> {
  const crashed = page.workers().map((worker) =>
    worker
      .evaluate(() => {
        setTimeout(() => {
          throw new Error('crash');
        }, 0);
        return true;
      })
      .catch(() => false),
  );
  return (await Promise.all(crashed)).filter(Boolean).length;
}

/** Fonts come late by a clock that leaps, and on a page that is loaded anew at once. */
const forgetLateFonts = (problems: string[]) =>
  void problems.splice(
    0,
    problems.length,
    ...problems.filter((each) => !each.includes('preloaded using link preload')),
  );

/** Minutes that a time says: `54 min`, `1 h 24 min`. */
function minutesOf(words: string | null): number {
  const [, hours = '0', minutes = '0'] = /^(?:(\d+)\sh)?\s?(?:(\d+)\smin)?/u.exec(words ?? '') ?? [];
  return 60 * Number(hours) + Number(minutes);
}

describe('a run at the still', () => {
  test(
    'is kept to the run book, with its alarms, in two tabs, offline, locked, reloaded and crashed',
    { timeout: 300_000 },
    async () => {
      const { page, problems } = await openPage('#at-the-still', PHONE);
      const clock = page.context().clock;
      await clock.install({ time: new Date('2026-06-20T09:00:00Z') });
      await page.reload();
      const pass = async (minutes: number) => {
        await clock.fastForward(minutes * MINUTE_MS);
        await clock.runFor(2000);
      };
      const alarm = page.locator('.ringing');
      const since = page.getByRole('timer');

      await button(page, /^Start now/).tap(SEARCH);
      await expect.poll(() => since.textContent()).toBe('0 min');
      await page.getByText(/^Next, in /).waitFor(SEARCH);
      await page.locator('.forecast-lines').waitFor({ timeout: 120_000 });
      await pass(12);
      await expect.poll(() => since.textContent()).toMatch(/^1[2-9]\smin$/u);
      expect(await alarm.count()).toBe(0);
      await pass(28);
      await alarm.filter({ hasText: 'First drop expected' }).waitFor();
      await button(page, 'Silence').tap();
      await alarm.waitFor({ state: 'detached' });

      // The plan turns the heat down at the first drop, which is due once it has fallen.
      await button(page, 'First drop').tap();
      await alarm.filter({ hasText: 'Turn the heat to 50' }).waitFor();
      await page
        .locator('.next')
        .getByRole('button', { name: /^Done Turn the heat/ })
        .tap();
      await alarm.waitFor({ state: 'detached' });
      await pass(10);
      await typeOn(page, 'Oil so far', '45');
      // The workers crash over it: others take their place, and the forecast comes.
      expect(await crash(page)).toBeGreaterThan(0);
      await page.getByText(/As of 5\d\smin/u).waitFor({ timeout: 120_000 });
      expect(await page.locator('.forecast-lines').count()).toBe(1);

      const other = await page.context().newPage();
      await other.goto(page.url());
      await logged(other, 'Oil so far 45').waitFor(SEARCH);

      const heights = await page
        .locator('.pad button, .next button, .logged button')
        .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().height));
      expect(Math.min(...heights)).toBeGreaterThanOrEqual(56);

      // A wrong entry is corrected in one tab, and the other follows.
      await button(page, /^Correct Oil so far 45/).tap();
      for (const digit of ['4', '.', '5']) await button(page, digit).tap();
      await button(page, 'Save oil so far').tap();
      await logged(other, 'Oil so far 4.5').waitFor();
      await other.close();

      // A locked phone freezes the page: nothing of it runs until it is seen again, and the clock has gone on.
      const water = page.locator('.sheet-step').filter({ hasText: 'Check the water' });
      const due = async (number: number) => minutesOf(await water.nth(number).locator('.sheet-time').textContent());
      const minute = async () => minutesOf(await since.textContent());
      await pass((await due(0)) - (await minute()) - 2);
      expect(await alarm.count()).toBe(0);
      const devtools = await page.context().newCDPSession(page);
      await devtools.send('Page.setWebLifecycleState', { state: 'frozen' });
      await clock.setSystemTime((await page.evaluate(() => Date.now())) + 6 * MINUTE_MS);
      await devtools.send('Page.setWebLifecycleState', { state: 'active' });
      await devtools.detach();
      await alarm.filter({ hasText: 'Check the water' }).waitFor();
      await expect.poll(() => page.locator('.next-when').textContent()).toMatch(/^Due [3-6]\smin ago$/u);
      await page
        .locator('.next')
        .getByRole('button', { name: /^Done Check the water/ })
        .tap();
      await alarm.waitFor({ state: 'detached' });
      // A photo is kept on the phone, shrunk.
      const [chooser] = await Promise.all([page.waitForEvent('filechooser'), button(page, 'Photo').tap()]);
      await chooser.setFiles({ name: 'lid.png', mimeType: 'image/png', buffer: await page.screenshot() });
      const photo = page.locator('.logged-entry').getByRole('button', { name: /^Photo, / });
      await photo.waitFor(SEARCH);
      await button(page, 'Delete Photo').tap();
      await expect.poll(() => photo.count()).toBe(0);
      await button(page, 'Undo deleting Photo').tap();
      await photo.waitFor();
      await page.context().setOffline(true);
      await typeOn(page, 'Outlet', '24');
      await page.context().setOffline(false);
      await page.reload();
      await logged(page, 'Oil so far 4.5').waitFor(SEARCH);
      await logged(page, 'Outlet 24').waitFor();
      await photo.waitFor();
      expect(await minute()).toBeGreaterThan(60);

      await typeOn(page, 'Oil so far', '9');
      await button(page, 'Undo').last().tap();
      await expect.poll(() => logged(page, 'Oil so far 9').count()).toBe(0);
      await typeOn(page, 'Tub', '31');
      // Awake, an alarm comes at its minute and not before.
      await pass((await due(1)) - (await minute()) - 1);
      await typeOn(page, 'Oil so far', '16');
      expect(await alarm.filter({ hasText: 'Check the water' }).count()).toBe(0);
      await pass(1);
      await alarm.filter({ hasText: 'Check the water' }).waitFor();
      await pass(15);
      await typeOn(page, 'Oil so far', '21');
      await pass(180);
      await alarm.filter({ hasText: 'Stop: heat off' }).waitFor(SEARCH);
      await page.goto(new URL('#compare', page.url()).href);
      await page.locator('.run-bar').filter({ hasText: 'Stop: heat off' }).waitFor(SEARCH);
      await page.locator('.run-bar').getByRole('link').tap();
      await button(page, 'End the run').tap();
      await button(page, 'End it').tap();

      await expect
        .poll(() => page.getByRole('textbox', { name: 'Name', exact: true }).inputValue(), SEARCH)
        .toBe('Gentle lavender, 20 June 2026');
      expect(await page.getByRole('textbox', { name: /^Oil so far.*, line 1$/ }).inputValue()).toBe('4.5');
      expect(await page.getByRole('textbox', { name: 'Notes' }).inputValue()).toContain('First drop');
      await page.getByRole('button', { name: /^Photo, / }).waitFor(SEARCH);
      await button(page, 'Fit').tap();
      await page.getByRole('region', { name: /^Fitted factors/ }).waitFor({ timeout: 120_000 });
      await page.reload();
      await page.getByRole('textbox', { name: /^Oil so far.*, line 1$/ }).waitFor(SEARCH);
      expect(await page.locator('.run-bar').count()).toBe(0);
      await page.getByRole('button', { name: /^Photo, / }).waitFor(SEARCH);
      forgetLateFonts(problems);
    },
  );

  test('is one run in two tabs that start, log, correct and end it in one moment', { timeout: 240_000 }, async () => {
    const { page: one, problems } = await openPage('#at-the-still', PHONE);
    // What one tab says reaches the other late.
    await one.context().addInitScript(() => {
      const Prompt = BroadcastChannel;
      globalThis.BroadcastChannel = class extends Prompt {
        override set onmessage(then: ((event: MessageEvent) => void) | null) {
          super.onmessage = then && ((event) => void setTimeout(() => then(event), 400));
        }
      };
    });
    await one.reload();
    const other = await one.context().newPage();
    await other.goto(one.url());
    const tabs = [one, other] as const;
    for (const page of tabs) await button(page, /^Start now/).waitFor(SEARCH);
    await atOnce([
      [one, '.start .is-first'],
      [other, '.start .is-first'],
    ]);
    for (const page of tabs) await button(page, 'First drop').waitFor(SEARCH);
    await atOnce([
      [one, '.pad-kind.is-first'],
      [other, '.pad-kind.is-first'],
    ]);
    // Both pressed: two entries, in both tabs, of which one is deleted in both.
    for (const page of tabs) await expect.poll(() => logged(page, 'First drop').count()).toBe(2);
    await one
      .getByRole('button', { name: /^Delete First drop/ })
      .first()
      .tap();
    for (const page of tabs) await expect.poll(() => logged(page, 'First drop').count()).toBe(1);
    await typeOn(other, 'Outlet', '24');
    await logged(one, 'Outlet 24').waitFor();

    // One corrects while the other ends the run.
    await button(one, /^Correct Outlet 24/).tap();
    for (const digit of ['2', '9']) await button(one, digit).tap();
    await button(other, 'End the run').tap();
    await atOnce([
      [other, '.still-end .is-first'],
      [one, '.pad-ends .pad-save'],
    ]);
    await one.getByText('The run was ended in another window').waitFor(SEARCH);
    const outlet = (page: Page) => page.getByRole('textbox', { name: 'Outlet in °C, line 1' });
    await expect.poll(() => outlet(other).inputValue(), SEARCH).toBe('29');
    await one.getByRole('link', { name: 'run book' }).tap();
    await expect.poll(() => outlet(one).inputValue(), SEARCH).toBe('29');
    for (const page of tabs) {
      await page.reload();
      await expect.poll(() => outlet(page).inputValue(), SEARCH).toBe('29');
      expect(await page.getByRole('combobox', { name: 'Log', exact: true }).locator('option').count()).toBe(1);
      expect(await page.locator('.run-bar').count()).toBe(0);
    }
    forgetLateFonts(problems);
  });
});
