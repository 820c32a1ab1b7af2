/** One test: why, what it needs, its steps, its danger, the fields for what is read, and what was found. */
import { createMemo, createSignal, For, Show } from 'solid-js';
import {
  bandsOfTest,
  flowToTry,
  homeTestMessages,
  homeTestSheet,
  settingsOf,
  wholeMessage,
  type HomeTest,
  type Scenario,
  type TestedValue,
  type TestFound,
} from '../../../sim/index.ts';
import {
  addTestRow,
  askedOf,
  clearTest,
  homeTests,
  missingOf,
  readInTest,
  sayOfTest,
  TEST_NOTES,
} from '../../state/home-test-store.ts';
import { keepStill, keptBandsFor, logbook, removeStill } from '../../state/logbook-store.ts';
import { newId } from '../../state/new-id.ts';
import { createQuery } from '../../state/query.ts';
import { QuantityField } from '../../ui/QuantityField.tsx';
import { workerPool } from '../../workers/start-pool.ts';
import type { AnalysisContext } from '../parts/analysis-context.ts';
import { AnswerTable, type TableColumn } from '../parts/AnswerTable.tsx';
import { ToldLine, type Told } from '../parts/ToldLine.tsx';
import { SheetButton } from '../working/SheetButton.tsx';
import { TEST_FIELDS, type TestField } from './test-fields.ts';

export interface TestSheetProps {
  readonly test: HomeTest;
  readonly still: Scenario;
  readonly context: AnalysisContext;
}

type Messages = ReturnType<typeof homeTestMessages>;

const columnsFor = (messages: Messages): readonly TableColumn<TestedValue>[] => [
  { id: 'name', title: 'Value', isWords: true, cell: messages.name },
  { id: 'found', title: 'Found', cell: (found) => messages.value(found, found.value) },
  { id: 'range', title: '90 % interval', cell: (found) => (found.open === 'both' ? '–' : messages.interval(found)) },
  { id: 'was', title: 'Before', cell: (found) => messages.value(found, found.start) },
  { id: 'means', title: 'Which means', isWords: true, cell: messages.meaning },
];

const KETTLE_K = 368.15;

