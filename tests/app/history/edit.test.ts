import { describe, expect, test } from 'vitest';
import { readScenario, type Scenario } from '../../../sim/index.ts';
import { change, changeMany } from '../../../src/state/edit.ts';

const still = (): Scenario => {
  const read = readScenario({});
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.scenario;
};

describe('an edit of one field', () => {
  test('leaves the old scenario as it was and shares every part that it does not touch', () => {
    const before = still();
    const edit = change(before, 'pot.diameter_m', 0.4);
    if (!edit.ok) throw new Error('refused');
    expect(edit.scenario.pot.diameter_m).toBe(0.4);
    expect(before.pot.diameter_m).not.toBe(0.4);
    expect(edit.scenario.charge).toBe(before.charge);
    expect(edit.scenario.condenser).toBe(before.condenser);
  });

  test('reaches into schedules and lists', () => {
    const edit = change(still(), 'heat.setting.0.value', 0.5);
    expect(edit.ok && edit.scenario.heat.setting[0]?.value).toBe(0.5);
  });

  test('to the value that is there gives back the same scenario', () => {
    const before = still();
    const edit = change(before, 'neck.bore_m', before.neck.bore_m);
    expect(edit.ok && edit.scenario).toBe(before);
  });

  test('outside the range is refused with the field, the value and what is allowed', () => {
    const edit = change(still(), 'pot.diameter_m', 9);
    if (edit.ok) throw new Error('accepted');
    expect(edit.problems.map(({ path, value }) => [path, value])).toEqual([['pot.diameter_m', 9]]);
    expect(edit.problems[0]).toMatchObject({ kind: 'outside-range', values: { min: 0.05, max: 1.5 } });
  });
});

describe('a scenario that is already wrong somewhere', () => {
  const overfull = (): Scenario => ({
    ...still(),
    neck: { ...still().neck, risingLength_m: still().neck.length_m + 1 },
  });

  test('may still be edited elsewhere', () => {
    const edit = change(overfull(), 'pot.emissivity', 0.5);
    expect(edit.ok && edit.scenario.pot.emissivity).toBe(0.5);
  });

  test('takes the edit that mends it and refuses one that leaves the same field wrong', () => {
    expect(change(overfull(), 'neck.risingLength_m', 0.1).ok).toBe(true);
    expect(change(overfull(), 'neck.risingLength_m', still().neck.length_m + 2).ok).toBe(false);
  });
});

describe('an edit of several fields', () => {
  test('is judged as a whole: bore and outside may grow together', () => {
    const { outsideDiameter_m } = still().condenser;
    expect(change(still(), 'condenser.insideDiameter_m', outsideDiameter_m + 0.001).ok).toBe(false);
    const both = changeMany(still(), {
      'condenser.insideDiameter_m': outsideDiameter_m + 0.001,
      'condenser.outsideDiameter_m': outsideDiameter_m + 0.003,
    });
    expect(both.ok && both.scenario.condenser.insideDiameter_m).toBe(outsideDiameter_m + 0.001);
  });

  test('is refused whole when one of them is wrong', () => {
    const edit = changeMany(still(), { 'pot.height_m': 0.4, 'pot.emissivity': 7 });
    if (edit.ok) throw new Error('accepted');
    expect(edit.problems.map(({ path }) => path)).toEqual(['pot.emissivity']);
  });
});
