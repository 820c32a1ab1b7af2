/**
 * Columns pasted from a note or a spreadsheet, turned into logged points. The first line names the columns and their
 * units, e.g. `time (min), oil (mL), outlet °C`; without such a line the first two columns are taken as minutes and
 * millilitres of oil, and what else is written there as notes. What may mean two things is told and not taken, and so is
 * a line that cannot be read.
 */
import { logTable, type DecimalSign, type LogTable } from './log-table.ts';
import type { LoggedPoint, ReadingKind } from './readings.ts';

/** What can be wrong with one line of readings. */
export type LineProblem =
  | { readonly kind: 'not-a-number'; readonly cell: string }
  | { readonly kind: 'below-zero'; readonly cell: string }
  | { readonly kind: 'below-absolute-zero'; readonly cell: string }
  /** More than any still of this size gives, or a later time than any run. */
  | { readonly kind: 'too-much'; readonly cell: string }
  | { readonly kind: 'time-missing' }
  | { readonly kind: 'no-reading' }
  /** `1,234`, where nothing tells a decimal comma from one between thousands. */
  | { readonly kind: 'comma-in-doubt'; readonly cell: string }
  /** More numbers than columns, as where an unquoted decimal comma parts a number. */
  | { readonly kind: 'too-many-cells'; readonly cells: number; readonly columns: number };

/** What can be wrong with the headings. */
export type HeadingsProblem =
  | {
      readonly kind: 'unknown-unit';
      readonly unit: string;
      readonly heading: string;
      readonly known: readonly string[];
    }
  /** Two columns are the same; the later one counts. */
  | { readonly kind: 'column-twice'; readonly column: LogColumnKind }
  | { readonly kind: 'no-time-column' }
  | { readonly kind: 'no-reading-column' }
  /** Several columns of numbers without a word of what they are. */
  | { readonly kind: 'columns-unnamed'; readonly columns: number };

/** What cannot be read, by the line of the pasted text, from 1. */
export type PointsProblem = { readonly line: number } & (
  LineProblem | HeadingsProblem | { readonly kind: 'nothing-to-read' }
);

export interface ReadPoints {
  /** In the order of their times. */
  readonly points: readonly LoggedPoint[];
  readonly problems: readonly PointsProblem[];
  /** Headings that name no reading; their columns are passed over. */
  readonly passedOver: readonly string[];
}

export type LogColumnKind = 'time_s' | ReadingKind;

interface Unit {
  readonly scale: number;
  readonly offset: number;
}

const unit = (scale: number, offset = 0): Unit => ({ scale, offset });
const SECONDS: Readonly<Record<string, Unit>> = {
  s: unit(1),
  sec: unit(1),
  min: unit(60),
  mins: unit(60),
  minutes: unit(60),
  m: unit(60),
  h: unit(3600),
  hr: unit(3600),
  hours: unit(3600),
  'h:mm': unit(60),
  'hh:mm': unit(60),
};
const KELVIN: Readonly<Record<string, Unit>> = {
  c: unit(1, 273.15),
  '°c': unit(1, 273.15),
  f: unit(5 / 9, 459.67 * (5 / 9)),
  '°f': unit(5 / 9, 459.67 * (5 / 9)),
  k: unit(1),
};
const MILLILITRES: Readonly<Record<string, Unit>> = {
  ml: unit(1),
  cm3: unit(1),
  cc: unit(1),
  l: unit(1000),
  floz: unit(29.573_529_562_5),
};
const KILOGRAMS: Readonly<Record<string, Unit>> = {
  kg: unit(1),
  g: unit(0.001),
  oz: unit(0.028_349_523_125),
  lb: unit(0.453_592_37),
};
/** A litre of distillate counts as a kilogram. */
const DISTILLATE: Readonly<Record<string, Unit>> = {
  ...KILOGRAMS,
  l: unit(1),
  ml: unit(0.001),
  qt: unit(0.946_352_946),
  gal: unit(3.785_411_784),
};

interface Meaning {
  readonly words: readonly string[];
  /** The columns a word may stand for, each with its units; the first unit of the first is taken when none is named. */
  readonly readings: readonly (readonly [LogColumnKind, Readonly<Record<string, Unit>>])[];
  readonly usual: string;
}

