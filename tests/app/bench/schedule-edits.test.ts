import { describe, expect, test } from 'vitest';
import { stretchAt, withChangeFrom, withStretch } from '../../../src/state/schedule-edits.ts';
import { clockSchedule, NO_EVENTS, scheduleValue, type Schedule } from '../../../sim/index.ts';

const valueAt = (schedule: Schedule, time_s: number, times = NO_EVENTS): number =>
  scheduleValue(clockSchedule(schedule, times), time_s);

const level: Schedule = [{ at_s: 0, value: 0.6, shape: 'step' }];
const stepped: Schedule = [...level, { at_s: 3600, value: 0.4, shape: 'step' }];
const ramped: Schedule = [...level, { at_s: 1000, value: 1, shape: 'ramp' }];

describe('reading a schedule', () => {
  test('a time lies in the stretch between two knots, the last of which lasts to the end', () => {
    expect(stretchAt(stepped, 60, NO_EVENTS)).toEqual({ from_s: 0, to_s: 3600 });
    expect(stretchAt(stepped, 3600, NO_EVENTS)).toEqual({ from_s: 3600, to_s: null });
  });
});

describe('changing a schedule', () => {
  test('a stretch is set as a whole; the others stay', () => {
    expect(withStretch(stepped, 1200, 0.9, NO_EVENTS)).toEqual([{ at_s: 0, value: 0.9, shape: 'step' }, stepped[1]]);
    expect(withStretch(stepped, 5000, 0.9, NO_EVENTS)).toEqual([stepped[0], { at_s: 3600, value: 0.9, shape: 'step' }]);
  });

  test('a change at a moment holds from there to the next planned change', () => {
    const changed = withChangeFrom(stepped, 1200.4, 1, NO_EVENTS);
    expect(changed).toEqual([stepped[0], { at_s: 1200, value: 1, shape: 'step' }, stepped[1]]);
    expect([1199, 1200, 3600].map((time_s) => valueAt(changed, time_s))).toEqual([0.6, 1, 0.4]);
  });

  test('a change at the very start sets the first stretch', () => {
    expect(withChangeFrom(level, 0.3, 0.2, NO_EVENTS)).toEqual([{ at_s: 0, value: 0.2, shape: 'step' }]);
  });

  test('a second change at the same moment takes the place of the first', () => {
    const twice = withChangeFrom(withChangeFrom(level, 600, 0.7, NO_EVENTS), 600, 0.8, NO_EVENTS);
    expect(twice).toEqual([level[0], { at_s: 600, value: 0.8, shape: 'step' }]);
  });

  test('a change on a ramp leaves the climb before it as it was, however often it is turned', () => {
    const once = withChangeFrom(ramped, 400, 0.1, NO_EVENTS);
    const twice = withChangeFrom(once, 400, 0.2, NO_EVENTS);
    expect(valueAt(twice, 200)).toBeCloseTo(valueAt(ramped, 200), 12);
    expect(valueAt(twice, 400)).toBeCloseTo(valueAt(ramped, 400), 12);
    expect(valueAt(twice, 401)).toBe(0.2);
    expect(twice.map(({ at_s }) => at_s)).toEqual([0, 400, 401, 1000]);
  });

  test('the schedule one started from is left alone', () => {
    const before = structuredClone(stepped);
    withChangeFrom(stepped, 50, 0.1, NO_EVENTS);
    withStretch(stepped, 50, 0.1, NO_EVENTS);
    expect(stepped).toEqual(before);
  });
});

describe('a plan that waits for the first drop', () => {
  const plan: Schedule = [
    { at_s: 0, value: 1, shape: 'step' },
    { at_s: 5400, value: 0.8, shape: 'step' },
    { at_s: 0, after: 'first-drop', value: 0.5, shape: 'step' },
    { at_s: 1200, after: 'first-drop', value: 0.3, shape: 'ramp' },
  ];
  const dropped = { firstBoil: 1500, firstDrop: 1600.4 };

  test('has its stretches where the run had them', () => {
    expect(stretchAt(plan, 60, dropped)).toEqual({ from_s: 0, to_s: 1600.4 });
    expect(stretchAt(plan, 2000, dropped)).toEqual({ from_s: 1600.4, to_s: 2800.4 });
    expect(stretchAt(plan, 60, NO_EVENTS)).toEqual({ from_s: 0, to_s: 5400 });
  });

  test('is turned for the stretch that holds, whichever that is', () => {
    expect(withStretch(plan, 60, 0.9, dropped)[0]?.value).toBe(0.9);
    expect(withStretch(plan, 1700, 0.6, dropped)[2]).toEqual({
      at_s: 0,
      after: 'first-drop',
      value: 0.6,
      shape: 'step',
    });
  });

  test('takes a change before the drop by the clock, and one after it from the drop', () => {
    expect(withChangeFrom(plan, 900, 0.7, dropped)[1]).toEqual({ at_s: 900, value: 0.7, shape: 'step' });
    const later = withChangeFrom(plan, 4000.4, 0.2, dropped);
    expect(later.at(-1)).toEqual({ at_s: 2400, after: 'first-drop', value: 0.2, shape: 'step' });
    expect(later.slice(0, 4)).toEqual(plan);
  });

  test('keeps the climb or fall before a change that cuts it', () => {
    const cut = withChangeFrom(plan, 2200.4, 0.9, dropped);
    for (const time_s of [1700, 2000, 2200])
      expect(valueAt(cut, time_s, dropped)).toBeCloseTo(valueAt(plan, time_s, dropped), 12);
    expect(valueAt(cut, 2201.4, dropped)).toBeCloseTo(0.9, 12);
  });
});
