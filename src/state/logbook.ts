/** The rows of a log: cell by cell as they were typed, and what they say as points. */
import {
  lineReader,
  readPoints,
  type LoggedPoint,
  type LogReading,
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

export const EMPTY_ROW: LogRow = { time: '', oil: '', outlet: '', tub: '', distillate: '' };

export const isBlank = (row: LogRow): boolean => LOG_COLUMNS.every((column) => row[column].trim() === '');

/** The rows typed in, with at least so many blank ones to type on in. */
export function withBlankRows(rows: readonly LogRow[], blank: number): readonly LogRow[] {
  const last = rows.findLastIndex((row) => !isBlank(row));
  const wanted = last + 1 + blank;
  return rows.length >= wanted ? rows : [...rows, ...Array.from({ length: wanted - rows.length }, () => EMPTY_ROW)];
}

/** How the reader of pasted columns calls the units. */
const SPELLED: Readonly<Record<string, string>> = { 'fl oz': 'floz' };

/** What the times of a log count from. */
export const TIME_ZEROS = ['heat-on', 'first-drop', 'clock'] as const;
export type TimeZero = (typeof TIME_ZEROS)[number];

const MINUTES_A_DAY = 1440;

/** Minutes that a cell says: `45`, `45 min`, `1:45`, `1h45`, `1 h 05 min`; `null` where it says none. */
export function minutesIn(text: string): number | null {
  const plain = text.trim().toLowerCase().replace(',', '.');
  const [, hours, rest] = /^(\d{1,3})\s*[:h]\s*(?:([0-5]?\d)\s*(?:m|min)?)?$/u.exec(plain) ?? [];
  if (hours !== undefined) return Number(hours) * 60 + Number(rest ?? 0);
  const [, minutes] = /^(\d+(?:\.\d+)?)\s*(?:m|min)?$/u.exec(plain) ?? [];
  return minutes === undefined ? null : Number(minutes);
}

/** A time as minutes since the heat went on; empty where it is not known since when it counts. */
function sinceHeatOn(cell: string, { zero = 'heat-on', zeroAt = '' }: Pick<LoggedRows, 'zero' | 'zeroAt'>): string {
  const minutes = minutesIn(cell);
  if (minutes === null) return cell;
  if (zero === 'heat-on') return String(minutes);
  const origin = minutesIn(zeroAt);
  if (origin === null) return '';
  if (zero === 'first-drop') return String(origin + minutes);
  // A run that goes on past midnight.
  const since = minutes - origin;
  return String(since < -MINUTES_A_DAY / 2 ? since + MINUTES_A_DAY : since);
}

/** Rows as they were typed, in the units of their log. */
export interface LoggedRows {
  readonly zero?: TimeZero;
  /** Minutes from heat on to the first drop, or the time of the clock at which the heat went on. */
  readonly zeroAt?: string;
  readonly rows: readonly LogRow[];
  readonly units: LogUnits;
}

export interface ReadRows {
  readonly points: readonly LoggedPoint[];
  /** By place of the row: what is wrong with it. */
  readonly problems: ReadonlyMap<number, PointsProblem>;
}

/** What the columns of a log are, in the units that it is kept in. */
function readingOf({ oil, temperature, distillate }: LogUnits): LogReading {
  const degrees = temperature === '°C' ? '°c' : '°f';
  return {
    columns: [
      { column: 'time_s', unit: 'min' },
      { column: oil === 'g' || oil === 'oz' ? 'oil_kg' : 'oil_mL', unit: (SPELLED[oil] ?? oil).toLowerCase() },
      { column: 'outlet_K', unit: degrees },
      { column: 'tub_K', unit: degrees },
      { column: 'distillate_kg', unit: distillate.toLowerCase() },
    ],
    decimal: 'comma',
  };
}

type ReadRow = LoggedPoint | Omit<PointsProblem, 'line'>;

/** What rows say, by how their log is read: of a long log an edit then reads one row anew. */
const known = new Map<string, WeakMap<LogRow, ReadRow>>();
const MOST_KNOWN = 8;

function knownAs(how: string): WeakMap<LogRow, ReadRow> {
  const found = known.get(how) ?? new WeakMap<LogRow, ReadRow>();
  if (known.size >= MOST_KNOWN && !known.has(how)) known.clear();
  known.set(how, found);
  return found;
}

/** Rows of a log as points, with what is wrong in each. */
export function readRows({ rows, units, ...origin }: LoggedRows): ReadRows {
  const reading = readingOf(units);
  const read = lineReader(reading);
  const before = knownAs(JSON.stringify([reading, origin.zero, origin.zeroAt]));
  const points: LoggedPoint[] = [];
  const problems = new Map<number, PointsProblem>();
  rows.forEach((row, index) => {
    if (isBlank(row)) return;
    let said = before.get(row);
    if (said === undefined) {
      const timed = { ...row, time: sinceHeatOn(row.time, origin) };
      said = read(LOG_COLUMNS.map((column) => timed[column].trim()));
      before.set(row, said);
    }
    if ('kind' in said) problems.set(index, { ...said, line: index + 2 } as PointsProblem);
    else points.push(said);
  });
  return { points: points.sort((a, b) => a.time_s - b.time_s), problems };
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

/**
 * Pasted text as rows of a log; lines that cannot be read are handed back.
 * @param reading what each column is, where the reader has said so
 */
export function readPasted(text: string, units: LogUnits, reading?: LogReading): Pasted {
  const read = readPoints(text, reading);
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
