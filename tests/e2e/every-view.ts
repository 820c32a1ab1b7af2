/** A walk through every place, menu, setting and dialog of the page, for what must hold in all of them. */
import type { Locator, Page } from 'playwright-core';
import { goTo } from './answers-page.ts';
import { enter, fullRun, onBench, openFile, press } from './bench-page.ts';

/** Looks at the page as it stands, under the name of what is to be seen. */
export type Look = (view: string) => Promise<void>;

/** Searches on the model, on a machine that has much else to do. */
const LATE = { timeout: 180_000 };

/** Oil of a run in minutes and millilitres, enough to fit. */
const LOG = '30, 2.6\n40, 8.2\n50, 13.4\n60, 17.6\n75, 22.8\n90, 26.1\n105, 28.2\n120, 29.6';

async function walkBench(page: Page, look: Look): Promise<void> {
  await onBench(page).lead.waitFor();
  await page.locator('.chart-of-choice .chart-traces').waitFor();
  await fullRun(page);
  await look('the first screen, on a first visit');
  await page.getByRole('button', { name: 'Understood' }).click();

  const sheet = page.getByRole('button', { name: 'Menu', exact: true });
  for (const menu of (await sheet.isVisible()) ? ['Menu'] : ['Files', 'Show']) {
    const button = page.getByRole('button', { name: menu, exact: true });
    await button.click();
    await look(`the menu ${menu}`);
    await button.press('Escape');
  }
  for (const tab of await page.locator('.live-tab').filter({ visible: true }).all()) {
    await tab.click();
    await look(`the live control ${(await tab.textContent()) ?? ''}`);
    await tab.click();
  }

  const plan = page.getByRole('region', { name: 'Water flow' });
  await plan.getByRole('button', { name: /^Add a change at/ }).click();
  await plan.getByRole('slider').first().waitFor();
  const chart = page.getByRole('figure', { name: 'Oil out', exact: true });
  await chart.getByRole('button', { name: 'Table of Oil out' }).click();
  await chart.getByRole('button', { name: 'Save Oil out', exact: true }).click();
  await fullRun(page);
  await look('the bench below its first screen');
}

async function walkSettings(page: Page, look: Look): Promise<void> {
  await fullRun(page);
  await page.getByRole('button', { name: /^Pot,/ }).first().press('Enter');
  const settings = page.getByRole('complementary', { name: 'Settings' });
  await settings.getByRole('tab').first().waitFor();
  await settings.getByRole('switch', { name: /Show all fields/ }).check();
  for (const tab of await settings.getByRole('tab').all()) {
    const name = (await tab.textContent()) ?? '';
    await tab.click();
    await unfold(settings);
    await look(`the settings of ${name}`);
    for (const picker of await settings.getByRole('button', { name: /^Choose a / }).all()) {
      await picker.click();
      const sheet = page.getByRole('dialog');
      await sheet.waitFor();
      await unfold(sheet.locator('.picker-row').first());
      await look(`“${(await picker.textContent()) ?? ''}”`);
      await closeDialog(sheet);
    }
  }
  await settings.getByRole('button', { name: 'Close settings' }).click();
}

async function walkDialogs(page: Page, look: Look): Promise<void> {
  await fullRun(page);
  await page
    .getByRole('button', { name: /^Show the working of: / })
    .first()
    .click();
  const working = page.getByRole('dialog', { name: 'The working' });
  await working.locator('.katex').first().waitFor(LATE);
  await unfold(working);
  await look('the working');
  await closeDialog(working);
  for (const [menu, entry, title] of [
    ['Files', 'Examples', 'Start from'],
    ['Files', /^Share/, 'Share this still'],
    ['Show', 'Keys', 'Keys'],
  ] as const) {
    await press(page, menu, entry);
    const dialog = page.getByRole('dialog', { name: title });
    await dialog.locator('.start-choice, .share-link, .keys').first().waitFor();
    await look(`the dialog “${title}”`);
    await closeDialog(dialog);
  }
  await walkShelf(page, look);
}

/** The reader's own stills with their versions, one of them deleted, and a still that came by a file. */
async function walkShelf(page: Page, look: Look): Promise<void> {
  await openFile(page, 'class.json', JSON.stringify({ name: 'The long coil of the summer class at Tern Hollow' }));
  await page.getByRole('button', { name: 'Keep as mine' }).waitFor();
  await look('a still that came by a file');
  await page.getByRole('button', { name: 'Keep as mine' }).click();
  await press(page, 'Files', 'My stills');
  const dialog = page.getByRole('dialog', { name: 'My stills' });
  await dialog.getByRole('button', { name: /^Copy / }).click();
  await dialog
    .getByRole('button', { name: /^Delete / })
    .first()
    .click();
  for (const versions of await dialog.getByRole('button', { name: /^Versions of / }).all()) await versions.click();
  await dialog.getByText(/^Deleted/).click();
  await dialog.locator('.shelf-versions').first().waitFor();
  await look('the dialog “My stills”');
  await closeDialog(dialog);
}

