/**
 * Edits of a schedule that leave it valid: the first knot at zero, phases in their order, times rising within each, and
 * values within range. Nothing is changed in place; an edit that cannot be made answers the sentence that says why.
 */
import {
  clockSchedule,
  LATEST_CHANGE_S,
  MOST_KNOTS,
  phaseOrder,
  phasesBegun,
  scheduleValue,
  type EventTimes,
  type Knot,
  type Schedule,
  type ScheduleEvent,
} from '../../../sim/index.ts';

export interface ScheduleLimits {
  /** SI. */
  readonly min: number;
  readonly max: number;
  /** Length of the run; a dragged knot stays within it. */
  readonly duration_s: number;
  /** When the run's events came. */
  readonly times: EventTimes;
}

export type Edited =
  | { readonly ok: true; readonly schedule: Schedule; readonly index: number }
  | { readonly ok: false; readonly because: string };

/** Knots of a phase stand at least this far apart. */
export const LEAST_GAP_s = 1;
/** How much later a knot goes whose new place is taken. */
const NEXT_FREE_s = 60;

const done = (schedule: Schedule, index: number): Edited => ({ ok: true, schedule, index });
const refused = (because: string): Edited => ({ ok: false, because });
const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value));

const withKnot = (schedule: Schedule, index: number, knot: Knot): Schedule =>
  schedule.map((other, position) => (position === index ? knot : other));

/** A knot beside another, if it counts from the same moment. */
const neighbour = (schedule: Schedule, index: number, by: -1 | 1): Knot | undefined => {
  const other = schedule[index + by];
  return other?.after === schedule[index]?.after ? other : undefined;
};

/** When the moment came from which a knot counts, s; `null` where it has not come. */
export const beginning = (schedule: Schedule, index: number, times: EventTimes): number | null =>
  phasesBegun(schedule, times).find(({ first, end }) => index >= first && index < end)?.begins_s ?? null;

/**
 * Moves a knot as far as its neighbours, the run and the range let it. The first knot keeps its time.
 * @param at_s as the knot counts it
 */
export function moveKnot(
  schedule: Schedule,
  index: number,
  at_s: number,
  value: number,
  { min, max, duration_s, times }: ScheduleLimits,
): Schedule {
  const knot = schedule[index];
  if (!knot || !Number.isFinite(at_s) || !Number.isFinite(value)) return schedule;
  const before = neighbour(schedule, index, -1);
  const after = neighbour(schedule, index, 1);
  const earliest = before ? before.at_s + LEAST_GAP_s : 0;
  const inRun = Math.max(duration_s - (beginning(schedule, index, times) ?? 0), knot.at_s);
  const latest = index > 0 ? Math.max(earliest, Math.min(after ? after.at_s - LEAST_GAP_s : Infinity, inRun)) : 0;
  return withKnot(schedule, index, {
    ...knot,
    at_s: clamp(Math.round(at_s), earliest, latest),
    value: clamp(value, min, max),
  });
}

/**
 * Adds a knot on the line as it runs, so that nothing changes until it is moved.
 * @param time_s of the run; from an event that has come, and that the plan waits for, the knot counts too
 */
export function addKnot(schedule: Schedule, time_s: number, times: EventTimes): Edited {
  if (schedule.length >= MOST_KNOTS) return refused(`A schedule has at most ${MOST_KNOTS} changes.`);
  const within_s = clamp(time_s, 0, LATEST_CHANGE_S);
  const phase = phasesBegun(schedule, times).findLast(({ begins_s }) => begins_s <= within_s);
  if (!phase) return refused('A schedule needs at least one setting.');
  const { first, end, begins_s, after } = phase;
  const at_s = Math.round(within_s - begins_s);
  const own = schedule.slice(first, end);
  if (own.some((knot) => Math.abs(knot.at_s - at_s) < LEAST_GAP_s))
    return refused('There is a change at that time already.');
  const next = own.findIndex((knot) => knot.at_s > at_s);
  const index = next < 0 ? end : first + next;
  const knot: Knot = {
    at_s,
    ...(after === undefined ? {} : { after }),
    value: scheduleValue(clockSchedule(schedule, times), begins_s + at_s),
    shape: next >= 0 && own[next]?.shape === 'ramp' ? 'ramp' : 'step',
  };
  return done([...schedule.slice(0, index), knot, ...schedule.slice(index)], index);
}

