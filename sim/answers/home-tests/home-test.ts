/**
 * Tests of a still at home, without plant: what is read, how sure it is, and what a test finds. Each sets one or two
 * values of the model that nobody can know from a drawing.
 */
import { studentHalfWidth } from '../calibration/statistics.ts';

export const HOME_TESTS = ['tub', 'coil', 'heat-up'] as const;
export type HomeTest = (typeof HOME_TESTS)[number];

/** Where a found value stands in the scenario. */
export type TestedPath =
  'factors.jetMixing' | 'factors.curvature' | 'factors.rivulet' | 'heat.shareToPot' | 'factors.heatLoss';

export interface TestedValue {
  readonly path: TestedPath;
  readonly start: number;
  readonly value: number;
  /** 90 % interval, cut off at the ends of what can be. */
  readonly low: number;
  readonly high: number;
  /** Which of those ends it reaches, so that the readings do not bound it there. */
  readonly open: 'low' | 'high' | 'both' | null;
}

export interface TestReading {
  /** What was read and what the model says with the found values, K. */
  readonly value_K: number;
  readonly predicted_K: number;
  /** Standard uncertainty of the reading, K. */
  readonly sigma_K: number;
}

export type TestProblem =
  /** This still has nothing that the test could find. */
  | { readonly kind: 'hose-from-top' }
  | { readonly kind: 'no-tub' }
  | { readonly kind: 'bundle' }
  | { readonly kind: 'too-few-readings'; readonly readings: number; readonly needed: number }
  /** Two temperatures so near each other that the test shows nothing, K apart. */
  | { readonly kind: 'too-close'; readonly apart_K: number; readonly needed_K: number }
  /** The outlet read outside bath and inlet, or warmer than the boil. */
  | { readonly kind: 'impossible'; readonly reading: number; readonly value_K: number }
  /** The readings are the same whatever the value is. */
  | { readonly kind: 'nothing-shown' };

export interface TestFound {
  readonly ok: true;
  readonly test: HomeTest;
  readonly values: readonly TestedValue[];
  readonly readings: readonly TestReading[];
  /** Mean square of reading less prediction, in uncertainties, for each reading to spare. */
  readonly reducedChiSquare: number;
}

export type TestResult = TestFound | { readonly ok: false; readonly test: HomeTest; readonly problem: TestProblem };

export const refused = (test: HomeTest, problem: TestProblem): TestResult => ({ ok: false, test, problem });

/** Readings beyond the number of values that a test finds. */
export const SPARE_READINGS = 2;
/** Of a household thermometer held still for a minute, K; judgement. */
export const THERMOMETER_K = 1;

export const squaresOf = (
  readings: readonly Omit<TestReading, 'predicted_K'>[],
  predicted: readonly number[],
): number =>
  readings.reduce((sum, { value_K, sigma_K }, k) => sum + ((value_K - (predicted[k] as number)) / sigma_K) ** 2, 0);

/** Points at which a value is tried over its range, and halvings that find it between them. */
const TRIED = 25;
const HALVINGS = 14;

interface Profiled {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly open: TestedValue['open'];
  readonly squares: number;
}

/**
 * The value at which the squares are least, and the interval in which they exceed the least by no more than a 90 %
 * interval allows; wider where the model misses the readings. `null` where no value in the range exceeds it.
 * @param tried values over the range, rising; @param degrees readings less one
 */
export function profile(
  squaresAt: (value: number) => number,
  tried: readonly number[],
  degrees: number,
): Profiled | null {
  const known = new Map<number, number>();
  const at = (value: number): number => {
    const found = known.get(value) ?? squaresAt(value);
    known.set(value, found);
    return found;
  };
  const best = tried.reduce((least, value, k) => (at(value) < at(tried[least] as number) ? k : least), 0);
  let from = tried[Math.max(0, best - 1)] as number;
  let to = tried[Math.min(tried.length - 1, best + 1)] as number;
  // Golden section between the neighbours of the best point.
  const golden = (Math.sqrt(5) - 1) / 2;
  for (let step = 0; step < HALVINGS; step++) {
    const left = to - golden * (to - from);
    const right = from + golden * (to - from);
    if (at(left) <= at(right)) to = right;
    else from = left;
  }
  const middle = 0.5 * (from + to);
  const value = at(middle) <= at(tried[best] as number) ? middle : (tried[best] as number);
  const squares = at(value);
  const allowed = squares + studentHalfWidth(0.9, degrees) ** 2 * Math.max(1, squares / degrees);
  const edge = (end: number, inner: number): number => {
    let [outside, inside] = [end, inner];
    for (let step = 0; step < HALVINGS; step++) {
      const half = 0.5 * (outside + inside);
      if (at(half) > allowed) outside = half;
      else inside = half;
    }
    return inside;
  };
  const below = tried.findLast((each) => each < value && at(each) > allowed);
  const above = tried.find((each) => each > value && at(each) > allowed);
  if (below === undefined && above === undefined) return null;
  return {
    value,
    low: below === undefined ? (tried[0] as number) : edge(below, value),
    high: above === undefined ? (tried.at(-1) as number) : edge(above, value),
    open: below === undefined ? 'low' : above === undefined ? 'high' : null,
    squares,
  };
}

/** Values evenly spaced by ratio. */
export const ratios = (least: number, most: number): readonly number[] =>
  Array.from({ length: TRIED }, (_, k) => least * (most / least) ** (k / (TRIED - 1)));
/** Values evenly spaced. */
export const evenly = (least: number, most: number): readonly number[] =>
  Array.from({ length: TRIED }, (_, k) => least + ((most - least) * k) / (TRIED - 1));
