import { describe, expect, test } from 'vitest';
import { openLogFile } from '../../../src/pages/run-book/log-files.ts';
import {
  EMPTY_ROW,
  readPasted,
  readRows,
  rowOf,
  unitsFor,
  unitsNamed,
  withBlankRows,
  type LogRow,
  type LogUnits,
} from '../../../src/state/logbook.ts';
import { NO_FACTS } from '../../../src/state/run-facts.ts';
import { readLogbook, writtenLogbook, type Logbook, type LoggedRun } from '../../../src/state/logbook-schema.ts';

const METRIC: LogUnits = { oil: 'mL', temperature: '°C', distillate: 'L' };
const row = (cells: Partial<LogRow>): LogRow => ({ ...EMPTY_ROW, ...cells });
const log = (rows: readonly LogRow[], units: LogUnits = METRIC): LoggedRun => ({
  id: 'a',
  name: 'First of June',
  notes: 'windy',
  scenario: { name: 'a still' },
  units,
  rows,
  draft: '',
  zero: 'heat-on',
  zeroAt: '',
  facts: NO_FACTS,
  photos: [],
  factors: ['oilContent'],
});

describe('the units of a log', () => {
  const US: LogUnits = { oil: 'mL', temperature: '°F', distillate: 'qt' };

  test.each([
    ['time (min), oil (mL), outlet °C, distillate L\n30, 2', METRIC, US],
    ['time;oil [g];tub (F);hydrosol mL', { oil: 'g', temperature: '°F', distillate: 'mL' }, METRIC],
    ['minutes\toil fl oz\tout °F\tcondensate (kg)', { oil: 'fl oz', temperature: '°F', distillate: 'kg' }, METRIC],
    ['time, oil', US, US],
    ['30, 2.5', US, US],
    ['time, weather (C), oil (cups)', US, US],
  ])('follow headings that name them: %s', (text, wanted, before) => {
    expect(unitsNamed(text, before)).toEqual(wanted);
  });

  test('are those of the file when a log is opened from one, so that nothing is converted', async () => {
    const opened = await openLogFile(
      new File(['time (min), oil (mL), outlet (°C), distillate (L)\n30, 2.6, 27, 0.1\n'], 'june.csv'),
      US,
    );
    if (opened.kind !== 'log') throw new Error(opened.kind);
    expect(opened.log.units).toEqual(METRIC);
    expect(readPasted(opened.log.draft, opened.log.units).rows).toMatchObject([
      { time: '30', oil: '2.6', outlet: '27', distillate: '0.1' },
    ]);
  });
});

