import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readScenario, scheduleValue, type Schedule } from '../../../sim/index.ts';
import {
  addKnot,
  moveKnot,
  removeKnot,
  scheduleProblem,
  setKnotTime,
  toggleShape,
  type Edited,
} from '../../../src/charts/schedule/schedule-edit.ts';
import {
  scheduleDomain,
  scheduleLine,
  snapValue,
  timeStep,
  valueStep,
} from '../../../src/charts/schedule/schedule-line.ts';
import { displayUnit, formatDuration } from '../../../sim/units/index.ts';

const LIMITS = { min: 0, max: 1, duration_s: 7200 };
const THREE: Schedule = [
  { at_s: 0, value: 1, shape: 'step' },
  { at_s: 1800, value: 0.6, shape: 'step' },
  { at_s: 3600, value: 0.9, shape: 'ramp' },
];
const scheduleOf = (edited: Edited): Schedule => {
  if (!edited.ok) throw new Error(edited.because);
  return edited.schedule;
};
const refusalOf = (edited: Edited): string => (edited.ok ? 'was taken' : edited.because);

describe('moving a knot', () => {
  it('takes time and value together and leaves the others and the original alone', () => {
    const moved = moveKnot(THREE, 1, 1500, 0.4, LIMITS);
    expect(moved[1]).toEqual({ at_s: 1500, value: 0.4, shape: 'step' });
    expect(moved[0]).toBe(THREE[0]);
    expect(THREE[1]?.at_s).toBe(1800);
  });

  it('stops at its neighbours, at the run and at the range', () => {
    expect(moveKnot(THREE, 1, 9000, 7, LIMITS)[1]).toEqual({ at_s: 3599, value: 1, shape: 'step' });
    expect(moveKnot(THREE, 1, -50, -7, LIMITS)[1]).toEqual({ at_s: 1, value: 0, shape: 'step' });
    expect(moveKnot(THREE, 2, 99_000, 0.9, LIMITS)[2]?.at_s).toBe(7200);
  });

  it('keeps the first knot at zero', () => {
    expect(moveKnot(THREE, 0, 600, 0.8, LIMITS)[0]).toEqual({ at_s: 0, value: 0.8, shape: 'step' });
  });

  it('ignores what is no number and no knot', () => {
    expect(moveKnot(THREE, 1, NaN, 0.5, LIMITS)).toBe(THREE);
    expect(moveKnot(THREE, 8, 100, 0.5, LIMITS)).toBe(THREE);
  });
});

describe('adding a knot', () => {
  it('changes nothing about the line, in a flat part or on a ramp', () => {
    for (const at_s of [900, 2700, 5000]) {
      const added = scheduleOf(addKnot(THREE, at_s));
      expect(added).toHaveLength(4);
      for (let time_s = 0; time_s <= 7200; time_s += 100)
        expect(scheduleValue(added, time_s)).toBeCloseTo(scheduleValue(THREE, time_s), 12);
    }
    expect(scheduleOf(addKnot(THREE, 2700))[2]).toEqual({ at_s: 2700, value: 0.75, shape: 'ramp' });
  });

  it('refuses a second knot at one time', () => {
    expect(refusalOf(addKnot(THREE, 1800))).toBe('There is a change at that time already.');
    expect(refusalOf(addKnot(THREE, 0.2))).toBe('There is a change at that time already.');
  });
});

describe('removing and reshaping a knot', () => {
  it('removes any but the first and says which knot stands before', () => {
    expect(removeKnot(THREE, 1)).toEqual({ ok: true, schedule: [THREE[0], THREE[2]], index: 0 });
    expect(refusalOf(removeKnot(THREE, 0))).toContain('cannot be removed');
  });

  it('switches between a jump and a straight line and back', () => {
    const ramp = scheduleOf(toggleShape(THREE, 1));
    expect(ramp[1]?.shape).toBe('ramp');
    expect(scheduleOf(toggleShape(ramp, 1))).toEqual(THREE);
    expect(refusalOf(toggleShape(THREE, 0))).toContain('from the start');
  });
});

describe('typing a time', () => {
  it('takes one between the neighbours, also beyond the end of the run', () => {
    expect(scheduleOf(setKnotTime(THREE, 2, 9000, formatDuration))[2]?.at_s).toBe(9000);
  });

  it('says which neighbour is in the way', () => {
    expect(refusalOf(setKnotTime(THREE, 2, 1200, formatDuration))).toBe(
      'The time must be later than the change before it, at 30\u202fmin.',
    );
    expect(refusalOf(setKnotTime(THREE, 1, 3600, formatDuration))).toBe(
      'The time must be earlier than the change after it, at 1\u202fh.',
    );
    expect(refusalOf(setKnotTime(THREE, 0, 60, formatDuration))).toContain('its time is 0');
  });
});

