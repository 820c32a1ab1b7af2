import { describe, expect, test } from 'vitest';
import { browserStorage, readSavedBench, type SavedBench } from '../../../src/state/storage.ts';

const kept: SavedBench = {
  scenario: { name: 'Tern Hollow' },
  time_s: 2820,
  speed: 300,
  units: 'us',
  theme: 'projector',
  foldedCharts: ['bed'],
  hintsDismissed: true,
  keysOn: false,
};

describe('what was kept', () => {
  test('comes back as it was', () => {
    expect(readSavedBench(structuredClone(kept))).toEqual(kept);
  });

  test('comes back in part where it is damaged', () => {
    const damaged = {
      scenario: 1,
      time_s: 'noon',
      speed: 7,
      units: 'stone',
      theme: null,
      foldedCharts: [1, 'oil'],
      hintsDismissed: 'yes',
    };
    expect(readSavedBench(damaged)).toEqual({
      scenario: 1,
      time_s: 0,
      speed: 60,
      units: 'metric',
      theme: 'auto',
      foldedCharts: ['oil'],
      hintsDismissed: false,
      keysOn: true,
    });
  });

  test.each([undefined, null, 5, 'text', [], {}])('is nothing where %j was kept', (value) => {
    expect(readSavedBench(value)).toBeNull();
  });
});

test('where there is no storage at all, loading says blocked and saving says no', async () => {
  const storage = browserStorage();
  expect(await storage.load()).toEqual({ kind: 'blocked' });
  expect(await storage.save(kept)).toBe(false);
});
