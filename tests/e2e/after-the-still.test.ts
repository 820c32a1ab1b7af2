/** From the plant to the printed label and the diluted recipe, at a desk and on a phone, in both unit systems. */
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { botanicals } from '../../sim/index.ts';
import { lookAlikes } from '../../sim/library/look-alikes.ts';
import { choose, downloaded, enter, fullRun, goTo, onBench, press } from './bench-page.ts';
import { sentenceCase } from '../../src/pages/plants/plant-rows.ts';
import { openPage } from './open-page.ts';

const LATE = { timeout: 60_000 };

/** What of a place a printer gets when labels are printed: `printLabels` marks the page as it prints. */
async function readLabelsOnPaper(page: Page): Promise<readonly string[]> {
  await page.evaluate(() => (document.documentElement.dataset['printing'] = 'labels'));
  await page.emulateMedia({ media: 'print' });
  const seen = await page.locator('.answer').innerText();
  const others = await page.locator('h2, h3').filter({ visible: true }).count();
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => delete document.documentElement.dataset['printing']);
  expect(others).toBe(0);
  return seen.split('\n').filter((line) => line.trim() !== '');
}

const DESK = { viewport: { width: 1280, height: 720 } };
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** Ends of an element's height within the window, and whether it is all within it across. */
async function placeOf(page: Page, seen: Locator) {
  const box = await seen.boundingBox();
  const width = page.viewportSize()?.width ?? 0;
  const [x, y, wide, high] = [box?.x ?? -1, box?.y ?? -1, box?.width ?? Infinity, box?.height ?? Infinity];
  return { top: y, bottom: y + high, isWhole: x >= 0 && x + wide <= width };
}

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Opens the library of plants from the settings of the bench. */
async function plantPicker(page: Page): Promise<Locator> {
  await page.getByRole('button', { name: /^Pot/ }).first().press('Enter');
  const settings = page.getByRole('complementary', { name: 'Settings' });
  await settings.getByRole('tab', { name: 'Charge' }).click();
  await settings.getByRole('button', { name: 'Choose a plant' }).click();
  return page.getByRole('dialog', { name: 'Choose a plant' });
}

const withDeadly = botanicals.filter((plant) => lookAlikes[plant.id]?.[0]?.severity === 'deadly');

test(
  'a deadly look-alike cannot be missed: on the plant’s page, in the table, in the picker of the bench',
  { timeout: 120_000 },
  async () => {
    const { page } = await openPage('#plants', DESK);
    await page.locator('.plants-table tbody tr').first().waitFor(LATE);
    expect(await page.locator('.plants-table tbody tr').count()).toBe(botanicals.length);
    for (const { viewport } of [DESK, PHONE]) {
      await page.setViewportSize(viewport);
      await page.evaluate(() => (location.hash = '#plants'));
      for (const { name } of withDeadly) {
        const row = page.locator('.plants-table tbody tr').filter({ hasText: sentenceCase(name.value) });
        const mark = row.locator('.is-bad');
        await mark.waitFor();
        expect(Number(await mark.textContent())).toBeGreaterThan(0);
        expect((await placeOf(page, mark)).isWhole).toBe(true);
      }
      for (const { id } of withDeadly) {
        await page.evaluate((to) => (location.hash = `#plants/${to}`), id);
        const deadly = page.locator('.plant-page:has(h2) .look-alike').first();
        await expect.poll(() => deadly.textContent()).toContain(lookAlikes[id]?.[0]?.plant);
        expect(await deadly.textContent()).toMatch(/^Deadly/u);
        const place = await placeOf(page, deadly);
        expect(place.bottom).toBeLessThanOrEqual(viewport.height);
        expect(place.isWhole).toBe(true);
      }
      await page.evaluate(() => (location.hash = '#bench'));
      const picker = await plantPicker(page);
      for (const { id, name } of withDeadly) {
        const row = picker
          .locator('.picker-row')
          .filter({ has: page.getByRole('button', { name: sentenceCase(name.value), exact: true }) });
        const warning = row.locator('p.picker-warning');
        for (const { plant } of (lookAlikes[id] ?? []).filter(({ severity }) => severity === 'deadly'))
          expect(await warning.textContent()).toContain(plant);
        expect((await placeOf(page, warning)).isWhole).toBe(true);
      }
      await picker.getByRole('button', { name: 'Sweet orange peel (distilled)', exact: true }).click();
      await expect.poll(() => picker.count()).toBe(0);
      expect(await page.locator('.settings .picker-warning').count()).toBe(0);
      await page.getByRole('button', { name: 'Choose a plant' }).click();
      await picker.getByRole('button', { name: 'Rosemary', exact: true }).click();
      await page.locator('.settings').getByText('Deadly look-alike: yew').waitFor();
      await page.getByRole('button', { name: 'Close' }).first().click();
    }
  },
);

