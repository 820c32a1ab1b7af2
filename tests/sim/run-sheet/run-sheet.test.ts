import { describe, expect, it } from 'vitest';
import {
  englishReader,
  exampleScenario,
  NOTHING_SEEN,
  runSheet,
  runSheetMessages,
  simulate,
  THIN_SPACE,
  type SheetState,
  type SheetStep,
} from '../../../sim/index.ts';

const example = exampleScenario('gentle-lavender');
const result = simulate({ ...example, advanced: { ...example.advanced, step_s: 5, segments: 30 } });
const planned_s = result.summary.firstDrop_s as number;
const sheetOf = (state: Partial<SheetState> = {}): readonly SheetStep[] =>
  runSheet(result, { ...NOTHING_SEEN, ...state });
const step = (steps: readonly SheetStep[], kind: SheetStep['kind']) => steps.find((each) => each.kind === kind);

describe('the run sheet', () => {
  it('goes from filling to cooling down, in the order of its times', () => {
    const steps = sheetOf();
    expect(steps.map(({ kind }) => kind).slice(0, 4)).toEqual(['fill', 'heat-on', 'first-drop', 'heat']);
    expect(steps.slice(-2).map(({ kind }) => kind)).toEqual(['stop', 'shut-down']);
    expect(steps.every(({ at_s }, index) => at_s >= (steps[index - 1]?.at_s ?? 0))).toBe(true);
    expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
  });

  it('moves what waits for the first drop to when it fell, and lets nothing ring before', () => {
    expect(step(sheetOf(), 'heat')).toMatchObject({ at_s: planned_s, rings: null });
    expect(step(sheetOf({ firstDrop_s: planned_s + 600 }), 'heat')).toMatchObject({
      at_s: planned_s + 600,
      rings: 'notice',
    });
  });

  it('counts the receivers that the distillate fills', () => {
    const steps = sheetOf({ receiver_kg: 1 }).filter(({ kind }) => kind === 'receiver');
    expect(steps).toHaveLength(Math.floor(result.summary.hydrosol_kg));
    expect(steps.every(({ rings }) => rings === 'alarm')).toBe(true);
  });

  it('warns of a tub that was read as scalding, and of readings that are missing', () => {
    const read = sheetOf({ firstDrop_s: planned_s, lastReading_s: 3000, tub: { value_K: 334, time_s: 3000 } });
    expect(step(read, 'tub-hot')).toMatchObject({ id: 'tub-hot-read', at_s: 3000, rings: 'alarm' });
    expect(step(read, 'no-reading')).toMatchObject({ at_s: 4500, rings: 'notice' });
    expect(step(sheetOf({ tub: { value_K: 330, time_s: 3000 } }), 'tub-hot')).toBeUndefined();
  });

  it('warns in time of a pot that runs dry', () => {
    const dry = simulate({ ...exampleScenario('juniper-dry-pot') });
    const low = dry.events.find(({ kind }) => kind === 'pot-low')?.time_s as number;
    expect(step(runSheet(dry, NOTHING_SEEN), 'pot-low')).toMatchObject({ at_s: low - 600, rings: 'alarm' });
  });

  it('says each step to readers of either units', () => {
    for (const units of ['metric', 'us'] as const) {
      const words = runSheetMessages(englishReader(units));
      const said = sheetOf({ receiver_kg: 1, firstDrop_s: planned_s, lastReading_s: 2000 }).map(words.step);
      expect(said.every(({ title, look }) => title !== '' && look !== '')).toBe(true);
      expect(said.some(({ title }) => title.includes(units === 'us' ? 'qt' : 'L'))).toBe(true);
    }
    const { due, when, step: say } = runSheetMessages(englishReader('metric'));
    const plain = (words: string) => words.replaceAll(THIN_SPACE, ' ');
    expect([due(240), due(-360), due(10)].map(plain)).toEqual(['Next, in 4 min', 'Due 6 min ago', 'Due now']);
    expect(plain(when({ at_s: 1620, range: { low: 1440, middle: 1620, high: 1860 } }))).toBe(
      '27 min (24 min to 31 min)',
    );
    expect(plain(say(step(sheetOf(), 'heat') as SheetStep).title)).toBe('Turn the heat to 50 % at the first drop');
  });
});
