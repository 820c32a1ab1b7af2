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

describe('a run at the still', () => {
  test('is kept from the first press to the run book, with its alarms, in two tabs, offline and through a reload', async () => {
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
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Page.setWebLifecycleState', { state: 'frozen' });
    await devtools.send('Page.setWebLifecycleState', { state: 'active' });
    await devtools.detach();
    await pass(1);
    await page.context().setOffline(true);
    await typeOn(page, 'Outlet', '24');
    await page.context().setOffline(false);
    await page.reload();
    await logged(page, 'Oil so far 4.5').waitFor(SEARCH);
    await logged(page, 'Outlet 24').waitFor();
    await expect.poll(() => since.textContent()).toMatch(/^5\d\smin$/u);

    await typeOn(page, 'Oil so far', '9');
    await button(page, 'Undo').last().tap();
    await expect.poll(() => logged(page, 'Oil so far 9').count()).toBe(0);
    await typeOn(page, 'Tub', '31');
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
    await button(page, 'Fit').waitFor();
    await page.reload();
    await page.getByRole('textbox', { name: /^Oil so far.*, line 1$/ }).waitFor(SEARCH);
    expect(await page.locator('.run-bar').count()).toBe(0);
    // Fonts come late by a clock that leaps.
    problems.splice(0, problems.length, ...problems.filter((each) => !each.includes('preloaded using link preload')));
  });
});
