/** Percent, drops, millilitres and grams of oil in a product. */

/** Drops in a millilitre of oil from a bottle's insert, when nobody has weighed them. */
export const USUAL_DROPS_per_mL = 27;
export const DROPS_RANGE_per_mL = [20, 56] as const;
/** A cap is kept by counting drops as if they were as large as any. */
export const DROPS_TO_KEEP_A_CAP_per_mL = 20;

const MILLILITRE_m3 = 1e-6;

export interface Amounts {
  readonly oil_m3: number;
  readonly oil_kg: number;
  readonly drops: number;
}

/** @param share of the product by volume */
export const amountsOf = (share: number, product_m3: number, dropsPer_mL: number, density_kg_m3: number): Amounts => {
  const oil_m3 = share * product_m3;
  return { oil_m3, oil_kg: oil_m3 * density_kg_m3, drops: (oil_m3 / MILLILITRE_m3) * dropsPer_mL };
};

/** Share by volume that a count of drops comes to. */
export const shareOfDrops = (drops: number, product_m3: number, dropsPer_mL: number): number =>
  ((drops / dropsPer_mL) * MILLILITRE_m3) / product_m3;

/** Drops in a millilitre from a weighing of some drops. */
export const dropsFromWeighing = (drops: number, mass_kg: number, density_kg_m3: number): number =>
  drops / (mass_kg / density_kg_m3 / MILLILITRE_m3);
