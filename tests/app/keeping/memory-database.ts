/** A database in memory, which can be made to refuse. */
import type { Change, Database, Entry } from '../../../src/state/database.ts';
import type { DraftStore } from '../../../src/state/kept-store.ts';

export interface MemoryDatabase extends Database {
  readonly entries: Map<string, Entry>;
  /** The keys of each writing. */
  readonly writings: (readonly string[])[];
  refuses: boolean;
}

export function memoryDatabase(entries = new Map<string, Entry>()): MemoryDatabase {
  const put = ({ key, entry }: Change) => {
    if (entry) entries.set(key, structuredClone(entry));
    else entries.delete(key);
  };
  const database: MemoryDatabase = {
    entries,
    writings: [],
    refuses: false,
    get: async (key) => {
      if (database.refuses) throw new Error('refused');
      return Promise.resolve(structuredClone(entries.get(key)));
    },
    under: (prefix) => Promise.resolve(new Map([...entries].filter(([key]) => key.startsWith(prefix)))),
    write: async (changes) => {
      await Promise.resolve();
      if (database.refuses) throw new DOMException('full', 'QuotaExceededError');
      database.writings.push(changes.map(({ key }) => key));
      for (const change of changes) {
        const before = entries.get(change.key);
        if (change.aside !== undefined && before) entries.set(change.aside, before);
        put(change);
      }
    },
  };
  return database;
}

export function memoryDrafts(): DraftStore & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>();
  return {
    texts,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, value) => void texts.set(key, value),
    removeItem: (key) => void texts.delete(key),
  };
}
