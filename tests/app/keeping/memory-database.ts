/** A database in memory, which can be made to refuse, or to take its time. */
import { outcomeOf, type Database, type Entry, type Put } from '../../../src/state/database.ts';
import type { DraftStore } from '../../../src/state/kept-store.ts';

export interface MemoryDatabase extends Database {
  readonly entries: Map<string, Entry>;
  /** The keys of each writing. */
  readonly writings: (readonly string[])[];
  refuses: boolean;
}

/** @param waits how long a question or a writing takes to begin */
export function memoryDatabase(
  entries = new Map<string, Entry>(),
  waits: () => Promise<void> = () => Promise.resolve(),
): MemoryDatabase {
  const place = (puts: readonly Put[]) => {
    for (const { key, entry } of puts) {
      if (entry) entries.set(key, structuredClone(entry));
      else entries.delete(key);
    }
  };
  const begin = async (writes: readonly string[] | null) => {
    await waits();
    if (database.refuses) throw new DOMException('full', 'QuotaExceededError');
    if (writes) database.writings.push(writes);
  };
  const database: MemoryDatabase = {
    entries,
    writings: [],
    refuses: false,
    get: async (key) => {
      await begin(null);
      return structuredClone(entries.get(key));
    },
    under: async (prefix) => {
      await begin(null);
      return new Map([...entries].filter(([key]) => key.startsWith(prefix)));
    },
    put: async (puts) => {
      await begin(puts.map(({ key }) => key));
      place(puts);
    },
    write: async (changes) => {
      await begin(changes.map(({ key }) => key));
      return changes.map((change) => {
        const outcome = outcomeOf(change, structuredClone(entries.get(change.key)));
        place(outcome.puts);
        return outcome;
      });
    },
  };
  return database;
}

export function memoryDrafts(): DraftStore & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>();
  return {
    texts,
    get length() {
      return texts.size;
    },
    key: (index) => [...texts.keys()][index] ?? null,
    getItem: (key) => texts.get(key) ?? null,
    setItem: (key, value) => void texts.set(key, value),
    removeItem: (key) => void texts.delete(key),
  };
}
