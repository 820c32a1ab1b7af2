import { describe, expect, it } from 'vitest';
import { Run } from '../../../sim/index.ts';
import { scenarioOf } from '../still/ideal-still.ts';

describe('pressure behind a narrow tube', () => {
  it.each([1, 0.5, 0.1])('settles without swinging from step to step, at steps of %d s', (step_s) => {
    const run = new Run(
      scenarioOf({
        pot: { waterTemperature_K: 368 },
        charge: { mass_kg: 0 },
        heat: { ratedPower_W: 2200, shareToPot: 0.8, lag_s: 60 },
        condenser: {
          kind: 'jacketed-tube',
          insideDiameter_m: 0.005,
          outsideDiameter_m: 0.008,
          jacketDiameter_m: 0.02,
          length_m: 2.5,
        },
        advanced: { step_s },
      }),
    );
    let swings = 0;
    let before = 0;
    let change = 0;
    while (run.time() < 1200 && !run.ended) {
      run.takeStep();
      const now = run.still.gauge();
      const next = now - before;
      if (before > 100 && next * change < 0 && Math.min(Math.abs(next), Math.abs(change)) > 0.05 * before) swings++;
      change = next;
      before = now;
    }
    expect(run.ended).toBe(false);
    expect(before).toBeGreaterThan(1000);
    expect(swings).toBeLessThanOrEqual(2);
  });
});
