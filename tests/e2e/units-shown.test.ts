import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { botanicals, examples, exampleScenario, type UnitSystem } from '../../sim/index.ts';
import { goTo, SEARCH } from './answers-page.ts';
import { SETTINGS_PARTS, choose, enter, openBench, openFile, press, turnUpHeat, typedValue } from './bench-page.ts';
import { hasForeignUnit, wordsOfPage } from './foreign-units.ts';

test('units of the other system are found', () => {
  const metric = [
    '99 °C',
    'Bore (mm)',
    'L',
    '5 m of tube',
    '1.5 L/min',
    'a 25-litre pot',
    '2 kg',
    'between 1 and 40 L',
  ];
  const us = [
    '210 °F',
    'Bore (in)',
    'gal',
    '3/8\u202fin tube',
    '0.4 gal/min',
    'two quarts',
    '4 lb',
    '0.02 psi',
    'in H₂O',
  ];
  expect(metric.map((words) => [words, hasForeignUnit(words, 'us'), hasForeignUnit(words, 'metric')])).toEqual(
    metric.map((words) => [words, true, false]),
  );
  expect(us.map((words) => [words, hasForeignUnit(words, 'metric'), hasForeignUnit(words, 'us')])).toEqual(
    us.map((words) => [words, true, false]),
  );
  const common = [
    '1 h 30',
    '2.2 kW',
    '12 mL',
    '80 %',
    '30 min',
    'My still',
    'costs 0.06 in energy',
    '12 × 1 mm copper',
    '“5 kg” is not a length',
    'in the pot',
    'EN 1057',
  ];
  expect(common.filter((words) => hasForeignUnit(words, 'us') || hasForeignUnit(words, 'metric'))).toEqual([]);
});

/** Collects what speaks in the other system's units, by the place it was read in. */
function createLedger(page: Page, system: UnitSystem) {
  /** Each with where it was first read. */
  const seen = new Map<string, string>();
  const read = async (place: string, within = 'body') => {
    for (const words of await wordsOfPage(page, within)) if (!seen.has(words)) seen.set(words, place);
  };
  return {
    seen,
    faults: () =>
      [...seen].filter(([words]) => hasForeignUnit(words, system)).map(([words, place]) => `${place}: ${words}`),
    /** Unfolds everything that is folded, and reads it. */
    async read(place: string, within?: string) {
      await page.evaluate(() => document.querySelectorAll('details').forEach((each) => (each.open = true)));
      await read(place, within);
    },
    async print(place: string) {
      await page.emulateMedia({ media: 'print' });
      await read(`${place}, printed`);
      await page.emulateMedia({ media: 'screen' });
    },
  };
}

type Ledger = ReturnType<typeof createLedger>;

const SYSTEM_WORDS: Readonly<Record<UnitSystem, RegExp>> = { metric: /°C|kg|\dm?L/u, us: /°F|lb|gal/u };

async function openIn(system: UnitSystem) {
  const opened = await openBench({ viewport: { width: 1440, height: 1400 } });
  const { page } = opened;
  await page.getByRole('region', { name: 'Tap temperature' }).waitFor();
  await choose(page, 'Units', system);
  await expect.poll(async () => (await wordsOfPage(page)).some((words) => SYSTEM_WORDS[system].test(words))).toBe(true);
  return { ...opened, ledger: createLedger(page, system) };
}

function done(...ledgers: readonly Ledger[]) {
  for (const { faults, seen } of ledgers) {
    expect(seen.size).toBeGreaterThan(50);
    expect(faults()).toEqual([]);
  }
}

const OTHER: Readonly<Record<UnitSystem, UnitSystem>> = { metric: 'us', us: 'metric' };

/** Reads each place in both systems, changed over while it stands there; the next begins in the one read last. */
async function openInBoth() {
  const { ledger, ...opened } = await openIn('metric');
  const { page } = opened;
  const ledgers: Readonly<Record<UnitSystem, Ledger>> = { metric: ledger, us: createLedger(page, 'us') };
  let now: UnitSystem = 'metric';
  const changeOver = async () => {
    now = OTHER[now];
    await choose(page, 'Units', now);
    // A picture is drawn in the next frame.
    await page.evaluate(() => new Promise((then) => requestAnimationFrame(() => requestAnimationFrame(then))));
  };
  const inBoth = async (read: (ledger: Ledger) => Promise<void>) => {
    await read(ledgers[now]);
    await changeOver();
    await read(ledgers[now]);
  };
  return {
    ...opened,
    read: (place: string) => inBoth((each) => each.read(place)),
    readAndPrint: (place: string) =>
      inBoth(async (each) => {
        await each.read(place);
        await each.print(place);
      }),
    done: () => done(ledgers.metric, ledgers.us),
  };
}

