/** Every caution in the drawing has a place of its own, on any screen, with several at once. */
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { exampleScenario, type Scenario } from '../../sim/index.ts';
import { shareHash } from '../../src/state/share-link.ts';
import { fullRun, onBench } from './bench-page.ts';
import { openPage } from './open-page.ts';

const first = exampleScenario('gentle-lavender');
/** A hard flame, a short thin coil, the tap closed and little water: lid, flame, tub and outlet all have a word to say. */
const EVERYTHING: Scenario = {
  ...first,
  name: 'Everything at once',
  heat: { ...first.heat, kind: 'gas-ring', ratedPower_W: 9000, setting: [{ at_s: 0, value: 1, shape: 'step' }] },
  condenser: { ...first.condenser, length_m: 1.2, insideDiameter_m: 0.006, outsideDiameter_m: 0.008 },
  cooling: { ...first.cooling, flow_kg_s: [{ at_s: 0, value: 0, shape: 'step' }] },
};
const ALL_AT_S = 2990;

const SCREENS = [
  [1280, 720],
  [1440, 900],
  [1024, 768],
  [820, 1180],
  [390, 844],
  [320, 640],
] as const;

interface Rect {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly right: number;
  readonly bottom: number;
}

interface Measured {
  readonly drawing: Rect;
  readonly cautions: readonly Rect[];
  readonly words: readonly Rect[];
  readonly parts: readonly Rect[];
  readonly alarmSizes: readonly number[];
}

const measured = (page: Page): Promise<Measured> =>
  page.evaluate(() => {
    const rectOf = (element: Element, name: string) => {
      const { x, y, right, bottom } = element.getBoundingClientRect();
      return { name, x, y, right, bottom };
    };
    const all = (selector: string) => [...document.querySelectorAll(`.drawing-svg ${selector}`)];
    const svg = document.querySelector('.drawing-svg') as Element;
    return {
      drawing: rectOf(svg, 'drawing'),
      cautions: all('.drawing-hazard text').map((line) =>
        rectOf(line, `${line.closest('[data-hazard]')?.getAttribute('data-hazard') ?? ''}: ${line.textContent ?? ''}`),
      ),
      words: all('.drawing-label text, .drawing-scale text, .drawing-key text').map((line) =>
        rectOf(line, line.textContent ?? ''),
      ),
      parts: all('[data-part]').flatMap((part) =>
        [...part.querySelectorAll(':scope > .drawing-target')].map((box) =>
          rectOf(box, part.getAttribute('data-part') ?? ''),
        ),
      ),
      alarmSizes: all('.drawing-hazard.is-alarm text').map((line) => parseFloat(getComputedStyle(line).fontSize)),
    };
  });

/** What may be hit of a part reaches a little beyond what is drawn of it, px. */
const AROUND_PART = 8;

const overlap = (a: Rect, b: Rect, by = 0): boolean =>
  Math.min(a.right, b.right) - Math.max(a.x, b.x) > by && Math.min(a.bottom, b.bottom) - Math.max(a.y, b.y) > by;

const hazardOf = ({ name }: Rect): string => name.split(':')[0] ?? '';

function faultsOf({ drawing, cautions, words, parts }: Measured): string[] {
  return cautions.flatMap((caution) => [
    ...(caution.x < drawing.x ||
    caution.y < drawing.y ||
    caution.right > drawing.right ||
    caution.bottom > drawing.bottom
      ? [`${caution.name} leaves the drawing`]
      : []),
    ...cautions
      .filter((other) => hazardOf(other) > hazardOf(caution) && overlap(caution, other))
      .map((other) => `${caution.name} and ${other.name}`),
    ...words.filter((other) => overlap(caution, other)).map((other) => `${caution.name} and ${other.name}`),
    ...parts
      .filter((part) => overlap(caution, part, AROUND_PART))
      .map((part) => `${caution.name} over the ${part.name}`),
  ]);
}

async function openEverything(width: number, height: number): Promise<Page> {
  const { page } = await openPage(await shareHash(EVERYTHING), { viewport: { width, height } });
  const { timeMark } = onBench(page);
  await page.getByText('Everything at once').first().waitFor();
  await fullRun(page);
  await timeMark.fill(String(ALL_AT_S));
  await expect.poll(() => page.locator('.drawing-hazard').count()).toBe(4);
  return page;
}

describe.each(SCREENS)('at %i × %i', (width, height) => {
  test('four cautions at once stand in the drawing, off all other words and off the parts', async () => {
    const page = await openEverything(width, height);
    const seen = await measured(page);
    expect(new Set(seen.cautions.map(hazardOf))).toEqual(new Set(['lid', 'flame', 'tub', 'outlet']));
    expect(faultsOf(seen)).toEqual([]);
    expect(Math.min(...seen.alarmSizes)).toBeGreaterThanOrEqual(15);
  });
});

test('nothing of the drawing moves when a caution comes', async () => {
  const page = await openEverything(1024, 768);
  const during = await measured(page);
  await onBench(page).timeMark.fill('0');
  await expect.poll(() => page.locator('.drawing-hazard').count()).toBe(0);
  const { parts } = await measured(page);
  expect(parts).toEqual(during.parts);
});

test('on a phone a caution of few words opens the whole sentences, by key too, and gives the focus back', async () => {
  const page = await openEverything(390, 844);
  const brief = page.locator('[data-hazard="lid"]');
  expect(await brief.textContent()).toBe('Lid can lift');
  await brief.press('Enter');
  const sheet = page.getByRole('dialog', { name: 'Take care' });
  await sheet.getByText('Heat off, and stand back.').waitFor();
  expect(await sheet.getByRole('listitem').count()).toBe(4);
  await page.keyboard.press('Escape');
  await sheet.waitFor({ state: 'hidden' });
  expect(await page.evaluate(() => document.activeElement?.getAttribute('data-hazard'))).toBe('lid');
});
