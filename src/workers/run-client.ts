/**
 * Asks for runs, one at a time. A newer request takes the place of one that waits; one that takes too long is broken
 * off for it. A worker that dies is started again; where no worker will live, the page itself does the work.
 */
import { releaseProxy, wrap, type Remote } from 'comlink';
import type { Example } from '../../sim/index.ts';
import type { Fidelity, RunAnswer } from './run-scenario.ts';
import type { SimulationWorker } from './simulation-worker.ts';
import { errorMessage } from './errors.ts';

export type RunReply = RunAnswer | { readonly kind: 'superseded' };

export interface RunClient {
  run(scenario: unknown, fidelity?: Fidelity): Promise<RunReply>;
  /** Scenarios to start from; empty where they cannot be had. */
  examples(): Promise<readonly Example[]>;
  dispose(): void;
}

/** The same work, done by the page. */
export interface OnThePage {
  runScenario(scenario: unknown, fidelity: Fidelity): RunAnswer;
  readonly examples: readonly Example[];
}

export interface RunClientParts {
  startWorker(): Worker;
  loadFallback(): Promise<OnThePage>;
}

/** How long a running request may hold up a newer one. */
const PATIENCE_MS = 1500;
/** Deaths of the worker after which the page stops trying. */
const DEATHS_ENDURED = 3;

/** Something asked of the worker, wherever it is carried out in the end. */
interface Errand {
  /** Asks a living worker; resolves with how to hand the answer over. */
  inWorker(face: Remote<SimulationWorker>): Promise<() => void>;
  onPage(page: OnThePage): void;
  fail(reason: unknown): void;
}

interface Request extends Errand {
  answer(reply: RunReply): void;
}

interface Living {
  readonly worker: Worker;
  readonly face: Remote<SimulationWorker>;
}

export function createRunClient(parts: RunClientParts): RunClient {
  let living: Living | null = null;
  let deaths = 0;
  let current: Request | null = null;
  let waiting: Request | null = null;
  let patience: ReturnType<typeof setTimeout> | null = null;
  /** What has been asked and not been answered yet: it is asked again of the next worker if this one dies. */
  const open = new Set<Errand>();

  const bury = () => {
    if (!living) return;
    living.face[releaseProxy]();
    living.worker.terminate();
    living = null;
  };

  const onDeath = (event: Event) => {
    event.preventDefault();
    deaths += 1;
    bury();
    for (const errand of [...open]) carryOut(errand);
  };

  const start = (): Living => {
    const worker = parts.startWorker();
    worker.addEventListener('error', onDeath);
    worker.addEventListener('messageerror', onDeath);
    return { worker, face: wrap<SimulationWorker>(worker) };
  };

  const onThePage = (errand: Errand) => {
    open.delete(errand);
    parts.loadFallback().then(
      (page) => errand.onPage(page),
      (reason: unknown) => errand.fail(reason),
    );
  };

  function carryOut(errand: Errand): void {
    open.add(errand);
    if (deaths >= DEATHS_ENDURED) return onThePage(errand);
    try {
      living ??= start();
    } catch {
      // Some surroundings forbid workers outright; the page then does the work itself.
      deaths = DEATHS_ENDURED;
      return onThePage(errand);
    }
    const carrier = living;
    errand.inWorker(carrier.face).then(
      (handOver) => {
        if (living !== carrier) return;
        deaths = 0;
        open.delete(errand);
        handOver();
      },
      (reason: unknown) => {
        if (living !== carrier) return;
        open.delete(errand);
        errand.fail(reason);
      },
    );
  }

  const begin = (request: Request) => {
    current = request;
    carryOut(request);
  };

  const settle = (request: Request, reply: RunReply) => {
    request.answer(reply);
    if (current !== request) return;
    current = null;
    if (patience) clearTimeout(patience);
    patience = null;
    const next = waiting;
    waiting = null;
    if (next) begin(next);
  };

  const breakOff = () => {
    const hopeless = current;
    if (!hopeless) return;
    bury();
    open.delete(hopeless);
    for (const errand of [...open]) carryOut(errand);
    settle(hopeless, { kind: 'superseded' });
  };

  const requestFor = (scenario: unknown, fidelity: Fidelity, answer: (reply: RunReply) => void): Request => {
    const request: Request = {
      answer,
      inWorker: async (face) => {
        const reply = await face.run(scenario, fidelity);
        return () => settle(request, reply);
      },
      onPage: (page) => settle(request, page.runScenario(scenario, fidelity)),
      fail: (reason) => settle(request, { kind: 'failed', message: errorMessage(reason) }),
    };
    return request;
  };

  return {
    run: (scenario, fidelity = 'full') =>
      new Promise((answer) => {
        const request = requestFor(scenario, fidelity, answer);
        if (!current) return begin(request);
        waiting?.answer({ kind: 'superseded' });
        waiting = request;
        patience ??= setTimeout(breakOff, PATIENCE_MS);
      }),
    examples: () =>
      new Promise((answer) =>
        carryOut({
          inWorker: async (face) => {
            const list = await face.examples();
            return () => answer(list);
          },
          onPage: (page) => answer(page.examples),
          fail: () => answer([]),
        }),
      ),
    dispose: () => {
      if (patience) clearTimeout(patience);
      open.clear();
      waiting?.answer({ kind: 'superseded' });
      current?.answer({ kind: 'superseded' });
      waiting = null;
      current = null;
      bury();
    },
  };
}
