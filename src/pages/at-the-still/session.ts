/** The run at the real still, one for the whole page: bound to the wall clock, stored at once, the same in every tab. */
import { createEffect, createMemo, createRoot, createSignal, on, onCleanup, untrack, type Accessor } from 'solid-js';
import {
  englishReader,
  readScenario,
  runSheet,
  runSheetMessages,
  type Forecast,
  type Reader,
  type RunResult,
  type Scenario,
  type SheetStep,
  type StopRule,
  type UnitSystem,
} from '../../../sim/index.ts';
import { keptStore } from '../../state/browser-store.ts';
import { addLogs, changeLog, closeInvented, keptBandsFor, logbook, openLogbook } from '../../state/logbook-store.ts';
import type { LoggedRun } from '../../state/logbook-schema.ts';
import { newId } from '../../state/new-id.ts';
import { askToPersist } from '../../state/persist.ts';
import { createQuery } from '../../state/query.ts';
import {
  joined,
  sheetStateOf,
  sinceStart,
  soFarOf,
  standing,
  stepsOf,
  stillRunShape,
  writtenRun,
  type EntryKind,
  type StillEntry,
  type StillRun,
} from '../../state/still-run.ts';
import { workerPool } from '../../workers/start-pool.ts';
import { markUnderWay, RUN_CHANNEL, RUN_KEY } from '../../state/run-under-way.ts';
import { ring } from './alarm-sounds.ts';
import { mayRest, notify, stayAwake } from './device.ts';
import { createForecastSession, type ForecastSession } from './forecaster.ts';
import { toLoggedRun } from './to-logbook.ts';

export interface Logged {
  readonly value?: number;
  readonly text?: string;
  readonly place?: number | null;
  readonly at_ms?: number;
}

export interface StillSession {
  readonly ready: Accessor<boolean>;
  /** The run under way; `null` when none is. */
  readonly run: Accessor<StillRun | null>;
  readonly plan: Accessor<Scenario | null>;
  readonly result: Accessor<RunResult | null>;
  readonly now_ms: Accessor<number>;
  readonly elapsed_s: Accessor<number>;
  readonly forecast: Accessor<Forecast | null>;
  readonly forecasting: Accessor<boolean>;
  readonly forecastProblem: Accessor<string | null>;
  readonly sheet: Accessor<readonly SheetStep[]>;
  /** Steps not yet done, the overdue ones first. */
  readonly coming: Accessor<readonly SheetStep[]>;
  /** Steps that ring now. */
  readonly ringing: Accessor<readonly SheetStep[]>;
  /** Who is told what is due outside the page. */
  readAs(reader: Reader): void;
  /** The browser refuses to store. */
  readonly refused: Accessor<boolean>;
  /** The run was ended by another tab, which has put it into the run book. */
  readonly endedElsewhere: Accessor<boolean>;
  /** Follows the run that another tab has begun where there is one. */
  start(plan: Scenario, name: string, rule: StopRule, receiver_kg: number | null, ago_s: number): Promise<void>;
  log(kind: EntryKind, logged?: Logged): StillEntry | null;
  change(id: string, changed: Partial<Pick<StillEntry, 'value' | 'text' | 'at_ms' | 'gone'>>): void;
  done(step: SheetStep): void;
  silence(): void;
  /** Puts the run into the run book; answers its id there. */
  end(units: UnitSystem): string | null;
}

const TICK_MS = 1000;
/** How often a sound comes again until somebody answers. */
const RING_AGAIN_MS = { alarm: 6000, notice: 20_000 } as const;
/** A step that was put off by so much after it was silenced may ring again, s. */
const PUT_OFF_S = 120;

/** A run as it goes into the run book, under its own id: ended in two tabs at once it is one log. */
function bookedRun(run: StillRun, units: UnitSystem): LoggedRun | null {
  const read = readScenario(run.scenario);
  return read.ok ? toLoggedRun(run, read.scenario, run.id, units) : null;
}

let session: StillSession | null = null;

export const stillSession = (): StillSession => (session ??= createRoot(createStillSession));

