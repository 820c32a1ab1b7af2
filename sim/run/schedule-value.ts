/**
 * Value of a schedule at a time. Knots may count from an event of the run, so a plan has phases: from the start, after
 * the first boil, after the first drop. When the event of a phase comes, the setting then in force stays until the
 * phase's first knot; what was planned for earlier phases and has not come yet falls away. An event that never comes
 * leaves the phase before it to the end.
 */
import { lerp } from '../maths/interpolate.ts';
import type { Knot, Schedule, ScheduleEvent } from '../scenario/knot.ts';
import type { Summary } from './result.ts';

/** When the events came that plans count from, s; `null` where they have not come. */
export interface EventTimes {
  readonly firstBoil: number | null;
  readonly firstDrop: number | null;
}

export const eventTimes = ({ firstBoil_s, firstDrop_s }: Pick<Summary, 'firstBoil_s' | 'firstDrop_s'>): EventTimes => ({
  firstBoil: firstBoil_s,
  firstDrop: firstDrop_s,
});

/** Before anything has happened. */
export const NO_EVENTS: EventTimes = { firstBoil: null, firstDrop: null };

const TIME_OF: Readonly<Record<ScheduleEvent, keyof EventTimes>> = {
  'first-boil': 'firstBoil',
  'first-drop': 'firstDrop',
};

/** Knots of a plan that count from the same moment: from the place `first` up to `end`, which is the next phase's. */
interface PlanPhase {
  readonly after: ScheduleEvent | undefined;
  readonly first: number;
  readonly end: number;
}

function planPhases(schedule: Schedule): readonly PlanPhase[] {
  const firsts = schedule.flatMap((knot, index) =>
    knot.after === schedule[index - 1]?.after && index > 0 ? [] : index,
  );
  return firsts.map((first, index) => ({
    after: schedule[first]?.after,
    first,
    end: firsts[index + 1] ?? schedule.length,
  }));
}

/** When a phase begins, s; `null` where its event has not come. */
const beginningOf = ({ after }: PlanPhase, times: EventTimes): number | null =>
  after === undefined ? 0 : times[TIME_OF[after]];

export interface Phase extends PlanPhase {
  readonly begins_s: number;
}

/** The phases of a plan that began in a run. */
export const phasesBegun = (schedule: Schedule, times: EventTimes): readonly Phase[] =>
  planPhases(schedule).flatMap((phase) => {
    const begins_s = beginningOf(phase, times);
    return begins_s === null ? [] : { ...phase, begins_s };
  });

/** A knot that counts from no event. */
export interface ClockKnot extends Knot {
  readonly after?: undefined;
}

/** A schedule by the clock: times rise, and two knots may share one. */
export type ClockSchedule = readonly ClockKnot[];

/** A knot of a plan at the time that it had in a run. */
export interface PlacedKnot extends ClockKnot {
  /** Its place in the plan; `null` for a corner of the line where an event cut a ramp short or let one begin. */
  readonly place: number | null;
}

/** A plan as a run followed it: what fell away or never came is left out. */
export function clockSchedule(schedule: Schedule, times: EventTimes): readonly PlacedKnot[] {
  const knots: PlacedKnot[] = [];
  for (const { first, end, begins_s, after } of phasesBegun(schedule, times)) {
    const opening = schedule[first];
    if (after !== undefined && opening) {
      const value = scheduleValue(knots, begins_s);
      const pending = knots.findIndex(({ at_s }) => at_s > begins_s);
      const cutsRamp = knots[pending]?.shape === 'ramp';
      if (pending >= 0) knots.splice(pending);
      if (cutsRamp || (opening.shape === 'ramp' && opening.at_s > 0))
        knots.push({ at_s: begins_s, value, shape: cutsRamp ? 'ramp' : 'step', place: null });
    }
    for (const [index, { at_s, value, shape }] of schedule.slice(first, end).entries())
      knots.push({ at_s: begins_s + at_s, value, shape: at_s === 0 ? 'step' : shape, place: first + index });
  }
  return knots;
}

/** Value at any time: the last knot's value, or on the way to a ramp knot. */
export function scheduleValue(schedule: ClockSchedule, time_s: number): number {
  let index = 0;
  while (index + 1 < schedule.length && (schedule[index + 1]?.at_s ?? Infinity) <= time_s) index++;
  const here = schedule[index];
  const next = schedule[index + 1];
  if (!here) return NaN;
  if (!next || next.shape === 'step') return here.value;
  return lerp(here.value, next.value, (time_s - here.at_s) / (next.at_s - here.at_s));
}

/** Reads a schedule at rising times, while the run finds out when its events come. */
export class ScheduleReader {
  private readonly schedule: Schedule;
  private readonly times: EventTimes;
  private readonly phases: readonly PlanPhase[];
  /** Phases that have begun, and when the last of them did, s. */
  private begun = 0;
  private begins = 0;
  /** Knot reached last, and the first that belongs to a later phase. */
  private index = -1;
  private end = 0;
  /** Since when which value holds, or is left for that of the next knot. */
  private since = 0;
  private value = NaN;

  /** @param times those of the run, read whenever the schedule is */
  constructor(schedule: Schedule, times: EventTimes) {
    this.schedule = schedule;
    this.times = times;
    this.phases = planPhases(schedule);
  }

  at(time_s: number): number {
    for (let index = this.begun; index < this.phases.length; index++) {
      const phase = this.phases[index] as PlanPhase;
      const begins = beginningOf(phase, this.times);
      if (begins === null || begins > time_s) continue;
      this.value = this.valueAt(begins);
      this.since = begins;
      this.begins = begins;
      this.index = phase.first - 1;
      this.end = phase.end;
      this.begun = index + 1;
    }
    return this.valueAt(time_s);
  }

  /** Within the present phase. */
  private valueAt(time_s: number): number {
    let next = this.comingKnot();
    while (next && this.begins + next.at_s <= time_s) {
      this.index++;
      this.since = this.begins + next.at_s;
      this.value = next.value;
      next = this.comingKnot();
    }
    if (!next || next.shape === 'step') return this.value;
    return lerp(this.value, next.value, (time_s - this.since) / (this.begins + next.at_s - this.since));
  }

  private comingKnot(): Knot | undefined {
    return this.index + 1 < this.end ? this.schedule[this.index + 1] : undefined;
  }

  /** Time of the next knot, s; infinite where none is known. */
  nextChange(): number {
    const next = this.comingKnot();
    return next ? this.begins + next.at_s : Infinity;
  }
}
