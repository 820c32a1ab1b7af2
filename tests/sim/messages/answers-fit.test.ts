/** Logs and fits in words, for both systems of units. */
import { describe, expect, test } from 'vitest';
import {
  englishReader,
  FIT_NAMES,
  fitMessages,
  readPoints,
  toldFit,
  type CalibrationProblem,
  type Fit,
  type FitNote,
  type FittedFactor,
} from '../../../sim/index.ts';
import { plain } from './plain.ts';

const metric = fitMessages(englishReader('metric'));
const us = fitMessages(englishReader('us'));

const factor = (more: Partial<FittedFactor>): FittedFactor => ({
  name: 'oilContent',
  start: 1,
  value: 0.8,
  low: 0.7,
  high: 0.9,
  held: false,
  ...more,
});
const fit = (factors: readonly FittedFactor[], reducedChiSquare = 1, notes: readonly FitNote[] = []): Fit => ({
  ok: true,
  factors,
  residuals: Array.from({ length: 7 }, (_, point) => ({
    log: 0,
    point,
    kind: 'oil_mL',
    time_s: 60 * point,
    value: 1,
    sigma: 1,
    predicted: 1,
    scaled: 0,
  })),
  chiSquare: 1,
  degreesOfFreedom: 5,
  reducedChiSquare,
  correlation: [],
  alike: [],
  converged: true,
  runs: 9,
  notes,
});