const MEANINGS: readonly Meaning[] = [
  { words: ['distillate', 'hydrosol', 'condensate', 'water'], readings: [['distillate_kg', DISTILLATE]], usual: 'kg' },
  { words: ['time', 'minutes', 'min', 'elapsed', 't'], readings: [['time_s', SECONDS]], usual: 'min' },
  {
    words: ['oil'],
    readings: [
      ['oil_mL', MILLILITRES],
      ['oil_kg', KILOGRAMS],
    ],
    usual: 'ml',
  },
  { words: ['outlet', 'out', 'spout'], readings: [['outlet_K', KELVIN]], usual: '°c' },
  { words: ['tub', 'barrel', 'jacket', 'bath', 'cooling'], readings: [['tub_K', KELVIN]], usual: '°c' },
];

/** What a column is, with its unit as it is spelt in headings. */
export interface ColumnMeaning {
  readonly column: LogColumnKind;
  readonly unit: string;
}

/** What a reader may say that a column is. */
export const COLUMN_CHOICES: readonly ColumnMeaning[] = [
  { column: 'time_s', unit: 'min' },
  { column: 'time_s', unit: 'h' },
  { column: 'time_s', unit: 's' },
  { column: 'oil_mL', unit: 'ml' },
  { column: 'oil_mL', unit: 'floz' },
  { column: 'oil_kg', unit: 'g' },
  { column: 'oil_kg', unit: 'oz' },
  { column: 'outlet_K', unit: '°c' },
  { column: 'outlet_K', unit: '°f' },
  { column: 'tub_K', unit: '°c' },
  { column: 'tub_K', unit: '°f' },
  { column: 'distillate_kg', unit: 'l' },
  { column: 'distillate_kg', unit: 'ml' },
  { column: 'distillate_kg', unit: 'kg' },
  { column: 'distillate_kg', unit: 'qt' },
];

interface ColumnReading {
  readonly column: LogColumnKind;
  readonly unit: Unit;
  /** As it is spelt in headings. */
  readonly spelt: string;
}

/** How a table is read: what each column is, `null` for one that is left out, and its decimal sign. */
export interface LogReading {
  readonly columns: readonly (ColumnMeaning | null)[];
  /** `null` where it is in doubt. */
  readonly decimal: DecimalSign | null;
}

const tidyUnit = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[\s._]/g, '')
    .replace(/³/g, '3')
    .replace(/^deg/, '°')
    .replace(/^litres?$|^liters?$/, 'l')
    .replace(/^grams?$/, 'g');

