/** The pool of the real page: one worker a core, within reason, started when first asked. */
import { createAnswersPool, type AnswersPool } from './pool.ts';

const MOST_WORKERS = 8;

let pool: AnswersPool | null = null;

export const answersPool = (): AnswersPool =>
  (pool ??= createAnswersPool({
    size: Math.min(MOST_WORKERS, Math.max(1, navigator.hardwareConcurrency)),
    startWorker: () => new Worker(new URL('./task-worker.ts', import.meta.url), { type: 'module', name: 'answers' }),
    loadFallback: async () => (await import('./tasks.ts')).performTask,
  }));
