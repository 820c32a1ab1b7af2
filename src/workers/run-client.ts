/** The bench's runs: urgent, and of those asked for only the latest counts. */
import { englishReader, problemMessage, type Example, type Problem, type UnitSystem } from '../../sim/index.ts';
import { errorMessage, wasGivenUp } from './errors.ts';
import type { WorkerPool } from './pool.ts';
import type { RunAnswer } from './run-tasks.ts';

export type RunReply = RunAnswer | { readonly kind: 'superseded' };
export type NoRun = Exclude<RunReply, { readonly kind: 'ran' }>;

const MOST_PROBLEMS_TOLD = 3;

export const problemsInWords = (problems: readonly Problem[], units: UnitSystem): string =>
  problems
    .slice(0, MOST_PROBLEMS_TOLD)
    .map((problem) => problemMessage(problem, englishReader(units)))
    .join(' ');

/** Why there is no run, in words. */
export function whyNoRun(reply: NoRun, units: UnitSystem): string {
  switch (reply.kind) {
    case 'invalid':
      return problemsInWords(reply.problems, units);
    case 'failed':
      return `The model could not run it: ${reply.message}`;
    case 'superseded':
      return 'Another change came first, so it was not opened. Try again.';
  }
}

export interface RunClient {
  run(scenario: unknown): Promise<RunReply>;
  /** What a fresh page opens with; null where it cannot be had. */
  openingExample(): Promise<Example | null>;
  /** Scenarios to start from; empty where they cannot be had. */
  examples(): Promise<readonly Example[]>;
}

export const createRunClient = (pool: WorkerPool): RunClient => ({
  run: (scenario) =>
    pool
      .ask('run', [scenario], { priority: 'urgent', channel: 'bench' })
      .catch((reason: unknown) =>
        wasGivenUp(reason) ? { kind: 'superseded' } : { kind: 'failed', message: errorMessage(reason) },
      ),
  openingExample: () => pool.ask('openingExample', [], { priority: 'urgent' }).catch(() => null),
  examples: () => pool.ask('examples', [], { priority: 'high' }).catch(() => []),
});