/** A header cell as word and unit: `oil (mL)`, `oil [mL]`, `oil/mL`, `oil_mL`, `oil mL`. */
function splitHeader(cell: string): { word: string; unit: string } {
  const trimmed = cell
    .trim()
    .replace(/^["']|["']$/g, '')
    .trim();
  const [, word = '', rest = ''] = /^(\p{L}+)[\s_/,([]*(.*?)[)\]]*$/u.exec(trimmed) ?? [];
  return { word: word.toLowerCase(), unit: tidyUnit(rest.replace(/^in /, '')) };
}

/** What a header cell means, or what is wrong with it; `null` for a column to pass over. */
function readHeader(cell: string): ColumnReading | HeadingsProblem | null {
  const { word, unit: named } = splitHeader(cell);
  const meaning = MEANINGS.find(({ words }) => words.includes(word));
  if (!meaning) return null;
  if (named === '' && (word === 'min' || word === 'minutes')) return { column: 'time_s', unit: unit(60), spelt: 'min' };
  for (const [column, units] of meaning.readings) {
    const spelt = named === '' ? meaning.usual : named;
    if (Object.hasOwn(units, spelt)) return { column, unit: units[spelt] as Unit, spelt };
  }
  const known = meaning.readings.flatMap(([, units]) => Object.keys(units));
  return { kind: 'unknown-unit', unit: named, heading: word, known };
}

/** Whether something was found wrong instead of read. */
const isProblem = <T extends object, P extends { readonly kind: string }>(found: T | P | null): found is P =>
  found !== null && 'kind' in found;

/** The most that is taken for a reading, in its own unit. */
const MOST: Readonly<Record<LogColumnKind, number>> = {
  time_s: 259_200,
  oil_mL: 20_000,
  oil_kg: 20,
  outlet_K: 393.15,
  tub_K: 393.15,
  distillate_kg: 2000,
};

/** Hours and minutes, written with a colon or with an h, in which a time may stand whatever the column's unit. */
const CLOCK = /^(\d+)\s*[:h]\s*(?:([0-5]?\d)\s*(?:m|min)?)?$/i;

/** Number in a cell; `h:mm` and `1h45` give minutes. NaN where it is none. */
function readNumber(cell: string, decimal: DecimalSign | null): number {
  const text = cell
    .trim()
    .replace(/^["']|["']$/g, '')
    .replace(/\u2212/g, '-');
  const clock = CLOCK.exec(text);
  if (clock) return Number(clock[1]) * 60 + Number(clock[2] ?? 0);
  const plain = decimal === 'comma' ? text.replace(',', '.') : THOUSANDS.test(text) ? text.replaceAll(',', '') : text;
  const value = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : Number.NaN;
  return Number.isFinite(value) ? value : Number.NaN;
}

/** Commas between thousands. */
const THOUSANDS = /^[+-]?[1-9]\d{0,2}(?:,\d{3})+(?:\.\d*)?$/;

/** Where a line's clock reading applies: minutes already, whatever the column's unit says. */
const toUnit = (cell: string, value: number, { column, unit: by }: ColumnReading): number =>
  column === 'time_s' && /[:h]/i.test(cell) ? value * 60 : value * by.scale + by.offset;

const isNothing = (cell: string): boolean => cell === '' || cell === '-' || cell === '–';

function readLine(
  cells: readonly string[],
  columns: readonly (ColumnReading | null)[],
  decimal: DecimalSign | null,
): LoggedPoint | LineProblem {
  const point: Partial<Record<LogColumnKind, number>> = {};
  const spare = cells.slice(columns.length).filter((cell) => /^\s*[+-]?[\d.,]+\s*$/.test(cell)).length;
  if (spare > 0) return { kind: 'too-many-cells', cells: cells.length, columns: columns.length };
  for (const [place, reading] of columns.entries()) {
    const cell = cells[place]?.trim() ?? '';
    if (reading === null || isNothing(cell)) continue;
    if (decimal === null && THOUSANDS.test(cell)) return { kind: 'comma-in-doubt', cell };
    const value = readNumber(cell, decimal);
    if (Number.isNaN(value)) return { kind: 'not-a-number', cell };
    const converted = toUnit(cell, value, reading);
    if (converted < 0) return { kind: reading.column.endsWith('_K') ? 'below-absolute-zero' : 'below-zero', cell };
    if (converted > MOST[reading.column]) return { kind: 'too-much', cell };
    point[reading.column] = converted;
  }
  if (point.time_s === undefined) return { kind: 'time-missing' };
  if (Object.keys(point).length === 1) return { kind: 'no-reading' };
  return point as LoggedPoint;
}

const meaningOf = ({ column, spelt }: ColumnReading): ColumnMeaning => ({ column, unit: spelt });

function readingOf({ column, unit: spelt }: ColumnMeaning): ColumnReading {
  const units = MEANINGS.flatMap(({ readings }) => readings).find(([kind]) => kind === column)?.[1] ?? {};
  const found = Object.hasOwn(units, spelt) ? units[spelt] : undefined;
  if (found === undefined) throw new RangeError(`${column} in ${spelt} is no column`);
  return { column, unit: found, spelt };
}

/** Reads lines of cells of which it is known what they are. */
export function lineReader({ columns, decimal }: LogReading): (cells: readonly string[]) => LoggedPoint | LineProblem {
  const readings = columns.map((meaning) => meaning && readingOf(meaning));
  return (cells) => readLine(cells, readings, decimal);
}

const MINUTES_AND_OIL: readonly ColumnReading[] = [
  { column: 'time_s', unit: unit(60), spelt: 'min' },
  { column: 'oil_mL', unit: unit(1), spelt: 'ml' },
];

/** Columns of which at least one line has a number. */
const numericColumns = ({ lines, width, decimal }: LogTable): readonly number[] =>
  Array.from({ length: width }, (_, place) => place).filter((place) =>
    lines.some(({ cells }) => !Number.isNaN(readNumber(cells[place] ?? '', decimal ?? 'comma'))),
  );

interface Headings {
  readonly columns: readonly (ColumnReading | null)[];
  readonly passedOver: readonly string[];
  readonly problems: readonly PointsProblem[];
}

/** What the columns of a table are by its headings, and what is wrong with them. */
function headingsOf(table: LogTable): Headings {
  const { headings, lines, width } = table;
  if (headings === null) {
    const numeric = numericColumns(table);
    const columns = Array.from({ length: width }, (_, place) => MINUTES_AND_OIL[place] ?? null);
    if (numeric.every((place) => place < 2)) return { columns, passedOver: [], problems: [] };
    const line = lines[0]?.line ?? 1;
    return { columns, passedOver: [], problems: [{ line, kind: 'columns-unnamed', columns: numeric.length }] };
  }
  const read = headings.cells.map(readHeader);
  const problems: PointsProblem[] = [];
  for (const found of read) if (isProblem(found)) problems.push({ line: headings.line, ...found });
  const columns = read.map((found) => (isProblem(found) ? null : found));
  return {
    columns,
    passedOver: headings.cells
      .filter((cell, index) => read[index] === null && cell.trim() !== '')
      .map((cell) => cell.trim()),
    problems: [...problems, ...columnProblems(columns, headings.line)],
  };
}

function columnProblems(columns: readonly (ColumnReading | null)[], line: number): PointsProblem[] {
  const named = columns.flatMap((found) => (found === null ? [] : [found.column]));
  const twice = named.find((column, index) => named.indexOf(column) < index);
  const found: PointsProblem[] = twice === undefined ? [] : [{ line, kind: 'column-twice', column: twice }];
  if (!named.includes('time_s')) found.push({ line, kind: 'no-time-column' });
  else if (named.length === 1) found.push({ line, kind: 'no-reading-column' });
  return found;
}

/** A text as a table, and how it would be read; `null` where there is nothing to read. */
export function understood(text: string): { readonly table: LogTable; readonly reading: LogReading } | null {
  const table = logTable(text);
  if (table === null) return null;
  const { columns } = headingsOf(table);
  return {
    table,
    reading: {
      columns: Array.from({ length: table.width }, (_, place) => {
        const found = columns[place];
        return found ? meaningOf(found) : null;
      }),
      decimal: table.decimal,
    },
  };
}

/** Problems after which no line can be read. */
const STOPS = new Set<PointsProblem['kind']>(['no-time-column', 'no-reading-column', 'columns-unnamed']);

/**
 * Reads pasted columns. Never throws; what cannot be read is in `problems`.
 * @param chosen how to read them, where the reader has said so
 */
export function readPoints(text: string, chosen?: LogReading): ReadPoints {
  const table = logTable(text);
  if (table === null) return { points: [], passedOver: [], problems: [{ line: 1, kind: 'nothing-to-read' }] };
  const line = table.headings?.line ?? table.lines[0]?.line ?? 1;
  const own = chosen?.columns.map((meaning) => meaning && readingOf(meaning));
  const {
    columns,
    passedOver,
    problems: ofHeadings,
  } = own ? { columns: own, passedOver: [], problems: columnProblems(own, line) } : headingsOf(table);
  const problems = [...ofHeadings];
  if (problems.some(({ kind }) => STOPS.has(kind))) return { points: [], passedOver, problems };
  const points: LoggedPoint[] = [];
  for (const { line: at, cells } of table.lines) {
    const found = readLine(cells, columns, chosen ? chosen.decimal : table.decimal);
    if (isProblem(found)) problems.push({ line: at, ...found });
    else points.push(found);
  }
  return { points: points.sort((a, b) => a.time_s - b.time_s), problems, passedOver };
}
