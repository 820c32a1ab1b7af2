/** Runs side by side in words, for both systems of units. */
import { describe, expect, test } from 'vitest';
import {
  compareRuns,
  comparisonMessages,
  englishReader,
  exampleScenario,
  simulate,
  toldComparison,
  wholeMessage,
  type CompareRow,
  type CompareRun,
  type Conclusion,
} from '../../../sim/index.ts';
import { plain } from './plain.ts';

const metric = comparisonMessages(englishReader('metric'));
const us = comparisonMessages(englishReader('us'));
const run = (name: string, number: number | null = null): CompareRun => ({ name, number, worst: null, cautions: [] });
const two = [run('Slow'), run('Fast')];
const told = (fact: Conclusion, runs = two, messages = metric) => plain(wholeMessage(messages.conclusion(fact, runs)));
const at = (index: number, value: number) => ({ run: index, value });

describe('a conclusion', () => {
  test.each<[Conclusion, string]>([
    [{ kind: 'oil-none' }, 'None of these runs collects any oil.'],
    [
      { kind: 'oil-alike', oil_mL: 10, basis: { kind: 'time', time_s: 7200 } },
      'In the same 2 h, all collect about the same oil, 10 mL.',
    ],
    [
      { kind: 'oil-alike', oil_mL: 10, basis: { kind: 'none', times_s: [11_160, 6720] } },
      'All collect about the same oil, 10 mL, in 1 h 52 min to 3 h 06 min.',
    ],
    [
      { kind: 'oil-differs', most: at(0, 36.24), least: at(1, 31.9), basis: { kind: 'water', water_kg: 2.9 } },
      'For the same 2.9 L of water distilled, “Slow” collects the most oil, 36 mL; “Fast” the least, 32 mL.',
    ],
    [
      { kind: 'oil-differs', most: at(0, 36.24), least: at(1, 31.9), basis: { kind: 'none', times_s: [11_160, 6720] } },
      '“Slow” collects the most oil, 36 mL in 3 h 06 min; “Fast” the least, 32 mL in 1 h 52 min.',
    ],
    [{ kind: 'time-unknown' }, 'Fewer than two of these runs collect oil, so there are no times to compare.'],
    [{ kind: 'time-alike', time_s: 3600 }, 'All have 90 % of their oil after about 1 h.'],
    [
      { kind: 'time-differs', soonest: at(1, 2400), latest: at(0, 5400) },
      '“Fast” has 90 % of its oil after 40 min, “Slow” after 1 h 30 min.',
    ],
    [
      { kind: 'cost-differs', cheapest: 0, dearest: 1, times: 1.5 },
      'A millilitre costs least in “Slow”. In “Fast” it takes 1.5 times as much money for energy and water.',
    ],
    [
      { kind: 'steam-differs', most: at(0, 8), least: at(1, 5) },
      'A litre of water distilled brings 8.0 mL of oil in “Slow” and 5.0 mL in “Fast”.',
    ],
    [
      { kind: 'make-up-differs', constituent: 'linalyl_acetate', most: at(0, 0.4), least: at(1, 0.045) },
      'The oils differ most in linalyl acetate: 40 % in “Slow”, 4.5 % in “Fast”.',
    ],
    [
      {
        kind: 'alarms',
        severity: 'alarm',
        runs: [{ run: 1, events: ['vapour-escapes', 'pot-dry', 'scorch'] }],
        all: false,
      },
      '“Fast” lets steam escape and runs the pot dry. Do not run it this way.',
    ],
    [
      {
        kind: 'alarms',
        severity: 'alarm',
        runs: [
          { run: 0, events: ['scorch'] },
          { run: 1, events: ['circuit-overloaded'] },
        ],
        all: true,
      },
      '“Slow” scorches the charge. “Fast” overloads the circuit. None of these runs is safe as set.',
    ],
  ])('is a plain sentence: %o', (fact, sentence) => expect(told(fact)).toBe(sentence));

  test('follows the reader’s units', () => {
    expect(told({ kind: 'steam-differs', most: at(0, 8), least: at(1, 5) }, two, us)).toBe(
      'A gallon of water distilled brings 30 mL of oil in “Slow” and 19 mL in “Fast”.',
    );
  });

  test('names runs of one name by their number, and a run without a name', () => {
    expect(told({ kind: 'cost-differs', cheapest: 1, dearest: 0, times: 2 }, [run('Twin', 1), run('', 2)])).toMatch(
      /least in “Untitled \(2\)”\. In “Twin \(1\)”/,
    );
  });
});

describe('the table', () => {
  const scenario = exampleScenario('class-glass');
  const brisk = (setting: number) =>
    simulate({
      ...scenario,
      heat: { ...scenario.heat, setting: [{ at_s: 0, value: setting, shape: 'step' }] },
      run: { ...scenario.run, duration_s: 3000 },
      advanced: { ...scenario.advanced, step_s: 5, segments: 12 },
    });
  const found = compareRuns([brisk(0.7), brisk(1)]);

  test('has no row that cannot be said, in both systems', () => {
    for (const messages of [metric, us]) {
      for (const row of found.rows) {
        const said = [
          messages.rowTitle(row),
          ...row.values.map((value) => messages.value(row, value)),
          ...row.differences.map((value) => messages.value(row, value, true)),
        ];
        expect(said.join(' ')).not.toMatch(/NaN|undefined/);
        for (const words of said.slice(1)) expect(words, row.id).toMatch(/\d|–/u);
        if (messages === us) expect(said.slice(1).join(' '), row.id).not.toMatch(/°C|\bL\b|\bkg\b|\bm\b/u);
      }
    }
    expect(metric.rowTitle({ id: 'share-limonene', constituent: 'limonene' })).toBe('d-limonene in the oil');
  });

  test('tells no difference that rounding would hide', () => {
    const row = (first: number | null, second: number): CompareRow => ({
      id: 'distillate',
      constituent: null,
      unit: 'kg',
      better: 'neither',
      values: [first, second],
      differences: first === null ? [null, null] : [0, second - first],
    });
    expect(metric.difference(row(7.7, 7.70047), 1)).toBe('the same');
    expect(plain(metric.difference(row(7.7, 6.7), 1))).toBe('−1.0 L');
    expect(plain(metric.value({ id: 'oilPerSteam', unit: 'mL/kg' }, 10))).toBe('10.0 mL/L');
    expect(plain(us.value({ id: 'oilPerSteam', unit: 'mL/kg' }, 10))).toBe('37.9 mL/gal');
    expect(plain(us.value({ id: 'distillateWarmest', unit: '°C' }, 10, true))).toBe('+18.0 °F');
    expect(metric.difference(row(null, 1), 1)).toBe('–');
  });

  test('is saved and printed with its facts and its words', () => {
    const saved = toldComparison(found, englishReader('us'));
    expect(saved.conclusion.map(({ kind }) => kind)).toEqual(found.conclusion.map(({ kind }) => kind));
    expect(saved.conclusion.map(wholeMessage)).toEqual(us.conclusions(found));
    expect(saved.rows[0]).toMatchObject({ id: 'oil', title: 'Oil collected', values: found.rows[0]?.values });
  });
});
