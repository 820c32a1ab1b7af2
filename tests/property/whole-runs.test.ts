/** What holds of every run, for random valid scenarios near the defaults and out in the corners of their ranges. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readScenario, Run, simulate, type RunResult } from '../../sim/index.ts';
import { anyScenario, type Reach } from './random-scenario.ts';
import { fallingTotals, openBalances, unsoundNumbers, wrongEnding } from './sound-run.ts';

const cases: readonly (readonly [Reach, number, number])[] = [
  ['ordinary', 24, 400],
  ['corner', 60, 200],
];

const laws: readonly (readonly [string, (result: RunResult) => string[]])[] = [
  ['closes the balances of water, energy and every constituent to 1e-9 of what passed through', openBalances],
  [
    'records finite numbers only, none negative that cannot be, shares within one, temperatures a still can have',
    unsoundNumbers,
  ],
  ['lets no running total fall', fallingTotals],
  ['ends for the reason it gives, with the last row at the end', wrongEnding],
];

describe.each(cases)('a random %s scenario', (reach, numRuns, steps) => {
  it.each(laws)('%s', (_, problems) => {
    fc.assert(
      fc.property(anyScenario({ reach, steps }), (scenario) => {
        expect(problems(simulate(scenario))).toEqual([]);
      }),
      { numRuns, interruptAfterTimeLimit: 20_000, markInterruptAsFailure: false },
    );
  });

  it('never lets vapour carry more oil than saturates it', () => {
    fc.assert(
      fc.property(anyScenario({ reach, steps: Math.min(steps, 150) }), (scenario) => {
        const run = new Run(scenario);
        const { oil, pot, bed } = run.still;
        const shares = [pot.out, ...(bed ? [bed.out] : [])];
        let most = 0;
        while (!run.ended) {
          run.takeStep();
          for (const vapour of shares)
            if (vapour.water > 0) most = Math.max(most, oil.saturation(vapour.oil, vapour.water, vapour.temperature));
        }
        expect(most).toBeLessThanOrEqual(1.01);
      }),
      { numRuns: Math.ceil(numRuns / 2), interruptAfterTimeLimit: 20_000, markInterruptAsFailure: false },
    );
  });
});

/** Stills at several ends of what may be typed at once, each of which broke off when a step took out more heat than was there. */
const stills = join(import.meta.dirname, 'stills');

describe.each(readdirSync(stills))('%s', (file) => {
  it('runs to its end and keeps every law', () => {
    const read = readScenario(JSON.parse(readFileSync(join(stills, file), 'utf8')) as unknown);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const result = simulate(read.scenario);
    expect(laws.flatMap(([, problems]) => problems(result))).toEqual([]);
  });
});
