/** Writes what has changed, and follows what other windows write. Nothing that two windows change at once is lost. */
import { isObject } from '../../sim/index.ts';
import { revisionOf, type Change, type Database, type Entry, type Outcome, type Put } from './database.ts';
import { readShape, within, type Draft, type Keeping, type Pending, type Seen, type Shape } from './kept-shape.ts';

/** Something that two windows have changed at once. */
export interface Clash {
  readonly key: string;
  /** What this window had made of it; `undefined` where it had taken it away. */
  readonly mine: unknown;
  /** What the other window had made of it; `undefined` where it had taken it away. */
  readonly theirs: unknown;
  /** Keys that were given to one of the two, so that both are kept; empty where both changes stand in one. */
  readonly beside: readonly string[];
}

/** How windows tell each other: the browser's `BroadcastChannel`. */
export interface Channel {
  /** Keys under which something was written. */
  postMessage(keys: readonly string[]): void;
  onmessage: ((event: MessageEvent<readonly string[]>) => void) | null;
}

export interface Writer {
  write(): Promise<void>;
  follow(prefix: string, then: (key: string, entry: Entry | null) => void): void;
  catchUp(): Promise<void>;
  /** Takes up what a window noted as it was left. */
  takeUp(note: string): Promise<void>;
}

/** What the store and its writer share. */
export interface WriterParts {
  readonly database: Database;
  readonly window: string;
  readonly pending: Map<string, Pending>;
  readonly seen: Map<string, Seen>;
  readonly guarded: Set<string>;
  now(): number;
  /** What earlier visits noted is taken up. */
  opened(): Promise<void>;
  entryOf(version: number, value: unknown): Entry | null;
  writeSoon(): void;
  tell(clash: Clash): void;
}

export interface Writes {
  createWriter(parts: WriterParts): Writer;
}

const LONGEST_WRITE_MS = 10_000;

const equal = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

const asShape = (keeping: Keeping): Shape<unknown> =>
  'read' in keeping ? (keeping as Shape<unknown>) : { ...keeping, read: (value) => value ?? null };

const isDraft = (value: unknown): value is Draft => {
  if (!Array.isArray(value)) return false;
  const [key, entry] = value as readonly unknown[];
  if (typeof key !== 'string') return false;
  return (
    entry === null ||
    (isObject(entry) && typeof entry['version'] === 'number' && typeof entry['changed_ms'] === 'number')
  );
};

function draftsIn(note: string): readonly Draft[] {
  try {
    const noted: unknown = JSON.parse(note);
    return Array.isArray(noted) ? noted.filter(isDraft) : [];
  } catch {
    return [];
  }
}

/** Whether a note is of an earlier moment than what its own window has written since. */
const isWritten = (draft: Entry | null, kept: Entry | undefined): boolean => {
  if (!kept || !draft) return false;
  const [by, count] = draft.revision?.split('.') ?? [];
  const [keptBy, keptCount] = kept.revision?.split('.') ?? [];
  return by === undefined ? draft.changed_ms <= kept.changed_ms : by === keptBy && Number(count) <= Number(keptCount);
};

