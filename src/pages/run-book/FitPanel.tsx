/** Fits up to three factors of the model to a log, and says how sure they are. */
import { createMemo, createSignal, For, Show } from 'solid-js';
import {
  englishReader,
  FIT_NAMES,
  fitMessages,
  MOST_FACTORS,
  toldFit,
  type Fit,
  type FitName,
  type FittedFactor,
  type LoggedPoint,
  type LoggedStill,
  type Scenario,
  type UnitSystem,
} from '../../../sim/index.ts';
import type { DataTable } from '../../charts/export/data-table.ts';
import { workerPool } from '../../workers/start-pool.ts';
import type { FitAnswer } from '../../workers/analysis-tasks.ts';
import { AnswerTable, type TableColumn } from '../parts/AnswerTable.tsx';
import { SaveBar } from '../parts/SaveBar.tsx';
import { errorMessage, wasGivenUp } from '../../workers/errors.ts';

/** A fit, and what it was made of, so that the page can say when it is out of date. */
export interface DoneFit {
  readonly of: {
    readonly scenario: Scenario;
    readonly points: readonly LoggedPoint[];
    readonly together: readonly LoggedStill[];
  };
  readonly answer: FitAnswer;
}

/** Another log of the book, with its still as it was logged. */
export interface OtherLog extends LoggedStill {
  readonly id: string;
  readonly name: string;
}

export interface FitPanelProps {
  readonly scenario: Scenario;
  readonly points: readonly LoggedPoint[];
  /** Other runs of the same still, which may be fitted together with this one. */
  readonly others: readonly OtherLog[];
  readonly factors: readonly FitName[];
  readonly logName: string;
  readonly units: UnitSystem;
  readonly done: DoneFit | null;
  readonly onFactors: (names: readonly FitName[]) => void;
  readonly onDone: (fit: DoneFit) => void;
  /** Keeps the fitted still under a name. */
  readonly onKeep: (name: string) => void;
}

type Messages = ReturnType<typeof fitMessages>;

const columnsFor = (messages: Messages): readonly TableColumn<FittedFactor>[] => [
  { id: 'factor', title: 'Factor', isWords: true, cell: ({ name }) => messages.factorTitle(name) },
  { id: 'value', title: 'Fitted', cell: ({ value }) => messages.factor(value) },
  { id: 'range', title: '90 % interval', cell: (factor) => (factor.held ? '–' : messages.interval(factor)) },
  { id: 'was', title: 'Before', cell: ({ start }) => messages.factor(start) },
  { id: 'means', title: 'Which means', isWords: true, cell: messages.meaning },
];

