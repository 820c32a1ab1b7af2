/** How far a finer step moves a reported number: half a percent at most for the examples, seldom more elsewhere. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleScenario, examples, Run, type Scenario } from '../../sim/index.ts';
import { movements } from './finer-step.ts';
import { anyScenario } from './random-scenario.ts';

const WHOLE_RUNS = 60_000;
/** Enough to see what one still in sixteen does. */
const STILLS = 90;

/** Twenty minutes from nearly boiling water: heating up, first vapour, the tub filling with heat. */
const shortRun = (drawn: Scenario): Scenario => ({
  ...drawn,
  pot: { ...drawn.pot, waterTemperature_K: 352 },
  run: { ...drawn.run, duration_s: 1200 },
});

describe('a finer step', () => {
  it.each([0.5, 0.1].flatMap((finer_s) => examples.map(({ id }) => [finer_s, id] as const)))(
    'of %d s moves no number of %s by more than half a percent',
    (finer_s, id) => {
      expect(movements(exampleScenario(id), 1, finer_s).map(({ says }) => says)).toEqual([]);
    },
    WHOLE_RUNS,
  );

  // Measured on 390 stills: 16 move by more than half a percent, one of them, in how long its trace of haze stands, by 42.
  it(
    'of half a second moves a number by more than half a percent in at most one ordinary still of fifteen, and none by more than five',
    () => {
      const stills = fc.sample(anyScenario({ reach: 'ordinary', plans: 'by-clock', steps: 60 }), STILLS);
      const moved = stills.flatMap((drawn) => {
        const still = movements(shortRun(drawn), 1, 0.5);
        return still.length === 0 ? [] : [still];
      });
      const says = moved.map((still) => still.map((movement) => movement.says).join('; ')).join('\n');
      expect(moved.length, says).toBeLessThanOrEqual(STILLS / 15);
      expect(Math.max(0, ...moved.flat().map(({ share }) => share)), says).toBeLessThan(0.05);
    },
    3 * WHOLE_RUNS,
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
          run.takeStep();
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
