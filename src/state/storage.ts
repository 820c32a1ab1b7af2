/** Keeps the bench on this device between visits. Nothing leaves the device. */
import { createStore, get, set } from 'idb-keyval';
import { readNote } from './unload-draft.ts';
import { SPEEDS, type Speed } from './playback.ts';
import type { UnitSystem } from '../../sim/index.ts';

export type Theme = 'auto' | 'light' | 'dark' | 'contrast' | 'projector';
export const THEMES: readonly Theme[] = ['auto', 'light', 'dark', 'contrast', 'projector'];

export interface SavedBench {
  /** As JSON; it is read like any other file before it is used. */
  readonly scenario: unknown;
  readonly time_s: number;
  readonly speed: Speed;
  readonly units: UnitSystem;
  readonly theme: Theme;
  /** Ids of the charts that are folded away. */
  readonly foldedCharts: readonly string[];
  readonly hintsDismissed: boolean;
  /** Whether single keys move the time mark. */
  readonly keysOn: boolean;
}

export type Kept =
  { readonly kind: 'nothing' } | { readonly kind: 'bench'; readonly bench: SavedBench } | { readonly kind: 'blocked' };

export interface BenchStorage {
  load(): Promise<Kept>;
  /** Resolves with whether it was kept. */
  save(bench: SavedBench): Promise<boolean>;
}

const KEY = 'bench';
/** Under this name a bench that was left in haste is noted. */
export const NOTE = 'bench';
/** A browser that neither opens nor refuses its storage must not hold up the page. */
const LONGEST_WAIT_MS = 2000;

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

const oneOf = <T>(options: readonly T[], value: unknown, otherwise: T): T =>
  options.find((option) => option === value) ?? otherwise;

/** Reads what was kept, field by field: an older or damaged entry gives what can be used of it. */
export function readSavedBench(value: unknown): SavedBench | null {
  if (!isObject(value) || !('scenario' in value)) return null;
  const time_s = value['time_s'];
  const folded = value['foldedCharts'];
  return {
    scenario: value['scenario'],
    time_s: typeof time_s === 'number' && Number.isFinite(time_s) ? time_s : 0,
    speed: oneOf<Speed>(SPEEDS, value['speed'], 60),
    units: oneOf<UnitSystem>(['metric', 'us'], value['units'], 'metric'),
    theme: oneOf<Theme>(THEMES, value['theme'], 'auto'),
    foldedCharts: Array.isArray(folded) ? folded.filter((id): id is string => typeof id === 'string') : [],
    hintsDismissed: value['hintsDismissed'] === true,
    keysOn: value['keysOn'] !== false,
  };
}

const within = <T>(work: Promise<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('storage did not answer')), LONGEST_WAIT_MS);
    work.then(resolve, reject).finally(() => clearTimeout(timer));
  });

export function browserStorage(): BenchStorage {
  let opened: ReturnType<typeof createStore> | null = null;
  const store = () => (opened ??= createStore('limbeck', 'work'));
  return {
    load: async () => {
      try {
        const bench = readSavedBench(readNote(NOTE)) ?? readSavedBench(await within(get<unknown>(KEY, store())));
        return bench ? { kind: 'bench', bench } : { kind: 'nothing' };
      } catch {
        return { kind: 'blocked' };
      }
    },
    save: async (bench) => {
      try {
        await within(set(KEY, bench, store()));
        return true;
      } catch {
        return false;
      }
    },
  };
}
