/**
 * Shares jobs out among workers. One worker is kept for urgent jobs, so that a run never waits for an analysis; the
 * others take the rest, highest priority first. A job that nobody waits for any more is dropped, and a worker that
 * still toils at it is replaced. A worker that crashes is replaced and its job tried once more; where no worker will
 * live the page does the work, a job at a time.
 */
import { givenUp } from './errors.ts';
import type { TaskAnswer, TaskArguments, TaskName } from './perform.ts';
import type { Progress } from './progress.ts';
import type { WorkerReply, WorkerRequest } from './protocol.ts';

/** In the order in which jobs are taken. Only runs can be `urgent`: their worker knows nothing else. */
const PRIORITIES = ['urgent', 'high', 'normal', 'low'] as const;
export type Priority = (typeof PRIORITIES)[number];

export interface JobOptions {
  /** Gives up the job. */
  readonly signal?: AbortSignal | undefined;
  /** `normal` when not said. */
  readonly priority?: Priority;
  /** Keeps the answer, so that the same question is answered at once. */
  readonly remember?: boolean;
  /** Of the jobs of one channel only the latest counts: those before it that have not been begun are given up. */
  readonly channel?: string;
  /** Told how far the job has come, where it takes long and can say so. */
  readonly onProgress?: ((progress: Progress) => void) | undefined;
}

export type Lane = 'urgent' | 'background';

export interface WorkerPool {
  /** How many background jobs are worked at at once. */
  readonly size: number;
  /** Rejects with an AbortError when given up or superseded, else with why the job failed. */
  ask<K extends TaskName>(name: K, given: TaskArguments<K>, options?: JobOptions): Promise<TaskAnswer<K>>;
  /** Starts the background workers ahead of the first job. */
  warm(): void;
  dispose(): void;
}

type Perform = <K extends TaskName>(name: K, given: TaskArguments<K>) => Promise<TaskAnswer<K>>;

export interface WorkerPoolParts {
  readonly size: number;
  startWorker(lane: Lane): Worker;
  loadFallback(): Promise<Perform>;
}

interface Job {
  readonly request: WorkerRequest;
  readonly lane: Lane;
  readonly rank: number;
  readonly channel: string | undefined;
  readonly onProgress: ((progress: Progress) => void) | undefined;
  tries: number;
  resolve(answer: unknown): void;
  reject(reason: unknown): void;
}

interface Slot {
  readonly lane: Lane;
  readonly worker: Worker;
  job: Job | null;
}

const MOST_TRIES = 2;
/** Crashes in a row after which the page stops starting workers; fewer where none has answered yet. */
const MOST_CRASHES = 4;
const MOST_CRASHES_AT_FIRST = 2;
/** A worker at a job that was given up may finish it within this time; then it is replaced. */
const GRACE_MS = 150;
/** How long a job that has been begun may hold up a newer one of its channel. */
const PATIENCE_MS = 1500;
const ANSWERS_KEPT = 80;
/** Idle background workers are let go after this time. */
const IDLE_MS = 60_000;

