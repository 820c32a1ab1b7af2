import { describe, expect, test, vi } from 'vitest';
import { Still } from '../../../sim/still/still.ts';
import { runTasks } from '../../../src/workers/run-tasks.ts';

describe('running a scenario', () => {
  test('that holds mistakes answers with them, whatever it is', () => {
    for (const input of [null, 'text', [], { pot: { diameter_m: -1 } }])
      expect(runTasks.run(input).kind).toBe('invalid');
  });

  test('whose calculation fails answers with when and in what, and with no number of it', () => {
    const step = vi.spyOn(Still.prototype, 'step').mockImplementation(function (this: Still) {
      this.pot.enthalpy = NaN;
    });
    expect(runTasks.run({ run: { duration_s: 600 } })).toEqual({
      kind: 'broke-off',
      failure: { variable: 'pot-temperature', time_s: expect.any(Number) as number },
    });
    step.mockRestore();
  });

  test('answers with its run', () => {
    const answer = runTasks.run({ run: { duration_s: 600 } });
    expect(answer.kind === 'ran' && answer.result.scenario.run.duration_s).toBe(600);
  });
});
