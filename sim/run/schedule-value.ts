/** Value of a schedule at a time. A cursor moves forward with the run, so reading costs nothing. */
import { lerp } from '../maths/interpolate.ts';
import type { Schedule } from '../scenario/field.ts';

/** Value at any time: the last knot's value, or on the way to a ramp knot. */
export function scheduleValue(schedule: Schedule, time_s: number): number {
  let index = 0;
  while (index + 1 < schedule.length && (schedule[index + 1]?.at_s ?? Infinity) <= time_s) index++;
  return valueFrom(schedule, index, time_s);
}

function valueFrom(schedule: Schedule, index: number, time_s: number): number {
  const here = schedule[index];
  const next = schedule[index + 1];
  if (!here) return NaN;
  if (!next || next.shape === 'step') return here.value;
  return lerp(here.value, next.value, (time_s - here.at_s) / (next.at_s - here.at_s));
}

/** Reads a schedule at rising times. */
export class ScheduleReader {
  private index = 0;

  private readonly schedule: Schedule;

  constructor(schedule: Schedule) {
    this.schedule = schedule;
  }

  at(time_s: number): number {
    while (this.index + 1 < this.schedule.length && (this.schedule[this.index + 1]?.at_s ?? Infinity) <= time_s)
      this.index++;
    return valueFrom(this.schedule, this.index, time_s);
  }

  /** Time of the next knot, s; infinite after the last. */
  nextChange(): number {
    return this.schedule[this.index + 1]?.at_s ?? Infinity;
  }
}
