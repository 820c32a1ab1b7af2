/** Text for standard output: JSON with lists of numbers in one line, tables in columns. */

const isPlain = (value: unknown): boolean => value === null || typeof value !== 'object';
/** Sentences in a list stand one a line. */
const isShort = (value: unknown): boolean => isPlain(value) && !(typeof value === 'string' && value.includes(' '));

/** JSON with indented objects; what is not a finite number reads null, as JSON has no word for it. */
export function toJson(value: unknown, indent = ''): string {
  if (ArrayBuffer.isView(value)) return toJson(Array.from(value as unknown as ArrayLike<number>), indent);
  if (isPlain(value)) return JSON.stringify(value) ?? 'null';
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.every(isShort)) return `[${value.map((entry) => toJson(entry)).join(', ')}]`;
    return `[\n${value.map((entry) => inner + toJson(entry, inner)).join(',\n')}\n${indent}]`;
  }
  const entries = Object.entries(value as object).filter(
    ([, entry]) => entry !== undefined && typeof entry !== 'function',
  );
  if (entries.length === 0) return '{}';
  return `{\n${entries.map(([key, entry]) => `${inner}${JSON.stringify(key)}: ${toJson(entry, inner)}`).join(',\n')}\n${indent}}`;
}

/** One cell of a table: numbers to a few digits, nothing as a dash. */
export function cell(value: number | string | boolean | null | undefined, digits = 3): string {
  if (value === null || value === undefined || value === '') return '–';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  const short = Number(value.toPrecision(digits));
  return Math.abs(short) >= 1e6 || (short !== 0 && Math.abs(short) < 1e-4) ? short.toExponential() : String(short);
}

const NUMBER_LIKE = /^[-–]?\d|^–$/;

/** Columns under their headings, numbers to the right; the last column is not padded. */
export function toTable(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = headings.map((heading, column) =>
    Math.max(heading.length, ...rows.map((row) => row[column]?.length ?? 0)),
  );
  const right = headings.map(
    (_, column) => rows.length > 0 && rows.every((row) => NUMBER_LIKE.test(row[column] ?? '–')),
  );
  const line = (cells: readonly string[]): string =>
    cells
      .map((text, column) => {
        if (right[column]) return text.padStart(widths[column] as number);
        return column === headings.length - 1 ? text : text.padEnd(widths[column] as number);
      })
      .join('  ')
      .trimEnd();
  return [line(headings), ...rows.map(line)].join('\n');
}
