import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clockSchedule, NO_EVENTS, readScenario, scheduleValue, type Schedule } from '../../../sim/index.ts';
import {
  addKnot,
  moveKnot,
  removeKnot,
  scheduleProblem,
  setKnotAfter,
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

const LIMITS = { min: 0, max: 1, duration_s: 7200, times: NO_EVENTS };
/** Times of a run in which both events came. */
const CAME = { firstBoil: 1500, firstDrop: 2000 };
const THREE: Schedule = [
  { at_s: 0, value: 1, shape: 'step' },
  { at_s: 1800, value: 0.6, shape: 'step' },
  { at_s: 3600, value: 0.9, shape: 'ramp' },
];
const valueAt = (schedule: Schedule, time_s: number, times = NO_EVENTS): number =>
  scheduleValue(clockSchedule(schedule, times), time_s);
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
      const added = scheduleOf(addKnot(THREE, at_s, NO_EVENTS));
      expect(added).toHaveLength(4);
      for (let time_s = 0; time_s <= 7200; time_s += 100)
        expect(valueAt(added, time_s)).toBeCloseTo(valueAt(THREE, time_s), 12);
    }
    expect(scheduleOf(addKnot(THREE, 2700, NO_EVENTS))[2]).toEqual({ at_s: 2700, value: 0.75, shape: 'ramp' });
  });

  it('refuses a second knot at one time', () => {
    expect(refusalOf(addKnot(THREE, 1800, NO_EVENTS))).toBe('There is a change at that time already.');
    expect(refusalOf(addKnot(THREE, 0.2, NO_EVENTS))).toBe('There is a change at that time already.');
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

describe('counting from an event', () => {
  const [first, second, third] = [THREE[0], THREE[1], THREE[2]];

  it('lets a change come with its event, and puts it after those by the clock', () => {
    expect(setKnotAfter(THREE, 1, 'first-drop', CAME)).toEqual({
      ok: true,
      schedule: [first, third, { at_s: 0, after: 'first-drop', value: 0.6, shape: 'step' }],
      index: 2,
    });
  });

  it('keeps how long an even change takes', () => {
    expect(scheduleOf(setKnotAfter(THREE, 2, 'first-boil', CAME))).toEqual([
      first,
      second,
      { at_s: 1800, after: 'first-boil', value: 0.9, shape: 'ramp' },
    ]);
  });

  it('finds a free minute where another change comes with the event', () => {
    const one = scheduleOf(setKnotAfter(THREE, 1, 'first-drop', CAME));
    const stepped = scheduleOf(toggleShape(one, 1));
    expect(scheduleOf(setKnotAfter(stepped, 1, 'first-drop', CAME)).map(({ at_s, after }) => [at_s, after])).toEqual([
      [0, undefined],
      [0, 'first-drop'],
      [60, 'first-drop'],
    ]);
  });

  it('goes back to the clock at the time that it had in the run', () => {
    const one = scheduleOf(setKnotAfter([...THREE.slice(0, 2)], 1, 'first-drop', CAME));
    expect(scheduleOf(setKnotAfter(one, 1, undefined, CAME))).toEqual([
      first,
      { at_s: 2000, value: 0.6, shape: 'step' },
    ]);
  });

  it('never takes the first setting from the start', () => {
    expect(refusalOf(setKnotAfter(THREE, 0, 'first-drop', CAME))).toContain('from the start');
  });

  it('adds a change after the event as counted from it, on the line as it runs', () => {
    const plan = scheduleOf(setKnotAfter(THREE, 2, 'first-drop', CAME));
    const added = addKnot(plan, 2900, CAME);
    expect(scheduleOf(added)[2]).toEqual({
      at_s: 900,
      after: 'first-drop',
      value: expect.closeTo(0.75, 12) as number,
      shape: 'ramp',
    });
    for (let time_s = 0; time_s <= 7200; time_s += 100)
      expect(valueAt(scheduleOf(added), time_s, CAME)).toBeCloseTo(valueAt(plan, time_s, CAME), 12);
  });

  it('moves a knot within its phase and the run', () => {
    const plan = scheduleOf(setKnotAfter(THREE, 1, 'first-drop', CAME));
    const limits = { ...LIMITS, times: CAME };
    expect(moveKnot(plan, 2, -50, 0.6, limits)[2]?.at_s).toBe(0);
    expect(moveKnot(plan, 2, 99_000, 0.6, limits)[2]?.at_s).toBe(5200);
  });
});

describe('any run of edits', () => {
  it('leaves a schedule that a scenario takes', () => {
    const index = fc.integer({ min: 0, max: 6 });
    const time = fc.double({ min: -500, max: 9000, noNaN: true });
    const after = fc.constantFrom(undefined, 'first-boil' as const, 'first-drop' as const);
    const edit = fc.oneof(
      fc.record({ do: fc.constant('move' as const), index, time, value: fc.double({ min: -2, max: 3, noNaN: true }) }),
      fc.record({ do: fc.constant('add' as const), time }),
      fc.record({ do: fc.constant('remove' as const), index }),
      fc.record({ do: fc.constant('toggle' as const), index }),
      fc.record({ do: fc.constant('type' as const), index, time }),
      fc.record({ do: fc.constant('count' as const), index, after }),
    );
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 25 }), fc.constantFrom(NO_EVENTS, CAME), (edits, times) => {
        let schedule: Schedule = THREE;
        for (const one of edits) {
          if (one.do === 'move') {
            schedule = moveKnot(schedule, one.index, one.time, one.value, { ...LIMITS, times });
            continue;
          }
          const edited =
            one.do === 'add'
              ? addKnot(schedule, one.time, times)
              : one.do === 'remove'
                ? removeKnot(schedule, one.index)
                : one.do === 'toggle'
                  ? toggleShape(schedule, one.index)
                  : one.do === 'count'
                    ? setKnotAfter(schedule, one.index, one.after, times)
                    : setKnotTime(schedule, one.index, one.time, formatDuration);
          if (edited.ok) schedule = edited.schedule;
        }
        expect(scheduleProblem(schedule, LIMITS)).toBe(null);
        expect(readScenario({ heat: { setting: schedule } }).ok).toBe(true);
      }),
      { numRuns: 300 },
    );
    expect(readScenario({ heat: { setting: scheduleOf(addKnot(THREE, 600, NO_EVENTS)) } }).ok).toBe(true);
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
    const backwards: Schedule = [
      { at_s: 0, value: 1, shape: 'step' },
      { at_s: 0, after: 'first-drop', value: 1, shape: 'step' },
      { at_s: 60, value: 1, shape: 'step' },
    ];
    expect(scheduleProblem(backwards, LIMITS)).toContain('order of what they count from');
  });
});

