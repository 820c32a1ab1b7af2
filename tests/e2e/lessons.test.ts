import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { englishReader, findLesson, LESSON_IDS, lessonMessages } from '../../sim/index.ts';
import { axeFaults, downloaded } from './bench-page.ts';
import { SEARCH } from './answers-page.ts';
import { openPage } from './open-page.ts';

const READER = englishReader('metric');
const next = (page: Page): Locator => page.locator('.lesson-steps .is-first');

/** Goes to a control as one without a mouse does. */
async function tabTo(page: Page, control: Locator): Promise<void> {
  for (let step = 0; step < 24; step++) {
    if (await control.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`the keyboard does not reach ${control.toString()}`);
}

const press = async (page: Page, ...keys: readonly string[]): Promise<void> => {
  for (const key of keys) await page.keyboard.press(key);
};

/** All that is in the page, for those who see and those who listen. */
const wholePage = (page: Page): Promise<string> => page.locator('main').evaluate((main) => main.outerHTML);

/** Size of the smallest text that is seen inside something, in 1280ths of the screen. */
const smallest = (page: Page, inside: string): Promise<number> =>
  page.locator(inside).evaluate((root) => {
    const unit = Math.min(innerWidth / 1280, innerHeight / 720);
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    let least = Infinity;
    while (walker.nextNode()) {
      const holder = walker.currentNode.parentElement;
      if (!holder || (walker.currentNode.textContent ?? '').trim() === '') continue;
      if (!holder.checkVisibility({ visibilityProperty: true }) || holder.closest('.visually-hidden')) continue;
      least = Math.min(least, Number.parseFloat(getComputedStyle(holder).fontSize));
    }
    return Math.round((least / unit) * 10) / 10;
  });

const headingOf = (page: Page): Locator => page.locator('.lesson-title');

/** What a step shows to a room: nothing small; and nothing that may not be there yet is kept back for later. */
async function lookAt(page: Page, step: string, seen: string[]): Promise<void> {
  // A busy machine may not have laid it out yet.
  await expect.poll(() => smallest(page, '.lesson'), { message: step }).toBeGreaterThanOrEqual(28);
  seen.push(await wholePage(page));
}

async function commitByKeys(page: Page, kind: 'choice' | 'number' | 'curve'): Promise<void> {
  if (kind === 'choice') {
    await tabTo(page, page.locator('.choice-option input').first());
    await press(page, 'Space');
    await page.locator('.choice-option.is-on').waitFor();
    return;
  }
  const control = page.locator(kind === 'curve' ? '.curve-pane' : '.number-slider');
  await tabTo(page, control);
  await press(page, 'ArrowUp', 'ArrowRight', 'ArrowRight', 'End', 'ArrowUp');
  expect(await control.getAttribute('aria-valuetext')).not.toMatch(/no point|not set/);
}

async function commitByTouch(page: Page, kind: 'choice' | 'number' | 'curve'): Promise<void> {
  if (kind === 'choice') {
    await page.locator('.choice-option label').last().tap();
    await page.locator('.choice-option.is-on').waitFor();
    return;
  }
  const control = page.locator(kind === 'curve' ? '.curve-pane' : '.number-slider');
  await control.tap();
  await expect.poll(() => control.getAttribute('aria-valuetext')).not.toMatch(/no point|not set/);
}

describe('the lessons', () => {
  test(
    'are walked before a room by keyboard and by touch, large, and nothing of an answer is in the page beforehand',
    { timeout: 240_000 },
    async () => {
      const { page } = await openPage('#lessons', {
        viewport: { width: 1280, height: 720 },
        hasTouch: true,
        bypassCSP: true,
      });
      await page.locator('.lesson-cards').waitFor(SEARCH);
      expect(await page.locator('.lesson-cards li').count()).toBe(LESSON_IDS.length);
      expect(await axeFaults(page)).toEqual([]);
      const heading = headingOf(page);
      for (const id of LESSON_IDS) {
        const words = lessonMessages(id, READER);
        const seen: string[] = [];
        await page.evaluate((to) => (location.hash = `#lessons/${to}`), id);
        await expect.poll(() => heading.textContent()).toBe(words.title);
        if (id === LESSON_IDS[0]) await page.keyboard.press('j');
        await page.getByRole('button', { name: 'Leave' }).waitFor();
        await heading.focus();
        await lookAt(page, id, seen);
        for (const question of findLesson(id).questions) {
          await tabTo(page, next(page));
          await press(page, 'Enter');
          await expect.poll(() => heading.textContent()).toBe(words.questions[question.id]?.ask);
          await expect.poll(() => heading.evaluate((element) => element === document.activeElement)).toBe(true);
          await commitByKeys(page, question.kind);
          await lookAt(page, `${id}, ${question.id}`, seen);
        }
        await tabTo(page, next(page));
        expect(await next(page).textContent()).toBe('Reveal');
        await press(page, 'Enter');
        await page.locator('.big-numbers').waitFor(SEARCH);
        expect(await page.locator('.outcome-kind').first().textContent()).toMatch(/off|chose/);
        const answers = await page.locator('.big-numbers dd').allTextContents();
        expect(answers.length).toBeGreaterThan(0);
        for (const before of seen)
          for (const value of answers) expect(before, `${id} gives away ${value}`).not.toContain(value);
        await lookAt(page, `${id}, revealed`, []);
        await press(page, 'PageDown');
        await page.locator('.lesson-picture svg[aria-label]').waitFor();
        await lookAt(page, `${id}, why`, []);
        await press(page, 'PageDown');
        await page.locator('.try-it').waitFor();
        await lookAt(page, `${id}, to try`, []);

        await next(page).tap();
        await page.locator('.lesson.is-set-up').waitFor();
        for (const question of findLesson(id).questions) {
          await next(page).tap();
          await expect.poll(() => heading.textContent()).toBe(words.questions[question.id]?.ask);
          await commitByTouch(page, question.kind);
        }
        for (const step of ['is-reveal', 'is-why', 'is-try']) {
          await next(page).tap();
          await page.locator(`.lesson.${step}`).waitFor();
          if (step === 'is-reveal') await page.locator('.big-numbers').waitFor(SEARCH);
        }
      }
      await page.getByRole('button', { name: 'Leave' }).tap();
      await page.getByRole('banner').waitFor();
      expect(await axeFaults(page)).toEqual([]);
      const control = page.locator('.try-it .number-slider');
      const numbers = page.locator('.try-it .big-numbers');
      const first = await numbers.textContent();
      await control.press('End');
      await expect.poll(() => numbers.textContent(), SEARCH).not.toBe(first);
    },
  );

  test('take a curve drawn with a finger, and lay the run over it', async () => {
    const { page } = await openPage('#lessons/tap-off', {
      viewport: { width: 390, height: 844 },
      hasTouch: true,
      isMobile: true,
    });
    // The browser's own menu prints what stands as soon as it has said that it prints.
    await expect
      .poll(() =>
        page.evaluate(() => {
          dispatchEvent(new Event('beforeprint'));
          const sheets = document.querySelectorAll('.sheet-page').length;
          dispatchEvent(new Event('afterprint'));
          return sheets;
        }),
      )
      .toBe(1);
    await next(page).tap(SEARCH);
    const pane = page.locator('.curve-pane');
    await pane.scrollIntoViewIfNeeded();
    const box = await pane.boundingBox();
    if (!box) throw new Error('there are no axes to draw on');
    await page.mouse.move(box.x + 2, box.y + box.height * 0.8);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width - 2, box.y + box.height * 0.2, { steps: 6 });
    await page.mouse.up();
    const drawn = page.locator('.plain-curve.is-group-0');
    expect(((await drawn.getAttribute('d')) ?? '').split('L').length).toBe(25);
    await next(page).tap();
    await page.locator('.plain-curve.is-run').waitFor(SEARCH);
    await expect.poll(() => page.locator('.outcome-kind').textContent()).toMatch(/was .* off on average/);
    await next(page).tap();
    await next(page).tap();
    await next(page).tap();
    await page.locator('.lesson.is-set-up').waitFor();
    await next(page).tap();
    expect(await drawn.count()).toBe(0);
  });

  test('go to a room by one key: nothing small, nothing of what is to come, and the verdict only when revealed', async () => {
    const { page } = await openPage('', { viewport: { width: 1280, height: 720 }, bypassCSP: true });
    const lead = page.locator('.headline-lead');
    await lead.waitFor();
    const verdict = (await lead.textContent()) ?? '';
    await page.keyboard.press('j');
    const room = page.locator('.room');
    await room.locator('.plain-curve.is-run').waitFor(SEARCH);
    expect(await smallest(page, '.room')).toBeGreaterThanOrEqual(28);
    const lastOf = () =>
      room
        .locator('.plain-curve.is-run')
        .evaluate((path) => Number(/(?:M|L)([\d.]+),[\d.]+(?:h0)?$/u.exec(path.getAttribute('d') ?? '')?.[1] ?? 0));
    const mark = () =>
      room.locator('.plain-mark').evaluate((path) => Number(/^M([\d.]+)/u.exec(path.getAttribute('d') ?? '')?.[1]));
    await page.keyboard.press('Shift+ArrowRight');
    expect(await lastOf()).toBeLessThanOrEqual((await mark()) + 0.1);
    expect(await room.textContent()).not.toContain(verdict);
    const heat = room.getByRole('slider', { name: /^Heat/ });
    const before = await heat.inputValue();
    await page.keyboard.press('Shift+h');
    await expect.poll(() => heat.inputValue()).not.toBe(before);
    await page.keyboard.press('Control+z');
    await expect.poll(() => heat.inputValue()).toBe(before);
    await page.keyboard.press('r');
    await expect.poll(() => room.locator('.room-said').textContent()).toBe(verdict);
    expect(await room.locator('.plain-mark').count()).toBe(0);
    await page.keyboard.press('j');
    await room.waitFor({ state: 'detached' });

    await page.evaluate(() => (location.hash = '#lessons/side-by-side/hose'));
    await page.locator('.pair-numbers').nth(1).waitFor(SEARCH);
    expect(await axeFaults(page)).toEqual([]);
    await page.keyboard.press('j');
    await page.getByRole('button', { name: 'Leave' }).waitFor();
    expect(await smallest(page, '.pair')).toBeGreaterThanOrEqual(28);
    const distillate = (still: number) => page.locator('.pair-numbers').nth(still).locator('dd').nth(2);
    const tap = (letter: string) => page.getByRole('slider', { name: `Tap of ${letter}` });
    const taps = await Promise.all(['A', 'B'].map((letter) => tap(letter).inputValue()));
    // One of the two is driven, from the time mark on; both follow one time line.
    await page.getByRole('slider', { name: 'Time mark' }).fill('2400');
    await page.keyboard.press('b');
    await press(page, 'Shift+T', 'Shift+T');
    await expect.poll(() => tap('B').inputValue()).not.toBe(taps[1]);
    expect(await tap('A').inputValue()).toBe(taps[0]);
    await page.keyboard.press('End');
    await expect
      .poll(async () => Number.parseFloat((await distillate(1).textContent()) ?? ''), SEARCH)
      .toBeGreaterThan(35);
    expect(Number.parseFloat((await distillate(0).textContent()) ?? '')).toBeLessThan(30);
    await page.getByRole('slider', { name: 'Heat of A' }).press('Home');
    await page.getByRole('button', { name: 'Start again' }).press('Enter');
    await expect.poll(() => tap('B').inputValue()).toBe(taps[1]);
    await page.getByRole('button', { name: 'Leave' }).click();
    await page.getByRole('banner').waitFor();
  });

  test('may be written by a teacher, saved, opened by others and taught like the rest', async () => {
    const { page } = await openPage('#lessons/write', { viewport: { width: 1280, height: 720 }, bypassCSP: true });
    const open = page.getByRole('button', { name: 'Open the lesson' });
    await open.click(SEARCH);
    const title = page.getByRole('textbox', { name: 'Title' });
    await page.getByText('Title is missing; a text of at most 80 letters is needed.').waitFor();
    await expect.poll(() => title.evaluate((element) => element === document.activeElement)).toBe(true);
    await title.fill('When does it drip?');
    await page.getByRole('textbox', { name: /^The still, and/ }).fill('Lavender in our <b>shed</b>.');
    await page.getByRole('textbox', { name: 'Question' }).fill('When does the first drop come?');
    await page.getByRole('radio', { name: 'setting a number' }).check();
    await page.getByRole('textbox', { name: 'Why it is so' }).fill('All the water has to boil first.');
    await page.getByText(/only plain text is allowed/).waitFor();
    await page.getByRole('textbox', { name: /^The still, and/ }).fill('Lavender in our shed.');
    expect(await axeFaults(page)).toEqual([]);
    await open.click();
    await expect.poll(() => headingOf(page).textContent(), SEARCH).toBe('When does it drip?');
    const saved = await downloaded(page, () => page.getByRole('button', { name: 'Save as a file' }).click());
    await page.getByRole('button', { name: 'Share the lesson' }).click();
    const link = await page.getByRole('textbox', { name: 'Link to this lesson' }).inputValue(SEARCH);
    await page.getByRole('img', { name: 'Code that opens this lesson' }).waitFor();

    await page.getByRole('link', { name: 'All lessons' }).click();
    const chosen = page.locator('.lessons-list input[type="file"]');
    const lessonFile = (text: string) => ({
      name: 'lesson.json',
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
    await chosen.setInputFiles(lessonFile('{"kind":"other"}'));
    await page.getByText(/^This is not a lesson/).waitFor(SEARCH);
    await chosen.setInputFiles(lessonFile(saved.text));
    await expect.poll(() => headingOf(page).textContent(), SEARCH).toBe('When does it drip?');
    expect(page.url()).toBe(link);
    await next(page).click();
    await page.locator('.number-slider').press('ArrowRight');
    await next(page).click();
    await page.locator('.big-numbers').waitFor(SEARCH);
    expect(await page.locator('.outcome-kind').textContent()).toMatch(/off/);
    await next(page).click();
    await page.getByText('All the water has to boil first.').waitFor();
    expect(await axeFaults(page)).toEqual([]);
  });
});
