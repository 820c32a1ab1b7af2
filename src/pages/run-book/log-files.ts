/** Logs as files, in and out. */
import { encodingOf, understood } from '../../../sim/index.ts';
import type { DataTable, TableColumn } from '../../charts/export/data-table.ts';
import { readRows, unitsNamed, type LogUnits } from '../../state/logbook.ts';
import { LARGEST_BOOK_BYTES } from '../../state/photo-file.ts';
import { yieldOf } from '../../state/run-facts.ts';
import { readLogbook, type LoggedRun, type Logbook } from '../../state/logbook-schema.ts';

/** A log as a table, in the units it is kept in. */
export function logTable(log: LoggedRun): DataTable {
  const { points } = readRows(log);
  const column = (
    title: string,
    unit: string,
    read: (point: (typeof points)[number]) => number | undefined,
  ): TableColumn | null => {
    const values = points.map((point) => read(point) ?? Number.NaN);
    return values.every(Number.isNaN) ? null : { title, unit, says: '', decimals: 3, values };
  };
  const columns = [
    column('time', 'min', ({ time_s }) => time_s / 60),
    column('oil', 'mL', ({ oil_mL }) => oil_mL),
    column('oil', 'g', ({ oil_kg }) => (oil_kg === undefined ? undefined : oil_kg * 1000)),
    column('outlet', '°C', ({ outlet_K }) => (outlet_K === undefined ? undefined : outlet_K - 273.15)),
    column('tub', '°C', ({ tub_K }) => (tub_K === undefined ? undefined : tub_K - 273.15)),
    column('distillate', 'L', ({ distillate_kg }) => distillate_kg),
  ].filter((each) => each !== null);
  return { caption: log.name, rows: points.length, columns };
}

/** The runs of a book as a table for people, one a line; amounts in metric units. */
export function bookTable(logs: readonly LoggedRun[]): DataTable {
  const runs = logs.map((log) => ({ log, facts: log.facts, gave: yieldOf(log) }));
  const column = (title: string, unit: string, values: readonly (number | string | null)[]): TableColumn => ({
    title,
    unit,
    says: '',
    decimals: 3,
    values: values.map((value) => value ?? (values.some((each) => typeof each === 'string') ? '' : Number.NaN)),
  });
  return {
    caption: 'Run book',
    rows: runs.length,
    columns: [
      column(
        'run',
        '',
        runs.map(({ log }) => log.name),
      ),
      column(
        'date',
        '',
        runs.map(({ facts }) => facts.date),
      ),
      column(
        'plant',
        '',
        runs.map(({ facts }) => facts.plant),
      ),
      column(
        'field',
        '',
        runs.map(({ facts }) => facts.field),
      ),
      column(
        'place',
        '',
        runs.map(({ facts }) => facts.place),
      ),
      column(
        'plant weight',
        'kg',
        runs.map(({ facts }) => facts.plant_kg),
      ),
      column(
        'water in plant',
        '%',
        runs.map(({ facts }) => (facts.moisture === null ? null : 100 * facts.moisture)),
      ),
      column(
        'oil',
        'mL',
        runs.map(({ gave }) => gave.oil_mL),
      ),
      column(
        'oil per kg',
        'mL/kg',
        runs.map(({ gave }) => gave.yield_mL_kg),
      ),
      column(
        'hydrosol',
        'L',
        runs.map(({ facts }) => facts.hydrosol_kg),
      ),
      column(
        'energy',
        'kWh',
        runs.map(({ facts }) => (facts.energy_J === null ? null : facts.energy_J / JOULES_A_KWH)),
      ),
      column(
        'cooling water',
        'L',
        runs.map(({ facts }) => facts.water_kg),
      ),
      column(
        'cost',
        '',
        runs.map(({ gave }) => gave.cost),
      ),
      column(
        'cost per mL',
        '',
        runs.map(({ gave }) => gave.cost_mL),
      ),
      column(
        'notes',
        '',
        runs.map(({ log }) => log.notes),
      ),
    ],
  };
}

export type OpenedFile =
  | {
      readonly kind: 'book';
      readonly book: Logbook;
      /** The file as it reads, with the photos. */
      readonly json: unknown;
    }
  | {
      readonly kind: 'log';
      readonly name: string;
      /** Its text stands in the paste box: nothing of it counts before the reader has seen how it is read. */
      readonly log: Pick<LoggedRun, 'draft' | 'units'>;
    }
  | { readonly kind: 'refused'; readonly message: string };

const JOULES_A_KWH = 3.6e6;
const LARGEST_LOG_BYTES = 5e6;

/** A run book (JSON), or columns of one run (CSV or text). Nothing is thrown at whoever opens an odd file. */
export async function openLogFile(file: File, units: LogUnits): Promise<OpenedFile> {
  const refusedAt = (bytes: number, what: string): OpenedFile => ({
    kind: 'refused',
    message: `“${file.name}” is larger than ${bytes / 1e6} MB, so it is no ${what}.`,
  });
  if (file.size > LARGEST_BOOK_BYTES) return refusedAt(LARGEST_BOOK_BYTES, 'run book');
  let text: string;
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    text = new TextDecoder(encodingOf(bytes)).decode(bytes);
  } catch {
    return { kind: 'refused', message: `“${file.name}” could not be read from the disk.` };
  }
  if (/^\s*[[{]/u.test(text)) {
    try {
      const json: unknown = JSON.parse(text);
      const book = readLogbook(json);
      if (book) return { kind: 'book', book, json };
    } catch (error) {
      return {
        kind: 'refused',
        message: `“${file.name}” is not JSON (${error instanceof Error ? error.message : String(error)}).`,
      };
    }
    return { kind: 'refused', message: `“${file.name}” is JSON, but no run book.` };
  }
  if (file.size > LARGEST_LOG_BYTES) return refusedAt(LARGEST_LOG_BYTES, 'log');
  const found = understood(text);
  if (found === null || found.table.width < 2 || found.table.lines.length === 0)
    return { kind: 'refused', message: `“${file.name}” holds no readings in columns.` };
  return {
    kind: 'log',
    name: file.name.replace(/\.[^.]*$/u, ''),
    log: { draft: text, units: unitsNamed(text, units) },
  };
}
