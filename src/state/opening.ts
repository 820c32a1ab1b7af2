/** What stands on the bench when the page opens: the work kept from last time, else a still that runs. */
import type { RunResult } from '../../sim/index.ts';
import type { RunClient } from '../workers/run-client.ts';
import { BENCH_KEY, benchShape, type SavedBench } from './kept-bench.ts';
import type { Kept } from './kept-shape.ts';
import type { KeptStore } from './kept-store.ts';

export interface Opening {
  readonly result: RunResult;
  readonly saved: Omit<SavedBench, 'scenario'>;
  /** Whether nothing was kept from before, so that the reader may be new here. */
  readonly firstVisit: boolean;
  /** What the reader must know about the work kept here, if anything. */
  readonly notice: string | null;
}

export type Opened =
  { readonly ok: true; readonly opening: Opening } | { readonly ok: false; readonly message: string };

const FRESH: Omit<SavedBench, 'scenario'> = {
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

const UNREAD =
  'The still kept on this device can’t be read by this version, so an example stands here instead. It stays kept.';
const FAILED =
  'The calculation of the still kept on this device failed, so an example stands here instead. It stays kept.';
const BLOCKED = 'This browser keeps nothing for this page, so download what you want to keep.';

export async function openBench(store: KeptStore, client: RunClient): Promise<Opened> {
  // Query first, so that the model gets ready while the storage is looked into.
  const example = client.openingExample();
  let kept: Kept<SavedBench>;
  try {
    kept = await store.read(BENCH_KEY, benchShape);
  } catch {
    return openFresh(client, example, FRESH, BLOCKED);
  }
  if (kept.kind === 'read') {
    const bench = kept.value;
    const reply = await client.run(bench.scenario);
    if (reply.kind === 'ran')
      return { ok: true, opening: { result: reply.result, saved: bench, firstVisit: false, notice: null } };
    const preferences = {
      ...FRESH,
      units: bench.units,
      theme: bench.theme,
      hintsDismissed: bench.hintsDismissed,
      keysOn: bench.keysOn,
    };
    store.protect(BENCH_KEY);
    return openFresh(client, example, preferences, reply.kind === 'broke-off' ? FAILED : UNREAD);
  }
  return openFresh(client, example, FRESH, kept.kind === 'unread' ? UNREAD : null);
}

type Preferences = Omit<SavedBench, 'scenario'>;

async function openFresh(
  client: RunClient,
  example: ReturnType<RunClient['openingExample']>,
  preferences: Preferences,
  notice: string | null,
): Promise<Opened> {
  const first = await example;
  const reply = await client.run(first?.scenario ?? {});
  if (reply.kind === 'ran') {
    const saved = { ...preferences, time_s: tellingMoment(reply.result) };
    return { ok: true, opening: { result: reply.result, saved, firstVisit: true, notice } };
  }
  const { whyNoRun } = await import('../workers/no-run.ts');
  return { ok: false, message: whyNoRun(reply, preferences.units) };
}
