import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ScheduleReader, clockSchedule, scheduleValue, type EventTimes } from '../../../sim/run/schedule-value.ts';
import type { Knot, Schedule, ScheduleEvent } from '../../../sim/scenario/knot.ts';

const knot = (at_s: number, value: number, after?: ScheduleEvent, shape: Knot['shape'] = 'step'): Knot => ({
  at_s,
  ...(after === undefined ? {} : { after }),
  value,
  shape,
});

/** What a reader gives, second by second, to whom the events become known as they come. */
function readAsItHappens(schedule: Schedule, came: EventTimes, until: number): readonly number[] {
  const known: { firstBoil: number | null; firstDrop: number | null } = { firstBoil: null, firstDrop: null };
  const reader = new ScheduleReader(schedule, known);
  return Array.from({ length: until }, (_, second) => {
    if (came.firstBoil !== null && came.firstBoil <= second) known.firstBoil = came.firstBoil;
    if (came.firstDrop !== null && came.firstDrop <= second) known.firstDrop = came.firstDrop;
    return reader.at(second + 0.5);
  });
}

const TURNED_DOWN: Schedule = [knot(0, 1), knot(0, 0.5, 'first-drop')];

describe('a plan that waits for the first drop', () => {
  it('holds what stands before until the drop comes, whenever that is', () => {
    for (const firstDrop of [40, 75.25]) {
      const values = readAsItHappens(TURNED_DOWN, { firstBoil: 30, firstDrop }, 100);
      expect(values.findIndex((value) => value === 0.5)).toBe(Math.ceil(firstDrop));
      expect(values[0]).toBe(1);
      expect(values.at(-1)).toBe(0.5);
    }
  });

  it('holds it to the end where none comes', () => {
    expect(new Set(readAsItHappens(TURNED_DOWN, { firstBoil: 30, firstDrop: null }, 100))).toEqual(new Set([1]));
    expect(clockSchedule(TURNED_DOWN, { firstBoil: 30, firstDrop: null })).toEqual([
      { at_s: 0, value: 1, shape: 'step', place: 0 },
    ]);
  });

  it('lets fall what was planned by the clock for later', () => {
    const plan = [knot(0, 1), knot(50, 0.8), knot(20, 0.3, 'first-drop')];
    const came = { firstBoil: 30, firstDrop: 40 };
    const values = readAsItHappens(plan, came, 100);
    expect([values[45], values[55], values[65]]).toEqual([1, 1, 0.3]);
    expect(clockSchedule(plan, came).map(({ at_s, place }) => [at_s, place])).toEqual([
      [0, 0],
      [60, 2],
    ]);
  });

  it('begins an even change at its event, from what held then', () => {
    const plan = [knot(0, 1), knot(20, 0.5, 'first-drop', 'ramp')];
    const values = readAsItHappens(plan, { firstBoil: 30, firstDrop: 40 }, 100);
    expect([values[39], values[49], values[60]]).toEqual([1, expect.closeTo(1 - 0.5 * (9.5 / 20), 12), 0.5]);
  });

  it('cuts an even change that its event interrupts, and stays there', () => {
    const plan = [knot(0, 1), knot(80, 0.2, undefined, 'ramp'), knot(30, 0.1, 'first-drop')];
    const came = { firstBoil: 30, firstDrop: 40 };
    const values = readAsItHappens(plan, came, 100);
    expect([values[50], values[69], values[70]]).toEqual([expect.closeTo(0.6, 12), expect.closeTo(0.6, 12), 0.1]);
  });

  it('goes from the boil to the drop, also where both come at once', () => {
    const plan = [knot(0, 1), knot(0, 0.8, 'first-boil'), knot(0, 0.5, 'first-drop')];
    const apart = readAsItHappens(plan, { firstBoil: 30, firstDrop: 40 }, 60);
    expect([apart[29], apart[35], apart[45]]).toEqual([1, 0.8, 0.5]);
    const together = readAsItHappens(plan, { firstBoil: 30, firstDrop: 30 }, 60);
    expect([together[29], together[31]]).toEqual([1, 0.5]);
  });
});

describe('any plan', () => {
  const shape = fc.constantFrom('step' as const, 'ramp' as const);
  const phase = (after: ScheduleEvent | undefined) =>
    fc
      .uniqueArray(
        fc.record({ at_s: fc.integer({ min: after ? 0 : 1, max: 90 }), value: fc.integer({ min: 0, max: 9 }), shape }),
        { maxLength: 3, selector: ({ at_s }) => at_s },
      )
      .map((knots) =>
        knots.sort((a, b) => a.at_s - b.at_s).map((entry) => knot(entry.at_s, entry.value, after, entry.shape)),
      );
  /** An event comes at the end of a step. */
  const time = fc.integer({ min: 1, max: 120 });
  const came = fc.oneof(
    fc.constant<EventTimes>({ firstBoil: null, firstDrop: null }),
    time.map((firstBoil): EventTimes => ({ firstBoil, firstDrop: null })),
    fc.tuple(time, time).map(([a, b]): EventTimes => ({ firstBoil: Math.min(a, b), firstDrop: Math.max(a, b) })),
  );

  it('is read while it happens as it is written down afterwards', () => {
    fc.assert(
      fc.property(phase(undefined), phase('first-boil'), phase('first-drop'), came, (start, boil, drop, times) => {
        const plan = [knot(0, 5), ...start, ...boil, ...drop];
        const written = clockSchedule(plan, times);
        const read = readAsItHappens(plan, times, 130);
        read.forEach((value, second) => expect(value).toBeCloseTo(scheduleValue(written, second + 0.5), 9));
        for (const [index, { at_s }] of written.entries())
          expect(at_s).toBeGreaterThanOrEqual(written[index - 1]?.at_s ?? 0);
      }),
      { numRuns: 400 },
    );
  });
});