describe('the line of a schedule', () => {
  it('jumps at a step, runs straight to a ramp and holds to the end', () => {
    expect(scheduleLine(clockSchedule(THREE, NO_EVENTS), 7200)).toEqual([
      { at_s: 0, value: 1 },
      { at_s: 1800, value: 1 },
      { at_s: 1800, value: 0.6 },
      { at_s: 3600, value: 0.9 },
      { at_s: 7200, value: 0.9 },
    ]);
  });

  it('is cut at the end of a shorter run, on a ramp at the value it has there', () => {
    expect(scheduleLine(clockSchedule(THREE, NO_EVENTS), 2700).at(-1)).toEqual({
      at_s: 2700,
      value: expect.closeTo(0.75, 12) as number,
    });
    expect(scheduleLine(clockSchedule(THREE, NO_EVENTS), 900).at(-1)).toEqual({ at_s: 900, value: 1 });
  });

  it('passes through the value the model uses, at every time', () => {
    const corners = scheduleLine(clockSchedule(THREE, NO_EVENTS), 7200);
    for (let time_s = 50; time_s < 7200; time_s += 100) {
      const after = corners.findIndex(({ at_s }) => at_s > time_s);
      const [a, b] = [corners[after - 1], corners[after]];
      if (!a || !b) throw new Error('the line has a hole');
      expect(a.value + ((b.value - a.value) * (time_s - a.at_s)) / (b.at_s - a.at_s)).toBeCloseTo(
        valueAt(THREE, time_s),
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
