/** Everything that can be touched is large enough for a finger, and nothing needs sideways scrolling to be read. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { fullRun, openBench } from './bench-page.ts';
import { WALKS } from './every-view.ts';
import { openPage } from './open-page.ts';

/** What is smaller than a finger, a line each. */
const tooSmall = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const LEAST = 44;
    const scope = document.querySelector('dialog[open]') ?? document;
    const things = scope.querySelectorAll<HTMLElement | SVGElement>(
      'a[href], button, input, select, textarea, summary, [role="button"], [role="slider"], [role="tab"], [role="switch"]',
    );
    /** A text link in a sentence is as high as its line: WCAG 2.5.8 leaves it out. */
    const isInSentence = (thing: Element): boolean =>
      thing.matches('a, button.word') &&
      getComputedStyle(thing).display.startsWith('inline') &&
      (thing.closest('p, li, dd, td')?.textContent ?? '').trim().length > (thing.textContent ?? '').trim().length + 3;
    /** The parts of the drawing stand to scale; the live controls and the tabs of the settings do the same. */
    const isDrawn = (thing: Element): boolean => thing.closest('.drawing-svg, .map-svg') !== null;
    const sizeOf = (thing: Element): readonly [number, number] => {
      const label = thing.matches('input') ? (thing.closest('label') ?? thing) : thing;
      const { width, height } = label.getBoundingClientRect();
      // A mark that must stay small may have a larger reach around it.
      const reach = getComputedStyle(thing, '::after');
      if (reach.position !== 'absolute' || reach.content === 'none') return [width, height];
      return [Math.max(width, Number.parseFloat(reach.width)), Math.max(height, Number.parseFloat(reach.height))];
    };
    return [...things].flatMap((thing) => {
      if (thing.closest('[inert], .visually-hidden') || !thing.checkVisibility({ visibilityProperty: true })) return [];
      if (thing.matches('.skip') || isInSentence(thing) || isDrawn(thing)) return [];
      const [width, height] = sizeOf(thing).map((size) => Math.round(size * 10) / 10) as [number, number];
      if (width === 0 || height === 0 || (width >= LEAST && height >= LEAST)) return [];
      const name = (thing.getAttribute('aria-label') ?? thing.textContent ?? '').trim().replace(/\s+/g, ' ');
      return [
        `${thing.tagName.toLowerCase()}.${thing.getAttribute('class') ?? ''} “${name.slice(0, 40)}” ${width} × ${height}`,
      ];
    });
  });

/** What is wider than its room, a line each. */
const tooWide = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const rooms = [
      document.documentElement,
      ...document.querySelectorAll(
        '.sheet[open], .sheet[open] .sheet-body, .picker-scroll, .working-scroll, .first-settings, .header-sheet.is-open, .live',
      ),
    ];
    return rooms
      .filter((room) => room.scrollWidth > room.clientWidth + 1 && room.clientWidth > 0)
      .map((room) => `${room.tagName.toLowerCase()}.${room.className}: ${room.scrollWidth} in ${room.clientWidth} px`);
  });

/** How a page is looked at: its window, its text against the usual, and whether a finger must find everything. */
interface Sight {
  readonly how: string;
  readonly viewport: { readonly width: number; readonly height: number };
  readonly text: string;
  readonly byFinger?: true;
}

/** Windows in which the page is arranged alike, so that one walk serves them all: its way is gone in the first. */
const SIGHTS = {
  'on a phone': [
    { how: 'on a phone', viewport: { width: 390, height: 844 }, text: '100%', byFinger: true },
    { how: 'at 320 px', viewport: { width: 320, height: 640 }, text: '100%' },
    { how: 'with text twice as large on a phone', viewport: { width: 390, height: 844 }, text: '200%' },
  ],
  'at a desk': [
    { how: 'on a tablet', viewport: { width: 1024, height: 768 }, text: '100%', byFinger: true },
    { how: 'with text twice as large at a desk', viewport: { width: 1280, height: 720 }, text: '200%' },
  ],
} as const satisfies Record<string, readonly [Sight, ...Sight[]]>;

async function lookWith(page: Page, { viewport, text }: Sight): Promise<void> {
  await page.setViewportSize(viewport);
  await page.evaluate(async (size) => {
    document.documentElement.style.fontSize = size;
    await new Promise((then) => requestAnimationFrame(() => requestAnimationFrame(then)));
  }, text);
}

