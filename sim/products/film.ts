/**
 * A film of a mixed liquid drying into the air, solved exactly. Each constituent leaves at α_i n_i/N, with N the amount
 * in which shares are taken: moles where Raoult's law holds, volume where a fixed oil carries the rest. In the clock
 * ds = dt/N every one decays by itself, n_i = n_i0 exp(−α_i s), and the time is
 * t(s) = Σ w_i n_i0 (1 − exp(−α_i s))/α_i + N_stays s. A moment takes one root and no steps.
 */

export interface Film {
  readonly ids: readonly string[];
  /** kg/mol. */
  readonly molarMasses: Float64Array;
  /** mol/m² at the start. */
  readonly loads: Float64Array;
  /** What a mole counts in the measure in which shares are taken: 1, or its volume in m³/mol. */
  readonly sizes: Float64Array;
  /** Rate in the film's own clock, measure/(m² s). */
  readonly rates: Float64Array;
  /** What never leaves, measure/m². */
  readonly stays: number;
}

/** Amount in which shares are taken that is left at a reading of the film's clock, measure/m². */
export function amountLeft({ loads, sizes, rates, stays }: Film, s: number): number {
  let left = stays;
  for (let i = 0; i < loads.length; i++)
    left += (sizes[i] as number) * (loads[i] as number) * Math.exp(-(rates[i] as number) * s);
  return left;
}

/** Time, s, at a reading of the film's clock. */
export function timeAt({ loads, sizes, rates, stays }: Film, s: number): number {
  let time = stays * s;
  for (let i = 0; i < loads.length; i++) {
    const rate = rates[i] as number;
    time -= ((sizes[i] as number) * (loads[i] as number) * Math.expm1(-rate * s)) / rate;
  }
  return time;
}

/** Time in which the film dries, s; infinite where something stays. */
export const dryingTime = (film: Film): number => (film.stays > 0 ? Infinity : timeAt(film, Number.MAX_VALUE));

const MOST_PASSES = 200;
/** Newton’s method squares what is left of the error, so a step this small leaves none. */
const CLOSE_ENOUGH = 1e-8;

/**
 * Reading of the film's clock at a time; infinite once it is dry. Newton's method: the time rises ever more slowly with
 * the clock, so a guess that is too early never overshoots.
 * @param guess a reading at an earlier time
 * @param dry_s when the film is dry, where that is known already
 */
export function clockAt(film: Film, time_s: number, guess = 0, dry_s = dryingTime(film)): number {
  if (!(time_s < dry_s)) return Infinity;
  const { loads, sizes, rates, stays } = film;
  let s = guess;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    // Time and amount share their exponentials, which are what a moment costs.
    let time = stays * s;
    let amount = stays;
    for (let i = 0; i < loads.length; i++) {
      const rate = rates[i] as number;
      const load = (sizes[i] as number) * (loads[i] as number);
      const gone = Math.expm1(-rate * s);
      time -= (load * gone) / rate;
      amount += load * (gone + 1);
    }
    const step = (time_s - time) / amount;
    s += step;
    if (Math.abs(step) <= CLOSE_ENOUGH * s) break;
  }
  return s;
}

/** Mass left of what can leave, kg/m², at a reading of the clock. */
export function massLeft({ loads, molarMasses, rates }: Film, s: number): number {
  let mass = 0;
  for (let i = 0; i < loads.length; i++)
    mass += (molarMasses[i] as number) * (loads[i] as number) * Math.exp(-(rates[i] as number) * s);
  return mass;
}

/**
 * Time at which a share of the mass that can leave has left, s. Newton's method on the logarithm of the mass, which falls
 * ever less steeply, so that a guess that is too early never overshoots.
 */
export function timeToLose(film: Film, share: number): number {
  if (share <= 0) return 0;
  const { loads, molarMasses, rates } = film;
  const wanted = (1 - share) * massLeft(film, 0);
  let s = 0;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    let mass = 0;
    let leaving = 0;
    for (let i = 0; i < loads.length; i++) {
      const rate = rates[i] as number;
      const own = (molarMasses[i] as number) * (loads[i] as number) * Math.exp(-rate * s);
      mass += own;
      leaving += rate * own;
    }
    const step = (Math.log(mass / wanted) * mass) / leaving;
    s += step;
    if (Math.abs(step) <= CLOSE_ENOUGH * s) break;
  }
  return timeAt(film, s);
}
