/** The paired draws of compared runs, shared out among the workers: every run meets the same uncertain values. */
import { batch, createSignal, type Accessor } from 'solid-js';
import { pairedCount, type OwnBands, type PairedRun, type RunResult } from '../../../sim/index.ts';
import { createBackgroundJob } from '../../state/background-job.ts';
import type { WorkerPool } from '../../workers/pool.ts';

export interface DrawsSession {
  /** Whether the draws are of these runs. */
  isOf(results: readonly RunResult[]): boolean;
  readonly found: Accessor<readonly PairedRun[]>;
  readonly running: Accessor<boolean>;
  readonly problem: Accessor<string | null>;
  start(of: readonly RunResult[], draws: number, seed: number, own: readonly OwnBands[]): void;
  /** Ends the work; what has run stays. */
  stop(): void;
}

export function createDrawsSession(pool: WorkerPool): DrawsSession {
  const [of, setOf] = createSignal<readonly RunResult[]>([]);
  const [found, setFound] = createSignal<readonly PairedRun[]>([]);
  const job = createBackgroundJob();
  return {
    isOf: (results) => results.length === of().length && results.every((each, still) => each === of()[still]),
    found,
    running: job.running,
    problem: job.problem,
    stop: job.stop,
    start: (results, draws, seed, own) =>
      job.start(async (signal) => {
        batch(() => {
          setOf(results);
          setFound([]);
        });
        const scenarios = results.map(({ scenario }) => scenario);
        const design = await pool.ask('pairedDesign', [scenarios, draws, seed, own], { signal });
        // All runs of a draw are one task, so that whole draws come in and few are lost when it is stopped.
        await Promise.all(
          Array.from({ length: pairedCount(design) / results.length }, async (_, draw) => {
            const indices = results.map((_result, still) => draw * results.length + still);
            const runs = await pool.ask('pairedRuns', [design, indices], { signal });
            if (!signal.aborted) setFound((before) => [...before, ...runs]);
          }),
        );
      }),
  };
}
