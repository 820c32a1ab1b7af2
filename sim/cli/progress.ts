/** A count for whoever watches a terminal; a file or a pipe on standard error gets none of it. */
interface Watched {
  readonly isTTY?: boolean;
  write(text: string): unknown;
}

const TO_LINE_START = '\r\u001B[K';

/** Calls `each` for 0 to below `count`, telling before each how many are done; the line is wiped at the end. */
export function counted<T>(
  count: number,
  what: string,
  each: (index: number) => T,
  watched: Watched = process.stderr,
): T[] {
  const tell = watched.isTTY === true ? (text: string) => void watched.write(TO_LINE_START + text) : () => undefined;
  try {
    return Array.from({ length: count }, (_, index) => {
      tell(`${index} of ${count} ${what}`);
      return each(index);
    });
  } finally {
    tell('');
  }
}
