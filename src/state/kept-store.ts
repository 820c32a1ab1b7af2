/**
 * What is kept on this device between visits, by key; nothing leaves the device. Changes are gathered for a moment and
 * written in one transaction. When the page is left they are also noted where writing does not wait, for the database
 * answers too late then; the next visit takes up what it finds there.
 */
import { throttle } from '@solid-primitives/scheduled';
import { createSignal, type Accessor } from 'solid-js';
import { isObject } from '../../sim/index.ts';
import type { Change, Database, Entry } from './database.ts';

/** A shape in which things are kept. */
export interface Shape<T> {
  readonly version: number;
  /** Reads a value of this version or an earlier one; `null` where it cannot be read. */
  read(value: unknown, version: number): T | null;
}

export type Kept<T> =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'read'; readonly value: T }
  /** Kept by a newer build, or damaged: it stays where it is until something is kept in its place, then aside. */
  | { readonly kind: 'unread'; readonly value: unknown };

export interface KeptStore {
  /** Rejects where nothing can be kept. */
  read<T>(key: string, shape: Shape<T>): Promise<Kept<T>>;
  /** Everything whose key begins with this. */
  readAll<T>(prefix: string, shape: Shape<T>): Promise<ReadonlyMap<string, Kept<T>>>;
  /** Keeps a value soon; `undefined` takes away what is kept. */
  keep(key: string, shape: Pick<Shape<unknown>, 'version'>, value: unknown): void;
  /** Whatever is kept there now is put aside before anything takes its place. */
  protect(key: string): void;
  /** Whether the last attempt to keep something went wrong. */
  readonly refused: Accessor<boolean>;
  /** Writes at once, and notes what may not be written in time: the page is being left, or may be at any moment. */
  leave(): void;
}

/** Text that is written without waiting: the browser's `localStorage`. */
export interface DraftStore {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}

export interface KeptStoreParts {
  readonly database: Database;
  readonly drafts: DraftStore | null;
  /** Changes that bring in what builds before this store kept; done once. */
  oldEntries(): Promise<readonly Change[]>;
  /** Milliseconds since 1970. */
  now(): number;
}

/** A dragged slider, a playing run or a typing hand changes things many times a second. */
const WRITE_EVERY_MS = 400;
/** A browser that neither opens nor refuses its storage must not hold up the page. */
const LONGEST_READ_MS = 2000;
const LONGEST_WRITE_MS = 10_000;
const DRAFTS = 'limbeck-unsaved';
const MOVED_IN = 'moved-in';

const within = <T>(longest_ms: number, work: Promise<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('the storage does not answer')), longest_ms);
    work.then(resolve, reject).finally(() => clearTimeout(timer));
  });

const isDraft = (value: unknown): value is readonly [string, Entry | null] => {
  if (!Array.isArray(value)) return false;
  const [key, entry] = value as readonly unknown[];
  if (typeof key !== 'string') return false;
  return (
    entry === null ||
    (isObject(entry) && typeof entry['version'] === 'number' && typeof entry['changed_ms'] === 'number')
  );
};

function readShape<T>(entry: Entry | null | undefined, shape: Shape<T>): Kept<T> {
  if (!entry) return { kind: 'nothing' };
  const value = entry.version <= shape.version ? shape.read(entry.value, entry.version) : null;
  return value === null ? { kind: 'unread', value: entry.value } : { kind: 'read', value };
}

export function createKeptStore({ database, drafts, oldEntries, now }: KeptStoreParts): KeptStore {
  const [refused, setRefused] = createSignal(false);
  /** What has changed and is not known to be written. */
  const pending = new Map<string, Entry | null>();
  const guarded = new Set<string>();
  let ready: Promise<void> | null = null;

  const noteDrafts = () => {
    try {
      drafts?.setItem(DRAFTS, JSON.stringify([...pending]));
    } catch {
      // Full or refused: the database was asked too.
    }
  };
  const takeDrafts = (): readonly (readonly [string, Entry | null])[] => {
    try {
      const noted: unknown = JSON.parse(drafts?.getItem(DRAFTS) ?? '[]');
      return Array.isArray(noted) ? noted.filter(isDraft) : [];
    } catch {
      return [];
    }
  };
  const dropDrafts = () => {
    try {
      drafts?.removeItem(DRAFTS);
    } catch {
      // Where nothing can be noted there is nothing to drop.
    }
  };

  const write = async (): Promise<void> => {
    writeSoon.clear();
    if (pending.size === 0) return;
    const batch = new Map(pending);
    try {
      await opened();
      const changes = [...batch].map(([key, entry]): Change =>
        guarded.has(key) ? { key, entry, aside: `aside/${key}/${now()}` } : { key, entry },
      );
      await within(LONGEST_WRITE_MS, database.write(changes));
      for (const [key, entry] of batch) {
        guarded.delete(key);
        if (pending.get(key) === entry) pending.delete(key);
      }
      if (pending.size === 0) dropDrafts();
      setRefused(false);
    } catch {
      setRefused(true);
    }
  };
  const writeSoon = throttle(() => void write(), WRITE_EVERY_MS);

  const open = async (): Promise<void> => {
    if (!(await database.get(MOVED_IN))) {
      const entry: Entry = { version: 1, changed_ms: now(), value: true };
      await database.write([...(await oldEntries()), { key: MOVED_IN, entry }]);
    }
    for (const [key, draft] of takeDrafts()) {
      const kept = await database.get(key);
      const isNewer = !kept || draft === null || draft.changed_ms > kept.changed_ms;
      if (isNewer && !pending.has(key)) pending.set(key, draft);
    }
    if (pending.size > 0) writeSoon();
  };
  const opened = () =>
    (ready ??= open().catch((reason: unknown) => {
      ready = null;
      throw reason;
    }));

  return {
    refused,
    read: (key, shape) =>
      within(
        LONGEST_READ_MS,
        (async () => {
          await opened();
          const kept = pending.has(key) ? pending.get(key) : await database.get(key);
          const found = readShape(kept, shape);
          if (found.kind === 'unread') guarded.add(key);
          return found;
        })(),
      ),
    readAll: (prefix, shape) =>
      within(
        LONGEST_READ_MS,
        (async () => {
          await opened();
          const all = new Map<string, Entry | null>(await database.under(prefix));
          for (const [key, entry] of pending) if (key.startsWith(prefix)) all.set(key, entry);
          return new Map(
            [...all].flatMap(([key, entry]) => {
              const found = readShape(entry, shape);
              if (found.kind === 'unread') guarded.add(key);
              return found.kind === 'nothing' ? [] : [[key, found] as const];
            }),
          );
        })(),
      ),
    keep: (key, { version }, value) => {
      pending.set(key, value === undefined ? null : { version, changed_ms: now(), value });
      writeSoon();
    },
    protect: (key) => guarded.add(key),
    leave: () => {
      if (pending.size === 0) return;
      noteDrafts();
      void write();
    },
  };
}
