/** A control over time as a file holds it. Beside the schema, so that what stands before the schema is fetched knows it too. */

/** Events of a run that a knot may count its time from, in the order in which they come. */
export const SCHEDULE_EVENTS = ['first-boil', 'first-drop'] as const;

export type ScheduleEvent = (typeof SCHEDULE_EVENTS)[number];

export interface Knot {
  /** Since heat on, or since the event named. */
  readonly at_s: number;
  readonly after?: ScheduleEvent | undefined;
  readonly value: number;
  /** Jumps at its time, or is reached at its time in a straight line. */
  readonly shape: 'step' | 'ramp';
}

export type Schedule = readonly Knot[];

/** Place of a knot's phase in the order of a plan: the start, then each event. */
export const phaseOrder = (after: ScheduleEvent | undefined): number =>
  after === undefined ? 0 : 1 + SCHEDULE_EVENTS.indexOf(after);
