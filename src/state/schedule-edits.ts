/**
 * Changes to a control's schedule: for a whole stretch of it, or from one moment on. Moments are those of the run as it
 * went: a change made after an event that the plan waits for counts from that event too. Nothing is changed in place.
 */
import {
  clockSchedule,
  phasesBegun,
  scheduleValue,
  type EventTimes,
  type Knot,
  type PlacedKnot,
  type Schedule,
} from '../../sim/index.ts';

/** Seconds a step needs after a ramp that it cuts short; knots may not share a time. */
const STEP_AFTER_RAMP_S = 1;

/** The stretch between two knots in which a time lies; `to_s` is null where it lasts to the end. */
export interface Stretch {
  readonly from_s: number;
  readonly to_s: number | null;
}

/** The knots that a run reached, and which of them holds at a time. */
function reached(schedule: Schedule, time_s: number, times: EventTimes) {
  const knots = clockSchedule(schedule, times).filter(({ place }) => place !== null);
  const here = Math.max(
    knots.findLastIndex((knot: PlacedKnot) => knot.at_s <= time_s),
    0,
  );
  return { knots, here };
}

export function stretchAt(schedule: Schedule, time_s: number, times: EventTimes): Stretch {
  const { knots, here } = reached(schedule, time_s, times);
  return { from_s: knots[here]?.at_s ?? 0, to_s: knots[here + 1]?.at_s ?? null };
}

/** Sets what holds throughout the stretch in which a time lies; the other stretches stay. */
export function withStretch(schedule: Schedule, time_s: number, value: number, times: EventTimes): Schedule {
  const { knots, here } = reached(schedule, time_s, times);
  const place = knots[here]?.place;
  return schedule.map((knot, index) => (index === place ? { ...knot, value } : knot));
}

/** Sets what holds from a time on, up to the next planned change; what came before stays as it was. */
export function withChangeFrom(schedule: Schedule, time_s: number, value: number, times: EventTimes): Schedule {
  const phase = phasesBegun(schedule, times).findLast(({ begins_s }) => begins_s <= time_s);
  if (!phase) return schedule;
  const { begins_s, first, end, after } = phase;
  const at_s = Math.round(time_s - begins_s);
  if (after === undefined && at_s <= 0) return withStretch(schedule, 0, value, times);
  const from: Pick<Knot, 'after'> = after === undefined ? {} : { after };
  const own = schedule.slice(first, end);
  const cutsRamp = at_s > 0 && own.find((knot) => knot.at_s >= at_s)?.shape === 'ramp';
  const change: Knot[] = cutsRamp
    ? [
        { at_s, ...from, value: scheduleValue(clockSchedule(schedule, times), begins_s + at_s), shape: 'ramp' },
        { at_s: at_s + STEP_AFTER_RAMP_S, ...from, value, shape: 'step' },
      ]
    : [{ at_s, ...from, value, shape: 'step' }];
  return [
    ...schedule.slice(0, first),
    ...own.filter((knot) => knot.at_s < at_s),
    ...change,
    ...own.filter((knot) => knot.at_s > at_s + (cutsRamp ? STEP_AFTER_RAMP_S : 0)),
    ...schedule.slice(end),
  ];
}
