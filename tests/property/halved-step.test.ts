/** Halving the step moves no reported number by more than half a percent. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleScenario, examples, Run, simulate } from '../../sim/index.ts';
import { movedNumbers } from './halved-step.ts';
import { anyScenario } from './random-scenario.ts';

const WHOLE_RUNS = 60_000;

describe('halving the step', () => {
  it.each(examples.map(({ id }) => [id]))(
    'moves no number of %s by more than half a percent',
    (id) => {
      expect(movedNumbers(exampleScenario(id), 1)).toEqual([]);
    },
    WHOLE_RUNS,
  );

  it(
    'moves no number of an ordinary still by more than half a percent',
    () => {
      fc.assert(
        fc.property(anyScenario({ reach: 'ordinary', steps: 60 }), (drawn) => {
          const scenario = { ...drawn, run: { ...drawn.run, duration_s: 5400 } };
          // What has come over when the first drop falls just before the end says more about the drop than about the step.
          const first = simulate(scenario).summary.firstDrop_s;
          fc.pre(first !== null && first < 2700);
          expect(movedNumbers(scenario, 1)).toEqual([]);
        }),
        { numRuns: 5, interruptAfterTimeLimit: 20_000, markInterruptAsFailure: false, endOnFailure: true },
      );
    },
    WHOLE_RUNS,
  );

  it(
    'is no less steady the smaller the step: a tenth of a second over the first vapour of a fifty-litre bed',
    () => {
      const base = exampleScenario('rosemary-jacket');
      const peak = (step_s: number): number => {
        const run = new Run({
          ...base,
          pot: { ...base.pot, waterTemperature_K: 365 },
          run: { ...base.run, duration_s: 1800 },
          advanced: { ...base.advanced, step_s },
        });
        let most = 0;
        while (!run.ended) {
          run.advance(run.time() + step_s);
          most = Math.max(most, run.still.gauge());
        }
        return most;
      };
      expect(peak(1)).toBeLessThan(300);
      expect(peak(0.1)).toBeLessThan(300);
    },
    WHOLE_RUNS,
  );
});
