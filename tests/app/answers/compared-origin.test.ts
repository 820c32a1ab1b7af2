/** Compared runs that remember which still they come from, and are made anew when that one changes. */
import { describe, expect, test } from 'vitest';
import { changedBy, isStale, madeAnew, originOf, readOrigin } from '../../../src/state/compared-origin.ts';
import { withValueAtPath } from '../../../src/state/field-path.ts';
import { scenarioWith } from '../bench/made-up-run.ts';

const bench = scenarioWith({ name: 'Shed still' });
const longer = withValueAtPath(bench, 'condenser.length_m', 7.5);
const renamed = { ...bench, name: 'Porch still' };
const copied = { scenario: bench, origin: originOf(bench) };

describe('a comparison is stale', () => {
  test('once the still on the bench is another than the one it was made of', () => {
    expect(isStale([copied], structuredClone(bench))).toBe(false);
    expect(isStale([copied], longer)).toBe(true);
    expect(isStale([copied], renamed)).toBe(true);
  });

  test('but not when one of its runs has been put on the bench, nor where nobody knows what it was made of', () => {
    expect(isStale([copied, { scenario: longer, origin: originOf(bench) }], longer)).toBe(false);
    expect(isStale([{ scenario: bench, origin: null }], longer)).toBe(false);
  });
});

describe('a run made anew', () => {
  test('is the new still with what the reader had set in the old one', () => {
    const origin = changedBy(changedBy(originOf(bench), 'charge.mass_kg', 0.75), 'name', 'Less plant');
    const { scenario, origin: next } = madeAnew(origin, longer, null);
    expect(scenario).toEqual({ ...longer, name: 'Less plant', charge: { ...longer.charge, mass_kg: 0.75 } });
    expect(next).toEqual({ ...origin, bench: longer });
    expect(isStale([{ scenario, origin: next }], longer)).toBe(false);
  });

  test('follows the name of its still, unless the reader gave it one', () => {
    expect(madeAnew(originOf(bench), renamed, null).scenario.name).toBe('Porch still');
  });

  test('is boiled as gently or as hard as before', () => {
    const boiled = { gentle: { ...longer, name: 'soft' }, hard: { ...longer, name: 'fierce' } };
    expect(madeAnew(originOf(bench, 'hard'), longer, boiled).scenario).toBe(boiled.hard);
    expect(madeAnew(originOf(bench, 'copy'), longer, boiled).scenario).toBe(longer);
  });

  test('leaves out what the new still has no place for', () => {
    const origin = changedBy(originOf(bench), 'heat.setting.7.value', 0.4);
    const { scenario, origin: next } = madeAnew(origin, longer, null);
    expect([scenario, next.changes]).toEqual([longer, {}]);
  });
});

test('an origin is read back as it was kept, and anything else is none', () => {
  const origin = changedBy(originOf(bench, 'gentle'), 'condenser.length_m', 3);
  expect(readOrigin(structuredClone(origin))).toEqual(origin);
  for (const other of [
    null,
    3,
    {},
    { ...origin, made: 'twice' },
    { ...origin, bench: null },
    { ...origin, changes: 1 },
  ])
    expect(readOrigin(other)).toBe(null);
});
