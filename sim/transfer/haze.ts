/**
 * What standing does to cloudy hydrosol (haze): the drops that the separator let pass go on rising, or sinking, in the
 * vessel that the water stands in, and the larger ones reach its top or bottom first.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import { normalShareBelow } from '../maths/error-function.ts';
import { cutDiameter } from './settling.ts';

export interface DropSizes {
  /** Median size by volume of the drops that came to the separator, m. */
  readonly median_m: number;
  /** Geometric standard deviation, more than 1. */
  readonly spread: number;
  /** Cut size of the separator, m: it kept all larger drops, and of smaller ones the share (d/d_c)². */
  readonly cut_m: number;
}

export interface Standing {
  readonly height_m: number;
  readonly time_s: number;
  /** Water less oil, kg/m³; its sign does not matter. */
  readonly densityDifference_kg_m3: number;
  /** Viscosity of the water, Pa s. */
  readonly viscosity_Pa_s: number;
}

/** ∫_0^x d^k over the drops' volume distribution: d_50^k e^(k²σ²/2) Φ(ln(x/d_50)/σ − kσ). */
const partialMoment = (k: number, x: number, { median_m, spread }: DropSizes): number => {
  const sigma = Math.log(spread);
  return (
    median_m ** k * Math.exp(0.5 * (k * sigma) ** 2) * normalShareBelow(Math.log(x / median_m) / sigma - k * sigma)
  );
};

/** Share of the arriving oil that passed the separator as haze: ∫ (1 − d²/d_c²) below the cut. */
const passed = (drops: DropSizes): number =>
  partialMoment(0, drops.cut_m, drops) - partialMoment(2, drops.cut_m, drops) / drops.cut_m ** 2;

/**
 * Share of the haze that is still in the water after standing, 0–1: still water of height H loses of drops that rise at
 * v the share min(1, v t/H), which is a separator of overflow rate H/t. Log-normal drops, Stokes velocities, no
 * coalescence, so that a real hydrosol clears no slower but for wax round its drops; 1 for no time, 0 without haze.
 */
export function hazeLeft(drops: DropSizes, standing: Standing): number {
  const all = passed(drops);
  if (!(all > 0)) return 0;
  if (!(standing.time_s > 0)) return 1;
  const cleared = cutDiameter(
    standing.height_m / standing.time_s,
    standing.densityDifference_kg_m3,
    standing.viscosity_Pa_s,
    STANDARD_GRAVITY,
  );
  const largest = Math.min(drops.cut_m, cleared);
  const a = 1 / drops.cut_m ** 2;
  const b = 1 / cleared ** 2;
  const left =
    partialMoment(0, largest, drops) -
    (a + b) * partialMoment(2, largest, drops) +
    a * b * partialMoment(4, largest, drops);
  return Math.min(1, Math.max(0, left / all));
}

/** Longest standing that is looked at, s: a month. */
const LONGEST = 30 * 86_400;

/** Time after which a share of the haze is left, s; `null` where a month does not do. Bisection to a part in 10⁹. */
export function timeToClear(drops: DropSizes, standing: Omit<Standing, 'time_s'>, left: number): number | null {
  const at = (time_s: number) => hazeLeft(drops, { ...standing, time_s });
  if (at(LONGEST) > left) return null;
  let low = 0;
  let high = LONGEST;
  for (let pass = 0; pass < 60 && high - low > 1e-9 * high; pass++) {
    const middle = 0.5 * (low + high);
    if (at(middle) > left) low = middle;
    else high = middle;
  }
  return high;
}
