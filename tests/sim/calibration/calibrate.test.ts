import { MOST_OF_A_KIND, readingsOf, thinned } from '../../../sim/answers/calibration/readings.ts';
import { describe, expect, it } from 'vitest';
import { predictedReading } from '../../../sim/answers/calibration/readings.ts';
import { normalScore, Xoshiro128 } from '../../../sim/answers/ensemble/random.ts';
import {
  bandsOfFit,
  calibrate,
  calibrateTogether,
  DEFAULT_UNCERTAINTY,
  exampleScenario,
  fittedScenario,
  readScenario,
  simulate,
  type Fit,
  type FitName,
  type LoggedPoint,
  type ReadingKind,
  type Scenario,
} from '../../../sim/index.ts';

/** An example at four-second steps, so that many fits take little time. */
const brisk = (id: string): Scenario => {
  const example = exampleScenario(id);
  return { ...example, advanced: { ...example.advanced, step_s: 4, segments: 30 } };
};
const scenario = brisk('gentle-lavender');
const MINUTES = [28, 32, 36, 40, 45, 50, 60, 70, 80, 90, 105, 120];

/** What someone would log of a still whose factors differ from the model, with noise of the stated size. */
function logged(
  truth: Partial<Scenario['factors']>,
  kinds: readonly ReadingKind[],
  minutes: readonly number[],
  seed: number,
  noise = 1,
  of = scenario,
): LoggedPoint[] {
  const result = simulate({ ...of, factors: { ...of.factors, ...truth } });
  const chance = Xoshiro128.fromSeed(seed);
  return minutes.map((minute) => ({
    time_s: minute * 60,
    ...Object.fromEntries(
      kinds.map((kind) => {
        const exact = predictedReading(result, { kind, time_s: minute * 60 });
        const { absolute, relative } = DEFAULT_UNCERTAINTY[kind];
        return [
          kind,
          Math.max(0, exact + noise * Math.hypot(absolute, relative * exact) * normalScore(chance.share())),
        ];
      }),
    ),
  }));
}

const fitOf = (points: readonly LoggedPoint[], names: readonly FitName[], of = scenario): Fit => {
  const found = calibrate(of, points, names);
  if (!found.ok) throw new Error(found.problem.kind);
  return found;
};
const factor = (fit: Fit, name: FitName) => fit.factors.find((entry) => entry.name === name) as Fit['factors'][number];

const points = logged({ oilContent: 1.3, release: 0.7 }, ['oil_mL'], MINUTES, 5);
const fit = fitOf(points, ['oilContent', 'release']);

describe('a fit to made-up logs', () => {
  it('finds oil content and release within its own 90 % intervals', () => {
    for (const [name, truth] of [
      ['oilContent', 1.3],
      ['release', 0.7],
    ] as const) {
      const found = factor(fit, name);
      expect(found.low, name).toBeLessThan(truth);
      expect(found.high, name).toBeGreaterThan(truth);
      expect(found.value / truth, name).toBeGreaterThan(0.93);
      expect(found.value / truth, name).toBeLessThan(1.07);
      expect(found.held).toBe(false);
    }
    expect(fit.converged).toBe(true);
    expect(fit.notes).toEqual([]);
    expect(fit.alike).toEqual([]);
  });

  it('returns as many residuals as readings, their squares adding to chi square, of the order of the degrees of freedom', () => {
    expect(fit.residuals).toHaveLength(MINUTES.length);
    expect(fit.residuals.reduce((sum, { scaled }) => sum + scaled * scaled, 0)).toBeCloseTo(fit.chiSquare, 6);
    expect(fit.degreesOfFreedom).toBe(MINUTES.length - 2);
    expect(fit.reducedChiSquare).toBeGreaterThan(0.2);
    expect(fit.reducedChiSquare).toBeLessThan(2.5);
  });

  it('gives the same bits again', () => expect(fitOf(points, ['oilContent', 'release'])).toEqual(fit));

  it('gets there from another start', () => {
    const elsewhere = { ...scenario, factors: { ...scenario.factors, oilContent: 0.6, release: 2 } };
    const again = fitOf(points, ['oilContent', 'release'], elsewhere);
    expect(factor(again, 'oilContent').value / factor(fit, 'oilContent').value).toBeCloseTo(1, 1);
    expect(factor(again, 'release').value / factor(fit, 'release').value).toBeCloseTo(1, 1);
    expect(again.chiSquare).toBeLessThan(1.05 * fit.chiSquare + 0.05);
  });

  it('finds exact logs almost exactly', () => {
    const exact = fitOf(logged({ oilContent: 0.8, release: 1.5 }, ['oil_mL'], MINUTES, 1, 0), [
      'oilContent',
      'release',
    ]);
    expect(factor(exact, 'oilContent').value).toBeCloseTo(0.8, 2);
    expect(factor(exact, 'release').value / 1.5).toBeCloseTo(1, 1);
    expect(exact.reducedChiSquare).toBeLessThan(0.05);
  });

  it('finds the heat loss from weighed distillate', () => {
    const found = factor(fitOf(logged({ heatLoss: 1.6 }, ['distillate_kg'], MINUTES, 8), ['heatLoss']), 'heatLoss');
    expect(found.low).toBeLessThan(1.6);
    expect(found.high).toBeGreaterThan(1.6);
    expect(found.high / found.low).toBeLessThan(1.6);
  });

  it('finds the coolant film of a short jacket from the distillate’s temperature', () => {
    const jacket = brisk('rosemary-jacket');
    const short: Scenario = { ...jacket, condenser: { ...jacket.condenser, length_m: 1.4 } };
    const found = factor(
      fitOf(
        logged({ coolantFilm: 0.8 }, ['outlet_K'], [40, 44, 48, 60, 75, 90, 105, 120], 3, 1, short),
        ['coolantFilm'],
        short,
      ),
      'coolantFilm',
    );
    expect(found.low).toBeLessThan(0.8);
    expect(found.high).toBeGreaterThan(0.8);
    expect(found.high / found.low).toBeLessThan(2.5);
  });

  it('covers the truth about as often as it claims, over many seeded logs', () => {
    const quick = brisk('class-glass');
    let covered = 0;
    for (let seed = 1; seed <= 10; seed++) {
      const found = factor(
        fitOf(logged({ oilContent: 1.4 }, ['oil_mL'], [25, 30, 40, 50, 60, 70], seed, 1, quick), ['oilContent'], quick),
        'oilContent',
      );
      if (found.low <= 1.4 && found.high >= 1.4) covered++;
    }
    expect(covered).toBeGreaterThanOrEqual(7);
  });
});

