/**
 * The shortest condenser that holds over the whole run, by bracketed root-finds on the real model: `tryCondenser` says
 * what holding means. Searched with a coarse step, then made a little longer than the coarse boundary, and on request
 * confirmed at the scenario's own step: the length given holds, 97 % of it does not.
 */
import type { Scenario } from '../../scenario/scenario.ts';
import { searchStep, tryMost, type CondenserTrial } from './trial.ts';
import { confirmSmallest, smallestPassing } from '../../maths/root-find.ts';

/** Shortest and longest tube looked at, m: the limits of a scenario. */
export const SHORTEST_TUBE = 0.05;
export const LONGEST_TUBE = 100;
/** Failing (or hinted) over passing length at which the coarse search stops. */
const CLOSENESS = 0.985;
/** Added to the coarse length, so that the finer step holds too. */
export const COARSE_GUARD = 1.01;

export type SizeVerdict =
  /** A length holds. */
  | 'holds'
  /** Nothing came over in this run, or for less than a minute, so that any length holds. */
  | 'no-vapour'
  /** The tube holds back too much vapour at any length. */
  | 'pressure'
  /** The cooling water itself boils or becomes too warm: no tube helps. */
  | 'coolant-boils'
  | 'coolant-warm'
  /** 100 m are too short. */
  | 'never'
  /** The run breaks off at any length. */
  | 'calculation-failed';

export interface CondenserSize {
  readonly verdict: SizeVerdict;
  /** Shortest length that holds, m; `null` when none does. */
  readonly length_m: number | null;
  /** The trial at that length, or the one that failed. */
  readonly trial: CondenserTrial;
  readonly trials: number;
}

export interface SizeOptions {
  /** Confirm at the scenario's own step; default true. */
  readonly confirm?: boolean;
  /** Length to look at first, m. */
  readonly start_m?: number;
  /** How far to go on from there while it does not hold, and how near is near enough: see `Search`. */
  readonly stride?: number;
  readonly closeness?: number;
  /** The scenario with values drawn for its doubts: more than half must hold. The scenario alone when left out. */
  readonly among?: readonly Scenario[];
}

export const withLength = (scenario: Scenario, length_m: number): Scenario => ({
  ...scenario,
  condenser: { ...scenario.condenser, length_m },
});

/** Shortest length of the scenario's own tube that holds. */
export function sizeCondenser(
  scenario: Scenario,
  { confirm = true, start_m, stride, closeness = CLOSENESS, among = [scenario] }: SizeOptions = {},
): CondenserSize {
  const step = searchStep(scenario);
  let last: CondenserTrial | null = null;
  let lastFailing: CondenserTrial | null = null;
  let trials = 0;
  const attempt = (length: number, step_s: number): CondenserTrial => {
    trials++;
    return tryMost(
      among.map((drawn) => withLength(drawn, length)),
      step_s,
    );
  };
  const found = smallestPassing(
    (length) => {
      const trial = attempt(length, step);
      if (trial.holds) last = trial;
      else lastFailing = trial;
      return { passes: trial.holds, hint: trial.cooledBy_m, hopeless: trial.failure?.kind === 'pressure' };
    },
    {
      low: SHORTEST_TUBE,
      high: LONGEST_TUBE,
      start: start_m ?? 1.5 * scenario.condenser.length_m,
      closeness,
      ...(stride === undefined ? {} : { stride }),
    },
  );
  if (found.passing === null) {
    const failing = failingOf(lastFailing);
    return { verdict: whyNot(scenario, failing), length_m: null, trial: failing, trials };
  }
  let length = found.passing <= SHORTEST_TUBE ? found.passing : Math.min(LONGEST_TUBE, COARSE_GUARD * found.passing);
  let trial = failingOf(last);
  if (trial.vapourCame && confirm) {
    length =
      confirmSmallest(
        (candidate) => {
          const fine = attempt(candidate, scenario.advanced.step_s);
          if (fine.holds) trial = fine;
          return fine.holds;
        },
        length,
        SHORTEST_TUBE,
        LONGEST_TUBE,
      ) ?? LONGEST_TUBE;
  }
  return { verdict: trial.vapourCame ? 'holds' : 'no-vapour', length_m: length, trial, trials };
}

/** The search always ends with a trial; this states it to the compiler. */
function failingOf(trial: CondenserTrial | null): CondenserTrial {
  if (trial === null) throw new Error('the search for a length ended without a trial');
  return trial;
}

/** Kelvins to the outlet limit below which cooling water counts as too warm by itself. */
const NO_COOLING = 1;
/** Kelvins to the dew temperature at which cooling water counts as boiling. */
const NEAR_BOILING = 4;

function whyNot(scenario: Scenario, { failure }: CondenserTrial): SizeVerdict {
  if (failure?.kind === 'calculation') return 'calculation-failed';
  if (failure === null || failure.kind === 'pressure') return 'pressure';
  if (failure.coolant_K > failure.dew_K - NEAR_BOILING) return 'coolant-boils';
  return failure.coolant_K > scenario.condenser.outletLimit_K - NO_COOLING ? 'coolant-warm' : 'never';
}
