import { describe, expect, test } from 'vitest';
import { exampleScenario, columnAt, separatorAt, simulate } from '../../../sim/index.ts';
import { tableLiquidDensity, tableLiquidViscosity } from '../../../sim/fluids/water-table.ts';
import { cutDiameter } from '../../../sim/transfer/settling.ts';

const scenario = exampleScenario('gentle-lavender');
const result = simulate(scenario);
const TIME_s = 4000;

describe('the separator at a moment of a run', () => {
  const moment = separatorAt(scenario, result.record, TIME_s);

  test('lets the water sink at its flow over the plan area, with the allowance for turbulence', () => {
    const { bore_m, turbulenceFactor } = scenario.separator;
    const litres = moment.water_kg_s / tableLiquidDensity(moment.temperature_K);
    expect(moment.overflow_m_s).toBeCloseTo((turbulenceFactor * litres) / ((Math.PI / 4) * bore_m ** 2), 9);
    const all = columnAt(result.record, 'condensateRate_kg_s', TIME_s);
    expect(moment.water_kg_s + moment.oilRate_kg_s).toBeCloseTo(all, 12);
  });

  test('holds back the drop that rises as fast as that water sinks, by the rule that the run used', () => {
    // Stokes with the density of the oil that the summary reports; the run's own oil of the moment differs a little.
    const difference = tableLiquidDensity(moment.temperature_K) - (result.summary.oilDensity_kg_m3 ?? NaN);
    const cut = cutDiameter(moment.overflow_m_s, difference, tableLiquidViscosity(moment.temperature_K), 9.80665);
    expect(moment.capture.cutSize_m / cut).toBeGreaterThan(0.9);
    expect(moment.capture.cutSize_m / cut).toBeLessThan(1.1);
  });

  test('moves drops four times as fast that are twice as large', () => {
    const { capture, speed_m_s, overflow_m_s } = moment;
    const [first, last] = [0, speed_m_s.length - 1];
    const ratio = (capture.diameter_m[last] as number) / (capture.diameter_m[first] as number);
    expect((speed_m_s[last] as number) / (speed_m_s[first] as number)).toBeCloseTo(ratio ** 2, 6);
    speed_m_s.forEach((speed, index) => {
      const isLarge = (capture.diameter_m[index] as number) >= capture.cutSize_m;
      expect(speed >= overflow_m_s).toBe(isLarge);
    });
  });

  test('has no moving drop and no layer before the first distillate', () => {
    const before = separatorAt(scenario, result.record, 0);
    expect(before.layer_m).toBe(0);
    expect(before.water_kg_s).toBe(0);
    expect([...before.speed_m_s].every((speed) => speed === 0)).toBe(true);
  });
});
