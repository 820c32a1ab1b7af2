import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { exampleScenario, heatFromSource } from '../../sim/index.ts';
import { SETTINGS_PARTS, axeFaults, changedFrom, choose, enter, openBench } from './bench-page.ts';

async function openSettings(page: Page): Promise<Locator> {
  await page.getByRole('button', { name: /^Pot/ }).first().press('Enter');
  const settings = page.getByRole('complementary', { name: 'Settings' });
  await settings.getByRole('tab').first().waitFor();
  return settings;
}

const field = (settings: Locator, name: string): Locator => settings.getByRole('textbox', { name, exact: true });

describe('a field of the settings', () => {
  test('takes any unit, marks the change, and puts it back', async () => {
    const { page, verdict } = await openBench();
    const settings = await openSettings(page);
    const height = field(settings, 'Pot height');
    const first = await height.inputValue();
    const before = await verdict.textContent();
    await enter(height, '15 in');
    await expect.poll(() => height.inputValue()).toBe('381');
    await changedFrom(verdict, before);
    await settings.getByRole('button', { name: 'put back Pot height' }).click();
    await expect.poll(() => height.inputValue()).toBe(first);
  });

  test('takes sums and products, and fetches the large file of units only for units it does not show', async () => {
    const { page } = await openBench();
    const fetched: string[] = [];
    page.on('request', (request) => fetched.push(request.url()));
    const settings = await openSettings(page);
    const height = field(settings, 'Pot height');
    await enter(height, '2 * (7 in + 12.2 mm)');
    await expect.poll(() => height.inputValue()).toBe('380');
    expect(fetched.filter((url) => url.includes('mathjs'))).toEqual([]);
    await enter(height, '38 cm + 1 mm');
    await expect.poll(() => height.inputValue()).toBe('381');
    expect(fetched.filter((url) => url.includes('mathjs'))).not.toEqual([]);
    await enter(height, '380 mm + 2 kg');
    await settings.getByRole('alert').filter({ hasText: '“2 kg” is not a length; allowed is' }).waitFor();
  });

  test('keeps what can’t be taken, says why beside it, and gives back on Escape', async () => {
    const { page } = await openBench();
    const settings = await openSettings(page);
    const diameter = field(settings, 'Pot diameter');
    const first = await diameter.inputValue();
    await enter(diameter, '5 m');
    await settings.getByRole('alert').filter({ hasText: 'Pot diameter: 5000' }).waitFor();
    expect([await diameter.inputValue(), await diameter.getAttribute('aria-invalid')]).toEqual(['5 m', 'true']);
    await diameter.press('Escape');
    expect(await diameter.inputValue()).toBe(first);
    expect(await settings.getByRole('alert').count()).toBe(0);
  });

  test('is nudged by arrow keys, and a row of nudges is one step back', async () => {
    const { page } = await openBench();
    const settings = await openSettings(page);
    const water = field(settings, 'Water in the pot');
    const first = Number(await water.inputValue());
    await water.focus();
    for (let count = 0; count < 3; count++) await page.keyboard.press('ArrowDown');
    await expect.poll(async () => Number(await water.inputValue())).toBeCloseTo(first - 0.3, 6);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(async () => Number(await water.inputValue())).toBe(first);
  });

  test('is shown in gallons and inches when asked, without changing the still', async () => {
    const { page, verdict } = await openBench();
    const settings = await openSettings(page);
    await choose(page, 'Units', 'us');
    await settings.getByText('gal', { exact: true }).first().waitFor();
    await expect.poll(() => verdict.textContent()).toMatch(/mL|qt|gal/u);
    expect(await page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(false);
  });
});

describe('the parts of the settings', () => {
  test('are reached by arrow keys, and each shows fields', async () => {
    const { page } = await openBench();
    const settings = await openSettings(page);
    await settings.getByRole('tab', { name: 'Pot' }).focus();
    await page.keyboard.press('Home');
    for (const part of SETTINGS_PARTS) {
      await expect
        .poll(async () => (await settings.getByRole('tab', { selected: true }).textContent())?.trim())
        .toBe(part);
      expect(await settings.locator('.field').count()).toBeGreaterThan(1);
      await page.keyboard.press('ArrowRight');
    }
  });

  test('show fields that do not matter here only when asked', async () => {
    const { page } = await openBench();
    const settings = await openSettings(page);
    await settings.getByRole('tab', { name: 'Condenser' }).click();
    await field(settings, 'Coil pitch').waitFor();
    expect(await field(settings, 'Jacket bore').count()).toBe(0);
    await settings.getByRole('switch', { name: /Show all fields/ }).check();
    await field(settings, 'Jacket bore').waitFor();
  });

  test('have nothing against them from axe, with everything unfolded and a sheet open', async () => {
    const { page } = await openBench({ bypassCSP: true });
    const settings = await openSettings(page);
    for (const part of ['Pot', 'Charge', 'Cooling']) {
      await settings.getByRole('tab', { name: part }).click();
      await settings
        .locator('details')
        .evaluateAll((all) => all.forEach((details) => ((details as HTMLDetailsElement).open = true)));
      expect(await axeFaults(page)).toEqual([]);
    }
    await settings.getByRole('button', { name: 'Choose a tub or barrel' }).click();
    await page.getByRole('dialog').waitFor();
    expect(await axeFaults(page)).toEqual([]);
  });
});

describe('a pick from the library', () => {
  test('fills the fields of its part and is one step back', async () => {
    const { page, verdict } = await openBench();
    const settings = await openSettings(page);
    await settings.getByRole('tab', { name: 'Charge' }).click();
    const content = field(settings, 'Oil content');
    const first = await content.inputValue();
    const before = await verdict.textContent();
    await settings.getByRole('button', { name: 'Choose a plant' }).click();
    const sheet = page.getByRole('dialog', { name: 'Choose a plant' });
    await sheet.getByRole('searchbox').fill('rosemary');
    await sheet.getByRole('button', { name: 'Rosemary', exact: true }).click();
    await expect.poll(() => sheet.count()).toBe(0);
    expect(await content.inputValue()).not.toBe(first);
    await changedFrom(verdict, before);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => content.inputValue()).toBe(first);
  });

  test('of another heat source brings its power and asks no circuit of a flame; constituents are shown as they are', async () => {
    const { page, verdict } = await openBench();
    const settings = await openSettings(page);
    const pick = async (tab: string, what: string, name: string) => {
      await settings.getByRole('tab', { name: tab, exact: true }).click();
      await settings.getByRole('button', { name: `Choose a ${what}` }).click();
      const sheet = page.getByRole('dialog', { name: `Choose a ${what}` });
      await sheet.getByRole('button', { name, exact: true }).click();
      await expect.poll(() => sheet.count()).toBe(0);
    };
    const before = await verdict.textContent();
    await pick('Heat', 'heat source', 'outdoor gas ring');
    const { ratedPower_W, shareToPot } = heatFromSource('outdoor-gas-burner');
    await expect.poll(() => field(settings, 'Rated power').inputValue()).toBe(String(ratedPower_W));
    expect(await field(settings, 'Share into the pot').inputValue()).toBe(String(100 * (shareToPot as number)));
    await settings
      .getByText(/Flames give off carbon monoxide/)
      .first()
      .waitFor();
    await expect.poll(() => verdict.textContent()).not.toBe(before);
    expect(await verdict.textContent()).not.toMatch(/the circuit carries|electrician/);

    await settings.getByRole('tab', { name: 'Charge', exact: true }).click();
    const constituents = () =>
      settings
        .getByRole('combobox', { name: /^Constituent \d+$/ })
        .evaluateAll((all) => all.map((each) => (each as HTMLSelectElement).value));
    const lavender = await constituents();
    expect(lavender).toEqual(exampleScenario('gentle-lavender').charge.composition.map((row) => row.constituent));
    await pick('Charge', 'plant', 'Rosemary');
    await expect.poll(constituents).not.toEqual(lavender);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(constituents).toEqual(lavender);
  });

  test('may be one’s own, kept on this device until removed', async () => {
    const { page } = await openBench();
    const settings = await openSettings(page);
    await enter(field(settings, 'Pot height'), '36 cm');
    const open = async (): Promise<Locator> => {
      await settings.getByRole('button', { name: 'Choose a vessel' }).click();
      return page.getByRole('dialog', { name: 'Choose a vessel' });
    };
    const sheet = await open();
    await sheet.getByRole('textbox', { name: /as your own/ }).fill('Jam pan');
    await sheet.getByRole('button', { name: 'Keep' }).click();
    await sheet.getByRole('status').filter({ hasText: 'Jam pan' }).waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(() => sheet.count()).toBe(0);
    await enter(field(settings, 'Pot height'), '40 cm');
    const again = await open();
    await again.getByRole('button', { name: 'Jam pan', exact: true }).click();
    await expect.poll(() => field(settings, 'Pot height').inputValue()).toBe('360');
    const last = await open();
    await last.getByRole('button', { name: 'remove Jam pan' }).click();
    await expect.poll(() => last.getByText('Jam pan', { exact: true }).count()).toBe(0);
  });
});

describe('the oil’s composition', () => {
  test('waits until its shares add up, then is taken', async () => {
    const { page } = await openBench();
    const settings = await openSettings(page);
    await settings.getByRole('tab', { name: 'Charge' }).click();
    const share = field(settings, 'Share of linalool');
    await enter(share, '50');
    await settings.getByText(/not yet taken over/).waitFor();
    expect(await page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(false);
    await settings.getByRole('button', { name: 'Scale to 100 %' }).click();
    await expect.poll(() => settings.getByText(/Together 100/).count()).toBe(1);
    expect(Number(await share.inputValue())).toBeLessThan(50);
    await expect.poll(() => page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(true);
  });
});
