/** Whether plants of the library are gathered wild, and who identified each of them, kept on this device. */
import { createSignal, untrack } from 'solid-js';
import * as z from 'zod/mini';
import { keptStore } from './browser-store.ts';
import type { Shape } from './kept-shape.ts';

interface Gathered {
  readonly wild: boolean;
  /** By the plant: who knows one plant need not know another. */
  readonly identifiedBy: Readonly<Record<string, string>>;
}

const schema = z.object({ wild: z.boolean(), identifiedBy: z.record(z.string(), z.string()) });

export const gatheredShape: Shape<Gathered> = {
  version: 1,
  read: (value) => {
    const read = schema.safeParse(value);
    return read.success ? read.data : null;
  },
};

const KEY = 'gathered';
const [gathered, setGathered] = createSignal<Gathered>({ wild: false, identifiedBy: {} });

let opening: Promise<void> | null = null;

export function openGathered(): Promise<void> {
  opening ??= (async () => {
    try {
      const kept = await keptStore().read(KEY, gatheredShape);
      if (kept.kind === 'read') setGathered(kept.value);
    } catch {
      // A browser that keeps nothing asks anew at the next visit.
    }
  })();
  return opening;
}

const change = (changed: Partial<Gathered>): void => {
  const after = { ...untrack(gathered), ...changed };
  setGathered(after);
  keptStore().keep(KEY, gatheredShape, after);
};

export const wild = (): boolean => gathered().wild;
export const setWild = (on: boolean): void => change({ wild: on });

export const identifierOf = (plant: string): string => gathered().identifiedBy[plant] ?? '';
export const setIdentifier = (plant: string, name: string): void =>
  change({ identifiedBy: { ...untrack(gathered).identifiedBy, [plant]: name } });
