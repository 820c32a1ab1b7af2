import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { constituents } from '../../../sim/index.ts';
import { change } from '../../../src/state/edit.ts';
import {
  addsUp,
  normalised,
  shareSum,
  withAnother,
  withConstituent,
  without,
  withShare,
  type Composition,
} from '../../../src/pages/bench/settings/composition-draft.ts';
import { constituentIds, constituentName } from '../../../src/pages/bench/settings/constituent-names.ts';
import { withAnotherLot, withLot, withoutLot } from '../../../src/pages/bench/settings/ice-lots.ts';
import { still } from './still.ts';

const two: Composition = [
  { constituent: 'linalool', share: 0.6 },
  { constituent: 'camphor', share: 0.3 },
];

describe('shares of an oil', () => {
  test('scaled to one keep their proportions', () => {
    expect(normalised(two).map(({ share }) => Number(share.toPrecision(6)))).toEqual([0.666667, 0.333333]);
  });

  test('scaled to one are taken by the model, whatever they were', () => {
    const share = fc.double({ min: 0.0001, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.constantFrom(...constituentIds), { minLength: 1, maxLength: 12 }),
        fc.array(share, { minLength: 12, maxLength: 12 }),
        (ids, shares) => {
          const rows = normalised(ids.map((constituent, index) => ({ constituent, share: shares[index] ?? 0.1 })));
          expect(Math.abs(shareSum(rows) - 1)).toBeLessThan(1e-12);
          expect(change(still(), 'charge.composition', rows).ok).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('all nought become equal', () => {
    expect(normalised(two.map((row) => ({ ...row, share: 0 }))).map(({ share }) => share)).toEqual([0.5, 0.5]);
  });

  test('rounded on the screen still add up', () => {
    expect(
      addsUp([
        { constituent: 'linalool', share: 0.3333 },
        { constituent: 'camphor', share: 0.66668 },
      ]),
    ).toBe(true);
    expect(addsUp(two)).toBe(false);
  });

  test('one more takes a free constituent and what is missing', () => {
    const three = withAnother(two, ['linalool', 'camphor', 'limonene']);
    expect(three[2]).toEqual({ constituent: 'limonene', share: 0.1 });
    expect(withAnother(two, ['linalool', 'camphor'])).toBe(two);
  });

  test('are changed one at a time, the others shared', () => {
    expect(withShare(two, 1, 0.4)[0]).toBe(two[0]);
    expect(withConstituent(two, 0, 'limonene')[0]).toEqual({ constituent: 'limonene', share: 0.6 });
    expect(without(two, 0)).toEqual([two[1]]);
  });

  test('every constituent has a name and is offered once', () => {
    expect([...constituentIds].sort()).toEqual(constituents.map(({ id }) => id).sort());
    expect(constituentName('linalyl_acetate')).toBe('linalyl acetate');
  });
});

describe('lots of ice', () => {
  test('stay in the order they go in', () => {
    const lots = [
      { at_s: 600, mass_kg: 5 },
      { at_s: 1200, mass_kg: 3 },
    ];
    expect(withLot(lots, 0, { at_s: 1800 }).map(({ at_s }) => at_s)).toEqual([1200, 1800]);
    expect(withoutLot(lots, 0)).toEqual([lots[1]]);
  });

  test('the first is five kilograms at an hour, the next like the last', () => {
    const one = withAnotherLot([]);
    expect(one).toEqual([{ at_s: 3600, mass_kg: 5 }]);
    expect(withAnotherLot(one)[1]).toEqual({ at_s: 5400, mass_kg: 5 });
    expect(change(still(), 'cooling.ice', withAnotherLot(one)).ok).toBe(true);
  });
});
