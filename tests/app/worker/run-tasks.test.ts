import { describe, expect, test, vi } from 'vitest';
import { Still } from '../../../sim/still/still.ts';
import type { Progress } from '../../../src/workers/progress.ts';
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

  const long = { run: { duration_s: 60_000, stopAtDistillate_kg: 0.1 }, advanced: { step_s: 0.1, segments: 40 } };

  test('that takes long tells how far it has come, and is the same run', () => {
    const told: Progress[] = [];
    const answer = runTasks.run(long, (progress) => told.push(progress));
    const untold = runTasks.run(long);
    expect(told.length).toBeGreaterThan(1);
    expect(told[0]?.share).toBe(0);
    expect(told.map(({ share }) => share)).toEqual([...told].map(({ share }) => share).sort((a, b) => a - b));
    expect(told.every(({ whole_s }) => whole_s > 3)).toBe(true);
    if (answer.kind !== 'ran' || untold.kind !== 'ran') throw new Error('it did not run');
    expect(answer.result.record).toEqual(untold.result.record);
    expect([answer.awaited, untold.awaited]).toEqual([undefined, undefined]);
  });

  test('that takes long is run in coarse steps where the page is to open at once, and only then', () => {
    const rough = runTasks.firstRun(long);
    if (rough.kind !== 'ran') throw new Error('it did not run');
    expect([rough.awaited?.advanced.step_s, rough.result.scenario.advanced.step_s]).toEqual([0.1, 10]);
    const quick = runTasks.firstRun({ run: { duration_s: 600 } });
    if (quick.kind !== 'ran') throw new Error('it did not run');
    expect([quick.awaited, quick.result.scenario.advanced.step_s]).toEqual([undefined, 1]);
  });
});
