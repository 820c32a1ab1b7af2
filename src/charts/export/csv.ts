/** A table as a CSV file (RFC 4180): one header row with units, every row of the data, a full stop as decimal sign. */
import type { DataTable } from './data-table.ts';

const LINE_END = '\r\n';
/** Digits kept of each number: more than any instrument reads. */
const DIGITS = 7;

export const headerOf = ({ title, unit }: { readonly title: string; readonly unit: string }): string =>
  unit === '' ? title : `${title} (${unit})`;

export function csvOf(table: DataTable): string {
  const lines = [table.columns.map((column) => quoted(headerOf(column))).join(',')];
  for (let row = 0; row < table.rows; row += 1)
    lines.push(table.columns.map(({ values }) => field(values[row])).join(','));
  return lines.join(LINE_END) + LINE_END;
}

/** An empty field where there is no number. */
const field = (value: number | string | undefined): string => {
  if (typeof value === 'string') return quoted(value);
  return value === undefined || !Number.isFinite(value) ? '' : String(Number(value.toPrecision(DIGITS)));
};

const quoted = (words: string): string => (/[",\r\n]/u.test(words) ? `"${words.replaceAll('"', '""')}"` : words);
