/** Now you try: one control to turn, and what the lesson's numbers become. */
import { createMemo, createSignal, For, Show } from 'solid-js';
import {
  lessonCommonMessages,
  toldLesson,
  type Control,
  type ControlWords,
  type Lesson,
  type LessonAnswer,
  type LessonId,
  type LessonWords,
  type Reader,
  type Turned,
} from '../../../sim/index.ts';
import { PlainPlot, type PlainCurve } from '../../charts/plain/PlainPlot.tsx';
import { createQuery } from '../../state/query.ts';
import { workerPool } from '../../workers/start-pool.ts';
import { BigNumbersOf } from './BigNumbersOf.tsx';
import { Explained } from './Explained.tsx';

export interface ControlInputProps {
  readonly control: Control;
  readonly words: ControlWords;
  readonly value: number | string;
  readonly reader: Reader;
  readonly onTurn: (value: number | string) => void;
}

export function ControlInput(props: ControlInputProps) {
  const number = () => (props.control.kind === 'number' ? props.control : null);
  const choice = () => (props.control.kind === 'choice' ? props.control : null);
  return (
    <div class="lesson-control">
      <Show when={number()}>
        {(control) => {
          const said = () => lessonCommonMessages(props.reader).setting(control().quantity, Number(props.value));
          return (
            <label>
              <span class="lesson-control-label">{props.words.label}</span>
              <input
                type="range"
                class="number-slider drawn-slider"
                min={control().min}
                max={control().max}
                step={control().step}
                value={props.value}
                aria-valuetext={said()}
                onChange={(event) => props.onTurn(event.currentTarget.valueAsNumber)}
                onInput={(event) => props.onTurn(event.currentTarget.valueAsNumber)}
              />
              <strong class="lesson-control-value">{said()}</strong>
            </label>
          );
        }}
      </Show>
      <Show when={choice()}>
        {(control) => (
          <label>
            <span class="lesson-control-label">{props.words.label}</span>
            <select value={props.value} onChange={(event) => props.onTurn(event.currentTarget.value)}>
              <For each={control().options}>
                {(option) => <option value={option}>{props.words.options?.[option] ?? option}</option>}
              </For>
            </select>
          </label>
        )}
      </Show>
    </div>
  );
}

export interface TryItProps {
  readonly lesson: Lesson;
  readonly words: LessonWords<LessonId>;
  readonly answer: LessonAnswer;
  readonly turned: Turned;
  readonly reader: Reader;
}

export function TryIt(props: TryItProps) {
  const [own, setOwn] = createSignal<number | string | null>(null);
  const value = () => own() ?? props.lesson.tryIt.start;
  const tried = createQuery(
    workerPool(),
    'lesson',
    () =>
      value() === props.lesson.tryIt.start
        ? null
        : [props.lesson.id, { ...props.turned, [props.lesson.tryIt.id]: value() }],
    { priority: 'high' },
  );
  const now = createMemo<LessonAnswer>(() =>
    value() === props.lesson.tryIt.start ? props.answer : (tried.answer() ?? props.answer),
  );
  const told = () => toldLesson(now(), props.reader);
  const curve = createMemo(() => {
    const question = props.lesson.questions.find((each) => each.kind === 'curve');
    if (question?.kind !== 'curve') return null;
    const curveOf = (answer: LessonAnswer, kind: string): PlainCurve[] => {
      const truth = answer.truths[question.id];
      return truth?.kind === 'curve' ? [{ name: kind, at_s: truth.at_s, values: truth.values, class: kind }] : [];
    };
    return {
      question,
      curves: [...(now() === props.answer ? [] : curveOf(props.answer, 'is-earlier')), ...curveOf(now(), 'is-run')],
    };
  });
  return (
    <div class="try-it">
      <Explained text={props.words.tryIt.says} reader={props.reader} />
      <ControlInput
        control={props.lesson.tryIt}
        words={props.words.tryIt}
        value={value()}
        reader={props.reader}
        onTurn={setOwn}
      />
      <div class="lesson-columns" role="status" classList={{ 'is-asking': tried.asking() }}>
        <BigNumbersOf numbers={told().big} />
        <Show
          when={curve()}
          fallback={
            <div>
              <For each={told().happened}>{(sentence) => <p>{sentence}</p>}</For>
            </div>
          }
        >
          {(drawn) => (
            <PlainPlot
              axes={drawn().question}
              title={lessonCommonMessages(props.reader).curve[drawn().question.quantity]}
              units={props.reader.units}
              curves={drawn().curves}
              says={told().happened.join(' ')}
            />
          )}
        </Show>
      </div>
      <Show when={tried.problem()}>{(problem) => <p class="answer-problem">{problem()}</p>}</Show>
    </div>
  );
}
