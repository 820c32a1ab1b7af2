/**
 * Asks for runs, one at a time. A newer request takes the place of one that waits; one that takes too long is broken
 * off for it. A worker that dies is started again; where no worker will live, the page itself does the work.
 */
import { releaseProxy, wrap, type Remote } from 'comlink';
import type { RunAnswer } from './run-scenario.ts';
import type { SimulationWorker } from './simulation-worker.ts';

export type RunReply = RunAnswer | { readonly kind: 'superseded' };

export interface RunClient {
  run(scenario: unknown): Promise<RunReply>;
  dispose(): void;
}

export interface RunClientParts {
  startWorker(): Worker;
  /** Loads what it takes to run without a worker. */
  loadFallback(): Promise<(scenario: unknown) => RunAnswer>;
}

/** How long a running request may hold up a newer one. */
const PATIENCE_MS = 1500;
/** Deaths of the worker after which the page stops trying. */
const DEATHS_ENDURED = 3;

interface Request {
  readonly scenario: unknown;
  readonly answer: (reply: RunReply) => void;
}

interface Living {
  readonly worker: Worker;
  readonly face: Remote<SimulationWorker>;
}

const broken = (error: unknown): RunReply => ({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });

export function createRunClient(parts: RunClientParts): RunClient {
  let living: Living | null = null;
  let deaths = 0;
  let current: Request | null = null;
  let waiting: Request | null = null;
  let patience: ReturnType<typeof setTimeout> | null = null;

  const bury = () => {
    if (!living) return;
    living.face[releaseProxy]();
    living.worker.terminate();
    living = null;
  };

  const settle = (request: Request, reply: RunReply) => {
    request.answer(reply);
    if (current !== request) return;
    current = null;
    if (patience) clearTimeout(patience);
    patience = null;
    const next = waiting;
    waiting = null;
    if (next) carryOut(next);
  };

  const onDeath = (event: Event) => {
    event.preventDefault();
    deaths += 1;
    bury();
    const request = current;
    if (request) carryOut(request);
  };

  const start = (): Living => {
    const worker = parts.startWorker();
    worker.addEventListener('error', onDeath);
    worker.addEventListener('messageerror', onDeath);
    return { worker, face: wrap<SimulationWorker>(worker) };
  };

  const onThePage = (request: Request) => {
    parts.loadFallback().then(
      (run) => settle(request, run(request.scenario)),
      (error: unknown) => settle(request, broken(error)),
    );
  };

  function carryOut(request: Request): void {
    current = request;
    if (deaths >= DEATHS_ENDURED) return onThePage(request);
    try {
      living ??= start();
    } catch {
      // Some surroundings forbid workers outright; the page then does the work itself.
      deaths = DEATHS_ENDURED;
      return onThePage(request);
    }
    const carrier = living;
    carrier.face.run(request.scenario).then(
      (reply) => {
        if (living !== carrier) return;
        deaths = 0;
        settle(request, reply);
      },
      (error: unknown) => {
        if (living === carrier) settle(request, broken(error));
      },
    );
  }

  const breakOff = () => {
    const given_up = current;
    bury();
    if (given_up) settle(given_up, { kind: 'superseded' });
  };

  return {
    run: (scenario) =>
      new Promise((answer) => {
        const request: Request = { scenario, answer };
        if (!current) return carryOut(request);
        waiting?.answer({ kind: 'superseded' });
        waiting = request;
        patience ??= setTimeout(breakOff, PATIENCE_MS);
      }),
    dispose: () => {
      if (patience) clearTimeout(patience);
      waiting?.answer({ kind: 'superseded' });
      current?.answer({ kind: 'superseded' });
      waiting = null;
      current = null;
      bury();
    },
  };
}
