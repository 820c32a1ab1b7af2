/** One log: its name and notes, its readings, the model over them, and the fit. */
import { createEffect, createMemo, createSignal, For, on, Show } from 'solid-js';
import {
  englishReader,
  fitMessages,
  readScenario,
  type LogReading,
  type RunResult,
  type Scenario,
} from '../../../sim/index.ts';
import { workerPool } from '../../workers/start-pool.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { createQuery } from '../../state/query.ts';
import { ChartGroup } from '../../charts/ChartGroup.tsx';
import { SaveBar } from '../parts/SaveBar.tsx';
import { FitPanel, type DoneFit, type OtherLog } from './FitPanel.tsx';
import { NextPlan } from './NextPlan.tsx';
import { logChart, residualChart, type ModelLine } from './log-charts.ts';
import { logTable } from './log-files.ts';
import {
  isBlank,
  LOG_UNITS,
  minutesIn,
  TIME_ZEROS,
  readPasted,
  readRows,
  unitsFor,
  unitsNamed,
  type LogUnits,
  type Pasted,
  type TimeZero,
} from '../../state/logbook.ts';
import type { LoggedRun } from '../../state/logbook-schema.ts';
import { jsonWithPhotos } from '../../state/photo-file.ts';
import { logbook } from '../../state/logbook-store.ts';
import { LogTable } from './LogTable.tsx';
import { RunPhotos } from './RunPhotos.tsx';
import { RunDetails } from './RunDetails.tsx';
import { PasteBox } from './PasteBox.tsx';

export interface LogEditorProps {
  readonly log: LoggedRun;
  readonly context: AnalysisContext;
  readonly onChange: (changed: Partial<Omit<LoggedRun, 'id'>>) => void;
  readonly onKeep: (name: string, fit: DoneFit) => void;
  /** Puts the still that the log was begun with on the bench. */
  readonly onLoad: () => void;
}

/** What a scenario says of the still and its run, to compare two; `null` for a log without one. */
const readStill = (scenario: unknown): string | null =>
  typeof scenario === 'object' && scenario !== null
    ? JSON.stringify({ ...scenario, name: '', note: '', factors: null })
    : null;

/** What makes a still the same one, whatever it is charged with and however it is heated. */
const builtAs = ({ pot, boiler, neck, condenser }: Scenario): string =>
  JSON.stringify([{ ...pot, water_kg: 0, waterTemperature_K: 0 }, boiler, neck, condenser]);

/** Fits of this visit, by log: they can be made again, so only the stills that are kept from them are stored. */
const fits = new Map<string, DoneFit>();

type NotTaken = Pick<Pasted, 'problems' | 'passedOver' | 'otherOil'>;
const NOTHING: NotTaken = { problems: [], passedOver: [], otherOil: null };
/** The last reading stands clear of the edge of the chart. */
const ROOM_AFTER = 1.03;

const ZERO_WORDS: Readonly<Record<TimeZero, string>> = {
  'heat-on': 'heat on',
  'first-drop': 'the first drop',
  clock: 'midnight: times of the clock',
};

const UNIT_TITLES = { oil: 'Oil in', temperature: 'Temperatures in', distillate: 'Distillate in' } as const;

