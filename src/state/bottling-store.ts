/** What is bottled: the oil, its vessel, its bottles and what stands on their labels, kept on this device. */
import { createSignal, untrack } from 'solid-js';
import * as z from 'zod/mini';
import { FILTER_KINDS, type FilterKind, type HydrosolStart } from '../../sim/index.ts';
import { keptStore } from './browser-store.ts';
import type { Shape } from './kept-shape.ts';

export interface Bottling {
  /** From the run on the bench, or typed. */
  readonly source: 'run' | 'typed';
  /** Typed. */
  readonly botanical: string;
  readonly oil_m3: number;
  readonly height_m: number;
  readonly standing_K: number;
  readonly filter: FilterKind;
  readonly dried: boolean;
  readonly bottle_m3: number;
  readonly fill: number;
  readonly store_K: number;
  readonly openedOften: boolean;
  /** `2026-07-12`, as a field of the browser gives it. */
  readonly date: string;
  readonly batch: string;
  readonly origin: string;
  readonly ownText: string;
  /** Id of a size, or the usual one for the bottle. */
  readonly labelSize: string;
  readonly hydrosolStart: HydrosolStart;
  readonly hydrosol_K: number;
}

export const USUAL_LABEL = 'usual';

export const USUAL_BOTTLING: Bottling = {
  source: 'run',
  botanical: 'lavender-true',
  oil_m3: 30e-6,
  height_m: 0.05,
  standing_K: 298.15,
  filter: 'none',
  dried: false,
  bottle_m3: 10e-6,
  fill: 0.95,
  store_K: 288.15,
  openedOften: false,
  date: '',
  batch: '',
  origin: 'Tern Hollow garden',
  ownText: '',
  labelSize: USUAL_LABEL,
  hydrosolStart: 'kitchen',
  hydrosol_K: 277.15,
};

const positive = z.number().check(z.gt(0));

const schema = z.object({
  source: z.enum(['run', 'typed'] as const),
  botanical: z.string(),
  oil_m3: positive,
  height_m: positive,
  standing_K: positive,
  filter: z.enum(FILTER_KINDS),
  dried: z.boolean(),
  bottle_m3: positive,
  fill: positive,
  store_K: positive,
  openedOften: z.boolean(),
  date: z.string(),
  batch: z.string(),
  origin: z.string(),
  ownText: z.string(),
  labelSize: z._default(z.string(), USUAL_LABEL),
  hydrosolStart: z.enum(['clean', 'kitchen'] as const),
  hydrosol_K: positive,
});

export const bottlingShape: Shape<Bottling> = {
  version: 1,
  read: (value) => {
    const read = schema.safeParse(value);
    return read.success ? read.data : null;
  },
};

const KEY = 'bottling';
const [bottling, setBottling] = createSignal<Bottling>(USUAL_BOTTLING);
export { bottling };

let opening: Promise<void> | null = null;

export function openBottling(): Promise<void> {
  opening ??= (async () => {
    try {
      const kept = await keptStore().read(KEY, bottlingShape);
      if (kept.kind === 'read') setBottling(kept.value);
    } catch {
      // A browser that keeps nothing begins with what is usual.
    }
  })();
  return opening;
}

export function changeBottling(changed: Partial<Bottling>): void {
  const after = { ...untrack(bottling), ...changed };
  setBottling(after);
  keptStore().keep(KEY, bottlingShape, after);
}