export function removeKnot(schedule: Schedule, index: number): Edited {
  if (index <= 0) return refused('The first setting holds from the start and cannot be removed.');
  if (!schedule[index]) return refused('There is no such change.');
  return done(
    schedule.filter((_, position) => position !== index),
    index - 1,
  );
}

/** From a jump to a straight line and back. */
export function toggleShape(schedule: Schedule, index: number): Edited {
  const knot = schedule[index];
  if (!knot || index === 0) return refused('The first setting holds from the start.');
  return done(withKnot(schedule, index, { ...knot, shape: knot.shape === 'step' ? 'ramp' : 'step' }), index);
}

/** Time of a knot that is to count from another moment, before it is looked whether that is free. */
function timeFrom(schedule: Schedule, index: number, after: ScheduleEvent | undefined, times: EventTimes): number {
  const knot = schedule[index];
  if (!knot) return 0;
  if (after === undefined) return Math.round((beginning(schedule, index, times) ?? 0) + knot.at_s);
  if (knot.after !== undefined) return knot.at_s;
  // A change by the clock comes with its event; one that is reached evenly takes as long as it did.
  return knot.shape === 'ramp' ? knot.at_s - (neighbour(schedule, index, -1)?.at_s ?? 0) : 0;
}

/** Lets a knot count from another moment; it goes to the place where it then belongs. */
export function setKnotAfter(
  schedule: Schedule,
  index: number,
  after: ScheduleEvent | undefined,
  times: EventTimes,
): Edited {
  const knot = schedule[index];
  if (!knot || index === 0) return refused('The first setting holds from the start.');
  if (knot.after === after) return done(schedule, index);
  const others = schedule.filter((_, position) => position !== index);
  const isTaken = (time_s: number): boolean =>
    others.some((other) => other.after === after && Math.abs(other.at_s - time_s) < LEAST_GAP_s);
  let at_s = timeFrom(schedule, index, after, times);
  while (isTaken(at_s)) at_s += NEXT_FREE_s;
  if (at_s > LATEST_CHANGE_S) return refused('A change comes too late.');
  const { value, shape } = knot;
  const moved: Knot = { at_s, ...(after === undefined ? {} : { after }), value, shape };
  const next = others.findIndex(
    (other) => phaseOrder(other.after) > phaseOrder(after) || (other.after === after && other.at_s > at_s),
  );
  const place = next < 0 ? others.length : next;
  return done([...others.slice(0, place), moved, ...others.slice(place)], place);
}

/** Takes a typed time, unless it breaks the order of the knots. `words` says times as the reader does. */
export function setKnotTime(
  schedule: Schedule,
  index: number,
  at_s: number,
  words: (time_s: number) => string,
): Edited {
  const knot = schedule[index];
  if (!knot || index === 0) return refused('The first setting holds from the start; its time is 0.');
  const before = neighbour(schedule, index, -1);
  const after = neighbour(schedule, index, 1);
  if (!Number.isFinite(at_s) || at_s < 0) return refused('A time is needed.');
  if (before && at_s < before.at_s + LEAST_GAP_s)
    return refused(`The time must be later than the change before it, at ${words(before.at_s)}.`);
  if (after && at_s > after.at_s - LEAST_GAP_s)
    return refused(`The time must be earlier than the change after it, at ${words(after.at_s)}.`);
  if (at_s > LATEST_CHANGE_S) return refused(`The time must be at most ${words(LATEST_CHANGE_S)}.`);
  return done(withKnot(schedule, index, { ...knot, at_s }), index);
}

/** What keeps a schedule from being valid, or `null`. */
export function scheduleProblem(schedule: Schedule, { min, max }: Pick<ScheduleLimits, 'min' | 'max'>): string | null {
  if (schedule.length === 0) return 'A schedule needs at least one setting.';
  if (schedule.length > MOST_KNOTS) return `A schedule has at most ${MOST_KNOTS} changes.`;
  for (const [index, knot] of schedule.entries()) {
    const before = schedule[index - 1];
    if (index === 0 && (knot.at_s !== 0 || knot.after !== undefined))
      return 'The first setting must hold from the start.';
    if (before && phaseOrder(knot.after) < phaseOrder(before.after))
      return 'Changes must stand in the order of what they count from.';
    if (before && knot.after === before.after && !(knot.at_s > before.at_s))
      return 'Each change must come later than the one before it.';
    if (!(knot.at_s >= 0 && knot.at_s <= LATEST_CHANGE_S)) return 'A change comes too late.';
    if (!(knot.value >= min && knot.value <= max)) return 'A value lies outside the allowed range.';
  }
  return null;
}
