/** The pool of the real page: one worker a core, within reason, started when first asked. */
import { createWorkerPool, type WorkerPool } from './pool.ts';

const MOST_WORKERS = 8;

let pool: WorkerPool | null = null;

export const workerPool = (): WorkerPool =>
  (pool ??= createWorkerPool({
    size: Math.min(MOST_WORKERS, Math.max(1, navigator.hardwareConcurrency)),
    startWorker: (lane) =>
      lane === 'urgent'
        ? new Worker(new URL('./run-worker.ts', import.meta.url), { type: 'module', name: 'runs' })
        : new Worker(new URL('./analysis-worker.ts', import.meta.url), { type: 'module', name: 'analyses' }),
    loadFallback: async () => (await import('./perform.ts')).perform,
  }));
