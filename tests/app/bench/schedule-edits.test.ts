import { describe, expect, test } from 'vitest';
import { stretchAt, withChangeFrom, withStretch } from '../../../src/state/schedule-edits.ts';
import { scheduleValue, type Schedule } from '../../../sim/index.ts';

const level: Schedule = [{ at_s: 0, value: 0.6, shape: 'step' }];
const stepped: Schedule = [...level, { at_s: 3600, value: 0.4, shape: 'step' }];
const ramped: Schedule = [...level, { at_s: 1000, value: 1, shape: 'ramp' }];

describe('reading a schedule', () => {
  test('a time lies in the stretch between two knots, the last of which lasts to the end', () => {
    expect(stretchAt(stepped, 60)).toEqual({ from_s: 0, to_s: 3600 });
    expect(stretchAt(stepped, 3600)).toEqual({ from_s: 3600, to_s: null });
  });
});

describe('changing a schedule', () => {
  test('a stretch is set as a whole; the others stay', () => {
    expect(withStretch(stepped, 1200, 0.9)).toEqual([{ at_s: 0, value: 0.9, shape: 'step' }, stepped[1]]);
    expect(withStretch(stepped, 5000, 0.9)).toEqual([stepped[0], { at_s: 3600, value: 0.9, shape: 'step' }]);
  });

  test('a change at a moment holds from there to the next planned change', () => {
    const changed = withChangeFrom(stepped, 1200.4, 1);
    expect(changed).toEqual([stepped[0], { at_s: 1200, value: 1, shape: 'step' }, stepped[1]]);
    expect([1199, 1200, 3600].map((time_s) => scheduleValue(changed, time_s))).toEqual([0.6, 1, 0.4]);
  });

  test('a change at the very start sets the first stretch', () => {
    expect(withChangeFrom(level, 0.3, 0.2)).toEqual([{ at_s: 0, value: 0.2, shape: 'step' }]);
  });

  test('a second change at the same moment takes the place of the first', () => {
    const twice = withChangeFrom(withChangeFrom(level, 600, 0.7), 600, 0.8);
    expect(twice).toEqual([level[0], { at_s: 600, value: 0.8, shape: 'step' }]);
  });

  test('a change on a ramp leaves the climb before it as it was, however often it is turned', () => {
    const once = withChangeFrom(ramped, 400, 0.1);
    const twice = withChangeFrom(once, 400, 0.2);
    expect(scheduleValue(twice, 200)).toBeCloseTo(scheduleValue(ramped, 200), 12);
    expect(scheduleValue(twice, 400)).toBeCloseTo(scheduleValue(ramped, 400), 12);
    expect(scheduleValue(twice, 401)).toBe(0.2);
    expect(twice.map(({ at_s }) => at_s)).toEqual([0, 400, 401, 1000]);
  });

  test('the schedule one started from is left alone', () => {
    const before = structuredClone(stepped);
    withChangeFrom(stepped, 50, 0.1);
    withStretch(stepped, 50, 0.1);
    expect(stepped).toEqual(before);
  });
});
