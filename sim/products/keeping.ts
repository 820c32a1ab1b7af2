/** How long oil and hydrosol keep. */
import { ageingRate, microbeGrowthRate, microbeGrowthTime } from '../transfer/after-the-still.ts';

const YEAR_s = 365.25 * 86400;
const HOUR_s = 3600;

/** Oils by how long they keep full, dark and at 20 °C, years: common practice. */
const KEEPS_years: Readonly<Record<string, number>> = {
  'orange-peel': 1,
  'scots-pine': 1,
  'juniper-berry': 1,
  rosemary: 2,
  'eucalyptus-globulus': 2,
  'lavender-true': 2,
  lavandin: 2,
  'thyme-thymol': 2,
  'fennel-bitter': 2,
  peppermint: 2.5,
  caraway: 2.5,
  'geranium-rose': 2.5,
  sage: 2.5,
  oregano: 2.5,
  'lemon-balm': 2.5,
  'clove-bud': 4,
  'chamomile-german': 4,
  'cedarwood-virginia': 4,
};
export const KEPT_AT_K = 293.15;
/** An oil of which nothing is known keeps as the quickest to spoil. */
const UNKNOWN_years = 1;
/** A bottle that is opened often, or stands half empty, keeps half as long. */
export const OPENED_OFTEN = 0.5;
/** The rule of twice in ten degrees is not carried beyond these factors on the life at 20 °C. */
export const MOST_GAIN = 2;
/** How far off the date may be, either way. */
export const KEEPING_DOUBT = 2;

export interface Keeping {
  readonly life_s: number;
  /** Half and twice that. */
  readonly range_s: readonly [number, number];
  readonly isKnown: boolean;
}

/** How long an oil keeps full and dark at 20 °C, s. */
export const keepsAtRoom = (botanical: string): number => (KEEPS_years[botanical] ?? UNKNOWN_years) * YEAR_s;

/** How long an oil keeps in the dark at a temperature. */
export function keeping(botanical: string, T: number, openedOften: boolean): Keeping {
  const factor = Math.min(MOST_GAIN, ageingRate(KEPT_AT_K) / ageingRate(T));
  const life_s = keepsAtRoom(botanical) * factor * (openedOften ? OPENED_OFTEN : 1);
  return {
    life_s,
    range_s: [life_s / KEEPING_DOUBT, life_s * KEEPING_DOUBT],
    isKnown: KEEPS_years[botanical] !== undefined,
  };
}

/** Growth in hydrosol: rate at 25 °C and coldest growth are estimates, the ceiling was seen. */
export const HYDROSOL = {
  mu25_1_s: 0.1 / HOUR_s,
  coldest_K: 266.15,
  ceiling_per_mL: 1e6,
  /** Count at which it goes down the drain. */
  discard_per_mL: 100,
  /** One cell in a bottle of 100 mL filled hot and clean; a kitchen's usual start. */
  starts_per_mL: { clean: 0.01, kitchen: 10 },
} as const;
export type HydrosolStart = keyof typeof HYDROSOL.starts_per_mL;

/** Time in which a count grows to another at a temperature, s. */
export const timeToGrow = (from: number, to: number, T: number): number =>
  microbeGrowthTime(microbeGrowthRate(HYDROSOL.mu25_1_s, T, HYDROSOL.coldest_K), from, to, HYDROSOL.ceiling_per_mL);

/** Time until a hydrosol is to be thrown away, s. */
export const hydrosolLife = (start: HydrosolStart, T: number): number =>
  timeToGrow(HYDROSOL.starts_per_mL[start], HYDROSOL.discard_per_mL, T);

/** Count per mL after a time. */
export function countAfter(start: HydrosolStart, T: number, time_s: number): number {
  const from = HYDROSOL.starts_per_mL[start];
  const grown = Math.exp(microbeGrowthRate(HYDROSOL.mu25_1_s, T, HYDROSOL.coldest_K) * time_s);
  const { ceiling_per_mL: ceiling } = HYDROSOL;
  return (ceiling * from * grown) / (ceiling + from * (grown - 1));
}
