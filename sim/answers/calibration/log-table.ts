/**
 * A log as a table of cells, before any of it counts: what parts its columns, which sign is its decimal sign, which line
 * holds its headings. Cells are quoted as RFC 4180 has it. A column is judged by its heading; whoever knows better says so.
 */
import { dsvFormat } from 'd3-dsv';

export const SEPARATORS = ['tab', 'semicolon', 'comma', 'blanks'] as const;
export type Separator = (typeof SEPARATORS)[number];
export type DecimalSign = 'point' | 'comma';

export interface TableLine {
  /** In the text, from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

export interface LogTable {
  readonly separator: Separator;
  /** `null` where the cells allow both: `1,234` is a thousand or a little more than one. */
  readonly decimal: DecimalSign | null;
  /** The line of headings, where there is one. */
  readonly headings: TableLine | null;
  readonly lines: readonly TableLine[];
  /** Most cells in a line. */
  readonly width: number;
}

const PARTED_BY: Readonly<Record<Exclude<Separator, 'blanks'>, RegExp>> = { tab: /\t/u, semicolon: /;/u, comma: /,/u };
const SIGNS = { tab: '\t', semicolon: ';', comma: ',' } as const;

const isNote = (text: string): boolean => text === '' || text.startsWith('#');
const outsideQuotes = (line: string): string => line.replace(/"(?:[^"]|"")*"/gu, '""');

/** What parts the columns, judged from the whole text; what stands in quotes parts nothing. */
function separatorOf(lines: readonly string[]): Separator {
  const bare = lines.map(outsideQuotes);
  if (bare.some((line) => PARTED_BY.tab.test(line))) return 'tab';
  if (bare.some((line) => PARTED_BY.semicolon.test(line))) return 'semicolon';
  // `12,5 3,1` has decimal commas; `12, 3.1` and `12,3` have columns.
  const blanks =
    bare.every((line) => /[A-Za-z]/u.test(line) || /^\s*\S+\s+\S/u.test(line)) &&
    !bare.some((line) => /,\s/u.test(line.trim()));
  // A note after two numbers has blanks of its own: `30,2,first drops came`.
  const inColumns = bare.some((line) => /^\s*[^\s,]+,[^\s,]*,/u.test(line));
  return bare.some((line) => PARTED_BY.comma.test(line)) && (!blanks || inColumns) ? 'comma' : 'blanks';
}

export const isHeader = (line: string): boolean => /^\s*["']?\p{L}/u.test(line);

/** Blanks inside header cells (`oil mL`, `time (min)`) must not part a header whose columns are parted by blanks. */
const blankHeadings = (line: string): string[] =>
  [...line.matchAll(/\p{L}+(?:\s*[([][^)\]]*[)\]]|[_/]\S+|\s+(?:°\S+|mL|ml|min|kg|g|L|h|s|C|F|K)(?=\s|$))?/gu)].map(
    (match) => match[0],
  );

/** Columns parted by blanks: a word that is no number begins a note, which goes on to the end of its line. */
function blankCells(content: string): string[] {
  const words = content.trim().split(/\s+/u);
  const note = words.findIndex((word, place) => place > 1 && !/\d/u.test(word) && !/^[-–]$/u.test(word));
  return note < 0 ? words : [...words.slice(0, note), words.slice(note).join(' ')];
}

const NUMBER_WITH_COMMA = /^[+\-−]?\d*,\d+$/u;
const THOUSANDS = /^[+\-−]?[1-9]\d{0,2}(?:,\d{3})+$/u;

/** The decimal sign that the cells show; a comma with three digits behind it alone shows none. */
function decimalOf(lines: readonly TableLine[]): DecimalSign | null {
  let doubtful = false;
  for (const { cells } of lines)
    for (const cell of cells) {
      const text = cell.trim();
      if (!NUMBER_WITH_COMMA.test(text)) continue;
      if (!THOUSANDS.test(text)) return 'comma';
      doubtful = true;
    }
  return doubtful ? null : 'point';
}

function quotedLines(text: string, sign: string): TableLine[] {
  let line = 1;
  return dsvFormat(sign)
    .parseRows(text)
    .flatMap((cells) => {
      const first = line;
      line += 1 + cells.reduce((ends, cell) => ends + (cell.match(/\r\n|\r|\n/gu)?.length ?? 0), 0);
      const isEmpty = cells.every((cell) => cell.trim() === '') && cells.length === 1;
      return isEmpty || (cells[0] ?? '').trim().startsWith('#') ? [] : [{ line: first, cells }];
    });
}

/** Reads any text as a table; `null` where no line holds anything. */
export function logTable(text: string): LogTable | null {
  const given = text.replace(/^\uFEFF/u, '');
  const contents = given.split(/\r\n|\r|\n/u).map((content, index) => ({ line: index + 1, content: content.trim() }));
  const told = contents.filter(({ content }) => !isNote(content));
  const first = told[0];
  if (first === undefined) return null;
  const separator = separatorOf(told.map(({ content }) => content));
  const all: readonly TableLine[] =
    separator === 'blanks'
      ? told.map(({ line, content }, index) => ({
          line,
          cells: index === 0 && isHeader(content) ? blankHeadings(content) : blankCells(content),
        }))
      : quotedLines(given, SIGNS[separator]);
  const withHeadings = isHeader(first.content);
  const lines = withHeadings ? all.slice(1) : all;
  return {
    separator,
    decimal: decimalOf(lines),
    headings: withHeadings ? (all[0] ?? null) : null,
    lines,
    width: all.reduce((most, { cells }) => Math.max(most, cells.length), 0),
  };
}
