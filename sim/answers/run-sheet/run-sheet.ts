/**
 * What is to be done at a running still, and when: the plan's own changes, what is to be looked at, and the end. Times
 * count from heat on; they follow what was seen of the run and what is forecast of it.
 */
import { positionOf, valueAt } from '../../maths/interpolate.ts';
import { isTapFed } from '../../geometry/condenser-kind.ts';
import { LIMITS } from '../../run/limits.ts';
import type { RunResult } from '../../run/result.ts';
import { clockSchedule, eventTimes, type EventTimes } from '../../run/schedule-value.ts';
import type { Schedule, ScheduleEvent } from '../../scenario/knot.ts';
import type { Forecast, Likely } from '../forecast/forecast.ts';

interface Changed {
  /** Place of the change in its plan. */
  readonly place: number;
  readonly value: number;
  readonly evenly: boolean;
  /** The event that it waits for, and how long after it comes. */
  readonly after: ScheduleEvent | undefined;
  readonly wait_s: number;
}

interface SheetValues {
  fill: Record<string, never>;
  'heat-on': { readonly setting: number | null; readonly rate_kg_s: number | null };
  'first-drop': Record<string, never>;
  heat: Changed;
  tap: Changed;
  'check-water': { readonly planned_kg: number };
  'pot-low': Record<string, never>;
  'tub-hot': { readonly limit_K: number };
  receiver: { readonly holds_kg: number; readonly number: number };
  'no-reading': { readonly since_s: number };
  stop: Record<string, never>;
  'shut-down': Record<string, never>;
}

export type SheetKind = keyof SheetValues;

export type SheetStep = {
  [K in SheetKind]: {
    readonly id: string;
    readonly kind: K;
    readonly at_s: number;
    /** Where eight of ten likely runs have it; `null` where it is by the clock or nothing is forecast. */
    readonly range: Likely | null;
    /** `alarm`: someone or the batch can come to harm. `notice`: something is to be done. `null`: no sound. */
    readonly rings: 'alarm' | 'notice' | null;
    readonly values: SheetValues[K];
  };
}[SheetKind];

/** What is known of the run that the sheet is for. */
export interface SheetState {
  /** When the first drop fell; `null` while it is awaited. */
  readonly firstDrop_s: number | null;
  /** What the receiver holds; `null` where nobody said. */
  readonly receiver_kg: number | null;
  readonly forecast: Forecast | null;
  /** The last reading of any kind; `null` before the run. */
  readonly lastReading_s: number | null;
  /** The hottest tub that was read, and when. */
  readonly tub: { readonly value_K: number; readonly time_s: number } | null;
}

/** Before anything has happened. */
export const NOTHING_SEEN: SheetState = {
  firstDrop_s: null,
  receiver_kg: null,
  forecast: null,
  lastReading_s: null,
  tub: null,
};

/** Water is looked at this often once it boils, and this long before the pot is expected to run low. */
const CHECK_EVERY_S = 1800;
const WARN_BEFORE_S = 600;
/** A reading is missed after this time. */
const READ_EVERY_S = 1500;
/** Water that scalds at once is expected within the run, or has been read. */
export const HOT_TUB_K = LIMITS.scaldingWater_K;
const MOST_RECEIVERS = 12;

/** When a rising column first passes an amount. */
function passes(xs: Float64Array, values: Float64Array, amount: number): number | null {
  const row = values.findIndex((value) => value >= amount);
  return row < 0 ? null : (xs[row] as number);
}