/** Walks a part of the page and gathers what is wrong, each fault once, with the view it was first seen in. */
async function faultsOf(walk: keyof typeof WALKS, sights: readonly [Sight, ...Sight[]]): Promise<readonly string[]> {
  const { page } = await openPage('', { hasTouch: true, isMobile: true, viewport: sights[0].viewport });
  await lookWith(page, sights[0]);
  const seenIn = new Map<string, string>();
  // To and fro: a window that has just been looked with need not be laid out anew.
  let order: readonly Sight[] = sights;
  await WALKS[walk](page, async (view) => {
    for (const [place, sight] of order.entries()) {
      if (place > 0) await lookWith(page, sight);
      const faults = [...(await tooWide(page)), ...(sight.byFinger ? await tooSmall(page) : [])];
      for (const fault of faults) if (!seenIn.has(fault)) seenIn.set(fault, `${view} ${sight.how}`);
    }
    order = [...order].reverse();
  });
  return [...seenIn].map(([fault, view]) => `${view}: ${fault}`);
}

/** Many views, and searches on the model among them. */
const A_WALK = 480_000;

describe('everything is 44 px high and wide under a finger, and nothing needs sideways scrolling', () => {
  test.each([
    ['the bench', 'on a phone'],
    ['the bench', 'at a desk'],
    ['the settings', 'on a phone'],
    ['the settings', 'at a desk'],
    ['the dialogs', 'on a phone'],
    ['the dialogs', 'at a desk'],
  ] as const)(
    'in %s %s',
    async (walk, where) => {
      expect(await faultsOf(walk, SIGHTS[where])).toEqual([]);
    },
    A_WALK,
  );

  // Answers take long, and have no menus that are opened another way in another window.
  test(
    'in the answers, in every window',
    async () => {
      expect(await faultsOf('the answers', [...SIGHTS['on a phone'], ...SIGHTS['at a desk']])).toEqual([]);
    },
    A_WALK,
  );
});

describe('the keyboard', () => {
  test('skips past the head of the page, to the verdict, to playback and to the live controls', async () => {
    const { page } = await openBench();
    for (const [words, next] of [
      ['To the verdict', page.getByRole('region', { name: 'What this run tells you' }).getByRole('link').first()],
      ['To playback', page.getByRole('button', { name: 'Play', exact: true })],
      ['To the live controls', page.getByRole('textbox', { name: 'Heat, typed' })],
    ] as const) {
      const link = page.getByRole('link', { name: words, exact: true });
      await link.focus();
      expect((await link.boundingBox())?.y, `${words} is seen`).toBeGreaterThanOrEqual(0);
      await link.press('Enter');
      await next.waitFor();
      await page.keyboard.press('Tab');
      await expect
        .poll(() => next.evaluate((element) => element === document.activeElement), { message: words })
        .toBe(true);
    }
  });

  test.each([
    ['a desk', { width: 1280, height: 720 }],
    ['a phone', { width: 390, height: 844 }],
    ['a small phone', { width: 320, height: 640 }],
  ] as const)('sees the whole ring around every part of the drawing on %s', async (_what, viewport) => {
    const { page } = await openBench({ viewport });
    await fullRun(page);
    const cut = await page.locator('[data-part]').evaluateAll((parts) =>
      parts.flatMap((part) => {
        (part as SVGElement).focus();
        const name = part.getAttribute('data-part') ?? '';
        const ring = part.querySelector('.drawing-ring')?.getBoundingClientRect();
        if (!ring || document.activeElement !== part) return [`${name} has no ring`];
        const rooms = [document.documentElement];
        for (let room = part.parentElement; room && room !== document.body; room = room.parentElement)
          if (getComputedStyle(room).overflow !== 'visible') rooms.push(room);
        return rooms.flatMap((room) => {
          const { left, right, top, bottom } = room.getBoundingClientRect();
          const margin = Number.parseFloat(getComputedStyle(room).overflowClipMargin) || 0;
          const isWhole =
            ring.left >= left - margin &&
            ring.right <= right + margin &&
            ring.top >= top - margin &&
            ring.bottom <= bottom + margin;
          return isWhole ? [] : [`${name} is cut by ${room.tagName} ${room.getAttribute('class') ?? ''}`];
        });
      }),
    );
    expect(cut).toEqual([]);
  });
});
