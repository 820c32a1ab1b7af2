/** Stills side by side: two to four runs on shared axes with one time mark, their differences, and what to conclude. */
import { createMediaQuery } from '@solid-primitives/media';
import { createEffect, createMemo, createSignal, For, Index, onMount, Show } from 'solid-js';
import {
  compareRuns,
  comparisonMessages,
  englishReader,
  MOST_COMPARED,
  toldComparison,
  type CompareRow,
  type Comparison,
  type RunResult,
} from '../../../sim/index.ts';
import { createPlayback, screenClock } from '../../state/playback.ts';
import type { NamedRun } from '../../charts/catalogue/runs.ts';
import { ChartColumn } from '../../charts/ChartColumn.tsx';
import type { DataTable } from '../../charts/export/data-table.ts';
import type { ChartId } from '../../charts/model/chart.ts';
import { PlaybackBar } from '../../charts/playback/Playback.tsx';
import { workerPool } from '../../workers/start-pool.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { AnswerTable, type TableColumn } from '../parts/AnswerTable.tsx';
import { CheckMark } from '../parts/marks.tsx';
import { SaveBar } from '../parts/SaveBar.tsx';
import { CompareCard } from './CompareCard.tsx';
import {
  addCompared,
  compared,
  changeCompared,
  freeName,
  openCompared,
  removeCompared,
  setCompared,
} from '../../state/comparison-store.ts';
import { REDUCED_MOTION } from '../../ui/reduced-motion.ts';
import { errorMessage, wasGivenUp } from '../../workers/errors.ts';
import { bestOf } from './best-of.ts';
import './compare.css';

const LETTERS = ['A', 'B', 'C', 'D'] as const;
/** Charts that show how boils differ; the others are a click away. */
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

const longest = (results: readonly RunResult[]): number => Math.max(60, ...results.map(({ summary }) => summary.end_s));

/** One time mark for all, over the longest of them. */
const createCommonPlayback = (results: () => readonly RunResult[]) =>
  createPlayback(() => longest(results()), screenClock, 'run-in-10-s');

export function CompareView(props: { readonly context: AnalysisContext }) {
  const pool = workerPool();
  const units = () => props.context.units();
  const messages = () => comparisonMessages(englishReader(units()));
  const [told, setTold] = createSignal('');
  const [working, setWorking] = createSignal(false);
  const reducedMotion = createMediaQuery(REDUCED_MOTION);
  const [open, setOpen] = createSignal(OPEN_CHARTS);
  onMount(() => void openCompared(pool, props.context.result().scenario));

  const done = createMemo(() => compared().flatMap((boil) => (boil.result ? [{ ...boil, result: boil.result }] : [])));
  const comparison = createMemo<Comparison | null>(() =>
    done().length < 2 ? null : compareRuns(done().map(({ result }) => result)),
  );
  const letterOf = (id: number): string => LETTERS[compared().findIndex((boil) => boil.id === id)] ?? '';
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
  const events = createMemo(() => [...(first()?.events ?? [])].sort((a, b) => a.time_s - b.time_s));

  const gentleAndHard = async () => {
    setWorking(true);
    setTold('');
    try {
      const scenario = props.context.result().scenario;
      const { gentle, hard } = await pool.ask('gentleAgainstHard', [scenario], { priority: 'high' });
      setCompared(pool, [gentle, hard]);
      setTold(`A is “${scenario.name}” boiled gently, B the same boiled hard, until as much distillate has come over.`);
    } catch (error) {
      if (!wasGivenUp(error)) setTold(`They could not be set up: ${errorMessage(error)}`);
    }
    setWorking(false);
  };
  const copy = (id: number) => {
    const boil = compared().find((each) => each.id === id);
    if (!boil) return;
    setTold('');
    addCompared(pool, [{ ...boil.scenario, name: freeName(boil.scenario.name) }]);
  };
  const load = async (id: number) => {
    const boil = compared().find((each) => each.id === id);
    if (!boil) return;
    setTold((await props.context.load(boil.scenario)) ?? `“${boil.scenario.name}” is on the bench.`);
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
      caption: 'Boils compared',
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
    <article class="answer compare-view" aria-labelledby="compare-title">
      <header class="answer-head">
        <h2 id="compare-title">Which boil is better?</h2>
        <div class="answer-lead" role="status" classList={{ 'is-asking': compared().some(({ running }) => running) }}>
          <Show
            when={comparison()}
            fallback={
              <p>
                {compared().length < 2
                  ? 'Copy the boil and change something in the copy, or set a gentle boil against a hard one.'
                  : 'Running them…'}
              </p>
            }
          >
            {(found) => <For each={messages().conclusions(found())}>{(sentence) => <p>{sentence}</p>}</For>}
          </Show>
        </div>
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
            <button
              type="button"
              onClick={() =>
                addCompared(pool, [
                  {
                    ...props.context.scenario(),
                    name: compared().some(({ scenario }) => scenario.name === props.context.scenario().name)
                      ? freeName(props.context.scenario().name)
                      : props.context.scenario().name,
                  },
                ])
              }
            >
              Add the one on the bench
            </button>
          </Show>
          <Show when={comparison()}>
            <SaveBar
              of="the comparison"
              runName="boils"
              table={table}
              json={() => {
                const found = comparison();
                return {
                  boils: compared().map(({ scenario }) => scenario),
                  ...(found && toldComparison(found, englishReader(units()))),
                };
              }}
            />
          </Show>
        </div>
        <p class="answer-quiet" role="status">
          {working() ? 'Setting up a gentle and a hard boil…' : told()}
        </p>
      </header>
      <div class="compare-playback">
        <Show when={done().length > 0}>
          <PlaybackBar
            time_s={playback.time_s()}
            end_s={end_s()}
            playing={playback.playing()}
            speed={playback.speed()}
            events={events()}
            reader={englishReader(props.context.units())}
            mostOil_s={first()?.summary.t90_s ?? null}
            onTime={(time_s) => playback.setTime(time_s)}
            onPlay={() => playback.play()}
            onPause={() => playback.pause()}
            onSpeed={(speed) => playback.setSpeed(speed)}
          />
        </Show>
      </div>
      <div class="compare-cards" classList={{ 'are-four': compared().length === MOST_COMPARED }}>
        <Index each={compared()}>
          {(boil, index) => (
            <CompareCard
              boil={boil()}
              letter={LETTERS[index] ?? ''}
              time_s={playback.time_s}
              units={units()}
              reducedMotion={reducedMotion()}
              canCopy={compared().length < MOST_COMPARED}
              canRemove={compared().length > 1}
              onChange={(path, value) => changeCompared(pool, boil().id, path, value)}
              onCopy={() => copy(boil().id)}
              onRemove={() => {
                setTold('');
                removeCompared(boil().id);
              }}
              onLoad={() => void load(boil().id)}
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
                caption="The boils number by number, with the difference from boil A"
                columns={columns()}
                rows={found().rows}
              />
            </section>
          )}
        </Show>
        <Show when={first()}>
          {(result) => (
            <section aria-label="Charts of the boils">
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
