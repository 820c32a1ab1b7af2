/** Tables as comma-separated values (RFC 4180, a line feed after every line), with a full stop as decimal sign. */
import { csvFormatRows } from 'd3-dsv';
import { COLUMN_NAMES, type RunRecord } from '../run/record.ts';

export type CsvCell = number | string;

/** More significant digits than anything here is known to. */
const DIGITS = 10;

/** A cell is empty where there is no number. */
const written = (cell: CsvCell, digits: number): string => {
  if (typeof cell === 'string') return cell;
  return Number.isFinite(cell) ? String(Number(cell.toPrecision(digits))) : '';
};

/** A line of headings, then the rows; what holds a comma, a quote or a line end is quoted. */
export const toCsv = (
  headings: readonly string[],
  rows: readonly (readonly CsvCell[])[],
  digits: number = DIGITS,
): string => `${csvFormatRows([[...headings], ...rows.map((row) => row.map((cell) => written(cell, digits)))])}\n`;

/** The record of a run: a column each under its name, which ends in its SI unit; pure numbers have none. */
export const recordCsv = (record: RunRecord): string =>
  toCsv(
    COLUMN_NAMES,
    Array.from({ length: record.rows }, (_, row) => COLUMN_NAMES.map((name) => record.columns[name][row] as number)),
  );
