import { describe, expect, test } from 'vitest';
import { preview, runTasks } from '../../../src/workers/run-tasks.ts';
import { scenarioWith } from '../bench/made-up-run.ts';

describe('running a scenario', () => {
  test('that holds mistakes answers with them, whatever it is', () => {
    for (const input of [null, 'text', [], { pot: { diameter_m: -1 } }])
      expect(runTasks.run(input).kind).toBe('invalid');
  });

  test('in full keeps the step of the scenario', () => {
    const answer = runTasks.run({ run: { duration_s: 600 } });
    expect(answer.kind === 'ran' && [answer.fidelity, answer.result.scenario.run.duration_s]).toEqual(['full', 600]);
  });

  test('quickly gives a run of the same scenario that ends alike, or the full run where that is short', () => {
    const quick = runTasks.run({}, 'preview');
    const full = runTasks.run({});
    if (quick.kind !== 'ran' || full.kind !== 'ran') throw new Error('the plain scenario does not run');
    expect([quick.fidelity, full.fidelity]).toEqual(['preview', 'full']);
    expect(quick.result.scenario).toEqual(full.result.scenario);
    expect(quick.result.summary.oilCollected_mL / full.result.summary.oilCollected_mL).toBeCloseTo(1, 2);
    expect(quick.result.summary.condensingLengthPeak_m / full.result.summary.condensingLengthPeak_m).toBeCloseTo(1, 1);
    expect(runTasks.run({ run: { duration_s: 600 } }, 'preview')).toMatchObject({ kind: 'ran', fidelity: 'full' });
  });
});

test('a preview is not made where it gains nothing', () => {
  expect(preview(scenarioWith({ run: { duration_s: 1200 } }))).toBeNull();
  expect(
    preview(scenarioWith({ advanced: { step_s: 10, recordEvery_s: 10 }, run: { duration_s: 86_400 } })),
  ).toBeNull();
  expect(preview(scenarioWith({ advanced: { step_s: 0.5, recordEvery_s: 1 } }))?.advanced.step_s).toBe(1);
});
