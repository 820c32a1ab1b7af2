/** The shown working against the run, for random valid scenarios: what the sheets derive is what the run computed. */
import fc from 'fast-check';
import katex from 'katex';
import { describe, expect, it } from 'vitest';
import { simulate, workingSheets } from '../../sim/index.ts';
import { differences } from '../sim/explain/numbers-of-run.ts';
import { faults } from '../sim/explain/soundness.ts';
import { anyScenario, type Reach } from './random-scenario.ts';

describe.each<readonly [Reach, number]>([
  ['ordinary', 30],
  ['corner', 40],
])('the working of a random %s run', (reach, numRuns) => {
  it('shows the run’s own numbers to the last bit and derives them, at the headline moments and at any other', () => {
    let shown = 0;
    fc.assert(
      fc.property(anyScenario({ reach, steps: 250 }), fc.double({ min: 0, max: 1, noNaN: true }), (scenario, share) => {
        const result = simulate(scenario);
        fc.pre(result.failure === null);
        const headlines = workingSheets(result);
        const momentary = workingSheets(result, share * result.summary.end_s);
        shown += headlines.length + momentary.length;
        expect(differences(result, headlines, true)).toEqual([]);
        expect(differences(result, momentary, false)).toEqual([]);
        expect([...headlines, ...momentary].flatMap(faults)).toEqual([]);
      }),
      { numRuns, interruptAfterTimeLimit: 20_000, markInterruptAsFailure: false },
    );
    expect(shown).toBeGreaterThan(40);
  });
});

describe('the equations of a random run', () => {
  it('parse', () => {
    fc.assert(
      fc.property(anyScenario({ reach: 'corner', steps: 120 }), (scenario) => {
        const result = simulate(scenario);
        for (const { steps } of workingSheets(result))
          for (const { tex, substituted } of steps)
            for (const equation of [tex, substituted])
              expect(katex.renderToString(equation, { throwOnError: true, strict: 'error' })).toContain('katex');
      }),
      { numRuns: 12, interruptAfterTimeLimit: 20_000, markInterruptAsFailure: false },
    );
  });
});
