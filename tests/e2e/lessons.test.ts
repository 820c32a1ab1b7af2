import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { answerLesson, englishReader, findLesson, LESSON_IDS, lessonMessages, toldLesson } from '../../sim/index.ts';
import { axeFaults } from './bench-page.ts';
import { SEARCH } from './answers-page.ts';
import { openPage } from './open-page.ts';

const READER = englishReader('metric');
const next = (page: Page): Locator => page.locator('.lesson-steps .is-first');

/** Goes to a control as one without a mouse does. */
async function tabTo(page: Page, control: Locator): Promise<void> {
  for (let step = 0; step < 16; step++) {
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

describe('the lessons', () => {
  test(
    'are walked by keyboard alone, and nothing of an answer is in the page before it is revealed',
    { timeout: 240_000 },
    async () => {
      const { page } = await openPage('#lessons', { viewport: { width: 1280, height: 720 }, bypassCSP: true });
      await page.locator('.lesson-cards').waitFor(SEARCH);
      expect(await page.locator('.lesson-cards li').count()).toBe(LESSON_IDS.length);
      expect(await axeFaults(page)).toEqual([]);
      for (const id of LESSON_IDS) {
        const words = lessonMessages(id, READER);
        const answers = toldLesson(answerLesson(id), READER).big.map(({ value }) => value);
        await page.evaluate((to) => (location.hash = `#lessons/${to}`), id);
        const heading = page.locator('.lesson-title');
        await expect.poll(() => heading.textContent()).toBe(words.title);
        await heading.focus();
        for (const question of findLesson(id).questions) {
          await tabTo(page, next(page));
          await press(page, 'Enter');
          await expect.poll(() => heading.textContent()).toBe(words.questions[question.id]?.ask);
          await expect.poll(() => heading.evaluate((element) => element === document.activeElement)).toBe(true);
          if (question.kind === 'choice') {
            await tabTo(page, page.locator('.choice-option input').first());
            await press(page, 'Space');
            await page.locator('.choice-option.is-on').waitFor();
          } else {
            const control = page.locator(question.kind === 'curve' ? '.curve-pane' : '.number-slider');
            await tabTo(page, control);
            await press(page, 'ArrowUp', 'ArrowRight', 'ArrowRight', 'End', 'ArrowUp');
            expect(await control.getAttribute('aria-valuetext')).not.toMatch(/no point|not set/);
          }
          const before = await wholePage(page);
          for (const value of answers) expect(before, `${id} gives away ${value}`).not.toContain(value);
        }
        await tabTo(page, next(page));
        expect(await next(page).textContent()).toBe('Reveal');
        await press(page, 'Enter');
        await page.locator('.big-numbers').waitFor(SEARCH);
        expect(await page.locator('.big-numbers dd').allTextContents()).toEqual(answers);
        expect(await page.locator('.outcome-kind').first().textContent()).toMatch(/off|chose/);
        await press(page, 'PageDown');
        await page.locator('.lesson-picture svg[aria-label]').waitFor();
        await press(page, 'PageDown');
        await page.locator('.try-it').waitFor();
      }
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
    const { page } = await openPage('', { viewport: { width: 1280, height: 720 } });
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

    await page.evaluate(() => (location.hash = '#lessons/heat-of-steam'));
    await page.locator('.lesson').waitFor(SEARCH);
    await page.keyboard.press('j');
    await page.getByRole('button', { name: 'Leave' }).waitFor();
    for (const kind of ['is-set-up', 'is-question', 'is-reveal', 'is-why', 'is-try']) {
      await page.locator(`.lesson.${kind}`).waitFor();
      if (kind === 'is-reveal') await page.locator('.big-numbers').waitFor(SEARCH);
      expect(await smallest(page, '.lesson'), kind).toBeGreaterThanOrEqual(28);
      await page.keyboard.press('PageDown');
    }
    await page.getByRole('button', { name: 'Leave' }).click();
    await page.getByRole('banner').waitFor();
  });
});
