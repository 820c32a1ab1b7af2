/** The plan as it was followed: heat and tap turned by hand, at the times at which they were turned. */
import { clockSchedule, scheduleValue, type ClockKnot, type EventTimes } from '../../run/schedule-value.ts';
import { phaseOrder, type Schedule, type ScheduleEvent } from '../../scenario/knot.ts';
import type { Scenario } from '../../scenario/scenario.ts';

export interface Turn {
  readonly control: 'heat' | 'tap';
  /** Since the heat went on. */
  readonly time_s: number;
  /** Heat setting, share of the rated power; or tap flow, kg/s. */
  readonly value: number;
  /** The change of the plan that this carried out, by its place; it falls away at its planned time. */
  readonly place?: number | undefined;
  /** Nothing of the plan comes after it: the heat was turned off for good. */
  readonly isLast?: boolean | undefined;
}

const isAwaited = (after: ScheduleEvent | undefined, { firstBoil, firstDrop }: EventTimes): boolean => {
  if (after === undefined || firstDrop !== null) return false;
  return after === 'first-drop' || firstBoil === null;
};

/** The clock's plan with one change by hand: what was planned for later still comes. */
function turned(knots: readonly ClockKnot[], { time_s, value, isLast }: Turn): readonly ClockKnot[] {
  const before = knots.filter(({ at_s }) => at_s <= time_s);
  const later = isLast === true ? [] : knots.filter(({ at_s }) => at_s > time_s);
  const cutsRamp = knots.find(({ at_s }) => at_s > time_s)?.shape === 'ramp';
  const until: readonly ClockKnot[] = cutsRamp
    ? [{ at_s: time_s, value: scheduleValue(knots, time_s), shape: 'ramp' }]
    : [];
  return [...before, ...until, { at_s: time_s, value, shape: 'step' }, ...later];
}

function followedSchedule(plan: Schedule, turns: readonly Turn[], seen: EventTimes): Schedule {
  if (turns.length === 0) return plan;
  // The first knot says what holds from the start, whatever was done later.
  const left = plan.filter((_, place) => place === 0 || !turns.some((turn) => turn.place === place));
  const awaited = turns.some(({ isLast }) => isLast) ? [] : left.filter(({ after }) => isAwaited(after, seen));
  const reached = left.filter(({ after }) => !isAwaited(after, seen));
  const clock = clockSchedule(reached, seen).map(({ at_s, value, shape }): ClockKnot => ({ at_s, value, shape }));
  const done = [...turns].sort((a, b) => a.time_s - b.time_s).reduce<readonly ClockKnot[]>(turned, clock);
  return [...done, ...[...awaited].sort((a, b) => phaseOrder(a.after) - phaseOrder(b.after))];
}

/**
 * The scenario with the changes made by hand. A change that waits for an event which has been seen stands at its time
 * by the clock; one that still waits goes on waiting.
 * @param seen when the events of the real run came
 */
export function followed(scenario: Scenario, turns: readonly Turn[], seen: EventTimes): Scenario {
  const of = (control: Turn['control']) => turns.filter((turn) => turn.control === control);
  const { heat, cooling } = scenario;
  return {
    ...scenario,
    // A controller that holds a rate turns the heat itself.
    heat:
      heat.control === 'hold-rate' ? heat : { ...heat, setting: [...followedSchedule(heat.setting, of('heat'), seen)] },
    cooling: { ...cooling, flow_kg_s: [...followedSchedule(cooling.flow_kg_s, of('tap'), seen)] },
  };
}