test('a plant gathered wild goes into the still only under the name of a person', { timeout: 120_000 }, async () => {
  const { page } = await openPage('#plants', DESK);
  await page.locator('.plants-table tbody tr').first().waitFor(LATE);
  await page.getByRole('searchbox', { name: 'Search' }).fill('hogweed');
  await page.getByText('is not in this library').waitFor();
  await page.getByRole('heading', { name: 'Never distil these' }).waitFor();
  await page.getByRole('searchbox', { name: 'Search' }).fill('salvia off');
  await page.getByRole('switch', { name: 'Gathered wild' }).check();
  await page.getByText('mistaken for deadly ones').waitFor();
  await page.getByRole('link', { name: 'Common (Dalmatian) sage' }).click();
  await page.getByRole('button', { name: 'Work it out for the still on the bench' }).click();
  await page.getByText(/is collected by \d.+ In 8 of 10 likely runs it is between \d/u).waitFor(LATE);
  const put = page.locator('.plant-page').getByRole('button', { name: /^Put in the still/ });
  expect(await put.getAttribute('aria-disabled')).toBe('true');
  await put.click({ force: true });
  expect(new URL(page.url()).hash).toBe('#plants/sage');
  await page.evaluate(() => (location.hash = '#bench'));
  const picker = await plantPicker(page);
  await picker.getByRole('button', { name: 'Common (Dalmatian) sage', exact: true }).click();
  await picker.getByRole('alert').getByText('write who identified it').waitFor();
  await page.keyboard.press('Escape');

  await page.evaluate(() => (location.hash = '#plants/sage'));
  await page.getByRole('textbox', { name: /^Who identified this plant/ }).fill('Mara Quill');
  // Who knows sage need not know rosemary.
  await page.evaluate(() => (location.hash = '#plants/rosemary'));
  await page.getByRole('heading', { name: 'Rosemary' }).waitFor();
  expect(await put.getAttribute('aria-disabled')).toBe('true');
  await page.evaluate(() => (location.hash = '#plants/sage'));
  await page.getByRole('heading', { name: 'Common (Dalmatian) sage' }).waitFor();
  await put.click();
  await onBench(page).lead.waitFor();
  await fullRun(page);

  await goTo(page, 'Bottling');
  const label = page.locator('.label').first();
  await expect.poll(() => label.innerText(), LATE).toContain('Salvia officinalis');
  expect(await label.innerText()).toContain('gathered wild, identified by Mara Quill');
  await page.getByRole('combobox', { name: 'Size of a label' }).selectOption('large');
  await expect.poll(() => label.getAttribute('data-size')).toBe('large');

  await goTo(page, 'Blend');
  await page.locator('.fade-area').first().waitFor(LATE);
  // The run’s own oil is the first; sage has a limit that is not shown.
  await page.getByText('a limit stricter than the usual one exists').first().waitFor();
  expect(await page.locator('.odour-picture').innerText()).toMatch(/Top notes: .+ Middle notes: .+ Base notes: /u);
  const before = await page.locator('.answer-lead').first().textContent();
  await page.getByRole('slider', { name: 'Parts of Clove bud' }).fill('90');
  await expect.poll(() => page.locator('.answer-lead').first().textContent()).not.toBe(before);
  await page.getByRole('button', { name: 'Save as a recipe' }).click();
  await page.getByRole('button', { name: 'Compare with Evening blend' }).click();
  await page.locator('.fade-left.is-other').waitFor({ state: 'attached' });
});

