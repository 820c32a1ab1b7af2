/**
 * Edits of a schedule that leave it valid: the first knot at zero, times rising, values within range. Nothing is
 * changed in place; an edit that cannot be made answers the sentence that says why.
 */
import { LATEST_CHANGE_S, MOST_KNOTS, scheduleValue, type Schedule } from '../../../sim/index.ts';

export type Knot = Schedule[number];

export interface ScheduleLimits {
  /** SI. */
  readonly min: number;
  readonly max: number;
  /** Length of the run; a dragged knot stays within it. */
  readonly duration_s: number;
}

export type Edited =
  | { readonly ok: true; readonly schedule: Schedule; readonly index: number }
  | { readonly ok: false; readonly because: string };

/** Knots stand at least this far apart. */
export const LEAST_GAP_s = 1;

const done = (schedule: Schedule, index: number): Edited => ({ ok: true, schedule, index });
const refused = (because: string): Edited => ({ ok: false, because });
const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value));

const withKnot = (schedule: Schedule, index: number, knot: Knot): Schedule =>
  schedule.map((other, position) => (position === index ? knot : other));

/** Moves a knot as far as its neighbours, the run and the range let it. The first knot keeps its time. */
export function moveKnot(
  schedule: Schedule,
  index: number,
  at_s: number,
  value: number,
  { min, max, duration_s }: ScheduleLimits,
): Schedule {
  const knot = schedule[index];
  if (!knot || !Number.isFinite(at_s) || !Number.isFinite(value)) return schedule;
  const before = schedule[index - 1];
  const after = schedule[index + 1];
  const earliest = before ? before.at_s + LEAST_GAP_s : 0;
  const latest = before
    ? Math.max(earliest, Math.min(after ? after.at_s - LEAST_GAP_s : Infinity, Math.max(duration_s, knot.at_s)))
    : 0;
  return withKnot(schedule, index, {
    ...knot,
    at_s: clamp(Math.round(at_s), earliest, latest),
    value: clamp(value, min, max),
  });
}

/** Adds a knot on the line as it runs, so that nothing changes until it is moved. */
export function addKnot(schedule: Schedule, at_s: number): Edited {
  const whole_s = Math.round(clamp(at_s, 0, LATEST_CHANGE_S));
  if (schedule.length >= MOST_KNOTS) return refused(`A schedule has at most ${MOST_KNOTS} changes.`);
  const near = schedule.find((knot) => Math.abs(knot.at_s - whole_s) < LEAST_GAP_s);
  if (near) return refused('There is a change at that time already.');
  const next = schedule.findIndex((knot) => knot.at_s > whole_s);
  const index = next < 0 ? schedule.length : next;
  const shape = schedule[index]?.shape === 'ramp' ? 'ramp' : 'step';
  const knot: Knot = { at_s: whole_s, value: scheduleValue(schedule, whole_s), shape };
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

/** Takes a typed time, unless it breaks the order of the knots. `words` says times as the reader does. */
export function setKnotTime(
  schedule: Schedule,
  index: number,
  at_s: number,
  words: (time_s: number) => string,
): Edited {
  const knot = schedule[index];
  const before = schedule[index - 1];
  const after = schedule[index + 1];
  if (!knot || !before) return refused('The first setting holds from the start; its time is 0.');
  if (!Number.isFinite(at_s)) return refused('A time is needed.');
  if (at_s < before.at_s + LEAST_GAP_s)
    return refused(`The time must be later than the change before it, at ${words(before.at_s)}.`);
  if (after && at_s > after.at_s - LEAST_GAP_s)
    return refused(`The time must be earlier than the change after it, at ${words(after.at_s)}.`);
  if (at_s > LATEST_CHANGE_S) return refused(`The time must be at most ${words(LATEST_CHANGE_S)}.`);
  return done(withKnot(schedule, index, { ...knot, at_s }), index);
}

/** What keeps a schedule from being valid, or `null`. */
export function scheduleProblem(schedule: Schedule, { min, max }: ScheduleLimits): string | null {
  if (schedule.length === 0) return 'A schedule needs at least one setting.';
  if (schedule.length > MOST_KNOTS) return `A schedule has at most ${MOST_KNOTS} changes.`;
  for (const [index, knot] of schedule.entries()) {
    const before = schedule[index - 1];
    if (index === 0 && knot.at_s !== 0) return 'The first setting must hold from the start.';
    if (before && !(knot.at_s > before.at_s)) return 'Each change must come later than the one before it.';
    if (!(knot.at_s <= LATEST_CHANGE_S)) return 'A change comes too late.';
    if (!(knot.value >= min && knot.value <= max)) return 'A value lies outside the allowed range.';
  }
  return null;
}
