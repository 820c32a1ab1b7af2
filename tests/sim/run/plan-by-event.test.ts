/** Heat and tap that wait for what the still does, in whole runs. */
import { describe, expect, it } from 'vitest';
import {
  columnAt,
  ensembleDesign,
  exampleScenario,
  memberScenario,
  readScenario,
  simulate,
  type RunResult,
  type Scenario,
} from '../../../sim/index.ts';

const lavender = exampleScenario('gentle-lavender');

function still(setting: unknown, more: Partial<Record<'pot' | 'run' | 'cooling', object>> = {}): Scenario {
  const read = readScenario({
    ...lavender,
    charge: { ...lavender.charge, mass_kg: 1.5 },
    heat: { ...lavender.heat, setting },
    pot: { ...lavender.pot, ...more.pot },
    cooling: { ...lavender.cooling, ...more.cooling },
    run: { ...lavender.run, duration_s: 4800, ...more.run },
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.scenario;
}

const WAITING = [
  { at_s: 0, value: 1 },
  { at_s: 0, after: 'first-drop', value: 0.5 },
];
const dropOf = ({ summary }: RunResult): number => {
  if (summary.firstDrop_s === null) throw new Error('no drop came');
  return summary.firstDrop_s;
};

describe('full heat until the first drop', () => {
  it.each([4, 8, 11])('turns a pot with %d kg of water down at its own first drop', (water_kg) => {
    const run = simulate(still(WAITING, { pot: { water_kg, gridHeight_m: 0.16 } }));
    const drop = dropOf(run);
    const { recordEvery_s } = run.scenario.advanced;
    expect(columnAt(run.record, 'heatSetting', drop - recordEvery_s)).toBe(1);
    expect(columnAt(run.record, 'heatSetting', drop + 2 * recordEvery_s)).toBe(0.5);
  });

  it('comes the later the more water there is', () => {
    const drops = [4, 8, 11].map((water_kg) =>
      dropOf(simulate(still(WAITING, { pot: { water_kg, gridHeight_m: 0.16 } }))),
    );
    expect(drops[1]).toBeGreaterThan((drops[0] as number) * 1.4);
    expect(drops[2]).toBeGreaterThan((drops[1] as number) * 1.2);
  });

  it('is the same run as one told the minute beforehand', () => {
    const waiting = simulate(still(WAITING));
    const told = simulate(
      still([
        { at_s: 0, value: 1 },
        { at_s: dropOf(waiting), value: 0.5 },
      ]),
    );
    expect(told.summary).toEqual(waiting.summary);
    expect(told.balance).toEqual(waiting.balance);
  });

  it('stays full where no drop comes', () => {
    const run = simulate(still(WAITING, { run: { duration_s: 900 } }));
    expect(run.summary.firstDrop_s).toBe(null);
    expect(columnAt(run.record, 'heatSetting', 900)).toBe(1);
  });
});

it('a tap can wait for the first boil', () => {
  const run = simulate(
    still([{ at_s: 0, value: 1 }], {
      cooling: {
        flow_kg_s: [
          { at_s: 0, value: 0 },
          { at_s: 120, after: 'first-boil', value: 0.01 },
        ],
      },
    }),
  );
  const boil = run.summary.firstBoil_s as number;
  expect(columnAt(run.record, 'coolantFlow_kg_s', boil + 100)).toBe(0);
  expect(columnAt(run.record, 'coolantFlow_kg_s', boil + 150)).toBe(0.01);
});

it('each likely run waits for its own drop', () => {
  const design = ensembleDesign(still(WAITING), 6, 3);
  const drawn = design.rows.flatMap(({ kind }, index) => (kind === 'draw' ? [index] : []));
  const runs = drawn.map((index) => simulate(memberScenario(design, index)));
  const drops = runs.map(dropOf);
  expect(new Set(drops).size).toBeGreaterThan(3);
  runs.forEach((run, index) => {
    const drop = drops[index] as number;
    const { recordEvery_s } = run.scenario.advanced;
    expect(columnAt(run.record, 'heatSetting', drop - recordEvery_s)).toBe(1);
    expect(columnAt(run.record, 'heatSetting', drop + 2 * recordEvery_s)).toBe(0.5);
  });
});
