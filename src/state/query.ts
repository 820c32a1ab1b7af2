/** A question that follows the still: asked anew a moment after it changes, its last answer kept until the next. */
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, createSignal, on, onCleanup, type Accessor } from 'solid-js';
import type { WorkerPool, JobOptions } from '../workers/pool.ts';
import type { TaskAnswer, TaskArguments, TaskName } from '../workers/perform.ts';
import { errorMessage, wasGivenUp } from '../workers/errors.ts';

export interface Query<T> {
  /** The last answer, perhaps to an earlier question; `null` before the first. */
  readonly answer: Accessor<T | null>;
  /** Whether a newer answer is being worked out. */
  readonly asking: Accessor<boolean>;
  /** Why there is no answer, in words. */
  readonly problem: Accessor<string | null>;
}

/** A question is put when nothing has changed for so long: a dragged slider changes at every frame. */
const QUIET_MS = 200;

/** @param given what is asked, or `null` while there is nothing to ask */
export function createQuery<K extends TaskName>(
  pool: WorkerPool,
  name: K,
  given: Accessor<TaskArguments<K> | null>,
  options: Pick<JobOptions, 'priority'> & { readonly quiet_ms?: number } = {},
): Query<TaskAnswer<K>> {
  const [answer, setAnswer] = createSignal<TaskAnswer<K> | null>(null);
  const [asking, setAsking] = createSignal(false);
  const [problem, setProblem] = createSignal<string | null>(null);
  let isFirst = true;

  createEffect(
    on(given, (asked) => {
      if (asked === null) {
        setAsking(false);
        return;
      }
      const controller = new AbortController();
      const put = () => {
        pool
          .ask(name, asked, {
            signal: controller.signal,
            remember: true,
            ...(options.priority === undefined ? {} : { priority: options.priority }),
          })
          .then(
            (found) => {
              if (controller.signal.aborted) return;
              setProblem(null);
              setAnswer(() => found);
              setAsking(false);
            },
            (reason: unknown) => {
              if (wasGivenUp(reason) || controller.signal.aborted) return;
              setProblem(errorMessage(reason));
              setAsking(false);
            },
          );
      };
      setAsking(true);
      if (isFirst) put();
      else debounce(put, options.quiet_ms ?? QUIET_MS)();
      isFirst = false;
      onCleanup(() => controller.abort());
    }),
  );
  return { answer, asking, problem };
}
