/** The bench as it is kept between visits. */
import { createEffect, type Accessor } from 'solid-js';
import { CURRENCIES, isObject, type Currency, type UnitSystem } from '../../sim/index.ts';
import type { Shape } from './kept-shape.ts';
import type { KeptStore } from './kept-store.ts';
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
  /** As JSON; it is read like any other file before it is used. */
  readonly scenario: unknown;
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

export const BENCH_KEY = 'bench';

const oneOf = <T>(options: readonly T[], value: unknown, otherwise: T): T =>
  options.find((option) => option === value) ?? otherwise;

/** The currency of a code, as it is kept and as a list offers it. */
export const currencyOf = (code: unknown): Currency | null =>
  typeof code === 'string' && Object.hasOwn(CURRENCIES, code) ? (code as Currency) : null;

/** Field by field: an older or damaged entry gives what can be used of it. It stands before the schema is fetched. */
export const benchShape: Shape<SavedBench> = {
  version: 1,
  read: (value) => {
    if (!isObject(value) || !('scenario' in value)) return null;
    const { time_s, foldedCharts: folded } = value;
    return {
      scenario: value['scenario'],
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

/** Keeps the bench whenever it changes. */
export function keepBench(bench: Accessor<SavedBench>, store: KeptStore): void {
  createEffect<boolean>((isFirst) => {
    const now = bench();
    if (!isFirst) store.keep(BENCH_KEY, benchShape, now);
    return false;
  }, true);
}
