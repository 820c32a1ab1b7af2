/** A file dropped anywhere on any place: a browser left to itself would go to it and leave the work behind. */
import { expect, inject, test } from 'vitest';
import { PLACES } from '../../src/state/places.ts';
import { openPage } from './open-page.ts';

/** Drops a file on what lies at many points of the window; tells where the page let the browser have it. */
const letThrough = () => {
  const through: string[] = [];
  for (let across = 1; across < 6; across++)
    for (let down = 0; down < 8; down++) {
      const at = document.elementFromPoint((across / 6) * innerWidth, ((down + 0.5) / 8) * innerHeight);
      for (const type of ['dragover', 'drop']) {
        const dataTransfer = new DataTransfer();
        dataTransfer.items.add(new File(['nothing of use'], 'holiday.txt', { type: 'text/plain' }));
        const event = new DragEvent(type, { bubbles: true, cancelable: true, dataTransfer });
        at?.dispatchEvent(event);
        if (at && !event.defaultPrevented) through.push(`${type} on ${at.tagName} ${at.className}`);
      }
    }
  return through;
};

test.each(PLACES)('dropped on %s it never leaves the page', async (id) => {
  const { page } = await openPage(`#${id}`);
  await page.locator('h1').first().waitFor();
  const address = page.url();
  expect(await page.evaluate(letThrough)).toEqual([]);
  expect(page.url()).toBe(address);
  expect(new URL(page.url()).origin).toBe(new URL(inject('appAddress')).origin);
});
