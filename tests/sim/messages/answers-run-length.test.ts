/** How long to run in words, for both systems of units. */
import { describe, expect, test } from 'vitest';
import {
  englishReader,
  HEADLINE_NAMES,
  OIL_SHARES,
  runLengthMessages,
  toldRunLength,
  toldUncertain,
  uncertainties,
  exampleScenario,
  type CarriedOnRun,
  type EnsembleSummary,
  type Spent,
  type StopAdvice,
} from '../../../sim/index.ts';
import { plain } from './plain.ts';

const metric = runLengthMessages(englishReader('metric'));
const us = runLengthMessages(englishReader('us'));

const spent = (time_s: number, oil_mL: number): Spent => ({
  time_s,
  oil_kg: oil_mL * 9e-4,
  oil_mL,
  distillate_L: 1,
  coolantUsed_L: 20,
  potWaterLeft_kg: 4,
  energy_J: 3.6e6,
  energyCost: 0.3,
  waterCost: 0.1,
  cost: 0.4,
});
const run = (times: readonly (number | null)[], obtainable_mL = 10): CarriedOnRun => ({
  end_s: 9000,
  length: {
    obtainable_kg: 0.009,
    obtainable_mL,
    stillToCome_kg: 0,
    ranOut: true,
    shares: OIL_SHARES.map((share, index) => {
      const time = times[index] ?? null;
      return { share, at: time === null ? null : spent(time, 10 * share) };
    }),
  },
});
const advice: StopAdvice = {
  rule: { kind: 'share', share: 0.9 },
  stop: spent(6720, 9),
  minute: 112,
  share: 0.9,
  lastTenMinutes_mL: 0.4,
  costOfNext: 0.35,
  potLasts: true,
  potLow_s: null,
  coolingLasts: true,
  escapes_s: null,
  coolantThen_K: 317,
};

describe('how long to run', () => {
  test('tells when half and 90 % of the oil are collected', () => {
    expect(plain(metric.lead(run([2700, 4000, 6720, 7500, 9000])))).toBe(
      'Half of the 10 mL of oil that can come is collected by 45 min, 90 % by 1 h 52 min.',
    );
    expect(plain(metric.lead(run([2700, 4000, null])))).toBe(
      'Half of the 10 mL of oil that can come is collected by 45 min. Even a run to 2 h 30 min does not reach 90 %.',
    );
    expect(plain(metric.lead(run([null])))).toBe(
      'Even a run to 2 h 30 min collects less than half of the 10 mL of oil that can come.',
    );
    expect(metric.lead(run([null], 0))).toBe('No oil comes over in this run.');
    expect(us.lead(run([2700, 4000, 6720]))).toBe(metric.lead(run([2700, 4000, 6720])));
  });

  test('tells where the planned run ends, why, and what is collected by then', () => {
    const ends = (more: Partial<Parameters<typeof metric.plan>[1]>) =>
      plain(metric.plan(run([2700]), { end_s: 7000, endReason: 'duration', oilCollected_mL: 9.97, ...more }));
    expect(ends({})).toBe('The planned run ends at 1 h 57 min, with 10 mL collected: 99 % of the oil that can come.');
    expect(ends({ endReason: 'pot-dry', end_s: 3300, oilCollected_mL: 8 })).toBe(
      'The planned run ends at 55 min because the pot runs dry, with 8.0 mL collected: 80 % of the oil that can come.',
    );
    expect(ends({ oilCollected_mL: 0 })).toContain('before any oil is collected');
    expect(metric.plan(run([], 0), { end_s: 600, endReason: 'duration', oilCollected_mL: 0 })).toBe(null);
  });
});

