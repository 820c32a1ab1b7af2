/** The tub without running water and the heat for a wanted rate, against runs of the still itself; and their words. */
import { describe, expect, test } from 'vitest';
import {
  burnerFor,
  burnerSheet,
  englishReader,
  exampleScenario,
  leastTub,
  otherPartsMessages,
  ownRate,
  simulate,
  type Scenario,
} from '../../../sim/index.ts';
import { tryCondenser } from '../../../sim/answers/condenser-size/trial.ts';
import { withFlow, withHeat } from '../../../sim/answers/condenser-size/heat-and-water.ts';
import { withLength } from '../../../sim/answers/condenser-size/shortest-length.ts';
import { faults } from '../explain/soundness.ts';
import { plain } from '../messages/plain.ts';

const lavender = exampleScenario('gentle-lavender');
const still: Scenario = withLength({ ...lavender, run: { ...lavender.run, duration_s: 5400 } }, 2);

describe('the tub without running water', () => {
  const found = leastTub(still, {});
  const volume = found?.typical_m3 ?? 0;
  const holds = (volume_m3: number): boolean => {
    const { cooling, ...rest } = withFlow(still, 0);
    const diameter = Math.sqrt((4 * volume_m3) / (Math.PI * cooling.tubHeight_m * cooling.tubFill));
    return tryCondenser({ ...rest, cooling: { ...cooling, tubDiameter_m: diameter } }, 5).holds;
  };

  test('lasts the run, and one a tenth smaller does not', () => {
    expect(volume).toBeGreaterThan(0);
    expect(holds(volume)).toBe(true);
    expect(holds(0.9 * volume)).toBe(false);
  });

  test('is the same for no doubt at all, and is not asked of a jacket', () => {
    expect(found?.deciding_m3).toBe(found?.typical_m3);
    expect(leastTub(exampleScenario('rosemary-jacket'), {})).toBe(null);
  });
});

describe('the heat for a wanted rate', () => {
  const full = simulate(withHeat(still, 1));
  const wanted = 0.7 * ownRate(full);
  const size = burnerFor(full, wanted);

  test('makes that rate in a run of its own', () => {
    if (size === null) throw new Error('no burner');
    const weaker = simulate({ ...full.scenario, heat: { ...full.scenario.heat, ratedPower_W: size.power_W } });
    expect(ownRate(weaker) / wanted).toBeGreaterThan(0.95);
    expect(ownRate(weaker) / wanted).toBeLessThan(1.05);
    expect(size.leastPower_W).toBeLessThanOrEqual(size.power_W);
    expect(size.mostPower_W).toBeGreaterThanOrEqual(size.power_W);
    expect(faults(burnerSheet(size))).toEqual([]);
    expect(burnerSheet(size).result.value).toBe(size.power_W);
  });

  test('is not told of a run in which nothing comes over', () => {
    expect(burnerFor(simulate({ ...still, run: { ...still.run, duration_s: 60 } }), wanted)).toBe(null);
  });

  test('is said with its range, in the reader’s units', () => {
    if (size === null) throw new Error('no burner');
    const metric = plain(otherPartsMessages(englishReader('metric')).burner(size));
    expect(metric).toMatch(/^Heat: [\d.]+ mL\/min of distillate needs [\d.]+ kW in the pot, so a source of [\d.]+ kW/);
    expect(metric).toMatch(/Yours of [\d.]+ kW is /);
    const us = otherPartsMessages(englishReader('us'));
    expect(plain(us.tub({ typical_m3: 0.1, deciding_m3: null }, still))).toMatch(
      /^Tub: without running water this run needs 26 gal; .* not even 2\d\d gal is enough\. Yours has [\d.]+ gal\.$/,
    );
    expect(plain(us.tub({ typical_m3: null, deciding_m3: null }, still))).toMatch(/not even 2\d\d gal lasts this run/);
  });
});
