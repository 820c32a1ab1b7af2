import { describe, expect, test } from 'vitest';
import { runTasks } from '../../../src/workers/run-tasks.ts';

describe('running a scenario', () => {
  test('that holds mistakes answers with them, whatever it is', () => {
    for (const input of [null, 'text', [], { pot: { diameter_m: -1 } }])
      expect(runTasks.run(input).kind).toBe('invalid');
  });

  test('answers with its run', () => {
    const answer = runTasks.run({ run: { duration_s: 600 } });
    expect(answer.kind === 'ran' && answer.result.scenario.run.duration_s).toBe(600);
  });
});
