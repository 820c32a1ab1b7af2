/** The bench as it is kept between visits: which still stands on it, and how the reader looks at it. */
import { createEffect } from 'solid-js';
import { CURRENCIES, isObject, type Currency, type UnitSystem } from '../../sim/index.ts';
import type { Shape } from './kept-shape.ts';
import type { KeptStore } from './kept-store.ts';
import { keptOf, noteStillOfWindow, SHELF, stillShape, type Desk } from './kept-still.ts';
import { SPEEDS, type Speed } from './playback.ts';

export type Theme = 'auto' | 'light' | 'dark' | 'contrast' | 'projector';
export const THEMES: readonly Theme[] = ['auto', 'light', 'dark', 'contrast', 'projector'];

/** Charts that may stand beside the still. */
export const SHOWN_CHARTS = [
  'temperatures',
  'heat',
  'steam',
  'cooling',
  'oil',
  'recovery',
  'bed',
  'condenser',
  'tube',
  'drops',
  'separator',
  'energy',
] as const;
export type ShownChart = (typeof SHOWN_CHARTS)[number];

export interface SavedBench {
  /** Id of the still on it; `null` where an older build kept the still itself. */
  readonly still: string | null;
  readonly time_s: number;
  readonly speed: Speed;
  readonly units: UnitSystem;
  /** What amounts are shown in. */
  readonly currency: Currency | null;
  readonly theme: Theme;
  /** Ids of the charts that are folded away. */
  readonly foldedCharts: readonly string[];
  /** Id of the chart beside the still. */
  readonly chart: ShownChart;
  readonly hintsDismissed: boolean;
  /** Whether single keys move the time mark. */
  readonly keysOn: boolean;
}

export interface ReadBench extends SavedBench {
  /** The still as the first version kept it, as JSON that nobody has checked. */
  readonly scenario?: unknown;
}

export const BENCH_KEY = 'bench';

const oneOf = <T>(options: readonly T[], value: unknown, otherwise: T): T =>
  options.find((option) => option === value) ?? otherwise;

/** The currency of a code, as it is kept and as a list offers it. */
export const currencyOf = (code: unknown): Currency | null =>
  typeof code === 'string' && Object.hasOwn(CURRENCIES, code) ? (code as Currency) : null;

/** Field by field: an older or damaged entry gives what can be used of it. It stands before the schema is fetched. */
export const benchShape: Shape<ReadBench> = {
  version: 2,
  read: (value) => {
    if (!isObject(value)) return null;
    const { still, scenario, time_s, foldedCharts: folded } = value;
    if (typeof still !== 'string' && scenario === undefined) return null;
    return {
      still: typeof still === 'string' ? still : null,
      scenario,
      time_s: typeof time_s === 'number' && Number.isFinite(time_s) ? time_s : 0,
      speed: oneOf<Speed>(SPEEDS, value['speed'], 60),
      units: oneOf<UnitSystem>(['metric', 'us'], value['units'], 'metric'),
      currency: currencyOf(value['currency']),
      theme: oneOf<Theme>(THEMES, value['theme'], 'auto'),
      foldedCharts: Array.isArray(folded) ? folded.filter((id): id is string => typeof id === 'string') : [],
      chart: oneOf<ShownChart>(SHOWN_CHARTS, value['chart'], 'oil'),
      hintsDismissed: value['hintsDismissed'] === true,
      keysOn: value['keysOn'] !== false,
    };
  },
};

export interface KeptBench {
  desk(): Desk;
  snapshot(): SavedBench;
}

/**
 * Keeps the bench whenever it changes, and each still that has stood on it.
 * @param opened what stands on it already as it is kept, if it is
 * @returns by id: what this window last wrote or read of each still
 */
export function keepBench(bench: KeptBench, store: KeptStore, opened: Desk | null): Map<string, Desk> {
  const known = new Map<string, Desk>();
  if (opened) known.set(opened.still.id, opened);
  const write = (desk: Desk) => {
    known.set(desk.still.id, desk);
    store.keep(SHELF + desk.still.id, stillShape, keptOf(desk));
  };
  createEffect<Desk | null>((before) => {
    const [view, desk] = [bench.snapshot(), bench.desk()];
    if (before !== desk) noteStillOfWindow(desk.still.id);
    if (!before && (opened || !desk.still.touched)) return desk;
    store.keep(BENCH_KEY, benchShape, view);
    if (before && !known.has(before.still.id)) write(before);
    // A playing run changes the view at every frame, and what stands there seldom.
    if (before !== desk && JSON.stringify(known.get(desk.still.id)) !== JSON.stringify(desk)) write(desk);
    return desk;
  }, null);
  return known;
}
