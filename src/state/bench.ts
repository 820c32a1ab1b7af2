/** The bench's whole state: the scenario on it, its run, the time mark, and how the reader wants to see them. */
import { debounce } from '@solid-primitives/scheduled';
import {
  batch,
  createContext,
  createEffect,
  createMemo,
  createSignal,
  on,
  onCleanup,
  untrack,
  useContext,
  type Accessor,
} from 'solid-js';
import {
  englishReader,
  type Currency,
  type EnoughLength,
  type Problem,
  type Reader,
  type RunEvent,
  type RunResult,
  type Scenario,
  type ScenarioPart,
  type UnitSystem,
} from '../../sim/index.ts';
import type { Progress } from '../workers/progress.ts';
import type { NoRun, RunClient, RunReply } from '../workers/run-client.ts';
import { valueAtPath, withValueAtPath } from './field-path.ts';
import { createHistory } from './history.ts';
import { sizeQuestion } from './length-that-holds.ts';
import { createPlayback, type Clock, type Playback } from './playback.ts';
import type { Paper } from './print.ts';
import type { SavedBench, ShownChart, Theme } from './kept-bench.ts';
import { newStill, type Desk, type Still } from './kept-still.ts';

export interface Bench extends Omit<Playback, 'load'> {
  /** The scenario, and which still it is. */
  readonly desk: Accessor<Desk>;
  readonly scenario: Accessor<Scenario>;
  /** The last run that went through; its `scenario` is the one it was run for. */
  readonly result: Accessor<RunResult>;
  /** The run before the last change, to compare with; null where there was none. */
  readonly runBefore: Accessor<RunResult | null>;
  readonly running: Accessor<boolean>;
  /** How far a run that takes long has come, or that the reader stopped it; null while there is none. */
  readonly longRun: Accessor<Progress | 'stopped' | null>;
  stopRun(): void;
  runAgain(): void;
  /** What is wrong with the scenario as it stands; empty while it runs. */
  readonly problems: Accessor<readonly Problem[]>;
  /** Why the run shown is older than the scenario, in words; null while it is not. */
  readonly staleBecause: Accessor<string | null>;
  readonly stale: Accessor<boolean>;
  /** Whether the result is of the scenario itself, in coarser steps. */
  readonly isRough: Accessor<boolean>;
  /** Where vapour escapes: the condenser length that would hold, once it has been found. */
  readonly holds: Accessor<EnoughLength | null>;
  readonly end_s: Accessor<number>;
  /** Where the time axis of everything on the bench ends: a run may break off before its planned end. */
  readonly axisEnd_s: Accessor<number>;
  readonly nextEvent: Accessor<RunEvent | null>;
  readonly previousEvent: Accessor<RunEvent | null>;
  /** Changes one field; changes that share a `gesture` are undone together. */
  change(path: string, value: unknown, gesture?: string): void;
  changeMany(values: Readonly<Record<string, unknown>>, gesture?: string): void;
  undo(): void;
  redo(): void;
  readonly canUndo: Accessor<boolean>;
  readonly canRedo: Accessor<boolean>;
  /** Puts another still on the bench, once it has run; resolves with what is wrong with it, in words, or null. */
  load(scenario: unknown, still?: Still): Promise<string | null>;
  readonly selected: Accessor<ScenarioPart | null>;
  select(part: ScenarioPart | null): void;
  /** The part on which the reader's hand lies, by one of the live controls. */
  readonly touched: Accessor<ScenarioPart | null>;
  touch(part: ScenarioPart | null): void;
  readonly units: Accessor<UnitSystem>;
  /** Who reads what the run has to say. */
  readonly reader: Accessor<Reader>;
  setUnits(units: UnitSystem): void;
  readonly currency: Accessor<Currency | null>;
  setCurrency(currency: Currency | null): void;
  readonly theme: Accessor<Theme>;
  setTheme(theme: Theme): void;
  /** The theme that is shown: paper is always light. */
  readonly shownTheme: Accessor<Theme>;
  readonly paper: Paper;
  /** The chart beside the still. */
  readonly chart: Accessor<ShownChart>;
  setChart(chart: ShownChart): void;
  readonly foldedCharts: Accessor<readonly string[]>;
  setFoldedCharts(ids: readonly string[]): void;
  readonly hintsDismissed: Accessor<boolean>;
  dismissHints(): void;
  readonly keysOn: Accessor<boolean>;
  setKeysOn(on: boolean): void;
  /** The scenario as it was put on the bench, before any change. */
  readonly loaded: Accessor<Scenario>;
  /** What is worth keeping between visits. */
  readonly snapshot: Accessor<SavedBench>;
  /** Puts there what is known to be a scenario, as one step back with others of the same gesture. */
  put(desk: Desk, gesture?: string): void;
}

