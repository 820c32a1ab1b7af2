/** How far refining the model moves a headline number: hardly ever further than one percent or one kelvin. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleScenario, examples, type Scenario } from '../../sim/index.ts';
import type { HeadlineName } from '../../sim/answers/ensemble/ensemble.ts';
import { headline, movedBy, REFINEMENT_NAMES, type Moved } from './refined.ts';
import { anyScenario } from './random-scenario.ts';

const WHOLE_RUNS = 120_000;
const LIMIT = 0.01;
/** Half the oil comes in a steep rush; where the vapour ends is known to a third of a segment, a tenth of a short length. */
const MOST: Readonly<Partial<Record<HeadlineName, number>>> = { t50_s: 0.035, condensingLength_m: 0.12 };

/** Every headline number that any refinement moves too far. */
function moved(scenario: Scenario): Moved[] {
  const before = headline(scenario);
  return REFINEMENT_NAMES.flatMap((refinement) => movedBy(before, scenario, refinement, LIMIT));
}

describe('twice the segments, half the step, twice the layers of bed and tub', () => {
  it.each(examples.map(({ id }) => id))(
    'move no headline number of %s by more than a percent or a kelvin',
    (id) => {
      expect(moved(exampleScenario(id)).map(({ says }) => says)).toEqual([]);
    },
    WHOLE_RUNS,
  );

  it(
    'move at most four of forty seeded stills by more than a percent or a kelvin, and by no more than two, but for times and lengths',
    () => {
      const { advanced } = exampleScenario('gentle-lavender');
      const stills = fc.sample(anyScenario({ reach: 'ordinary', steps: 60 }), { numRuns: 40, seed: 20_261_128 });
      const far = stills
        .map((drawn) =>
          moved({
            ...drawn,
            pot: { ...drawn.pot, waterTemperature_K: 352 },
            run: { ...drawn.run, duration_s: 3600 },
            advanced,
          }),
        )
        .filter((moves) => moves.length > 0);
      const says = far.map((moves) => moves.map(({ says }) => says).join('; ')).join('\n');
      expect(far.length, says).toBeLessThanOrEqual(4);
      for (const { name, by } of far.flat())
        expect(by, says).toBeLessThan(MOST[name] ?? (name.endsWith('_K') ? 2 : 0.02));
    },
    2 * WHOLE_RUNS,
  );
});
