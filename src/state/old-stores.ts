/**
 * What builds before the one store kept, each thing in a database of its own: brought in once and left where it is, so
 * that an older build which is still kept offline finds its work.
 */
import { isObject } from '../../sim/index.ts';
import type { Put } from './database.ts';
import type { DraftStore } from './kept-store.ts';

const FIRST_VERSION = 1;

/** One value of an old database; `undefined` where there is none, and none is made by looking. */
function oldValue(database: string, store: string, key: string): Promise<unknown> {
  return new Promise((resolve) => {
    const opening = indexedDB.open(database);
    opening.onupgradeneeded = () => opening.transaction?.abort();
    opening.onerror = () => resolve(undefined);
    opening.onsuccess = () => {
      const { result } = opening;
      const close = (value: unknown) => {
        result.close();
        resolve(value);
      };
      if (!result.objectStoreNames.contains(store)) return close(undefined);
      const request = result.transaction(store).objectStore(store).get(key);
      request.onsuccess = () => close(request.result);
      request.onerror = () => close(undefined);
    };
  });
}

export interface OldValues {
  readonly bench: unknown;
  readonly compared: unknown;
  readonly runBook: unknown;
}

/** What was noted as a page was left is newer than what the database holds. */
export async function oldValues(drafts: Pick<DraftStore, 'getItem'> | null): Promise<OldValues> {
  const noted = (name: string): unknown => {
    try {
      return JSON.parse(drafts?.getItem(`limbeck-parting-${name}`) ?? 'null') ?? undefined;
    } catch {
      return undefined;
    }
  };
  const [bench, compared, runBook] = await Promise.all([
    oldValue('limbeck', 'work', 'bench'),
    oldValue('limbeck-boils', 'boils', 'boils'),
    oldValue('limbeck-run-book', 'runs', 'book'),
  ]);
  return { bench: noted('bench') ?? bench, compared, runBook: noted('run-book') ?? runBook };
}

/** Old values as entries. Nothing is judged here: what cannot be read is found out when it is asked for. */
export function changesFrom({ bench, compared, runBook }: OldValues, now_ms: number): readonly Put[] {
  const changes: Put[] = [];
  const add = (key: string, value: unknown) =>
    changes.push({ key, entry: { version: FIRST_VERSION, changed_ms: now_ms, value } });
  if (bench !== undefined) add('bench', bench);
  if (compared !== undefined) add('compared', compared);
  if (isObject(runBook) && runBook['kind'] === 'limbeck-run-book') {
    // Keys in the order of the book, and before any that is given to a newer entry.
    for (const [kind, list] of [
      ['log', runBook['logs']],
      ['still', runBook['stills']],
      ['unread', runBook['unread']],
    ] as const)
      for (const [index, value] of (Array.isArray(list) ? (list as unknown[]) : []).entries())
        add(`run-book/${kind}/${String(index).padStart(6, '0')}`, value);
  } else if (runBook !== undefined) {
    add('run-book/unread/000000', runBook);
  }
  return changes;
}
