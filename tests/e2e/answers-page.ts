/** The answering places as a reader meets them. */
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import { openPage, type OpenedPage } from './open-page.ts';

export interface OpenAnswer extends OpenedPage {
  /** The answer in a sentence, under its question. */
  readonly lead: Locator;
}

export const onAnswer = (page: Page) => ({ lead: page.locator('.answer-lead').first() });

/** Opens a place by its address. */
export async function openAnswer(
  place: 'size' | 'run-length' | 'compare' | 'run-book',
  options: BrowserContextOptions = {},
): Promise<OpenAnswer> {
  const opened = await openPage(`#${place}`, options);
  const answer = onAnswer(opened.page);
  await answer.lead.waitFor();
  return { ...opened, ...answer };
}

export { goTo } from './bench-page.ts';

/** Dozens of runs may take longer. */
export const DRAWS = { timeout: 90_000 };

/** A search on the model may take its time on a busy machine. */
export const SEARCH = { timeout: 45_000 };
