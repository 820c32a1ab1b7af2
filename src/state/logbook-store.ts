/** The run book on this device: an entry for each log and each still, so that a change writes only what it changed. */
import { createSignal, untrack, type Accessor } from 'solid-js';
import type { OwnBands, Scenario } from '../../sim/index.ts';
import { anyShape } from './any-shape.ts';
import { keptStore } from './browser-store.ts';
import type { Keeping, Kept, Shape } from './kept-shape.ts';
import type { KeptStore } from './kept-store.ts';
import { logShape, NO_LOGS, stillShape, type KeptStill, type LoggedRun, type Logbook } from './logbook-schema.ts';
import { newId } from './new-id.ts';

const LOGS = 'run-book/log/';
const STILLS = 'run-book/still/';
const UNREAD = 'run-book/unread/';

const [book, setBook] = createSignal<Logbook>(NO_LOGS);
const [isOpen, setOpen] = createSignal(false);
const [isBlocked, setBlocked] = createSignal(false);
let opening: Promise<void> | null = null;
let store: KeptStore | null = null;

/** A book to look round, in the place of the reader's own; nothing of it is kept. */
const [invented, setInvented] = createSignal<Logbook | null>(null);

export const logbook: Accessor<Logbook> = () => invented() ?? book();
export const isInvented: Accessor<boolean> = () => invented() !== null;
export const openInvented = (shown: Logbook): void => void setInvented(shown);
export const closeInvented = (): void => void setInvented(null);
export const logbookState: Accessor<'opening' | 'kept' | 'refused'> = () =>
  isOpen() ? (isBlocked() || store?.refused() === true ? 'refused' : 'kept') : 'opening';

/** The entries in the order of their keys, which give them their ids; those that cannot be read apart. */
function parted<T extends { readonly id: string }>(
  entries: ReadonlyMap<string, Kept<T>>,
  prefix: string,
): { readonly read: readonly T[]; readonly unread: readonly unknown[] } {
  const sorted = [...entries].sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    read: sorted.flatMap(([key, kept]) =>
      kept.kind === 'read' ? [{ ...kept.value, id: key.slice(prefix.length) }] : [],
    ),
    unread: sorted.flatMap(([, kept]) => (kept.kind === 'unread' ? [kept.value] : [])),
  };
}

