import { describe, expect, test } from 'vitest';
import { axeFaults, choose, goTo } from './bench-page.ts';
import { openPage } from './open-page.ts';

const LATE = { timeout: 30_000 };

const openReference = async (name = '', options: Parameters<typeof openPage>[1] = {}) => {
  const { page } = await openPage(name === '' ? '#reference' : `#reference/${name}`, options);
  await page.getByRole('heading', { name: 'Reference', level: 2 }).waitFor(LATE);
  return {
    page,
    search: page.getByRole('searchbox', { name: 'Look up' }),
    result: page.locator('.reference-result strong'),
    field: (label: string) => page.getByRole('group', { name: 'Arguments' }).getByRole('textbox', { name: label }),
  };
};

describe('the reference', () => {
  test('is reached from the places, searched in plain words, and answers what is typed', async () => {
    const { page } = await openPage();
    await goTo(page, 'Reference');
    const search = page.getByRole('searchbox', { name: 'Look up' });
    await search.waitFor(LATE);
    await search.fill('surface tension of water');
    await page.getByText('1 found, best first.').waitFor(LATE);
    await search.press('Enter');
    const title = page.getByRole('heading', { name: 'Surface tension of water against its vapour' });
    await title.waitFor(LATE);
    await expect.poll(() => title.evaluate((element) => element === document.activeElement)).toBe(true);

    // IAPWS R1-76(2014) prints 72.74 mN/m at 20 °C and 67.94 mN/m at 50 °C.
    const field = page.getByRole('group', { name: 'Arguments' }).getByRole('textbox', { name: 'Temperature' });
    const result = page.locator('.reference-result strong');
    for (const [typed, expected] of [
      ['20 C', '72.7'],
      ['50', '67.9'],
      ['68 F', '72.7'],
    ] as const) {
      await field.fill(typed);
      await field.press('Enter');
      await expect.poll(() => result.textContent(), LATE).toContain(expected);
      expect(await result.textContent()).toMatch(/mN\/m$/);
    }
    expect(await page.locator('.reference-sheet .katex').count()).toBeGreaterThan(2);
    expect(await page.locator('.reference-trace').getAttribute('d')).toMatch(/^M[\d.]+,[\d.]+L/);

    await field.fill('500 C');
    await field.press('Enter');
    await expect.poll(() => result.textContent()).toBe('No value here');
    expect(await page.locator('.reference-out').textContent()).toMatch(
      /^Out of range: temperature \(0.*373\.9.*°C\)\.$/,
    );
  });

  test('is written in US units for a reader of US units', async () => {
    const { page, result, field } = await openReference('film-coefficient-chato-steam');
    await result.waitFor(LATE);
    expect(await result.textContent()).toMatch(/W\/\(m² K\)$/);
    await choose(page, 'Units', 'us');
    await expect.poll(() => result.textContent(), LATE).toMatch(/BTU\/\(h ft² °F\)$/);
    await field('Bore of the tube').fill('3/8 in');
    await field('Bore of the tube').press('Enter');
    await expect.poll(() => field('Bore of the tube').inputValue(), LATE).toBe('0.375');
    expect(await page.locator('.reference-arguments').textContent()).toMatch(/°F/);
    expect(await page.locator('.reference-arguments').textContent()).not.toMatch(/°C|\dmm/);
  });

  test('says when nothing speaks of the words, and reads a misspelt one as it was meant', async () => {
    const { page, search } = await openReference();
    await search.fill('parsnip wine');
    await page.getByText('Nothing here speaks of “parsnip wine”. Try fewer words.').waitFor(LATE);
    await search.fill('linalol');
    await page.getByText('Read as “linalool”.').waitFor(LATE);
    const found = page.getByRole('navigation', { name: 'What the reference holds' });
    await found.getByRole('link', { name: 'Linalool, oil constituent' }).click();
    await page.getByRole('heading', { name: 'Linalool', exact: true }).waitFor(LATE);
    await page.getByRole('link', { name: 'Vapour pressure of linalool' }).last().click();
    await page.getByRole('heading', { name: 'Vapour pressure of linalool' }).waitFor(LATE);
    await page.goBack();
    await page.getByRole('heading', { name: 'Linalool', exact: true }).waitFor(LATE);
  });

  test.each(['light', 'dark'] as const)(
    'has no fault that axe can find on a %s ground, nor spills on a phone',
    async (colorScheme) => {
      const { page, result } = await openReference('film-coefficient-chato-steam', {
        colorScheme,
        bypassCSP: true,
        viewport: { width: 390, height: 844 },
      });
      await result.waitFor(LATE);
      expect(await axeFaults(page)).toEqual([]);
      const spill = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(spill).toBeLessThanOrEqual(0);
    },
  );

  test('shows a plant with its cautions', async () => {
    const { page } = await openReference('lavender-true');
    await page.getByText('How the trade distils it').waitFor(LATE);
    expect(await page.locator('.reference-sheet').textContent()).toContain('Cautions');
  });
});
