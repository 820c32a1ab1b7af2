import { describe, expect, it } from 'vitest';
import { concludeComparison } from '../../../sim/answers/comparison/conclusion.ts';
import type { CompareRow, CompareRun } from '../../../sim/answers/comparison/table.ts';
import type { EventKind } from '../../../sim/index.ts';
import { eventOf } from '../messages/sample-events.ts';

const minute = '\u202fmin';
const run = (name: string, ...alarms: EventKind[]): CompareRun => ({
  name,
  worst: alarms.length > 0 ? 'alarm' : null,
  cautions: alarms.map((kind) => eventOf(kind, 60, { severity: 'alarm' })),
});

interface Numbers {
  readonly oil?: (number | null)[];
  readonly time?: (number | null)[];
  readonly price?: (number | null)[];
  readonly perSteam?: (number | null)[];
  readonly shares?: Readonly<Record<string, (number | null)[]>>;
}
const row = (id: CompareRow['id'], values: (number | null)[], title: string = id): CompareRow => ({
  id,
  title,
  unit: '1',
  better: 'neither',
  values,
  differences: values,
});
const conclude = (
  runs: readonly CompareRun[],
  { oil = [10, 10], time = [3600, 3600], price = [0.1, 0.1], perSteam = [5, 5], shares = {} }: Numbers,
) =>
  concludeComparison(runs, [
    row('oil', oil),
    row('timeTo90', time),
    row('costPerOil', price),
    row('oilPerSteam', perSteam),
    ...Object.entries(shares).map(([name, values]) => row(`share-${name}`, values, `${name} in the oil`)),
  ]);
const two = [run('Slow'), run('Fast')];

describe('the conclusion of a comparison', () => {
  it('is two sentences when nothing differs', () => {
    expect(conclude(two, {})).toEqual([
      'All collect about the same oil, 10 mL.',
      'They take about the same time to 90 % of their oil, 1\u202fh.',
    ]);
  });

  it('names the most and the least oil', () => {
    expect(conclude(two, { oil: [36.24, 31.9] })[0]).toBe(
      '“Slow” collects the most oil, 36 mL; “Fast” the least, 32 mL.',
    );
  });

  it('says when there is no oil at all', () => {
    const [oil, time] = conclude(two, { oil: [0, 0], time: [null, null], price: [null, null], perSteam: [0, 0] });
    expect(oil).toBe('None of these runs collects any oil.');
    expect(time).toBe('Fewer than two of them collect oil, so their times cannot be compared.');
  });

  it('names the quick and the slow', () => {
    expect(conclude(two, { time: [5400, 2400] })[1]).toBe(
      `“Fast” has 90 % of its oil after 40${minute}, “Slow” after 1\u202fh 30${minute}.`,
    );
  });

  it('compares what a millilitre costs', () => {
    expect(conclude(two, { price: [0.1, 0.15], perSteam: [8, 5] })[2]).toBe(
      'A millilitre costs least in “Slow”; in “Fast” it takes 1.5 times as much money for energy and water.',
    );
  });

  it('turns to oil per steam where the price is alike, or nought, or open', () => {
    const sentence = 'A kilogram of steam brings 8 mL in “Slow” and 5 mL in “Fast”.';
    for (const price of [
      [0.1, 0.1],
      [0, 0.2],
      [0.1, null],
    ])
      expect(conclude(two, { price, perSteam: [8, 5] })[2]).toBe(sentence);
  });

  it('names the constituent that differs most, from one percentage point on', () => {
    const shares = { linalool: [0.3, 0.34], 'linalyl acetate': [0.4, 0.33], myrcene: [0.02, 0.025] };
    expect(conclude(two, { shares })[2]).toBe(
      'The oils differ most in linalyl acetate: 40 % in “Slow”, 33 % in “Fast”.',
    );
    expect(conclude(two, { shares: { myrcene: [0.02, 0.025] } })).toHaveLength(2);
    expect(conclude(two, { shares: { myrcene: [0.02, null] } })).toHaveLength(2);
    expect(conclude(two, { shares: { myrcene: [0.015, 0.045] } })[2]).toBe(
      'The oils differ most in myrcene: 4.5 % in “Fast”, 1.5 % in “Slow”.',
    );
  });

  it('warns of the run that should not be run so, with up to two reasons', () => {
    expect(
      conclude([run('Slow'), run('Fast', 'vapour-escapes', 'vapour-escapes', 'pot-dry', 'pressure-high')], {}).at(-1),
    ).toBe('“Fast” lets vapour escape and runs the pot dry: do not run it so.');
    expect(conclude([run('Slow'), run('Fast', 'cooling-boils')], {}).at(-1)).toBe(
      '“Fast” brings the cooling water to the boil: do not run it so.',
    );
  });

  it('warns of all when all raise alarms', () => {
    expect(conclude([run('Slow', 'scorch'), run('Fast', 'circuit-overloaded')], {}).at(-1)).toBe(
      '“Slow” scorches the charge; “Fast” overloads the circuit; none of these runs is safe as set.',
    );
  });

  it('has a word for an alarm it does not know', () => {
    expect(conclude([run('Slow'), run('Fast', 'neck-fast')], {}).at(-1)).toBe(
      '“Fast” needs you at once: do not run it so.',
    );
  });

  it('passes over runs that never got so far when it compares three', () => {
    const three = [run('A'), run('B'), run('C')];
    expect(
      conclude(three, { oil: [3, 9, 6], time: [100, null, 6000], price: [null, null, 0.2], perSteam: [1, 1, 1] }),
    ).toEqual([
      '“B” collects the most oil, 9 mL; “A” the least, 3 mL.',
      `“A” has 90 % of its oil after 100\u202fs, “C” after 1\u202fh 40${minute}.`,
    ]);
  });

  it('never grows beyond five sentences', () => {
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