test(
  'an own plant is kept on a phone, and goes with its finder through picker, label, link and run book',
  { timeout: 180_000 },
  async () => {
    const { page } = await openPage('#plants', PHONE);
    const card = page.locator('.plants-table tbody tr').first();
    await card.waitFor(LATE);
    for (const seen of [card.locator('.plant-link'), card.getByRole('button', { name: /^Put in the still/ })])
      expect((await placeOf(page, seen)).isWhole).toBe(true);

    await page.getByRole('button', { name: 'Add a plant of your own' }).click();
    const form = page.getByRole('form', { name: 'A plant of your own' });
    await form.getByRole('textbox', { name: 'Name', exact: true }).fill('Mint pennyroyal');
    const keep = form.getByRole('button', { name: 'Keep this plant' });
    expect(await keep.getAttribute('aria-disabled')).toBe('true');
    await form.getByRole('switch', { name: /^I know this plant for certain/ }).check();
    await keep.click();
    await form.getByRole('alert').getByText('must never be distilled').waitFor();
    await form.getByRole('textbox', { name: 'Name', exact: true }).fill('Clary sage');
    await form.getByRole('button', { name: 'Add a look-alike' }).click();
    await form.getByRole('textbox', { name: 'Plant', exact: true }).fill('foxglove');
    await form.getByRole('switch', { name: 'Gathered wild' }).check();
    await form.getByText('pennyroyal (Mentha pulegium)').waitFor();
    await keep.click();
    await form.getByRole('alert').getByText('write the name of the person who identified it').waitFor();
    await form.getByRole('textbox', { name: 'Who identified it' }).fill('Mara Quill');
    await keep.click();
    await page.getByRole('heading', { name: 'Clary sage' }).waitFor();
    await expect.poll(() => page.locator('.look-alike').first().textContent()).toMatch(/^Deadly foxglove/u);
    await page.getByText('Gathered wild, identified by Mara Quill.').waitFor();
    await page.getByRole('link', { name: 'All plants' }).click();
    const { name, text } = await downloaded(page, () =>
      page.getByRole('button', { name: 'Save your plants as a file' }).click(),
    );
    await page.getByRole('link', { name: 'Clary sage' }).click();
    await page.getByRole('button', { name: 'Delete this plant' }).click();
    await page.getByText('“Clary sage” is deleted').waitFor();
    expect(await page.getByRole('link', { name: 'Clary sage' }).count()).toBe(0);
    await page
      .getByLabel('File of plants')
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
    await page.getByRole('link', { name: 'Clary sage' }).waitFor();
    await page.getByRole('combobox', { name: 'Plant' }).selectOption('Clary sage');
    await expect.poll(() => page.locator('.how-much .answer-lead').textContent()).toMatch(/of oil take/u);

    await page.evaluate(() => (location.hash = '#bench'));
    const picker = await plantPicker(page);
    const row = picker
      .locator('.picker-row')
      .filter({ has: page.getByRole('button', { name: 'Clary sage', exact: true }) });
    await row.getByText('Deadly look-alikes: foxglove').waitFor();
    await row.getByRole('button', { name: 'Clary sage', exact: true }).click();
    await expect.poll(() => picker.count()).toBe(0);
    await fullRun(page);
    await press(page, 'Files', /^Share/);
    const link = page.getByRole('textbox', { name: 'Link to this still' });
    await expect.poll(() => link.inputValue()).toContain('#still=');
    const { page: other } = await openPage(new URL(await link.inputValue()).hash, DESK);
    await page.keyboard.press('Escape');

    await expect.poll(() => other.locator('h1').textContent(), LATE).toContain('Clary sage');
    await fullRun(other);
    for (const each of [page, other]) {
      await goTo(each, 'Bottling');
      await expect
        .poll(() => each.locator('.label').first().innerText(), LATE)
        .toMatch(/clary sage[^]+gathered wild, identified by Mara Quill/u);
    }
    await goTo(other, 'Run book');
    await other.getByRole('button', { name: 'New log' }).click();
    await expect
      .poll(() => other.getByRole('textbox', { name: 'Where it grew' }).inputValue())
      .toBe('gathered wild, identified by Mara Quill');
    expect(await other.getByRole('textbox', { name: 'Plant', exact: true }).inputValue()).toBe('Clary sage');

    await page.evaluate(() => (location.hash = '#blend'));
    await page.getByText(/Clary sage: we know no limits/u).waitFor(LATE);
    expect(await sideways(page)).toBeLessThanOrEqual(0);
  },
);

