/** The bench's runs: urgent, and of those asked for only the latest counts. */
import type { Example } from '../../sim/index.ts';
import { errorMessage, wasGivenUp } from './errors.ts';
import type { WorkerPool } from './pool.ts';
import type { Progress } from './progress.ts';
import type { RunAnswer } from './run-tasks.ts';

export type RunReply = RunAnswer | { readonly kind: 'superseded' } | { readonly kind: 'stopped' };
export type NoRun = Exclude<RunReply, { readonly kind: 'ran' }>;

export interface RunClient {
  /**
   * @param onProgress told while a run takes long; @param signal stops it
   * @param rough whether a rough run may stand in for one that takes long
   */
  run(
    scenario: unknown,
    onProgress?: (progress: Progress) => void,
    signal?: AbortSignal,
    rough?: boolean,
  ): Promise<RunReply>;
  /** What a fresh page opens with; null where it cannot be had. */
  openingExample(): Promise<Example | null>;
  /** Scenarios to start from; empty where they cannot be had. */
  examples(): Promise<readonly Example[]>;
}

export const createRunClient = (pool: WorkerPool): RunClient => ({
  run: (scenario, onProgress, signal, rough) =>
    pool
      .ask(rough ? 'firstRun' : 'run', [scenario], { priority: 'urgent', channel: 'bench', onProgress, signal })
      .catch((reason: unknown) =>
        wasGivenUp(reason)
          ? { kind: signal?.aborted ? 'stopped' : 'superseded' }
          : { kind: 'failed', message: errorMessage(reason) },
      ),
  openingExample: () => pool.ask('openingExample', [], { priority: 'urgent' }).catch(() => null),
  examples: () => pool.ask('examples', [], { priority: 'high' }).catch(() => []),
});
