import { describe, expect, it } from 'vitest';
import { stopAdvice, stopRule, STOP_RULES, STOP_RULE_KINDS, type RunEvent, type StopRule } from '../../../sim/index.ts';
import { eventOf as event } from '../messages/sample-events.ts';
import { madeUpRun } from './made-up-record.ts';

const oil = (time: number) => 0.018 * (time > 600 ? 1 - Math.exp(-(time - 600) / 1000) : 0);
const run = (events: readonly RunEvent[] = [], end_s = 10_200) =>
  madeUpRun({
    end_s,
    every_s: 10,
    oil,
    inPlant: (time) => 0.018 - oil(time),
    power: 2000,
    tap: 0.01,
    steam: 0.0005,
    events,
  });
const advise = (rule: StopRule, events: readonly RunEvent[] = [], end_s = 10_200) =>
  stopAdvice(run(events, end_s), rule);

describe('stop advice by share', () => {
  it('tells the whole minute by which 90 % of the obtainable oil is there', () => {
    const advice = advise({ kind: 'share', share: 0.9 });
    expect(advice.stop?.time_s).toBeCloseTo(2902, -1);
    expect(advice.minute).toBe(49);
    expect(advice.share).toBeCloseTo(0.9, 6);
  });

  it('says that the share is not reached in a run that is too short', () => {
    const advice = advise({ kind: 'share', share: 0.9 }, [], 2400);
    expect(advice.stop).toBeNull();
    expect(advice.minute).toBeNull();
    expect(advice.share).toBeCloseTo(1 - Math.exp(-1.8), 6);
  });
});

describe('stop advice by the oil of ten minutes', () => {
  // 20 mL (e^0.6 − 1) e^−((t − 600)/1000) in the ten minutes before t.
  const expected = (millilitres: number) => 600 + 1000 * Math.log((20 * Math.expm1(0.6)) / millilitres);

  it.each([2, 0.5, 0.1])('finds when ten minutes brought less than %s mL', (below_mL) => {
    const advice = advise({ kind: 'oil-in-ten-minutes', below_mL });
    expect(advice.stop?.time_s).toBeGreaterThanOrEqual(expected(below_mL));
    expect(advice.stop?.time_s).toBeLessThanOrEqual(expected(below_mL) + 10);
    expect(advice.lastTenMinutes_mL).toBeLessThan(below_mL);
  });

  it('does not stop while the oil is only beginning', () => {
    expect(advise({ kind: 'oil-in-ten-minutes', below_mL: 15 }).stop?.time_s).toBeGreaterThanOrEqual(1200);
  });

  it('never holds when the limit is lower than what comes at the end', () => {
    expect(advise({ kind: 'oil-in-ten-minutes', below_mL: 1e-6 }).minute).toBeNull();
  });
});

describe('stop advice by the price of the next millilitre', () => {
  const { heat, cooling } = run().scenario;
  const perSecond = 2000 * heat.energyPrice_J + (0.01 / 998) * cooling.waterPrice_m3;
  // Ten minutes cost 600 perSecond and bring 20 mL (1 − e^−0.6) e^−((t − 600)/1000).
  const expected = (price: number) => 600 + 1000 * Math.log((price * 20 * -Math.expm1(-0.6)) / (600 * perSecond));

  it.each([0.05, 0.5])('finds when a millilitre costs more than %s', (above) => {
    const advice = advise({ kind: 'cost-of-next', above });
    expect(advice.stop?.time_s).toBeGreaterThanOrEqual(expected(above) - 1);
    expect(advice.stop?.time_s).toBeLessThanOrEqual(expected(above) + 10);
    expect(advice.costOfNext).toBeGreaterThan(above);
  });

  it('stops at once when no more comes', () => {
    const ended = stopAdvice(
      madeUpRun({
        end_s: 6000,
        every_s: 10,
        oil: (time) => Math.min(0.01, time * 1e-5),
        inPlant: () => 0,
        power: 2000,
        tap: 0.01,
        steam: 0.0005,
      }),
      { kind: 'cost-of-next', above: 1e9 },
    );
    expect(ended.stop?.time_s).toBeLessThanOrEqual(1010);
    expect(ended.costOfNext).toBeNull();
  });
});

describe('whether pot and cooling last', () => {
  const rule: StopRule = { kind: 'share', share: 0.9 };

  it('says yes without a warning before the stop', () => {
    expect(advise(rule, [event('pot-low', 5000), event('vapour-escapes', 6000)])).toMatchObject({
      potLasts: true,
      potLow_s: 5000,
      coolingLasts: true,
      escapes_s: 6000,
    });
    expect(advise(rule)).toMatchObject({ potLasts: true, potLow_s: null, coolingLasts: true, escapes_s: null });
  });

  it('says no when the pot runs low or vapour escapes before it', () => {
    expect(advise(rule, [event('pot-low', 2000), event('vapour-escapes', 2500)])).toMatchObject({
      potLasts: false,
      coolingLasts: false,
    });
    expect(advise(rule, [event('cooling-boils', 1000)])).toMatchObject({ potLasts: true, coolingLasts: false });
  });

  it('gives the cooling water’s temperature then', () => {
    const advice = advise(rule);
    expect(advice.coolantThen_K).toBeCloseTo(300 + (advice.stop?.time_s as number) / 1000, 6);
  });
});

describe('a stop rule', () => {
  it('has its usual number, within its limits, until it is given one', () => {
    expect(STOP_RULE_KINDS.map((kind) => stopRule(kind))).toEqual([
      { kind: 'share', share: 0.9 },
      { kind: 'oil-in-ten-minutes', below_mL: 0.5 },
      { kind: 'cost-of-next', above: 0.5 },
    ]);
    expect(stopRule('oil-in-ten-minutes', 2)).toEqual({ kind: 'oil-in-ten-minutes', below_mL: 2 });
    for (const { min, usual, max } of Object.values(STOP_RULES)) expect(min < usual && usual < max).toBe(true);
  });
});
