/** During the run: the time, what comes next, what rings, the log, the forecast, and the end. */
import { createMemo, createSignal, For, Show } from 'solid-js';
import {
  forecastMessages,
  formatDuration,
  quantities,
  runSheetMessages,
  type Forecast,
  type SheetStep,
} from '../../../sim/index.ts';
import { ChartGroup } from '../../charts/ChartGroup.tsx';
import { openRun } from '../../state/opened-run.ts';
import { sinceStart, standing, stepsOf, type StillEntry } from '../../state/still-run.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { AlarmCheck } from './AlarmCheck.tsx';
import { Photo } from '../parts/Photo.tsx';
import { forecastChart } from './forecast-chart.ts';
import { isNumberKind, kindUnitOf, NUMBER_KINDS, OTHER_WORDS, shownValue } from './log-kinds.ts';
import { LogPad, type OnPad } from './LogPad.tsx';
import { Ringing } from './Ringing.tsx';
import { stillSession } from './session.ts';
import { SheetTable } from './SheetTable.tsx';

export function RunningPanel(props: { readonly context: AnalysisContext }) {
  const session = stillSession();
  const reader = () => props.context.reader();
  const sheetWords = () => runSheetMessages(reader());
  const [onPad, setOnPad] = createSignal<OnPad | null>(null);
  const [ending, setEnding] = createSignal(false);
  const elapsedMinutes = createMemo(() => Math.floor(session.elapsed_s() / 60));
  const clock = () => (elapsedMinutes() === 0 ? '0 min' : formatDuration(60 * elapsedMinutes()));
  const next = () => session.coming()[0];
  const entries = createMemo<readonly StillEntry[]>(() => {
    const run = session.run();
    return run === null
      ? []
      : standing(run)
          .filter(({ kind }) => kind !== 'silenced')
          .toReversed();
  });
  /** Deleted last; its line stays until something else is done, with the way back. */
  const [deleted, setDeleted] = createSignal<StillEntry | null>(null);
  const doneAt = (step: SheetStep): string | null => {
    const run = session.run();
    if (run === null || session.coming().includes(step)) return null;
    const entry =
      stepsOf(run, 'done').get(step.id) ??
      standing(run).find(
        ({ kind, place }) =>
          kind === step.kind && (kind === 'first-drop' || ('place' in step.values && step.values.place === place)),
      );
    return entry ? minute(entry) : 'at the start';
  };
  const minute = (entry: StillEntry): string => {
    const run = session.run();
    const since = run === null ? 0 : sinceStart(run, entry.at_ms);
    return since < 30 ? 'at the start' : formatDuration(60 * Math.round(since / 60));
  };
  const what = ({ kind, value, text }: StillEntry): string => {
    if (isNumberKind(kind))
      return `${NUMBER_KINDS[kind].words} ${value === null ? '–' : shownValue(kind, value, reader().units)} ${kindUnitOf(kind, reader().units).label}`.trim();
    if (kind === 'done') {
      const step = session.sheet().find(({ id }) => id === text);
      return step ? `Done: ${sheetWords().step(step).title}` : 'Done';
    }
    return text === '' || kind === 'photo' ? OTHER_WORDS[kind] : `${OTHER_WORDS[kind]}: ${text}`;
  };
  const remove = (entry: StillEntry) => {
    session.change(entry.id, { gone: true });
    setDeleted(entry);
  };
  const bringBack = (entry: StillEntry) => {
    session.change(entry.id, { gone: false });
    setDeleted(null);
  };
  const end = () => {
    const id = session.end(reader().units);
    if (id === null) return;
    openRun(id);
    location.hash = '#run-book';
  };

  return (
    <>
      <header class="answer-head still-head">
        <h2>At the still</h2>
        <p class="still-clock" role="timer" aria-label="Since the heat went on">
          {clock()}
        </p>
        <Show when={session.refused()}>
          <p class="answer-problem" role="alert">
            This browser stores nothing for this page. Write your readings on paper too.
          </p>
        </Show>
      </header>
      <Ringing reader={reader()} />
      <Show when={next()}>
        {(step) => (
          <section class="next" aria-labelledby="next-title">
            <p class="next-when" id="next-title">
              {sheetWords().due(step().at_s - session.elapsed_s())}
            </p>
            <p class="next-what">{sheetWords().step(step()).title}</p>
            <p>{sheetWords().step(step()).look}</p>
            <Show when={sheetWords().step(step()).danger}>
              {(danger) => (
                <p class="sheet-danger">
                  <strong>Danger:</strong> {danger()}
                </p>
              )}
            </Show>
            <button type="button" class="tall is-first" onClick={() => session.done(step())}>
              {step().kind === 'first-drop' ? 'First drop: now' : 'Done'}
              <span class="visually-hidden"> {sheetWords().step(step()).title}</span>
            </button>
          </section>
        )}
      </Show>
      <LogPad reader={reader()} onPad={onPad()} setPad={setOnPad} />
      <section aria-labelledby="forecast-title">
        <h3 id="forecast-title">How it will end</h3>
        <Show
          when={session.forecast()}
          fallback={
            <p class="answer-quiet" role="status">
              {session.forecastProblem() ?? 'Working out the likely runs…'}
            </p>
          }
        >
          {(facts) => <ForecastPanel facts={facts()} context={props.context} working={session.forecasting()} />}
        </Show>
      </section>
      <section aria-labelledby="logged-title">
        <h3 id="logged-title">Logged</h3>
        <p class="logged-gone" role="status">
          <Show when={deleted()}>
            {(entry) => (
              <>
                Deleted: {what(entry())}.{' '}
                <button type="button" class="tall" onClick={() => bringBack(entry())}>
                  Undo<span class="visually-hidden"> deleting {what(entry())}</span>
                </button>
              </>
            )}
          </Show>
        </p>
        <Show when={entries().length > 0} fallback={<p class="answer-quiet">Nothing yet.</p>}>
          <ul class="logged">
            <For each={entries()}>
              {(entry) => (
                <li class="logged-entry">
                  <span class="logged-when">{minute(entry)}</span>
                  <span class="logged-what">
                    {what(entry)}
                    <Show when={entry.kind === 'photo'}>
                      <Photo id={entry.text} title={`Photo, ${minute(entry)}`} />
                    </Show>
                  </span>
                  <span class="logged-acts">
                    <Show when={entry.kind !== 'done'}>
                      <button type="button" class="tall" onClick={() => setOnPad({ kind: entry.kind, entry })}>
                        Correct<span class="visually-hidden"> {what(entry)}</span>
                      </button>
                    </Show>
                    <button type="button" class="tall" onClick={() => remove(entry)}>
                      Delete<span class="visually-hidden"> {what(entry)}</span>
                    </button>
                  </span>
                </li>
              )}
            </For>
          </ul>
        </Show>
      </section>
      <section aria-labelledby="running-sheet-title">
        <h3 id="running-sheet-title">Run sheet</h3>
        <SheetTable steps={session.sheet()} reader={reader()} doneAt={doneAt} onDone={(step) => session.done(step)} />
      </section>
      <section class="still-end screen-only" aria-label="End">
        <Show
          when={ending()}
          fallback={
            <button type="button" class="tall" onClick={() => setEnding(true)}>
              End the run
            </button>
          }
        >
          <p>Is the heat off? The run goes into the run book with all its readings.</p>
          <div class="answer-tools">
            <button type="button" class="tall is-first" onClick={end}>
              End it
            </button>
            <button type="button" class="tall" onClick={() => setEnding(false)}>
              Not yet
            </button>
          </div>
        </Show>
      </section>
      <AlarmCheck />
    </>
  );
}

