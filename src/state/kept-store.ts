/**
 * What is kept on this device between visits, by key; nothing leaves the device. Changes are gathered for a moment and
 * written in one transaction. When the page is left they are also noted where writing does not wait, for the database
 * answers too late then; the next visit takes up what it finds there.
 */
import { throttle } from '@solid-primitives/scheduled';
import { createSignal, type Accessor } from 'solid-js';
import { revisionOf, type Database, type Entry, type Put } from './database.ts';
import {
  readShape,
  within,
  type Draft,
  type Keeping,
  type Kept,
  type Pending,
  type Seen,
  type Shape,
} from './kept-shape.ts';
import type { Clash, Writer, Writes } from './kept-writes.ts';

export interface KeptStore {
  /** Rejects where nothing can be kept. */
  read<T>(key: string, shape: Shape<T>): Promise<Kept<T>>;
  /** Everything whose key begins with this. */
  readAll<T>(prefix: string, shape: Shape<T>): Promise<ReadonlyMap<string, Kept<T>>>;
  /** Keeps a value soon; `undefined` takes away what is kept. */
  keep(key: string, keeping: Keeping, value: unknown): void;
  /** Whatever is kept there now is put aside before anything takes its place. */
  protect(key: string): void;
  /** Tells what other windows keep under keys that begin with this, from now on. */
  follow<T>(prefix: string, shape: Shape<T>, then: (key: string, kept: Kept<T>) => void): void;
  /** Looks for what other windows could not tell: they were closed in the moment of writing. */
  catchUp(): void;
  /** What two windows have changed at once, newest last. */
  readonly clashes: Accessor<readonly Clash[]>;
  forgetClashes(): void;
  /** Whether the last attempt to keep something went wrong. */
  readonly refused: Accessor<boolean>;
  /** Writes at once, and notes what may not be written in time: the page is being left, or may be at any moment. */
  leave(): void;
}

/** Text that is written without waiting: the browser's `localStorage`. */
export type DraftStore = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

export interface KeptStoreParts {
  readonly database: Database;
  readonly drafts: DraftStore | null;
  /** A name that no other window has, of letters and digits. */
  readonly window: string;
  /** Brings what writes, and what listens to other windows; no first view needs it. */
  writes(): Promise<Writes>;
  /** What builds before this store kept; asked for once. */
  oldEntries(): Promise<readonly Put[]>;
  /** Milliseconds since 1970. */
  now(): number;
}

/** A browser that neither opens nor refuses its storage must not hold up the page. */
const LONGEST_READ_MS = 2000;
/** A dragged slider, a playing run or a typing hand changes things many times a second. */
const WRITE_EVERY_MS = 400;
const DRAFTS = 'limbeck-unsaved';
const MOVED_IN = 'moved-in';

export function createKeptStore({ database, drafts, window, writes, oldEntries, now }: KeptStoreParts): KeptStore {
  const [refused, setRefused] = createSignal(false);
  const [clashes, setClashes] = createSignal<readonly Clash[]>([]);
  /** What has changed and is not known to be written. */
  const pending = new Map<string, Pending>();
  const seen = new Map<string, Seen>();
  const guarded = new Set<string>();
  /** Notes that were taken up, as they read then; they are dropped once all is written. */
  const taken = new Map<string, string>();
  let count = 0;
  let ready: Promise<void> | null = null;

  const entryOf = (version: number, value: unknown): Entry | null =>
    value === undefined ? null : { version, changed_ms: now(), value, revision: `${window}.${(count += 1)}` };

  const own = `${DRAFTS}/${window}`;
  const noteDrafts = () => {
    try {
      const notes = [...pending].flatMap(([key, { entry, others }]): readonly Draft[] => [
        [key, entry, seen.get(key)?.revision ?? null],
        ...others,
      ]);
      drafts?.setItem(own, JSON.stringify(notes));
    } catch {
      // Full or refused: the database was asked too.
    }
  };
  const notes = (): readonly string[] => {
    try {
      return Array.from({ length: drafts?.length ?? 0 }, (_, index) => drafts?.key(index) ?? '').filter((name) =>
        name.startsWith(DRAFTS),
      );
    } catch {
      return [];
    }
  };
  const dropDrafts = () => {
    try {
      drafts?.removeItem(own);
      for (const [name, text] of taken) if (drafts?.getItem(name) === text) drafts.removeItem(name);
    } catch {
      // Where nothing can be noted there is nothing to drop.
    }
  };

  const write = async (): Promise<void> => {
    writeSoon.clear();
    if (pending.size === 0) return;
    try {
      await opened();
      await (await writer()).write();
      if (pending.size === 0) dropDrafts();
      setRefused(false);
    } catch {
      setRefused(true);
    }
  };
  const writeSoon = throttle(() => void write(), WRITE_EVERY_MS);

  const parts = {
    database,
    window,
    now,
    pending,
    seen,
    guarded,
    entryOf,
    opened: () => opened(),
    writeSoon,
    tell: (clash: Clash) => setClashes((before) => [...before, clash]),
  };

  let writing: Promise<Writer> | null = null;
  const writer = () => (writing ??= writes().then((late) => late.createWriter(parts)));

  const open = async (): Promise<void> => {
    if (!(await database.get(MOVED_IN)))
      await database.put([...(await oldEntries()), { key: MOVED_IN, entry: entryOf(1, true) }]);
    for (const name of notes()) {
      const text = drafts?.getItem(name) ?? '';
      taken.set(name, text);
      await (await writer()).takeUp(text);
    }
  };
  const opened = () =>
    (ready ??= open().catch((reason: unknown) => {
      ready = null;
      throw reason;
    }));

  /** What stands under a key, with what this window has yet to write before what is written. */
  const look = <T>(key: string, kept: Entry | undefined, shape: Shape<T>): Kept<T> => {
    const waiting = pending.get(key);
    if (!waiting) seen.set(key, { revision: revisionOf(kept), value: kept?.value });
    else if (!waiting.keeping) {
      pending.set(key, { ...waiting, keeping: shape });
      writeSoon();
    }
    const found = readShape(waiting ? waiting.entry : kept, shape);
    if (found.kind === 'unread') guarded.add(key);
    return found;
  };

  return {
    refused,
    clashes,
    forgetClashes: () => setClashes([]),
    read: (key, shape) =>
      within(
        LONGEST_READ_MS,
        (async () => {
          await opened();
          return look(key, await database.get(key), shape);
        })(),
      ),
    readAll: (prefix, shape) =>
      within(
        LONGEST_READ_MS,
        (async () => {
          await opened();
          const all = await database.under(prefix);
          const keys = [...all.keys(), ...[...pending.keys()].filter((key) => key.startsWith(prefix))];
          return new Map(
            [...new Set(keys)].flatMap((key) => {
              const found = look(key, all.get(key), shape);
              return found.kind === 'nothing' ? [] : [[key, found] as const];
            }),
          );
        })(),
      ),
    keep: (key, keeping, value) => {
      pending.set(key, { entry: entryOf(keeping.version, value), keeping, others: pending.get(key)?.others ?? [] });
      writeSoon();
    },
    protect: (key) => guarded.add(key),
    follow: (prefix, shape, then) =>
      void writer().then(
        (late) => late.follow(prefix, (key, entry) => then(key, readShape(entry, shape))),
        () => setRefused(true),
      ),
    catchUp: () => void writing?.then((late) => late.catchUp()).catch(() => undefined),
    leave: () => {
      if (pending.size === 0) return;
      noteDrafts();
      void write();
    },
  };
}