describe('when to stop', () => {
  test('is told with what going on would cost, and whether water and cooling last', () => {
    const { sentences, dangers } = metric.stop(advice);
    expect(sentences.map(plain)).toEqual([
      'Stop at 1 h 52 min: 9.0 mL is collected, 90 % of the oil that can come.',
      'The ten minutes before bring 0.40 mL.',
      'The next millilitre costs 0.35 in energy and water.',
      'The pot has enough water until then.',
      'All the steam condenses until then.',
    ]);
    expect(dangers).toEqual([]);
  });

  test('tells what forbids it', () => {
    const dry: StopAdvice = {
      ...advice,
      stop: null,
      minute: null,
      potLasts: false,
      potLow_s: 5400,
      coolingLasts: false,
      escapes_s: 3840,
    };
    const { sentences, dangers } = metric.stop(dry);
    expect(sentences).toEqual(['This run never reaches that share, even when it is run on.']);
    expect(dangers.map(({ sentence }) => plain(sentence))).toEqual([
      'The pot’s water runs low at 1 h 30 min. A pot that runs dry burns the plant and can be ruined.',
      'Steam escapes from 1 h 04 min. It scalds, and oil is lost.',
    ]);
    expect(dangers.map((danger) => danger.advice)).toEqual([
      'Fill in more water, or stop before that.',
      'Use less heat, more cooling water or a longer tube.',
    ]);
    expect(toldRunLength({ ...run([2700]), advice: dry }, englishReader('us'))).toMatchObject({
      length: { sentence: us.lead(run([2700])), obtainable_mL: 10 },
      advice: { minute: null, dangers, sentence: sentences[0] },
    });
    expect(toldRunLength(null, englishReader('us'))).toEqual({ length: null, advice: null });
  });

  test('is the full minute after the rule is met, and keeps quiet of money that is none', () => {
    const { sentences } = metric.stop({ ...advice, stop: spent(6670, 9), costOfNext: 0 });
    expect(plain(sentences[0] ?? '')).toContain('Stop at 1 h 52 min, the first full minute after your rule is met:');
    expect(sentences.join(' ')).not.toContain('cost');
    expect(metric.stop({ ...advice, stop: null, minute: null, share: 0 }).sentences[0]).toBe(
      'No oil comes over in this run.',
    );
  });
});

describe('the likely runs', () => {
  const band = (p10: number, p50: number, p90: number) => ({ p10, p50, p90 });

  test('are told as a range, as one number where nearly all share it, and as too short where the tube is', () => {
    expect(plain(metric.band('oil_mL', band(19, 33, 51), 1.5).range)).toBe('19 mL to 51 mL');
    expect(metric.band('coolantUsed_kg', band(43, 43, 43), 1.5).range).toBe('in nearly all runs');
    expect(metric.band('coolantUsed_kg', band(0, 0, 0), 1.5)).toEqual({ middle: 'none', range: null });
    expect(plain(metric.band('condensingLength_m', band(0.9, 1.5, 1.5), 1.5).range)).toBe('0.90 m to over 1.50 m');
    expect(plain(us.band('condensingLength_m', band(0.9, 1.5, 1.5), 1.5).range)).toBe('2 ft 11 in to over 4 ft 11 in');
  });

  test('tell no time to 90 % of a run that ends before', () => {
    const number = (p10: number, p90: number) => ({ p10, p50: p10, p90, counted: 20, of: 20 });
    const summary = (finished: number) =>
      ({ finished, headline: { oil_mL: number(2, 7), t90_s: number(3600, 5400) } }) as unknown as EnsembleSummary;
    expect(plain(metric.spread(summary(20), true))).toBe(
      '8 of 10 runs give 2.0 mL to 7.0 mL of oil, 90 % of it by 1 h to 1 h 30 min.',
    );
    expect(plain(metric.spread(summary(20), false))).toBe('8 of 10 runs give 2.0 mL to 7.0 mL of oil by their end.');
    expect(metric.spread(summary(9), true)).toBe(null);
  });

  test('have every headline number in the reader’s units, and a dash for what never came', () => {
    expect(plain(metric.headlineValue('oil_mL', 10))).toBe('10 mL');
    expect(plain(us.headlineValue('distillateWarmest_K', 303.15))).toBe('86 °F');
    expect(plain(us.headlineValue('coolantUsed_kg', 43))).toBe('11 gal');
    for (const name of HEADLINE_NAMES) {
      expect(metric.headlineValue(name, null), name).toBe('–');
      expect(us.headlineValue(name, 1), name).not.toMatch(/°C|\bL\b|\bm\b|kg/);
    }
    expect(new Set(HEADLINE_NAMES.map(metric.headline)).size).toBe(HEADLINE_NAMES.length);
  });

  test('name every uncertain value and where its range comes from', () => {
    const told = toldUncertain(
      uncertainties(exampleScenario('gentle-lavender'), { fouling: { low: 0.5, high: 2, origin: 'fit' } }),
      englishReader('metric'),
    );
    expect(new Set(told.map(({ title }) => title)).size).toBe(told.length);
    expect(told.find(({ id }) => id === 'oilContent')?.sentence).toMatch(/^library, low and high .*: .{20}/);
    expect(told.find(({ id }) => id === 'heatLoss')?.sentence).toMatch(/^judgement: /);
    expect(told.find(({ id }) => id === 'dropSize')?.sentence).toMatch(/^assumption: /);
    expect(told.find(({ id }) => id === 'fouling')?.sentence).toMatch(/^fit to logged readings/);
  });
});
