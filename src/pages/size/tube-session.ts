/** Every tube of the library tried as the condenser, shared out among the workers, those the reader looks at first. */
import { throttle } from '@solid-primitives/scheduled';
import { createSignal, type Accessor } from 'solid-js';
import type { Draw, Scenario, TubeSeen, TubeSize } from '../../../sim/index.ts';
import { createBackgroundJob } from '../../state/background-job.ts';
import type { WorkerPool } from '../../workers/pool.ts';

/** A tube with the length to look at first where no tube like it has been sized. */
export interface TubeToTry {
  readonly id: string;
  readonly outsideDiameter_m: number;
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
   * @param deciding draws of the doubts for which each is sized
   * @param tubes ids, the first wanted first, each with the length to look at first
   */
  start(of: string, scenario: Scenario, margin: number, deciding: readonly Draw[], tubes: readonly TubeToTry[]): void;
  stop(): void;
}

const SHOW_EVERY_MS = 200;
/** Tubes asked for at once for each worker: one to work at and one that waits. */
const AT_ONCE = 2;
/** So many are shown before the picture is refined. */
const FIRST = 8;

/** The tube seen so far that is most like one of an outside diameter. */
function nearest(seen: readonly TubeSeen[], outsideDiameter_m: number): TubeSeen | null {
  const apart = (tube: TubeSeen) => Math.abs(Math.log(tube.outsideDiameter_m / outsideDiameter_m));
  return seen.reduce<TubeSeen | null>((best, tube) => (best && apart(best) <= apart(tube) ? best : tube), null);
}

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
        const seen: TubeSeen[] = [];
        const waiting = [...tubes];
        setOf(what);
        setTotal(tubes.length);
        show();
        // As many at once as keep every worker busy, so that each can begin from what the ones before have found.
        const oneAfterAnother = async (): Promise<void> => {
          for (let next = waiting.shift(); next; next = waiting.shift()) {
            const { id, start_m, outsideDiameter_m } = next;
            const options = { margin, start_m, deciding };
            const from = nearest(seen, outsideDiameter_m);
            const priority = tubes.indexOf(next) < FIRST ? 'high' : 'low';
            const answer = await pool.ask('sizeTube', [scenario, id, options, from], { signal, priority });
            found.set(id, answer.size);
            if (answer.seen) seen.push(answer.seen);
            showSoon();
          }
        };
        await Promise.all(Array.from({ length: AT_ONCE * pool.size }, oneAfterAnother));
      }),
  };
}
