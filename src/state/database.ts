/** The database on this device: entries by key. What is written at once stands at once or not at all. */
import { createStore, promisifyRequest } from 'idb-keyval';

export interface Entry {
  /** Version of the shape of `value`. */
  readonly version: number;
  readonly changed_ms: number;
  readonly value: unknown;
  /** Who wrote it and what number of writing it was of theirs, as `window.7`; older builds wrote none. */
  readonly revision?: string;
}

export interface Put {
  readonly key: string;
  /** `null` takes away what stands there. */
  readonly entry: Entry | null;
}

export interface Change extends Put {
  /** The window that makes the change. */
  readonly by: string;
  /** Revision that the change was made from; `null` where there was nothing. */
  readonly base: string | null;
  /** Key under which what stood there is put first. */
  readonly aside?: string;
  /** What is written where another window has written there since. */
  both(theirs: Entry | undefined): readonly Put[];
}

/** What came of a change. */
export interface Outcome {
  readonly puts: readonly Put[];
  /** Whether another window had written there since. */
  readonly met: boolean;
  /** What stood there. */
  readonly before: Entry | undefined;
}

export interface Database {
  get(key: string): Promise<Entry | undefined>;
  /** The entries whose keys begin with this. */
  under(prefix: string): Promise<ReadonlyMap<string, Entry>>;
  put(puts: readonly Put[]): Promise<void>;
  /** Compares and writes in one transaction; an outcome a change, in their order. */
  write(changes: readonly Change[]): Promise<readonly Outcome[]>;
}

export const revisionOf = (entry: Entry | null | undefined): string | null =>
  entry ? (entry.revision ?? `.${entry.changed_ms}`) : null;

/** A window's later change holds its earlier ones, whoever wrote them. */
export function outcomeOf({ key, entry, by, base, aside, both }: Change, before: Entry | undefined): Outcome {
  const now = revisionOf(before);
  if (now !== base && now?.startsWith(`${by}.`) !== true) return { puts: both(before), met: true, before };
  const puts = [{ key, entry }];
  return { puts: aside !== undefined && before ? [{ key: aside, entry: before }, ...puts] : puts, met: false, before };
}

export function openDatabase(name: string): Database {
  const within = createStore(name, 'entries');

  const put = (store: IDBObjectStore, puts: readonly Put[]) => {
    for (const { key, entry } of puts) {
      if (entry) store.put(entry, key);
      else store.delete(key);
    }
  };

  return {
    get: (key) => within('readonly', (store) => promisifyRequest<Entry | undefined>(store.get(key))),
    under: (prefix) =>
      within('readonly', async (store) => {
        const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`);
        const [keys, entries] = await Promise.all([
          promisifyRequest(store.getAllKeys(range)),
          promisifyRequest<Entry[]>(store.getAll(range)),
        ]);
        return new Map(entries.map((entry, index) => [keys[index] as string, entry]));
      }),
    put: (puts) =>
      within('readwrite', (store) => {
        put(store, puts);
        return promisifyRequest(store.transaction);
      }),
    write: (changes) =>
      within('readwrite', async (store) => {
        const outcomes: Outcome[] = [];
        for (const [index, change] of changes.entries()) {
          const before = store.get(change.key) as IDBRequest<Entry | undefined>;
          before.onsuccess = () => {
            const outcome = outcomeOf(change, before.result);
            outcomes[index] = outcome;
            try {
              put(store, outcome.puts);
            } catch {
              store.transaction.abort();
            }
          };
        }
        await promisifyRequest(store.transaction);
        return outcomes;
      }),
  };
}
