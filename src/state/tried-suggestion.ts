/** Tries on the model what might be worth doing next, and keeps the first that is worth offering. */
import {
  judgeTrial,
  suggestionsFor,
  type Controls,
  type EnoughLength,
  type RunResult,
  type Scenario,
  type Suggestion,
  type Tried,
  type Verdict,
} from '../../sim/index.ts';
import { workerPool } from '../workers/start-pool.ts';
import { withValueAtPath } from './field-path.ts';

/** What setting a suggestion writes into the scenario, by path. */
export type Writes = Readonly<Record<string, unknown>>;

export interface Offer {
  readonly tried: Tried;
  /** As it was tried, so that what is done is what was seen. */
  readonly writes: Writes;
}

export interface Wanted {
  readonly result: RunResult;
  readonly verdict: Verdict;
  readonly scenario: Scenario;
  readonly now: Controls;
  readonly enough: EnoughLength | null;
  readonly turn: number;
  readonly writesOf: (wish: Suggestion) => Writes;
  /** Whether somebody still waits for it. */
  readonly isWanted: () => boolean;
}

/** Only the latest trial counts; a run that the reader asks for waits for one at most. */
const CHANNEL = 'trial';

export async function findOffer(wanted: Wanted): Promise<Offer | null> {
  const { result, verdict, scenario, now, enough, turn, writesOf, isWanted } = wanted;
  for (const wish of suggestionsFor(result, verdict, now, enough, turn)) {
    const writes = writesOf(wish);
    const changed = Object.entries(writes).reduce(
      (whole, [path, value]) => withValueAtPath(whole, path, value),
      scenario,
    );
    const answer = await workerPool()
      .ask('run', [changed], { priority: 'urgent', channel: CHANNEL })
      .catch(() => null);
    if (!isWanted()) return null;
    if (answer?.kind !== 'ran') continue;
    const tried = judgeTrial(wish, result, answer.result);
    if (tried) return { tried, writes };
  }
  return null;
}
