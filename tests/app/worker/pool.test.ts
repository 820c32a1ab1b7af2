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
  pool.ask('hardestBoil', [what as never], options) as Promise<unknown>;
const at = (what: string): Promise<AskedOfWorker> =>
  vi.waitFor(() => {
    const found = workers.open().find(({ given }) => given[0] === what);
    if (!found) throw new Error(`nobody is at ${what}`);
    return found;
  });
const atWork = () => workers.open().map(({ given }) => given[0]);

describe('the pool of workers', () => {
  test('has its workers ready before the first task when warned, and no more of them', async () => {
    open();
    pool.warm();
    pool.warm();
    expect(workers.all).toHaveLength(2);
    const answer = ask('a');
    (await at('a')).answer('A');
    expect(await answer).toBe('A');
    expect(workers.all).toHaveLength(2);
  });

  test('works at as many tasks at once as it may, and starts no worker before it is needed', async () => {
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

  test('takes the highest priority first, and those alike in their order', async () => {
    open({ size: 1 });
    const answers = [
      ask('first'),
      ask('later', { priority: 'low' }),
      ask('usual'),
      ask('usual too'),
      ask('now', { priority: 'high' }),
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
    const controller = new AbortController();
    const first = ask('a');
    const dropped = ask('b', { signal: controller.signal });
    const last = ask('c');
    await at('a');
    controller.abort();
    await expect(dropped).rejects.toSatisfy(wasGivenUp);
    (await at('a')).answer('A');
    (await at('c')).answer('C');
    expect(await Promise.all([first, last])).toEqual(['A', 'C']);
  });

  test('replaces a worker that still toils at a task given up a moment ago', async () => {
    open({ size: 1 });
    const controller = new AbortController();
    const given = ask('long', { signal: controller.signal });
    await at('long');
    const next = ask('next');
    controller.abort();
    await expect(given).rejects.toSatisfy(wasGivenUp);
    (await at('next')).answer('N');
    expect(await next).toBe('N');
    expect(workers.all.map(({ terminated }) => terminated)).toEqual([true, false]);
  });

  test('lets a worker be that finishes what was given up soon enough', async () => {
    open({ size: 1 });
    const controller = new AbortController();
    const given = ask('short', { signal: controller.signal });
    const task = await at('short');
    controller.abort();
    task.answer('too late');
    await expect(given).rejects.toSatisfy(wasGivenUp);
    const next = ask('next');
    (await at('next')).answer('N');
    expect(await next).toBe('N');
    expect(workers.all).toHaveLength(1);
  });

  test('tries the task of a worker that crashed once more, and then says so', async () => {
    open({ size: 1 });
    const answer = ask('a');
    await at('a');
    workers.all[0]?.crash();
    await vi.waitFor(() => expect(workers.all).toHaveLength(2));
    (await at('a')).answer('A');
    expect(await answer).toBe('A');

    const deadly = ask('deadly');
    await at('deadly');
    workers.all[1]?.crash();
    await vi.waitFor(() => expect(workers.all).toHaveLength(3));
    await at('deadly');
    workers.all[2]?.crash();
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

  const onPage = (done: unknown[]): Partial<WorkerPoolParts> => ({
    loadFallback: () =>
      Promise.resolve((name, given) => {
        done.push(given[0]);
        return given[0] === 'bad'
          ? Promise.reject(new Error('no such still'))
          : Promise.resolve(`${name} on the page` as never);
      }),
  });

  test('leaves the work to the page where workers crash before any has answered', async () => {
    const done: unknown[] = [];
    open({ size: 1, ...onPage(done) });
    const answer = ask('a');
    workers.all[0]?.crash();
    workers.all[1]?.crash();
    expect(await answer).toBe('hardestBoil on the page');
    expect(await ask('b')).toBe('hardestBoil on the page');
    expect(workers.all).toHaveLength(2);
  });

  test('leaves the work to the page once worker after worker crashes', async () => {
    const done: unknown[] = [];
    open({ size: 1, ...onPage(done) });
    const first = ask('a');
    (await at('a')).answer('A');
    await first;
    const answers = Promise.allSettled([ask('b'), ask('c'), ask('d')]);
    for (let count = 0; count < 4; count++) workers.all[count]?.crash();
    expect((await answers).map(({ status }) => status)).toEqual(['rejected', 'fulfilled', 'fulfilled']);
    expect(done).toEqual(['c', 'd']);
    expect(workers.living()).toBe(0);
  });

  test('leaves the work to the page where no worker can be had', async () => {
    const done: unknown[] = [];
    open({
      startWorker: () => {
        throw new Error('workers are forbidden here');
      },
      ...onPage(done),
    });
    const [good, bad] = await Promise.allSettled([ask('good'), ask('bad')]);
    expect(good).toEqual({ status: 'fulfilled', value: 'hardestBoil on the page' });
    expect(bad).toMatchObject({ status: 'rejected', reason: new Error('no such still') });
    expect(done).toEqual(['good', 'bad']);
  });

  test('begins the latest of a channel only, and lets others be', async () => {
    open({ size: 1 });
    const begun = ask('begun', { channel: 'one' });
    const answers = Promise.allSettled([
      begun,
      ask('old', { channel: 'one' }),
      ask('other', { channel: 'two' }),
      ask('new', { channel: 'one' }),
    ]);
    for (const what of ['begun', 'other', 'new']) (await at(what)).answer(what.toUpperCase());
    expect(await answers).toMatchObject([
      { value: 'BEGUN' },
      { reason: { name: 'AbortError' } },
      { value: 'OTHER' },
      { value: 'NEW' },
    ]);
  });

  test('lets idle workers go, but never the one that is kept for runs', async () => {
    vi.useFakeTimers();
    open();
    const answers = [ask('a'), ask('now', { priority: 'urgent' })];
    for (const task of workers.open()) task.answer('done');
    await Promise.all(answers);
    expect(workers.living()).toBe(2);
    await vi.advanceTimersByTimeAsync(120_000);
    expect(workers.all.map(({ terminated }) => terminated)).toEqual([true, false]);
    vi.useRealTimers();
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
