import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openAnswer, SEARCH } from './answers-page.ts';
import { choose, downloaded, press } from './bench-page.ts';

/** Oil that came more slowly than the plan says, in minutes and millilitres. */
const SLOW = 'time (min), oil (mL)\n30, 2.6\n40, 8.2\n50, 13.4\n60, 17.6\n75, 22.8\n90, 26.1\n105, 28.2\n120, 29.6';

describe('my runs', () => {
  test('are typed with the keyboard alone; a bad cell is told on its line; nothing is lost on a reload', async () => {
    const { page } = await openAnswer('run-book');
    await page.getByRole('button', { name: 'New log' }).focus();
    await page.keyboard.press('Enter');
    const cell = (column: string, line: number) =>
      page.getByRole('textbox', { name: new RegExp(`^${column}.*, line ${line}$`) });
    await cell('Time', 1).focus();
    await page.keyboard.type('30');
    await page.keyboard.press('Tab');
    await page.keyboard.type('2.5');
    await page.keyboard.press('Enter');
    await page.keyboard.type('45');
    await page.keyboard.press('Tab');
    await page.keyboard.type('a lot');
    await page.keyboard.press('Enter');
    await page.keyboard.type('1:00');
    const told = page.locator('.log-problem');
    await expect.poll(() => told.textContent()).toContain('“a lot” is not a number');
    expect(await cell('Oil', 2).getAttribute('aria-invalid')).toBe('true');
    await page.getByRole('textbox', { name: 'Notes' }).fill('windy, lid leaked a little');
    await page.getByRole('textbox', { name: 'Name', exact: true }).fill('First of June');
    await page.reload();
    await expect
      .poll(() => page.getByRole('textbox', { name: 'Name', exact: true }).inputValue(), SEARCH)
      .toBe('First of June');
    expect([
      await cell('Time', 1).inputValue(),
      await cell('Oil', 2).inputValue(),
      await cell('Time', 3).inputValue(),
    ]).toEqual(['30', 'a lot', '1:00']);
    expect(await page.getByRole('textbox', { name: 'Notes' }).inputValue()).toBe('windy, lid leaked a little');
  });

  test('are pasted, fitted, kept as a still and taken along in a file that another browser opens', async () => {
    const { page } = await openAnswer('run-book');
    await page.getByRole('button', { name: 'New log' }).click();
    await page.getByText('Paste columns from a note').click();
    await page.getByRole('textbox', { name: /A line of headings/ }).fill(`${SLOW}\n130, spilt`);
    await page.getByText('commas between the columns').waitFor();
    const oil = page.getByRole('combobox', { name: 'Column 2 is' });
    await oil.selectOption('oil (g)');
    expect(await page.getByText(/Columns: time \(min\), oil \(g\)\./).count()).toBe(1);
    await oil.selectOption('oil (mL)');
    await page.getByRole('button', { name: 'Take these lines' }).click();
    await page.getByText('“spilt” is not a number').waitFor();
    expect(await page.getByRole('textbox', { name: /A line of headings/ }).inputValue()).toBe(
      'time (min), oil (mL)\n130, spilt',
    );
    expect(await page.getByRole('textbox', { name: /^Oil so far.*, line 8$/ }).inputValue()).toBe('29.6');

    await page.getByRole('button', { name: 'Fit', exact: true }).click();
    const factors = page.getByRole('region', { name: /^Fitted factors/ });
    await factors.waitFor(SEARCH);
    expect(await factors.locator('tbody tr').allTextContents()).toEqual([
      expect.stringMatching(/^Oil content0\.\d\d0\.\d\d to \d\.\d\d1\.00/),
      expect.stringMatching(/^Speed of release0\.\d\d/),
    ]);
    await page.getByRole('figure', { name: 'Measured less predicted' }).waitFor();
    await page.getByRole('textbox', { name: /Save the fitted still as/ }).fill('South bed, as it gives');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('Saved as “South bed, as it gives”.').waitFor();
    await page.getByRole('button', { name: 'Plan the next from this' }).click();
    await page.getByText(/are on the bench, with oil content ×/).waitFor(SEARCH);
    await page.locator('.next-plan .rules, .next-plan .answer-quiet').last().waitFor(SEARCH);

    const csv = await downloaded(page, () => page.getByRole('button', { name: 'Save CSV of this log' }).click());
    expect(csv.text.split('\n').slice(0, 2)).toEqual(['time (min),oil (mL)', '30,2.6']);
    const book = await downloaded(page, () => page.getByRole('button', { name: 'Save the run book' }).click());

    const other = await openAnswer('run-book');
    const [chooser] = await Promise.all([
      other.page.waitForEvent('filechooser'),
      other.page.getByRole('button', { name: 'Open a file' }).click(),
    ]);
    await chooser.setFiles({ name: book.name, mimeType: 'application/json', buffer: Buffer.from(book.text) });
    await other.page.getByText('Added 1 log and 1 fitted still from').waitFor();
    expect(await other.page.getByRole('textbox', { name: /^Oil so far.*, line 8$/ }).inputValue()).toBe('29.6');
    await other.page.getByRole('button', { name: 'Put on the bench South bed, as it gives' }).click();
    await expect.poll(() => other.page.locator('h1').textContent()).toBe('South bed, as it gives');
  });

  test('take over the units that are pasted, and keep the still they were begun with within reach', async () => {
    const { page } = await openAnswer('run-book');
    await choose(page, 'Units', 'us');
    await page.getByRole('button', { name: 'New log' }).click();
    expect(await page.getByRole('combobox', { name: 'Temperatures in' }).inputValue()).toBe('°F');
    await page.getByText('Paste columns from a note').click();
    await page
      .getByRole('textbox', { name: /A line of headings/ })
      .fill('time (min), oil (mL), outlet °C\n30, 2.6, 27');
    await page.getByRole('button', { name: 'Take these lines' }).click();
    expect(await page.getByRole('combobox', { name: 'Temperatures in' }).inputValue()).toBe('°C');
    expect(await page.getByRole('textbox', { name: 'Outlet in °C, line 1' }).inputValue()).toBe('27');

    const back = page.getByRole('button', { name: 'Put the still of this log on the bench' });
    expect(await back.count()).toBe(0);
    await press(page, 'Files', 'Examples');
    await page
      .getByRole('dialog', { name: 'Start from' })
      .getByRole('button', { name: /Rosemary in a large pot/ })
      .click();
    await back.click();
    await expect.poll(() => page.locator('h1').textContent()).toBe('Gentle lavender');
    await expect.poll(() => back.count()).toBe(0);
  });

  test('are refused where they can’t tell, and odd files leave the book as it was', async () => {
    const { page } = await openAnswer('run-book');
    await page.getByRole('button', { name: 'New log' }).click();
    await page.getByRole('textbox', { name: /^Time.*, line 1$/ }).fill('30');
    await page.getByRole('textbox', { name: /^Oil so far.*, line 1$/ }).fill('2');
    await page.getByRole('button', { name: 'Fit', exact: true }).click();
    await page.getByRole('alert').filter({ hasText: '1 reading is too few to find 2 factors' }).waitFor(SEARCH);
    for (const [text, told] of [
      ['{"a":', 'not JSON'],
      ['{"kind":"cake"}', 'no run book'],
      ['\u0000\u0001', 'no readings'],
    ] as const) {
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'Open a file' }).click(),
      ]);
      await chooser.setFiles({ name: 'odd', mimeType: 'text/plain', buffer: Buffer.from(text) });
      await page.getByText(told).waitFor();
      expect(await page.getByText('Your run book is as it was.').count()).toBe(1);
    }
    const pick = async (name: string, buffer: Buffer) => {
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'Open a file' }).click(),
      ]);
      await chooser.setFiles({ name, mimeType: 'text/csv', buffer });
    };
    const columns = '"30,5";"2,9";first drops came\n40;3,1;clear';
    await pick('june.csv', Buffer.from(columns, 'utf16le'));
    await page.getByText('“june” stands in the paste box.').waitFor();
    expect(await page.getByRole('region', { name: 'First lines' }).getByRole('cell').allTextContents()).toEqual([
      '30,5',
      '2,9',
      'first drops came',
      '40',
      '3,1',
      'clear',
    ]);
    await page.getByRole('button', { name: 'Take these lines' }).click();
    expect(await page.getByRole('textbox', { name: /^Time.*, line 1$/ }).inputValue()).toBe('30.5');
    // A logger's file: only what is seen of its table is drawn, and every line can be reached.
    const logger = Array.from({ length: 20_000 }, (_, second) => `${second};${(20 + second / 1000).toFixed(2)}`);
    await pick('logger.csv', Buffer.from(['time (s);outlet (°C)', ...logger].join('\n')));
    await page.getByText('“logger” stands in the paste box.').waitFor();
    await page.getByRole('button', { name: 'Take these lines' }).click();
    const outlet = page.getByRole('textbox', { name: /^Outlet/ });
    await expect.poll(() => outlet.first().inputValue()).toBe('20');
    expect(await outlet.count()).toBeLessThan(300);
    await page
      .getByRole('region', { name: 'Readings', exact: true })
      .evaluate((region) => (region.scrollTop = region.scrollHeight));
    await page.getByRole('textbox', { name: 'Outlet in °C, line 20000' }).waitFor();
    for (let left = 3; left > 0; left--) await page.getByRole('button', { name: 'Delete this log' }).click();
    await page.getByText('No run is logged yet.').waitFor();
    await page.getByRole('status').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.getByRole('textbox', { name: /^Oil so far.*, line 1$/ }).inputValue()).toBe('2');
  });

  test('keep photos, which are deleted and brought back, and go along in a file once', async () => {
    const { page } = await openAnswer('run-book');
    await page.getByRole('button', { name: 'New log' }).click();
    const pick = async (on: Page, button: string, name: string, mimeType: string, buffer: Buffer) => {
      const [chooser] = await Promise.all([
        on.waitForEvent('filechooser'),
        on.getByRole('button', { name: button }).click(),
      ]);
      await chooser.setFiles({ name, mimeType, buffer });
    };
    const told = page.getByRole('alert');
    await pick(page, 'Add a photo', 'notes.txt', 'text/plain', Buffer.from('no picture'));
    await told.filter({ hasText: 'cannot read that file as a picture' }).waitFor();
    await pick(page, 'Add a photo', 'large.jpg', 'image/jpeg', Buffer.alloc(50_000_001));
    await told.filter({ hasText: 'larger than 50 MB' }).waitFor(SEARCH);
    // A picture of the page, larger than what is kept.
    const picture = await page.screenshot();
    await pick(page, 'Add a photo', 'still.png', 'image/png', picture);
    const small = page.getByRole('button', { name: 'Photo', exact: true });
    await small.waitFor();
    expect(await told.count()).toBe(0);
    await page.getByRole('textbox', { name: 'What photo 1 shows' }).fill('The lid that leaked');
    await page.getByRole('button', { name: 'Photo, The lid that leaked' }).click();
    const whole = page.getByRole('dialog', { name: 'Photo, The lid that leaked' }).locator('img');
    await expect
      .poll(() => whole.evaluate((img: HTMLImageElement) => [img.naturalWidth, img.naturalHeight]))
      .toEqual([1280, 800]);
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
    await pick(page, 'Add a photo', 'again.png', 'image/png', picture);
    await told.filter({ hasText: 'in the log already' }).waitFor();

    const photos = page.locator('.run-photo');
    await page.getByRole('button', { name: 'Delete photo 1' }).click();
    await expect.poll(() => photos.count()).toBe(0);
    await page.locator('.run-photos').getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => photos.count()).toBe(1);
    await page.reload();
    await page.getByRole('button', { name: 'Photo, The lid that leaked' }).waitFor(SEARCH);

    const book = await downloaded(page, () => page.getByRole('button', { name: 'Save the run book' }).click());
    const file = Buffer.from(book.text);
    await pick(page, 'Open a file', book.name, 'application/json', file);
    await page.getByText('is in this run book already').waitFor();
    const other = await openAnswer('run-book');
    for (const said of ['Added 1 log', 'is in this run book already'])
      await pick(other.page, 'Open a file', book.name, 'application/json', file).then(() =>
        other.page.getByText(said).waitFor(),
      );
    const there = other.page.getByRole('button', { name: 'Photo, The lid that leaked' });
    await there.waitFor();
    expect(await there.locator('img').evaluate((img: HTMLImageElement) => img.naturalWidth)).toBe(1280);

    // A browser that has no room left.
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await pick(
      page,
      'Add a photo',
      'more.png',
      'image/png',
      await page.screenshot({ clip: { x: 0, y: 0, width: 90, height: 90 } }),
    );
    await told.filter({ hasText: 'storage of this browser is full: the photo is not kept' }).waitFor();
    expect(await photos.count()).toBe(1);
  });
});