/** The entries with what another window has made of one of them. */
function followed<T extends { readonly id: string }>(entries: readonly T[], id: string, kept: Kept<T>): readonly T[] {
  if (kept.kind !== 'read') return entries.filter((each) => each.id !== id);
  const entry = { ...kept.value, id };
  if (entries.some((each) => each.id === id)) return entries.map((each) => (each.id === id ? entry : each));
  return [...entries, entry].sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** What other windows change while the book is being opened. */
const meanwhile: ((before: Logbook) => Logbook)[] = [];

function followOthers(kept: KeptStore): void {
  const unreadToo = (before: Logbook, { kind, value }: { readonly kind: string; readonly value?: unknown }) =>
    kind === 'unread' ? [...before.unread, value] : before.unread;
  const change = (next: (before: Logbook) => Logbook) => {
    if (untrack(isOpen)) setBook(next);
    else meanwhile.push(next);
  };
  const follow = <K extends 'logs' | 'stills'>(prefix: string, shape: Shape<Logbook[K][number]>, list: K) =>
    kept.follow(prefix, shape, (key, each) =>
      change((before) => ({
        ...before,
        [list]: followed(before[list] as readonly Logbook[K][number][], key.slice(prefix.length), each),
        unread: unreadToo(before, each),
      })),
    );
  follow(LOGS, logShape, 'logs');
  follow(STILLS, stillShape, 'stills');
}

/** Opens the book once; later calls wait for the same opening. */
export function openLogbook(kept: KeptStore = keptStore()): Promise<void> {
  opening ??= (async () => {
    store = kept;
    followOthers(kept);
    try {
      const [allLogs, allStills, others] = await Promise.all([
        kept.readAll(LOGS, logShape),
        kept.readAll(STILLS, stillShape),
        kept.readAll(UNREAD, anyShape),
      ]);
      const logs = parted(allLogs, LOGS);
      const stills = parted(allStills, STILLS);
      const unread = [...others.values()].flatMap((each) => (each.kind === 'read' ? [each.value.value] : []));
      // What was typed before the book was open stands in the store already.
      const opened = { logs: logs.read, stills: stills.read, unread: [...logs.unread, ...stills.unread, ...unread] };
      setBook(meanwhile.reduce<Logbook>((before, next) => next(before), opened));
    } catch {
      // A browser that keeps nothing still lets one log and fit; the page says so and offers a file.
      setBlocked(true);
    }
    setOpen(true);
  })();
  return opening;
}

function keepChanged<T extends { readonly id: string }>(
  prefix: string,
  shape: Keeping,
  before: readonly T[],
  after: readonly T[],
): void {
  const target = store ?? keptStore();
  const was = new Map(before.map((entry) => [entry.id, entry]));
  for (const entry of after) {
    if (was.get(entry.id) !== entry) target.keep(prefix + entry.id, shape, entry);
    was.delete(entry.id);
  }
  for (const id of was.keys()) target.keep(prefix + id, shape, undefined);
}

function change(next: (before: Logbook) => Logbook): void {
  const shown = untrack(invented);
  if (shown) {
    setInvented(next(shown));
    return;
  }
  const before = untrack(book);
  const after = setBook(next(before));
  keepChanged(LOGS, logShape, before.logs, after.logs);
  keepChanged(STILLS, stillShape, before.stills, after.stills);
}

export const addLogs = (logs: readonly LoggedRun[]): void =>
  change((before) => ({ ...before, logs: [...before.logs, ...logs] }));

export const changeLog = (id: string, changed: Partial<Omit<LoggedRun, 'id'>>): void =>
  change((before) => ({ ...before, logs: before.logs.map((log) => (log.id === id ? { ...log, ...changed } : log)) }));

/** Takes a log out; answers how to put it back where it was. */
export function removeLog(id: string): () => void {
  const at = logbook().logs.findIndex((log) => log.id === id);
  const log = logbook().logs[at];
  change((before) => ({ ...before, logs: before.logs.filter((other) => other.id !== id) }));
  return () => {
    if (log) change((before) => ({ ...before, logs: before.logs.toSpliced(at, 0, log) }));
  };
}

export const keepStill = (still: KeptStill): void =>
  change((before) => ({ ...before, stills: [...before.stills, still] }));

export function removeStill(id: string): () => void {
  const at = logbook().stills.findIndex((still) => still.id === id);
  const still = logbook().stills[at];
  change((before) => ({ ...before, stills: before.stills.filter((other) => other.id !== id) }));
  return () => {
    if (still) change((before) => ({ ...before, stills: before.stills.toSpliced(at, 0, still) }));
  };
}

/** An entry without its id, by which it is known again in another book. */
const contentOf = ({ id: _, ...entry }: { readonly id: string }): string => JSON.stringify(entry);

const newTo = <T extends { readonly id: string }>(own: readonly T[], others: readonly T[]): readonly T[] => {
  const known = new Set(own.map(contentOf));
  return others
    .filter((entry) => {
      const content = contentOf(entry);
      return !known.has(content) && known.add(content);
    })
    .map((entry) => ({ ...entry, id: newId() }));
};

/**
 * Adds what a run book from a file has that this one lacks. Entries get new ids, so that nothing here is written over.
 * Answers how many came to the book.
 */
export function addLogbook(added: Logbook): { readonly logs: number; readonly stills: number } {
  const before = untrack(book);
  const logs = newTo(before.logs, added.logs);
  const stills = newTo(before.stills, added.stills);
  const known = new Set(before.unread.map((value) => JSON.stringify(value)));
  const unread = added.unread.filter((value) => !known.has(JSON.stringify(value)));
  change((now) => ({
    logs: [...now.logs, ...logs],
    stills: [...now.stills, ...stills],
    unread: [...now.unread, ...unread],
  }));
  for (const value of unread) (store ?? keptStore()).keep(UNREAD + newId(), { version: 1 }, value);
  return { logs: logs.length, stills: stills.length };
}

/** What a fit left in doubt, for a still that still has the factors of that fit. */
export function keptBandsFor({
  factors,
}: Pick<Scenario, 'factors'>): { readonly name: string; readonly bands: OwnBands } | null {
  const mine = JSON.stringify(factors);
  const found = book().stills.findLast(({ scenario, bands }) => {
    const theirs = (scenario as { readonly factors?: unknown } | null)?.factors;
    return Object.keys(bands).length > 0 && JSON.stringify(theirs) === mine;
  });
  return found ? { name: found.name, bands: found.bands } : null;
}
