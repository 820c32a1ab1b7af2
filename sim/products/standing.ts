/** Oil after the separator: water drops leave it, filters keep some of it, a drying salt takes the dissolved water. */
import { STANDARD_GRAVITY } from '../constants.ts';
import { tableLiquidDensity } from '../fluids/water-table.ts';
import { stokesVelocity } from '../transfer/settling.ts';
import { oilDensity, viscosityOf, type OilShare } from './oil.ts';

/** Sizes of water drops that are followed, m: cloudy, faint, and the haze that no standing removes. */
export const WATER_DROPS_m: readonly number[] = [100e-6, 50e-6, 20e-6, 10e-6, 5e-6];

/** Time in which a water drop falls, or in a heavy oil rises, through a height, s; infinite at equal densities. */
export const timeToFall = (
  drop_m: number,
  difference_kg_m3: number,
  viscosity_Pa_s: number,
  height_m: number,
): number => height_m / Math.abs(stokesVelocity(drop_m, difference_kg_m3, viscosity_Pa_s, STANDARD_GRAVITY));

export interface Standing {
  readonly difference_kg_m3: number;
  readonly viscosity_Pa_s: number;
  /** The water gathers at the bottom, or in an oil that sinks at the top. */
  readonly waterSinks: boolean;
  readonly times_s: readonly number[];
}

export function standing(composition: readonly OilShare[], T: number, height_m: number): Standing {
  const difference = tableLiquidDensity(T) - oilDensity(composition, T);
  const viscosity = viscosityOf(composition, T);
  return {
    difference_kg_m3: difference,
    viscosity_Pa_s: viscosity,
    waterSinks: difference > 0,
    times_s: WATER_DROPS_m.map((drop) => timeToFall(drop, difference, viscosity, height_m)),
  };
}

/** Oil that a filter keeps, m³: least and most. */
export const FILTERS = {
  paper: { kept_m3: [0.3e-6, 1e-6] },
  cotton: { kept_m3: [0.1e-6, 0.3e-6] },
  none: { kept_m3: [0, 0] },
} as const satisfies Readonly<Record<string, { readonly kept_m3: readonly [number, number] }>>;
export type FilterKind = keyof typeof FILTERS;
export const FILTER_KINDS = ['none', 'cotton', 'paper'] as const satisfies readonly FilterKind[];

/** Less oil than this is not worth a filter, m³. */
export const LEAST_TO_FILTER_m3 = 10e-6;

/**
 * Water that an oil holds at 25 °C when it is clear, by weight, and how well that is known: a group-contribution method,
 * good to a factor of two. By the family that rules the oil.
 */
export const WATER_HELD = { hydrocarbons: 0.0004, estersAndKetones: 0.006, alcoholsAndPhenols: 0.0125 } as const;
export const WATER_HELD_FACTOR = 2;

const ALCOHOLS_AND_PHENOLS: ReadonlySet<string> = new Set([
  ...['linalool', 'terpinen_4_ol', 'alpha_terpineol', 'menthol', 'borneol', 'geraniol', 'citronellol', 'cedrol'],
  ...['alpha_bisabolol', 'alpha_santalol', 'thymol', 'carvacrol', 'eugenol'],
]);
const OTHER_OXYGENATES: ReadonlySet<string> = new Set([
  ...['linalyl_acetate', 'bornyl_acetate', 'menthyl_acetate', 'eugenyl_acetate', 'camphor', 'fenchone', 'menthone'],
  ...['carvone', 'cineole_1_8', 'citral', 'citronellal', 'trans_anethole'],
]);

export type WaterHolder = keyof typeof WATER_HELD;
const RULES_FROM = 0.25;

/** The family that decides how much water stays in the oil. */
export function waterHolder(composition: readonly OilShare[]): WaterHolder {
  const shareOf = (set: ReadonlySet<string>): number =>
    composition.reduce((sum, { constituent, share }) => sum + (set.has(constituent) ? share : 0), 0);
  if (shareOf(ALCOHOLS_AND_PHENOLS) >= RULES_FROM) return 'alcoholsAndPhenols';
  return shareOf(OTHER_OXYGENATES) >= RULES_FROM ? 'estersAndKetones' : 'hydrocarbons';
}

/** Anhydrous sodium sulfate for oil that is dried, and what it costs in oil. */
export const DRYING_SALT = {
  /** kg per m³ of oil. */
  dose_kg_m3: [20, 50],
  /** kg that a kilogram of water needs, from the molar masses of salt and ten waters. */
  needed_kg_kg: 142.04 / 180.15,
  /** Oil that clings, m³/kg of salt. */
  keeps_m3_kg: [0.3e-3, 0.5e-3],
  /** Above it the salt no longer binds, K. */
  hottest_K: 305.15,
} as const;

export interface Drying {
  readonly water_kg: number;
  readonly needed_kg: number;
  readonly dose_kg: readonly [number, number];
  readonly lost_m3: readonly [number, number];
}

export function drying(composition: readonly OilShare[], oil_m3: number, T: number): Drying {
  const water_kg = oil_m3 * oilDensity(composition, T) * WATER_HELD[waterHolder(composition)];
  const dose = DRYING_SALT.dose_kg_m3.map((each) => each * oil_m3) as [number, number];
  return {
    water_kg,
    needed_kg: water_kg * DRYING_SALT.needed_kg_kg,
    dose_kg: dose,
    lost_m3: [dose[0] * DRYING_SALT.keeps_m3_kg[0], dose[1] * DRYING_SALT.keeps_m3_kg[1]],
  };
}

export interface LeftToBottle {
  /** What filter and salt keep, least and most. */
  readonly lost_m3: readonly [number, number];
  /** Oil less the middle of that. */
  readonly left_m3: number;
}

/** Oil that is left once it is filtered and, where a salt was used, dried. */
export function leftToBottle(oil_m3: number, filter: FilterKind, dried: Drying | null): LeftToBottle {
  const kept = FILTERS[filter].kept_m3;
  const salt = dried?.lost_m3 ?? [0, 0];
  const lost = [kept[0] + salt[0], kept[1] + salt[1]] as const;
  return { lost_m3: lost, left_m3: Math.max(0, oil_m3 - (lost[0] + lost[1]) / 2) };
}