export function FitPanel(props: FitPanelProps) {
  const [fitting, setFitting] = createSignal<AbortController | null>(null);
  const [problem, setProblem] = createSignal<string | null>(null);
  const [name, setName] = createSignal<string | null>(null);
  const [kept, setKept] = createSignal<string | null>(null);
  const [taken, setTaken] = createSignal<ReadonlySet<string>>(new Set());
  const together = createMemo<readonly LoggedStill[]>(() =>
    props.others.filter(({ id }) => taken().has(id)).map(({ scenario, points }) => ({ scenario, points })),
  );
  const take = (id: string, on: boolean) =>
    setTaken((before) => {
      const after = new Set(before);
      if (on) after.add(id);
      else after.delete(id);
      return after;
    });
  const calibration = () => props.done?.answer.calibration ?? null;
  const fit = createMemo<Fit | null>(() => {
    const found = calibration();
    return found?.ok === true ? found : null;
  });
  const reader = () => englishReader(props.units);
  const messages = () => fitMessages(reader());
  const refusal = () => {
    const found = calibration();
    return found?.ok === false ? messages().refusal(found.problem) : null;
  };
  const inJson = () => {
    const found = fit();
    return found === null
      ? (props.done?.answer ?? null)
      : { ...props.done?.answer, calibration: toldFit(found, reader()) };
  };
  const outOfDate = () => {
    const done = props.done;
    return (
      done !== null &&
      JSON.stringify(done.of) !==
        JSON.stringify({ scenario: props.scenario, points: props.points, together: together() })
    );
  };

  const toggle = (factor: FitName, on: boolean) => {
    const others = props.factors.filter((other) => other !== factor);
    props.onFactors(on ? FIT_NAMES.filter((other) => others.includes(other) || other === factor) : others);
  };
  const start = async () => {
    const controller = new AbortController();
    const of = { scenario: props.scenario, points: props.points, together: together() };
    setFitting(controller);
    setProblem(null);
    setKept(null);
    try {
      const answer = await workerPool().ask(
        'calibrate',
        [[of, ...of.together].map(({ scenario, points }) => ({ scenario, points })), props.factors],
        { signal: controller.signal, priority: 'high' },
      );
      props.onDone({ of, answer });
    } catch (error) {
      if (!wasGivenUp(error)) setProblem(`The fit stopped: ${errorMessage(error)}`);
    }
    setFitting((now) => (now === controller ? null : now));
  };
  const stillName = () => name() ?? `${props.scenario.name}, as logged`;
  const table = (): DataTable => {
    const rows = fit()?.factors ?? [];
    return {
      caption: 'Fitted factors',
      rows: rows.length,
      columns: [
        {
          title: 'Factor',
          unit: '',
          says: '',
          decimals: 0,
          values: rows.map(({ name: factor }) => messages().factorTitle(factor)),
        },
        { title: 'Fitted', unit: '', says: '', decimals: 3, values: rows.map(({ value }) => value) },
        { title: '90 % low', unit: '', says: '', decimals: 3, values: rows.map(({ low }) => low) },
        { title: '90 % high', unit: '', says: '', decimals: 3, values: rows.map(({ high }) => high) },
        { title: 'Before', unit: '', says: '', decimals: 3, values: rows.map(({ start: was }) => was) },
      ],
    };
  };

  return (
    <section class="fit-panel" aria-labelledby="fit-title">
      <h3 id="fit-title">Fit the still to these readings</h3>
      <fieldset class="fit-factors">
        <legend class="answer-quiet">
          What may differ between your still and the model, up to {MOST_FACTORS} at a time:
        </legend>
        <div class="fit-choices">
          <For each={FIT_NAMES}>
            {(factor) => (
              <label class="toggle fit-factor">
                <input
                  type="checkbox"
                  checked={props.factors.includes(factor)}
                  disabled={!props.factors.includes(factor) && props.factors.length >= MOST_FACTORS}
                  onChange={(event) => toggle(factor, event.currentTarget.checked)}
                />{' '}
                <span title={messages().factorHelp(factor)}>{messages().factorTitle(factor)}</span>
              </label>
            )}
          </For>
        </div>
      </fieldset>
      <Show when={props.others.length > 0}>
        <fieldset class="fit-factors">
          <legend class="answer-quiet">
            Fit together with other runs of this still: one set of factors for all, each run with its own charge, heat
            and water.
          </legend>
          <div class="fit-choices">
            <For each={props.others}>
              {(other) => (
                <label class="toggle fit-factor">
                  <input
                    type="checkbox"
                    checked={taken().has(other.id)}
                    onChange={(event) => take(other.id, event.currentTarget.checked)}
                  />{' '}
                  <span>{other.name === '' ? 'without a name' : other.name}</span>
                </label>
              )}
            </For>
          </div>
        </fieldset>
      </Show>
      <div class="answer-tools">
        <Show
          when={fitting()}
          fallback={
            <button
              type="button"
              class="is-first"
              aria-disabled={props.factors.length === 0}
              onClick={() => props.factors.length > 0 && void start()}
            >
              Fit
            </button>
          }
        >
          {(running) => (
            <>
              <span role="status">Fitting: running the still again and again…</span>
              <button type="button" onClick={() => running().abort()}>
                Stop<span class="visually-hidden"> fitting</span>
              </button>
            </>
          )}
        </Show>
      </div>
      <Show when={problem() ?? refusal()}>
        {(told) => (
          <p class="answer-problem" role="alert">
            {told()}
          </p>
        )}
      </Show>
      <Show when={fit()}>
        {(found) => (
          <>
            <p class="answer-lead is-small" role="status">
              {messages().lead(found())}
            </p>
            <Show when={outOfDate()}>
              <p class="answer-quiet">The still or the readings have changed since this fit. Fit again.</p>
            </Show>
            <AnswerTable
              caption="Fitted factors with their 90 % intervals"
              columns={columnsFor(messages())}
              rows={found().factors}
            />
            <Show when={found().notes.length > 0}>
              <ul class="fit-notes">
                <For each={found().notes}>{(note) => <li>{messages().note(note)}</li>}</For>
              </ul>
            </Show>
            <SaveBar of="the fit" runName={props.logName} table={table} json={inJson} />
            <form
              class="fit-keep"
              onSubmit={(event) => {
                event.preventDefault();
                const called = stillName().trim();
                if (called === '') return;
                props.onKeep(called);
                setKept(called);
              }}
            >
              <label>
                <span class="answer-quiet">Save the fitted still as </span>
                <input
                  class="text-input"
                  type="text"
                  maxlength="120"
                  value={stillName()}
                  onInput={(event) => setName(event.currentTarget.value)}
                />
              </label>
              <button type="submit">Save</button>
              <span role="status">{kept() === null ? '' : `Saved as “${kept()}”.`}</span>
            </form>
          </>
        )}
      </Show>
      <p class="answer-quiet screen-only">
        A thermometer tells some of it without a run: <a href="#still-tests">test the still without plant</a>.
      </p>
      <details class="fit-sure">
        <summary>How sure each reading is taken to be</summary>
        <ul class="answer-quiet">
          <For each={messages().uncertainties()}>{(sentence) => <li>{sentence}</li>}</For>
        </ul>
      </details>
    </section>
  );
}
