import { describe, expect, it } from 'vitest';
import { exampleScenario, type Scenario } from '../../../sim/index.ts';
import { hardestBoil, leastWater, withFlow, withHeat } from '../../../sim/answers/condenser-size/heat-and-water.ts';
import { tryCondenser } from '../../../sim/answers/condenser-size/trial.ts';
import { withLength } from '../../../sim/answers/condenser-size/shortest-length.ts';

const holds = (scenario: Scenario): boolean => tryCondenser(scenario).holds;
const glass = exampleScenario('class-glass');
const hardBoiled = exampleScenario('hard-boiled-lavender');

describe('the hardest boil', () => {
  it.each([
    ['class-glass', 0.16],
    ['hard-boiled-lavender', 3],
  ] as const)('is held as a constant setting, and 3 % more is not: %s', (id, length) => {
    const scenario = withLength(exampleScenario(id), length);
    const { kind, setting, power_W, limitedBy } = hardestBoil(scenario);
    expect(kind).toBe('up-to');
    expect(power_W).toBeCloseTo((setting as number) * scenario.heat.ratedPower_W, 9);
    expect(holds(withHeat(scenario, setting as number))).toBe(true);
    expect(holds(withHeat(scenario, 1.03 * (setting as number)))).toBe(false);
    expect(['outlet-warm', 'vapour-escapes']).toContain(limitedBy?.kind);
    expect(limitedBy?.time_s).toBeLessThanOrEqual(scenario.run.duration_s);
  });

  it('is full heat where the condenser is long enough, whatever the schedule or the controller says', () => {
    const long = withLength({ ...glass, heat: { ...glass.heat, control: 'hold-rate' } }, 2);
    expect(hardestBoil(long)).toMatchObject({ kind: 'full-heat', setting: 1, limitedBy: null });
  });

  it('is not told of a run in which nothing comes over even at full heat', () => {
    const short: Scenario = { ...glass, run: { ...glass.run, duration_s: 120 } };
    expect(hardestBoil(short)).toMatchObject({ kind: 'no-vapour', setting: 1, limitedBy: null });
    expect(leastWater(short)).toMatchObject({ kind: 'no-vapour', flow_kg_s: 0 });
  });

  it('grows with the tube', () => {
    const [short, long] = [0.1, 0.16].map((length) => hardestBoil(withLength(glass, length)).setting as number);
    expect(long).toBeGreaterThan(1.05 * (short as number));
  });

  it('is one that hardly boils where the tub is warmer than the limit from the start, and says so', () => {
    const hot: Scenario = { ...hardBoiled, cooling: { ...hardBoiled.cooling, startTemperature_K: 350 } };
    expect(hardestBoil(hot)).toMatchObject({ kind: 'no-boil', limitedBy: { kind: 'outlet-warm' } });
  });
});

describe('the least water', () => {
  it('is enough as a constant flow, and 3 % less is not', () => {
    const scenario = exampleScenario('rosemary-jacket');
    const { kind, flow_kg_s, used_kg, limitedBy } = leastWater(scenario);
    expect(holds(withFlow(scenario, flow_kg_s as number))).toBe(true);
    expect(holds(withFlow(scenario, 0.97 * (flow_kg_s as number)))).toBe(false);
    expect(used_kg).toBeCloseTo((flow_kg_s as number) * scenario.run.duration_s, 3);
    expect(kind).toBe('at-least');
    expect(limitedBy?.time_s).toBeLessThanOrEqual(scenario.run.duration_s);
  });

  it('is none where a big tub lasts the run', () => {
    const big: Scenario = { ...hardBoiled, cooling: { ...hardBoiled.cooling, tubDiameter_m: 1.5, tubHeight_m: 1 } };
    expect(leastWater(withLength(big, 20))).toMatchObject({
      kind: 'none-needed',
      flow_kg_s: 0,
      used_kg: 0,
      limitedBy: null,
    });
  });

  it('does not exist where the tube is too short for any flow', () => {
    expect(leastWater(withLength(hardBoiled, 0.3))).toMatchObject({ kind: 'none-enough', flow_kg_s: null });
  });
});
