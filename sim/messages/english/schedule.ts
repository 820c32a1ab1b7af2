/** When a control changes, in English. */
import type { ScheduleEvent } from '../../scenario/knot.ts';
import type { Quantities } from '../quantities.ts';

const EVENTS: Readonly<Record<ScheduleEvent, string>> = {
  'first-boil': 'the first boil',
  'first-drop': 'the first drop',
};

export const schedule = ({ time }: Quantities) => {
  /** What a time counts from. */
  const origin = (after: ScheduleEvent | undefined): string => (after === undefined ? 'the start' : EVENTS[after]);
  return {
    origin,
    /** `26 min`, `the first drop`, `10 min after the first drop` */
    moment(at_s: number, after: ScheduleEvent | undefined): string {
      if (at_s === 0) return origin(after);
      return after === undefined ? time(at_s) : `${time(at_s)} after ${origin(after)}`;
    },
  };
};
