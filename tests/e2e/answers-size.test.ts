import { describe, expect, test } from 'vitest';
import { DRAWS, goTo, openAnswer, SEARCH } from './answers-page.ts';
import { exampleScenario } from '../../sim/index.ts';
import { downloaded, enter, openFile, press, typedValue } from './bench-page.ts';

describe('how much tube', () => {
  test('is answered in a sentence, a picture and a table, and all of it can be taken along', async () => {
    const { page, lead } = await openAnswer('size');
    await expect
      .poll(() => lead.textContent(), SEARCH)
      .toMatch(
        /^For up to 3\.\d\skW \([\d.]+\skg\/h of steam\) into a 37\sL tub at 15\s°C .*: [\d.]+\sm of 12 × 1 mm copper is enough in nine runs of ten; [\d.]+\sm with ends and cutting\.$/,
      );
    await expect
      .poll(() => page.locator('.both-heats td').allTextContents(), SEARCH)
      .toEqual([
        expect.stringMatching(/^[\d.]+\sm$/),
        expect.stringMatching(/^[\d.]+\sm$/),
        expect.stringMatching(/^[\d.]+\sm$/),
        expect.stringMatching(/^[\d.]+\sm$/),
      ]);
    expect(await page.locator('.map-isotherm').count()).toBeGreaterThan(2);
    expect(await page.locator('.map-label.is-escapes').textContent()).toBe('steam escapes');

    await expect.poll(() => page.locator('.map-doubtful').getAttribute('d'), SEARCH).toMatch(/^M/);
    const others = page.getByRole('region', { name: 'Separator, tub and heat' });
    await expect
      .poll(() => others.textContent(), SEARCH)
      .toMatch(/Separator: .* inside.*Tub: without running water.*Heat: .* of distillate needs/);

    await page.getByRole('button', { name: 'Show the working', exact: true }).click();
    const working = page.getByRole('dialog', { name: 'The working' });
    const headline = /: ([\d.]+\sm) of 12/.exec((await lead.textContent()) ?? '')?.[1] ?? 'none';
    await expect
      .poll(() => working.locator('.working-result').textContent(), SEARCH)
      .toBe(`Length that is enough: ${headline}`);
    await page.keyboard.press('Escape');
    await working.waitFor({ state: 'hidden' });

    const picture = await downloaded(page, () => page.getByRole('button', { name: 'Save SVG of the picture' }).click());
    expect(picture.name).toBe('gentle-lavender-the-picture.svg');
    expect(picture.text).toContain('steam escapes');
    expect(picture.text).toContain('your still');
    const points = await downloaded(page, () => page.getByRole('button', { name: 'Save CSV of the picture' }).click());
    expect(points.text.split('\n')[0]).toBe('Cooling-water flow (L/min),Length (m),Warmest distillate (°C),Fails by');
    expect(points.text.trim().split('\n').length).toBeGreaterThanOrEqual(26);

    const standard = page.getByRole('combobox', { name: 'Standard' });
    await standard.selectOption('EN 1057');
    const rows = page
      .getByRole('region', { name: 'Standard tubes as the condenser of this still' })
      .locator('tbody tr');
    await expect
      .poll(
        () =>
          page
            .locator('.tube-table td')
            .filter({ hasText: /^fits$/ })
            .count(),
        SEARCH,
      )
      .toBeGreaterThan(1);
    await page.getByText('Done: 124 of 124 tubes tried').waitFor(SEARCH);
    await page.getByRole('button', { name: 'Bore' }).click();
    const bores = await rows.locator('td:nth-of-type(1)').allTextContents();
    expect(bores.length).toBeGreaterThan(5);
    expect(bores.map(Number)).toEqual(bores.map(Number).toSorted((a, b) => a - b));
    await page.getByRole('button', { name: 'Bore' }).click();
    expect((await rows.locator('td:nth-of-type(1)').allTextContents()).map(Number)).toEqual(
      bores.map(Number).toReversed(),
    );

    const table = await downloaded(page, () => page.getByRole('button', { name: 'Save CSV of the tubes' }).click());
    expect(table.text).toMatch(/^Tube,Standard,Bore \(mm\),Outside \(mm\),Verdict,/);
    expect(table.text.trim().split('\n')).toHaveLength(bores.length + 1);

    await page
      .getByRole('button', { name: /^Use it / })
      .first()
      .click();
    await expect.poll(() => page.locator('.answer-more').first().textContent(), SEARCH).toMatch(/in reserve\./);

    await page.getByRole('link', { name: 'Building sheet' }).click();
    await page.locator('.sheet-figure.is-coil svg').waitFor(DRAWS);
    expect(await page.locator('.sheet-figure').count()).toBe(3);
    const told = /([\d.]+)\sm with ends and cutting/.exec((await lead.textContent()) ?? '')?.[1];
    const cut = page.locator('.sheet-rows').first();
    expect((await cut.textContent())?.endsWith(`${told}\u202fm`)).toBe(true);
    const sheet = await downloaded(page, () =>
      page.getByRole('button', { name: 'Save SVG of the building sheet' }).click(),
    );
    expect(sheet.text).toContain('data-dimension="outlet-height"');
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByRole('button', { name: 'Print the sheet' }).isVisible()).toBe(false);
    expect(await page.locator('.sheet-figure.is-separator').isVisible()).toBe(true);
  });

  test('is asked by moving one’s own still in the picture, with keys or by hand, and the bench follows', async () => {
    const { page } = await openAnswer('size');
    const own = page.getByRole('slider', { name: /^Your still/ });
    await page.locator('.map-isotherm').first().waitFor(SEARCH);
    const length = async () => Number(await own.getAttribute('aria-valuenow'));
    const before = await length();
    await own.focus();
    for (let step = 0; step < 10; step++) await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowRight');
    const raised = await length();
    expect(raised).toBeGreaterThan(before + 0.2);
    expect(await own.getAttribute('aria-valuetext')).toMatch(/^[\d.]+\sm, [\d.]+\sL\/min$/);
    // Presses that follow each other quickly are undone together; on a slow machine not all of them do.
    await expect
      .poll(async () => {
        if ((await length()) !== before) await page.getByRole('button', { name: 'Undo' }).click();
        return length();
      })
      .toBe(before);

    await own.locator('.map-own-point').hover();
    const box = await own.boundingBox();
    if (!box) throw new Error('the own still is not to be seen');
    const [x, y] = [box.x + 22, box.y + 22];
    await page.mouse.down();
    await page.mouse.move(x + 40, y - 30, { steps: 4 });
    await page.mouse.move(x + 60, y - 60, { steps: 4 });
    await page.mouse.up();
    const dragged = await length();
    expect(dragged).toBeGreaterThan(before + 0.2);
    await goTo(page, 'Bench');
    await expect.poll(async () => Number(await typedValue(page, 'Coil').inputValue())).toBeCloseTo(dragged, 3);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => Number(await typedValue(page, 'Coil').inputValue())).toBeCloseTo(before, 3);
  });

  test('refuses in words what it cannot take, and keeps its answer', async () => {
    const { page, lead } = await openAnswer('size');
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/^For .* is enough in nine runs of ten/u);
    const before = await lead.textContent();
    for (const [field, text, told] of [
      ['Distillate no warmer than', 'lukewarm', /./],
      ['Distillate no warmer than', '200 C', /90/],
      ['Margin on the length', '-5 %', /0/],
    ] as const) {
      await enter(page.getByRole('textbox', { name: field }), text);
      expect(await page.getByRole('alert').first().textContent()).toMatch(told);
      await page.getByRole('textbox', { name: field }).press('Escape');
      await expect.poll(() => page.getByRole('alert').count()).toBe(0);
    }
    expect(await lead.textContent()).toBe(before);
    await page.getByRole('button', { name: 'Your prices' }).click();
    const dialog = page.getByRole('dialog', { name: 'Your prices' });
    await enter(dialog.getByRole('textbox', { name: 'Copper' }), 'cheap');
    await dialog.getByRole('alert').waitFor();
    await dialog.getByRole('textbox', { name: 'Copper' }).press('Escape');
    await enter(dialog.getByRole('textbox', { name: 'Copper' }), '40');
    await dialog.getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => page.locator('.answer-more').first().textContent()).toContain('at your price');
    await enter(page.getByRole('textbox', { name: 'Margin on the length' }), '50 %');
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/with your margin of 50\s%/);
    await page.getByRole('button', { name: /^Stop with \d+ of 124 tubes tried$/ }).click();
    await page.getByRole('button', { name: 'Try every tube' }).click();
    await page.getByText('Done: 124 of 124 tubes tried').waitFor(SEARCH);
  });

  test('keeps the keyboard where it stands while more tubes are tried', async () => {
    const { page } = await openAnswer('size');
    const tried = async () =>
      Number(/^(\d+) of/.exec((await page.locator('.answer-progress-words').textContent()) ?? '')?.[1] ?? 0);
    const use = page.getByRole('button', { name: /^Use it/ }).first();
    await use.waitFor(DRAWS);
    await use.focus();
    const held = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    const name = await held();
    expect(name).toMatch(/^Use it/);
    const before = await tried();
    await expect.poll(tried, SEARCH).toBeGreaterThan(before + 8);
    expect(await held()).toBe(name);
  });

  test('prints its table with headings, and only the tubes that were tried', async () => {
    const { page } = await openAnswer('size');
    await expect
      .poll(
        () =>
          page
            .locator('.tube-table td')
            .filter({ hasText: /^fits$/ })
            .count(),
        SEARCH,
      )
      .toBeGreaterThan(1);
    await page
      .getByRole('button', { name: /^Stop with \d+ of/ })
      .click({ timeout: 2000 })
      .catch(() => undefined);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.tube-table thead').getByText('Length').isVisible()).toBe(true);
    expect(await page.locator('.tube-table .is-untried').filter({ visible: true }).count()).toBe(0);
    expect(
      await page
        .getByRole('button', { name: /^Use it/ })
        .filter({ visible: true })
        .count(),
    ).toBe(0);
  });

  test('tells no tube from another where nothing comes over', async () => {
    const { page, lead } = await openAnswer('size');
    const lavender = exampleScenario('gentle-lavender');
    await openFile(
      page,
      'cold.json',
      JSON.stringify({
        ...lavender,
        name: 'Never boils',
        heat: { ...lavender.heat, setting: [{ at_s: 0, value: 0.05, shape: 'step' }] },
      }),
    );
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/^Almost nothing comes over/);
    await page.getByText('so any tube is enough').waitFor(SEARCH);
    expect(await page.getByRole('button', { name: /^Use it/ }).count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Set the tap to that' }).count()).toBe(0);
  });

  test('is answered for a straight tube in a jacket alike, without turns', async () => {
    const { page, lead } = await openAnswer('size');
    await press(page, 'Files', 'Examples');
    await page
      .getByRole('dialog', { name: 'Start from' })
      .getByRole('button', { name: /Rosemary in a large pot/ })
      .click();
    await expect.poll(() => page.locator('h1').textContent()).toBe('Rosemary in a large pot');
    await expect
      .poll(() => page.locator('.answer-more').first().textContent(), SEARCH)
      .toMatch(/^That is [\d.]+\s\w+ of copper.*Your tube has/);
    expect(await lead.textContent()).toMatch(/enough in nine runs of ten/);
    expect(await page.getByRole('button', { name: 'Turns' }).count()).toBe(0);
    expect(await page.getByRole('radio', { name: 'against water in the tub' }).count()).toBe(0);
    await page
      .locator('.inverse')
      .getByText(/can handle/)
      .waitFor(SEARCH);
  });
});
