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

/** Waits for the full run after the quick look that is shown first, whose numbers may differ a little. */
export const fullRun = (page: Page): Promise<void> => page.locator('.verdict[aria-busy="false"]').waitFor();

/** In the groups of the page's head; every other place is in Plan. */
const GROUP_OF: Readonly<Record<string, string>> = {
  'At the still': 'Run',
  'Still tests': 'Run',
  'Run book': 'Keep',
  Lessons: 'Teach',
  Bottling: 'Keep',
  Blend: 'Keep',
  Reference: 'Teach',
};

/** Goes to a place as a reader does: by its group, where its own name is not in sight. */
export async function goTo(page: Page, place: string): Promise<void> {
  const places = page.getByRole('navigation', { name: 'Places' });
  const menu = page.getByRole('button', { name: 'Menu', exact: true });
  await places.or(menu).filter({ visible: true }).first().waitFor();
  if (!(await places.isVisible())) await menu.click();
  const link = places.getByRole('link', { name: place, exact: true });
  if (!(await link.isVisible()))
    await places.getByRole('link', { name: GROUP_OF[place] ?? 'Plan', exact: true }).click();
  if ((await link.getAttribute('aria-current')) !== 'page') await link.click();
}

type MenuName = 'Files' | 'Show';

/** A control of a menu in the head of the page, its menu opened. */
async function inMenu(page: Page, menu: MenuName, control: Locator): Promise<Locator> {
  if (await control.isVisible()) return control;
  const sheet = page.getByRole('button', { name: 'Menu', exact: true });
  const own = page.getByRole('button', { name: menu, exact: true });
  await sheet.or(own).filter({ visible: true }).first().waitFor();
  await ((await sheet.isVisible()) ? sheet : own).click();
  return control;
}

/** Presses a button of a menu in the head of the page. */
export const press = async (page: Page, menu: MenuName, name: string | RegExp): Promise<void> =>
  (
    await inMenu(page, menu, page.getByRole('banner').getByRole('button', { name, exact: typeof name === 'string' }))
  ).click();

/** Units or theme, as the head of the page offers them. */
export const choiceOf = (page: Page, name: 'Units' | 'Currency' | 'Theme'): Promise<Locator> =>
  inMenu(page, 'Show', page.getByRole('combobox', { name }));

export const choose = async (page: Page, name: 'Units' | 'Currency' | 'Theme', option: string): Promise<void> => {
  await (await choiceOf(page, name)).selectOption(option);
};

/** Sets the heat to full, which is more than the coil of the first example can take. */
export const turnUpHeat = (page: Page): Promise<void> => enter(typedValue(page, 'Heat'), '100 %');

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
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), press(page, 'Files', 'Open')]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** What hangs on the colours of a look; all other rules ask the same of every look. */
const RULES_OF_COLOUR = ['color-contrast', 'link-in-text-block'];

/** What axe finds on the page as it stands, a line each. Needs a page opened with `bypassCSP`. */
export async function axeFaults(page: Page, ask: 'all' | 'colours' = 'all'): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source);
  return page.evaluate(
    async (rules) => {
      const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(
        rules ? { runOnly: rules } : { rules: { 'label-content-name-mismatch': { enabled: true } } },
      );
      return violations.flatMap(({ id, nodes }) =>
        nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
      );
    },
    ask === 'colours' ? RULES_OF_COLOUR : null,
  );
}

/** Each look of the page, and what axe is asked in it: everything in the first, colours in all others. */
export const LOOKS = [
  ['light', 'all'],
  ['dark', 'colours'],
  ['high contrast', 'colours'],
  ['projector', 'colours'],
] as const;

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
