import { describe, expect, it } from 'vitest';
import { exampleScenario } from '../../../sim/run/examples.ts';
import { meanOilRate, OIL_RATE_SPAN_S, runStopRule, stopRule, STOP_RULES } from '../../../sim/run/stop-rules.ts';

const { run } = exampleScenario('gentle-lavender');
const rules = { ...run, stopAtShare: 0.75, stopAtDistillate_kg: 2, stopAtOilRate_kg_s: 1e-6 };

describe('the rules that a scenario sets for its run', () => {
  it('hold at their number, and the first of them counts', () => {
    expect(runStopRule(rules, 0.74, 1, 1.99, 0)).toBe(null);
    expect(runStopRule(rules, 0.75, 1, 1.99, 0)).toBe('stop-share');
    expect(runStopRule(rules, 0.74, 1, 2, 0)).toBe('stop-distillate');
    expect(runStopRule(rules, 0.75, 1, 2, 0)).toBe('stop-share');
  });

  it('judge the rate over ten minutes once oil has come for so long', () => {
    const slow = 0.99e-6 * OIL_RATE_SPAN_S;
    expect(OIL_RATE_SPAN_S).toBe(600);
    expect(meanOilRate(0.004 + slow, 0.004)).toBeCloseTo(0.99e-6, 12);
    expect(runStopRule(rules, 0.004 + slow, 1, 1, 0.004)).toBe('stop-oil-rate');
    expect(runStopRule(rules, 0.004 + 1.01e-6 * OIL_RATE_SPAN_S, 1, 1, 0.004)).toBe(null);
    expect(runStopRule(rules, slow, 1, 1, 0)).toBe(null);
  });

  it('do nothing where none is set, nor a share of no oil', () => {
    const none = { ...run, stopAtShare: null, stopAtDistillate_kg: null, stopAtOilRate_kg_s: null };
    expect(runStopRule(none, 1, 1, 100, 1)).toBe(null);
    expect(runStopRule({ ...none, stopAtShare: 0.5 }, 0, 0, 1, 0)).toBe(null);
  });
});

it('a rule of a reader takes the number given, or the usual one', () => {
  expect(stopRule('share', 0.8)).toEqual({ kind: 'share', share: 0.8 });
  expect(stopRule('oil-in-ten-minutes')).toEqual({
    kind: 'oil-in-ten-minutes',
    below_mL: STOP_RULES['oil-in-ten-minutes'].usual,
  });
});
