/** Tables as comma-separated values (RFC 4180, a line feed after every line), with a full stop as decimal sign. */
import { csvFormatRows, csvParseRows } from 'd3-dsv';
import { COLUMN_NAMES, COLUMN_UNITS, type RunRecord } from '../run/record.ts';
import { displayUnit } from '../units/index.ts';
import { columnMessages } from './columns.ts';
import type { Reader } from './language.ts';

export type CsvCell = number | string;

/** More significant digits than anything here is known to. */
const DIGITS = 10;
/** For people: more than any instrument reads. */
const SHOWN_DIGITS = 6;

/** What a spreadsheet would work out, and what is but a number with a sign and its unit. */
const FORMULA = /^'*[=+\-@\t\r]/u;
const SIGNED = /^[+-][\d.,][^=+\-*/()|!@]*$/u;

/** Text that a spreadsheet leaves alone: behind an apostrophe where it begins as a formula does. */
const asText = (text: string): string => (FORMULA.test(text) && !SIGNED.test(text) ? `'${text}` : text);

/** A cell is empty where there is no number. */
const written = (cell: CsvCell, digits: number): string => {
  if (typeof cell === 'string') return asText(cell);
  return Number.isFinite(cell) ? String(Number(cell.toPrecision(digits))) : '';
};

/** A line of headings, then the rows; what holds a comma, a quote or a line end is quoted. */
export const toCsv = (
  headings: readonly string[],
  rows: readonly (readonly CsvCell[])[],
  digits: number = DIGITS,
): string =>
  `${csvFormatRows([headings.map(asText), ...rows.map((row) => row.map((cell) => written(cell, digits)))])}\n`;

/** The rows of such a table, headings first. */
export const fromCsv = (text: string): readonly (readonly string[])[] =>
  csvParseRows(text.replace(/^\uFEFF/u, ''), (row) => row.map((cell) => cell.replace(/^'(?='*[=+\-@\t\r])/u, '')));

/** The record of a run for programs: a column each under its name, which ends in its SI unit; pure numbers have none. */
export const recordCsv = (record: RunRecord): string =>
  toCsv(
    COLUMN_NAMES,
    Array.from({ length: record.rows }, (_, row) => COLUMN_NAMES.map((name) => record.columns[name][row] as number)),
  );

/** The record of a run for people: each column under what it holds and the unit, which is the reader's. */
export function shownRecordCsv(record: RunRecord, reader: Reader): string {
  const says = columnMessages(reader);
  const shown = COLUMN_NAMES.map((name) => {
    const { label, fromSI } = displayUnit(COLUMN_UNITS[name], reader.units, name);
    return { heading: label === '' ? says[name] : `${says[name]} (${label})`, values: record.columns[name], fromSI };
  });
  return toCsv(
    shown.map(({ heading }) => heading),
    Array.from({ length: record.rows }, (_, row) => shown.map(({ values, fromSI }) => fromSI(values[row] as number))),
    SHOWN_DIGITS,
  );
}
