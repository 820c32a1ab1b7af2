/** Runs side by side: two to four stills on shared axes with one time mark, their differences, and what to conclude. */
import { createMediaQuery } from '@solid-primitives/media';
import { createEffect, createMemo, createSignal, For, Index, onMount, Show } from 'solid-js';
import {
  compareRuns,
  comparisonMessages,
  englishReader,
  MOST_COMPARED,
  recommend,
  recommendationMessages,
  toldComparison,
  toldRecommendation,
  USUAL_DRAWS,
  USUAL_SEED,
  wholeMessage,
  type CompareRow,
  type Comparison,
  type RunResult,
} from '../../../sim/index.ts';
import { isStale, originOf } from '../../state/compared-origin.ts';
import { createPlayback, screenClock } from '../../state/playback.ts';
import type { NamedRun } from '../../charts/catalogue/runs.ts';
import { ChartColumn } from '../../charts/ChartColumn.tsx';
import type { DataTable } from '../../charts/export/data-table.ts';
import type { ChartId } from '../../charts/model/chart.ts';
import { PlaybackBar } from '../../charts/playback/Playback.tsx';
import { type LayoutOptions, type PlacedLayout } from '../../drawing/geometry/still-layout.ts';
import { layoutAlike } from '../../drawing/geometry/layout-alike.ts';
import { workerPool } from '../../workers/start-pool.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { AnswerTable, type TableColumn } from '../parts/AnswerTable.tsx';
import { CheckMark } from '../parts/marks.tsx';
import { SaveBar } from '../parts/SaveBar.tsx';
import { CompareCard } from './CompareCard.tsx';
import { Draws } from './Draws.tsx';
import { OtherComparisons } from './OtherComparisons.tsx';
import { createDrawsSession, type DrawsSession } from './draws-session.ts';
import {
  addCompared,
  compared,
  changeCompared,
  freeName,
  openCompared,
  removeCompared,
  renewCompared,
  setCompared,
} from '../../state/comparison-store.ts';
import { REDUCED_MOTION } from '../../ui/reduced-motion.ts';
import { errorMessage, wasGivenUp } from '../../workers/errors.ts';
import { bestOf } from './best-of.ts';
import './compare.css';

const LETTERS = ['A', 'B', 'C', 'D'] as const;
/** Charts that show how runs differ; the others are a click away. */
const OPEN_CHARTS: Readonly<Partial<Record<ChartId, boolean>>> = {
  temperatures: false,
  heat: true,
  steam: false,
  cooling: true,
  oil: true,
  recovery: true,
  bed: false,
  condenser: false,
  drops: false,
  energy: false,
};

/** What is kept while the reader looks elsewhere. */
let session: DrawsSession | null = null;

const longest = (results: readonly RunResult[]): number => Math.max(60, ...results.map(({ summary }) => summary.end_s));

/** One time mark for all, over the longest of them. */
const createCommonPlayback = (results: () => readonly RunResult[]) =>
  createPlayback(() => longest(results()), screenClock, 'run-in-10-s');

