/** The run book: what was logged at real runs, cell by cell as it was typed, and the stills that were fitted to them. */
import {
  FIT_NAMES,
  MOST_FACTORS,
  readPoints,
  type FitName,
  type LoggedPoint,
  type OwnBands,
  type PointsProblem,
  type ReadPoints,
} from '../../sim/index.ts';

export const LOG_COLUMNS = ['time', 'oil', 'outlet', 'tub', 'distillate'] as const;
export type LogColumn = (typeof LOG_COLUMNS)[number];
export type LogRow = Readonly<Record<LogColumn, string>>;

/** Units that a log may be kept in. */
export const LOG_UNITS = {
  oil: ['mL', 'g', 'fl oz', 'oz'],
  temperature: ['°C', '°F'],
  distillate: ['L', 'mL', 'kg', 'qt'],
} as const;

export interface LogUnits {
  readonly oil: (typeof LOG_UNITS.oil)[number];
  readonly temperature: (typeof LOG_UNITS.temperature)[number];
  readonly distillate: (typeof LOG_UNITS.distillate)[number];
}

export interface LoggedRun {
  readonly id: string;
  readonly name: string;
  readonly notes: string;
  /** The still as it stood when the log was begun, as JSON. */
  readonly scenario: unknown;
  readonly units: LogUnits;
  readonly rows: readonly LogRow[];
  /** Text in the box for pasting that has not become rows yet. */
  readonly draft: string;
  /** Factors to fit. */
  readonly factors: readonly FitName[];
}

/** A still with the factors of a fit. */
export interface KeptStill {
  readonly id: string;
  readonly name: string;
  readonly scenario: unknown;
  /** What the fit leaves in doubt. */
  readonly bands: OwnBands;
}

export interface Logbook {
  readonly logs: readonly LoggedRun[];
  readonly stills: readonly KeptStill[];
  /** Entries that this version cannot read; they are kept and handed on untouched. */
  readonly unread: readonly unknown[];
}

export const LOGBOOK_KIND = 'limbeck-run-book';
export const EMPTY_ROW: LogRow = { time: '', oil: '', outlet: '', tub: '', distillate: '' };
export const NO_LOGS: Logbook = { logs: [], stills: [], unread: [] };

export const isBlank = (row: LogRow): boolean => LOG_COLUMNS.every((column) => row[column].trim() === '');

/** The rows typed in, with at least so many blank ones to type on in. */
export function withBlankRows(rows: readonly LogRow[], blank: number): readonly LogRow[] {
  const last = rows.findLastIndex((row) => !isBlank(row));
  const wanted = last + 1 + blank;
  return rows.length >= wanted ? rows : [...rows, ...Array.from({ length: wanted - rows.length }, () => EMPTY_ROW)];
}

/** How the reader of pasted columns calls the units. */
const SPELLED: Readonly<Record<string, string>> = { 'fl oz': 'floz' };

export const headingsOf = ({ oil, temperature, distillate }: LogUnits): string =>
  `time (min);oil (${SPELLED[oil] ?? oil});outlet (${temperature});tub (${temperature});distillate (${distillate})`;

const cellText = (cell: string): string => cell.replace(/[;\t\r\n]/gu, ' ').trim();
const lineOf = (row: LogRow): string =>
  isBlank(row) ? '#' : LOG_COLUMNS.map((column) => cellText(row[column])).join(';');

export interface ReadRows {
  readonly points: readonly LoggedPoint[];
  /** By place of the row: what is wrong with it. */
  readonly problems: ReadonlyMap<number, PointsProblem>;
}

/** Rows of a log as points, with what is wrong in each. */
export function readRows({ rows, units }: Pick<LoggedRun, 'rows' | 'units'>): ReadRows {
  const { points, problems } = readPoints([headingsOf(units), ...rows.map(lineOf)].join('\n'));
  if (rows.every(isBlank)) return { points: [], problems: new Map() };
  return { points, problems: new Map(problems.map((problem) => [problem.line - 2, problem])) };
}

