/** Rows of the table of tubes: the library's row, what was found for it, and which rows the reader wants to see. */
import { tubes, type Tube, type TubeSize } from '../../../sim/index.ts';

export interface TubeRow {
  readonly tube: Tube;
  /** `null` until it has been tried. */
  readonly size: TubeSize | null;
}

export const BORES = [
  { id: 'any', words: 'any bore', from_m: 0, to_m: Infinity },
  { id: 'narrow', words: 'up to 8 mm', from_m: 0, to_m: 0.008 },
  { id: 'usual', words: '8 to 14 mm', from_m: 0.008, to_m: 0.014 },
  { id: 'wide', words: '14 to 20 mm', from_m: 0.014, to_m: 0.02 },
  { id: 'widest', words: 'over 20 mm', from_m: 0.02, to_m: Infinity },
] as const;

export type BoreId = (typeof BORES)[number]['id'];

export interface TubeFilter {
  /** Name of a standard; empty for all. */
  readonly standard: string;
  readonly bore: BoreId;
  /** Only what holds, goes into the tub and can be bent. */
  readonly onlyGood: boolean;
}

export const standards: readonly string[] = [...new Set(tubes.map(({ standard }) => standard))];

const boreFits = ({ insideDiameter_m }: Tube, bore: BoreId): boolean => {
  const range = BORES.find(({ id }) => id === bore);
  return range !== undefined && insideDiameter_m >= range.from_m && insideDiameter_m < range.to_m;
};

/** Whether a tube is one to buy for this still; what has not been tried may be. */
export const isGood = ({ size }: TubeRow): boolean => size === null || (size.length_m !== null && size.fitsTub !== false && size.bendOk !== false);

export const wanted = (row: TubeRow, { standard, bore, onlyGood }: TubeFilter): boolean =>
  (standard === '' || row.tube.standard === standard) && boreFits(row.tube, bore) && (!onlyGood || isGood(row));

/** Those that the reader looks at first, each with the length to try first: lengths go roughly with the outside. */
export function tubesInOrder(filter: TubeFilter, own: TubeSize, canCoilOnly: boolean, hopeless_m: number): readonly { readonly id: string; readonly start_m: number }[] {
  const rank = (tube: Tube): number => (wanted({ tube, size: null }, filter) ? 0 : 2) + (canCoilOnly && !tube.coilable ? 1 : 0);
  const start = (tube: Tube): number =>
    own.length_m === null ? hopeless_m : 1.25 * own.length_m * (own.outsideDiameter_m / tube.outsideDiameter_m);
  return [...tubes].sort((a, b) => rank(a) - rank(b)).map((tube) => ({ id: tube.id, start_m: start(tube) }));
}