export function CompareView(props: { readonly context: AnalysisContext }) {
  const pool = workerPool();
  const units = () => props.context.units();
  const messages = () => comparisonMessages(props.context.reader());
  const words = () => recommendationMessages(props.context.reader());
  const [told, setTold] = createSignal('');
  const [working, setWorking] = createSignal(false);
  const reducedMotion = createMediaQuery(REDUCED_MOTION);
  const [open, setOpen] = createSignal(OPEN_CHARTS);
  onMount(() => void openCompared(pool, props.context.result().scenario));

  const draws = (session ??= createDrawsSession(pool));
  const done = createMemo(() => compared().flatMap((each) => (each.result ? [{ ...each, result: each.result }] : [])));
  /** The same list as long as it holds the same runs. */
  const results = createMemo<readonly RunResult[]>(() => done().map(({ result }) => result), [], {
    equals: (a, b) => a.length === b.length && a.every((each, index) => each === b[index]),
  });
  const comparison = createMemo<Comparison | null>(() => (results().length < 2 ? null : compareRuns(results())));
  const waiting = () => compared().some(({ running, result }) => running || result === null);
  /** Once the draws have come to their end; of fewer than half of them nothing is concluded. */
  const recommendation = createMemo(() => {
    const found = comparison();
    if (!found || draws.running() || !draws.isOf(results())) return null;
    const advice = recommend(found.runs, draws.found(), USUAL_SEED);
    return advice && advice.draws >= USUAL_DRAWS / 2 ? advice : null;
  });
  const letterOf = (id: number): string => LETTERS[compared().findIndex((each) => each.id === id)] ?? '';
  const runs = createMemo<readonly NamedRun[]>(() =>
    done().map(({ id, result }) => ({ name: `${letterOf(id)} ${result.scenario.name}`, result })),
  );
  const first = () => done()[0]?.result;
  const end_s = createMemo(() => longest(done().map(({ result }) => result)));
  const playback = createCommonPlayback(() => done().map(({ result }) => result));
  // Until somebody moves it the time mark stands at the end, so that the charts show the runs whole.
  createEffect(() => {
    if (!playback.everPlayed()) playback.setTime(end_s());
  });
  const timelines = createMemo(() =>
    done().map(({ id, result }) => ({
      letter: letterOf(id),
      name: result.scenario.name,
      events: result.events,
      mostOil_s: result.summary.t90_s,
      end_s: result.summary.end_s,
    })),
  );
  /** All drawings together, worked out once for each size of sheet. */
  const drawings = createMemo(() => {
    const scenarios = done().map(({ result }) => result.scenario);
    const known = new Map<string, readonly PlacedLayout[]>();
    return (options: LayoutOptions): readonly PlacedLayout[] => {
      const key = JSON.stringify(options);
      const placed = known.get(key) ?? layoutAlike(scenarios, options);
      known.set(key, placed);
      return placed;
    };
  });
  const placedOf = (id: number, options: LayoutOptions): PlacedLayout | undefined =>
    drawings()(options)[done().findIndex((each) => each.id === id)];
  const stale = createMemo(() => isStale(compared(), props.context.scenario()));

  const gentleAndHard = async () => {
    setWorking(true);
    setTold('');
    try {
      const scenario = props.context.result().scenario;
      const { gentle, hard } = await pool.ask('gentleAgainstHard', [scenario], { priority: 'high' });
      setCompared(pool, [
        { scenario: gentle, origin: originOf(scenario, 'gentle') },
        { scenario: hard, origin: originOf(scenario, 'hard') },
      ]);
      setTold(`A is “${scenario.name}” boiled gently, B the same boiled hard, until as much distillate has come over.`);
    } catch (error) {
      if (!wasGivenUp(error)) setTold(`They could not be set up: ${errorMessage(error)}`);
    }
    setWorking(false);
  };
  const renew = async () => {
    setWorking(true);
    setTold('');
    try {
      await renewCompared(pool, props.context.scenario());
      setTold(`The runs are those of “${props.context.scenario().name}”, as it stands on the bench.`);
    } catch (error) {
      if (!wasGivenUp(error)) setTold(`They could not be renewed: ${errorMessage(error)}`);
    }
    setWorking(false);
  };
  const copy = (id: number) => {
    const copied = compared().find((each) => each.id === id);
    if (!copied) return;
    setTold('');
    const { scenario, origin } = copied;
    addCompared(pool, [{ scenario: { ...scenario, name: freeName(scenario.name) }, origin }]);
  };
  const addOwn = () => {
    const scenario = props.context.scenario();
    const isTaken = compared().some((each) => each.scenario.name === scenario.name);
    addCompared(pool, [
      { scenario: isTaken ? { ...scenario, name: freeName(scenario.name) } : scenario, origin: originOf(scenario) },
    ]);
  };
  const load = async (id: number) => {
    const wanted = compared().find((each) => each.id === id);
    if (!wanted) return;
    setTold((await props.context.load(wanted.scenario)) ?? `“${wanted.scenario.name}” is on the bench.`);
  };

  const columns = createMemo<readonly TableColumn<CompareRow>[]>(() => [
    { id: 'title', title: 'Number', isWords: true, cell: (row) => messages().rowTitle(row) },
    ...done().map(({ id, result }, index): TableColumn<CompareRow> => ({
      id: `run-${id}`,
      title: `${letterOf(id)} ${result.scenario.name}`,
      cell: (row) => (
        <>
          <span classList={{ 'is-best': bestOf(row) === index }}>
            {/* Of a tube that lets vapour out it is only known that it should be longer. */}
            {row.id === 'coilNeeded' && result.summary.waterUncondensed_kg > 0 ? 'over ' : ''}
            {messages().value(row, row.values[index] ?? null)}
            <Show when={bestOf(row) === index}>
              {' '}
              <CheckMark />
              <span class="visually-hidden"> better</span>
            </Show>
          </span>
          <Show when={index > 0}>
            <span class="difference">{messages().difference(row, index)}</span>
          </Show>
        </>
      ),
    })),
  ]);
  const table = (): DataTable => {
    const rows = comparison()?.rows ?? [];
    return {
      caption: 'Runs compared',
      rows: rows.length,
      columns: [
        { title: 'Number', unit: '', says: '', decimals: 0, values: rows.map(messages().rowTitle) },
        { title: 'Unit', unit: '', says: '', decimals: 0, values: rows.map(({ unit }) => unit) },
        ...runs().map(({ name }, index) => ({
          title: name,
          unit: '',
          says: '',
          decimals: 4,
          values: rows.map(({ values }) => values[index] ?? Number.NaN),
        })),
      ],
    };
  };

  return (
    <article class="answer compare-view" style={{ '--rows': done().length }} aria-labelledby="compare-title">
      <header class="answer-head">
        <h2 id="compare-title">Which run is better?</h2>
        <Show when={stale()}>
          <div class="compare-stale">
            <p>The still on the bench has changed. This comparison is of the one before.</p>
            <button type="button" aria-disabled={working()} onClick={() => !working() && void renew()}>
              Renew the comparison
            </button>
          </div>
        </Show>
        <OtherComparisons />
        <div
          class="answer-lead"
          role="status"
          classList={{ 'is-asking': stale() || compared().some(({ running }) => running) }}
        >
          <Show
            when={comparison()}
            fallback={
              <p>
                {compared().length < 2
                  ? 'Copy the run and change something in the copy, or compare a gentle boil with a hard one.'
                  : 'Running them…'}
              </p>
            }
          >
            {(found) => {
              const said = (isAlarm: boolean) => (
                <For each={found().conclusion.filter(({ kind }) => (kind === 'alarms') === isAlarm)}>
                  {(fact) => (
                    <p classList={{ 'answer-problem': isAlarm }}>
                      {wholeMessage(messages().conclusion(fact, found().runs))}
                    </p>
                  )}
                </For>
              );
              return (
                <>
                  {said(true)}
                  <Show
                    when={recommendation()}
                    fallback={
                      <p class="compare-choice">To recommend one, they are tried with other uncertain values…</p>
                    }
                  >
                    {(advice) => (
                      <>
                        <For each={words().dangers(advice(), found().runs)}>
                          {(danger) => <p class="answer-problem">{wholeMessage(danger)}</p>}
                        </For>
                        <p class="compare-choice">{wholeMessage(words().choice(advice(), found().runs))}</p>
                      </>
                    )}
                  </Show>
                  {said(false)}
                </>
              );
            }}
          </Show>
        </div>
        <Show when={comparison()}>
          <Draws
            session={draws}
            results={results()}
            recommendation={recommendation()}
            waiting={waiting()}
            units={units()}
          />
        </Show>
        <div class="answer-tools">
          <button
            type="button"
            class="is-first"
            aria-disabled={working()}
            onClick={() => !working() && void gentleAndHard()}
          >
            Gentle against hard
          </button>
          <Show when={compared().length < MOST_COMPARED}>
            <button type="button" onClick={addOwn}>
              Add the one on the bench
            </button>
          </Show>
          <Show when={comparison()}>
            <SaveBar
              of="the comparison"
              runName="runs"
              table={table}
              json={() => {
                const found = comparison();
                const advice = recommendation();
                return {
                  scenarios: compared().map(({ scenario }) => scenario),
                  ...(found && toldComparison(found, props.context.reader())),
                  recommendation: found && advice && toldRecommendation(advice, found.runs, englishReader(units())),
                };
              }}
            />
          </Show>
        </div>
        <p class="answer-quiet" role="status">
          {working() ? 'Setting up the runs…' : told()}
        </p>
      </header>
      <div class="compare-playback">
        <Show when={done().length > 0}>
          <PlaybackBar
            time_s={playback.time_s()}
            end_s={end_s()}
            playing={playback.playing()}
            speed={playback.speed()}
            runs={timelines()}
            reader={englishReader(props.context.units())}
            onTime={(time_s) => playback.setTime(time_s)}
            onPlay={() => playback.play()}
            onPause={() => playback.pause()}
            onSpeed={(speed) => playback.setSpeed(speed)}
          />
        </Show>
      </div>
      <div class="compare-cards" classList={{ 'are-four': compared().length === MOST_COMPARED }}>
        <Index each={compared()}>
          {(each, index) => (
            <CompareCard
              run={each()}
              placed={(options) => placedOf(each().id, options)}
              letter={LETTERS[index] ?? ''}
              time_s={playback.time_s}
              units={units()}
              reducedMotion={reducedMotion()}
              canCopy={compared().length < MOST_COMPARED}
              canRemove={compared().length > 1}
              onChange={(path, value) => changeCompared(pool, each().id, path, value)}
              onCopy={() => copy(each().id)}
              onRemove={() => {
                setTold('');
                removeCompared(each().id);
              }}
              onLoad={() => void load(each().id)}
            />
          )}
        </Index>
      </div>
      <div class="compare-detail" classList={{ 'is-paired': done().length === 2 }}>
        <Show when={comparison()}>
          {(found) => (
            <section aria-labelledby="differences-title">
              <h3 id="differences-title">The differences</h3>
              <AnswerTable
                class="compare-table"
                caption="The runs number by number, with the difference from run A"
                columns={columns()}
                rows={found().rows}
              />
            </section>
          )}
        </Show>
        <Show when={first()}>
          {(result) => (
            <section aria-label="Charts of the runs">
              <p class="answer-quiet compare-key">
                <For each={runs()}>
                  {(run, index) => (
                    <span class={`compare-line is-${index()}`}>
                      <svg width="36" height="8" aria-hidden="true">
                        <path d="M0,4H36" />
                      </svg>{' '}
                      {run.name}
                    </span>
                  )}
                </For>
              </p>
              <ChartColumn
                result={result()}
                runs={runs()}
                time_s={playback.time_s}
                onScrub={(time_s) => playback.setTime(time_s)}
                units={units()}
                theme={props.context.theme()}
                open={open()}
                onToggle={(id, isOpen) => setOpen((before) => ({ ...before, [id]: isOpen }))}
              />
            </section>
          )}
        </Show>
      </div>
    </article>
  );
}