describe('a log', () => {
  test('reads what was typed in the units it is kept in', () => {
    const { points, problems } = readRows(
      log([row({ time: '30', oil: '2.5', outlet: '28', tub: '18', distillate: '0.6' })]),
    );
    expect(problems.size).toBe(0);
    expect(points).toHaveLength(1);
    expect(points[0]).toMatchObject({ time_s: 1800, oil_mL: 2.5, distillate_kg: 0.6 });
    expect(points[0]?.outlet_K).toBeCloseTo(301.15, 9);
    const us = readRows(
      log([row({ time: '1:05', oil: '0.5', outlet: '86' })], { oil: 'fl oz', temperature: '°F', distillate: 'qt' }),
    ).points[0];
    expect(us?.time_s).toBe(3900);
    expect(us?.oil_mL).toBeCloseTo(14.787, 3);
    expect(us?.outlet_K).toBeCloseTo(303.15, 6);
  });

  test('takes a decimal comma, a true minus and an apostrophe of weight for what they are', () => {
    expect(readRows(log([row({ time: '12,5', oil: '3,25' })])).points[0]).toMatchObject({ time_s: 750, oil_mL: 3.25 });
    expect(readRows(log([row({ time: '12', oil: '\u22121' })])).problems.get(0)?.kind).toBe('below-zero');
  });

  test.each([
    ['a word for a number', row({ time: '30', oil: 'much' }), 'not-a-number'],
    ['a reading without its time', row({ oil: '3' }), 'time-missing'],
    ['a time alone', row({ time: '30' }), 'no-reading'],
    ['something below nothing', row({ time: '30', oil: '-2' }), 'below-zero'],
    ['a cell with the signs that part columns', row({ time: '3;0\t', oil: '1' }), 'not-a-number'],
  ])('tells %s, on its own line, and keeps the others', (_what, wrong, told) => {
    const { points, problems } = readRows(
      log([row({ time: '10', oil: '1' }), EMPTY_ROW, wrong, row({ time: '20', oil: '2' })]),
    );
    expect([...problems.keys()]).toEqual([2]);
    expect(problems.get(2)).toMatchObject({ line: 4, kind: told });
    expect(points.map(({ time_s }) => time_s)).toEqual([600, 1200]);
  });

  test('that is empty has neither points nor problems', () => {
    expect(readRows(log([]))).toEqual({ points: [], problems: new Map() });
    expect(readRows(log([EMPTY_ROW, EMPTY_ROW]))).toEqual({ points: [], problems: new Map() });
  });

  test('keeps blank lines ready below the last one typed', () => {
    const typed = [row({ time: '1', oil: '1' })];
    expect(withBlankRows(typed, 3)).toHaveLength(4);
    expect(withBlankRows([...typed, EMPTY_ROW, EMPTY_ROW, EMPTY_ROW, EMPTY_ROW], 3)).toHaveLength(5);
  });

  test('gives each point back as it would be typed', () => {
    const point = { time_s: 1800, oil_mL: 14.787, outlet_K: 303.15, distillate_kg: 0.946_352_946 };
    expect(rowOf(point, METRIC)).toEqual({ time: '30', oil: '14.787', outlet: '30', tub: '', distillate: '0.946353' });
    expect(rowOf(point, { oil: 'fl oz', temperature: '°F', distillate: 'qt' })).toMatchObject({
      outlet: '86',
      distillate: '1',
    });
    expect(rowOf({ time_s: 60, oil_kg: 0.0021 }, { ...METRIC, oil: 'g' }).oil).toBe('2.1');
  });
});

describe('pasted columns', () => {
  test('become lines; what cannot be read stays behind under its headings, with the reason', () => {
    const text = 'time (min), oil (mL)\n30, 2.1\n45, x\n60, 23';
    const pasted = readPasted(text, METRIC);
    expect(pasted.rows.map(({ time, oil }) => [time, oil])).toEqual([
      ['30', '2.1'],
      ['60', '23'],
    ]);
    expect(pasted.left).toBe('time (min), oil (mL)\n45, x');
    expect(pasted.problems).toEqual([{ line: 3, kind: 'not-a-number', cell: 'x' }]);
    expect(readPasted(pasted.left, METRIC).problems.length).toBe(1);
  });

  test('stay whole where nothing of them can be read', () => {
    for (const text of ['good morning', 'time\n1\n2', '{"a":1}']) {
      const pasted = readPasted(text, METRIC);
      expect(pasted.rows).toEqual([]);
      expect(pasted.left).toBe(text);
      expect(pasted.problems.length).toBeGreaterThan(0);
    }
  });

  test('that weigh the oil turn an oil column by volume into one by weight', () => {
    const { points } = readPasted('time (min)\toil (g)\n30\t2.1', METRIC);
    expect(unitsFor(points, METRIC).oil).toBe('g');
    expect(unitsFor(points, { ...METRIC, oil: 'g' })).toMatchObject({ oil: 'g' });
    expect(readPasted('time (min)\toil (g)\n30\t2.1', unitsFor(points, METRIC)).rows[0]?.oil).toBe('2.1');
  });

  test('that hold oil by volume and by weight say which was not taken, and stay in the box', () => {
    const text = 'time (min);oil (mL);oil (g)\n30;2.3;2.1';
    const { rows, problems, otherOil, left } = readPasted(text, METRIC);
    expect(rows[0]?.oil).toBe('2.3');
    expect(problems).toEqual([]);
    expect(otherOil).toEqual({ kept: 'mL', weighed: true });
    expect(left).toBe(text);
  });
});

