import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import axe from 'axe-core';
import { describe, expect, inject, test } from 'vitest';
import { openPage } from './open-page.ts';

const LARGEST_FIRST_LOAD = 160_000;

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

  test(`fetches no more than ${LARGEST_FIRST_LOAD / 1000} kB of script, gzipped, workers included`, async () => {
    const { page } = await openPage();
    const scripts = new Set<string>();
    page.on('response', (response) => {
      const { pathname } = new URL(response.url());
      if (pathname.endsWith('.js')) scripts.add(pathname);
    });
    await page.reload({ waitUntil: 'networkidle' });
    const bytes = [...scripts].map((path) => gzipSync(readFileSync(join(inject('appFolder'), path))).length);
    expect(bytes).not.toHaveLength(0);
    expect(bytes.reduce((sum, size) => sum + size, 0)).toBeLessThanOrEqual(LARGEST_FIRST_LOAD);
  });
});