function createStillSession(): StillSession {
  const [ready, setReady] = createSignal(false);
  const [run, setRun] = createSignal<StillRun | null>(null);
  const [now_ms, setNow] = createSignal(Date.now());
  const [endedElsewhere, setEndedElsewhere] = createSignal(false);
  const [reader, setReader] = createSignal<Reader>(englishReader('metric'));
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(RUN_CHANNEL);
  const store = keptStore();

  const show = (next: StillRun | null) => {
    setRun(next !== null && next.ended_ms === null ? next : null);
    markUnderWay(untrack(run) !== null);
  };
  /** A run that ended here, as it went into the run book. */
  let ended: { readonly run: StillRun; readonly units: UnitSystem } | null = null;
  /** What another tab logged in the moment in which the run was ended in this one. */
  const addLate = (theirs: StillRun) => {
    if (ended?.run.id !== theirs.id) return;
    const { run: before, units } = ended;
    const both = joined(before, theirs);
    const [was, now] = [bookedRun(before, units), bookedRun(both, units)];
    ended = { run: both, units };
    const log = logbook().logs.find(({ id: logId }) => logId === both.id);
    if (was && now && log && JSON.stringify(log.rows) === JSON.stringify(was.rows))
      changeLog(both.id, { rows: now.rows, notes: now.notes, photos: now.photos, scenario: now.scenario });
    if (both.entries.length > before.entries.length || both.changed_ms > before.changed_ms)
      store.keep(RUN_KEY, stillRunShape, writtenRun(both));
  };
  /** @param isStored whether it stands in the store, which says which run counts; else another tab is about to store it */
  const accept = (theirs: StillRun, isStored: boolean) => {
    const mine = untrack(run);
    addLate(theirs);
    if (mine === null) {
      if (ended?.run.id !== theirs.id) show(theirs);
    } else if (mine.id === theirs.id) {
      if (theirs.ended_ms !== null) setEndedElsewhere(true);
      show(joined(mine, theirs));
    } else if (isStored) show(theirs);
  };
  const reread = async () => {
    const kept = await store.read(RUN_KEY, stillRunShape).catch(() => null);
    if (kept?.kind === 'read') accept(kept.value, true);
    setReady(true);
  };
  void reread();
  void openLogbook();
  store.follow(RUN_KEY, stillRunShape, (_key, kept) => {
    if (kept.kind === 'read') accept(kept.value, true);
  });
  if (channel)
    channel.onmessage = ({ data }: MessageEvent<unknown>) => {
      const theirs = stillRunShape.read(data, stillRunShape.version);
      if (theirs) accept(theirs, false);
    };

  const put = (next: StillRun) => {
    store.keep(RUN_KEY, stillRunShape, writtenRun(next));
    // What was logged beside a hot pot must outlast a page that is closed at once.
    store.leave();
    channel?.postMessage(writtenRun(next));
    show(next);
  };
  const putEntries = (entries: readonly StillEntry[]) => {
    const kept = untrack(run);
    if (!kept) return;
    put(joined(kept, { ...kept, changed_ms: Date.now(), entries }));
  };

  const timer = setInterval(() => setNow(Date.now()), TICK_MS);
  const seen = () => {
    setNow(Date.now());
    if (document.visibilityState !== 'visible') return;
    void reread();
    if (untrack(run)) void stayAwake();
  };
  document.addEventListener('visibilitychange', seen);
  onCleanup(() => {
    clearInterval(timer);
    document.removeEventListener('visibilitychange', seen);
  });

  const id = createMemo(() => run()?.id ?? null);
  const plan = createMemo<Scenario | null>(
    on(id, () => {
      const kept = untrack(run);
      const read = kept ? readScenario(kept.scenario) : null;
      return read?.ok === true ? read.scenario : null;
    }),
  );
  const ran = createQuery(workerPool(), 'run', () => {
    const scenario = plan();
    return scenario ? [scenario] : null;
  });
  const result = createMemo<RunResult | null>(() => {
    const answer = ran.answer();
    return plan() && answer?.kind === 'ran' ? answer.result : null;
  });

  const forecasts = createMemo<ForecastSession | null>(() => {
    const scenario = plan();
    const kept = untrack(run);
    if (!scenario || !kept) return null;
    const made = createForecastSession(workerPool(), scenario, kept.rule, keptBandsFor(scenario)?.bands ?? {});
    onCleanup(() => made.stop());
    return made;
  });
  const asked = createMemo(() => {
    const kept = run();
    return kept ? JSON.stringify(soFarOf(kept)) : null;
  });
  createEffect(
    on([forecasts, asked], ([made]) => {
      const kept = untrack(run);
      if (made && kept) made.ask(soFarOf(kept));
    }),
  );
  const forecast = () => forecasts()?.forecast() ?? null;

  const elapsed_s = createMemo(() => {
    const kept = run();
    return kept ? Math.max(0, sinceStart(kept, now_ms())) : 0;
  });
  const sheet = createMemo<readonly SheetStep[]>(() => {
    const kept = run();
    const plannedRun = result();
    return kept && plannedRun ? runSheet(plannedRun, { ...sheetStateOf(kept), forecast: forecast() }) : [];
  });
  const isDone = (kept: StillRun, step: SheetStep): boolean => {
    if (stepsOf(kept, 'done').has(step.id)) return true;
    // Whoever starts has filled the pot and put the heat on.
    if (step.kind === 'fill' || step.kind === 'heat-on') return true;
    if (step.kind === 'first-drop') return sheetStateOf(kept).firstDrop_s !== null;
    if (step.kind !== 'heat' && step.kind !== 'tap') return false;
    return standing(kept).some(({ kind, place }) => kind === step.kind && place === step.values.place);
  };
  const coming = createMemo<readonly SheetStep[]>(() => {
    const kept = run();
    return kept ? sheet().filter((step) => !isDone(kept, step)) : [];
  });
  const ringing = createMemo<readonly SheetStep[]>(
    () => {
      const kept = run();
      if (!kept) return [];
      const silenced = stepsOf(kept, 'silenced');
      return coming().filter((step) => {
        const at = silenced.get(step.id);
        const isSilent = at !== undefined && step.at_s <= sinceStart(kept, at.at_ms) + PUT_OFF_S;
        return step.rings !== null && step.at_s <= elapsed_s() && !isSilent;
      });
    },
    [],
    { equals: (a, b) => a.length === b.length && a.every((step, index) => step.id === b[index]?.id) },
  );
  const loudest = createMemo(() => {
    const kinds = ringing().map(({ rings }) => rings);
    return kinds.includes('alarm') ? 'alarm' : kinds.includes('notice') ? 'notice' : null;
  });
  createEffect(() => {
    const kind = loudest();
    if (kind === null) return;
    ring(kind);
    const again = setInterval(() => ring(kind), RING_AGAIN_MS[kind]);
    onCleanup(() => clearInterval(again));
  });
  createEffect<ReadonlySet<string>>((before) => {
    const now = ringing();
    for (const step of now) if (!before.has(step.id)) void tell(step);
    return new Set(now.map((step) => step.id));
  }, new Set());
  const tell = async (step: SheetStep) => {
    const { title, look } = runSheetMessages(untrack(reader)).step(step);
    await notify(title, look);
  };
  createEffect(() => void (run() ? stayAwake() : mayRest()));

  const entryOf = (kind: EntryKind, { value, text, place, at_ms }: Logged): StillEntry => ({
    id: newId(),
    kind,
    at_ms: at_ms ?? Date.now(),
    changed_ms: Date.now(),
    value: value ?? null,
    text: text ?? '',
    place: place ?? null,
    gone: false,
  });

  return {
    ready,
    run,
    plan,
    result,
    now_ms,
    elapsed_s,
    forecast,
    forecasting: () => forecasts()?.working() ?? false,
    forecastProblem: () => forecasts()?.problem() ?? null,
    sheet,
    coming,
    ringing,
    readAs: (who) => setReader(() => who),
    refused: store.refused,
    endedElsewhere,
    start: async (scenario, name, rule, receiver_kg, ago_s) => {
      const now = Date.now();
      askToPersist();
      // A tab that slept may not know yet of a run that another has begun.
      await reread();
      if (untrack(run)) return;
      setNow(Date.now());
      setEndedElsewhere(false);
      put({
        id: newId(),
        started_ms: now - 1000 * ago_s,
        changed_ms: now,
        ended_ms: null,
        name,
        scenario,
        rule,
        receiver_kg,
        entries: [],
      });
    },
    log: (kind, logged = {}) => {
      if (!untrack(run)) return null;
      const made = entryOf(kind, logged);
      putEntries([made]);
      return made;
    },
    change: (entryId, changed) => {
      const entry = untrack(run)?.entries.find((each) => each.id === entryId);
      if (entry) putEntries([{ ...entry, ...changed, changed_ms: Date.now() }]);
    },
    done: (step) =>
      putEntries(
        step.kind === 'heat' || step.kind === 'tap'
          ? [entryOf(step.kind, { value: step.values.value, place: step.values.place })]
          : step.kind === 'first-drop'
            ? [entryOf('first-drop', {})]
            : [entryOf('done', { text: step.id })],
      ),
    silence: () => putEntries(untrack(ringing).map(({ id: step }) => entryOf('silenced', { text: step }))),
    end: (units) => {
      const kept = untrack(run);
      const log = kept && bookedRun(kept, units);
      if (!log) return null;
      const now = Date.now();
      ended = { run: { ...kept, changed_ms: now, ended_ms: now }, units };
      closeInvented();
      addLogs([log]);
      put(ended.run);
      return log.id;
    },
  };
}
