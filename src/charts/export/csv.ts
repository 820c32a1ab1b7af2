/** A chart's or an answer's table as a CSV file: one heading line with units, then every row of the data. */
import { toCsv } from '../../../sim/index.ts';
import type { DataTable } from './data-table.ts';

/** Digits kept of each number: more than any instrument reads. */
const DIGITS = 7;

export const headerOf = ({ title, unit }: { readonly title: string; readonly unit: string }): string =>
  unit === '' ? title : `${title} (${unit})`;

export const csvOf = ({ columns, rows }: DataTable): string =>
  toCsv(
    columns.map(headerOf),
    Array.from({ length: rows }, (_, row) => columns.map(({ values }) => values[row] ?? '')),
    DIGITS,
  );
