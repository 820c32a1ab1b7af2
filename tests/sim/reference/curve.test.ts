import { describe, expect, it } from 'vitest';
import { curveOver } from '../../../sim/reference/curve.ts';
import { correlations, findCorrelation } from '../../../sim/reference/entries.ts';
import { usualValues } from '../../../sim/reference/usual-values.ts';

const entry = (name: string) => {
  const found = findCorrelation(name);
  if (!found) throw new Error(`no entry ${name}`);
  return found;
};

/** Some relations march along a whole tube for each point. */
const FEW = 25;

describe('the curve of a relation', () => {
  it('runs over the range of the source and goes through the values of the relation itself', () => {
    const surfaceTension = entry('surface-tension');
    const { from, to, xs, ys, isLogarithmic } = curveOver(surfaceTension, usualValues(surfaceTension), 'T');
    expect([from, to, isLogarithmic]).toEqual([273.15, 647.096, false]);
    expect([xs[0], xs.at(-1)]).toEqual([273.15, 647.096]);
    xs.forEach((T, place) => expect(ys[place]).toBe(surfaceTension.evaluate({ T })));
  });

  it('holds the other arguments', () => {
    const steam = entry('film-coefficient-chato-steam');
    const values = { T_sat: 373.15, T_wall: 353.15, D_i: 0.01 };
    const { xs, ys } = curveOver(steam, values, 'D_i');
    expect(ys[60]).toBe(steam.evaluate({ ...values, D_i: xs[60] as number }));
  });

  it('steps by ratio through a range of many decades', () => {
    const cylinder = entry('nusselt-horizontal-cylinder-morgan');
    const { xs, isLogarithmic } = curveOver(cylinder, usualValues(cylinder), 'Ra');
    expect(isLogarithmic).toBe(true);
    expect((xs[1] as number) / (xs[0] as number)).toBeCloseTo((xs[120] as number) / (xs[119] as number), 9);
  });

  it('has a gap where the relation gives no value', () => {
    const volume = entry('region-1-volume');
    const { ys } = curveOver(volume, { T: 373.15, p: 101_325 }, 'p');
    expect(ys[0]).toBeNull();
    expect(ys.at(-1)).toBeGreaterThan(0);
  });

  it.each(
    correlations.filter(({ name }) => !name.startsWith('rivulet-cooling')).map((each) => [each.name, each] as const),
  )('can be drawn over the first argument for the usual values: %s', (_, each) => {
    const [first = ''] = Object.keys(each.arguments);
    const { ys } = curveOver(each, usualValues(each), first, FEW);
    expect(ys.filter((y) => y !== null).length).toBeGreaterThan(FEW / 3);
  });
});
