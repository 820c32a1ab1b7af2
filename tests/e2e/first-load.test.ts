import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import axe from 'axe-core';
import type { Request } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { openPage } from './open-page.ts';

const LARGEST_FIRST_LOAD = 160_000;

/** What the still waited for; what it asks for as it comes up is late already. */
const isLoadedBy = (time_ms: number, { startTime, responseEnd }: ReturnType<Request['timing']>): boolean =>
  responseEnd >= 0 && startTime + responseEnd <= time_ms;

describe('the first load', () => {
  test('shows a titled page with one main heading, and is quiet about it', async () => {
    const { page } = await openPage();
    await page.locator('h1').first().waitFor();
    expect(await page.title()).toContain('Limbeck');
    expect(await page.locator('h1').count()).toBe(1);
  });

  test.each(['light', 'dark'] as const)(
    'has no accessibility fault that axe can find on a %s ground',
    async (colorScheme) => {
      const { page } = await openPage('', { colorScheme, bypassCSP: true });
      await page.locator('h1').first().waitFor();
      await page.evaluate(axe.source);
      const faults = await page.evaluate(async () => {
        const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run();
        return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
      });
      expect(faults).toEqual([]);
    },
  );

  test(`fetches no more than ${LARGEST_FIRST_LOAD / 1000} kB of script, gzipped, workers included, until the still stands`, async () => {
    const { page } = await openPage();
    const asked: Request[] = [];
    page.on('request', (request) => asked.push(request));
    await page.addInitScript(() => {
      const watch = new MutationObserver(() => {
        if (!document.querySelector('.drawing-svg')) return;
        watch.disconnect();
        document.documentElement.dataset['standsSince'] = String(performance.timeOrigin + performance.now());
      });
      watch.observe(document, { childList: true, subtree: true });
    });
    await page.reload();
    const html = page.locator('html[data-stands-since]');
    await html.waitFor();
    const stands_ms = Number(await html.getAttribute('data-stands-since'));
    const scripts = new Set(
      asked
        .filter((request) => isLoadedBy(stands_ms, request.timing()))
        .map((request) => new URL(request.url()).pathname)
        .filter((path) => path.endsWith('.js')),
    );
    const bytes = [...scripts].map((path) => gzipSync(readFileSync(join(inject('appFolder'), path))).length);
    expect([...scripts].some((path) => path.includes('run-worker'))).toBe(true);
    expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(LARGEST_FIRST_LOAD);
  });
});
