import { createRoot, createSignal } from 'solid-js';
import { describe, expect, test } from 'vitest';
import { benchShape, keepBench, type SavedBench } from '../../../src/state/kept-bench.ts';
import type { Desk } from '../../../src/state/kept-still.ts';
import type { KeptStore } from '../../../src/state/kept-store.ts';

const kept: SavedBench = {
  still: 'mb3k2x0a-000001-1',
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
    expect(read(structuredClone(kept))).toEqual({ ...kept, scenario: undefined });
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
      still: null,
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

describe('a bench', () => {
  const scenario = (name: string) => ({ name }) as unknown as Desk['scenario'];
  const still = { id: 'a', touched: false, visit: null };

  /** Puts one thing after the other on a bench; gives what was kept, by key. */
  async function keptOf(desks: readonly Desk[], opened: Desk | null): Promise<readonly (readonly [string, unknown])[]> {
    const written: (readonly [string, unknown])[] = [];
    const store = {
      keep: (key: string, _: unknown, value: unknown) => written.push([key, value]),
    } as unknown as KeptStore;
    await createRoot(async (dispose) => {
      const [desk, setDesk] = createSignal(desks[0] as Desk);
      keepBench({ desk, snapshot: () => ({ ...kept, still: desk().still.id }) }, store, opened);
      for (const next of desks.slice(1)) {
        await Promise.resolve();
        setDesk(next);
      }
      await Promise.resolve();
      dispose();
    });
    return written;
  }

  test('is kept when it changes, not when it opens, and its still under its own id', async () => {
    const first = { scenario: scenario('one'), still };
    const next = { scenario: scenario('two'), still: { ...still, touched: true } };
    expect(await keptOf([first], null)).toEqual([]);
    const written = await keptOf([first, next], null);
    expect(written.map(([key]) => key)).toEqual(['bench', 'shelf/a', 'shelf/a']);
    expect(written.at(-1)?.[1]).toMatchObject({ scenario: { name: 'two' }, touched: true, deleted_ms: null });
    expect(written[0]?.[1]).toMatchObject({ still: 'a', units: 'us' });
    expect(written[0]?.[1]).not.toHaveProperty('scenario');
  });

  test('that an older build kept whole is kept as a still at once', async () => {
    const moved = { scenario: scenario('old'), still: { ...still, touched: true } };
    expect((await keptOf([moved], null)).map(([key]) => key)).toEqual(['bench', 'shelf/a']);
    expect(await keptOf([moved], moved)).toEqual([]);
  });

  test('keeps what stood there too when another still comes, and writes nothing that is kept already', async () => {
    const example = { scenario: scenario('example'), still };
    const visitor = {
      scenario: scenario('visitor'),
      still: { id: 'b', touched: false, visit: { from: 'link', home: 'a', isOwn: false } as const },
    };
    expect((await keptOf([example, visitor], null)).map(([key]) => key)).toEqual(['bench', 'shelf/a', 'shelf/b']);
    const again = { ...example };
    expect((await keptOf([example, again], example)).map(([key]) => key)).toEqual(['bench']);
  });
});
