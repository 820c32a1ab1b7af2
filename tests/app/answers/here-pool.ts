/** A pool that does the work on the spot, one task a turn, and counts what it was asked. */
import type { WorkerPool } from '../../../src/workers/pool.ts';
import { perform, type TaskName } from '../../../src/workers/perform.ts';

export interface HerePool extends WorkerPool {
  readonly asked: TaskName[];
}

export function herePool(): HerePool {
  const asked: TaskName[] = [];
  let queue = Promise.resolve();
  return {
    asked,
    size: 1,
    ask: (name, given, options = {}) =>
      new Promise((resolve, reject) => {
        queue = queue.then(async () => {
          await new Promise((then) => setTimeout(then, 0));
          if (options.signal?.aborted === true) return reject(new DOMException('given up', 'AbortError'));
          asked.push(name);
          try {
            resolve(await perform(name, given));
          } catch (error) {
            reject(error instanceof Error ? error : new Error(String(error)));
          }
        });
      }),
    warm: () => undefined,
    dispose: () => undefined,
  };
}
