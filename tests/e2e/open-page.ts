/** Opens the built app in the shared browser and lets no page misbehave in silence. */
import { mkdirSync } from 'node:fs';
import { chromium, type Browser, type BrowserContext, type BrowserContextOptions, type Page } from 'playwright-core';
import { expect, inject, onTestFinished } from 'vitest';

let connection: Promise<Browser> | undefined;
const browser = (): Promise<Browser> => (connection ??= chromium.connect(inject('browserEndpoint')));

export interface OpenedPage {
  readonly page: Page;
  /**
   * What the page did that a good page does not: anything on its console, an uncaught error, a failed answer, a
   * request to another host. The test fails at its end if any is left; one that provokes a problem takes it out.
   */
  readonly problems: string[];
}

/**
 * A page of its own for one test: fixed size, language and time zone, calm motion, empty storage, unless `options`
 * ask otherwise. Closed when the test ends; a failed test leaves a picture in `.cache/e2e/`.
 */
export async function openPage(path = '', options: BrowserContextOptions = {}): Promise<OpenedPage> {
  const address = inject('appAddress');
  const context = await (
    await browser()
  ).newContext({
    viewport: { width: 1440, height: 900 },
    locale: 'en-GB',
    timezoneId: 'UTC',
    reducedMotion: 'reduce',
    ...options,
  });
  const problems: string[] = [];
  watch(context, new URL(address).host, problems);
  // Keeping the app offline fetches all its files: only for tests that ask for it.
  if (options.serviceWorkers !== 'allow')
    await context.addInitScript(() => {
      if ('serviceWorker' in navigator)
        navigator.serviceWorker.register = () => Promise.reject(new Error('not in this test'));
    });
  const page = await context.newPage();

  onTestFinished(async ({ task }) => {
    if (task.result?.state === 'fail' || problems.length > 0) await photograph(page, task.name);
    await context.close();
    expect(problems).toEqual([]);
  });
  await page.goto(new URL(path, address).href);
  return { page, problems };
}

function watch(context: BrowserContext, ownHost: string, problems: string[]): void {
  context.on('console', (message) => {
    const what = message.text();
    const where = what.startsWith('Failed to load resource') ? ` (${message.location().url})` : '';
    problems.push(`console ${message.type()}: ${what}${where}`);
  });
  context.on('weberror', (error) => problems.push(`uncaught error: ${error.error().message}`));
  context.on('request', (request) => {
    const { host, protocol } = new URL(request.url());
    if (protocol.startsWith('http') && host !== ownHost) problems.push(`request to another host: ${request.url()}`);
  });
  context.on('response', (response) => {
    if (response.status() >= 400) problems.push(`answer ${response.status()}: ${response.url()}`);
  });
}

async function photograph(page: Page, testName: string): Promise<void> {
  if (page.isClosed()) return;
  mkdirSync('.cache/e2e', { recursive: true });
  await page.screenshot({ path: `.cache/e2e/${testName.replace(/[^a-z0-9]+/gi, '-').slice(0, 80)}.png` });
}