describe('a fit', () => {
  test('tells what the readings show, and what to log for what they do not', () => {
    expect(plain(metric.lead(fit([factor({})])))).toBe(
      '7 readings give oil content × 0.80. The model then follows the readings within their uncertainty.',
    );
    expect(metric.lead(fit([factor({}), factor({ name: 'release', low: 0.2, high: 4 })]))).toMatch(
      /These readings do not show the speed of release\. Add readings of oil collected/,
    );
    expect(metric.lead(fit([factor({ held: true })]))).toBe(
      'These readings do not show the oil content. Add readings of oil collected, up to the end of the run.',
    );
    expect(metric.lead(fit([factor({})], 9))).toContain('still misses');
  });

  test('tells what a factor means in the shed', () => {
    expect(plain(metric.meaning(factor({})))).toBe('80 % of the oil that was expected in the plant');
    expect(plain(metric.meaning(factor({ value: 1.5 })))).toContain('1.50 times');
    expect(metric.meaning(factor({ value: 1.01 }))).toBe('much as it was');
    expect(metric.meaning(factor({ held: true }))).toContain('do not show');
    expect(metric.interval(factor({}))).toBe('0.70 to 0.90');
    expect(new Set(FIT_NAMES.map(metric.factorTitle)).size).toBe(FIT_NAMES.length);
    for (const name of FIT_NAMES)
      expect(metric.factorHelp(name)).toMatch(/^Multiplies the .*\. 1 means no correction\.$/);
  });

  test.each<[FitNote, string]>([
    [
      { kind: 'not-shown', factor: 'fouling', held: 1 },
      'These readings do not show the scale in the tube: doubling it changes nothing in them. It stays at 1.00.',
    ],
    [
      { kind: 'alike', names: ['oilContent', 'release'], correlation: -0.984 },
      'These readings cannot tell the oil content from the speed of release: more of one with less of the other fits them as well (correlation −0.98). Fit one of them alone, or log more: the first minutes, and on until little oil comes.',
    ],
    [
      { kind: 'mixture', factors: ['oilContent', 'release', 'heatLoss'] },
      'These readings show only a mixture of the oil content, the speed of release and the heat loss. Fit fewer at a time.',
    ],
    [
      { kind: 'at-limit', factor: 'oilContent', value: 10 },
      'Oil content went to the end of its range, 10.00. Something else differs between still and model.',
    ],
    [
      { kind: 'misses', times: 2.34 },
      'The model misses the readings by about 2.3 times their uncertainty. The intervals are wider by as much.',
    ],
    [
      { kind: 'thinned', readings: 20000, means: 300 },
      '20000 readings are many for a fit. They were drawn together into 300 means, each as sure as the readings in it.',
    ],
    [{ kind: 'few-readings', spare: 2 }, 'Few readings are left over, so the intervals are wide. Log more of them.'],
    [{ kind: 'unfinished' }, 'The fit was stopped before it settled. Take it as a first guess and fit again from it.'],
  ])('has a note: %o', (note, sentence) => expect(plain(metric.note(note))).toBe(sentence));

  test.each<[CalibrationProblem, string]>([
    [{ kind: 'factor-count', count: 4, most: 3 }, 'Choose 1 to 3 factors to fit, not 4.'],
    [
      { kind: 'too-few-readings', readings: 3, factors: 2, needed: 4 },
      '3 readings are too few to find 2 factors. Log at least 4.',
    ],
    [
      { kind: 'too-few-readings', readings: 1, factors: 1, needed: 3 },
      '1 reading is too few to find 1 factor. Log at least 3.',
    ],
    [
      { kind: 'nothing-shown', factors: ['condensingFilm', 'coolantFilm'] },
      'These readings do not show the heat transfer on the steam side or the heat transfer on the water side. Add readings of the outlet temperature.',
    ],
    [
      { kind: 'bad-reading', line: 1, reading: 'oil_mL', time_s: -3, value: 3, sigma: 0.2 },
      'Line 1, oil by volume: 3.0 mL at −3 s cannot be. Times and readings must be numbers from zero up.',
    ],
    [
      { kind: 'bad-uncertainty', line: 2, reading: 'tub_K', time_s: 3, value: 300, sigma: 0 },
      'Line 2, tub: the uncertainty must be above zero.',
    ],
    [
      { kind: 'broke-off', variable: 'pot-water', time_s: 720 },
      'The calculation failed at 12 min, so nothing can be fitted. Undo the last change to the still.',
    ],
  ])('is refused with its reason: %o', (problem, sentence) => expect(plain(metric.refusal(problem))).toBe(sentence));

  test('is saved and printed with its facts and its words', () => {
    const told = toldFit(fit([factor({})], 9, [{ kind: 'misses', times: 3 }]), englishReader('metric'));
    expect(told.notes).toEqual([
      { kind: 'misses', times: 3, sentence: expect.stringContaining('3.0 times') as string },
    ]);
    expect(told.factors[0]).toMatchObject({ name: 'oilContent', title: 'Oil content', value: 0.8 });
  });

  test('tells how sure readings are taken to be, by the numbers that weigh them', () => {
    const said = metric.uncertainties().map(plain);
    expect(said).toHaveLength(5);
    expect(said[0]).toMatch(/^Oil by volume: 0\.20 mL and 3 % \(judgement: /);
    expect(said[2]).toMatch(/^Outlet: 2\.0 °C \(/);
    expect(us.uncertainties().map(plain)[2]).toMatch(/^Outlet: 3\.6 °F \(/);
  });
});

describe('what cannot be read of a log', () => {
  const messages = (text: string) => readPoints(text).problems.map(metric.pointsProblem);

  test('is told line by line', () => {
    expect(messages('time (min);oil (mL);tub (C)\n10;1\n20;two\n;3\n30;\n-5;1\n5;;-300')).toEqual([
      'Line 3: “two” is not a number.',
      'Line 4: The time is missing.',
      'Line 5: There is a time but no reading.',
      'Line 6: -5 is below zero.',
      'Line 7: -300 is below absolute zero.',
    ]);
    expect(metric.lineProblem({ line: 3, kind: 'not-a-number', cell: 'two' })).toBe('“two” is not a number.');
  });

  test('is told of the headings', () => {
    expect(messages('time (min);oil (drops)\n10;3')[0]).toBe(
      'Headings: the unit “drops” of “oil” is not known. Known are ml, cm3, cc, l, floz, kg, g, oz, lb.',
    );
    expect(messages('weather;oil\n1;2')).toEqual(['Headings: no column is the time. Call one “time (min)”.']);
    expect(messages('time;weather\n1;2')).toEqual([
      'Headings: no column is a reading. Known are oil, distillate, outlet and tub.',
    ]);
    expect(messages('time;oil (mL);oil (mL)\n1;2;3')).toEqual([
      'Headings: two columns are oil by volume. The later one counts.',
    ]);
    expect(messages(' \n\n')).toEqual(['There is nothing to read. Give a line of headings, then one line a reading.']);
    expect(metric.otherOil({ kept: 'mL', weighed: true })).toBe(
      'This log keeps its oil in mL. Oil measured by weight was not taken.',
    );
  });
});
