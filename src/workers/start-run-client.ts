/** The run client of the real page. */
import { createRunClient, type RunClient } from './run-client.ts';

export const startRunClient = (): RunClient =>
  createRunClient({
    startWorker: () =>
      new Worker(new URL('./simulation-worker.ts', import.meta.url), { type: 'module', name: 'simulation' }),
    loadFallback: () => import('./on-the-page.ts'),
  });
