import { describe, expect, it } from 'vitest';
import { followed } from '../../../sim/answers/forecast/followed.ts';
import { clockSchedule, NO_EVENTS, scheduleValue, type EventTimes, type Schedule } from '../../../sim/index.ts';
import { plan } from './made-up-stills.ts';

const withHeat = (setting: Schedule) => ({ ...plan, heat: { ...plan.heat, setting: [...setting] } });
const heatAt = (scenario: typeof plan, time_s: number, seen: EventTimes): number =>
  scheduleValue(clockSchedule(scenario.heat.setting, seen), time_s);
const DROPPED: EventTimes = { firstBoil: 1000, firstDrop: 1200 };

const stepped = withHeat([
  { at_s: 0, value: 1, shape: 'step' },
  { at_s: 0, after: 'first-drop', value: 0.6, shape: 'step' },
  { at_s: 600, after: 'first-drop', value: 0.4, shape: 'step' },
]);

describe('a plan as it was followed', () => {
  it('is the plan when nothing was turned', () => {
    expect(followed(stepped, [], DROPPED)).toEqual(stepped);
  });

  it('holds what was turned by hand until the next change of the plan', () => {
    const hand = followed(stepped, [{ control: 'heat', time_s: 1400, value: 0.5 }], DROPPED);
    expect([1100, 1300, 1500, 1900].map((time) => heatAt(hand, time, DROPPED))).toEqual([1, 0.6, 0.5, 0.4]);
  });

  it('goes on waiting for an event that has not come', () => {
    const hand = followed(stepped, [{ control: 'heat', time_s: 300, value: 0.9 }], NO_EVENTS);
    expect(heatAt(hand, 500, NO_EVENTS)).toBe(0.9);
    expect(heatAt(hand, 1300, DROPPED)).toBe(0.6);
  });

  it('moves a change of the plan to when it was made', () => {
    const late = followed(stepped, [{ control: 'heat', time_s: 1500, value: 0.6, place: 1 }], DROPPED);
    expect([1300, 1600, 1900].map((time) => heatAt(late, time, DROPPED))).toEqual([1, 0.6, 0.4]);
  });

  it('drops the rest of the plan when the heat is turned off for good', () => {
    const off = followed(stepped, [{ control: 'heat', time_s: 700, value: 0, isLast: true }], NO_EVENTS);
    expect(heatAt(off, 1900, DROPPED)).toBe(0);
  });

  it('cuts a ramp where it was turned', () => {
    const ramp = withHeat([
      { at_s: 0, value: 0, shape: 'step' },
      { at_s: 1000, value: 1, shape: 'ramp' },
    ]);
    const hand = followed(ramp, [{ control: 'heat', time_s: 500, value: 0.2 }], NO_EVENTS);
    expect(heatAt(hand, 400, NO_EVENTS)).toBeCloseTo(0.4);
    expect(heatAt(hand, 500, NO_EVENTS)).toBeCloseTo(0.2);
    expect(heatAt(hand, 1000, NO_EVENTS)).toBe(1);
  });

  it('turns the tap too, and leaves a held rate to its controller', () => {
    const tap = followed(plan, [{ control: 'tap', time_s: 60, value: 0.02 }], NO_EVENTS);
    expect(scheduleValue(clockSchedule(tap.cooling.flow_kg_s, NO_EVENTS), 120)).toBe(0.02);
    const held = { ...plan, heat: { ...plan.heat, control: 'hold-rate' as const } };
    expect(followed(held, [{ control: 'heat', time_s: 60, value: 0.5 }], NO_EVENTS).heat).toBe(held.heat);
  });
});
