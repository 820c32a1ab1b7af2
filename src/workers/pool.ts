/**
 * Shares tasks out among workers. The most urgent goes first; one that nobody waits for any more is dropped, and a
 * worker that still toils at it is replaced. A worker that dies is replaced and its task tried once more; where no
 * worker will live the page does the work, a task at a time.
 */
import { releaseProxy, wrap, type Remote } from 'comlink';
import { givenUp } from './errors.ts';
import type { TaskAnswer, TaskArguments, TaskName } from './tasks.ts';

export interface AskOptions {
  /** Gives up the task. */
  readonly signal?: AbortSignal;
  /** Smaller goes first; 5 when not said. */
  readonly urgency?: number;
  /** Keeps the answer, so that the same question is answered at once. */
  readonly remember?: boolean;
}

export interface WorkerPool {
  readonly size: number;
  /** Rejects with an AbortError when given up, else with why the task failed. */
  ask<K extends TaskName>(name: K, given: TaskArguments<K>, options?: AskOptions): Promise<TaskAnswer<K>>;
  /** Starts the workers ahead of the first question. */
  warm(): void;
  dispose(): void;
}

type Perform = <K extends TaskName>(name: K, given: TaskArguments<K>) => TaskAnswer<K>;

export interface WorkerPoolParts {
  readonly size: number;
  startWorker(): Worker;
  loadFallback(): Promise<Perform>;
}

/** The face of a worker as the pool sees it: names and values have been checked where the task was asked. */
interface WorkerFace {
  perform(name: TaskName, given: readonly unknown[]): unknown;
}

interface Task {
  readonly name: TaskName;
  readonly given: readonly unknown[];
  readonly urgency: number;
  tries: number;
  settled: boolean;
  resolve(answer: unknown): void;
  reject(reason: unknown): void;
}

interface Hand {
  readonly worker: Worker;
  readonly face: Remote<WorkerFace>;
  task: Task | null;
}

const USUAL_URGENCY = 5;
const MOST_TRIES = 2;
/** Deaths in a row after which the page stops starting workers. */
const DEATHS_ENDURED = 4;
/** A worker at a task that was given up may finish it within this time; then it is replaced. */
const GRACE_MS = 150;
const ANSWERS_KEPT = 80;
/** Idle workers are let go after this time. */
const IDLE_MS = 60_000;

export function createWorkerPool(parts: WorkerPoolParts): WorkerPool {
  const hands = new Set<Hand>();
  const queue: Task[] = [];
  const known = new Map<string, unknown>();
  let deaths = 0;
  let pageBusy = false;
  let idle: ReturnType<typeof setTimeout> | undefined;

  const dismiss = (hand: Hand) => {
    hands.delete(hand);
    hand.face[releaseProxy]();
    hand.worker.terminate();
  };

  const next = (): Task | undefined => {
    let best = 0;
    for (const [index, task] of queue.entries()) if (task.urgency < (queue[best]?.urgency ?? Infinity)) best = index;
    return queue.splice(best, 1)[0];
  };

  const onDeath = (hand: Hand) => {
    if (!hands.has(hand)) return;
    deaths += 1;
    const { task } = hand;
    dismiss(hand);
    if (task && !task.settled) {
      if (task.tries < MOST_TRIES || deaths >= DEATHS_ENDURED) queue.unshift(task);
      else task.reject(new Error('The model stopped twice over this question.'));
    }
    work();
  };

  const hire = (): Hand => {
    const worker = parts.startWorker();
    const hand: Hand = { worker, face: wrap<WorkerFace>(worker), task: null };
    const died = (event: Event) => {
      event.preventDefault();
      onDeath(hand);
    };
    worker.addEventListener('error', died);
    worker.addEventListener('messageerror', died);
    hands.add(hand);
    return hand;
  };

  const hand = (to: Hand, task: Task) => {
    to.task = task;
    task.tries += 1;
    void to.face.perform(task.name, task.given).then(
      (answer) => {
        deaths = 0;
        to.task = null;
        task.resolve(answer);
        work();
      },
      (reason: unknown) => {
        to.task = null;
        task.reject(reason);
        work();
      },
    );
  };

  /** Between two tasks the page gets a breath. */
  const workOnPage = async () => {
    if (pageBusy) return;
    pageBusy = true;
    try {
      const perform = await parts.loadFallback();
      for (let task = next(); task; task = next()) {
        try {
          task.resolve(perform(task.name, task.given as TaskArguments<TaskName>));
        } catch (reason) {
          task.reject(reason);
        }
        await new Promise((then) => setTimeout(then, 0));
      }
    } catch (reason) {
      for (const task of queue.splice(0)) task.reject(reason);
    }
    pageBusy = false;
  };

  function work(): void {
    clearTimeout(idle);
    while (queue.length > 0) {
      if (deaths >= DEATHS_ENDURED) return void workOnPage();
      let free = [...hands].find(({ task }) => task === null);
      if (!free) {
        if (hands.size >= parts.size) return;
        try {
          free = hire();
        } catch {
          // Some surroundings forbid workers outright; the page then does the work itself.
          deaths = DEATHS_ENDURED;
          continue;
        }
      }
      const task = next();
      if (task) hand(free, task);
    }
    if ([...hands].every(({ task }) => task === null)) idle = setTimeout(() => [...hands].forEach(dismiss), IDLE_MS);
  }

  const giveUp = (task: Task) => {
    const index = queue.indexOf(task);
    if (index >= 0) queue.splice(index, 1);
    task.reject(givenUp());
    const at = [...hands].find((each) => each.task === task);
    if (!at) return;
    setTimeout(() => {
      if (at.task !== task) return;
      dismiss(at);
      work();
    }, GRACE_MS);
  };

  const keep = (key: string, answer: unknown) => {
    known.set(key, answer);
    const oldest = known.keys().next();
    if (known.size > ANSWERS_KEPT && !oldest.done) known.delete(oldest.value);
  };

  return {
    size: parts.size,
    ask: <K extends TaskName>(name: K, given: TaskArguments<K>, options: AskOptions = {}) =>
      new Promise<TaskAnswer<K>>((resolve, reject) => {
        const { signal, urgency = USUAL_URGENCY, remember = false } = options;
        if (signal?.aborted === true) return reject(givenUp());
        const key = remember ? JSON.stringify([name, given]) : '';
        if (remember && known.has(key)) return resolve(known.get(key) as TaskAnswer<K>);
        const onAbort = () => giveUp(task);
        const settle = (act: () => void) => {
          if (task.settled) return;
          task.settled = true;
          signal?.removeEventListener('abort', onAbort);
          act();
        };
        const task: Task = {
          name,
          given,
          urgency,
          tries: 0,
          settled: false,
          resolve: (answer) =>
            settle(() => {
              if (remember) keep(key, answer);
              resolve(answer as TaskAnswer<K>);
            }),
          reject: (reason) => settle(() => reject(reason instanceof Error ? reason : new Error(String(reason)))),
        };
        signal?.addEventListener('abort', onAbort);
        queue.push(task);
        work();
      }),
    warm: () => {
      if (deaths > 0) return;
      try {
        while (hands.size < parts.size) hire();
      } catch {
        // The first question will find out and work without them.
      }
      work();
    },
    dispose: () => {
      clearTimeout(idle);
      for (const task of queue.splice(0)) task.reject(givenUp());
      for (const each of [...hands]) {
        each.task?.reject(givenUp());
        dismiss(each);
      }
      known.clear();
    },
  };
}
