/** A small form for a lesson of one's own; what is wrong is said beside the field. */
import { createMemo, createSignal, createUniqueId, For, onMount, Show, type JSX } from 'solid-js';
import {
  CURVE_AXES,
  CURVE_COLUMNS,
  examples,
  FEWEST_OPTIONS,
  findMeasure,
  kindUnit,
  LONGEST_CURVE_S,
  MEASURE_IDS,
  ownLessonMessages,
  ownLessonProblem,
  readOwnLesson,
  SHORTEST_CURVE_S,
  TEXT_LENGTHS,
  type CurveColumn,
  type KindName,
  type MeasureId,
  type OwnLesson,
  type Reader,
} from '../../../../sim/index.ts';
import { useBench } from '../../../state/bench.ts';
import { QuantityField } from '../../../ui/QuantityField.tsx';
import {
  changeDraft,
  draft,
  EMPTY_DRAFT,
  fileOf,
  FROM_BENCH,
  keepDraft,
  OF_LESSON,
  openDraft,
  withColumn,
  withMeasure,
} from './draft.ts';
import { saveLesson } from './own-file.ts';
import { ownAddress } from './own-link.ts';
import './write.css';

interface RowProps {
  readonly label: string;
  readonly problem: string | undefined;
  readonly children: (id: string, describedBy: string) => JSX.Element;
}

function Problem(props: { readonly says: string | undefined }) {
  return <Show when={props.says}>{(says) => <p class="field-error">{says()}</p>}</Show>;
}

function Row(props: RowProps) {
  const id = createUniqueId();
  return (
    <div class="write-row">
      <label for={id}>{props.label}</label>
      {props.children(id, `${id}-problem`)}
      <div id={`${id}-problem`}>
        <Problem says={props.problem} />
      </div>
    </div>
  );
}

const KINDS = ['choice', 'number', 'curve'] as const;

