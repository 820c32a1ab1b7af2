/** Changes to a control's schedule: set it for the whole run, or from one moment on. Nothing is changed in place. */
import type { Schedule } from '../../sim/index.ts';

type Knot = Schedule[number];

/** Seconds a step needs after a ramp that it cuts short; knots may not share a time. */
const STEP_AFTER_RAMP_S = 1;

/** The setting at a time: steps hold, ramps run in a straight line from the knot before. */
export function settingAt(schedule: Schedule, time_s: number): number {
  let held = schedule[0]?.value ?? 0;
  for (let index = 0; index < schedule.length; index++) {
    const here = schedule[index] as Knot;
    if (here.at_s <= time_s) {
      held = here.value;
      continue;
    }
    const before = schedule[index - 1];
    if (here.shape === 'ramp' && before) {
      const share = (time_s - before.at_s) / (here.at_s - before.at_s);
      return before.value + share * (here.value - before.value);
    }
    return held;
  }
  return held;
}

/** The first change planned after a time, or null. */
export const nextChangeAfter = (schedule: Schedule, time_s: number): number | null =>
  schedule.find((knot) => knot.at_s > time_s)?.at_s ?? null;

/** Sets what holds from the start; planned changes stay. */
export const withBase = (schedule: Schedule, value: number): Schedule =>
  schedule.map((knot, index) => (index === 0 ? { ...knot, value } : knot));

/** Sets what holds from a time on, up to the next planned change; what came before stays as it was. */
export function withChangeFrom(schedule: Schedule, time_s: number, value: number): Schedule {
  const at_s = Math.round(time_s);
  if (at_s <= 0) return withBase(schedule, value);
  const before = schedule.filter((knot) => knot.at_s < at_s);
  const cutsRamp = schedule.find((knot) => knot.at_s >= at_s)?.shape === 'ramp';
  const after = schedule.filter((knot) => knot.at_s > at_s + (cutsRamp ? STEP_AFTER_RAMP_S : 0));
  const change: Knot[] = cutsRamp
    ? [
        { at_s, value: settingAt(schedule, at_s), shape: 'ramp' },
        { at_s: at_s + STEP_AFTER_RAMP_S, value, shape: 'step' },
      ]
    : [{ at_s, value, shape: 'step' }];
  return [...before, ...change, ...after];
}

/** Leaves only what holds from the start. */
export const withoutChanges = (schedule: Schedule): Schedule => schedule.slice(0, 1);
