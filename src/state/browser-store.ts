/** The store of the real page. */
import { openDatabase } from './database.ts';
import { createKeptStore, type DraftStore, type KeptStore } from './kept-store.ts';

let store: KeptStore | null = null;

/** A browser may forbid even to ask for it. */
function localDrafts(): DraftStore | null {
  try {
    return globalThis.localStorage ?? null;
  } catch {
    return null;
  }
}

export function keptStore(): KeptStore {
  if (store) return store;
  const drafts = localDrafts();
  const created = createKeptStore({
    database: openDatabase('limbeck-kept'),
    drafts,
    window: crypto.getRandomValues(new Uint32Array(2)).join(''),
    writes: async () => (await import('./browser-writes.ts')).browserWrites(),
    oldEntries: async () => {
      if (!(await indexedDB.databases()).some(({ name = '' }) => /^limbeck(?!-kept)/u.test(name))) return [];
      const { changesFrom, oldValues } = await import('./old-stores.ts');
      return changesFrom(await oldValues(drafts), Date.now());
    },
    now: () => Date.now(),
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') created.leave();
    else created.catchUp();
  });
  addEventListener('pagehide', () => created.leave());
  return (store = created);
}