async function readWorking(page: Page, ledger: Ledger) {
  const buttons = page.getByRole('button', { name: /^Show the working of: / });
  const sheet = page.getByRole('dialog', { name: 'The working' });
  for (const button of await buttons.all()) {
    await button.click();
    await sheet.locator('.katex').first().waitFor(SEARCH);
    await ledger.read('working', 'dialog');
    await page.keyboard.press('Escape');
    await sheet.waitFor({ state: 'hidden' });
  }
}

/** Types into many fields and leaves each, in the page itself: key by key from outside it takes minutes. */
const typeInAll = (fields: Locator, text: string): Promise<void> =>
  fields.evaluateAll(async (inputs, typed) => {
    for (const input of inputs as HTMLInputElement[]) {
      if (!input.checkVisibility()) continue;
      input.focus();
      input.value = typed;
      input.dispatchEvent(new InputEvent('input', { bubbles: true }));
      input.blur();
    }
    // Reading is asynchronous, and what it says is drawn in the next frame.
    await new Promise((then) => setTimeout(then, 200));
  }, text);

const EXAMPLES = examples.map(({ id }) => id);
const REFERENCES = ['film-coefficient-chato-steam', 'surface-tension', 'linalool', ...botanicals.map(({ id }) => id)];

const REFUSED = ['-400', '5 furlongs'];
const OFF_LIMITS = ['-40', '99999', 'a lot', '5 furlongs', '5 J'];

describe.each(['us', 'metric'] as const)('to a reader of %s units no other unit is shown', (system) => {
  test('on the bench: drawing, charts, controls, plans, dialogs and print', { timeout: 240_000 }, async () => {
    const { page, ledger, lead } = await openIn(system);
    await ledger.read('bench');
    await ledger.print('bench');
    for (const [menu, dialog] of [
      ['Files', 'Examples'],
      ['Show', 'Keys'],
      ['Files', 'Share this still by a link'],
    ] as const) {
      await press(page, menu, dialog);
      await page.getByRole('dialog').filter({ visible: true }).waitFor();
      await ledger.read(`dialog ${dialog}`);
      await page.keyboard.press('Escape');
    }
    await readWorking(page, ledger);
    for (const typed of OFF_LIMITS) {
      for (const control of ['Heat', 'Tap', 'Coil', 'Charge']) await enter(typedValue(page, control), typed);
      await ledger.read(`controls, ${typed}`);
    }
    await turnUpHeat(page);
    await lead.waitFor();
    await ledger.read('bench, hard boil');
    done(ledger);
  });

  test('in the settings: every part, picker, plant and refusal', { timeout: 240_000 }, async () => {
    const { page, ledger } = await openIn(system);
    const settings = page.getByRole('complementary', { name: 'Settings' });
    await page.getByRole('button', { name: /^Pot/ }).first().press('Enter');
    await settings.getByRole('switch', { name: /Show all fields/ }).check();
    for (const part of SETTINGS_PARTS) {
      await settings.getByRole('tab', { name: part, exact: true }).click();
      await ledger.read(`settings, ${part}`);
      for (const picker of await settings.getByRole('button', { name: /^Choose / }).all())
        if (await picker.isVisible()) {
          await picker.click();
          await ledger.read(`picker, ${part}`);
          await page.keyboard.press('Escape');
        }
      // A field that refuses says so until something else is typed.
      for (const typed of REFUSED) {
        await typeInAll(settings.locator('.quantity-input'), typed);
        await ledger.read(`settings, ${part}, ${typed}`, '.first-settings');
      }
    }
    done(ledger);
  });

  // A log keeps the units of the one who writes it.
  test('in the run book: log, refusals, pasting and fit', { timeout: 240_000 }, async () => {
    const { page, ledger } = await openIn(system);
    await goTo(page, 'Run book');
    await ledger.read('run book, empty');
    await page.getByRole('button', { name: 'New log' }).click();
    await page.getByText('Paste columns from a note').click();
    await page
      .getByRole('textbox', { name: /A line of headings/ })
      .fill(
        'time (min), oil (mL)\n30, 2.6\n40, 8.2\n50, 13.4\n60, 17.6\n75, 22.8\n90, 26.1\n105, 28.2\n120, 29.6\n130, a',
      );
    await page.getByRole('button', { name: 'Take these lines' }).click();
    await ledger.read('run book, pasted');
    await page.getByRole('button', { name: 'Fit', exact: true }).click();
    await page.getByRole('region', { name: /^Fitted factors/ }).waitFor(SEARCH);
    await ledger.read('run book, fitted');
    await ledger.print('run book');
    done(ledger);
  });
});

