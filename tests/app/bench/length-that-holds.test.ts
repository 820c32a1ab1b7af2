import { expect, test } from 'vitest';
import { lengthThatHolds } from '../../../src/app/length-that-holds.ts';
import type { RunClient } from '../../../src/worker/client.ts';
import type { Scenario } from '../../../sim/index.ts';
import { eventOf, madeUpRun, scenarioWith } from './made-up-run.ts';

const scenario = scenarioWith({ condenser: { length_m: 2 } });
const escape = eventOf('vapour-escapes', 2820, { severity: 'alarm' });

/** A still that holds from a length on. */
function stillThatNeeds(needed_m: number) {
  const tried: number[] = [];
  const client: RunClient = {
    run: () => Promise.reject(new Error('a search may hold up nothing')),
    runWhenIdle: (input) => {
      const { length_m } = (input as Scenario).condenser;
      tried.push(length_m);
      return Promise.resolve({ kind: 'ran', care: 'full', result: madeUpRun({ events: length_m < needed_m ? [escape] : [] }) });
    },
    examples: () => Promise.resolve([]),
    dispose: () => undefined,
  };
  return { client, tried };
}

test.each([2.3, 3.99, 4, 6.4, 11])('a still that needs %d m is told a length that holds and is hardly longer', async (needed_m) => {
  const { client, tried } = stillThatNeeds(needed_m);
  const found = (await lengthThatHolds(scenario, client, () => true))?.length_m ?? 0;
  expect(found).toBeGreaterThanOrEqual(needed_m - 1e-9);
  expect(found).toBeLessThanOrEqual(needed_m * 1.06 + 0.05);
  expect(tried.length).toBeLessThanOrEqual(8);
});

test('where even a far longer tube leaks no length is named', async () => {
  expect(await lengthThatHolds(scenario, stillThatNeeds(1000).client, () => true)).toEqual({ length_m: null });
});

test('the search ends without an answer once nobody wants it or a run fails', async () => {
  const { client, tried } = stillThatNeeds(11);
  expect(await lengthThatHolds(scenario, client, () => tried.length < 2)).toBeNull();
  expect(tried).toHaveLength(2);
  const failing: RunClient = { ...client, runWhenIdle: () => Promise.resolve({ kind: 'superseded' }) };
  expect(await lengthThatHolds(scenario, failing, () => true)).toBeNull();
});
