/** The store of the real page. */
import { openDatabase } from './database.ts';
import { createKeptStore, type DraftStore, type KeptStore } from './kept-store.ts';
import { changesFrom, oldValues } from './old-stores.ts';

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
    oldEntries: async () => changesFrom(await oldValues(drafts), Date.now()),
    now: () => Date.now(),
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') created.leave();
  });
  addEventListener('pagehide', () => created.leave());
  return (store = created);
}
