/** What stands on the bench when the page opens: the work kept from last time, else a still that runs. */
import type { RunResult } from '../../sim/index.ts';
import { whyNoRun, type RunClient } from '../workers/run-client.ts';
import type { BenchStorage, SavedBench } from './storage.ts';

export interface Opening {
  readonly result: RunResult;
  /** Whether the result is a preview, to be followed by the full run. */
  readonly isPreview: boolean;
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
  theme: 'auto',
  foldedCharts: [],
  hintsDismissed: false,
  keysOn: true,
};

/** A moment at which much is to be seen: the vapour is over and oil is coming. */
export const tellingMoment = ({ summary }: RunResult): number => {
  const first = summary.firstDrop_s ?? summary.firstBoil_s ?? 0;
  return Math.min(first + 60, summary.end_s);
};

export async function openBench(storage: BenchStorage, client: RunClient): Promise<Opened> {
  // Query first, so that the model gets ready while the storage is looked into.
  const examples = client.examples();
  const kept = await storage.load();
  if (kept.kind === 'bench') {
    const reply = await client.run(kept.bench.scenario, 'preview');
    if (reply.kind === 'ran')
      return {
        ok: true,
        opening: {
          result: reply.result,
          isPreview: reply.fidelity === 'preview',
          saved: kept.bench,
          firstVisit: false,
          notice: null,
        },
      };
    const preferences = {
      ...FRESH,
      units: kept.bench.units,
      theme: kept.bench.theme,
      hintsDismissed: kept.bench.hintsDismissed,
      keysOn: kept.bench.keysOn,
    };
    return openFresh(
      client,
      examples,
      preferences,
      'The still kept on this device can’t be read by this version, so an example stands here instead.',
    );
  }
  const notice =
    kept.kind === 'blocked' ? 'This browser keeps nothing for this page, so download what you want to keep.' : null;
  return openFresh(client, examples, FRESH, notice);
}

type Preferences = Omit<SavedBench, 'scenario'>;

async function openFresh(
  client: RunClient,
  examples: ReturnType<RunClient['examples']>,
  preferences: Preferences,
  notice: string | null,
): Promise<Opened> {
  const [first] = await examples;
  const reply = await client.run(first?.scenario ?? {}, 'preview');
  if (reply.kind === 'ran') {
    const saved = { ...preferences, time_s: tellingMoment(reply.result) };
    return {
      ok: true,
      opening: { result: reply.result, isPreview: reply.fidelity === 'preview', saved, firstVisit: true, notice },
    };
  }
  return { ok: false, message: whyNoRun(reply) };
}
