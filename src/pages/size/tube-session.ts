/** Every tube of the library tried as the condenser, shared out among the workers, those the reader looks at first. */
import { throttle } from '@solid-primitives/scheduled';
import { createSignal, type Accessor } from 'solid-js';
import type { Draw, Scenario, TubeSize } from '../../../sim/index.ts';
import { createBackgroundJob } from '../../state/background-job.ts';
import type { WorkerPool } from '../../workers/pool.ts';

export interface TubeSession {
  /** By id of the tube. */
  readonly sizes: Accessor<ReadonlyMap<string, TubeSize>>;
  /** What the sizes are for; `null` before the first start. */
  readonly of: Accessor<string | null>;
  readonly total: Accessor<number>;
  readonly running: Accessor<boolean>;
  readonly problem: Accessor<string | null>;
  /**
   * @param deciding draws of the doubts for which each is sized
   * @param tubes ids, the first wanted first, each with the length to look at first
   */
  start(
    of: string,
    scenario: Scenario,
    margin: number,
    deciding: readonly Draw[],
    tubes: readonly { readonly id: string; readonly start_m: number }[],
  ): void;
  stop(): void;
}

const SHOW_EVERY_MS = 200;

export function createTubeSession(pool: WorkerPool): TubeSession {
  const [sizes, setSizes] = createSignal<ReadonlyMap<string, TubeSize>>(new Map());
  const [of, setOf] = createSignal<string | null>(null);
  const [total, setTotal] = createSignal(0);
  let found = new Map<string, TubeSize>();

  const show = () => setSizes(new Map(found));
  const showSoon = throttle(show, SHOW_EVERY_MS);
  const job = createBackgroundJob(() => {
    showSoon.clear();
    show();
  });

  return {
    sizes,
    of,
    total,
    running: job.running,
    problem: job.problem,
    stop: job.stop,
    start: (what, scenario, margin, deciding, tubes) =>
      job.start(async (signal) => {
        found = new Map();
        setOf(what);
        setTotal(tubes.length);
        show();
        await Promise.all(
          tubes.map(async ({ id, start_m }) => {
            const asked = [scenario, id, margin, start_m, deciding] as const;
            found.set(id, await pool.ask('sizeTube', [...asked], { signal, priority: 'low' }));
            showSoon();
          }),
        );
      }),
  };
}
