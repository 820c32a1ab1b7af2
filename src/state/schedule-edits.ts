/** Changes to a control's schedule: for a whole stretch of it, or from one moment on. Nothing is changed in place. */
import { scheduleValue, type Schedule } from '../../sim/index.ts';

type Knot = Schedule[number];

/** Seconds a step needs after a ramp that it cuts short; knots may not share a time. */
const STEP_AFTER_RAMP_S = 1;

/** The stretch between two knots in which a time lies; `to_s` is null where it lasts to the end. */
export interface Stretch {
  readonly from_s: number;
  readonly to_s: number | null;
}

const placeAt = (schedule: Schedule, time_s: number): number =>
  Math.max(
    schedule.findLastIndex((knot) => knot.at_s <= time_s),
    0,
  );

export function stretchAt(schedule: Schedule, time_s: number): Stretch {
  const index = placeAt(schedule, time_s);
  return { from_s: schedule[index]?.at_s ?? 0, to_s: schedule[index + 1]?.at_s ?? null };
}

/** Sets what holds throughout the stretch in which a time lies; the other stretches stay. */
export function withStretch(schedule: Schedule, time_s: number, value: number): Schedule {
  const position = placeAt(schedule, time_s);
  return schedule.map((knot, index) => (index === position ? { ...knot, value } : knot));
}

/** Sets what holds from a time on, up to the next planned change; what came before stays as it was. */
export function withChangeFrom(schedule: Schedule, time_s: number, value: number): Schedule {
  const at_s = Math.round(time_s);
  if (at_s <= 0) return withStretch(schedule, 0, value);
  const before = schedule.filter((knot) => knot.at_s < at_s);
  const cutsRamp = schedule.find((knot) => knot.at_s >= at_s)?.shape === 'ramp';
  const after = schedule.filter((knot) => knot.at_s > at_s + (cutsRamp ? STEP_AFTER_RAMP_S : 0));
  const change: Knot[] = cutsRamp
    ? [
        { at_s, value: scheduleValue(schedule, at_s), shape: 'ramp' },
        { at_s: at_s + STEP_AFTER_RAMP_S, value, shape: 'step' },
      ]
    : [{ at_s, value, shape: 'step' }];
  return [...before, ...change, ...after];
}