export function createWorkerPool(parts: WorkerPoolParts): WorkerPool {
  const slots = new Set<Slot>();
  const queue: Job[] = [];
  const known = new Map<string, unknown>();
  let crashes = 0;
  let everAnswered = false;
  let pageBusy = false;
  let idle: ReturnType<typeof setTimeout> | undefined;

  const onPage = () => crashes >= (everAnswered ? MOST_CRASHES : MOST_CRASHES_AT_FIRST);
  const inLane = (lane: Lane) => [...slots].filter((each) => each.lane === lane);
  const placesIn = (lane: Lane) => (lane === 'urgent' ? 1 : parts.size);

  const terminate = (slot: Slot) => {
    slots.delete(slot);
    slot.worker.terminate();
  };

  const remove = (job: Job) => {
    const index = queue.indexOf(job);
    if (index >= 0) queue.splice(index, 1);
  };

  /** The first of the highest priority. */
  const next = (isWanted: (job: Job) => boolean): Job | undefined => {
    const job = queue
      .filter(isWanted)
      .reduce<Job | undefined>((best, each) => (best && best.rank <= each.rank ? best : each), undefined);
    if (job) remove(job);
    return job;
  };

  const onReply = (slot: Slot, reply: WorkerReply) => {
    const { job } = slot;
    if (reply.progress) return job?.onProgress?.(reply.progress);
    crashes = 0;
    everAnswered = true;
    slot.job = null;
    if (reply.ok) job?.resolve(reply.answer);
    else job?.reject(new Error(reply.message));
    work();
  };

  const onCrash = (slot: Slot) => {
    if (!slots.has(slot)) return;
    crashes += 1;
    const { job } = slot;
    terminate(slot);
    if (job) {
      if (job.tries < MOST_TRIES || onPage()) queue.unshift(job);
      else job.reject(new Error('The model stopped twice over this question.'));
    }
    work();
  };

  const spawn = (lane: Lane): Slot => {
    const worker = parts.startWorker(lane);
    const slot: Slot = { lane, worker, job: null };
    const crashed = (event: Event) => {
      event.preventDefault();
      onCrash(slot);
    };
    worker.addEventListener('error', crashed);
    worker.addEventListener('messageerror', crashed);
    worker.addEventListener('message', ({ data }: MessageEvent<WorkerReply>) => onReply(slot, data));
    slots.add(slot);
    return slot;
  };

  /** An idle worker, or a new one while there is room; `null` where all are busy. */
  const free = (lane: Lane): Slot | null => {
    const workers = inLane(lane);
    return workers.find(({ job }) => job === null) ?? (workers.length < placesIn(lane) ? spawn(lane) : null);
  };

  /** Between two jobs the page gets a breath. */
  const workOnPage = async () => {
    if (pageBusy) return;
    pageBusy = true;
    try {
      const perform = await parts.loadFallback();
      for (let job = next(() => true); job; job = next(() => true)) {
        await perform(job.request.name, job.request.given).then(job.resolve, job.reject);
        await new Promise((then) => setTimeout(then, 0));
      }
    } catch (reason) {
      for (const job of queue.splice(0)) job.reject(reason);
    }
    pageBusy = false;
  };

  function work(): void {
    clearTimeout(idle);
    try {
      for (const lane of ['urgent', 'background'] as const) {
        const isHere = (job: Job) => job.lane === lane;
        while (!onPage() && queue.some(isHere)) {
          const slot = free(lane);
          const job = slot && next(isHere);
          if (!job) break;
          slot.job = job;
          job.tries += 1;
          slot.worker.postMessage(job.request);
        }
      }
    } catch {
      // Some surroundings forbid workers outright; the page then does the work itself.
      crashes = MOST_CRASHES;
    }
    if (onPage()) return void workOnPage();
    if (inLane('background').every(({ job }) => job === null))
      idle = setTimeout(() => inLane('background').forEach(terminate), IDLE_MS);
  }

  /** @param grace_ms how long a worker at it may take to finish it all the same */
  const giveUp = (job: Job, grace_ms: number) => {
    remove(job);
    job.reject(givenUp());
    const slot = [...slots].find((each) => each.job === job);
    if (!slot) return;
    const replace = () => {
      if (slot.job !== job) return;
      terminate(slot);
      work();
    };
    if (grace_ms > 0) setTimeout(replace, grace_ms);
    else replace();
  };

  /** A newer job of a channel puts those before it out of date. */
  const supersede = (channel: string) => {
    for (const job of [...queue]) if (job.channel === channel) giveUp(job, 0);
    const begun = [...slots].find(({ job }) => job?.channel === channel)?.job;
    if (begun) setTimeout(() => giveUp(begun, 0), PATIENCE_MS);
  };

  const keep = (key: string, answer: unknown) => {
    known.set(key, answer);
    const oldest = known.keys().next();
    if (known.size > ANSWERS_KEPT && !oldest.done) known.delete(oldest.value);
  };

  return {
    size: parts.size,
    ask: <K extends TaskName>(name: K, given: TaskArguments<K>, options: JobOptions = {}) =>
      new Promise<TaskAnswer<K>>((resolve, reject) => {
        const { signal, priority = 'normal', remember = false, channel, onProgress } = options;
        if (signal?.aborted === true) return reject(givenUp());
        const key = remember ? JSON.stringify([name, given]) : '';
        if (remember && known.has(key)) return resolve(known.get(key) as TaskAnswer<K>);
        const onAbort = () => giveUp(job, GRACE_MS);
        let settled = false;
        const settle = (act: () => void) => {
          if (settled) return;
          settled = true;
          signal?.removeEventListener('abort', onAbort);
          act();
        };
        const job: Job = {
          request: { name, given },
          lane: priority === 'urgent' ? 'urgent' : 'background',
          rank: PRIORITIES.indexOf(priority),
          channel,
          onProgress,
          tries: 0,
          resolve: (answer) =>
            settle(() => {
              if (remember) keep(key, answer);
              resolve(answer as TaskAnswer<K>);
            }),
          reject: (reason) => settle(() => reject(reason instanceof Error ? reason : new Error(String(reason)))),
        };
        signal?.addEventListener('abort', onAbort);
        if (channel !== undefined) supersede(channel);
        queue.push(job);
        work();
      }),
    warm: () => {
      if (crashes > 0) return;
      try {
        while (inLane('background').length < parts.size) spawn('background');
      } catch {
        // The first job will find out and work without them.
      }
      work();
    },
    dispose: () => {
      clearTimeout(idle);
      for (const job of queue.splice(0)) job.reject(givenUp());
      for (const slot of [...slots]) {
        slot.job?.reject(givenUp());
        terminate(slot);
      }
      known.clear();
    },
  };
}