async function walkAnswers(page: Page, look: Look): Promise<void> {
  await goTo(page, 'Begin');
  await page.locator('.begin-row').first().waitFor(LATE);
  await enter(page.getByRole('textbox', { name: 'Volume of the pot' }), '20');
  await look('Begin');
  await goTo(page, 'Plants');
  await page.locator('.plants-table tbody tr').first().waitFor(LATE);
  await unfold(page.getByRole('main'));
  await look('Plants');
  await page.getByRole('link', { name: 'Common (Dalmatian) sage' }).click();
  await page.locator('.plant-page').waitFor();
  await look('Plants, a plant');
  await goTo(page, 'Bottling');
  await page.locator('.label').first().waitFor(LATE);
  await look('Bottling');
  await goTo(page, 'Blend');
  await page.locator('.fade-area').first().waitFor(LATE);
  await unfold(page.getByRole('main'));
  await look('Blend');
  await goTo(page, 'Size');
  await page.locator('.tube-table tbody tr').first().waitFor(LATE);
  await page
    .getByRole('button', { name: /^Use it/ })
    .first()
    .waitFor(LATE);
  await look('Size');
  await goTo(page, 'Build');
  await page.locator('.sheet-figure').first().waitFor(LATE);
  await look('Build');
  await goTo(page, 'Run length');
  await page.locator('.spread-row').first().waitFor(LATE);
  await look('Run length');
  await goTo(page, 'Compare');
  await page.getByRole('button', { name: 'Gentle against hard' }).click();
  await page.locator('.compared').nth(1).waitFor(LATE);
  await page.getByRole('region', { name: /^The runs number by number/ }).waitFor(LATE);
  await look('Compare');
  await goTo(page, 'Still tests');
  await page.locator('.test-rows').waitFor(LATE);
  await look('Still tests');
  await goTo(page, 'At the still');
  await page.getByRole('button', { name: /^Start now/ }).waitFor(LATE);
  await look('At the still, before the run');
  await page.getByRole('button', { name: /^Start now/ }).click();
  await page.getByRole('button', { name: 'Outlet', exact: true }).click();
  await page.getByRole('button', { name: '2', exact: true }).click();
  await look('At the still, the pad');
  await page.getByRole('button', { name: 'Save outlet' }).click();
  await page.locator('.forecast-lines').waitFor(LATE);
  await look('At the still, a run');
  await page.getByRole('button', { name: 'End the run' }).click();
  await page.getByRole('button', { name: 'End it' }).click();
  await page.getByRole('button', { name: 'New log' }).click();
  await page.getByText('Paste columns from a note').click();
  await page.getByRole('textbox', { name: /A line of headings/ }).fill(LOG);
  await page.getByRole('button', { name: 'Take these lines' }).click();
  await page.getByRole('button', { name: 'Fit', exact: true }).click();
  await page.getByRole('region', { name: /^Fitted factors/ }).waitFor(LATE);
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByRole('button', { name: /^Put on the bench/ }).waitFor();
  await unfold(page.getByRole('main'));
  await look('Run book');
  await goTo(page, 'Lessons');
  await page.locator('.lesson-cards').waitFor(LATE);
  await look('Lessons');
  await page.getByRole('link', { name: 'What does a harder flame do?' }).click();
  const next = page.locator('.lesson-steps').getByRole('button').last();
  await look('a lesson, its still');
  await next.click();
  await page.getByRole('button', { name: 'Groups' }).click();
  await page.getByRole('button', { name: 'Add a group' }).click();
  await page.locator('.curve-pane').press('ArrowUp');
  await look('a lesson, a curve to draw');
  await next.click();
  await look('a lesson, a choice');
  await next.click();
  await page.locator('.big-numbers').waitFor(LATE);
  await look('a lesson, revealed');
  await page.evaluate(() => (location.hash = '#lessons/side-by-side/hose'));
  await page.locator('.pair-numbers dd').last().waitFor(LATE);
  await look('two stills side by side');
  await page.evaluate(() => (location.hash = '#lessons/write'));
  await page.getByRole('button', { name: 'Open the lesson' }).click(LATE);
  await page.getByText('Title is missing').waitFor();
  await look('a lesson of one’s own, not whole yet');
  await goTo(page, 'Reference');
  const search = page.getByRole('searchbox', { name: 'Look up' });
  await search.waitFor(LATE);
  await look('Reference, its topics');
  await search.fill('surface tension of water');
  await page.getByText('1 found, best first.').waitFor(LATE);
  await look('Reference, what was found');
  await search.press('Enter');
  await page.locator('.reference-trace').waitFor(LATE);
  await look('Reference, an entry');
}

const unfold = (inside: Locator): Promise<void> =>
  inside
    .locator('details')
    .evaluateAll((all) => all.forEach((details) => ((details as HTMLDetailsElement).open = true)));

async function closeDialog(dialog: Locator): Promise<void> {
  await dialog.getByRole('button', { name: 'Close', exact: true }).click();
  await dialog.waitFor({ state: 'hidden' });
}

/** Each begins on the bench of a first visit. */
export const WALKS = {
  'the bench': walkBench,
  'the settings': walkSettings,
  'the dialogs': walkDialogs,
  'the answers': walkAnswers,
} as const;
