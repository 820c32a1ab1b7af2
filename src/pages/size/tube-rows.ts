/** Rows of the table of tubes: the library's row, what was found for it, and which rows the reader wants to see. */
import {
  formatQuantity,
  NO_PRICES,
  tubeCost,
  tubes,
  type PriceList,
  type Scenario,
  type Tube,
  type TubeCost,
  type TubeSize,
  type UnitSystem,
} from '../../../sim/index.ts';
import type { TubeToTry } from './tube-session.ts';

export interface TubeRow {
  readonly tube: Tube;
  /** `null` until it has been tried. */
  readonly size: TubeSize | null;
}

/** Whether a tube is like the still's own; of several standards more than one row may be. */
export const isOwnTube = ({ tube }: TubeRow, { condenser }: Pick<Scenario, 'condenser'>): boolean =>
  tube.material === condenser.material &&
  Math.abs(tube.insideDiameter_m - condenser.insideDiameter_m) < 1e-6 &&
  Math.abs(tube.outsideDiameter_m - condenser.outsideDiameter_m) < 1e-6;

/** What is to be bought of a tube, and for how much; `null` until that is known. */
export const costOfRow = (row: TubeRow, scenario: Scenario, prices: PriceList): TubeCost | null =>
  row.size === null ? null : tubeCost(row.size, prices, isOwnTube(row, scenario) ? scenario : null);

export const BORES = [
  { id: 'any', from_m: 0, to_m: Infinity },
  { id: 'narrow', from_m: 0, to_m: 0.008 },
  { id: 'usual', from_m: 0.008, to_m: 0.014 },
  { id: 'wide', from_m: 0.014, to_m: 0.02 },
  { id: 'widest', from_m: 0.02, to_m: Infinity },
] as const;

/** A range of bores as a choice. */
export function boreWords(from_m: number, to_m: number, units: UnitSystem): string {
  const bore = (value: number) => formatQuantity(value, 'm', units, { hint: 'bore', decimals: units === 'us' ? 2 : 0 });
  if (from_m === 0) return to_m === Infinity ? 'any bore' : `up to ${bore(to_m)}`;
  return to_m === Infinity ? `over ${bore(from_m)}` : `${bore(from_m)} to ${bore(to_m)}`;
}

export type BoreId = (typeof BORES)[number]['id'];

export interface TubeFilter {
  /** Name of a standard; empty for all. */
  readonly standard: string;
  /** Id of a material; empty for all. */
  readonly material: string;
  readonly bore: BoreId;
  /** Only what works, fits the tub and can be bent. */
  readonly onlyGood: boolean;
  /** Only tubes for which the reader has a price of their own. */
  readonly onlyPriced: boolean;
  /** Words and sizes to look for: `10 mm`, `3/8`, `stainless`. */
  readonly search: string;
}

/** Every tube that is one to buy. */
export const ALL_GOOD: TubeFilter = {
  standard: '',
  material: '',
  bore: 'any',
  onlyGood: true,
  onlyPriced: false,
  search: '',
};

export const standards: readonly string[] = [...new Set(tubes.map(({ standard }) => standard))];

/** What tubes are made of, and the words for it. */
export const MATERIALS = [
  { id: 'copper', words: 'Copper' },
  { id: 'stainless-steel', words: 'Stainless steel' },
  { id: 'borosilicate-glass', words: 'Glass' },
] as const;

const boreFits = ({ insideDiameter_m }: Tube, bore: BoreId): boolean => {
  const range = BORES.find(({ id }) => id === bore);
  return range !== undefined && insideDiameter_m >= range.from_m && insideDiameter_m < range.to_m;
};

/** Sizes that are named in a search count within so much, m. */
const NEARLY = 0.000_3;

/** Whether a tube answers a search: every size is its outside or bore, every other word stands in its name. */
export function answersSearch(tube: Tube, search: string): boolean {
  const sizes = [...search.matchAll(/(\d+(?:[.,]\d+)?)\s*mm\b/gu)].map(
    ([, number]) => Number(number?.replace(',', '.')) / 1000,
  );
  const words = search
    .replaceAll(/(\d+(?:[.,]\d+)?)\s*mm\b/gu, ' ')
    .toLowerCase()
    .split(/\s+/u)
    .filter((word) => word !== '' && word !== 'in');
  const said = `${tube.name} ${tube.designation} ${tube.standard} ${tube.material}`.toLowerCase().replaceAll('×', 'x');
  return (
    sizes.every((size) =>
      [tube.outsideDiameter_m, tube.insideDiameter_m].some((diameter) => Math.abs(diameter - size) < NEARLY),
    ) && words.every((word) => said.includes(word.replaceAll('×', 'x')))
  );
}

/** The radius that a tube must keep by the way it is bent, m; the tighter one where even that does not do. */
export function bendRadius({ tube, size }: TubeRow): number | null {
  const { byHand, withTool } = tube.minimumBendRadius_m;
  const isByHand = size === null || size.bend === null || size.bend === 'by-hand';
  return isByHand ? (byHand ?? withTool) : (withTool ?? byHand);
}

/** Whether a tube is one to buy for this still; what has not been tried may be. */
export const isGood = ({ size }: TubeRow): boolean =>
  size === null || (size.length_m !== null && size.fitsTub !== false && size.bendOk !== false);

export const wanted = (
  row: TubeRow,
  { standard, material, bore, onlyGood, onlyPriced, search }: TubeFilter,
  prices: PriceList = NO_PRICES,
): boolean =>
  (standard === '' || row.tube.standard === standard) &&
  (material === '' || row.tube.material === material) &&
  boreFits(row.tube, bore) &&
  answersSearch(row.tube, search) &&
  (!onlyPriced || prices.tubes[row.tube.id] !== undefined) &&
  (!onlyGood || isGood(row));

/** Bores below this are seldom wide enough for a still, m. */
const NARROW = 0.006;

/**
 * The own tube, then those that the reader looks at, the cheapest first; each with the length to try first: lengths go
 * roughly with the outside.
 */
export function tubesInOrder(
  filter: TubeFilter,
  own: TubeSize,
  canCoilOnly: boolean,
  hopeless_m: number,
  prices: PriceList = NO_PRICES,
): readonly TubeToTry[] {
  const rank = (tube: Tube): number =>
    tube.id === own.id
      ? -1
      : (wanted({ tube, size: null }, filter, prices) ? 0 : 4) +
        (canCoilOnly && !tube.coilable ? 2 : 0) +
        (tube.insideDiameter_m < NARROW ? 1 : 0);
  /** About in the order of what enough of each costs. */
  const metal = (tube: Tube): number => tube.massPerLength_kg_m / tube.outsideDiameter_m;
  const start = (tube: Tube): number =>
    own.length_m === null ? hopeless_m : 1.25 * own.length_m * (own.outsideDiameter_m / tube.outsideDiameter_m);
  return [...tubes]
    .sort((a, b) => rank(a) - rank(b) || metal(a) - metal(b))
    .map((tube) => ({ id: tube.id, start_m: start(tube) }));
}
