/**
 * A price list as comma-separated values: a line of headings, then a line a price. `tube` is the id of a tube or of a
 * material of the library; a tube is sold by the `metre` or by the `piece` of a `length (m)`, a metal by the `kg`.
 */
import { DEFAULT_METAL_PRICES, type OwnPrice, type PriceList } from '../answers/shopping/prices.ts';
import { tubes } from '../library/index.ts';
import { fromCsv, toCsv } from './csv.ts';

const HEADINGS = ['tube', 'price', 'sold by', 'length (m)'] as const;

/** Dearest price and longest piece that are taken for no slip of the hand. */
export const MOST_PRICE = 100_000;
export const LONGEST_PIECE_m = 1000;

/** What is wrong with a line, from 1. */
export type PriceProblem = { readonly line: number } & (
  | { readonly kind: 'no-headings'; readonly missing: readonly string[] }
  | { readonly kind: 'unknown-tube'; readonly id: string }
  | { readonly kind: 'bad-price'; readonly cell: string }
  | { readonly kind: 'bad-length'; readonly cell: string }
  | { readonly kind: 'bad-unit'; readonly cell: string }
);

export interface ReadPriceList {
  readonly list: PriceList;
  readonly problems: readonly PriceProblem[];
}

const numberWithin = (cell: string, most: number): number | null => {
  const value = cell.trim() === '' ? Number.NaN : Number(cell.trim().replace(',', '.'));
  return value > 0 && value <= most ? value : null;
};

/** Lines that cannot be read are told and left out. */
export function readPriceList(text: string): ReadPriceList {
  const [headings = [], ...rows] = fromCsv(text);
  const names = headings.map((heading) => heading.trim().toLowerCase());
  const column = (name: string) => names.indexOf(name);
  const missing = HEADINGS.slice(0, 3).filter((name) => column(name) < 0);
  if (missing.length > 0)
    return { list: { metals: {}, tubes: {} }, problems: [{ line: 1, kind: 'no-headings', missing }] };
  const metals: Record<string, number> = {};
  const own: Record<string, OwnPrice> = {};
  const problems: PriceProblem[] = [];
  rows.forEach((row, index) => {
    if (row.every((cell) => cell.trim() === '')) return;
    const line = index + 2;
    const cell = (name: string) => (row[column(name)] ?? '').trim();
    const id = cell('tube');
    const price = numberWithin(cell('price'), MOST_PRICE);
    const isMetal = Object.hasOwn(DEFAULT_METAL_PRICES, id);
    const soldBy = cell('sold by').toLowerCase();
    if (!isMetal && !tubes.some((tube) => tube.id === id)) problems.push({ line, kind: 'unknown-tube', id });
    else if (price === null) problems.push({ line, kind: 'bad-price', cell: cell('price') });
    else if (isMetal && soldBy === 'kg') metals[id] = price;
    else if (!isMetal && soldBy === 'metre') own[id] = { soldBy, price };
    else if (!isMetal && soldBy === 'piece') {
      const length_m = numberWithin(cell('length (m)'), LONGEST_PIECE_m);
      if (length_m === null) problems.push({ line, kind: 'bad-length', cell: cell('length (m)') });
      else own[id] = { soldBy, price, length_m };
    } else problems.push({ line, kind: 'bad-unit', cell: cell('sold by') });
  });
  return { list: { metals, tubes: own }, problems };
}

/** The same, to be read again. */
export const priceListCsv = ({ metals, tubes: own }: PriceList): string =>
  toCsv(HEADINGS, [
    ...Object.entries(metals).map(([id, price]) => [id, price, 'kg', '']),
    ...Object.entries(own).map(([id, price]) => [
      id,
      price.price,
      price.soldBy,
      price.soldBy === 'piece' ? price.length_m : '',
    ]),
  ]);
