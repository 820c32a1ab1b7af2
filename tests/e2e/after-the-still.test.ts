/** From the plant to the printed label and the diluted recipe, at a desk and on a phone, in both unit systems. */
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { botanicals } from '../../sim/index.ts';
import { lookAlikes } from '../../sim/library/look-alikes.ts';
import { choose, downloaded, enter, fullRun, goTo, onBench } from './bench-page.ts';
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

test(
  'a plant is compared with its deadly look-alikes before it goes into the still',
  { timeout: 120_000 },
  async () => {
    const { page } = await openPage('#plants', { viewport: { width: 1280, height: 720 } });
    await page.locator('.plants-table tbody tr').first().waitFor(LATE);
    expect(await page.locator('.plants-table tbody tr').count()).toBe(botanicals.length);
    for (const { id } of botanicals.filter((plant) => lookAlikes[plant.id]?.[0]?.severity === 'deadly')) {
      await page.evaluate((to) => (location.hash = `#plants/${to}`), id);
      const deadly = page.locator('.plant-page:has(h2) .look-alike').first();
      await expect.poll(() => deadly.textContent()).toContain(lookAlikes[id]?.[0]?.plant);
      expect(await deadly.textContent()).toMatch(/^Deadly/u);
      const box = await deadly.boundingBox();
      expect((box?.y ?? Infinity) + (box?.height ?? Infinity)).toBeLessThanOrEqual(720);
    }

    await page.evaluate(() => (location.hash = '#plants'));
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
    await page.getByRole('textbox', { name: /^Who identified this plant/ }).fill('Mara Quill');
    await put.click();
    await onBench(page).lead.waitFor();
    await fullRun(page);

    await goTo(page, 'Bottling');
    const label = page.locator('.label').first();
    await label.waitFor(LATE);
    await expect.poll(() => label.innerText()).toContain('Salvia officinalis');
    expect(await label.innerText()).toContain('identified by Mara Quill');
    await page.getByRole('textbox', { name: 'Batch' }).fill('7');
    const paper = await readLabelsOnPaper(page);
    expect(paper.filter((line) => line.includes('Essential oil of common (dalmatian) sage')).length).toBeGreaterThan(0);
    expect(paper.join(' ')).toContain('batch 7');
    expect(paper.join(' ')).toContain('Do not swallow');
    await page.getByRole('button', { name: /^how the peroxide/ }).click();
    await page.getByRole('dialog', { name: 'The working' }).locator('.katex').first().waitFor(LATE);
    await page.keyboard.press('Escape');
    await page.getByRole('combobox', { name: 'Size of a label' }).selectOption('large');
    await expect.poll(() => label.getAttribute('data-size')).toBe('large');
    await choose(page, 'Units', 'us');
    await expect.poll(() => page.locator('.bottling-view').innerText()).toMatch(/°F/u);

    await goTo(page, 'Blend');
    await page.locator('.fade-area').first().waitFor(LATE);
    // The run’s own oil is the first; sage has a limit that is not shown.
    await page.getByText('a limit stricter than the usual one exists').first().waitFor();
    expect(await page.locator('.odour-picture').innerText()).toMatch(/Top notes: .+ Middle notes: .+ Base notes: /u);
    const before = await page.locator('.answer-lead').first().textContent();
    await page.getByRole('slider', { name: 'Parts of Clove bud' }).fill('90');
    await expect.poll(() => page.locator('.answer-lead').first().textContent()).not.toBe(before);
    await page.getByRole('button', { name: 'Save as a recipe' }).click();
    await page.locator('.kept-recipe').waitFor();
    await page.getByRole('button', { name: 'Compare with Evening blend' }).click();
    await page.locator('.fade-left.is-other').waitFor({ state: 'attached' });
  },
);

test('on a phone an own plant is kept, and an oil diluted by drops and labelled', { timeout: 180_000 }, async () => {
  const { page } = await openPage('#plants', { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  const card = page.locator('.plants-table tbody tr').first();
  await card.waitFor(LATE);
  for (const seen of [card.locator('.plant-link'), card.getByRole('button', { name: /^Put in the still/ })]) {
    const box = await seen.boundingBox();
    expect((box?.x ?? -1) >= 0 && (box?.x ?? 0) + (box?.width ?? Infinity) <= 390).toBe(true);
  }

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
  await keep.click();
  await page.getByRole('heading', { name: 'Clary sage' }).waitFor();
  await expect.poll(() => page.locator('.look-alike').first().textContent()).toMatch(/^Deadly foxglove/u);
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
  await page.getByRole('link', { name: 'Clary sage' }).click();
  await page
    .locator('.plant-page')
    .getByRole('button', { name: /^Put in the still/ })
    .click();
  await expect.poll(() => new URL(page.url()).hash).toBe('#bench');
  await fullRun(page);

  await page.evaluate(() => (location.hash = '#blend'));
  await page.locator('.fade-area').first().waitFor(LATE);
  await page.getByRole('button', { name: 'Remove Clove bud' }).click();
  await page.getByRole('button', { name: 'Remove Sweet orange peel (distilled)' }).click();
  const lead = page.locator('.dilution .answer-lead');
  await page.getByText(/Clary sage: we know no limits/u).waitFor();
  await page.getByRole('combobox', { name: 'Add' }).selectOption('True lavender');
  await page.getByRole('button', { name: 'Add this oil' }).click();
  await page.getByRole('button', { name: /^Remove Clary sage/ }).click();
  await expect.poll(() => lead.textContent()).toMatch(/Within the limits that we know for use on the body/u);
  const drops = page.locator('.dilution tbody tr').first().locator('td').nth(1);
  expect(await drops.textContent()).toBe('16');
  await enter(page.getByRole('textbox', { name: 'Oils in it' }), '4 %');
  await expect.poll(() => lead.textContent()).toMatch(/Too strong on the body/u);
  expect(await drops.textContent()).toBe('32');
  await page.getByRole('combobox', { name: 'Used' }).selectOption('in a diffuser');
  await page.getByText('At most 1–4 drops').waitFor();
  expect((await readLabelsOnPaper(page)).join(' ')).toContain('Not under 12 without a professional');
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBeLessThanOrEqual(0);
});
