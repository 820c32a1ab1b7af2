/** Every tube of the library tried as the condenser, shared out among the workers, those the reader looks at first. */
import { throttle } from '@solid-primitives/scheduled';
import { createSignal, type Accessor } from 'solid-js';
import { ownAsRow, type OwnTubeSize, type Scenario, type TubeSeen, type TubeSize } from '../../../sim/index.ts';
import { createBackgroundJob } from '../../state/background-job.ts';
import type { WorkerPool } from '../../workers/pool.ts';

/** A tube with the length to look at first where no tube like it has been sized. */
export interface TubeToTry {
  readonly id: string;
  readonly start_m: number;
}

export interface TubeSession {
  /** By id of the tube. */
  readonly sizes: Accessor<ReadonlyMap<string, TubeSize>>;
  /** What the sizes are for; `null` before the first start. */
  readonly of: Accessor<string | null>;
  readonly total: Accessor<number>;
  readonly running: Accessor<boolean>;
  readonly problem: Accessor<string | null>;
  /**
   * @param own the still's own tube, whose row is known already, and with it the draws for which each is sized
   * @param tubes ids, the first wanted first, each with the length to look at first
   */
  start(of: string, scenario: Scenario, margin: number, own: OwnTubeSize, tubes: readonly TubeToTry[]): void;
  stop(): void;
}

const SHOW_EVERY_MS = 200;
/** Tubes asked for at once for each worker: one to work at and one that waits. */
const AT_ONCE = 2;
/** So many are shown before anything else is worked out. */
const FIRST = 8;

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
    start: (what, scenario, margin, own, tubes) =>
      job.start(async (signal) => {
        found = new Map();
        const seen: TubeSeen[] = [];
        if (own.id !== null) found.set(own.id, ownAsRow(own));
        const waiting = tubes.filter(({ id }) => id !== own.id);
        setOf(what);
        setTotal(tubes.length);
        show();
        // As many at once as keep every worker busy, so that each can begin from what the ones before have found.
        const oneAfterAnother = async (): Promise<void> => {
          for (let next = waiting.shift(); next; next = waiting.shift()) {
            const { id, start_m } = next;
            const options = { margin, start_m, deciding: own.deciding };
            const priority = tubes.indexOf(next) < FIRST ? 'high' : 'normal';
            const answer = await pool.ask('sizeTube', [scenario, id, options, seen], { signal, priority });
            found.set(id, answer.size);
            if (answer.seen) seen.push(answer.seen);
            showSoon();
          }
        };
        await Promise.all(Array.from({ length: AT_ONCE * pool.size }, oneAfterAnother));
      }),
  };
}
