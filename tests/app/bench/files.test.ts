import { describe, expect, test } from 'vitest';
import { fileName, parseScenarioText, readScenarioFile, recordTable } from '../../../src/state/files.ts';
import { COLUMN_NAMES, type ColumnName, type RunRecord } from '../../../sim/index.ts';

describe('a file to open', () => {
  test('is parsed as JSON', () => {
    expect(parseScenarioText('{"name":"a"}')).toEqual({ ok: true, json: { name: 'a' } });
  });

  test.each(['', 'name: a', '{"name":', '\u0000'])('that holds %j is refused with the reason', (text) => {
    const parsed = parseScenarioText(text);
    expect(parsed.ok ? '' : parsed.message).toMatch(/^This file is not JSON, so it holds no scenario \(.+\)\.$/);
  });

  test('is not even read when it is far too large', async () => {
    const large = { size: 3_000_000, text: () => Promise.reject(new Error('was read')) } as unknown as Blob;
    expect(await readScenarioFile(large)).toEqual({
      ok: false,
      message: 'This file is larger than two megabytes, so it is not a scenario.',
    });
  });

  test('that the disk will not give is told of', async () => {
    const gone = { size: 10, text: () => Promise.reject(new Error('gone')) } as unknown as Blob;
    expect(await readScenarioFile(gone)).toEqual({ ok: false, message: 'This file could not be read from the disk.' });
  });
});

test('file names are plain whatever the title', () => {
  expect(fileName('Gentle lavender, März 2', 'json')).toBe('gentle-lavender-marz-2.json');
  expect(fileName('  ../../…  ', 'csv')).toBe('still.csv');
  expect(fileName('x'.repeat(200), 'csv')).toHaveLength(64);
});

test('the table has a named column for each column of the record and a line for each row, blanks for what is not a number', () => {
  const columns = Object.fromEntries(
    COLUMN_NAMES.map((name, place) => [name, Float64Array.of(place, 1 / 3, Number.NaN)]),
  ) as Record<ColumnName, Float64Array>;
  const table = recordTable({ rows: 3, columns, grids: {}, constituents: [] } as unknown as RunRecord);
  const lines = table
    .trimEnd()
    .split('\r\n')
    .map((line) => line.split(','));
  expect(lines).toHaveLength(4);
  expect(lines[0]).toEqual(COLUMN_NAMES);
  expect(lines[1]?.[3]).toBe('3');
  expect(lines[2]?.[0]).toBe('0.3333333333');
  expect(lines[3]?.every((cell) => cell === '')).toBe(true);
});
