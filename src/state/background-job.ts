/** A longer piece of work for the workers: one at a time, started anew or stopped when the reader says so. */
import { createSignal, type Accessor } from 'solid-js';
import { errorMessage, wasGivenUp } from '../workers/errors.ts';

export interface BackgroundJob {
  readonly running: Accessor<boolean>;
  /** Why it broke off, in words. */
  readonly problem: Accessor<string | null>;
  /** Puts `work` in the place of what runs; the signal tells when nobody waits for it any more. */
  start(work: (signal: AbortSignal) => Promise<void>): void;
  stop(): void;
}

/** @param onStop called whenever a job ends, however it does */
export function createBackgroundJob(onStop: () => void = () => undefined): BackgroundJob {
  const [running, setRunning] = createSignal(false);
  const [problem, setProblem] = createSignal<string | null>(null);
  let latest: AbortController | null = null;

  const stop = () => {
    if (!latest) return;
    latest.abort();
    latest = null;
    setRunning(false);
    onStop();
  };

  return {
    running,
    problem,
    stop,
    start: (work) => {
      stop();
      const controller = new AbortController();
      latest = controller;
      setProblem(null);
      setRunning(true);
      work(controller.signal).then(
        () => {
          if (latest === controller) stop();
        },
        (reason: unknown) => {
          if (wasGivenUp(reason) || latest !== controller) return;
          setProblem(errorMessage(reason));
          stop();
        },
      );
    },
  };
}
