/** A page as the reader opens it, on a device of the test's own: the bench with its shelf. */
import { createRoot } from 'solid-js';
import { vi } from 'vitest';
import { exampleScenario, readScenario, type Scenario } from '../../../sim/index.ts';
import { createBench, type Bench } from '../../../src/state/bench.ts';
import { keepBench } from '../../../src/state/kept-bench.ts';
import { SHELF } from '../../../src/state/kept-still.ts';
import type { KeptStore } from '../../../src/state/kept-store.ts';
import { openBench } from '../../../src/state/opening.ts';
import { bothStills } from '../../../src/state/shelf-both.ts';
import { createShelf, type Shelf } from '../../../src/state/shelf.ts';
import type { RunClient } from '../../../src/workers/run-client.ts';
import { madeUpRun } from '../bench/made-up-run.ts';

export const lavender = exampleScenario('gentle-lavender');
export const glass = exampleScenario('class-glass');

export const client: RunClient = {
  run: (input) => {
    const read = readScenario(input);
    return Promise.resolve(
      read.ok
        ? { kind: 'ran', result: madeUpRun({ scenario: read.scenario }) }
        : { kind: 'invalid', problems: read.problems },
    );
  },
  openingExample: () => Promise.resolve({ id: 'a', title: '', says: '', scenario: lavender }),
  examples: () => Promise.resolve([]),
};

export interface Window {
  readonly bench: Bench;
  readonly shelf: Shelf;
  readonly store: KeptStore;
  readonly told: string[];
  close(): void;
}

/** A page as the reader opens it. */
export async function openPage({ store, close }: { readonly store: KeptStore; close(): void }): Promise<Window> {
  const opening = openBench(store, client);
  await vi.advanceTimersByTimeAsync(3000);
  const opened = await opening;
  if (!opened.ok) throw new Error(opened.message);
  const { result, still, saved, isKept } = opened.opening;
  const told: string[] = [];
  const page = createRoot((dispose) => {
    const bench = createBench({
      client,
      lengthThatHolds: () => Promise.resolve(null),
      clock: { now: () => 0, nextFrame: () => 0, cancelFrame: () => undefined },
      first: result,
      still,
      saved,
      paper: { onPaper: () => false, readyBefore: () => undefined, print: () => Promise.resolve() },
    });
    const desk = bench.desk();
    const known = keepBench(bench, store, isKept ? desk : null);
    const tell = (message: string) => void told.push(message);
    const shelf = createShelf({ bench, opened: desk, store, known, tell, now: () => Date.now() });
    return { bench, shelf, dispose };
  });
  await vi.advanceTimersByTimeAsync(3000);
  return {
    ...page,
    store,
    told,
    close: () => {
      page.shelf.leave();
      close();
      page.dispose();
    },
  };
}

export const settled = () => vi.advanceTimersByTimeAsync(5000);
export const namesOn = ({ shelf }: Window) =>
  shelf
    .stills()
    .filter(({ touched, deleted_ms }) => touched && deleted_ms === null)
    .map(({ scenario }) => (scenario as Scenario).name);
export const joins = { [SHELF]: bothStills };
