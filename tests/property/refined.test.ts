/** How far refining the model moves a headline number: no further than one percent or one kelvin. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleScenario, examples, type Scenario } from '../../sim/index.ts';
import { headline, movedBy, REFINEMENT_NAMES } from './refined.ts';
import { anyScenario } from './random-scenario.ts';

const WHOLE_RUNS = 120_000;
const LIMIT = 0.01;

/** Every headline number that any refinement moves too far, in words. */
function moved(scenario: Scenario): string[] {
  const before = headline(scenario);
  return REFINEMENT_NAMES.flatMap((refinement) => movedBy(before, scenario, refinement, LIMIT).map(({ says }) => says));
}

describe('twice the segments, half the step, twice the layers of bed and tub', () => {
  it.each(examples.map(({ id }) => id))(
    'move no headline number of %s by more than a percent or a kelvin',
    (id) => {
      expect(moved(exampleScenario(id))).toEqual([]);
    },
    WHOLE_RUNS,
  );

  it(
    'move none of forty seeded stills by more than a percent or a kelvin',
    () => {
      const { advanced } = exampleScenario('gentle-lavender');
      const stills = fc.sample(anyScenario({ reach: 'ordinary', plans: 'by-clock', steps: 60 }), {
        numRuns: 40,
        seed: 20_261_128,
      });
      for (const drawn of stills)
        expect(
          moved({
            ...drawn,
            pot: { ...drawn.pot, waterTemperature_K: 352 },
            run: { ...drawn.run, duration_s: 3600 },
            advanced,
          }),
        ).toEqual([]);
    },
    2 * WHOLE_RUNS,
  );
});