describe('the run book', () => {
  const book: Logbook = {
    logs: [log([row({ time: '30', oil: 'two?' })])],
    stills: [
      {
        id: 's',
        name: 'As logged',
        scenario: { name: 'x' },
        bands: { oilContent: { low: 0.9, high: 1.1, origin: 'fit' } },
      },
    ],
    unread: [],
  };

  test('comes back from a file as it was, down to what was mistyped', () => {
    expect(readLogbook(JSON.parse(JSON.stringify(writtenLogbook(book))))).toEqual(book);
  });

  test('keeps what it cannot read, untouched, and hands it on', () => {
    const odd = {
      kind: 'limbeck-run-book',
      logs: [{ id: 'z', rows: 'many' }, writtenLogbook(book)['logs']],
      stills: [3, null],
      later: true,
    };
    const read = readLogbook(odd);
    expect(read?.logs).toEqual([]);
    expect(read?.unread).toEqual([{ id: 'z', rows: 'many' }, writtenLogbook(book)['logs'], 3, null]);
    expect(readLogbook(JSON.parse(JSON.stringify(writtenLogbook(read as Logbook))))?.unread).toEqual(read?.unread);
  });

  test.each([null, 3, 'x', [], {}, { kind: 'other' }, { logs: [] }])('is not read from %j', (value) => {
    expect(readLogbook(value)).toBe(null);
  });

  test('fits no more than three factors and only known ones, whatever a file says', () => {
    const raw = {
      kind: 'limbeck-run-book',
      logs: [
        {
          rows: [{ time: 5 }],
          units: { oil: 'pints' },
          factors: ['dropSize', 'luck', 'release', 'heatLoss', 'fouling'],
        },
      ],
    };
    const [only] = readLogbook(raw)?.logs ?? [];
    expect(only?.factors).toEqual(['release', 'heatLoss', 'fouling']);
    expect(only?.units.oil).toBe('mL');
    expect(only?.rows[0]?.time).toBe('5');
  });
});

describe('a file that is opened', () => {
  const file = (text: string, name = 'runs.txt') => new File([text], name);

  test('is a run book, columns of one run, or refused in words', async () => {
    const book = await openLogFile(
      file(JSON.stringify(writtenLogbook({ logs: [log([])], stills: [], unread: [] }))),
      METRIC,
    );
    expect(book.kind).toBe('book');
    const columns = await openLogFile(file('time (min);oil (mL)\n10;1,5\n20;oops', 'june.csv'), METRIC);
    expect(columns).toMatchObject({
      kind: 'log',
      name: 'june',
      log: { draft: 'time (min);oil (mL)\n10;1,5\n20;oops' },
    });
    const utf16 = new Uint8Array([0xff, 0xfe, ...Buffer.from('time (min);outlet (°C)\n10;20', 'utf16le')]);
    const old = new Uint8Array(Buffer.from('time (min);outlet (°C)\n10;20', 'latin1'));
    for (const bytes of [utf16, old])
      expect(await openLogFile(new File([bytes], 'a.txt'), METRIC)).toMatchObject({
        log: { draft: 'time (min);outlet (°C)\n10;20' },
      });
    for (const [text, told] of [
      ['{"a":', /not JSON/],
      ['{"a":1}', /no run book/],
      ['[]', /no run book/],
      ['', /no readings/],
      ['good day', /no readings/],
    ] as const)
      expect(await openLogFile(file(text), METRIC)).toMatchObject({
        kind: 'refused',
        message: expect.stringMatching(told) as string,
      });
  });
});

describe('a log of 20,000 lines', () => {
  test('is read at once, and a changed line without the others', () => {
    const rows = Array.from({ length: 20_000 }, (_, line): LogRow => ({
      ...EMPTY_ROW,
      time: String(line / 60),
      oil: '3,5',
    }));
    const started = performance.now();
    const { points, problems } = readRows({ rows, units: METRIC });
    const first = performance.now() - started;
    expect([points.length, problems.size]).toEqual([20_000, 0]);
    const changed = rows.map((row, line) => (line === 7 ? { ...row, oil: 'x' } : row));
    const again = performance.now();
    const after = readRows({ rows: changed, units: METRIC });
    expect([...after.problems.keys()]).toEqual([7]);
    expect(performance.now() - again).toBeLessThan(Math.max(100, first));
  });
});
