import { describe, expect, it } from 'vitest';
import { forecastWith } from '../../../sim/answers/forecast/forecast.ts';
import { courseAt } from '../../../sim/answers/forecast/course.ts';
import {
  englishReader,
  forecastMessages,
  forecastRun,
  RunForecaster,
  type Forecast,
  type Likely,
  type RunSoFar,
  type Seen,
} from '../../../sim/index.ts';
import { hiddenStill, madeUpRuns, plan, readAt } from './made-up-stills.ts';

const NOTHING_READ: RunSoFar = { at_s: 0, readings: [], turns: [] };
const soFar = (readings: readonly Seen[], turns: RunSoFar['turns'] = []): RunSoFar => ({
  at_s: Math.max(0, ...readings.map(({ time_s }) => time_s)),
  readings,
  turns,
});
const width = ({ low, high }: Likely): number => high - low;
const holds = ({ low, high }: Likely, value: number): boolean => value >= low && value <= high;
const forecastOf = (now: RunSoFar): Forecast => forecastRun(plan, now, { runs: madeUpRuns, members: 150 });

describe('forecasts of forty hidden stills after five readings', () => {
  const followedStills = Array.from({ length: 40 }, (_, index) => {
    const truth = hiddenStill(1000 + index);
    const forecaster = new RunForecaster(plan, { seed: 7, members: 150 });
    const before = forecastWith(forecaster, NOTHING_READ, madeUpRuns);
    const after = forecastWith(
      forecaster,
      soFar(readAt(truth, ['oil_mL'], [20, 25, 30, 35, 40], 500 + index)),
      madeUpRuns,
    );
    return { truth, before, after };
  });

  it('hold the truth in 70 to 90 % of them', () => {
    const held = followedStills.filter(({ truth, after }) =>
      holds(after.oilAtEnd_mL, courseAt(truth, 'oil_mL', after.end_s)),
    );
    expect(held.length / followedStills.length).toBeGreaterThanOrEqual(0.7);
    expect(held.length / followedStills.length).toBeLessThanOrEqual(0.9);
  });

  it('hold the time of nine tenths in 70 to 90 % of them', () => {
    const told = followedStills.flatMap(({ truth: { t90_s }, after: { t90_s: found } }) =>
      t90_s === null || found.at_s === null ? [] : [holds(found.at_s, t90_s)],
    );
    expect(told.length).toBeGreaterThan(25);
    expect(told.filter(Boolean).length / told.length).toBeGreaterThanOrEqual(0.7);
    expect(told.filter(Boolean).length / told.length).toBeLessThanOrEqual(0.9);
  });

  it('are at least 40 % narrower than before', () => {
    const ratios = followedStills
      .map(({ before, after }) => width(after.oilAtEnd_mL) / width(before.oilAtEnd_mL))
      .sort((a, b) => a - b);
    expect(ratios[ratios.length / 2]).toBeLessThan(0.6);
  });

  it('rest on enough likely runs', () => {
    for (const { after } of followedStills) expect(after.effective).toBeGreaterThan(45);
  });
});

