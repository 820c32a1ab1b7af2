import { createRoot } from 'solid-js';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { createBench } from '../../../src/state/bench.ts';
import { lengthOf, USUAL_MARGIN } from '../../../src/state/length-that-holds.ts';
import type { EnoughLength } from '../../../sim/index.ts';
import type { RunClient } from '../../../src/workers/run-client.ts';
import { DEFAULT_MARGIN, type Scenario } from '../../../sim/index.ts';
import { eventOf, madeUpRun, scenarioWith } from './made-up-run.ts';

const events = [eventOf('vapour-escapes', 2820, { severity: 'alarm' })];
const saved = {
  time_s: 0,
  speed: 60,
  units: 'metric',
  currency: null,
  theme: 'auto',
  foldedCharts: [],
  chart: 'oil',
  hintsDismissed: false,
  keysOn: true,
} as const;
const found: EnoughLength = { length_m: 6.4, because: null };

test.each([
  [2.311, 2.32],
  [2.32, 2.32],
  [11, 11],
])('a length of %d m is told as %d m, which is never too short', (length_m, told) => {
  expect(lengthOf({ length_m, typical_m: 2, verdict: 'holds' })).toEqual({ length_m: told, because: null });
});

test('where no length holds it is told why', () => {
  const none = { length_m: null, verdict: 'pressure' } as const;
  expect(lengthOf({ ...none, typical_m: null })).toEqual({ length_m: null, because: 'pressure' });
  expect(lengthOf({ ...none, typical_m: 2 })).toEqual({ length_m: 2, because: null });
});

test('the question is the very one that the place for condensers begins with', () => {
  expect(USUAL_MARGIN).toBe(DEFAULT_MARGIN);
});

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A bench whose every run leaks, and what it has asked for. */
function leakyBench(
  check: (parts: {
    bench: ReturnType<typeof createBench>;
    searches: AbortSignal[];
    answer: (index: number) => Promise<void>;
  }) => Promise<void>,
) {
  return createRoot(async (dispose) => {
    const searches: AbortSignal[] = [];
    const answers: ((found: EnoughLength) => void)[] = [];
    const client: RunClient = {
      run: (scenario) =>
        Promise.resolve({ kind: 'ran', result: madeUpRun({ scenario: scenario as Scenario, events }) }),
      openingExample: () => Promise.resolve(null),
      examples: () => Promise.resolve([]),
    };
    const bench = createBench({
      client,
      lengthThatHolds: (_, signal) => {
        searches.push(signal);
        return new Promise((resolve) => answers.push(resolve));
      },
      clock: { now: () => 0, nextFrame: () => 0, cancelFrame: () => undefined },
      first: madeUpRun({ scenario: scenarioWith({ condenser: { length_m: 2 } }), events }),
      still: { id: 'a', touched: false, visit: null },
      saved,
      paper: { onPaper: () => false, readyBefore: () => undefined, print: () => Promise.resolve() },
    });
    await check({
      bench,
      searches,
      answer: async (index) => {
        answers[index]?.(found);
        await vi.advanceTimersByTimeAsync(0);
      },
    });
    dispose();
  });
}

test('a run that leaks is followed by one search, once the bench is quiet', () =>
  leakyBench(async ({ bench, searches, answer }) => {
    expect(searches).toHaveLength(0);
    await vi.advanceTimersByTimeAsync(1000);
    expect(searches).toHaveLength(1);
    await answer(0);
    expect(bench.holds()).toEqual(found);
  }));

test('a change gives up the search for the still before it, and what it finds is not told', () =>
  leakyBench(async ({ bench, searches, answer }) => {
    await vi.advanceTimersByTimeAsync(1000);
    bench.change('pot.water_kg', 5);
    expect(searches[0]?.aborted).toBe(true);
    await answer(0);
    expect(bench.holds()).toBeNull();
    await vi.advanceTimersByTimeAsync(1000);
    await answer(1);
    expect(bench.holds()).toEqual(found);
  }));

test('another length of the same tube needs no other search, another still does', () =>
  leakyBench(async ({ bench, searches, answer }) => {
    await vi.advanceTimersByTimeAsync(1000);
    await answer(0);
    bench.change('condenser.length_m', 3);
    await vi.advanceTimersByTimeAsync(1000);
    expect(searches).toHaveLength(1);
    expect(bench.holds()).toEqual(found);
    bench.change('pot.water_kg', 5);
    expect(bench.holds()).toBeNull();
    await vi.advanceTimersByTimeAsync(1000);
    expect(searches).toHaveLength(2);
  }));