const scaled = (value: number | undefined, to: (value: number) => number): string => {
  if (value === undefined) return '';
  return String(Number(to(value).toPrecision(6)));
};
const MILLILITRES_A_FLUID_OUNCE = 29.573_529_562_5;
const KILOGRAMS_AN_OUNCE = 0.028_349_523_125;
const KILOGRAMS_A_QUART = 0.946_352_946;

const keepsVolume = ({ oil }: Pick<LogUnits, 'oil'>): boolean => oil === 'mL' || oil === 'fl oz';

/** A point as a row in the units of a log. Oil logged in another way (by weight, by volume) than the log keeps is left out. */
export function rowOf(point: LoggedPoint, { oil, temperature, distillate }: LogUnits): LogRow {
  const warmth = (value: number) => (temperature === '°C' ? value - 273.15 : (value - 273.15) * 1.8 + 32);
  const volume = keepsVolume({ oil });
  const perKilogram = { L: 1, kg: 1, mL: 1000, qt: 1 / KILOGRAMS_A_QUART }[distillate];
  return {
    time: scaled(point.time_s, (value) => value / 60),
    oil: volume
      ? scaled(point.oil_mL, (value) => (oil === 'mL' ? value : value / MILLILITRES_A_FLUID_OUNCE))
      : scaled(point.oil_kg, (value) => (oil === 'g' ? value * 1000 : value / KILOGRAMS_AN_OUNCE)),
    outlet: scaled(point.outlet_K, warmth),
    tub: scaled(point.tub_K, warmth),
    distillate: scaled(point.distillate_kg, (value) => value * perKilogram),
  };
}

export interface Pasted extends ReadPoints {
  /** Oil that was not taken, because the log keeps it in another way than the pasted text; `null` when all was. */
  readonly otherOil: { readonly kept: LogUnits['oil']; readonly weighed: boolean } | null;
  readonly rows: readonly LogRow[];
  /** The lines that could not be read, under their headings; empty when all could. */
  readonly left: string;
}

