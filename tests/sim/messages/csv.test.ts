import { csvParse, csvParseRows } from 'd3-dsv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { englishReader } from '../../../sim/index.ts';
import { fromCsv, recordCsv, shownRecordCsv, toCsv } from '../../../sim/messages/csv.ts';
import { COLUMN_NAMES, type ColumnName, type RunRecord } from '../../../sim/run/record.ts';

describe('a table as comma-separated values', () => {
  it('has a line of headings, a line for each row and a line feed after each', () => {
    expect(toCsv(['a', 'b'], [['x', 1]])).toBe('a,b\nx,1\n');
    expect(toCsv(['a'], [])).toBe('a\n');
  });

  it('quotes what holds a comma, a quote or a line end', () => {
    expect(toCsv(['1,8-cineole (g)', 'b'], [[1, 'x, "y"']])).toBe('"1,8-cineole (g)",b\n1,"x, ""y"""\n');
    expect(toCsv(['a'], [['two\nlines']])).toBe('a\n"two\nlines"\n');
  });

  it('leaves a cell empty where there is no number, and rounds the others to the digits asked for', () => {
    expect(toCsv(['a', 'b', 'c'], [[Number.NaN, Infinity, -1e-7 / 3]], 3)).toBe('a,b,c\n,,-3.33e-8\n');
    expect(toCsv(['a'], [[1 / 3]])).toBe('a\n0.3333333333\n');
  });

  const words = fc.string({ unit: fc.constantFrom('a', ' ', ',', '"', '\n', '\r', 'ä', '=', '+', '-', "'", '1') });
  const tables = fc.array(fc.tuple(words, words), { minLength: 1, maxLength: 5 });

  it('is read back as it was', () => {
    fc.assert(
      fc.property(tables, (rows) => {
        expect(fromCsv(toCsv(['first', 'second'], rows))).toEqual([['first', 'second'], ...rows]);
      }),
    );
  });

  it('is read by any other reader with an apostrophe before what a spreadsheet would work out', () => {
    fc.assert(
      fc.property(tables, (rows) => {
        const read = csvParseRows(toCsv(['first', 'second'], rows)).slice(1);
        rows.flat().forEach((cell, index) => {
          const other = read.flat()[index] as string;
          expect([cell, `'${cell}`]).toContain(other);
          expect(other).not.toMatch(/^[=@\t\r]/u);
        });
      }),
    );
    expect(toCsv(['=1+1', '+5 °C'], [['-2+3', '-2.5']])).toBe("'=1+1,+5 °C\n'-2+3,-2.5\n");
  });
});

describe('the record as a table', () => {
  const columns = Object.fromEntries(
    COLUMN_NAMES.map((name, index) => [name, Float64Array.of(index, 1 / 3, Number.NaN)]),
  ) as Record<ColumnName, Float64Array>;
  const record = { rows: 3, columns, grids: {}, constituents: [] } as unknown as RunRecord;
  const table = csvParse(recordCsv(record));

  it('has every column under its name and a line for each row', () => {
    expect(table.columns).toEqual(COLUMN_NAMES);
    expect(table.map((row) => row[COLUMN_NAMES[3] as string])).toEqual(['3', '0.3333333333', '']);
  });

  it.each([
    ['metric', '(°C)', '(L)', -273.15 + 1 / 3],
    ['us', '(°F)', '(gal)', 1.8 * (1 / 3) - 459.67],
  ] as const)('is written for people in %s units, each named in its heading', (units, degrees, water, coldest) => {
    const shown = csvParse(shownRecordCsv(record, englishReader(units)));
    expect(shown.columns).toHaveLength(COLUMN_NAMES.length);
    expect(new Set(shown.columns).size).toBe(COLUMN_NAMES.length);
    const heading = `temperature of the distillate at the outlet ${degrees}`;
    expect(shown.columns).toContain(heading);
    expect(Number(shown[1]?.[heading])).toBeCloseTo(coldest, 2);
    expect(shown.columns).toContain(`distillate water kept so far ${water}`);
    expect(shown.columns.filter((name) => /\((K|J|Pa|m³|kg\/s)\)$/.test(name))).toEqual([]);
    expect(shown[2]?.[heading]).toBe('');
  });
});
