/**
 * What tube costs: the reader's own prices where there are some, else a default price by the weight of metal, so that a
 * thick pipe never costs the same as a thin one.
 */
import { fieldAt } from '../../scenario/fields.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import type { TubeSize } from '../condenser-size/tubes.ts';
import { packsOf, type Packs } from '../condenser-size/packs.ts';

/** How a shop sells a tube. */
export type OwnPrice =
  /** Cut to length. */
  | { readonly soldBy: 'metre'; readonly price: number }
  /** In whole coils or lengths. */
  | { readonly soldBy: 'piece'; readonly price: number; readonly length_m: number };

export interface PriceList {
  /** By id of the material: price of a kilogram of tube. */
  readonly metals: Readonly<Record<string, number>>;
  /** By id of the tube. */
  readonly tubes: Readonly<Record<string, OwnPrice>>;
}

/** Prices of a kilogram of tube in small amounts: invented round figures, to be replaced by one's own. */
export const DEFAULT_METAL_PRICES: Readonly<Record<string, number>> = {
  copper: 30,
  'stainless-steel': 25,
  'borosilicate-glass': 60,
};

/** Nothing of one's own. */
export const NO_PRICES: PriceList = { metals: {}, tubes: {} };

export interface TubeCost {
  readonly amount: number;
  /** Whether it rests on a price of the reader's or on a default. */
  readonly basis: 'own' | 'default';
  /** Whole pieces to buy; `null` where the tube is cut to length. */
  readonly packs: Packs | null;
  /** What is bought, and what of it is left over, m. */
  readonly bought_m: number;
  readonly left_m: number;
}

/** A price by the metre that the scenario itself holds for its own tube; `null` where it is the default. */
const priceOfScenario = ({ condenser }: Pick<Scenario, 'condenser'>): OwnPrice | null =>
  condenser.tubePrice_m === fieldAt('condenser.tubePrice_m')?.default
    ? null
    : { soldBy: 'metre', price: condenser.tubePrice_m };

/**
 * What the tubes of a size cost, ends and cutting included, in whole pieces where they are sold so; `null` where no
 * length is enough or no price is known.
 * @param own the still, where the tube is its own and may bear a price there
 */
export function tubeCost(
  size: TubeSize,
  prices: PriceList,
  own: Pick<Scenario, 'condenser'> | null = null,
): TubeCost | null {
  const { toBuy_m, lengthWithMargin_m, mass_kg, tubes, material } = size;
  if (toBuy_m === null || lengthWithMargin_m === null || mass_kg === null) return null;
  const needed = toBuy_m * tubes;
  const listed = size.id === null ? undefined : prices.tubes[size.id];
  const price = listed ?? (own && priceOfScenario(own));
  if (price) {
    if (price.soldBy === 'metre')
      return { amount: price.price * needed, basis: 'own', packs: null, bought_m: needed, left_m: 0 };
    const packs = packsOf([price.length_m], toBuy_m, tubes) as Packs;
    const bought_m = packs.count * packs.length_m;
    return { amount: packs.count * price.price, basis: 'own', packs, bought_m, left_m: bought_m - needed };
  }
  const perKilogram = prices.metals[material] ?? DEFAULT_METAL_PRICES[material];
  if (perKilogram === undefined) return null;
  const { packs } = size;
  const bought_m = packs === null ? needed : packs.count * packs.length_m;
  const perMetre = (perKilogram * mass_kg) / (lengthWithMargin_m * tubes);
  const basis = prices.metals[material] === undefined ? 'default' : 'own';
  return { amount: perMetre * bought_m, basis, packs, bought_m, left_m: bought_m - needed };
}