export interface BenchParts {
  readonly paper: Paper;
  readonly client: RunClient;
  /** Looks for the condenser length that would hold; resolves with `null` when given up. */
  lengthThatHolds(scenario: Scenario, signal: AbortSignal): Promise<EnoughLength | null>;
  readonly clock: Clock;
  readonly first: RunResult;
  /** The scenario on the bench, where `first` is but a rough run of it. */
  readonly awaited?: Scenario | undefined;
  readonly still: Still;
  readonly saved: Omit<SavedBench, 'still'>;
}

const KEPT_PLACES_OF_A_RUN = 50;

/** How long nothing must have changed before a longer search begins. */
const QUIET_BEFORE_SEARCH_MS = 500;

/** Two events closer than this count as one stop of the time mark. */
const SAME_MOMENT_S = 0.5;

export function createBench(parts: BenchParts): Bench {
  const { paper } = parts;
  const firstScenario = parts.awaited ?? parts.first.scenario;
  const history = createHistory<Desk>({ scenario: firstScenario, still: parts.still });
  const desk = history.present;
  const [result, setResult] = createSignal(parts.first, { equals: false });
  const [runBefore, setRunBefore] = createSignal<RunResult | null>(null);
  let lastGesture: string | undefined;
  const [asked, setAsked] = createSignal<Scenario>(firstScenario);
  const [answered, setAnswered] = createSignal<Scenario | null>(parts.first.scenario);
  const [noRun, setNoRun] = createSignal<NoRun | null>(null);
  const [selected, select] = createSignal<ScenarioPart | null>(null);
  const [touched, touch] = createSignal<ScenarioPart | null>(null);
  const [chart, setChart] = createSignal(parts.saved.chart);
  const [units, setUnits] = createSignal(parts.saved.units);
  const [currency, setCurrency] = createSignal(parts.saved.currency);
  const [theme, setTheme] = createSignal(parts.saved.theme);
  const [foldedCharts, setFoldedCharts] = createSignal(parts.saved.foldedCharts);
  const [keysOn, setKeysOn] = createSignal(parts.saved.keysOn);
  const [loaded, setLoaded] = createSignal<Scenario>(firstScenario);
  const [hintsDismissed, setHintsDismissed] = createSignal(parts.saved.hintsDismissed);

  const scenario = createMemo(() => desk().scenario);
  const end_s = createMemo(() => result().summary.end_s);
  const axisEnd_s = createMemo(() => Math.max(scenario().run.duration_s, end_s(), runBefore()?.summary.end_s ?? 0));
  const playback = createPlayback(() => end_s(), parts.clock, parts.saved.speed);
  playback.load(parts.saved.time_s);

  const running = createMemo(() => asked() !== answered());
  const problems = createMemo((): readonly Problem[] => {
    const reply = noRun();
    return reply?.kind === 'invalid' ? reply.problems : [];
  });
  const [refusal, setRefusal] = createSignal('');
  createEffect(
    on([noRun, units], async ([reply, system]) => {
      setRefusal('');
      if (reply === null) return;
      const { whyNoRun } = await import('../workers/no-run.ts');
      if (noRun() === reply && units() === system) setRefusal(whyNoRun(reply, system));
    }),
  );
  const isRough = createMemo(() => {
    const { advanced } = scenario();
    const ran = result().scenario;
    if (ran.advanced.step_s <= advanced.step_s) return false;
    return JSON.stringify({ ...ran, advanced }) === JSON.stringify(scenario());
  });
  const staleBecause = createMemo(() => (noRun() === null ? null : refusal()));

  const [holds, setHolds] = createSignal<EnoughLength | null>(null);
  let controller = new AbortController();
  let searchedFor = '';
  const searchSoon = debounce((ran: Scenario, question: string, signal: AbortSignal) => {
    void parts.lengthThatHolds(ran, signal).then((found) => {
      if (signal.aborted) return;
      searchedFor = question;
      setHolds(found);
    });
  }, QUIET_BEFORE_SEARCH_MS);
  /** What was found holds for any own length of the same still, and for no other still. */
  const forgetLength = (question: string) => {
    searchSoon.clear();
    controller.abort();
    if (question !== searchedFor) setHolds(null);
  };
  /** Once the bench has been quiet for a moment after a run that leaks, looks for the length that would not. */
  const lookForLength = (ran: RunResult) => {
    const question = JSON.stringify(sizeQuestion(ran.scenario));
    forgetLength(question);
    if (untrack(holds) || !ran.events.some(({ kind }) => kind === 'vapour-escapes')) return;
    controller = new AbortController();
    searchSoon(ran.scenario, question, controller.signal);
  };
  onCleanup(() => controller.abort());

  const settle = (which: Scenario, reply: RunReply) =>
    batch(() => {
      if (reply.kind === 'superseded') return;
      setAnswered(() => which);
      setNoRun(() => (reply.kind === 'ran' ? null : reply));
      if (reply.kind !== 'ran') return;
      setResult(() => reply.result);
      lookForLength(reply.result);
    });

  const [longRun, setLongRun] = createSignal<Progress | 'stopped' | null>(null);
  let runs: AbortController | undefined;
  /** Asks for a run, the only one that counts from now on. */
  const ask = (wish: unknown): Promise<RunReply> => {
    const mine = (runs = new AbortController());
    const tell = (progress: Progress | null) => runs === mine && setLongRun(progress);
    tell(null);
    return parts.client.run(wish, tell, mine.signal).finally(() => tell(null));
  };

  const rerun = () => {
    const wish = scenario();
    setAsked(() => wish);
    forgetLength(JSON.stringify(sizeQuestion(wish)));
    void ask(wish).then((reply) => settle(wish, reply));
  };

  const put = (next: Desk, gesture?: string) => {
    const before = scenario();
    history.push(next, gesture);
    if (next.scenario === before) return;
    if (gesture === undefined || gesture !== lastGesture) setRunBefore(() => result());
    lastGesture = gesture;
    rerun();
  };

  const apply = (next: Scenario, gesture?: string) => {
    if (next === scenario()) return;
    const { still } = desk();
    put({ scenario: next, still: still.touched ? still : { ...still, touched: true } }, gesture);
  };

  const changeMany = (values: Readonly<Record<string, unknown>>, gesture?: string) => {
    const next = Object.entries(values).reduce(
      (whole, [path, value]) =>
        Object.is(valueAtPath(whole, path), value) ? whole : withValueAtPath(whole, path, value),
      scenario(),
    );
    apply(next, gesture);
  };

  const load = async (input: unknown, still = newStill()): Promise<string | null> => {
    const reply = await ask(input);
    if (reply.kind !== 'ran') {
      setLongRun(null);
      const { whyNoRun } = await import('../workers/no-run.ts');
      return whyNoRun(reply, units());
    }
    const { result: run } = reply;
    batch(() => {
      history.push({ scenario: run.scenario, still });
      setLoaded(() => run.scenario);
      setRunBefore(null);
      setAsked(() => run.scenario);
      settle(run.scenario, reply);
      playback.load(0);
      select(null);
    });
    return null;
  };

  lookForLength(parts.first);
  if (parts.awaited) untrack(rerun);

  const eventsByTime = createMemo(() => [...result().events].sort((a, b) => a.time_s - b.time_s));
  const nextEvent = createMemo(
    () => eventsByTime().find(({ time_s }) => time_s > playback.time_s() + SAME_MOMENT_S) ?? null,
  );
  const previousEvent = createMemo(
    () => eventsByTime().findLast(({ time_s }) => time_s < playback.time_s() - SAME_MOMENT_S) ?? null,
  );

  /** Of a mark that moves by itself some places are enough: each one kept is a write to the device. */
  const keptTime_s = createMemo(() => {
    const step_s = end_s() / KEPT_PLACES_OF_A_RUN;
    const time_s = playback.time_s();
    return playback.playing() && step_s > 0 ? Math.floor(time_s / step_s) * step_s : time_s;
  });
  const snapshot = createMemo<SavedBench>(() => ({
    still: desk().still.id,
    time_s: keptTime_s(),
    speed: playback.speed(),
    units: units(),
    currency: currency(),
    theme: theme(),
    foldedCharts: foldedCharts(),
    chart: chart(),
    hintsDismissed: hintsDismissed(),
    keysOn: keysOn(),
  }));

  return {
    ...playback,
    desk,
    scenario,
    result,
    runBefore,
    running,
    longRun,
    stopRun: () => {
      runs?.abort();
      runs = undefined;
      setLongRun('stopped');
    },
    runAgain: rerun,
    problems,
    staleBecause,
    stale: () => staleBecause() !== null,
    isRough,
    holds,
    end_s,
    axisEnd_s,
    nextEvent,
    previousEvent,
    change: (path, value, gesture) => changeMany({ [path]: value }, gesture),
    changeMany,
    undo: () => {
      if (!history.canUndo()) return;
      history.undo();
      setRunBefore(null);
      rerun();
    },
    redo: () => {
      if (!history.canRedo()) return;
      history.redo();
      setRunBefore(null);
      rerun();
    },
    canUndo: history.canUndo,
    canRedo: history.canRedo,
    load,
    put,
    selected,
    select,
    touched,
    touch,
    chart,
    setChart,
    units,
    reader: () => englishReader(units(), currency()),
    setUnits,
    currency,
    setCurrency,
    theme,
    setTheme,
    shownTheme: () => (paper.onPaper() ? 'light' : theme()),
    paper,
    foldedCharts,
    setFoldedCharts: (ids) => setFoldedCharts([...ids]),
    hintsDismissed,
    dismissHints: () => setHintsDismissed(true),
    keysOn,
    setKeysOn,
    loaded,
    snapshot,
  };
}

export const BenchContext = createContext<Bench>();

export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error('this component stands outside the bench');
  return bench;
}
