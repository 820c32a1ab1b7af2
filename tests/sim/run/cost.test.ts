/** What a run may cost: refused before it starts where it would take minutes, its record thinned where it would fill the memory. */
import { describe, expect, it } from 'vitest';
import { englishReader, problemMessage, readScenario, simulate } from '../../../sim/index.ts';

describe('a run', () => {
  const costly = { run: { duration_s: 259_200 }, advanced: { step_s: 0.05, segments: 200 } };

  it('that would take minutes is refused, and the field to change is named', () => {
    const read = readScenario(costly);
    if (read.ok) throw new Error('it is taken');
    expect(read.problems.map((problem) => problemMessage(problem, englishReader('metric')))).toEqual([
      expect.stringMatching(/^Time step: .+ is not possible; a run this long.* needs steps of at least /u) as string,
    ]);
    const [problem] = read.problems;
    if (problem?.kind !== 'takes-too-long') throw new Error(problem?.kind);
    const { least_s } = problem.values;
    expect(readScenario({ ...costly, advanced: { ...costly.advanced, step_s: least_s } }).ok).toBe(true);
  });

  it('of the longest plan is taken in its usual steps', () =>
    expect(readScenario({ run: { duration_s: 259_200 } }).ok).toBe(true));

  it('keeps every so many points where its record would be too large, the first and the last among them', () => {
    const read = readScenario({
      heat: { setting: [{ at_s: 0, value: 0 }] },
      run: { duration_s: 10_800 },
      advanced: { step_s: 1, recordEvery_s: 1, segments: 200 },
    });
    if (!read.ok) throw new Error('it is refused');
    const { record, summary } = simulate(read.scenario);
    const times = record.columns.time_s;
    expect([times[0], times[1], times[record.rows - 1]]).toEqual([0, 2, summary.end_s]);
  });
});
