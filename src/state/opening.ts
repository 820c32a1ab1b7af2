/** What stands on the bench when the page opens: the work kept from last time, else a still that runs. */
import type { RunResult, Scenario } from '../../sim/index.ts';
import type { RunClient } from '../workers/run-client.ts';
import { BENCH_KEY, benchShape, type ReadBench, type SavedBench } from './kept-bench.ts';
import type { Kept } from './kept-shape.ts';
import type { KeptStore } from './kept-store.ts';
import { newStill, SHELF, stillOfWindow, stillShape, type KeptStill, type Still } from './kept-still.ts';

export interface Opening {
  readonly result: RunResult;
  /** The still kept, where its own run takes so long that a rough one stands in for it. */
  readonly awaited?: Scenario | undefined;
  readonly still: Still;
  /** Whether the still is kept as it stands there. */
  readonly isKept: boolean;
  readonly saved: Preferences;
  /** Whether nothing was kept from before, so that the reader may be new here. */
  readonly firstVisit: boolean;
  readonly trouble: Trouble | null;
}

/** What the reader must know about the work kept here; the words are fetched when there are any to say. */
export interface Trouble {
  readonly kind: 'unread' | 'failed' | 'blocked';
  /** What is kept and does not open, as it was read. */
  readonly value?: unknown;
}

type Preferences = Omit<SavedBench, 'still'>;

export type Opened =
  { readonly ok: true; readonly opening: Opening } | { readonly ok: false; readonly message: string };

const FRESH: Preferences = {
  time_s: 0,
  speed: 60,
  units: 'metric',
  currency: null,
  theme: 'auto',
  foldedCharts: [],
  chart: 'oil',
  hintsDismissed: false,
  keysOn: true,
};

/** A moment at which much is to be seen: the vapour is over and oil is coming. */
export const tellingMoment = ({ summary }: RunResult): number => {
  const first = summary.firstDrop_s ?? summary.firstBoil_s ?? 0;
  return Math.min(first + 60, summary.end_s);
};

/** The still that was on this window's bench, else the one that was changed last; what an older build kept is newer. */
async function readStill(store: KeptStore, bench: ReadBench): Promise<readonly [id: string, Kept<KeptStill>] | null> {
  for (const id of bench.still === null ? [] : [stillOfWindow(), bench.still])
    if (id !== null) {
      const kept = await store.read(SHELF + id, stillShape);
      if (kept.kind !== 'nothing') return [id, kept];
    }
  return null;
}

export async function openBench(store: KeptStore, client: RunClient): Promise<Opened> {
  // Query first, so that the model gets ready while the storage is looked into.
  const example = client.openingExample();
  let kept: Kept<ReadBench>;
  let found: Awaited<ReturnType<typeof readStill>> = null;
  try {
    kept = await store.read(BENCH_KEY, benchShape);
    if (kept.kind === 'read') found = await readStill(store, kept.value);
  } catch {
    return openFresh(client, example, FRESH, { kind: 'blocked' });
  }
  if (kept.kind !== 'read')
    return openFresh(client, example, FRESH, kept.kind === 'unread' ? { kind: 'unread', value: kept.value } : null);
  const saved = kept.value;
  const [id, still] = found ?? [];
  const preferences = {
    ...FRESH,
    units: saved.units,
    theme: saved.theme,
    hintsDismissed: saved.hintsDismissed,
    keysOn: saved.keysOn,
  };
  if (still?.kind === 'unread') return openFresh(client, example, preferences, { kind: 'unread', value: still.value });
  const value = still?.kind === 'read' ? still.value.scenario : saved.scenario;
  if (value === undefined) return openFresh(client, example, preferences, null);
  const reply = await client.run(value, undefined, undefined, true);
  if (reply.kind === 'ran')
    return {
      ok: true,
      opening: {
        result: reply.result,
        awaited: reply.awaited,
        still:
          id !== undefined && still?.kind === 'read'
            ? { id, touched: still.value.touched, visit: still.value.visit }
            : newStill(true),
        isKept: found !== null,
        saved,
        firstVisit: false,
        trouble: null,
      },
    };
  if (!found) store.protect(BENCH_KEY);
  return openFresh(client, example, preferences, { kind: reply.kind === 'broke-off' ? 'failed' : 'unread', value });
}

async function openFresh(
  client: RunClient,
  example: ReturnType<RunClient['openingExample']>,
  preferences: Preferences,
  trouble: Trouble | null,
): Promise<Opened> {
  const first = await example;
  const reply = await client.run(first?.scenario ?? {});
  if (reply.kind === 'ran') {
    const saved = { ...preferences, time_s: tellingMoment(reply.result) };
    const still = newStill();
    return { ok: true, opening: { result: reply.result, still, isKept: false, saved, firstVisit: true, trouble } };
  }
  const { whyNoRun } = await import('../workers/no-run.ts');
  return { ok: false, message: whyNoRun(reply, preferences.units) };
}