/** @param joins by how keys begin: what is kept at a conflict, of what the first view writes without knowing it */
export const writesOver = (
  channel: Channel | null,
  joins: Readonly<Record<string, NonNullable<Keeping['both']>>> = {},
): Writes => ({
  createWriter({ database, window, pending, seen, guarded, now, entryOf, opened, writeSoon, tell }) {
    const followers: { readonly prefix: string; readonly then: (key: string, entry: Entry | null) => void }[] = [];
    /** Keys of which another window spoke while this one was writing them. */
    const missed = new Set<string>();

    const show = ({ key, entry }: Put) => {
      for (const { prefix, then } of followers) if (key.startsWith(prefix)) then(key, entry);
    };
    /** Looks what stands there now: what other windows say may reach this one late. */
    const accept = async (key: string): Promise<void> => {
      const entry = pending.has(key) ? null : ((await database.get(key)) ?? null);
      if (pending.has(key)) {
        missed.add(key);
        return;
      }
      if (revisionOf(entry) === seen.get(key)?.revision) return;
      seen.set(key, { revision: revisionOf(entry), value: entry?.value });
      show({ key, entry });
    };
    const acceptAll = async (keys: readonly string[]): Promise<void> => {
      await opened();
      for (const key of keys) await accept(key);
    };
    // What cannot be read now is found to differ when something is written there.
    if (channel) channel.onmessage = ({ data }) => void acceptAll(data).catch(() => undefined);

    const aside = (key: string) => `aside/${key}/${now()}`;

    /** What to keep of a change of this window and one of another. */
    const bothOf = (key: string, entry: Entry | null, keeping: Keeping, theirs: Entry | undefined): readonly Put[] => {
      if (!theirs) return entry ? [{ key, entry }] : [];
      if (!entry || equal(entry.value, theirs.value)) return [];
      const before = seen.get(key);
      const both = keeping.both ?? Object.entries(joins).find(([prefix]) => key.startsWith(prefix))?.[1];
      const isForeign = readShape(theirs, asShape(keeping)).kind === 'unread';
      const kept = isForeign
        ? { [aside(key)]: theirs.value, [key]: entry.value }
        : (both?.(key, entry.value, theirs.value, before?.value) ?? { [key]: entry.value });
      return Object.entries(kept).map(([at, value]) => {
        if (value === theirs.value) return { key: at, entry: theirs };
        return { key: at, entry: value === entry.value ? entry : entryOf(keeping.version, value) };
      });
    };

    /** Where both were kept, what was typed in the meantime is joined with the other's too. */
    const settle = (key: string, written: Pending, { puts, before }: Outcome) => {
      const beside = puts.map((put) => put.key).filter((at) => at !== key);
      const mine = written.entry?.value;
      const standing = puts.find((put) => put.key === key)?.entry ?? before ?? null;
      const later = pending.get(key);
      if (later && later !== written && beside.length === 0) {
        // What another window has changed is not taken away by one who has not seen the change.
        if (!later.entry) pending.set(key, written);
        else if (later.keeping)
          for (const put of bothOf(key, later.entry, later.keeping, before)) {
            pending.set(put.key, { ...later, entry: put.entry, others: put.key === key ? later.others : [] });
            if (put.key !== key) show(put);
          }
      }
      seen.set(key, { revision: revisionOf(standing), value: standing?.value });
      for (const put of puts)
        if (put.key !== key) seen.set(put.key, { revision: revisionOf(put.entry), value: put.entry?.value });
      const now = pending.get(key);
      for (const put of puts) if (put.key !== key) show(put);
      show({ key, entry: now && now !== written ? now.entry : standing });
      if (!equal(mine, before?.value)) tell({ key, mine, theirs: before?.value, beside });
    };

    /** Forgets what is written, and turns to what others noted of the same key. */
    const done = (key: string, written: Pending) => {
      if (pending.get(key) !== written) return;
      const [next, ...others] = written.others;
      if (!next) return void pending.delete(key);
      const [, entry, base = null] = next;
      pending.set(key, { entry, keeping: written.keeping, others });
      seen.set(key, { revision: base });
    };

    const changeOf = (key: string, { entry }: Pending, keeping: Keeping): Change => ({
      key,
      entry,
      by: entry?.revision?.split('.')[0] ?? window,
      base: seen.get(key)?.revision ?? null,
      ...(guarded.has(key) ? { aside: aside(key) } : {}),
      both: (theirs) => bothOf(key, entry, keeping, theirs),
    });

    let last: Promise<void> = Promise.resolve();
    const write = async (): Promise<void> => {
      const batch = [...pending].flatMap(([key, each]) =>
        each.keeping ? [{ key, each, change: changeOf(key, each, each.keeping) }] : [],
      );
      if (batch.length === 0) return;
      const outcomes = await within(LONGEST_WRITE_MS, database.write(batch.map(({ change }) => change)));
      for (const [index, { key, each }] of batch.entries()) {
        const outcome = outcomes[index];
        if (!outcome) continue;
        guarded.delete(key);
        if (outcome.met) settle(key, each, outcome);
        else seen.set(key, { revision: revisionOf(each.entry), value: each.entry?.value });
        done(key, each);
      }
      channel?.postMessage(outcomes.flatMap(({ puts }) => puts.map(({ key }) => key)));
      const spoken = [...missed].filter((key) => !pending.has(key));
      for (const key of spoken) missed.delete(key);
      await acceptAll(spoken);
      if ([...pending.values()].some(({ keeping }) => keeping !== null)) writeSoon();
    };

    return {
      /** One writing after the other: each begins from what the one before has left. */
      write: () => (last = last.catch(() => undefined).then(write)),
      takeUp: async (note) => {
        for (const [key, entry, base] of draftsIn(note)) {
          const kept = await database.get(key);
          if (isWritten(entry, kept)) continue;
          const before = pending.get(key);
          const from = base === undefined ? revisionOf(kept) : base;
          if (!before) seen.set(key, { revision: from });
          pending.set(
            key,
            before
              ? { ...before, others: [...before.others, [key, entry, from]] }
              : { entry, keeping: null, others: [] },
          );
        }
      },
      catchUp: async () => {
        for (const { prefix } of followers) {
          const kept = await database.under(prefix);
          const known = [...seen.keys()].filter((key) => key.startsWith(prefix));
          await acceptAll([...new Set([...kept.keys(), ...known])]);
        }
      },
      follow: (prefix, then) => void followers.push({ prefix, then }),
    };
  },
});
