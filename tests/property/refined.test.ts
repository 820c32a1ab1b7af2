/** How far refining the model moves a headline number: one percent, one kelvin, or it is known and said why. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleScenario, examples } from '../../sim/index.ts';
import { headline, movedBy, REFINEMENT_NAMES, type Refinement } from './refined.ts';
import { anyScenario } from './random-scenario.ts';

const WHOLE_RUNS = 120_000;
const LIMIT = 0.01;

/**
 * What moves further, and how far it may (a share, or kelvin). Where a few first turns do the work in little water, the
 * boundary between warmed and cold water is sharper than a layer is thick, and twelve layers hold a little more heat near
 * the turns than ninety-six do.
 */
const KNOWN: Readonly<
  Partial<Record<string, Readonly<Partial<Record<Refinement, Readonly<Record<string, number>>>>>>>
> = {
  'hard-boiled-lavender': { bed: { oilEscaped_kg: 0.015 } },
  'caraway-immersion': { tub: { condensingLength_m: 0.02, coolantWarmest_K: 2 } },
  // The first vapour through a bed of twenty layers comes a little sharper than through ten.
  'gentle-lavender': { bed: { distillateWarmest_K: 1.1 } },
};

describe('twice the segments, half the step, twice the layers', () => {
  it.each(examples.map(({ id }) => id))(
    'moves no headline number of %s by more than a percent or a kelvin, but for what is known',
    (id) => {
      const scenario = exampleScenario(id);
      const before = headline(scenario);
      for (const refinement of REFINEMENT_NAMES)
        for (const { name, by, says } of movedBy(before, scenario, refinement, LIMIT))
          expect(by, says).toBeLessThan(KNOWN[id]?.[refinement]?.[name] ?? 0);
    },
    WHOLE_RUNS,
  );

  it(
    'moves none of forty seeded stills by more than a percent or a kelvin in step, segments and layers of the tub',
    () => {
      const { advanced } = exampleScenario('gentle-lavender');
      const stills = fc.sample(anyScenario({ reach: 'ordinary', steps: 60 }), { numRuns: 40, seed: 20_261_128 });
      for (const drawn of stills) {
        const still = {
          ...drawn,
          pot: { ...drawn.pot, waterTemperature_K: 352 },
          run: { ...drawn.run, duration_s: 3600 },
          advanced,
        };
        const before = headline(still);
        for (const refinement of ['step', 'segments', 'tub'] as const)
          expect(movedBy(before, still, refinement, LIMIT).map(({ says }) => says)).toEqual([]);
      }
    },
    2 * WHOLE_RUNS,
  );
});
