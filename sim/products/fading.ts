/** A blend by its volumes, spread and followed until it is all but gone: the same for page and command line. */
import {
  blendFilm,
  CARRIER,
  fade,
  fadeOfRealMixture,
  fadeSummary,
  logTimes,
  timeLeftAt,
  type BlendFilm,
  type Fade,
  type FadeSummary,
  type Surface,
} from './blend.ts';
import { timeToLose } from './film.ts';
import { oilDensity, type OilShare } from './oil.ts';

export interface OilPart {
  readonly composition: readonly OilShare[];
  /** Parts by volume. */
  readonly parts: number;
}

const ROOM_K = 293.15;

/** @param strength share of the product by volume that is oils; the rest is fixed oil. `null` where there is no oil. */
export function filmOfOils(oils: readonly OilPart[], strength: number, surface: Surface): BlendFilm | null {
  const whole = oils.reduce((sum, { parts }) => sum + parts, 0);
  if (!(whole > 0)) return null;
  const weighed = oils.map(({ composition, parts }) => ({
    composition,
    share: ((strength * parts) / whole) * oilDensity(composition, ROOM_K),
  }));
  return blendFilm(weighed, (1 - strength) * CARRIER.density_kg_m3, surface);
}

const EARLIEST_s = 10;
const POINTS = 64;
const HOUR_s = 3600;
/** Ends that a time axis may have, s: it jumps rarely while a share is dragged. */
const ENDS_s = [1, 3, 10, 30, 100, 300, 1000, 3000, 10000].map((hours) => hours * HOUR_s);
const LAST_s = 10_000 * HOUR_s;
/** The axis ends where so much has left. */
const NEARLY_ALL = 0.995;

/** The same times for the same end, so that what hangs on them alone is computed once. */
const timesByEnd = new Map<number, Float64Array>();

/** Moments at which a film is looked at, until it is all but gone or another end. */
export function fadeTimes(film: BlendFilm, end_s?: number): Float64Array {
  const wanted = end_s ?? timeToLose(film, NEARLY_ALL);
  const end = end_s ?? ENDS_s.find((each) => each >= wanted) ?? LAST_s;
  const known = timesByEnd.get(end);
  if (known) return known;
  const times = logTimes(EARLIEST_s, end, POINTS);
  timesByEnd.set(end, times);
  return times;
}

export interface Fading {
  readonly film: BlendFilm;
  readonly fade: Fade;
  readonly summary: FadeSummary;
  /** Time by which a share has left, s. */
  timeToLose(share: number): number;
}

/** Activity coefficients are known of neat blends only. */
export const isReal = (film: BlendFilm, wanted: boolean): boolean => wanted && film.isNeat;

/** A film fading, as an ideal mixture or, where that is wanted and possible, as a real one. */
export function fading(film: BlendFilm, wantsReal: boolean, end_s?: number): Fading {
  const times = fadeTimes(film, end_s);
  const real = isReal(film, wantsReal);
  const faded = real ? fadeOfRealMixture(film, times) : fade(film, times);
  const summary = fadeSummary(film);
  return {
    film,
    fade: faded,
    summary: real ? { ...summary, half_s: timeLeftAt(faded, 0.5), nineTenths_s: timeLeftAt(faded, 0.9) } : summary,
    timeToLose: (share) => (real ? timeLeftAt(faded, share) : timeToLose(film, share)),
  };
}
