/** Looks for the condenser length that would hold, by running the same still with longer tubes. */
import type { RunResult, Scenario } from '../../sim/index.ts';
import type { LengthThatHolds } from '../panels/verdict-sentences.ts';
import type { RunClient } from '../worker/client.ts';

/** A tube so many times as long is tried before giving up: then it is cooling that lacks, not length. */
const MOST_TIMES = 8;
/** The answer is no more than this share too long. */
const FINE_ENOUGH = 0.05;
/** Lengths are told in steps of five centimetres. */
const STEP_M = 0.05;
/** Longest tube that a scenario may have. */
const LONGEST_M = 100;

const leaks = ({ events }: RunResult): boolean => events.some(({ kind }) => kind === 'vapour-escapes');

const roundedUp = (length_m: number): number => Math.ceil(length_m / STEP_M - 1e-9) * STEP_M;

/** `null` when the search was overtaken or could not be carried out. */
export async function lengthThatHolds(scenario: Scenario, client: RunClient, isWanted: () => boolean): Promise<LengthThatHolds | null> {
  const holdsAt = async (length_m: number): Promise<boolean | null> => {
    const reply = await client.runWhenIdle({ ...scenario, condenser: { ...scenario.condenser, length_m } });
    if (!isWanted() || reply.kind !== 'ran') return null;
    return !leaks(reply.result);
  };

  const start_m = scenario.condenser.length_m;
  const longest_m = Math.min(start_m * MOST_TIMES, LONGEST_M);
  let short_m = start_m;
  let long_m = start_m;
  for (;;) {
    if (long_m >= longest_m) return { length_m: null };
    long_m = Math.min(long_m * 2, longest_m);
    const holds = await holdsAt(long_m);
    if (holds === null) return null;
    if (holds) break;
    short_m = long_m;
  }
  while (long_m - short_m > Math.max(FINE_ENOUGH * long_m, STEP_M)) {
    const middle_m = roundedUp((short_m + long_m) / 2);
    const holds = await holdsAt(middle_m);
    if (holds === null) return null;
    if (holds) long_m = middle_m;
    else short_m = middle_m;
  }
  return { length_m: roundedUp(long_m) };
}
