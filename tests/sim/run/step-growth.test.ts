/** The step grows from a quarter of a second to a whole one after the first drop; nothing that comes over may show it. */
import { describe, expect, it } from 'vitest';
import { Run } from '../../../sim/run/simulate.ts';
import { exampleScenario, examples } from '../../../sim/index.ts';

describe('the steam where the step grows', () => {
  it.each(examples.map(({ id }) => id))('changes by no more than half a percent: %s', (id) => {
    const run = new Run(exampleScenario(id));
    let [rate, step, growths] = [0, Infinity, 0];
    while (!run.ended && growths === 0) {
      run.takeStep();
      const now = run.still.arrivingWater / run.stepLength;
      if (run.stepLength > 2 * step && rate > 0) {
        growths++;
        expect(Math.abs(now / rate - 1)).toBeLessThan(0.005);
      }
      [rate, step] = [now, run.stepLength];
    }
    expect(growths).toBe(1);
  });
});
