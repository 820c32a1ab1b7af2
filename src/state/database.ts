/** The database on this device: entries by key. What is written at once stands at once or not at all. */
import { createStore, promisifyRequest } from 'idb-keyval';

export interface Entry {
  /** Version of the shape of `value`. */
  readonly version: number;
  readonly changed_ms: number;
  readonly value: unknown;
}

export interface Change {
  readonly key: string;
  /** `null` takes away what stands there. */
  readonly entry: Entry | null;
  /** Key under which what stood there is put first. */
  readonly aside?: string;
}

export interface Database {
  get(key: string): Promise<Entry | undefined>;
  /** The entries whose keys begin with this. */
  under(prefix: string): Promise<ReadonlyMap<string, Entry>>;
  write(changes: readonly Change[]): Promise<void>;
}

export function openDatabase(name: string): Database {
  const within = createStore(name, 'entries');

  const put = (store: IDBObjectStore, { key, entry }: Change) => {
    if (entry) store.put(entry, key);
    else store.delete(key);
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
    write: (changes) =>
      within('readwrite', (store) => {
        for (const change of changes) {
          const { key, aside } = change;
          if (aside === undefined) {
            put(store, change);
            continue;
          }
          const before = store.get(key);
          before.onsuccess = () => {
            if (before.result !== undefined) store.put(before.result, aside);
            put(store, change);
          };
        }
        return promisifyRequest(store.transaction);
      }),
  };
}
