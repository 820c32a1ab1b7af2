import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nudged } from '../../../src/ui/nudge.ts';
import { createQuantityEntry, type QuantityEntry } from '../../../src/ui/quantity-entry.ts';
import type { AskedQuantity } from '../../../sim/units/index.ts';

const diameter: AskedQuantity = { title: 'Pot diameter', unit: 'm', path: 'pot.diameter_m', min: 0.05, max: 1.5 };

/** A field over a plain variable that refuses what `refuse` says. */
function field(
  value: number | null,
  asked: AskedQuantity = diameter,
  refuse: (value: number | null) => string | null = () => null,
) {
  const kept = { value, commits: [] as (number | null)[], nudges: 0 };
  const entry: QuantityEntry = createQuantityEntry({
    get value() {
      return kept.value;
    },
    asked,
    system: 'metric',
    onCommit: (next, nudge) => {
      const refusal = refuse(next);
      if (refusal !== null) return refusal;
      kept.value = next;
      kept.commits.push(next);
      if (nudge) kept.nudges += 1;
      return null;
    },
  });
  return { kept, entry };
}

describe('a number field', () => {
  test('keeps the text while it is typed and hands it on when finished', async () => {
    const { kept, entry } = field(0.32);
    entry.type('40 cm');
    expect([entry.text(), kept.commits]).toEqual(['40 cm', []]);
    await entry.finish();
    expect([entry.text(), kept.commits]).toEqual(['400', [0.4]]);
  });

  test('keeps a text that can’t be read, with the reason', async () => {
    const { kept, entry } = field(0.32);
    entry.type('5 m');
    await entry.finish();
    expect(entry.text()).toBe('5 m');
    expect(entry.error()).toContain('too much');
    expect(kept.commits).toEqual([]);
  });

  test('keeps a text that is refused, with the reason given', async () => {
    const { entry } = field(0.32, diameter, () => 'It does not fit the stove.');
    entry.type('400');
    await entry.finish();
    expect([entry.text(), entry.error()]).toEqual(['400', 'It does not fit the stove.']);
  });

  test('gives back what was there, and says whether there was anything to give back', async () => {
    const { entry } = field(0.32);
    entry.type('5 m');
    await entry.finish();
    expect(entry.revert()).toBe(true);
    expect([entry.text(), entry.error()]).toEqual(['320', null]);
    expect(entry.revert()).toBe(false);
  });

  test('does not count leaving it untouched, or typing what it shows, as a change', async () => {
    const { kept, entry } = field(0.123456789);
    await entry.finish();
    entry.type(entry.text());
    await entry.finish();
    expect([kept.commits, kept.value]).toEqual([[], 0.123456789]);
  });

  test('left open is empty and is null', async () => {
    const barometer: AskedQuantity = {
      title: 'Barometer',
      unit: 'Pa',
      path: 'site.barometer_Pa',
      min: 55_000,
      max: 108_000,
      nullable: true,
    };
    const { kept, entry } = field(101_300, barometer);
    entry.type('');
    await entry.finish();
    expect([kept.value, entry.text()]).toEqual([null, '']);
  });

  test('forgets an older text that is read after a newer one', async () => {
    const { kept, entry } = field(0.32);
    entry.type('50 cm');
    const slow = entry.finish();
    entry.type('60 cm');
    await Promise.all([slow, entry.finish()]);
    expect(kept.commits).toEqual([0.6]);
  });

  test('says when a volume was taken as water', async () => {
    const { entry } = field(8, { title: 'Water', unit: 'kg', path: 'pot.water_kg', min: 0.05, max: 1500 });
    entry.type('2 gal');
    await entry.finish();
    expect(entry.note()).toContain('1 kg to the litre');
    entry.type('3');
    expect(entry.note()).toBeNull();
  });

  test('is nudged within its range, but not while something is typed', () => {
    const { kept, entry } = field(1.49);
    entry.nudge(1, true);
    expect(kept.value).toBe(1.5);
    entry.nudge(-1, false);
    expect([kept.value, kept.nudges]).toEqual([1.4, 2]);
    entry.type('3');
    entry.nudge(1, false);
    expect(kept.commits.length).toBe(2);
  });
});

describe('a nudge', () => {
  test.each([
    [320, 1, 330],
    [320, -1, 310],
    [1.5, 1, 1.6],
    [1.4, 1, 1.5],
    [100, -1, 99],
    [99, 1, 100],
    [0.25, -1, 0.24],
    [33, 1, 34],
    [-5, 1, -4.9],
  ] as const)('of %d by %d is %d', (from, direction, to) => {
    expect(nudged(from, direction)).toBe(to);
  });

  test('of a count is at least one, and with Shift ten times as far', () => {
    expect(nudged(7, 1, { least: 1 })).toBe(8);
    expect(nudged(320, 1, { large: true })).toBe(400);
  });

  test('from nought goes by a hundredth of the range', () => {
    expect(nudged(0, 1, { span: 100 })).toBe(1);
    expect(nudged(0, 1, { span: 0.02 })).toBe(0.0001);
  });

  test('always moves, the right way, and up and down again comes back for round numbers', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 99 }), fc.integer({ min: -6, max: 6 }), (mantissa, exponent) => {
        const value = Number(`${mantissa}e${exponent}`);
        const up = nudged(value, 1);
        expect(up).toBeGreaterThan(value);
        expect(nudged(value, -1)).toBeLessThan(value);
        expect(nudged(up, -1)).toBeCloseTo(value, 9 - exponent);
      }),
    );
  });
});
