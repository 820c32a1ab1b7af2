/** Settings of one's own, kept under a name on this device. */
import { isObject } from '../../../../sim/index.ts';

export type PickerId = 'botanical' | 'tube' | 'vessel' | 'heat-source' | 'circuit' | 'separator' | 'tub';

export interface OwnEntry {
  readonly id: string;
  readonly name: string;
  /** What picking it writes, by path of the scenario. */
  readonly values: Readonly<Record<string, unknown>>;
}

/** The part of the browser's storage that is used. */
export interface TextStore {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

export interface OwnEntries {
  list(picker: PickerId): readonly OwnEntry[];
  /** Adds an entry, or replaces the one of that name; whether it could be kept. */
  keep(picker: PickerId, name: string, values: Readonly<Record<string, unknown>>): boolean;
  remove(picker: PickerId, id: string): boolean;
}

const KEY = 'limbeck.own';
export const MOST_OWN = 100;
export const LONGEST_NAME = 60;

const asEntry = (value: unknown): OwnEntry[] => {
  if (!isObject(value)) return [];
  const { id, name, values } = value;
  return typeof id === 'string' && typeof name === 'string' && isObject(values)
    ? [{ id, name: name.slice(0, LONGEST_NAME), values }]
    : [];
};

/** Reads what was kept; what can't be read is left out. */
function readAll(store: TextStore): Record<string, OwnEntry[]> {
  try {
    const kept: unknown = JSON.parse(store.getItem(KEY) ?? '{}');
    if (!isObject(kept)) return {};
    return Object.fromEntries(
      Object.entries(kept).map(([picker, entries]) => [picker, Array.isArray(entries) ? entries.flatMap(asEntry) : []]),
    );
  } catch {
    return {};
  }
}

const idOf = (name: string): string => name.trim().toLowerCase().replace(/\s+/gu, '-');

export function createOwnEntries(store: TextStore): OwnEntries {
  const write = (all: Record<string, OwnEntry[]>): boolean => {
    try {
      store.setItem(KEY, JSON.stringify(all));
      return true;
    } catch {
      return false;
    }
  };
  const list = (picker: PickerId): readonly OwnEntry[] => readAll(store)[picker] ?? [];
  return {
    list,
    keep: (picker, name, values) => {
      const trimmed = name.trim().slice(0, LONGEST_NAME);
      if (trimmed === '') return false;
      const entry = { id: idOf(trimmed), name: trimmed, values };
      const others = list(picker).filter(({ id }) => id !== entry.id);
      return others.length < MOST_OWN && write({ ...readAll(store), [picker]: [...others, entry] });
    },
    remove: (picker, id) => write({ ...readAll(store), [picker]: list(picker).filter((entry) => entry.id !== id) }),
  };
}

const nowhere: TextStore = {
  getItem: () => null,
  setItem: () => {
    throw new Error('this browser keeps nothing');
  },
};

/** The browser's own storage, or one that keeps nothing where the browser forbids it. */
export function browserTextStore(): TextStore {
  try {
    return globalThis.localStorage ?? nowhere;
  } catch {
    return nowhere;
  }
}