/** The sheet of a run, in the order of its times. */
export function runSheet(result: RunResult, state: SheetState): readonly SheetStep[] {
  const { scenario, record, summary, events } = result;
  const { forecast, firstDrop_s, receiver_kg } = state;
  const planned = eventTimes(summary);
  const drop_s = firstDrop_s ?? forecast?.firstDrop_s.at_s?.middle ?? planned.firstDrop;
  const seen: EventTimes = {
    firstBoil:
      drop_s === null || planned.firstDrop === null || planned.firstBoil === null
        ? planned.firstBoil
        : Math.max(0, drop_s - (planned.firstDrop - planned.firstBoil)),
    firstDrop: drop_s,
  };
  const stop_s = forecast?.stop_s.at_s?.middle ?? summary.end_s;
  const steps: SheetStep[] = [];
  const add = (step: SheetStep) => steps.push(step);

  add({ id: 'fill', kind: 'fill', at_s: 0, range: null, rings: null, values: {} });
  const { heat, cooling } = scenario;
  const holds = heat.control === 'hold-rate';
  add({
    id: 'heat-on',
    kind: 'heat-on',
    at_s: 0,
    range: null,
    rings: null,
    values: {
      setting: holds ? null : (heat.setting[0]?.value ?? null),
      rate_kg_s: holds ? heat.targetRate_kg_s : null,
    },
  });
  if (drop_s !== null)
    add({
      id: 'first-drop',
      kind: 'first-drop',
      at_s: drop_s,
      range: firstDrop_s === null ? (forecast?.firstDrop_s.at_s ?? null) : null,
      rings: 'notice',
      values: {},
    });

  const changes = (kind: 'heat' | 'tap', plan: Schedule) => {
    for (const { at_s, value, shape, place } of clockSchedule(plan, seen)) {
      const knot = place === null || place === 0 ? undefined : plan[place];
      if (!knot || place === null) continue;
      const values = { place, value, evenly: shape === 'ramp', after: knot.after, wait_s: knot.at_s };
      // What waits for the first drop is not due before it has fallen, however late that is.
      const isAwaited = knot.after === 'first-drop' && firstDrop_s === null;
      add({ id: `${kind}-${place}`, kind, at_s, range: null, rings: isAwaited ? null : 'notice', values });
    }
  };
  if (!holds) changes('heat', heat.setting);
  if (isTapFed(scenario)) changes('tap', cooling.flow_kg_s);

  const waterAt = (time_s: number): number =>
    valueAt(record.columns.potWater_kg, positionOf(record.columns.time_s, time_s, record.rows));
  const from_s = seen.firstBoil ?? summary.end_s;
  for (let number = 1, at_s = from_s + CHECK_EVERY_S; at_s < stop_s - WARN_BEFORE_S; number++, at_s += CHECK_EVERY_S)
    add({
      id: `check-water-${number}`,
      kind: 'check-water',
      at_s,
      range: null,
      rings: 'notice',
      values: { planned_kg: waterAt(at_s) },
    });
  const low_s =
    forecast?.potLow_s.at_s?.low ?? events.find(({ kind }) => kind === 'pot-low' || kind === 'pot-dry')?.time_s;
  if (low_s !== undefined)
    add({
      id: 'pot-low',
      kind: 'pot-low',
      at_s: Math.max(0, low_s - WARN_BEFORE_S),
      range: forecast?.potLow_s.at_s ?? null,
      rings: 'alarm',
      values: {},
    });

  const wasHot = state.tub !== null && state.tub.value_K >= HOT_TUB_K;
  const hot_s = wasHot ? state.tub.time_s : events.find(({ kind }) => kind === 'tub-hot')?.time_s;
  if (hot_s !== undefined)
    add({
      id: wasHot ? 'tub-hot-read' : 'tub-hot',
      kind: 'tub-hot',
      at_s: hot_s,
      range: null,
      rings: 'alarm',
      values: { limit_K: HOT_TUB_K },
    });

  if (receiver_kg !== null && receiver_kg > 0) {
    const { times_s, bands } = forecast ?? {};
    for (let number = 1; number <= MOST_RECEIVERS; number++) {
      const at_s =
        times_s && bands
          ? passes(times_s, bands.distillate_kg.p50, number * receiver_kg)
          : passes(
              record.columns.time_s.subarray(0, record.rows),
              record.columns.hydrosol_kg.subarray(0, record.rows),
              number * receiver_kg,
            );
      if (at_s === null || at_s >= stop_s) break;
      add({
        id: `receiver-${number}`,
        kind: 'receiver',
        at_s,
        range: null,
        rings: 'alarm',
        values: { holds_kg: receiver_kg, number },
      });
    }
  }

  if (firstDrop_s !== null && state.lastReading_s !== null && state.lastReading_s + READ_EVERY_S < stop_s)
    add({
      id: `no-reading-${Math.round(state.lastReading_s)}`,
      kind: 'no-reading',
      at_s: state.lastReading_s + READ_EVERY_S,
      range: null,
      rings: 'notice',
      values: { since_s: state.lastReading_s },
    });

  add({ id: 'stop', kind: 'stop', at_s: stop_s, range: forecast?.stop_s.at_s ?? null, rings: 'alarm', values: {} });
  add({ id: 'shut-down', kind: 'shut-down', at_s: stop_s, range: null, rings: null, values: {} });
  // Steps of one moment stay in the order in which they are done.
  return steps
    .map((step, index) => ({ step, index }))
    .sort((a, b) => a.step.at_s - b.step.at_s || a.index - b.index)
    .map(({ step }) => step);
}
