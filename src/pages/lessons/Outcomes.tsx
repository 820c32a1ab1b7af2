/** What the model answers to each question, beside what the class committed itself to, and how far off that was. */
import { For, Match, Show, Switch } from 'solid-js';
import {
  curveDistance,
  lessonCommonMessages,
  type DrawnCurve,
  type QuestionWords,
  type Question,
  type Reader,
  type Truth,
} from '../../../sim/index.ts';
import { PlainPlot } from '../../charts/plain/PlainPlot.tsx';
import { classRoom, placeTimes } from './commitments.ts';
import { drawnCurves } from './CurveQuestion.tsx';
import { GroupDash } from './GroupBar.tsx';
import { NumberLine } from './NumberLine.tsx';
import { marksOf } from './NumberQuestion.tsx';

export interface OutcomesProps {
  readonly questions: readonly Question[];
  readonly lesson: string;
  readonly truths: Readonly<Record<string, Truth>>;
  readonly asked: Readonly<Record<string, QuestionWords>>;
  readonly reader: Reader;
  /** How much of the run is shown, 1 for all. */
  readonly shown: number;
}

interface Off {
  readonly name: string;
  readonly off: number;
}

const byDistance = (all: readonly Off[]): readonly Off[] => [...all].sort((a, b) => a.off - b.off);

/** How far each group's curve is from the run's, on average. */
function curvesOff(lesson: string, question: Extract<Question, { kind: 'curve' }>, truth: DrawnCurve): readonly Off[] {
  const times = placeTimes(question.until_s);
  return byDistance(
    drawnCurves(lesson, question).flatMap(({ name, values }) => {
      const drawn = times.flatMap((at, place) => {
        const value = values[place] ?? null;
        return value === null ? [] : [{ at, value }];
      });
      const off = curveDistance({ at_s: drawn.map(({ at }) => at), values: drawn.map(({ value }) => value) }, truth);
      return off === null ? [] : [{ name, off }];
    }),
  );
}

/** How many chose rightly, by hands where they were counted, else by groups; `null` where nobody chose. */
function tally(lesson: string, { id, options }: Extract<Question, { kind: 'choice' }>, right: string) {
  const hands = (option: string) => classRoom.hands(lesson, id, option);
  const groups = (option: string) =>
    classRoom.groups().filter((group) => {
      const commitment = classRoom.commitment(lesson, id, group.id);
      return commitment?.kind === 'choice' && commitment.option === option;
    }).length;
  const sum = (count: (option: string) => number) => options.reduce((total, option) => total + count(option), 0);
  const count = sum(hands) > 0 ? hands : groups;
  const all = sum(count);
  return all > 0 ? { right: count(right), all } : null;
}

function Choice(props: OutcomesProps & { readonly question: Extract<Question, { kind: 'choice' }> }) {
  const right = () => {
    const truth = props.truths[props.question.id];
    return truth?.kind === 'choice' ? truth.option : '';
  };
  const chose = (option: string) =>
    classRoom.groups().filter(({ id }) => {
      const commitment = classRoom.commitment(props.lesson, props.question.id, id);
      return commitment?.kind === 'choice' && commitment.option === option;
    });
  const counted = () => tally(props.lesson, props.question, right());
  return (
    <div class="outcome">
      <p class="outcome-ask">{props.asked[props.question.id]?.ask}</p>
      <p class="outcome-truth">{props.asked[props.question.id]?.options?.[right()]}</p>
      <p class="outcome-groups">
        <For each={props.question.options.filter((option) => option !== right() && chose(option).length > 0)}>
          {(option) => (
            <For each={chose(option)}>
              {({ id, name }) => (
                <span>
                  <GroupDash id={id} /> {name}: {props.asked[props.question.id]?.options?.[option]}
                </span>
              )}
            </For>
          )}
        </For>
      </p>
      <Show when={counted()}>
        {(count) => <p class="outcome-kind">{lessonCommonMessages(props.reader).chose(count().right, count().all)}</p>}
      </Show>
    </div>
  );
}

function Numbers(props: OutcomesProps & { readonly question: Extract<Question, { kind: 'number' }> }) {
  const common = () => lessonCommonMessages(props.reader);
  const truth = () => {
    const found = props.truths[props.question.id];
    return found?.kind === 'number' ? found.value : null;
  };
  const value = () => truth() ?? Number.NaN;
  const marks = () => marksOf(props.lesson, props.question, props.reader);
  const nearest = () =>
    byDistance(
      marks().map((mark) => ({
        name: classRoom.groups().find(({ id }) => id === mark.group)?.name ?? '',
        off: Math.abs(mark.value - value()),
      })),
    )[0];
  return (
    <div class="outcome">
      <p class="outcome-ask">{props.asked[props.question.id]?.ask}</p>
      <NumberLine
        question={props.question}
        marks={[
          ...(truth() === null
            ? []
            : [{ value: value(), words: common().quantity(props.question.quantity, value()), group: null }]),
          ...marks(),
        ]}
        quantity={(shown) => common().setting(props.question.quantity, shown)}
      />
      <p class="outcome-kind">
        <Show when={truth() !== null && nearest()} fallback={truth() === null ? common().never : common().setNothing}>
          {(first) => (
            <>
              {(marks().length === 1 ? common().only : common().nearest)(
                first().name,
                props.question.quantity,
                first().off,
                false,
              )}
            </>
          )}
        </Show>
      </p>
    </div>
  );
}

function Curves(props: OutcomesProps & { readonly question: Extract<Question, { kind: 'curve' }> }) {
  const common = () => lessonCommonMessages(props.reader);
  const truth = () => {
    const found = props.truths[props.question.id];
    return found?.kind === 'curve' ? found : { at_s: [], values: [] };
  };
  const isWhole = () => props.shown >= 1;
  const off = () => curvesOff(props.lesson, props.question, truth());
  return (
    <div class="outcome is-curve">
      <p class="outcome-ask">{props.asked[props.question.id]?.ask}</p>
      <PlainPlot
        axes={props.question}
        title={common().curve[props.question.quantity]}
        units={props.reader.units}
        curves={[
          ...drawnCurves(props.lesson, props.question),
          { name: 'the run', at_s: truth().at_s, values: truth().values, class: 'is-run' },
        ]}
        until_s={props.shown * props.question.until_s}
        says={`${common().curve[props.question.quantity]} of the run over what was drawn.`}
      />
      <Show when={isWhole()}>
        <p class="outcome-kind">
          <span class="outcome-run" aria-hidden="true" /> the run.{' '}
          <Show
            when={off()[0]}
            fallback={
              drawnCurves(props.lesson, props.question).length > 0 ? common().drewElsewhere : common().drewNothing
            }
          >
            {(first) => (
              <>
                {(off().length === 1 ? common().only : common().nearest)(
                  first().name,
                  props.question.quantity,
                  first().off,
                  true,
                )}
              </>
            )}
          </Show>
        </p>
      </Show>
    </div>
  );
}

export function Outcomes(props: OutcomesProps) {
  return (
    <div class="outcomes" classList={{ 'are-many': props.questions.length > 1 }}>
      <For each={props.questions}>
        {(question) => (
          <Switch>
            <Match when={question.kind === 'choice' && question}>{(q) => <Choice {...props} question={q()} />}</Match>
            <Match when={question.kind === 'number' && question}>{(q) => <Numbers {...props} question={q()} />}</Match>
            <Match when={question.kind === 'curve' && question}>{(q) => <Curves {...props} question={q()} />}</Match>
          </Switch>
        )}
      </For>
    </div>
  );
}
