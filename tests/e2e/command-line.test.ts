/** The command line gives the numbers that the page shows: what the page saves is asked of the commands again. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { UNCERTAIN_IDS } from '../../sim/answers/ensemble/factors.ts';
import { answerTo } from '../../sim/cli/answer.ts';
import {
  bedRoom,
  englishReader,
  openingExample,
  quantities,
  readScenario,
  type QuantityAnswer,
} from '../../sim/index.ts';
import { DRAWS, openAnswer, SEARCH } from './answers-page.ts';
import { downloaded, enter } from './bench-page.ts';
import { openPage } from './open-page.ts';

const folder = mkdtempSync(join(tmpdir(), 'limbeck-page-'));
afterAll(() => rmSync(folder, { recursive: true }));
const written = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};

type Json = Readonly<Record<string, unknown>>;
const answered = (...args: string[]): Json => JSON.parse(answerTo(args)) as Json;

/**
 * Every number of `found` against its fellow, to nine digits: engines differ in the last bits of a logarithm. A
 * difference of like numbers is looked at to a thousand-millionth of its unit, as those bits are most of it.
 */
function expectSame(found: unknown, saved: unknown, at: string): void {
  if (typeof found === 'number' && typeof saved === 'number') {
    expect(Math.abs(found - saved), at).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(saved)));
  } else if (typeof found === 'object' && found !== null && typeof saved === 'object' && saved !== null) {
    expect(Object.keys(found), at).toEqual(Object.keys(saved));
    for (const [key, value] of Object.entries(found)) expectSame(value, (saved as Json)[key], `${at}.${key}`);
  } else expect(found, at).toEqual(saved);
}

const LOG =
  'time (min), oil (mL), outlet (°C)\n30, 2.6, 24\n40, 8.2, 26.5\n50, 13.4, 27\n60, 17.6, 28\n75, 22.8, 30\n90, 26.1, 31\n120, 29.6, 34';

