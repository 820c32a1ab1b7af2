/** What is read at a running still, how sure it is, and how far a course lies from it. */
import { DEFAULT_UNCERTAINTY, type ReadingKind, type Uncertainty } from '../calibration/readings.ts';
import { courseAt, type Course } from './course.ts';

/** Beside the readings of a log: when the first drop fell, and the water left in the pot. */
export type SeenKind = ReadingKind | 'firstDrop_s' | 'potWater_kg';

export interface Seen {
  readonly kind: SeenKind;
  /** Since the heat went on. */
  readonly time_s: number;
  /** In the unit that the kind names. */
  readonly value: number;
}

/**
 * Standard uncertainty of the heat that reaches the pot, judgement: mains voltage may be 10 % off (EN 50160), a gas tap
 * is set by eye, and which share arrives is seldom measured. No plan draws it; the first drop hangs on it most of all.
 */
export const HEAT_UNCERTAINTY = 0.1;

/** Standard uncertainties, judgement: a minute for whoever looks up now and then, and a gauge glass that moves. */
export const SEEN_UNCERTAINTY: Readonly<Record<SeenKind, Uncertainty>> = {
  ...DEFAULT_UNCERTAINTY,
  firstDrop_s: { absolute: 60, relative: HEAT_UNCERTAINTY },
  potWater_kg: { absolute: 0.3, relative: 0.05 },
};

export function sigmaOf({ kind, value }: Seen): number {
  const { absolute, relative } = SEEN_UNCERTAINTY[kind];
  return Math.hypot(absolute, relative * value);
}

/** What a course says of a reading; not a number where there is nothing to read in it yet. */
export function courseReading(course: Course, { kind, time_s }: Pick<Seen, 'kind' | 'time_s'>): number {
  switch (kind) {
    case 'firstDrop_s':
      return course.firstDrop_s ?? Number.NaN;
    case 'outlet_K':
      return time_s < (course.firstDrop_s ?? Infinity) ? Number.NaN : courseAt(course, 'outlet_K', time_s);
    case 'oil_kg':
      return course.oilPerKilogram_mL > 0 ? courseAt(course, 'oil_mL', time_s) / course.oilPerKilogram_mL : 0;
    default:
      return courseAt(course, kind, time_s);
  }
}

/** A single odd reading counts as this many of its uncertainties at most. */
const FARTHEST = 8;

/** Reading less course, in uncertainties of the reading. */
export function residualOf(course: Course, seen: Seen): number {
  const left = (seen.value - courseReading(course, seen)) / sigmaOf(seen);
  return Number.isNaN(left) ? FARTHEST : Math.max(-FARTHEST, Math.min(FARTHEST, left));
}

/** Logarithm of the likelihood of readings, each normal about the course, but for a constant. */
export const logLikelihood = (course: Course, readings: readonly Seen[]): number =>
  -0.5 * readings.reduce((sum, seen) => sum + residualOf(course, seen) ** 2, 0);
