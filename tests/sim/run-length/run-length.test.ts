import { describe, expect, it } from 'vitest';
import { examples, exampleScenario, OIL_SHARES, runLength, runOn, simulate, spentAt } from '../../../sim/index.ts';
import { madeUpRun } from './made-up-record.ts';

/** 18 g of oil, first-order with a time constant of 1000 s after a wait of 600 s. */
const oil = (time: number) => 0.018 * (time > 600 ? 1 - Math.exp(-(time - 600) / 1000) : 0);
const whole = madeUpRun({
  end_s: 10_200,
  every_s: 10,
  oil,
  inPlant: (time) => 0.018 - oil(time),
  power: 2000,
  tap: 0.01,
  steam: 0.0005,
});

describe('time to shares of the obtainable oil', () => {
  const answer = runLength(whole);

  it('finds the times of a first-order curve: 600 s and 1000 s times −ln(1 − share)', () => {
    expect(answer.ranOut).toBe(true);
    for (const { share, at } of answer.shares)
      expect(at?.time_s, `${share}`).toBeCloseTo(600 - 1000 * Math.log(1 - share * (1 - Math.exp(-9.6))), -1);
    expect(answer.shares.map(({ share }) => share)).toEqual([...OIL_SHARES]);
  });

  it('counts oil, distillate, water, energy and money by then', () => {
    const at = answer.shares[2]?.at;
    const time = at?.time_s as number;
    expect(at?.oil_mL).toBeCloseTo(0.9 * 20, 2);
    expect(at?.distillate_L).toBeCloseTo((0.0005 * time) / 0.998 + 0.018, 4);
    expect(at?.coolantUsed_L).toBeCloseTo((0.01 * time) / 0.998, 6);
    expect(at?.energy_J).toBeCloseTo(2000 * time, 3);
    const { heat, cooling } = whole.scenario;
    expect(at?.cost).toBeCloseTo(2000 * time * heat.energyPrice_J + ((0.01 * time) / 998) * cooling.waterPrice_m3, 9);
    expect(at?.potWaterLeft_kg).toBeCloseTo(10 - 0.0005 * time, 6);
  });

  it('adds what would still come to a run that was cut short', () => {
    const cut = runLength(
      madeUpRun({
        end_s: 2600,
        every_s: 10,
        oil,
        inPlant: (time) => 0.018 - oil(time),
        power: 2000,
        tap: 0.01,
        steam: 0.0005,
      }),
    );
    expect(cut.ranOut).toBe(false);
    expect(cut.obtainable_kg).toBeCloseTo(0.018, 9);
    expect(cut.shares.map(({ at }) => at === null)).toEqual([false, false, true, true, true]);
  });

  it('counts of it only the share that is caught, when half of what leaves the plant is lost', () => {
    const lossy = runLength(
      madeUpRun({
        end_s: 2600,
        every_s: 10,
        oil: (time) => 0.5 * oil(time),
        inPlant: (time) => 0.018 - oil(time),
        power: 2000,
        tap: 0.01,
        steam: 0.0005,
      }),
    );
    expect(lossy.obtainable_kg).toBeCloseTo(0.009, 9);
  });

  it('says nothing of a run without oil', () => {
    const none = runLength(
      madeUpRun({ end_s: 3000, every_s: 10, oil: () => 0, inPlant: () => 0.018, power: 2000, tap: 0.01, steam: 0 }),
    );
    expect(none).toMatchObject({ obtainable_kg: 0, ranOut: false });
    expect(none.shares.every(({ at }) => at === null)).toBe(true);
  });
});

describe('a run carried on', () => {
  const scenario = exampleScenario('class-glass');
  const planned = simulate(scenario);
  const on = runOn(scenario);

  it('goes past its plan until little comes, with the same beginning', () => {
    expect(on.summary.end_s).toBeGreaterThan(scenario.run.duration_s);
    expect(runLength(on).ranOut).toBe(true);
    // Its record has rows at other times, and so its steps end at others.
    expect(spentAt(on, 2400).oil_kg / spentAt(planned, 2400).oil_kg).toBeCloseTo(1, 3);
  });

  it('leaves the stop rules out', () => {
    const stopped = { ...scenario, run: { ...scenario.run, stopAtShare: 0.1 } };
    expect(simulate(stopped).summary.endReason).toBe('stop-share');
    expect(runOn(stopped).summary.end_s).toBe(on.summary.end_s);
  });

  it('collects about what the planned run was said to have in reach', () => {
    expect(runLength(planned).obtainable_mL / runLength(on).obtainable_mL).toBeCloseTo(1, 1);
  });

  it.each(['gentle-lavender', 'hard-boiled-lavender', 'rosemary-jacket', 'lemon-balm-cohobation'])(
    'reaches every share in their order: %s',
    (id) => {
      expect(examples.some((entry) => entry.id === id)).toBe(true);
      const times = runLength(runOn(exampleScenario(id))).shares.flatMap(({ at }) => (at === null ? [] : [at.time_s]));
      // The last hundredth may need more water than the pot has.
      expect(times.length).toBeGreaterThanOrEqual(4);
      expect(times).toEqual([...times].sort((a, b) => a - b));
    },
  );
});