describe('to a reader of either system no other unit is shown', () => {
  test('in any example: its events, cautions and verdict', { timeout: 240_000 }, async () => {
    const { page, read, done } = await openInBoth();
    for (const id of EXAMPLES) {
      const scenario = exampleScenario(id);
      await openFile(page, `${id}.json`, JSON.stringify(scenario));
      await expect.poll(() => page.locator('h1').textContent(), SEARCH).toBe(scenario.name);
      await page.getByRole('slider', { name: 'Time mark' }).press('End');
      await read(`example ${id}`);
    }
    done();
  });

  test('where sizes and times are answered and runs compared', { timeout: 240_000 }, async () => {
    const { page, read, readAndPrint, done } = await openInBoth();
    const lead = page.locator('.answer-lead').first();
    await goTo(page, 'Plants');
    await page.getByRole('link', { name: 'Common (Dalmatian) sage' }).click();
    await page.locator('.plant-page').waitFor(SEARCH);
    await read('a plant');
    await page.getByRole('link', { name: 'All plants' }).click();
    await page.locator('.plants-table').waitFor();
    await read('plants');
    await goTo(page, 'Bottling');
    await page.locator('.label').first().waitFor(SEARCH);
    await readAndPrint('bottling');
    await goTo(page, 'Blend');
    await page.locator('.fade-area').first().waitFor(SEARCH);
    await readAndPrint('blend');
    await goTo(page, 'Begin');
    await page.locator('.begin-row').first().waitFor(SEARCH);
    await readAndPrint('begin');
    await goTo(page, 'Size');
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/\d/u);
    await page.locator('.map-isotherm').first().waitFor(SEARCH);
    await readAndPrint('size');
    await goTo(page, 'Build');
    await page.locator('.sheet-figure').first().waitFor(SEARCH);
    await readAndPrint('build');
    await goTo(page, 'Run length');
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/\d/u);
    await page
      .getByText(/of 10 runs/u)
      .first()
      .waitFor(SEARCH);
    await readAndPrint('run length');
    await goTo(page, 'Compare');
    await lead.waitFor();
    await page
      .getByRole('button', { name: /gentle/iu })
      .first()
      .click();
    await page.locator('table').first().waitFor(SEARCH);
    await readAndPrint('compare');
    await page.evaluate(() => (location.hash = '#lessons/tap-off'));
    await page.getByRole('button', { name: 'Next' }).click(SEARCH);
    await page.getByRole('button', { name: 'Reveal' }).click();
    await page.locator('.big-numbers').waitFor(SEARCH);
    await read('a lesson');
    await page.evaluate(() => (location.hash = '#lessons/side-by-side/hose'));
    await page.locator('.pair-numbers dd').first().waitFor(SEARCH);
    await read('two stills side by side');
    done();
  });

  test('at the still: sheet, start, pad, alarms, log, forecast and print', { timeout: 300_000 }, async () => {
    const { page, read, readAndPrint, done } = await openInBoth();
    const button = (name: string | RegExp) => page.getByRole('button', { name, exact: typeof name === 'string' });
    const { clock } = page.context();
    await clock.install();
    await goTo(page, 'At the still');
    await page.locator('.sheet-step').first().waitFor(SEARCH);
    await page.getByLabel('The receiver holds').fill('1');
    await readAndPrint('run sheet');
    await button(/^Start now/).click();
    await page.locator('.forecast-lines').waitFor({ timeout: 120_000 });
    await read('a run begun');
    for (const kind of [
      'Oil so far',
      'Outlet',
      'Tub',
      'Lid',
      'Distillate so far',
      'Water left in the pot',
      'Tap turned to',
    ]) {
      await button(kind).click();
      // Too much of anything: it is asked about, in the reader's units.
      for (const digit of ['9', '9', '9', '9']) await button(digit).click();
      await button(`Save ${kind.toLowerCase()}`).click();
      await read(`the pad, ${kind}`);
      // In the other units it is another value, which is asked about too.
      const save = button(`Save ${kind.toLowerCase()}`);
      while ((await save.count()) > 0) await save.click();
    }
    await button('First drop').first().click();
    await page.getByText('As of').waitFor({ timeout: 120_000 });
    await read('readings that nothing allows');
    // Hours later everything is due at once.
    await clock.fastForward(3 * 3_600_000);
    await page.locator('.ringing').filter({ hasText: 'Check the water' }).waitFor(SEARCH);
    await readAndPrint('a run, all alarms');
    await page.evaluate(() => (location.hash = '#compare'));
    await page.locator('.run-bar .ringing').waitFor(SEARCH);
    await read('the line of a run under way');
    done();
  });

  test('in the reference, but for equations and what is quoted', { timeout: 240_000 }, async () => {
    const { page, read, readAndPrint, done } = await openInBoth();
    await goTo(page, 'Reference');
    await page.getByRole('searchbox', { name: 'Look up' }).waitFor(SEARCH);
    await read('reference');
    for (const name of REFERENCES) {
      await page.evaluate((to) => (location.hash = `#reference/${to}`), name);
      await page.locator('.reference-sheet').waitFor(SEARCH);
      if (name.includes('-')) await page.waitForTimeout(200);
      await read(`reference ${name}`);
    }
    await readAndPrint('reference');
    done();
  });
});
