/** Stills with fields at the ends of their ranges, run for their whole length: what every finished run must hold. */
import fc from 'fast-check';
import { simulate } from '../../sim/index.ts';
import { anyScenario } from '../property/random-scenario.ts';
import { fallingTotals, openBalances, unsoundNumbers, wrongEnding } from '../property/sound-run.ts';
import type { Part } from './part.ts';

/** Enough for the longest run in the longest steps. */
const MOST_STEPS = 26_000;

const runsWhole = fc.property(anyScenario({ reach: 'ends', steps: MOST_STEPS }), (scenario) => {
  const result = simulate(scenario);
  const wrong = [openBalances, unsoundNumbers, fallingTotals, wrongEnding].flatMap((law) => law(result));
  if (wrong.length > 0) throw new Error(wrong.join('\n'));
});

export const wholeStills: Part = {
  name: 'stills',
  says: 'stills with fields at their ends, whole length',
  few: 8,
  many: 5000,
  check: (asked) => fc.check(runsWhole, asked),
};
