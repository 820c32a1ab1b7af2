/** A run is a pure function of its scenario: the same bits every time, in slices of any size. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COLUMN_NAMES, GRID_NAMES, Run, simulate, type RunResult } from '../../sim/index.ts';
import { anyScenario } from './random-scenario.ts';

const bytes = (values: Float64Array): Buffer => Buffer.from(values.buffer, values.byteOffset, values.byteLength);

/** Columns and grids whose bits differ, and anything else that does. */
function differences(a: RunResult, b: RunResult): string[] {
  const columns = COLUMN_NAMES.filter((name) => !bytes(a.record.columns[name]).equals(bytes(b.record.columns[name])));
  const grids = GRID_NAMES.filter((name) => !bytes(a.record.grids[name].data).equals(bytes(b.record.grids[name].data)));
  const rest = (['summary', 'events', 'balance', 'failure'] as const).filter(
    (name) => JSON.stringify(a[name]) !== JSON.stringify(b[name]),
  );
  return [...columns, ...grids, ...rest];
}

const options = { numRuns: 20, interruptAfterTimeLimit: 15_000, markInterruptAsFailure: false };
const scenario = anyScenario({ reach: 'corner', steps: 200 });

describe('a run', () => {
  it('gives the same bits when it is run again, and leaves its scenario untouched', () => {
    fc.assert(
      fc.property(scenario, (drawn) => {
        const before = JSON.stringify(drawn);
        const first = simulate(drawn);
        expect(differences(first, simulate(JSON.parse(before) as typeof drawn))).toEqual([]);
        expect(JSON.stringify(drawn)).toBe(before);
      }),
      options,
    );
  });

  it('gives the same bits however it is sliced', () => {
    fc.assert(
      fc.property(scenario, fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 30 }), (drawn, cuts) => {
        const whole = simulate(drawn);
        const sliced = new Run(drawn);
        for (const cut of [...cuts].sort((a, b) => a - b)) sliced.advance(cut * whole.summary.end_s);
        sliced.advance(Infinity);
        expect(differences(whole, sliced.result())).toEqual([]);
      }),
      options,
    );
  });

  it('is not disturbed by another run between its slices', () => {
    fc.assert(
      fc.property(scenario, scenario, (one, other) => {
        const whole = simulate(one);
        const first = new Run(one);
        const second = new Run(other);
        for (let slice = 1; slice <= 8; slice++) {
          first.advance((slice / 8) * whole.summary.end_s);
          second.advance((slice / 8) * other.run.duration_s);
        }
        first.advance(Infinity);
        expect(differences(whole, first.result())).toEqual([]);
      }),
      options,
    );
  });
});
