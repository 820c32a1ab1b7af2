/**
 * Speed of a whole run, and of our fixed steps against a general ODE solver on the same right-hand side.
 *
 * Run with `npm run bench`. Times are recorded here and in release notes, never asserted.
 */
import * as mathjs from 'mathjs';
import { bench, describe } from 'vitest';
import { exampleScenario, simulate, type Scenario } from '../../sim/index.ts';
import { lumpedStill } from './lumped-still.ts';

/** Three hours at 1 s: 10 layers, 8 constituents, 60 segments. */
function standardRun(): Scenario {
  const base = exampleScenario('gentle-lavender');
  const eight = base.charge.composition.slice(0, 8);
  const sum = eight.reduce((total, entry) => total + entry.share, 0);
  return {
    ...base,
    charge: { ...base.charge, composition: eight.map((entry) => ({ ...entry, share: entry.share / sum })) },
    run: { ...base.run, duration_s: 10_800 },
    advanced: { ...base.advanced, step_s: 1, bedLayers: 10, segments: 60 },
  };
}

type Solver = (
  slope: (t: number, y: number[]) => number[],
  span: readonly [number, number],
  start: readonly number[],
  options: object,
) => { y: number[][] };
/** Part of the package, though its types leave it out. */
const { solveODE } = mathjs as unknown as { solveODE: Solver };

const run = standardRun();
let sink = 0;

describe('a whole run', () => {
  bench('three hours at 1 s, 10 layers, 8 constituents, 60 segments', () => {
    sink += simulate(run).summary.oilCollected_kg;
  });
});

describe('the lumped still, ten minutes of boiling, same right-hand side', () => {
  const { derivatives, start } = lumpedStill();
  const duration = 600;

  bench('fixed second-order steps in typed arrays', () => {
    const y = Float64Array.from(start);
    const slope = new Float64Array(y.length);
    const middle = new Float64Array(y.length);
    for (let step = 0; step < duration; step++) {
      derivatives(y, slope);
      for (let i = 0; i < y.length; i++) middle[i] = (y[i] as number) + 0.5 * (slope[i] as number);
      derivatives(middle, slope);
      for (let i = 0; i < y.length; i++) y[i] = (y[i] as number) + (slope[i] as number);
    }
    sink += y[0] as number;
  });

  bench('a general solver (mathjs solveODE, RK23, steps of at most 1 s)', () => {
    const slope = new Float64Array(start.length);
    const solution = solveODE(
      (_t: number, y: number[]) => {
        derivatives(y, slope);
        return Array.from(slope);
      },
      [0, duration],
      start,
      { method: 'RK23', firstStep: 1, maxStep: 1, minStep: 0.5, tol: 1e-3 },
    );
    sink += solution.y.at(-1)?.[0] ?? 0;
  });
});

/** Keeps the results alive, so that nothing is optimised away. */
export const total = (): number => sink;
