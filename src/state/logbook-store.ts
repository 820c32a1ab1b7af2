/** Keeps the run book on this device. Every keystroke counts: it is written a moment later, and at once when the page is left. */
import { createStore, get, set } from 'idb-keyval';
import { batch, createSignal } from 'solid-js';
import type { OwnBands, Scenario } from '../../sim/index.ts';
import { dropNote, leaveNote, readNote } from './unload-draft.ts';
import { NO_LOGS, readLogbook, writtenLogbook, type KeptStill, type LoggedRun, type Logbook } from './logbook.ts';

const KEY = 'book';
const NOTE = 'run-book';
const QUIET_MS = 300;

const [book, setBook] = createSignal<Logbook>(NO_LOGS);
const [state, setState] = createSignal<'opening' | 'kept' | 'refused'>('opening');
let opening: Promise<void> | null = null;
let timer: ReturnType<typeof setTimeout> | null = null;
let store: ReturnType<typeof createStore> | null = null;
let unwritten = false;

const place = () => (store ??= createStore('limbeck-run-book', 'runs'));

export { book as logbook, state as logbookState };

function write(): void {
  if (timer !== null) clearTimeout(timer);
  timer = null;
  if (!unwritten) return;
  unwritten = false;
  set(KEY, writtenLogbook(book()), place()).then(
    () => {
      if (!unwritten) dropNote(NOTE);
      setState('kept');
    },
    () => setState('refused'),
  );
}

const onLeave = () => {
  if (unwritten) leaveNote(NOTE, writtenLogbook(book()));
  write();
};

const onHide = () => {
  if (document.visibilityState === 'hidden') onLeave();
};

/** What was typed before the book was open stands behind what was kept. */
const joined = (kept: Logbook, typed: Logbook): Logbook => ({
  logs: [...kept.logs, ...typed.logs],
  stills: [...kept.stills, ...typed.stills],
  unread: [...kept.unread, ...typed.unread],
});

/** Opens the book once; later calls wait for the same opening. */
export function openLogbook(): Promise<void> {
  opening ??= (async () => {
    document.addEventListener('visibilitychange', onHide);
    addEventListener('pagehide', onLeave);
    try {
      const found = readNote(NOTE) ?? (await get<unknown>(KEY, place()));
      const read = readLogbook(found);
      batch(() => {
        // What this version cannot read at all is kept under `unread`, so that nothing is written over.
        if (read) setBook((typed) => joined(read, typed));
        else if (found !== undefined) setBook((typed) => ({ ...typed, unread: [...typed.unread, found] }));
        setState('kept');
      });
    } catch {
      // A browser that keeps nothing still lets one log and fit; the page says so and offers a file.
      setState('refused');
    }
  })();
  return opening;
}

function change(next: (before: Logbook) => Logbook): void {
  setBook(next);
  unwritten = true;
  timer ??= setTimeout(write, QUIET_MS);
}

let given = 0;

/** An id that no other entry of this book has. */
export const newId = (): string => `${Date.now().toString(36)}-${(given += 1)}`;

export const addLogs = (logs: readonly LoggedRun[]): void =>
  change((before) => ({ ...before, logs: [...before.logs, ...logs] }));

export const changeLog = (id: string, changed: Partial<Omit<LoggedRun, 'id'>>): void =>
  change((before) => ({ ...before, logs: before.logs.map((log) => (log.id === id ? { ...log, ...changed } : log)) }));

/** Takes a log out; answers how to put it back where it was. */
export function removeLog(id: string): () => void {
  const at = book().logs.findIndex((log) => log.id === id);
  const log = book().logs[at];
  change((before) => ({ ...before, logs: before.logs.filter((other) => other.id !== id) }));
  return () => {
    if (log) change((before) => ({ ...before, logs: before.logs.toSpliced(at, 0, log) }));
  };
}

export const keepStill = (still: KeptStill): void =>
  change((before) => ({ ...before, stills: [...before.stills, still] }));

export function removeStill(id: string): () => void {
  const at = book().stills.findIndex((still) => still.id === id);
  const still = book().stills[at];
  change((before) => ({ ...before, stills: before.stills.filter((other) => other.id !== id) }));
  return () => {
    if (still) change((before) => ({ ...before, stills: before.stills.toSpliced(at, 0, still) }));
  };
}

/** Adds a run book from a file; entries get new ids, so that nothing here is written over. */
export function addLogbook(added: Logbook): void {
  change((before) => ({
    logs: [...before.logs, ...added.logs.map((log) => ({ ...log, id: newId() }))],
    stills: [...before.stills, ...added.stills.map((still) => ({ ...still, id: newId() }))],
    unread: [...before.unread, ...added.unread],
  }));
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
