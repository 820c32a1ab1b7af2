import { describe, expect, test } from 'vitest';
import { exampleScenario } from '../../../sim/index.ts';
import { bookTable } from '../../../src/pages/run-book/log-files.ts';
import { ternHollowBook } from '../../../src/pages/run-book/tern-hollow-book.ts';
import { EMPTY_ROW, minutesIn, readRows, type LoggedRows } from '../../../src/state/logbook.ts';
import { readLogbook, writtenLogbook } from '../../../src/state/logbook-schema.ts';
import { NO_FACTS, seasonsOf, yieldOf } from '../../../src/state/run-facts.ts';

const UNITS = { oil: 'mL', temperature: '°C', distillate: 'L' } as const;
const rows = (times: readonly string[], origin: Pick<LoggedRows, 'zero' | 'zeroAt'> = {}) =>
  readRows({ units: UNITS, rows: times.map((time) => ({ ...EMPTY_ROW, time, oil: '3' })), ...origin });
const minutes = (times: readonly string[], origin: Pick<LoggedRows, 'zero' | 'zeroAt'> = {}) =>
  rows(times, origin).points.map(({ time_s }) => time_s / 60);

describe('times of a log', () => {
  test('are read as people write them', () => {
    expect(['45', '45 min', '1:45', '1h45', '1 h 05 min', '2 h', '7,5', 'soon'].map(minutesIn)).toEqual([
      45,
      45,
      105,
      105,
      65,
      120,
      7.5,
      null,
    ]);
  });

  test('count from heat on, from the first drop, or by the clock past midnight', () => {
    expect(minutes(['1h45'])).toEqual([105]);
    expect(minutes(['10', '20'], { zero: 'first-drop', zeroAt: '27 min' })).toEqual([37, 47]);
    expect(minutes(['10:40', '11:05'], { zero: 'clock', zeroAt: '10:00' })).toEqual([40, 65]);
    expect(minutes(['0:10'], { zero: 'clock', zeroAt: '23:40' })).toEqual([30]);
  });

  test('are not known without their origin, and a time before it is told', () => {
    expect(rows(['10:40'], { zero: 'clock' }).problems.get(0)?.kind).toBe('time-missing');
    expect(rows(['9:50'], { zero: 'clock', zeroAt: '10:00' }).problems.get(0)?.kind).toBe('below-zero');
  });

  test('and readings beyond any still are asked about', () => {
    const { points, problems } = readRows({ units: UNITS, rows: [{ ...EMPTY_ROW, time: '30', oil: '1000000000' }] });
    expect([points.length, problems.get(0)?.kind]).toEqual([0, 'too-much']);
  });
});

describe('what follows from a run', () => {
  const scenario = exampleScenario('gentle-lavender');
  const run = {
    units: UNITS,
    rows: [
      { ...EMPTY_ROW, time: '40', oil: '12' },
      { ...EMPTY_ROW, time: '90', oil: '30' },
    ],
    scenario: {
      ...scenario,
      heat: { ...scenario.heat, energyPrice_J: 1e-7 },
      cooling: { ...scenario.cooling, waterPrice_m3: 0 },
    },
    facts: { ...NO_FACTS, plant: 'Lavender', date: '2025-06-24', plant_kg: 2, energy_J: 9e6 },
  };

  test('is its yield and its cost', () => {
    const found = yieldOf(run);
    expect([found.oil_mL, found.yield_mL_kg]).toEqual([30, 15]);
    expect(found.cost).toBeCloseTo(0.9, 9);
    expect(found.cost_mL).toBeCloseTo(0.03, 9);
    expect(yieldOf({ ...run, facts: NO_FACTS })).toMatchObject({ yield_mL_kg: null, cost: null, cost_mL: null });
  });

  test('is compared by plant and season', () => {
    const other = { ...run, facts: { ...run.facts, date: '2025-07-01', plant_kg: 3 } };
    expect(seasonsOf([run, other, { ...run, facts: NO_FACTS }])).toEqual([
      { plant: 'Lavender', seasons: [{ year: '2025', runs: 2, least_mL_kg: 10, mean_mL_kg: 12.5, most_mL_kg: 15 }] },
    ]);
  });
});

describe('the invented book', () => {
  test('shows three seasons, and comes through a file like any other', () => {
    const book = ternHollowBook();
    expect(seasonsOf(book.logs).map(({ plant, seasons }) => [plant, seasons.length])).toEqual([
      ['Lavender', 3],
      ['Rosemary', 2],
    ]);
    expect(book.logs.every((log) => log.facts.place.includes('invented') && readRows(log).problems.size === 0)).toBe(
      true,
    );
    const again = readLogbook(JSON.parse(JSON.stringify(writtenLogbook(book))));
    expect(again?.logs.map(({ facts }) => facts)).toEqual(book.logs.map(({ facts }) => facts));
    expect(bookTable(book.logs).rows).toBe(book.logs.length);
  });
});
