/**
 * The step grows from a quarter of a second to a whole one after the first drop, and to several seconds where all is
 * quiet; nothing that comes over may show it.
 */
import { describe, expect, it } from 'vitest';
import { Run } from '../../../sim/run/simulate.ts';
import { exampleScenario, examples } from '../../../sim/index.ts';

describe('the steam where the step grows', () => {
  it.each(examples.map(({ id }) => id))('goes on as it was going, within half a percent: %s', (id) => {
    const run = new Run(exampleScenario(id));
    let [rate, before, step, growths] = [0, 0, Infinity, 0];
    while (!run.ended) {
      run.takeStep();
      const now = run.still.arrivingWater / run.stepLength;
      if (run.stepLength > 1.5 * step && before > 0) {
        growths++;
        const trend = ((rate - before) * (run.stepLength + step)) / (2 * step);
        expect(
          Math.abs((now - rate - trend) / rate),
          `at ${run.time()} s, ${step} to ${run.stepLength} s`,
        ).toBeLessThan(0.005);
      }
      [rate, before, step] = [now, rate, run.stepLength];
    }
    expect(growths).toBeGreaterThan(1);
  });
});