const WALKS = [
  ['at a desk, metric', DESK, 'metric', /°C/u, /°F/u],
  ['at a desk, US', DESK, 'us', /°F/u, /°C/u],
  ['on a phone, metric', PHONE, 'metric', /°C/u, /°F/u],
  ['on a phone, US', PHONE, 'us', /°F/u, /°C/u],
] as const;

test.each(WALKS)(
  'a run from the still to a printed label and a diluted recipe, %s',
  { timeout: 120_000 },
  async (_, options, units, own, foreign) => {
    const { page } = await openPage('', options);
    await onBench(page).lead.waitFor();
    if (units === 'us') await choose(page, 'Units', units);
    await fullRun(page);

    await goTo(page, 'Bottling');
    await page.locator('.label').first().waitFor(LATE);
    await page.getByRole('textbox', { name: 'Batch' }).fill('7');
    const paper = (await readLabelsOnPaper(page)).join(' ');
    expect(paper).toMatch(/Essential oil of .*lavender.+mL, batch 7.+Do not swallow/u);
    await page.getByRole('button', { name: 'how the peroxide is worked out', exact: true }).click();
    await page.getByRole('dialog', { name: 'The working' }).locator('.katex').first().waitFor(LATE);
    await page.keyboard.press('Escape');
    const told = await page.locator('.bottling-view').innerText();
    expect(told).not.toMatch(foreign);
    expect(await sideways(page)).toBeLessThanOrEqual(0);

    await goTo(page, 'Blend');
    await page.locator('.fade-area').first().waitFor(LATE);
    await page.getByRole('button', { name: 'Remove Clove bud' }).click();
    await page.getByRole('button', { name: 'Remove Sweet orange peel (distilled)' }).click();
    const lead = page.locator('.dilution .answer-lead');
    await expect.poll(() => lead.textContent()).toMatch(/Within the limits that we know for use on the body/u);
    const drops = page.locator('.dilution tbody tr').first().locator('td').nth(1);
    await expect.poll(() => drops.textContent()).toMatch(/^16/u);
    await enter(page.getByRole('textbox', { name: 'Oils in it' }), '4 %');
    await expect.poll(() => lead.textContent()).toMatch(/Too strong on the body/u);
    await expect.poll(() => drops.textContent()).toMatch(/^32/u);
    await page.getByRole('combobox', { name: 'Used' }).selectOption('in a diffuser');
    await page.getByText('At most 1–4 drops').waitFor();
    await page.getByRole('button', { name: 'Save as a recipe' }).click();
    await page.locator('.kept-recipe').waitFor();
    expect((await readLabelsOnPaper(page)).join(' ')).toContain('Not under 12 without a professional');
    const blend = await page.locator('.blend-view').innerText();
    expect(blend).not.toMatch(foreign);
    expect(`${told} ${blend}`).toMatch(own);
    expect(await sideways(page)).toBeLessThanOrEqual(0);
  },
);