describe('a fit that the readings cannot bear', () => {
  it('says politely that two factors cannot be told apart', () => {
    const fit = fitOf(logged({ oilContent: 1.3, release: 0.7 }, ['oil_mL'], [30, 34, 38, 42], 5), [
      'oilContent',
      'release',
    ]);
    expect(Math.abs(fit.correlation[0]?.[1] as number)).toBeGreaterThan(0.95);
    expect(fit.notes).toEqual([
      { kind: 'alike', ...fit.alike[0] },
      { kind: 'few-readings', spare: 2 },
    ]);
    expect(fit.alike).toEqual([{ names: ['oilContent', 'release'], correlation: fit.correlation[0]?.[1] }]);
  });

  it('holds a factor that does not show and says so, and fits the rest', () => {
    const fit = fitOf(logged({ release: 0.7 }, ['oil_mL'], MINUTES, 5), ['fouling', 'release']);
    expect(factor(fit, 'fouling')).toMatchObject({ held: true, value: 1 });
    expect(fit.notes).toContainEqual({ kind: 'not-shown', factor: 'fouling', held: 1 });
    expect(fit.correlation).toHaveLength(1);
    expect(fittedScenario(scenario, fit).factors.fouling).toBe(1);
  });

  it('refuses when none of the factors shows', () => {
    expect(calibrate(scenario, logged({}, ['oil_mL'], MINUTES, 5), ['condensingFilm', 'coolantFilm'])).toEqual({
      ok: false,
      problem: { kind: 'nothing-shown', factors: ['condensingFilm', 'coolantFilm'] },
    });
  });

  it('refuses too few readings, and tells how many it takes', () => {
    const few = logged({}, ['oil_mL'], [40, 60, 80], 5);
    expect(calibrate(scenario, few, ['oilContent', 'release'])).toEqual({
      ok: false,
      problem: { kind: 'too-few-readings', readings: 3, factors: 2, needed: 4 },
    });
    expect(calibrate(scenario, few.slice(0, 1), ['oilContent'])).toEqual({
      ok: false,
      problem: { kind: 'too-few-readings', readings: 1, factors: 1, needed: 3 },
    });
    expect(calibrate(scenario, [], ['oilContent']).ok).toBe(false);
  });

  it('refuses more than three factors, and none', () => {
    expect(calibrate(scenario, [], ['oilContent', 'release', 'heatLoss', 'fouling'])).toMatchObject({
      problem: { kind: 'factor-count', count: 4, most: 3 },
    });
    expect(calibrate(scenario, [], [])).toMatchObject({ problem: { kind: 'factor-count', count: 0, most: 3 } });
  });

  it('refuses readings and uncertainties that cannot be', () => {
    expect(calibrate(scenario, [{ time_s: -3, oil_mL: 3 }], ['release'])).toMatchObject({
      problem: { kind: 'bad-reading', line: 1, reading: 'oil_mL', time_s: -3, value: 3 },
    });
    expect(calibrate(scenario, [{ time_s: 3, oil_mL: NaN }], ['release']).ok).toBe(false);
    expect(
      calibrate(scenario, [{ time_s: 3, oil_mL: 3 }], ['release'], { oil_mL: { absolute: 0, relative: 0 } }),
    ).toMatchObject({ problem: { kind: 'bad-uncertainty', sigma: 0 } });
  });

  it('says when a factor ran to the end of its range, and when the model misses the readings', () => {
    const fit = fitOf(
      MINUTES.map((minute) => ({ time_s: minute * 60, oil_mL: 6 * minute })),
      ['oilContent'],
    );
    expect(fit.notes).toContainEqual({ kind: 'at-limit', factor: 'oilContent', value: 10 });
    expect(factor(fit, 'oilContent')).toMatchObject({ value: 10, high: 10 });
    expect(readScenario(fittedScenario(scenario, fit)).ok).toBe(true);
    expect(fit.notes).toContainEqual({ kind: 'misses', times: Math.sqrt(fit.reducedChiSquare) });
  });
});

