/** What becomes of an oil between receiver and bottle, worked out once for all parts of the page. */
import { createMemo, type Accessor } from 'solid-js';
import {
  drying,
  keeping,
  leftToBottle,
  planBottles,
  quantities,
  standing,
  type UnitSystem,
} from '../../../sim/index.ts';
import type { Bottling } from '../../state/bottling-store.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { monthAfter, spanWords, type BottledOil } from './bottled-oil.ts';

export interface BottlingPartProps {
  readonly oil: BottledOil;
  readonly now: Bottling;
  readonly context: AnalysisContext;
  readonly plan: BottlingPlan;
}

export interface BottlingPlan {
  readonly units: Accessor<UnitSystem>;
  readonly q: Accessor<ReturnType<typeof quantities>>;
  readonly volume: (value_m3: number) => string;
  readonly settled: Accessor<ReturnType<typeof standing>>;
  readonly dried: Accessor<ReturnType<typeof drying>>;
  /** Least and most that filter and salt keep, m³, and what is left to bottle. */
  readonly lost_m3: Accessor<readonly [number, number]>;
  readonly left_m3: Accessor<number>;
  readonly filled: Accessor<ReturnType<typeof planBottles>>;
  readonly bottles: Accessor<number>;
  readonly keeps: Accessor<ReturnType<typeof keeping>>;
  /** Month, where a day of distilling is given. */
  readonly bestBefore: Accessor<string | null>;
}

export function createBottlingPlan(props: Omit<BottlingPartProps, 'plan'>): BottlingPlan {
  const q = () => quantities(props.context.reader());
  const settled = createMemo(() => standing(props.oil.composition, props.now.standing_K, props.now.height_m));
  const dried = createMemo(() => drying(props.oil.composition, props.oil.oil_m3, props.now.standing_K));
  const left = createMemo(() => leftToBottle(props.oil.oil_m3, props.now.filter, props.now.dried ? dried() : null));
  const lost_m3 = () => left().lost_m3;
  const left_m3 = () => left().left_m3;
  const filled = createMemo(() => planBottles(left_m3(), props.now.bottle_m3, props.now.fill, props.now.store_K));
  const keeps = createMemo(() => keeping(props.oil.botanical, props.now.store_K, props.now.openedOften));
  return {
    units: () => props.context.units(),
    q,
    volume: (value_m3) => q().of('oilVolume', value_m3),
    settled,
    dried,
    lost_m3,
    left_m3,
    filled,
    bottles: () => filled().full + (filled().last_m3 > 0 ? 1 : 0),
    keeps,
    bestBefore: () => monthAfter(props.now.date, keeps().life_s),
  };
}

const DAY_s = 86400;

/** Minutes and hours up to two days, then the days and years of a longer span. */
export const spanOrTime = (time_s: number, words: (time_s: number) => string): string =>
  time_s < 2 * DAY_s ? words(Math.max(60, Math.round(time_s / 60) * 60)) : spanWords(time_s);
