/**
 * Where a thing begins to hold: bracketed searches along one positive quantity for a condition that fails below a
 * boundary and holds above it (or the other way round). Each trial may be dear, so it may hint where the boundary
 * lies; a hint only steers, the bracket decides. Deterministic, and ends after a bounded number of trials.
 */

export interface Trial {
  readonly passes: boolean;
  /** Where the boundary may lie, judged from this trial; only hints of passing trials are followed. A hint close to
   * the passing value itself counts as proof that less would fail. */
  readonly hint?: number;
  /** Set when no value will pass. */
  readonly hopeless?: boolean;
}

export interface Search {
  /** Limits of the quantity, both positive. */
  readonly low: number;
  readonly high: number;
  /** Where to look first. */
  readonly start: number;
  /** Ratio of the failing to the passing end at which to stop, e.g. 0.99. */
  readonly closeness: number;
  /** First growth while nothing has passed, squared each time; default 2. Near 1 for a start that is a good guess. */
  readonly stride?: number;
}

export interface Boundary {
  /** Nearest value found to pass; `null` when nothing within the limits does. */
  readonly passing: number | null;
  /** Nearest value found to fail; `null` when everything within the limits passes. */
  readonly failing: number | null;
  readonly trials: number;
}

/** Growth while the other side of the bracket is still unknown. */
const STRIDE = 2;
const MOST_TRIALS = 60;

/** Smallest value that passes, when every larger one passes too. */
export function smallestPassing(
  trial: (value: number) => Trial,
  { low, high, start, closeness, stride = STRIDE }: Search,
): Boundary {
  let passing: number | null = null;
  let failing: number | null = null;
  let hint: number | undefined;
  let trials = 0;
  let growth = stride;
  let misses = 0;
  let next = Math.min(high, Math.max(low, start));
  while (trials < MOST_TRIALS) {
    const found = trial(next);
    trials++;
    if (found.passes) {
      passing = next;
      hint = found.hint;
      misses = 0;
      if (next <= low) break;
    } else {
      failing = next;
      if (passing !== null) misses++;
      if (next >= high || found.hopeless) break;
    }
    if (passing !== null && Math.max(failing ?? 0, hint ?? 0) >= closeness * passing) break;
    if (passing === null) {
      next = Math.min(high, next * growth);
      growth = Math.min(STRIDE, growth * growth);
    } else next = nextValue({ passing, failing, hint, misses, low, closeness });
  }
  return { passing, failing, trials };
}

/** A hint no further than this from the failing end, as a ratio, was near the boundary though it failed. */
const NEAR_MISS = 1.1;

/** Where to look next once something has passed. */
function nextValue({
  passing,
  failing,
  hint,
  misses,
  low,
  closeness,
}: Pick<Search, 'low' | 'closeness'> & {
  readonly passing: number;
  readonly failing: number | null;
  readonly hint: number | undefined;
  /** Trials that failed since one passed. */
  readonly misses: number;
}): number {
  const spread = 1 / closeness - 1;
  /** Just under the passing end. */
  const probe = passing * (closeness + 0.2 * (1 - closeness));
  if (failing === null) {
    if (hint === undefined) return Math.max(low, passing / STRIDE);
    return Math.max(low, Math.min(probe, hint * (1 + 0.3 * spread)));
  }
  const middle = Math.sqrt(passing * failing);
  if (hint === undefined) return middle;
  const steered = Math.min(probe, hint * (1 + 0.3 * spread));
  if (steered > failing * (1 + 0.1 * spread)) return steered;
  // A hint that just failed: on from there in strides that double.
  return failing < NEAR_MISS * hint ? Math.min(middle, failing * (1 + spread * 2 ** (misses - 1))) : middle;
}

/** Largest value that passes, when every smaller one passes too: the same search along the reciprocal. */
export function largestPassing(trial: (value: number) => Trial, { low, high, start, closeness }: Search): Boundary {
  const mirrored = smallestPassing(
    (reciprocal) => {
      const { passes, hint } = trial(1 / reciprocal);
      return hint === undefined ? { passes } : { passes, hint: 1 / hint };
    },
    { low: 1 / high, high: 1 / low, start: 1 / start, closeness },
  );
  const back = (value: number | null) => (value === null ? null : 1 / value);
  return { passing: back(mirrored.passing), failing: back(mirrored.failing), trials: mirrored.trials };
}

/** Step with which a coarse boundary is moved when a finer trial does not confirm it, and how far beyond it must fail. */
const NUDGE = 1.01;
const MUST_FAIL = 0.97;
const MOST_NUDGES = 40;

/**
 * Moves a coarsely found smallest value until a finer trial passes there and fails at 97 % of it, which
 * must hold even where the boundary is ragged. `null` when nothing up to the limit passes. For a largest value give its reciprocal.
 */
export function confirmSmallest(
  passes: (value: number) => boolean,
  value: number,
  low: number,
  high: number,
): number | null {
  let settled = value;
  for (let nudge = 0; !passes(settled); nudge++) {
    if (settled >= high || nudge >= MOST_NUDGES) return null;
    settled = Math.min(high, settled * NUDGE);
  }
  for (let nudge = 0; nudge < MOST_NUDGES && settled > low; nudge++) {
    const closer = Math.max(low, settled * MUST_FAIL);
    if (!passes(closer)) break;
    settled = closer;
  }
  return settled;
}
