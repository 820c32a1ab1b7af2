import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Shape } from '../../../src/state/kept-shape.ts';
import { createKeptStore, type KeptStoreParts } from '../../../src/state/kept-store.ts';
import { writesOver } from '../../../src/state/kept-writes.ts';
import { memoryDatabase, memoryDrafts } from './memory-database.ts';

/** Version 2 is a number; version 1 wrote it as text. */
const numberShape: Shape<number> = {
  version: 2,
  read: (value, version) => {
    if (version === 1) return typeof value === 'string' ? Number(value) : null;
    return typeof value === 'number' ? value : null;
  },
};

let now = 1000;
let windows = 0;
const open = (parts: Partial<KeptStoreParts> = {}) =>
  createKeptStore({
    database: memoryDatabase(),
    drafts: null,
    window: `w${(windows += 1)}`,
    writes: () => Promise.resolve(writesOver(null)),
    oldEntries: () => Promise.resolve([]),
    now: () => (now += 1),
    ...parts,
  });

beforeEach(() => {
  now = 1000;
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe('what is kept', () => {
  test('is read again by the next visit, and taken away when it is said so', async () => {
    const database = memoryDatabase();
    open({ database }).keep('a', numberShape, 5);
    await vi.runAllTimersAsync();
    const next = open({ database });
    expect(await next.read('a', numberShape)).toEqual({ kind: 'read', value: 5 });
    next.keep('a', numberShape, undefined);
    expect(await next.read('a', numberShape)).toEqual({ kind: 'nothing' });
    await vi.runAllTimersAsync();
    expect(await open({ database }).read('a', numberShape)).toEqual({ kind: 'nothing' });
  });

  test('is read back at once, before it is written', async () => {
    const store = open();
    store.keep('list/b', numberShape, 2);
    store.keep('list/a', numberShape, 1);
    store.keep('other', numberShape, 3);
    expect(await store.read('list/a', numberShape)).toEqual({ kind: 'read', value: 1 });
    expect([...(await store.readAll('list/', numberShape)).keys()].sort()).toEqual(['list/a', 'list/b']);
  });

  test('is written together a moment after the first of many changes', async () => {
    const database = memoryDatabase();
    const store = open({ database });
    await store.read('a', numberShape);
    database.writings.length = 0;
    for (let value = 0; value < 100; value++) {
      store.keep('a', numberShape, value);
      store.keep('b', numberShape, value);
    }
    await vi.advanceTimersByTimeAsync(100);
    expect(database.writings).toEqual([]);
    await vi.advanceTimersByTimeAsync(1000);
    expect(database.writings).toEqual([['a', 'b']]);
    expect(database.entries.get('a')).toMatchObject({ version: 2, value: 99 });
  });

  test('of an older version is moved on', async () => {
    const database = memoryDatabase(new Map([['a', { version: 1, changed_ms: 1, value: '7' }]]));
    expect(await open({ database }).read('a', numberShape)).toEqual({ kind: 'read', value: 7 });
  });

  test.each([
    ['of a newer version', { version: 3, changed_ms: 1, value: [8] }],
    ['damaged', { version: 2, changed_ms: 1, value: 'eight' }],
  ])('%s stays untouched, and is put aside before anything takes its place', async (_, entry) => {
    const database = memoryDatabase(new Map([['a', entry]]));
    const store = open({ database });
    expect(await store.read('a', numberShape)).toEqual({ kind: 'unread', value: entry.value });
    store.keep('b', numberShape, 1);
    await vi.runAllTimersAsync();
    expect(database.entries.get('a')).toEqual(entry);
    for (const value of [1, 2]) {
      store.keep('a', numberShape, value);
      await vi.runAllTimersAsync();
    }
    expect(database.entries.get('a')).toMatchObject({ value: 2 });
    const aside = [...database.entries].filter(([key]) => key.startsWith('aside/a/'));
    expect(aside.map(([, kept]) => kept)).toEqual([entry]);
  });

  test('is put aside where whoever read it cannot use it', async () => {
    const database = memoryDatabase(new Map([['a', { version: 2, changed_ms: 1, value: 9 }]]));
    const store = open({ database });
    await store.read('a', numberShape);
    store.protect('a');
    store.keep('a', numberShape, 1);
    await vi.runAllTimersAsync();
    expect([...database.entries.values()].map(({ value }) => value)).toEqual(expect.arrayContaining([9, 1]));
  });
});

describe('a page that is left at once', () => {
  test('notes what is not written, and the next visit takes it up and writes it', async () => {
    const drafts = memoryDrafts();
    const gone = { version: 2, changed_ms: 1, value: 1 };
    const never = memoryDatabase(new Map([['gone', gone]]));
    const store = open({ database: never, drafts });
    await store.read('gone', numberShape);
    never.refuses = true;
    store.keep('a', numberShape, 5);
    store.keep('gone', numberShape, undefined);
    store.leave();
    expect(drafts.texts.size).toBe(1);

    const database = memoryDatabase(new Map([['gone', gone]]));
    const next = open({ database, drafts });
    expect(await next.read('a', numberShape)).toEqual({ kind: 'read', value: 5 });
    expect(await next.read('gone', numberShape)).toEqual({ kind: 'nothing' });
    await vi.runAllTimersAsync();
    expect(database.entries.get('a')).toMatchObject({ value: 5 });
    expect(database.entries.has('gone')).toBe(false);
    expect(drafts.texts.size).toBe(0);
  });

  test('notes nothing where all is written, and drops the note once it is', async () => {
    const drafts = memoryDrafts();
    const store = open({ drafts });
    store.leave();
    expect(drafts.texts.size).toBe(0);
    store.keep('a', numberShape, 5);
    store.leave();
    expect(drafts.texts.size).toBe(1);
    await vi.runAllTimersAsync();
    expect(drafts.texts.size).toBe(0);
  });

  test('does not put an old note before what was kept after it', async () => {
    const drafts = memoryDrafts();
    drafts.setItem('limbeck-unsaved', JSON.stringify([['a', { version: 2, changed_ms: 10, value: 1 }]]));
    const database = memoryDatabase(new Map([['a', { version: 2, changed_ms: 20, value: 2 }]]));
    expect(await open({ database, drafts }).read('a', numberShape)).toEqual({ kind: 'read', value: 2 });
  });

  test.each(['{', '5', '[3,["a"],["a",{"value":1}]]'])('is not led astray by the note %s', async (text) => {
    const drafts = memoryDrafts();
    drafts.setItem('limbeck-unsaved', text);
    expect(await open({ drafts }).read('a', numberShape)).toEqual({ kind: 'nothing' });
  });
});

describe('a storage that refuses', () => {
  test('is told, and tried again with the next change', async () => {
    const database = memoryDatabase();
    const store = open({ database });
    await store.read('a', numberShape);
    database.refuses = true;
    store.keep('a', numberShape, 1);
    await vi.runAllTimersAsync();
    expect(store.refused()).toBe(true);
    database.refuses = false;
    store.keep('b', numberShape, 2);
    await vi.runAllTimersAsync();
    expect(store.refused()).toBe(false);
    expect(database.entries.get('a')).toMatchObject({ value: 1 });
  });

  test('or never answers holds nobody up', async () => {
    const silent = { ...memoryDatabase(), get: () => new Promise<undefined>(() => undefined) };
    const read = open({ database: silent }).read('a', numberShape);
    const told = expect(read).rejects.toThrow('does not answer');
    await vi.advanceTimersByTimeAsync(3000);
    await told;
  });
});

test('what older builds kept is brought in once', async () => {
  const database = memoryDatabase();
  const oldEntries = vi.fn(() => Promise.resolve([{ key: 'a', entry: { version: 1, changed_ms: 1, value: '4' } }]));
  const store = open({ database, oldEntries });
  expect(await store.read('a', numberShape)).toEqual({ kind: 'read', value: 4 });
  store.keep('a', numberShape, 5);
  await vi.runAllTimersAsync();
  expect(await open({ database, oldEntries }).read('a', numberShape)).toEqual({ kind: 'read', value: 5 });
  expect(oldEntries).toHaveBeenCalledTimes(1);
});
