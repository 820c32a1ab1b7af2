import { createRoot, createSignal } from 'solid-js';
import { describe, expect, test } from 'vitest';
import { benchShape, keepBench, type SavedBench } from '../../../src/state/kept-bench.ts';
import type { KeptStore } from '../../../src/state/kept-store.ts';

const kept: SavedBench = {
  scenario: { name: 'Tern Hollow' },
  time_s: 2820,
  speed: 300,
  units: 'us',
  currency: 'GBP',
  theme: 'projector',
  foldedCharts: ['bed'],
  chart: 'drops',
  hintsDismissed: true,
  keysOn: false,
};
const read = (value: unknown) => benchShape.read(value, benchShape.version);

describe('the bench that was kept', () => {
  test('comes back as it was', () => {
    expect(read(structuredClone(kept))).toEqual(kept);
  });

  test('comes back in part where it is damaged', () => {
    const damaged = {
      scenario: 1,
      time_s: 'noon',
      speed: 7,
      units: 'stone',
      currency: 'toString',
      theme: null,
      foldedCharts: [1, 'oil'],
      chart: 'pie',
      hintsDismissed: 'yes',
    };
    expect(read(damaged)).toEqual({
      scenario: 1,
      time_s: 0,
      speed: 60,
      units: 'metric',
      currency: null,
      theme: 'auto',
      foldedCharts: ['oil'],
      chart: 'oil',
      hintsDismissed: false,
      keysOn: true,
    });
  });

  test.each([undefined, null, 5, 'text', [], {}])('is nothing where %j was kept', (value) => {
    expect(read(value)).toBeNull();
  });
});

test('the bench is kept when it changes, not when it opens', () => {
  const written: unknown[] = [];
  const store = {
    keep: (key: string, _: unknown, value: unknown) => written.push([key, value]),
  } as unknown as KeptStore;
  createRoot((dispose) => {
    const [bench, setBench] = createSignal(kept);
    keepBench(bench, store);
    queueMicrotask(() => setBench({ ...kept, time_s: 5 }));
    setTimeout(dispose);
  });
  return new Promise<void>((done) =>
    setTimeout(() => {
      expect(written).toEqual([['bench', { ...kept, time_s: 5 }]]);
      done();
    }, 5),
  );
});
