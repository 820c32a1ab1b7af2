import { describe, expect, test } from 'vitest';
import { NO_EVENTS, rangeAt } from '../../../sim/index.ts';
import {
  fieldValue,
  liveControls,
  reachInWords,
  roomyEnd,
  type LiveControl,
} from '../../../src/state/live-controls.ts';
import { scenarioWith } from './made-up-run.ts';

const clock = (time_s: number) => `${time_s / 60} min`;
const planned = [
  { at_s: 0, value: 0.6, shape: 'step' },
  { at_s: 3600, value: 0.4, shape: 'step' },
] as const;

const control = (
  id: LiveControl['id'],
  input: unknown,
  reach: 'stretch' | 'from-here' = 'stretch',
  time_s = 0,
): LiveControl => {
  const scenario = scenarioWith(input);
  const found = liveControls(scenario, scenario, reach, time_s, NO_EVENTS).find((one) => one.id === id);
  if (!found) throw new Error(`no control ${id}`);
  return found;
};

describe('the heat', () => {
  test('shows what holds at the time mark', () => {
    expect(control('heat', { heat: { setting: planned } }).value).toBe(0.6);
    expect(control('heat', { heat: { setting: planned } }, 'stretch', 4000).value).toBe(0.4);
    expect(control('heat', { heat: { setting: planned } }, 'from-here', 4000).value).toBe(0.4);
  });

  test('turned for its stretch writes that stretch; turned from here writes a step at that minute', () => {
    const heat = control('heat', { heat: { setting: planned } });
    expect(fieldValue(heat, 1, 'stretch', 900)).toEqual([{ at_s: 0, value: 1, shape: 'step' }, planned[1]]);
    expect(fieldValue(heat, 1, 'from-here', 900)).toEqual([
      planned[0],
      { at_s: 900, value: 1, shape: 'step' },
      planned[1],
    ]);
  });

  test('says in words what a turn changes', () => {
    const level = control('heat', {});
    const heat = control('heat', { heat: { setting: planned } });
    expect(reachInWords(level, 'stretch', 0, clock)).toBe('Changes the whole run.');
    expect(reachInWords(level, 'from-here', 900, clock)).toBe('Changes the run from 15 min on.');
    expect(reachInWords(heat, 'stretch', 0, clock)).toBe('Changes the run from the start to 60 min.');
    expect(reachInWords(heat, 'stretch', 5400, clock)).toBe('Changes the run from 60 min on.');
    expect(reachInWords(heat, 'from-here', 900, clock)).toBe('Changes the run from 15 min to 60 min.');
    expect(reachInWords(heat, 'from-here', 5400, clock)).toBe('Changes the run from 90 min on.');
    expect(reachInWords(control('coil', {}), 'from-here', 900, clock)).toBe('');
  });

  test('becomes the distillate rate where a controller holds one', () => {
    const heat = control('heat', { heat: { control: 'hold-rate', targetRate_kg_s: 0.0005 } });
    expect([heat.path, heat.value, heat.schedule]).toEqual(['heat.targetRate_kg_s', 0.0005, null]);
    expect(fieldValue(heat, 0.0006, 'from-here', 900)).toBe(0.0006);
  });
});

test('the ranges are those of the schema, so that no turn writes what the scenario refuses', () => {
  for (const input of [
    {},
    { heat: { control: 'hold-rate' } },
    { condenser: { length_m: 90 }, charge: { mass_kg: 0 } },
  ]) {
    const scenario = scenarioWith(input);
    for (const { path, range, sliderMax, value } of liveControls(scenario, scenario, 'stretch', 0, NO_EVENTS)) {
      expect(range, path).toEqual(rangeAt(path));
      expect(sliderMax, path).toBeLessThanOrEqual(range.max);
      expect(value, path).toBeGreaterThanOrEqual(range.min);
    }
  }
});

test('length and charge are plain numbers, whatever the time mark', () => {
  const coil = control('coil', { condenser: { length_m: 4 } }, 'from-here', 900);
  expect([coil.path, coil.value, fieldValue(coil, 6, 'from-here', 900)]).toEqual(['condenser.length_m', 4, 6]);
  expect(control('charge', { charge: { mass_kg: 1.5 } }).value).toBe(1.5);
});

test('the ends of the sliders stay where they were when the scenario was put on the bench', () => {
  const loaded = scenarioWith({ condenser: { length_m: 4 } });
  const ends = [1, 4, 9].map(
    (length_m) =>
      liveControls(scenarioWith({ condenser: { length_m } }), loaded, 'stretch', 0, NO_EVENTS)[2]?.sliderMax,
  );
  expect(ends).toEqual([10, 10, 10]);
  expect([4, 9, 40].map((value) => roomyEnd(value, 10))).toEqual([10, 20, 80]);
});

test('names say what the water does and what the condenser is', () => {
  expect(control('tap', {}).label).toBe('Tap');
  const straight = { condenser: { kind: 'jacketed-tube' }, cooling: { jacketSupply: 'barrel' } };
  expect([control('tap', straight).label, control('coil', straight).label]).toEqual(['Pump', 'Tube']);
});