function ForecastPanel(props: {
  readonly facts: Forecast;
  readonly context: AnalysisContext;
  readonly working: boolean;
}) {
  const words = () => forecastMessages(props.context.reader());
  const charts = createMemo(() => [forecastChart(props.facts)]);
  const q = () => quantities(props.context.reader());
  return (
    <div class="forecast">
      <p class="answer-lead is-small" role="status">
        {words().lead(props.facts)}
      </p>
      <For each={props.facts.readings}>
        {(reading) => (
          <Show when={words().doubted(reading)}>
            {(said) => (
              <p class="answer-problem">
                {said().sentence} {said().advice}
              </p>
            )}
          </Show>
        )}
      </For>
      <For each={words().dangers(props.facts)}>
        {({ sentence, advice }) => (
          <p class="answer-problem">
            {sentence} {advice}
          </p>
        )}
      </For>
      <dl class="forecast-lines">
        <For each={words().lines(props.facts)}>
          {({ name, value, range }) => (
            <div>
              <dt>{name}</dt>
              <dd>
                <span class="forecast-value">{value}</span>{' '}
                <span class="forecast-range">{range === null ? '' : range}</span>
              </dd>
            </div>
          )}
        </For>
      </dl>
      <p class="answer-quiet">
        {props.working
          ? 'First look: more likely runs near what you read are being made, and the ranges will narrow. '
          : ''}
        {words().ranges(props.facts)} {props.facts.at_s > 0 ? `As of ${q().time(props.facts.at_s)}. ` : ''}
        {words().watch}
      </p>
      <ChartGroup
        charts={charts()}
        runName={props.context.scenario().name}
        end_s={props.facts.end_s}
        units={props.context.units()}
        theme={props.context.theme()}
      />
    </div>
  );
}