describe('page and command line agree', () => {
  test('on how long to run, as both ask when nobody sets anything, and on the likely runs of a seed', async () => {
    const { page, lead } = await openAnswer('run-length');
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/^Half of the/);
    await enter(page.getByRole('textbox', { name: 'Runs', exact: true }), '10');
    await enter(page.getByRole('textbox', { name: 'Seed', exact: true }), '7');
    await page.getByRole('button', { name: /Start again|Run again/ }).click();
    await page.getByText('out of 10 random runs.').waitFor(SEARCH);
    // The typical run, each uncertain value alone at both ends, and the random ones.
    const all = 1 + 2 * UNCERTAIN_IDS.length + 10;
    await expect
      .poll(() => page.locator('.answer-progress-words').textContent(), SEARCH)
      .toMatch(new RegExp(`^${all} of ${all} `, 'u'));
    await page.getByRole('button', { name: /^Stop with/ }).waitFor({ ...SEARCH, state: 'detached' });
    const { text } = await downloaded(page, () =>
      page.getByRole('button', { name: 'Save JSON of how long to run' }).click(),
    );
    const saved = JSON.parse(text) as { scenario: Json; length: Json; advice: Json; likely: Json };
    const found = answered(
      'predict',
      written('length.json', JSON.stringify(saved.scenario)),
      '--runs',
      '10',
      '--seed',
      '7',
    );
    expectSame(found['length'], saved.length, 'length');
    expectSame(found['advice'], saved.advice, 'advice');
    const likely = found['likely'] as Json;
    for (const name of [
      'seed',
      'members',
      'doubts',
      'headline',
      'asPlanned',
      'influences',
      'times_s',
      'oil_mL',
      'recovery',
    ])
      expectSame(likely[name], saved.likely[name], name);
  });

  test('on a gentle boil against a hard one', async () => {
    const { page, lead } = await openAnswer('compare');
    await page.getByRole('button', { name: 'Gentle against hard' }).click();
    await expect.poll(() => lead.textContent(), SEARCH).toMatch(/collects the most oil/);
    await expect.poll(() => lead.textContent(), DRAWS).toMatch(/Take “/);
    const { text } = await downloaded(page, () =>
      page.getByRole('button', { name: 'Save JSON of the comparison' }).click(),
    );
    const saved = JSON.parse(text) as { scenarios: Json[]; conclusion: Json[]; rows: Json[]; recommendation: Json };
    const found = answered('compare', 'gentle-lavender', '--gentle-against-hard');
    expectSame(found['conclusion'], saved.conclusion, 'conclusion');
    expectSame(found['rows'], saved.rows, 'rows');
    expectSame(found['recommendation'], saved.recommendation, 'recommendation');
    expectSame(Object.values(found['scenarios'] as Json), saved.scenarios, 'scenarios');
  });

  test('on the fit of a log', async () => {
    const { page } = await openAnswer('run-book');
    await page.getByRole('button', { name: 'New log' }).click();
    await page.getByText('Paste columns from a note').click();
    await page.getByRole('textbox', { name: /A line of headings/ }).fill(LOG);
    await page.getByRole('button', { name: 'Take these lines' }).click();
    await page.getByRole('button', { name: 'Fit', exact: true }).click();
    await page.getByRole('region', { name: /^Fitted factors/ }).waitFor(SEARCH);
    const { text } = await downloaded(page, () => page.getByRole('button', { name: 'Save JSON of the fit' }).click());
    const saved = JSON.parse(text) as { calibration: Json; fitted: Json };
    const file = written('fit.json', text);
    const found = answered('fit', 'gentle-lavender', '--log', written('log.csv', LOG));
    for (const name of ['factors', 'residuals', 'correlation', 'reducedChiSquare', 'notes'])
      expectSame(found[name], saved.calibration[name], name);
    expectSame(found['fitted'], saved.fitted, 'fitted');
    expectSame(
      answered('predict', 'gentle-lavender', '--runs', '0', '--fit', file)['length'],
      answered('predict', written('fitted.json', JSON.stringify(saved.fitted['scenario'])), '--runs', '0')['length'],
      'predicted',
    );
  });

  test('on plant, bottles and drops', async () => {
    const { page } = await openPage('#plants');
    const q = quantities(englishReader('metric'));
    const read = readScenario(openingExample.scenario);
    if (!read.ok) throw new Error('the opening example cannot be read');
    const { pot } = read.scenario;
    const chamber_L = String(1000 * bedRoom(pot));
    const asked = ['quantity', 'lavender-true', '--state', 'fresh', '--chamber', chamber_L, '--oil', '50'];
    const plan = answered(...asked) as unknown as QuantityAnswer;
    const lead = page.locator('.how-much .answer-lead');
    await expect
      .poll(() => lead.textContent(), SEARCH)
      .toContain(
        `take ${q.mass(plan.plant_kg.typical)} (${q.mass(plan.plant_kg.low)}–${q.mass(plan.plant_kg.high)}) of plant`,
      );
    const told = await page.locator('.how-much-answer').innerText();
    expect(told).toContain(`${q.mass(plan.perBatch_kg)}, in the`);
    expect(told).toMatch(new RegExp(`Batches\\s+${plan.batches.typical} \\(`, 'u'));

    await page.evaluate(() => (location.hash = '#bottling'));
    await page.getByRole('radio', { name: 'another oil' }).check();
    await page.getByRole('radio', { name: 'through paper' }).check();
    const bottled = answered('bottle', 'lavender-true', '--oil', '30', '--filter', 'paper') as unknown as {
      bottles: { full: number; last_m3: number };
    };
    const { full, last_m3 } = bottled.bottles;
    const bottles = page.getByText(`and a last one with ${q.oilVolume(last_m3)}`);
    await bottles.waitFor(SEARCH);
    expect(await bottles.textContent()).toMatch(new RegExp(`^${full} full bottles`, 'u'));
  });
});
