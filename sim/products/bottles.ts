/** Oil in bottles: how many, how full, and what the air shut in with it can do. */
import { headspacePeroxide } from '../transfer/after-the-still.ts';

/** Share of a bottle that is filled, and the air that warm oil needs to grow into. */
export const USUAL_FILL = 0.95;
export const FILL_RANGE = [0.9, 0.97] as const;
/** Growth of oil in volume, 1/K: the slope of the constituents' densities. */
export const EXPANSION_1_K = 0.9e-3;
/** Oxygen that oil holds when it has stood open, mol/m³; air-saturated organic liquids hold 1.5 to 3. */
export const DISSOLVED_OXYGEN_mol_m3 = 2;

/** Common sizes of bottles by what is printed on them, m³. */
export const BOTTLE_SIZES_m3: readonly number[] = [5e-6, 10e-6, 15e-6, 30e-6, 50e-6, 100e-6];

export interface BottlePlan {
  readonly size_m3: number;
  readonly full: number;
  /** Oil in the last bottle, m³; 0 where the full ones take it all. */
  readonly last_m3: number;
  readonly lastFill: number;
  /** Most peroxide that the air of a full bottle makes, mol/m³, without what is dissolved. */
  readonly peroxide_mol_m3: number;
  /** The same in the last bottle; `null` where there is none. */
  readonly lastPeroxide_mol_m3: number | null;
}

/** Most peroxide from the air above oil at a fill, mol/m³. */
export const peroxideAtFill = (fill: number, T: number): number => headspacePeroxide(1 - fill, fill, T);

/** Less than this share of a bottle is a rest that rounding leaves. */
const NO_OIL = 1e-9;

export function planBottles(oil_m3: number, size_m3: number, fill: number, T: number): BottlePlan {
  const each = size_m3 * fill;
  const full = Math.floor(oil_m3 / each + NO_OIL);
  const rest = oil_m3 - full * each;
  const last_m3 = rest > NO_OIL * each ? rest : 0;
  return {
    size_m3,
    full,
    last_m3,
    lastFill: last_m3 / size_m3,
    peroxide_mol_m3: peroxideAtFill(fill, T),
    lastPeroxide_mol_m3: last_m3 > 0 ? peroxideAtFill(last_m3 / size_m3, T) : null,
  };
}

/** Rise of temperature that a bottle takes before it is brim-full, K. */
export const warmingToBrim = (fill: number): number => (1 / fill - 1) / EXPANSION_1_K;
