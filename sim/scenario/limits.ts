/**
 * Limits that are needed beside the schema: by the page, whose live controls stand before the schema is fetched, and
 * by runs that are carried on past their plan. The schema takes them from here.
 */

export interface Range {
  readonly min: number;
  readonly max: number;
}

/** Allowed ranges of what is turned while a run is watched, by the path of the field, SI. */
export const LIVE_RANGES = {
  'heat.setting': { min: 0, max: 1 },
  'heat.targetRate_kg_s': { min: 0.000_005, max: 0.02 },
  'cooling.flow_kg_s': { min: 0, max: 2 },
  'condenser.length_m': { min: 0.05, max: 100 },
  'charge.mass_kg': { min: 0, max: 1000 },
} as const satisfies Readonly<Record<string, Range>>;

/** Longest planned run, s. */
export const LONGEST_RUN_S = 259_200;

/** Latest time of a knot of a schedule or of a lot of ice, s. */
export const LATEST_CHANGE_S = 604_800;
/** Most knots of a schedule. */
export const MOST_KNOTS = 200;

/** Most lots of ice, and the weight of one, kg. */
export const MOST_ICE_LOTS = 50;
export const ICE_LOT_KG = { min: 0.01, max: 500 } as const satisfies Range;

/** Price of a cubic metre of tap water until the reader says otherwise: invented. */
export const DEFAULT_WATER_PRICE_m3 = 3;

/** Default prices of a joule of electricity, natural gas, bottled gas and wood; the library's rows must give the same. */
export const DEFAULT_ENERGY_PRICES_J: readonly number[] = [0.3 / 3.6e6, 0.1 / 3.6e6, 2.5 / 46.33e6, 0.4 / 14.5e6];

/** Steps of a run times the cells of the still that each goes through: about as much as takes minutes. */
export const MOST_CELL_STEPS = 2e8;
