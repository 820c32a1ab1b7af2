/** Reads columns between their rows. */

/** A moment in a record: the row before it and how far it lies towards the next one. */
export interface Moment {
  readonly row: number;
  readonly share: number;
}

/** Where a time (or any x) lies among rising ones; outside them, the nearest end. */
export function momentAt(xs: ArrayLike<number>, time: number): Moment {
  let low = 0;
  let high = xs.length - 1;
  if (high <= 0 || !(time > (xs[0] as number))) return { row: 0, share: 0 };
  if (time >= (xs[high] as number)) return { row: high, share: 0 };
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((xs[middle] as number) <= time) low = middle;
    else high = middle;
  }
  const from = xs[low] as number;
  return { row: low, share: (time - from) / ((xs[low + 1] as number) - from) };
}

/** Value of a column at a moment, in a straight line between rows. */
export function valueAt(values: ArrayLike<number>, { row, share }: Moment): number {
  const here = values[row];
  if (here === undefined) return NaN;
  return share === 0 ? here : here + share * ((values[row + 1] as number) - here);
}

/** One row of a grid at a moment, written into `out`. */
export function gridRowAt(
  data: ArrayLike<number>,
  cells: number,
  { row, share }: Moment,
  out: Float64Array,
): Float64Array {
  for (let cell = 0; cell < cells; cell += 1) {
    const here = data[row * cells + cell] as number;
    out[cell] = share === 0 ? here : here + share * ((data[(row + 1) * cells + cell] as number) - here);
  }
  return out;
}

/** One cell of a grid through all rows, as a column of its own. */
export function gridColumn(
  grid: { readonly cells: number; readonly data: Float64Array },
  cell: number,
  rows: number,
): Float64Array {
  const column = new Float64Array(rows);
  for (let row = 0; row < rows; row += 1) column[row] = grid.data[row * grid.cells + cell] as number;
  return column;
}

interface Line {
  readonly xs: ArrayLike<number>;
  readonly values: ArrayLike<number>;
}

/** Value of a line at an x, straight between its points. */
export const readLine = ({ xs, values }: Line, x: number): number => valueAt(values, momentAt(xs, x));