/** Pasted text as rows of a log; lines that cannot be read are handed back. */
export function readPasted(text: string, units: LogUnits): Pasted {
  const read = readPoints(text);
  const lines = text.split(/\r\n|\r|\n/u);
  const heading = /^\s*["']?[A-Za-z]/u.test(lines[0] ?? '') ? [lines[0] ?? ''] : [];
  const bad = read.problems.map(({ line }) => line).filter((line) => line > heading.length);
  const volume = keepsVolume(units);
  const otherOil = read.points.some(({ oil_mL, oil_kg }) => (volume ? oil_kg : oil_mL) !== undefined);
  const left =
    read.points.length === 0 || otherOil
      ? text
      : bad.length === 0
        ? ''
        : [...heading, ...bad.map((line) => lines[line - 1] ?? '')].join('\n');
  return {
    ...read,
    otherOil: otherOil ? { kept: units.oil, weighed: volume } : null,
    rows: read.points.map((point) => rowOf(point, units)),
    left,
  };
}

/** Whether pasted text weighs its oil where the log measures it, or the other way round. */
export function unitsFor(points: readonly LoggedPoint[], units: LogUnits): LogUnits {
  const weighed = points.some(({ oil_kg }) => oil_kg !== undefined);
  const measured = points.some(({ oil_mL }) => oil_mL !== undefined);
  if (weighed && !measured && keepsVolume(units)) return { ...units, oil: 'g' };
  if (measured && !weighed && !keepsVolume(units)) return { ...units, oil: 'mL' };
  return units;
}

const named = <T extends string>(options: readonly T[], text: string | undefined): T | undefined =>
  options.find((option) => option.toLowerCase().replace(' ', '') === text?.toLowerCase().replace(/\s/gu, ''));

/** The units that a line of headings names, for a log that has no readings yet; the others as they were. */
export function unitsNamed(text: string, units: LogUnits): LogUnits {
  const heading = text.split(/\r\n|\r|\n/u)[0] ?? '';
  if (!/^\s*["']?[A-Za-z]/u.test(heading)) return units;
  const [, oil] = /\boil[^\p{L}]*(ml|g|fl\s?oz|oz)\b/iu.exec(heading) ?? [];
  const [, distillate] = /\b(?:distillate|hydrosol|condensate|water)[^\p{L}]*(ml|l|kg|qt)\b/iu.exec(heading) ?? [];
  const [, warmth] = /\b(?:outlet|out|spout|tub|barrel|jacket|bath|cooling)[^\p{L}]*(c|f)\b/iu.exec(heading) ?? [];
  return {
    oil: named(LOG_UNITS.oil, oil) ?? units.oil,
    temperature: named(LOG_UNITS.temperature, warmth === undefined ? undefined : `°${warmth}`) ?? units.temperature,
    distillate: named(LOG_UNITS.distillate, distillate) ?? units.distillate,
  };
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const textOf = (value: unknown): string =>
  typeof value === 'string' ? value : typeof value === 'number' ? String(value) : '';
const oneOf = <T extends string>(options: readonly T[], value: unknown): T =>
  options.find((option) => option === value) ?? (options[0] as T);

function readLog(value: unknown): LoggedRun | null {
  if (!isObject(value) || !Array.isArray(value['rows'])) return null;
  const units = isObject(value['units']) ? value['units'] : {};
  const factors = Array.isArray(value['factors']) ? value['factors'] : [];
  return {
    id: textOf(value['id']),
    name: textOf(value['name']),
    notes: textOf(value['notes']),
    scenario: value['scenario'] ?? null,
    units: {
      oil: oneOf(LOG_UNITS.oil, units['oil']),
      temperature: oneOf(LOG_UNITS.temperature, units['temperature']),
      distillate: oneOf(LOG_UNITS.distillate, units['distillate']),
    },
    rows: value['rows'].map((row: unknown) => {
      const cells = isObject(row) ? row : {};
      return {
        time: textOf(cells['time']),
        oil: textOf(cells['oil']),
        outlet: textOf(cells['outlet']),
        tub: textOf(cells['tub']),
        distillate: textOf(cells['distillate']),
      };
    }),
    draft: textOf(value['draft']),
    factors: FIT_NAMES.filter((name) => factors.includes(name)).slice(0, MOST_FACTORS),
  };
}

function readBands(value: unknown): OwnBands {
  if (!isObject(value)) return {};
  const entries = Object.entries(value).filter(
    (entry): entry is [string, { low: number; high: number }] =>
      isObject(entry[1]) && typeof entry[1]['low'] === 'number' && typeof entry[1]['high'] === 'number',
  );
  return Object.fromEntries(entries);
}

function readStill(value: unknown): KeptStill | null {
  if (!isObject(value) || !isObject(value['scenario'])) return null;
  return {
    id: textOf(value['id']),
    name: textOf(value['name']),
    scenario: value['scenario'],
    bands: readBands(value['bands']),
  };
}

/** Reads a run book from what was kept or from a file; `null` when it is none. What cannot be read of it is kept as it is. */
export function readLogbook(value: unknown): Logbook | null {
  if (!isObject(value) || value['kind'] !== LOGBOOK_KIND) return null;
  const unread: unknown[] = Array.isArray(value['unread']) ? [...(value['unread'] as unknown[])] : [];
  const entries = <T>(list: unknown, read: (entry: unknown) => T | null): readonly T[] =>
    (Array.isArray(list) ? (list as unknown[]) : []).flatMap((entry) => {
      const found = read(entry);
      if (found === null) unread.push(entry);
      return found === null ? [] : [found];
    });
  const logs = entries(value['logs'], readLog);
  const stills = entries(value['stills'], readStill);
  return { logs, stills, unread };
}

export const writtenLogbook = (book: Logbook): Readonly<Record<string, unknown>> => ({
  kind: LOGBOOK_KIND,
  version: 1,
  ...book,
});
