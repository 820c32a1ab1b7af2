/** Reads columns between their rows. */
import { cellAt, positionOf, valueAt, type Position } from '../../../sim/index.ts';

/** One row of a grid at a position, written into `out`. */
export function gridRowAt(data: ArrayLike<number>, cells: number, position: Position, out: Float64Array): Float64Array {
  for (let cell = 0; cell < cells; cell += 1) out[cell] = cellAt(data, cells, cell, position);
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
export const readLine = ({ xs, values }: Line, x: number): number => valueAt(values, positionOf(xs, x));
