import { afterEach, describe, expect, test, vi } from 'vitest';
import { createWorkerPool, type WorkerPool, type WorkerPoolParts } from '../../../src/workers/pool.ts';
import { createRunClient, type RunClient } from '../../../src/workers/run-client.ts';
import { StagedWorkers, type AskedOfWorker, type StagedWorker } from './staged-workers.ts';

let workers = new StagedWorkers();
let pool: WorkerPool;

const start = (parts: Partial<WorkerPoolParts> = {}): RunClient => {
  pool = createWorkerPool({
    size: 2,
    startWorker: () => workers.start(),
    loadFallback: () => Promise.reject(new Error('no page either')),
    ...parts,
  });
  return createRunClient(pool);
};
const worker = (index: number): StagedWorker => workers.all.at(index) as StagedWorker;
const task = (index: number): AskedOfWorker => worker(index).open[0] as AskedOfWorker;
const failed = (message: string) => ({ kind: 'failed', message });

afterEach(() => {
  vi.useRealTimers();
  pool.dispose();
  workers = new StagedWorkers();
});

describe('asking for runs', () => {
  test('an answer comes back to the one who asked', async () => {
    const reply = start().run('a');
    expect(task(0)).toMatchObject({ name: 'run', given: ['a'] });
    task(0).answer(failed('said a'));
    expect(await reply).toEqual(failed('said a'));
  });

  test('while one runs only the latest of those that wait is run; the others are told', async () => {
    const runs = start();
    const replies = ['a', 'b', 'c', 'd'].map((scenario) => runs.run(scenario));
    task(0).answer(failed('said a'));
    task(0).answer(failed('said d'));
    const kinds = (await Promise.all(replies)).map((reply) => (reply.kind === 'failed' ? reply.message : reply.kind));
    expect(kinds).toEqual(['said a', 'superseded', 'superseded', 'said d']);
    expect(worker(0).asked).toEqual(['a', 'd']);
  });

  test('a run that holds up a newer one for too long is broken off, and its worker with it', async () => {
    vi.useFakeTimers();
    const runs = start();
    const slow = runs.run('slow');
    await vi.advanceTimersByTimeAsync(60_000);
    expect(worker(0).terminated).toBe(false);
    const newer = runs.run('newer');
    await vi.advanceTimersByTimeAsync(1000);
    expect(worker(0).terminated).toBe(false);
    await vi.advanceTimersByTimeAsync(1000);
    expect(await slow).toEqual({ kind: 'superseded' });
    expect(worker(0).terminated).toBe(true);
    task(1).answer(failed('said newer'));
    expect(await newer).toEqual(failed('said newer'));
  });

  test('a run that ends in time is not touched by the patience it was given', async () => {
    vi.useFakeTimers();
    const runs = start();
    const replies = [runs.run('a'), runs.run('b')];
    task(0).answer(failed('said a'));
    await vi.advanceTimersByTimeAsync(10_000);
    expect(worker(0).terminated).toBe(false);
    task(0).answer(failed('said b'));
    expect(await Promise.all(replies)).toEqual([failed('said a'), failed('said b')]);
  });

  test('a run is begun at once, however much else is worked at', () => {
    const runs = start();
    for (const what of ['a', 'b', 'c', 'd']) void pool.ask('hardestBoil', [what as never]).catch(() => undefined);
    void runs.run('now');
    expect(workers.all.flatMap(({ asked }) => asked)).toEqual(['a', 'b', 'now']);
  });
});

describe('a worker that crashes', () => {
  test('is replaced, and the run is asked for again', async () => {
    const reply = start().run('a');
    worker(0).crash();
    expect(worker(0).terminated).toBe(true);
    task(1).answer(failed('said a'));
    expect(await reply).toEqual(failed('said a'));
  });

  test('over the same run twice leaves it at that, and later runs are run', async () => {
    const runs = start();
    const first = runs.run('fine');
    task(0).answer(failed('said fine'));
    await first;
    const deadly = runs.run('deadly');
    worker(0).crash();
    worker(1).crash();
    expect(await deadly).toEqual(failed('The model stopped twice over this question.'));
    const later = runs.run('later');
    task(2).answer(failed('said later'));
    expect(await later).toEqual(failed('said later'));
  });

  test('is not held against a later one that lives', async () => {
    const runs = start();
    for (const scenario of ['a', 'b', 'c', 'd', 'e', 'f']) {
      const reply = runs.run(scenario);
      worker(-1).crash();
      task(-1).answer(failed(`said ${scenario}`));
      expect(await reply).toEqual(failed(`said ${scenario}`));
    }
  });
});

describe('examples', () => {
  test('are asked of the worker', async () => {
    const list = start().examples();
    task(0).answer([{ id: 'of the worker' }]);
    expect(await list).toEqual([{ id: 'of the worker' }]);
  });

  test('are asked for again when the worker crashes before it has told them', async () => {
    const list = start().examples();
    worker(0).crash();
    task(1).answer([{ id: 'of the worker' }]);
    expect(await list).toEqual([{ id: 'of the worker' }]);
  });

  test('are none where they cannot be had', async () => {
    const list = start().examples();
    task(0).fail('no such file');
    expect(await list).toEqual([]);
  });
});

test('where nothing can do the work the reason is told', async () => {
  const runs = start({
    startWorker: () => {
      throw new Error('no workers here');
    },
    loadFallback: () => Promise.reject(new Error('no such file')),
  });
  expect(await runs.run('a')).toEqual(failed('no such file'));
});

test('putting the pool away settles what was asked', async () => {
  const runs = start();
  const replies = [runs.run('a'), runs.run('b')];
  pool.dispose();
  expect(await Promise.all(replies)).toEqual([{ kind: 'superseded' }, { kind: 'superseded' }]);
});