describe('any run of edits', () => {
  it('leaves a schedule that a scenario takes', () => {
    const index = fc.integer({ min: 0, max: 6 });
    const time = fc.double({ min: -500, max: 9000, noNaN: true });
    const edit = fc.oneof(
      fc.record({ do: fc.constant('move' as const), index, time, value: fc.double({ min: -2, max: 3, noNaN: true }) }),
      fc.record({ do: fc.constant('add' as const), time }),
      fc.record({ do: fc.constant('remove' as const), index }),
      fc.record({ do: fc.constant('toggle' as const), index }),
      fc.record({ do: fc.constant('type' as const), index, time }),
    );
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 25 }), (edits) => {
        let schedule: Schedule = THREE;
        for (const one of edits) {
          if (one.do === 'move') {
            schedule = moveKnot(schedule, one.index, one.time, one.value, LIMITS);
            continue;
          }
          const edited =
            one.do === 'add'
              ? addKnot(schedule, one.time)
              : one.do === 'remove'
                ? removeKnot(schedule, one.index)
                : one.do === 'toggle'
                  ? toggleShape(schedule, one.index)
                  : setKnotTime(schedule, one.index, one.time, formatDuration);
          if (edited.ok) schedule = edited.schedule;
        }
        expect(scheduleProblem(schedule, LIMITS)).toBe(null);
      }),
      { numRuns: 300 },
    );
    expect(readScenario({ heat: { setting: scheduleOf(addKnot(THREE, 600)) } }).ok).toBe(true);
  });
});

describe('a schedule that came from elsewhere', () => {
  it('is checked before it is handed on', () => {
    const late: Schedule = [{ at_s: 5, value: 1, shape: 'step' }];
    const unsorted: Schedule = [...THREE, { at_s: 60, value: 1, shape: 'step' }];
    expect(scheduleProblem(late, LIMITS)).toContain('from the start');
    expect(scheduleProblem(unsorted, LIMITS)).toContain('later than the one before');
    expect(scheduleProblem([{ at_s: 0, value: 1.2, shape: 'step' }], LIMITS)).toContain('outside the allowed range');
    expect(scheduleProblem([{ at_s: 0, value: NaN, shape: 'step' }], LIMITS)).toContain('outside the allowed range');
    expect(scheduleProblem([], LIMITS)).toContain('at least one');
  });
});

describe('the line of a schedule', () => {
  it('jumps at a step, runs straight to a ramp and holds to the end', () => {
    expect(scheduleLine(THREE, 7200)).toEqual([
      { at_s: 0, value: 1 },
      { at_s: 1800, value: 1 },
      { at_s: 1800, value: 0.6 },
      { at_s: 3600, value: 0.9 },
      { at_s: 7200, value: 0.9 },
    ]);
  });

  it('is cut at the end of a shorter run, on a ramp at the value it has there', () => {
    expect(scheduleLine(THREE, 2700).at(-1)).toEqual({ at_s: 2700, value: expect.closeTo(0.75, 12) as number });
    expect(scheduleLine(THREE, 900).at(-1)).toEqual({ at_s: 900, value: 1 });
  });

  it('passes through the value the model uses, at every time', () => {
    const corners = scheduleLine(THREE, 7200);
    for (let time_s = 50; time_s < 7200; time_s += 100) {
      const after = corners.findIndex(({ at_s }) => at_s > time_s);
      const [a, b] = [corners[after - 1], corners[after]];
      if (!a || !b) throw new Error('the line has a hole');
      expect(a.value + ((b.value - a.value) * (time_s - a.at_s)) / (b.at_s - a.at_s)).toBeCloseTo(
        scheduleValue(THREE, time_s),
        12,
      );
    }
  });
});

describe('the axis of a schedule', () => {
  const share = displayUnit('1', 'metric', 'heat.setting');
  const flow = displayUnit('kg/s', 'metric', 'cooling.flow_kg_s');

  it('shows the whole range when the values fill it', () => {
    expect(scheduleDomain(undefined, THREE, share, 0, 1)).toEqual([0, expect.closeTo(100, 9)]);
  });

  it('keeps to the values where the range is far wider, with room to drag upwards', () => {
    const tap: Schedule = [{ at_s: 0, value: 0.025, shape: 'step' }];
    const [low, high] = scheduleDomain(undefined, tap, flow, 0, 2);
    expect(low).toBe(0);
    expect(high).toBeGreaterThan(1.5 * 1.2);
    expect(high).toBeLessThan(5);
  });

  it('steps by round numbers of the unit shown, stored without conversion noise', () => {
    expect(valueStep([0, 100])).toBe(1);
    expect(snapValue(0.6374, share, 1)).toBe(0.64);
    expect(timeStep(10_800)).toBe(60);
    expect(timeStep(1800)).toBe(10);
    expect(timeStep(120)).toBe(1);
  });
});
