import { describe, expect, it } from 'vitest';
import { concludeComparison } from '../../../sim/answers/comparison/conclusion.ts';
import type { CompareRow, CompareRun } from '../../../sim/answers/comparison/table.ts';
import type { EventKind } from '../../../sim/index.ts';
import { eventOf } from '../messages/sample-events.ts';

const run = (name: string, ...alarms: EventKind[]): CompareRun => ({
  name,
  number: null,
  worst: alarms.length > 0 ? 'alarm' : null,
  cautions: alarms.map((kind) => eventOf(kind, 60, { severity: 'alarm' })),
});

interface Numbers {
  readonly oil?: (number | null)[];
  readonly end?: (number | null)[];
  readonly water?: (number | null)[];
  readonly time?: (number | null)[];
  readonly price?: (number | null)[];
  readonly perSteam?: (number | null)[];
  readonly shares?: Readonly<Record<string, (number | null)[]>>;
}
const row = (id: CompareRow['id'], values: (number | null)[], constituent: string | null = null): CompareRow => ({
  id,
  constituent,
  unit: '1',
  better: 'neither',
  values,
  differences: values,
});
const conclude = (
  runs: readonly CompareRun[],
  {
    oil = [10, 10],
    end = runs.map(() => 7200),
    water = runs.map(() => 2.9),
    time = [3600, 3600],
    price = [0.1, 0.1],
    perSteam = [5, 5],
    shares = {},
  }: Numbers,
) =>
  concludeComparison(runs, [
    row('oil', oil),
    row('end', end),
    row('distillate', water),
    row('timeTo90', time),
    row('costPerOil', price),
    row('oilPerSteam', perSteam),
    ...Object.entries(shares).map(([name, values]) => row(`share-${name}`, values, name)),
  ]);
const two = [run('Slow'), run('Fast')];

describe('the conclusion of a comparison', () => {
  const at = (index: number, value: number) => ({ run: index, value });
  const inTwoHours = { kind: 'time', time_s: 7200 };

  it('is two facts when nothing differs', () => {
    expect(conclude(two, {})).toEqual([
      { kind: 'oil-alike', oil_mL: 10, basis: inTwoHours },
      { kind: 'time-alike', time_s: 3600 },
    ]);
  });

  it('names the most and the least oil', () => {
    expect(conclude(two, { oil: [36.24, 31.9] })[0]).toEqual({
      kind: 'oil-differs',
      most: at(0, 36.24),
      least: at(1, 31.9),
      basis: inTwoHours,
    });
  });

  it.each([
    ['time, where the runs last alike', [7200, 7250], [2.9, 1.4], { kind: 'time', time_s: 7250 }],
    ['water, where as much is distilled', [11_160, 6720], [2.9, 2.88], { kind: 'water', water_kg: 2.9 }],
    ['neither, and tells how long each runs', [11_160, 6720], [2.9, 1.4], { kind: 'none', times_s: [11_160, 6720] }],
  ])('sets the oil side by side for equal %s', (_, end, water, basis) => {
    expect(conclude(two, { oil: [36, 32], end, water })[0]).toMatchObject({ kind: 'oil-differs', basis });
    expect(conclude(two, { oil: [36, 36], end, water })[0]).toMatchObject({ kind: 'oil-alike', basis });
  });

  it('tells when there is no oil at all', () => {
    const none = { oil: [0, 0], time: [null, null], price: [null, null], perSteam: [0, 0] };
    expect(conclude(two, none)).toEqual([{ kind: 'oil-none' }, { kind: 'time-unknown' }]);
  });

  it('names the quick and the slow', () => {
    expect(conclude(two, { time: [5400, 2400] })[1]).toEqual({
      kind: 'time-differs',
      soonest: at(1, 2400),
      latest: at(0, 5400),
    });
  });

  it('compares what a millilitre costs', () => {
    expect(conclude(two, { price: [0.1, 0.15], perSteam: [8, 5] })[2]).toMatchObject({
      kind: 'cost-differs',
      cheapest: 0,
      dearest: 1,
      times: expect.closeTo(1.5, 12) as number,
    });
  });

  it.each([
    ['alike', [0.1, 0.1]],
    ['nought', [0, 0.2]],
    ['open', [0.1, null]],
  ])('turns to oil per steam where the price is %s', (_, price) => {
    expect(conclude(two, { price, perSteam: [8, 5] })[2]).toEqual({
      kind: 'steam-differs',
      most: at(0, 8),
      least: at(1, 5),
    });
  });

  it('names the constituent that differs most, from one percentage point on', () => {
    const shares = { linalool: [0.3, 0.34], linalyl_acetate: [0.4, 0.33], myrcene: [0.02, 0.025] };
    expect(conclude(two, { shares })[2]).toEqual({
      kind: 'make-up-differs',
      constituent: 'linalyl_acetate',
      most: at(0, 0.4),
      least: at(1, 0.33),
    });
    expect(conclude(two, { shares: { myrcene: [0.02, 0.025] } })).toHaveLength(2);
    expect(conclude(two, { shares: { myrcene: [0.02, null] } })).toHaveLength(2);
  });

  it('warns first of each run that raises alarms, each kind once', () => {
    expect(conclude([run('Slow'), run('Fast', 'vapour-escapes', 'vapour-escapes', 'pot-dry')], {})[0]).toEqual({
      kind: 'alarms',
      severity: 'alarm',
      runs: [{ run: 1, events: ['vapour-escapes', 'pot-dry'] }],
      all: false,
    });
    expect(conclude([run('Slow', 'scorch'), run('Fast', 'circuit-overloaded')], {})[0]).toMatchObject({
      kind: 'alarms',
      all: true,
    });
  });

  it('passes over runs that never got so far when it compares three', () => {
    const three = [run('A'), run('B'), run('C')];
    expect(
      conclude(three, { oil: [3, 9, 6], time: [100, null, 6000], price: [null, null, 0.2], perSteam: [1, 1, 1] }),
    ).toEqual([
      { kind: 'oil-differs', most: at(1, 9), least: at(0, 3), basis: inTwoHours },
      { kind: 'time-differs', soonest: at(0, 100), latest: at(2, 6000) },
    ]);
  });

  it('never grows beyond five facts', () => {
    expect(
      conclude([run('Slow'), run('Fast', 'pot-dry')], {
        oil: [9, 3],
        time: [9000, 900],
        price: [1, 2],
        perSteam: [9, 1],
        shares: { camphor: [0.1, 0.5] },
      }),
    ).toHaveLength(5);
  });
});