export function LogEditor(props: LogEditorProps) {
  const [fit, setFit] = createSignal<DoneFit | null>(null);
  const [notTaken, setNotTaken] = createSignal<NotTaken>(NOTHING);
  const id = createMemo(() => props.log.id);
  createEffect(
    on(id, (now) => {
      setFit(fits.get(now) ?? null);
      setNotTaken(NOTHING);
    }),
  );
  const read = createMemo(() => readRows(props.log));
  const scenario = createMemo<Scenario>(() => props.context.result().scenario);
  const others = createMemo<readonly OtherLog[]>(() => {
    const own = builtAs(scenario());
    return logbook().logs.flatMap((log): readonly OtherLog[] => {
      if (log.id === props.log.id) return [];
      const still = readScenario(log.scenario);
      const { points } = readRows(log);
      return still.ok && points.length > 0 && builtAs(still.scenario) === own
        ? [{ id: log.id, name: log.name, scenario: still.scenario, points }]
        : [];
    });
  });
  const fitted = () => fit()?.answer.fitted ?? null;
  const fittedRun = createQuery(workerPool(), 'run', () => {
    const found = fitted();
    return found ? [found.scenario] : null;
  });
  const fittedResult = (): RunResult | null => {
    const answer = fittedRun.answer();
    return fitted() && answer?.kind === 'ran' ? answer.result : null;
  };
  const lines = createMemo<readonly ModelLine[]>(() => {
    const asSet: ModelLine = { label: 'As set', result: props.context.result() };
    const found = fittedResult();
    return found ? [{ label: 'Fitted', result: found }, asSet] : [asSet];
  });
  /** Names, notes and factors, which a fit changes, do not make another still. */
  const isOtherStill = createMemo(() => {
    const begun = readStill(props.log.scenario);
    return begun !== null && begun !== readStill(props.context.scenario());
  });
  const zeroIsKnown = () => props.log.zero === 'heat-on' || minutesIn(props.log.zeroAt) !== null;
  const lastPoint_s = () => Math.max(0, ...read().points.map(({ time_s }) => time_s));
  const end_s = () => Math.max(ROOM_AFTER * lastPoint_s(), ...lines().map(({ result }) => result.summary.end_s));
  const charts = createMemo(() => {
    const calibration = fit()?.answer.calibration;
    const chart = logChart(lines(), read().points);
    return calibration?.ok === true ? [chart, residualChart(calibration, end_s())] : [chart];
  });

  const take = (text: string, reading?: LogReading) => {
    // A log without readings takes over the units that are pasted; one with readings keeps its own.
    const own = props.log.rows.every(isBlank) ? unitsNamed(text, props.log.units) : props.log.units;
    const units = unitsFor(readPasted(text, own, reading).points, own);
    const pasted = readPasted(text, units, reading);
    setNotTaken(pasted);
    props.onChange({
      units,
      rows: [...props.log.rows.filter((row) => !isBlank(row)), ...pasted.rows],
      draft: pasted.left,
    });
  };
  const notTakenWords = (): readonly string[] => {
    const { pointsProblem, otherOil } = fitMessages(englishReader(props.context.units()));
    const { problems, otherOil: left } = notTaken();
    return [...problems.map(pointsProblem), ...(left === null ? [] : [otherOil(left)])];
  };
  const setUnit = <K extends keyof LogUnits>(kind: K, unit: LogUnits[K]) =>
    props.onChange({ units: { ...props.log.units, [kind]: unit } });

  return (
    <div class="log-editor">
      <div class="log-names">
        <label class="log-name">
          <span>Name</span>
          <input
            class="text-input"
            type="text"
            maxlength="120"
            value={props.log.name}
            onInput={(event) => props.onChange({ name: event.currentTarget.value })}
          />
        </label>
        <For each={Object.keys(UNIT_TITLES) as (keyof LogUnits)[]}>
          {(kind) => (
            <label class="answer-choice">
              <span>{UNIT_TITLES[kind]}</span>
              <select onChange={(event) => setUnit(kind, event.currentTarget.value as LogUnits[typeof kind])}>
                <For each={LOG_UNITS[kind]}>
                  {(unit) => (
                    <option value={unit} selected={unit === props.log.units[kind]}>
                      {unit}
                    </option>
                  )}
                </For>
              </select>
            </label>
          )}
        </For>
      </div>
      <RunDetails log={props.log} reader={props.context.reader()} onChange={(facts) => props.onChange({ facts })} />
      <div class="log-entry">
        <div class="log-zero">
          <label class="answer-choice">
            <span>Times count from</span>
            <select
              onChange={(event) => props.onChange({ zero: TIME_ZEROS[event.currentTarget.selectedIndex] ?? 'heat-on' })}
            >
              <For each={TIME_ZEROS}>
                {(zero) => (
                  <option value={zero} selected={zero === props.log.zero}>
                    {ZERO_WORDS[zero]}
                  </option>
                )}
              </For>
            </select>
          </label>
          <Show when={props.log.zero !== 'heat-on'}>
            <label class="answer-choice">
              <span>{props.log.zero === 'clock' ? 'Heat went on at' : 'First drop came after'}</span>
              <input
                class="text-input log-zero-at"
                type="text"
                autocomplete="off"
                placeholder={props.log.zero === 'clock' ? '9:40' : '27 min'}
                aria-invalid={zeroIsKnown() ? undefined : 'true'}
                value={props.log.zeroAt}
                onInput={(event) => props.onChange({ zeroAt: event.currentTarget.value })}
              />
            </label>
          </Show>
        </div>
        <Show when={!zeroIsKnown()}>
          <p class="answer-problem" role="alert">
            {props.log.zero === 'clock'
              ? 'Say when the heat went on, as 9:40. Until then no time of this log is known.'
              : 'Say how long the first drop took from heat on, as 27 min. Until then no time of this log is known.'}
          </p>
        </Show>
        <LogTable
          log={props.log}
          units={props.context.units()}
          problems={read().problems}
          onRows={(rows) => props.onChange({ rows })}
          onPaste={(draft) => props.onChange({ draft })}
        />
        <Show when={read().problems.size > 0}>
          <p class="answer-quiet">
            {read().problems.size === 1
              ? '1 line cannot be read. It is left out of the chart and the fit.'
              : `${read().problems.size} lines cannot be read. They are left out of the chart and the fit.`}
          </p>
        </Show>
        <PasteBox
          draft={props.log.draft}
          units={props.context.units()}
          problems={notTakenWords()}
          passedOver={notTaken().passedOver}
          onDraft={(draft) => props.onChange({ draft })}
          onTake={(reading) => take(props.log.draft, reading)}
        />
        <label class="log-notes">
          <span class="answer-quiet">Notes</span>
          <textarea
            class="text-input"
            rows="2"
            value={props.log.notes}
            onInput={(event) => props.onChange({ notes: event.currentTarget.value })}
          />
        </label>
        <RunPhotos log={props.log} onChange={(photos) => props.onChange({ photos })} />
        <SaveBar
          of="this log"
          runName={props.log.name}
          table={() => logTable(props.log)}
          json={() => jsonWithPhotos({ logs: [props.log], stills: [], unread: [] })}
        />
      </div>
      <div class="log-shown">
        <p class="answer-quiet">
          Shown over “{scenario().name}” as it stands on the bench.
          <Show when={lastPoint_s() > props.context.result().summary.end_s}>
            {' '}
            The log goes on for longer than that run.
          </Show>
        </p>
        <Show when={isOtherStill()}>
          <div class="log-still">
            <p class="answer-quiet">This log was begun with another still, so the two may not belong together.</p>
            <button type="button" onClick={() => void props.onLoad()}>
              Put the still of this log on the bench
            </button>
          </div>
        </Show>
        <Show when={charts().length > 1}>
          <p class="answer-quiet">
            Below, measured less predicted: points should lie on both sides of the line, and mostly within the band of
            two uncertainties.
          </p>
        </Show>
        <ChartGroup
          charts={charts()}
          runName={props.log.name}
          end_s={end_s()}
          units={props.context.units()}
          theme={props.context.theme()}
        />
      </div>
      <FitPanel
        scenario={scenario()}
        units={props.context.units()}
        points={read().points}
        others={others()}
        factors={props.log.factors}
        logName={props.log.name}
        done={fit()}
        onFactors={(factors) => props.onChange({ factors })}
        onDone={(done) => {
          fits.set(props.log.id, done);
          setFit(done);
        }}
        onKeep={(name) => {
          const done = fit();
          if (done) props.onKeep(name, done);
        }}
      />
      <NextPlan log={props.log} fit={fit()} points={read().points} context={props.context} />
    </div>
  );
}
