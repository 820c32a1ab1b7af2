import { afterEach, describe, expect, test, vi } from 'vitest';
import { createWorkerPool, type WorkerPool, type WorkerPoolParts } from '../../../src/workers/pool.ts';
import { StagedWorkers, type AskedOfWorker } from './staged-workers.ts';
import { wasGivenUp } from '../../../src/workers/errors.ts';

let workers = new StagedWorkers();
let pool: WorkerPool;

const open = (parts: Partial<WorkerPoolParts> = {}): WorkerPool =>
  (pool = createWorkerPool({
    size: 2,
    startWorker: () => workers.start(),
    loadFallback: () => Promise.reject(new Error('no page either')),
    ...parts,
  }));

afterEach(() => {
  pool.dispose();
  workers = new StagedWorkers();
});

/** Tasks are told apart by the first thing they are given; what they mean does not matter here. */
const ask = (what: string, options: Parameters<WorkerPool['ask']>[2] = {}) =>
  pool.ask('run', [what], options) as Promise<unknown>;
const at = (what: string): Promise<AskedOfWorker> =>
  vi.waitFor(() => {
    const found = workers.open().find(({ given }) => given[0] === what);
    if (!found) throw new Error(`nobody is at ${what}`);
    return found;
  });
const atWork = () => workers.open().map(({ given }) => given[0]);

describe('the pool of workers', () => {
  test('has its hands ready before the first task when warned, and no more of them', async () => {
    open();
    pool.warm();
    pool.warm();
    expect(workers.all).toHaveLength(2);
    const answer = ask('a');
    (await at('a')).answer('A');
    expect(await answer).toBe('A');
    expect(workers.all).toHaveLength(2);
  });

  test('works at as many tasks at once as it has hands, and starts no hand before it is needed', async () => {
    open();
    expect(workers.all).toHaveLength(0);
    const answers = ['a', 'b', 'c'].map((what) => ask(what));
    await at('b');
    expect(workers.all).toHaveLength(2);
    expect(atWork()).toEqual(['a', 'b']);
    (await at('a')).answer('A');
    (await at('c')).answer('C');
    (await at('b')).answer('B');
    expect(await Promise.all(answers)).toEqual(['A', 'B', 'C']);
    expect(workers.all).toHaveLength(2);
  });

  test('takes the most urgent first, and those alike in their order', async () => {
    open({ size: 1 });
    const answers = [
      ask('first'),
      ask('later', { urgency: 6 }),
      ask('usual'),
      ask('usual too'),
      ask('now', { urgency: 0 }),
    ];
    const order: unknown[] = [];
    for (let count = 0; count < 5; count++) {
      const task = await vi.waitFor(() => {
        const [only] = workers.open();
        if (!only) throw new Error('idle');
        return only;
      });
      order.push(task.given[0]);
      task.answer(null);
      await vi.waitFor(() => expect(workers.open()).not.toContain(task));
    }
    await Promise.all(answers);
    expect(order).toEqual(['first', 'now', 'usual', 'usual too', 'later']);
  });

  test('drops a waiting task that is given up, and tells the one who asked', async () => {
    open({ size: 1 });
    const doubt = new AbortController();
    const first = ask('a');
    const dropped = ask('b', { signal: doubt.signal });
    const last = ask('c');
    await at('a');
    doubt.abort();
    await expect(dropped).rejects.toSatisfy(wasGivenUp);
    (await at('a')).answer('A');
    (await at('c')).answer('C');
    expect(await Promise.all([first, last])).toEqual(['A', 'C']);
  });

  test('replaces a worker that still toils at a task given up a moment ago', async () => {
    open({ size: 1 });
    const doubt = new AbortController();
    const given = ask('long', { signal: doubt.signal });
    await at('long');
    const next = ask('next');
    doubt.abort();
    await expect(given).rejects.toSatisfy(wasGivenUp);
    (await at('next')).answer('N');
    expect(await next).toBe('N');
    expect(workers.all.map(({ terminated }) => terminated)).toEqual([true, false]);
  });

  test('lets a worker be that finishes what was given up soon enough', async () => {
    open({ size: 1 });
    const doubt = new AbortController();
    const given = ask('short', { signal: doubt.signal });
    const task = await at('short');
    doubt.abort();
    task.answer('too late');
    await expect(given).rejects.toSatisfy(wasGivenUp);
    const next = ask('next');
    (await at('next')).answer('N');
    expect(await next).toBe('N');
    expect(workers.all).toHaveLength(1);
  });

  test('tries the task of a worker that died once more, and then says so', async () => {
    open({ size: 1 });
    const answer = ask('a');
    await at('a');
    workers.all[0]?.die();
    await vi.waitFor(() => expect(workers.all).toHaveLength(2));
    (await at('a')).answer('A');
    expect(await answer).toBe('A');

    const deadly = ask('deadly');
    await at('deadly');
    workers.all[1]?.die();
    await vi.waitFor(() => expect(workers.all).toHaveLength(3));
    await at('deadly');
    workers.all[2]?.die();
    await expect(deadly).rejects.toThrow('stopped twice');
  });

  test('hands on why a task failed, and works on', async () => {
    open({ size: 1 });
    const failing = ask('a');
    const fine = ask('b');
    (await at('a')).fail('the coil is made of string');
    await expect(failing).rejects.toThrow('the coil is made of string');
    (await at('b')).answer('B');
    expect(await fine).toBe('B');
  });

  test('remembers an answer when told to, by what was asked and not by who asked', async () => {
    open({ size: 1 });
    const first = ask('a', { remember: true });
    (await at('a')).answer('A');
    expect(await first).toBe('A');
    expect(await ask('a', { remember: true })).toBe('A');
    const other = ask('b', { remember: true });
    (await at('b')).answer('B');
    expect(await other).toBe('B');
  });

  test('does not remember a failure', async () => {
    open({ size: 1 });
    const first = ask('a', { remember: true });
    (await at('a')).fail('not today');
    await expect(first).rejects.toThrow('not today');
    const second = ask('a', { remember: true });
    (await at('a')).answer('A');
    expect(await second).toBe('A');
  });

  test('leaves the work to the page where no worker can be had', async () => {
    const done: unknown[] = [];
    open({
      startWorker: () => {
        throw new Error('workers are forbidden here');
      },
      loadFallback: () =>
        Promise.resolve((name, given) => {
          done.push(given[0]);
          if (given[0] === 'bad') throw new Error('no such still');
          return `${name} on the page` as never;
        }),
    });
    const [good, bad] = await Promise.allSettled([ask('good'), ask('bad')]);
    expect(good).toEqual({ status: 'fulfilled', value: 'run on the page' });
    expect(bad).toMatchObject({ status: 'rejected', reason: new Error('no such still') });
    expect(done).toEqual(['good', 'bad']);
  });

  test('gives up all that is open when it is put away', async () => {
    open({ size: 1 });
    const answers = Promise.allSettled([ask('a'), ask('b')]);
    await at('a');
    pool.dispose();
    expect((await answers).map((each) => each.status === 'rejected' && wasGivenUp(each.reason))).toEqual([true, true]);
    expect(workers.living()).toBe(0);
  });
});
