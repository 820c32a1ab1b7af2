/**
 * Columns pasted from a note or a spreadsheet, turned into logged points. The first line names the columns and their
 * units, e.g. `time (min), oil (mL), outlet °C`; without such a line two columns are taken as minutes and millilitres
 * of oil. Tabs, semicolons, commas or blanks part the columns; with tabs, semicolons or blanks a comma is a decimal
 * comma. A line that cannot be read is told and left out.
 */
import type { LoggedPoint, ReadingKind } from './readings.ts';

/** What can be wrong with one line of readings. */
export type LineProblem =
  | { readonly kind: 'not-a-number'; readonly cell: string }
  | { readonly kind: 'below-zero'; readonly cell: string }
  | { readonly kind: 'below-absolute-zero'; readonly cell: string }
  /** More than any still of this size gives, or a later time than any run. */
  | { readonly kind: 'too-much'; readonly cell: string }
  | { readonly kind: 'time-missing' }
  | { readonly kind: 'no-reading' };

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
  | { readonly kind: 'no-reading-column' };

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

interface ColumnReading {
  readonly column: LogColumnKind;
  readonly unit: Unit;
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
  const [, word = '', rest = ''] = /^([A-Za-z]+)[\s_/,([]*(.*?)[)\]]*$/.exec(trimmed) ?? [];
  return { word: word.toLowerCase(), unit: tidyUnit(rest.replace(/^in /, '')) };
}

/** What a header cell means, or what is wrong with it; `null` for a column to pass over. */
function readHeader(cell: string): ColumnReading | HeadingsProblem | null {
  const { word, unit: named } = splitHeader(cell);
  const meaning = MEANINGS.find(({ words }) => words.includes(word));
  if (!meaning) return null;
  if (named === '' && (word === 'min' || word === 'minutes')) return { column: 'time_s', unit: unit(60) };
  for (const [column, units] of meaning.readings) {
    const found = units[named === '' ? meaning.usual : named];
    if (found) return { column, unit: found };
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

/** Number in a cell; `h:mm` and `1h45` give minutes. */
function readNumber(cell: string, decimalComma: boolean): number {
  const text = cell
    .trim()
    .replace(/^["']|["']$/g, '')
    .replace(/\u2212/g, '-');
  const clock = CLOCK.exec(text);
  if (clock) return Number(clock[1]) * 60 + Number(clock[2] ?? 0);
  const plain = decimalComma ? text.replace(',', '.') : text;
  const value = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : Number.NaN;
  return Number.isFinite(value) ? value : Number.NaN;
}

/** What parts the columns, judged from the whole text. */
function separatorOf(lines: readonly string[]): RegExp {
  if (lines.some((line) => line.includes('\t'))) return /\t/;
  if (lines.some((line) => line.includes(';'))) return /;/;
  // `12,5 3,1` has decimal commas; `12, 3.1` and `12,3` have columns.
  const blanks =
    lines.every((line) => /[A-Za-z]/.test(line) || /^\s*\S+\s+\S/.test(line)) &&
    !lines.some((line) => /,\s/.test(line.trim()));
  const withComma = lines.some((line) => line.includes(','));
  return withComma && !blanks ? /,/ : /\s+/;
}

const isHeader = (line: string): boolean => /^\s*["']?[A-Za-z]/.test(line);

/** Blanks inside header cells (`oil mL`, `time (min)`) must not part a header whose columns are parted by blanks. */
function headerCells(line: string, separator: RegExp): string[] {
  if (separator.source !== '\\s+') return line.split(separator);
  return [
    ...line.matchAll(/[A-Za-z]+(?:\s*[([][^)\]]*[)\]]|[_/]\S+|\s+(?:°\S+|mL|ml|min|kg|g|L|h|s|C|F|K)(?=\s|$))?/g),
  ].map((match) => match[0]);
}

/** Where a line's clock reading applies: minutes already, whatever the column's unit says. */
const toUnit = (cell: string, value: number, { column, unit: by }: ColumnReading): number =>
  column === 'time_s' && /[:h]/i.test(cell) ? value * 60 : value * by.scale + by.offset;

function readLine(
  cells: readonly string[],
  columns: readonly (ColumnReading | null)[],
  decimalComma: boolean,
): LoggedPoint | LineProblem {
  const point: Partial<Record<LogColumnKind, number>> = {};
  for (const [place, reading] of columns.entries()) {
    const cell = cells[place]?.trim() ?? '';
    if (reading === null || cell === '' || cell === '-' || cell === '–') continue;
    const value = readNumber(cell, decimalComma);
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

/** Reads pasted columns. Never throws; what cannot be read is in `problems`. */
export function readPoints(text: string): ReadPoints {
  const lines = text
    .split(/\r\n|\r|\n/)
    .map((content, index) => ({ line: index + 1, content }))
    .filter(({ content }) => content.trim() !== '' && !content.trim().startsWith('#'));
  const first = lines[0];
  if (first === undefined) return { points: [], passedOver: [], problems: [{ line: 1, kind: 'nothing-to-read' }] };
  const separator = separatorOf(lines.map(({ content }) => content));
  const decimalComma = separator.source !== ',';
  const problems: PointsProblem[] = [];
  let columns: (ColumnReading | null)[] = [
    { column: 'time_s', unit: unit(60) },
    { column: 'oil_mL', unit: unit(1) },
  ];
  const passedOver: string[] = [];
  const withHeader = isHeader(first.content);
  if (withHeader) {
    const cells = headerCells(first.content, separator);
    const read = cells.map(readHeader);
    passedOver.push(
      ...cells.filter((cell, index) => read[index] === null && cell.trim() !== '').map((cell) => cell.trim()),
    );
    for (const found of read) if (isProblem(found)) problems.push({ line: first.line, ...found });
    columns = read.map((found) => (isProblem(found) ? null : found));
    const named = columns.flatMap((found) => (found === null ? [] : [found.column]));
    const twice = named.find((column, index) => named.indexOf(column) < index);
    if (twice !== undefined) problems.push({ line: first.line, kind: 'column-twice', column: twice });
    const missing = !named.includes('time_s') ? 'no-time-column' : named.length === 1 ? 'no-reading-column' : null;
    if (missing !== null)
      return { points: [], passedOver, problems: [...problems, { line: first.line, kind: missing }] };
  }
  const points: LoggedPoint[] = [];
  for (const { line, content } of withHeader ? lines.slice(1) : lines) {
    const found = readLine(
      (separator.source === '\\s+' ? content.trim() : content).split(separator),
      columns,
      decimalComma,
    );
    if (isProblem(found)) problems.push({ line, ...found });
    else points.push(found);
  }
  return { points: points.sort((a, b) => a.time_s - b.time_s), problems, passedOver };
}