describe('what follows from a fit', () => {
  it('is a scenario with the found factors and nothing else changed', () => {
    const fitted = fittedScenario(scenario, fit);
    expect(fitted).toEqual({
      ...scenario,
      factors: {
        ...scenario.factors,
        oilContent: factor(fit, 'oilContent').value,
        release: factor(fit, 'release').value,
      },
    });
  });

  it('is a narrower ensemble', () => {
    const bands = bandsOfFit(fit);
    const { value, low, high } = factor(fit, 'oilContent');
    expect(bands.oilContent).toMatchObject({ low: low / value, high: high / value });
    expect(bands.heldRate).toEqual(bands.takeUp);
    expect(Object.keys(bands).sort()).toEqual(['heldRate', 'oilContent', 'takeUp']);
  });
});

describe('a fit of several runs together', () => {
  const truth = { oilContent: 1.25, release: 0.8 } as const;
  const small: Scenario = { ...scenario, charge: { ...scenario.charge, mass_kg: 0.6 * scenario.charge.mass_kg } };
  const few = [32, 45, 60, 90];
  const one = { scenario, points: logged(truth, ['oil_mL'], few, 11) };
  const other = { scenario: small, points: logged(truth, ['oil_mL'], few, 12, 1, small) };

  it('finds one set of factors, surer than one run alone', () => {
    const both = calibrateTogether([one, other], ['oilContent', 'release']);
    if (!both.ok) throw new Error(both.problem.kind);
    const alone = fitOf(one.points, ['oilContent', 'release']);
    for (const name of ['oilContent', 'release'] as const) {
      const { low, high } = factor(both, name);
      expect(low).toBeLessThan(truth[name]);
      expect(high).toBeGreaterThan(truth[name]);
      expect(high / low).toBeLessThan(factor(alone, name).high / factor(alone, name).low);
    }
    expect(both.residuals.map(({ log }) => log)).toEqual([0, 0, 0, 0, 1, 1, 1, 1]);
  });

  it('takes nothing from a log without readings', () => {
    const empty = { scenario: small, points: [] };
    expect(calibrateTogether([one, empty], ['oilContent'])).toMatchObject({ ok: true, degreesOfFreedom: 3 });
  });
});

describe('a logger’s log', () => {
  it('is drawn together into means that are as sure as all of its readings', () => {
    const many = Array.from({ length: 6000 }, (_, second) => ({
      time_s: second,
      oil_mL: 10 + (second % 2),
      tub_K: 300,
    }));
    const readings = readingsOf(many.slice(0, 3000));
    const means = thinned(readings);
    expect(means).toHaveLength(2 * MOST_OF_A_KIND);
    const weight = (all: readonly { readonly sigma: number }[]) => all.reduce((sum, { sigma }) => sum + sigma ** -2, 0);
    expect(weight(means)).toBeCloseTo(weight(readings), 3);
    const oil = means.filter(({ kind }) => kind === 'oil_mL');
    expect(oil.every(({ value }) => value > 10 && value < 11)).toBe(true);
    expect(oil.every(({ time_s }, index) => index === 0 || time_s > (oil[index - 1]?.time_s ?? 0))).toBe(true);
    expect(thinned(readings.slice(0, 100))).toHaveLength(100);
  });
});