export function TestSheet(props: TestSheetProps) {
  const messages = () => homeTestMessages(props.context.reader());
  const words = () => messages().words(props.test, props.still);
  const noted = () => homeTests()[props.test];
  const fieldOf = (name: string): TestField => TEST_FIELDS[props.test][name] as TestField;
  const missing = createMemo(() => missingOf(props.test, noted()));
  const asked = createMemo(() => askedOf(props.test, noted()));
  const query = createQuery(workerPool(), 'homeTest', () => {
    const given = asked();
    return given === null ? null : [props.still, given];
  });
  const [told, setTold] = createSignal<Told | null>(null);
  const found = createMemo<TestFound | null>(() => {
    const answer = asked() === null ? null : query.answer();
    return answer?.ok === true && answer.test === props.test ? answer : null;
  });
  const refusal = () => {
    const answer = asked() === null ? null : query.answer();
    return answer?.ok === false && answer.test === props.test ? wholeMessage(messages().refusal(answer.problem)) : null;
  };
  const hint = createMemo(() => {
    if (props.test !== 'coil') return null;
    const [first] = noted().rows;
    const { flow_kg_s, outlet_K } = flowToTry(
      props.still,
      noted().said['length_m'] ?? props.still.condenser.length_m,
      first?.['inlet_K'] ?? KETTLE_K,
      first?.['bath_K'] ?? props.still.cooling.startTemperature_K,
    );
    return messages().flowToTry(flow_kg_s, outlet_K);
  });
  const unfilled = (): string | null => {
    const { said, rows } = missing();
    const parts = [
      ...said.map((name) => fieldOf(name).words),
      ...rows.map((place) => `the rest of reading ${place + 1}`),
    ];
    return parts.length === 0 ? null : `Still to fill in: ${parts.join(', ')}.`;
  };
  const set = (still: Scenario, result: TestFound) => {
    const settings = settingsOf(result);
    const { factors, heat } = still;
    const tested = Object.fromEntries(
      Object.entries(settings).flatMap(([path, value]) =>
        path.startsWith('factors.') ? [[path.slice('factors.'.length), value]] : [],
      ),
    );
    const bands = { ...keptBandsFor(still)?.bands, ...bandsOfTest(result) };
    const name = `${still.name}, tested`;
    for (const { id, name: other } of logbook().stills) if (other === name) removeStill(id);
    if (Object.keys(bands).length > 0)
      keepStill({
        id: newId(),
        name,
        scenario: {
          ...still,
          name,
          factors: { ...factors, ...tested },
          heat: { ...heat, shareToPot: settings['heat.shareToPot'] ?? heat.shareToPot },
        },
        bands,
      });
    props.context.changeMany(settings);
    setTold({
      words: `Set on the bench; undo takes it back. Saved among the fitted stills of the run book as “${name}”, so that plans and forecasts draw from the found range.`,
    });
  };

  return (
    <>
      <section class="test-steps" aria-label={words().title}>
        <h3>{words().title}</h3>
        <p>{words().why}</p>
        <p>
          <strong>You need:</strong> {words().needs}
        </p>
        <ol>
          <For each={words().steps}>{(step) => <li>{step}</li>}</For>
        </ol>
        <Show when={hint()}>{(said) => <p>{said()}</p>}</Show>
        <p class="sheet-danger">
          <strong>Danger:</strong> {words().danger}
        </p>
      </section>
      <section class="test-readings" aria-labelledby="readings-title">
        <h3 id="readings-title">What you read</h3>
        <div class="test-said">
          <For each={TEST_NOTES[props.test].said}>
            {(name) => (
              <QuantityField
                label={fieldOf(name).words}
                value={noted().said[name] ?? null}
                unit={fieldOf(name).unit}
                hint={fieldOf(name).hint}
                min={fieldOf(name).min}
                max={fieldOf(name).max}
                system={props.context.units()}
                onClear={() => sayOfTest(props.test, name, null)}
                onCommit={(value) => sayOfTest(props.test, name, value)}
              />
            )}
          </For>
        </div>
        <ol class="test-rows">
          <For each={noted().rows.map((_, place) => place)}>
            {(place) => (
              <li>
                <fieldset class="test-row">
                  <legend>Reading {place + 1}</legend>
                  <For each={TEST_NOTES[props.test].row}>
                    {(name) => (
                      <QuantityField
                        label={fieldOf(name).words}
                        value={noted().rows[place]?.[name] ?? null}
                        unit={fieldOf(name).unit}
                        hint={fieldOf(name).hint}
                        min={fieldOf(name).min}
                        max={fieldOf(name).max}
                        system={props.context.units()}
                        onClear={() => readInTest(props.test, place, name, null)}
                        onCommit={(value) => readInTest(props.test, place, name, value)}
                      />
                    )}
                  </For>
                </fieldset>
              </li>
            )}
          </For>
        </ol>
        <div class="answer-tools screen-only">
          <button type="button" onClick={() => addTestRow(props.test)}>
            Add a reading
          </button>
          <button
            type="button"
            class="word"
            onClick={() => setTold({ words: 'The readings are deleted.', undo: clearTest(props.test) })}
          >
            Delete all<span class="visually-hidden"> readings of this test</span>
          </button>
        </div>
      </section>
      <section class="screen-only" aria-labelledby="found-title">
        <h3 id="found-title">What it shows</h3>
        <Show when={unfilled()}>{(said) => <p class="answer-quiet">{said()}</p>}</Show>
        <Show when={asked() !== null && query.asking()}>
          <p class="answer-quiet" role="status">
            Trying values…
          </p>
        </Show>
        <Show when={refusal() ?? (asked() === null ? null : query.problem())}>
          {(why) => <p class="answer-problem">{why()}</p>}
        </Show>
        <Show when={found()}>
          {(result) => (
            <>
              <p class="answer-lead is-small" role="status">
                {messages().lead(result())}
              </p>
              <AnswerTable
                caption="Found values with their 90 % intervals"
                columns={columnsFor(messages())}
                rows={result().values}
              />
              <p class="answer-quiet">{messages().left(result())}</p>
              <div class="answer-tools">
                <button type="button" class="is-first" onClick={() => set(props.still, result())}>
                  Set on the bench
                </button>
                <Show when={asked()}>
                  {(given) => (
                    <SheetButton
                      sheet={() => homeTestSheet(props.still, given(), result())}
                      units={props.context.units()}
                      of="the found value"
                    />
                  )}
                </Show>
              </div>
            </>
          )}
        </Show>
        <ToldLine told={told()} onUndone={() => setTold(null)} />
      </section>
    </>
  );
}
