/** Values between known ones, in a straight line. */

/** From a at share 0 to b at share 1. Allocates nothing. */
export const lerp = (a: number, b: number, share: number): number => a + share * (b - a);

/** Where a value lies among rising ones: the row at or before it, and how far it is on the way to the next. */
export interface Position {
  readonly row: number;
  readonly share: number;
}

/** Row of the last of rising values that is not above x; the first when all are. @param count values that count */
export function lastRowUpTo(xs: ArrayLike<number>, x: number, count: number = xs.length): number {
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((xs[middle] as number) <= x) low = middle;
    else high = middle - 1;
  }
  return Math.max(0, low);
}

/** Where x lies among rising values; outside them, at the nearer end. Arguments as `lastRowUpTo`. */
export function positionOf(xs: ArrayLike<number>, x: number, count: number = xs.length): Position {
  const row = lastRowUpTo(xs, x, count);
  const from = xs[row] as number;
  if (row >= count - 1 || !(x > from)) return { row, share: 0 };
  return { row, share: (x - from) / ((xs[row + 1] as number) - from) };
}

/** Value of a column at a position; on a row it is that row's, whatever follows. NaN in an empty column. */
export function valueAt(values: ArrayLike<number>, { row, share }: Position): number {
  const here = values[row];
  if (here === undefined) return Number.NaN;
  return share === 0 ? here : lerp(here, values[row + 1] as number, share);
}

/** Value of one cell of a grid, stored row by row, at a position. */
export function cellAt(data: ArrayLike<number>, cells: number, cell: number, { row, share }: Position): number {
  const here = data[row * cells + cell] as number;
  return share === 0 ? here : lerp(here, data[(row + 1) * cells + cell] as number, share);
}