describe('a forecast', () => {
  const truth = hiddenStill(3);
  const readings = readAt(truth, ['oil_mL', 'tub_K'], [20, 25, 30, 35], 9);

  it('is the plan while nothing is read', () => {
    const facts = forecastOf(NOTHING_READ);
    expect(facts.effective).toBeCloseTo(facts.members, 6);
    expect(facts.readings).toEqual([]);
    expect(forecastMessages(englishReader('metric')).lead(facts)).toMatch(/^Nothing is read yet/u);
  });

  it('gives the same numbers again', () => {
    expect(forecastOf(soFar(readings))).toEqual(forecastOf(soFar(readings)));
  });

  it('comes to the same end reading by reading as at once', () => {
    const forecaster = new RunForecaster(plan, { seed: 2, members: 150 });
    const steps = [20, 25, 30, 35].map((minute) =>
      forecastWith(forecaster, soFar(readings.filter(({ time_s }) => time_s <= 60 * minute)), madeUpRuns),
    );
    const atOnce = forecastOf(soFar(readings));
    const last = steps.at(-1) as Forecast;
    expect(Math.abs(last.oilAtEnd_mL.middle - atOnce.oilAtEnd_mL.middle)).toBeLessThan(0.5 * width(atOnce.oilAtEnd_mL));
    expect(width(last.oilAtEnd_mL)).toBeLessThan(width((steps[0] as Forecast).oilAtEnd_mL));
  });

  it('forgets a wrong reading that is corrected', () => {
    const forecaster = new RunForecaster(plan, { seed: 2, members: 150 });
    const wrong = readings.map((seen, index) => (index === 0 ? { ...seen, value: 3 * seen.value } : seen));
    forecastWith(forecaster, soFar(wrong), madeUpRuns);
    const corrected = forecastWith(forecaster, soFar(readings), madeUpRuns);
    const never = forecastOf(soFar(readings));
    expect(Math.abs(corrected.oilAtEnd_mL.middle - never.oilAtEnd_mL.middle)).toBeLessThan(
      0.5 * width(never.oilAtEnd_mL),
    );
  });

  it('says of a reading that nothing gives that the model does not allow it, and leaves it out', () => {
    const hot: Seen = { kind: 'outlet_K', time_s: 1800, value: 368 };
    const facts = forecastOf(soFar([...readings, hot]));
    expect(facts.readings.map(({ fits }) => fits)).toEqual([...readings.map(() => 'yes'), 'impossible']);
    expect(facts.oilAtEnd_mL).toEqual(forecastOf(soFar(readings)).oilAtEnd_mL);
    const said = forecastMessages(englishReader('metric')).doubted(
      facts.readings.at(-1) as Forecast['readings'][number],
    );
    expect(said?.sentence).toMatch(/^Nothing the model allows gives 95/u);
    expect(said?.advice).toBe('Is the outlet thermometer in the stream?');
  });

  it('says of a reading that the others speak against that it is odd', () => {
    const odd = readings.map((seen) =>
      seen.kind === 'oil_mL' && seen.time_s === 1800 ? { ...seen, value: seen.value * 1.6 } : seen,
    );
    const facts = forecastOf(soFar(odd));
    expect(facts.readings.some(({ fits }) => fits !== 'yes')).toBe(true);
  });

  it('takes in when the first drop fell', () => {
    const late: Seen = { kind: 'firstDrop_s', time_s: 1100, value: 1100 };
    expect(forecastOf(soFar([late])).t90_s.at_s?.middle).toBeGreaterThan(
      (forecastOf(NOTHING_READ).t90_s.at_s?.middle as number) + 30,
    );
  });

  it('leaves the first drop the doubt of the heat, which no draw changes', () => {
    const drop = forecastOf(NOTHING_READ).firstDrop_s.at_s as Likely;
    // A plate of 10 % less, or of 10 % more, gives its first drop about so much later or sooner.
    expect(drop.low).toBeLessThan(drop.middle / 1.1);
    expect(drop.high).toBeGreaterThan(1.1 * drop.middle);
    const late: Seen = { kind: 'firstDrop_s', time_s: 1.3 * drop.middle, value: 1.3 * drop.middle };
    expect(forecastOf(soFar([late])).readings.map(({ fits }) => fits)).toEqual(['yes']);
    const never: Seen = { kind: 'firstDrop_s', time_s: 3 * drop.middle, value: 3 * drop.middle };
    expect(forecastOf(soFar([never])).readings.map(({ fits }) => fits)).toEqual(['impossible']);
  });

  it('follows heat that was turned down by hand', () => {
    const down = forecastOf(soFar(readings, [{ control: 'heat', time_s: 2100, value: 0.2 }]));
    const on = forecastOf(soFar(readings));
    expect(down.oilNow_mL.middle / on.oilNow_mL.middle).toBeCloseTo(1, 1);
    expect(down.oilAtEnd_mL.high).toBeLessThan(on.oilAtEnd_mL.middle);
  });

  it('speaks to readers of either units', () => {
    const facts = forecastOf(soFar(readings.slice(0, 2)));
    for (const units of ['metric', 'us'] as const) {
      const messages = forecastMessages(englishReader(units));
      expect(messages.lead(facts)).toMatch(/90 % of the oil by \d.* \(.* to .*\)\.$/u);
      expect(messages.lines(facts).map(({ id }) => id)).toEqual(['firstDrop', 'oil', 't90', 'stop', 'water', 'tub']);
    }
    expect(forecastMessages(englishReader('us')).lines(facts).at(-1)?.value).toContain('°F');
  });
});

describe('a forecast by the model itself', () => {
  it('narrows towards what is read', () => {
    const forecaster = new RunForecaster(plan, { members: 16, seed: 4 });
    const before = forecastWith(forecaster, NOTHING_READ);
    const time_s = 2400;
    const high = before.oilNow_mL.middle + 1.3 * before.oilAtEnd_mL.middle;
    const after = forecastWith(forecaster, soFar([{ kind: 'oil_mL', time_s, value: high }]));
    expect(after.oilAtEnd_mL.middle).toBeGreaterThan(before.oilAtEnd_mL.middle);
    expect(after.end_s).toBe(3600);
    expect(after.times_s.at(-1)).toBe(3600);
    expect(after.bands.oil_mL.p10.at(-1)).toBeCloseTo(after.oilAtEnd_mL.low, 6);
  });
});
