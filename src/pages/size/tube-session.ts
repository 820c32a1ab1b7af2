/** Every tube of the library tried as the condenser, shared out among the workers, those the reader looks at first. */
import { createSignal, type Accessor } from 'solid-js';
import type { Scenario, TubeSize } from '../../../sim/index.ts';
import type { WorkerPool } from '../../workers/pool.ts';
import { errorMessage, wasGivenUp } from '../../workers/errors.ts';

export interface TubeSession {
  /** By id of the tube. */
  readonly sizes: Accessor<ReadonlyMap<string, TubeSize>>;
  /** What the sizes are for; `null` before the first start. */
  readonly of: Accessor<string | null>;
  readonly total: Accessor<number>;
  readonly running: Accessor<boolean>;
  readonly problem: Accessor<string | null>;
  /** @param tubes ids, the first wanted first, each with the length to look at first */
  start(
    of: string,
    scenario: Scenario,
    margin: number,
    tubes: readonly { readonly id: string; readonly start_m: number }[],
  ): void;
  stop(): void;
}

const SHOW_EVERY_MS = 200;

export function createTubeSession(pool: WorkerPool): TubeSession {
  const [sizes, setSizes] = createSignal<ReadonlyMap<string, TubeSize>>(new Map());
  const [of, setOf] = createSignal<string | null>(null);
  const [total, setTotal] = createSignal(0);
  const [running, setRunning] = createSignal(false);
  const [problem, setProblem] = createSignal<string | null>(null);
  let latest: AbortController | null = null;
  let found = new Map<string, TubeSize>();
  let timer: ReturnType<typeof setTimeout> | null = null;

  const show = () => {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    setSizes(new Map(found));
  };
  const stop = () => {
    if (!latest) return;
    latest.abort();
    latest = null;
    setRunning(false);
    show();
  };

  return {
    sizes,
    of,
    total,
    running,
    problem,
    stop,
    start: (what, scenario, margin, tubes) => {
      stop();
      const controller = new AbortController();
      latest = controller;
      found = new Map();
      setOf(what);
      setTotal(tubes.length);
      setProblem(null);
      setRunning(true);
      show();
      const tasks = tubes.map(({ id, start_m }) =>
        pool
          .ask('sizeTube', [scenario, id, margin, start_m], { signal: controller.signal, urgency: 6 })
          .then((size) => {
            if (latest !== controller) return;
            found.set(id, size);
            timer ??= setTimeout(show, SHOW_EVERY_MS);
          }),
      );
      Promise.all(tasks).then(
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