export function WriteLesson(props: { readonly reader: Reader }) {
  const bench = useBench();
  const words = () => ownLessonMessages(props.reader);
  const field = (path: string) => words().fields[path] ?? path;
  const now = () => draft() ?? EMPTY_DRAFT;
  const [checked, setChecked] = createSignal(false);
  const read = createMemo(() => readOwnLesson(fileOf(now(), bench.scenario())));
  const problems = createMemo<ReadonlyMap<string, string>>(() => {
    const found = read();
    if (found.ok || !checked()) return new Map();
    return new Map(found.problems.map((problem) => [problem.path, ownLessonProblem(problem, props.reader)]));
  });
  const kindName = createUniqueId();
  let form: HTMLElement | undefined;
  onMount(() => void openDraft());

  const whenWhole = async (act: (lesson: OwnLesson) => void | Promise<void>) => {
    const found = read();
    setChecked(true);
    if (found.ok) return act(found.lesson);
    queueMicrotask(() => form?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
  };
  const area = (path: string, value: string, most: number, onText: (text: string) => void, rows = 3) => (
    <Row label={field(path)} problem={problems().get(path)}>
      {(id, describedBy) => (
        <textarea
          id={id}
          class="text-input"
          rows={rows}
          maxLength={most}
          aria-describedby={describedBy}
          aria-invalid={problems().has(path) ? 'true' : undefined}
          value={value}
          onInput={(event) => onText(event.currentTarget.value)}
        />
      )}
    </Row>
  );
  const end = (
    path: string,
    value: number,
    quantity: KindName,
    [least, most]: readonly [number, number],
    onCommit: (value: number) => void,
  ) => (
    <div class="write-row">
      <QuantityField
        label={field(path)}
        value={value}
        unit={kindUnit(quantity)}
        hint={quantity}
        min={least}
        max={most}
        system={props.reader.units}
        onCommit={onCommit}
      />
      <Problem says={problems().get(path)} />
    </div>
  );

  return (
    <section class="answer write-lesson" aria-labelledby="write-title" ref={form}>
      <header class="answer-head">
        <h2 id="write-title">Write a lesson</h2>
        <p class="answer-lead">
          A still, a question, an explanation. The numbers come from the model when the class has answered.
        </p>
        <p>
          <a href="#lessons">All lessons</a>
        </p>
      </header>
      {area('title', now().title, TEXT_LENGTHS.title, (title) => changeDraft({ title }), 1)}
      <Row label={field('still')} problem={[...problems()].find(([path]) => path.startsWith('still'))?.[1]}>
        {(id, describedBy) => (
          <select
            id={id}
            aria-describedby={describedBy}
            value={now().still}
            onChange={(event) => changeDraft({ still: event.currentTarget.value })}
          >
            <option value={FROM_BENCH}>The still on the bench: {bench.scenario().name}</option>
            <Show when={now().scenario !== null}>
              <option value={OF_LESSON}>The still that came with this lesson</option>
            </Show>
            <For each={examples}>{({ id: example, title }) => <option value={example}>Example: {title}</option>}</For>
          </select>
        )}
      </Row>
      {area('setUp', now().setUp, TEXT_LENGTHS.setUp, (setUp) => changeDraft({ setUp }))}
      {area('question.ask', now().ask, TEXT_LENGTHS.ask, (ask) => changeDraft({ ask }), 2)}
      <fieldset class="write-row">
        <legend>{field('question.kind')}</legend>
        <For each={KINDS}>
          {(kind) => (
            <label class="write-kind">
              <input
                type="radio"
                name={kindName}
                checked={now().kind === kind}
                onChange={() => changeDraft({ kind })}
              />{' '}
              {words().kinds[kind]}
            </label>
          )}
        </For>
      </fieldset>
      <Show when={now().kind === 'choice'}>
        <fieldset class="write-row">
          <legend>{field('question.options')}. Mark the right one.</legend>
          <For each={now().options.map((_, place) => place)}>
            {(place) => (
              <div class="write-option">
                <label class="write-right">
                  <input
                    type="radio"
                    name={`${kindName}-right`}
                    checked={now().right === place}
                    onChange={() => changeDraft({ right: place })}
                  />
                  <span class="visually-hidden">{words().option(place + 1)} is right</span>
                </label>
                <input
                  class="text-input"
                  maxLength={TEXT_LENGTHS.option}
                  aria-label={`${words().option(place + 1)}${place < FEWEST_OPTIONS ? '' : ', may stay empty'}`}
                  aria-invalid={problems().has(`question.options.${place}`) ? 'true' : undefined}
                  value={now().options[place] ?? ''}
                  onInput={(event) =>
                    changeDraft({
                      options: now().options.map((each, at) => (at === place ? event.currentTarget.value : each)),
                    })
                  }
                />
                <Problem says={problems().get(`question.options.${place}`)} />
              </div>
            )}
          </For>
          <Problem says={problems().get('question.options') ?? problems().get('question.right')} />
        </fieldset>
      </Show>
      <Show when={now().kind === 'number'}>
        <Row label={field('question.measure')} problem={problems().get('question.measure')}>
          {(id, describedBy) => (
            <select
              id={id}
              aria-describedby={describedBy}
              value={now().measure}
              onChange={(event) => changeDraft(withMeasure(event.currentTarget.value as MeasureId))}
            >
              <For each={MEASURE_IDS}>{(measure) => <option value={measure}>{words().measures[measure]}</option>}</For>
            </select>
          )}
        </Row>
        <Show when={findMeasure(now().measure)} keyed>
          {({ quantity, least, most }) => (
            <div class="write-ends">
              {end('question.min', now().numberMin, quantity, [least, most], (numberMin) => changeDraft({ numberMin }))}
              {end('question.max', now().numberMax, quantity, [least, most], (numberMax) => changeDraft({ numberMax }))}
            </div>
          )}
        </Show>
      </Show>
      <Show when={now().kind === 'curve'}>
        <Row label={field('question.column')} problem={problems().get('question.column')}>
          {(id, describedBy) => (
            <select
              id={id}
              aria-describedby={describedBy}
              value={now().column}
              onChange={(event) => changeDraft(withColumn(event.currentTarget.value as CurveColumn))}
            >
              <For each={CURVE_COLUMNS}>{(column) => <option value={column}>{words().columns[column]}</option>}</For>
            </select>
          )}
        </Row>
        <Show when={CURVE_AXES[now().column]} keyed>
          {({ quantity, least, most }) => (
            <div class="write-ends">
              {end('question.min', now().curveMin, quantity, [least, most], (curveMin) => changeDraft({ curveMin }))}
              {end('question.max', now().curveMax, quantity, [least, most], (curveMax) => changeDraft({ curveMax }))}
              {end('question.until_s', now().until_s, 'duration', [SHORTEST_CURVE_S, LONGEST_CURVE_S], (until_s) =>
                changeDraft({ until_s }),
              )}
            </div>
          )}
        </Show>
      </Show>
      {area(
        'explanation',
        now().explanation,
        TEXT_LENGTHS.explanation,
        (explanation) => changeDraft({ explanation }),
        4,
      )}
      {area('safety', now().safety, TEXT_LENGTHS.safety, (safety) => changeDraft({ safety }), 2)}
      <p class="quiet">The caution about steam stands in every lesson.</p>
      <div role="status">
        <Show when={problems().size > 0}>
          <p class="answer-problem">
            {problems().size === 1 ? 'One field is not right yet.' : `${problems().size} fields are not right yet.`}
          </p>
        </Show>
      </div>
      <div class="answer-tools">
        <button
          type="button"
          class="is-first"
          onClick={() => void whenWhole(async (lesson) => void (location.hash = await ownAddress(lesson)))}
        >
          Open the lesson
        </button>
        <button type="button" onClick={() => void whenWhole(saveLesson)}>
          Save as a file
        </button>
        <button
          type="button"
          onClick={() => {
            keepDraft(EMPTY_DRAFT);
            setChecked(false);
          }}
        >
          Begin anew
        </button>
      </div>
    </section>
  );
}
