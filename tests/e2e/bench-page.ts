/** The bench as a reader meets it: where things stand on the page, by the names they go by. */
import { text } from 'node:stream/consumers';
import axe from 'axe-core';
import type { BrowserContextOptions, Download, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { openPage, type OpenedPage } from './open-page.ts';

export interface OpenBench extends OpenedPage {
  /** The sentence at the top that says what the run comes to. */
  readonly lead: Locator;
  readonly timeMark: Locator;
  readonly verdict: Locator;
}

export async function openBench(options: BrowserContextOptions = {}): Promise<OpenBench> {
  const opened = await openPage('', options);
  const bench = onBench(opened.page);
  await bench.lead.waitFor();
  return { ...opened, ...bench };
}

export const onBench = (page: Page) => ({
  lead: page.locator('.headline-lead'),
  timeMark: page.getByRole('slider', { name: 'Time mark' }),
  verdict: page.getByRole('region', { name: 'What this run tells you' }),
});

export const typedValue = (page: Page, control: string): Locator =>
  page.getByRole('textbox', { name: `${control}, typed` });

/** Types into a field and leaves it. */
export async function enter(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press('Enter');
}

/** Where the time mark stands, in seconds of the run. */
export const seconds = async (timeMark: Locator): Promise<number> => Number(await timeMark.inputValue());

/** Waits until a text has changed from what it was, and gives the new one. */
export async function changedFrom(text: Locator, before: string | null): Promise<string> {
  await expect.poll(() => text.textContent()).not.toBe(before);
  return (await text.textContent()) ?? '';
}

export async function downloaded(
  page: Page,
  act: () => Promise<void>,
): Promise<{ readonly name: string; readonly text: string }> {
  const [download]: [Download, void] = await Promise.all([page.waitForEvent('download'), act()]);
  return { name: download.suggestedFilename(), text: await text(await download.createReadStream()) };
}

/** Hands a file to the page the way its own file picker does. */
export async function openFile(page: Page, name: string, text: string): Promise<void> {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Open', exact: true }).click(),
  ]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** What axe finds on the page as it stands, a line each. Needs a page opened with `bypassCSP`. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run({
      rules: { 'label-content-name-mismatch': { enabled: true } },
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
    );
  });
}

/** The sections of the settings, as their tabs name them. */
export const SETTINGS_PARTS = [
  'Place',
  'Heat',
  'Pot',
  'Charge',
  'Neck',
  'Condenser',
  'Cooling',
  'Separator',
  'Run',
  'Factors',
  'Model',
];
