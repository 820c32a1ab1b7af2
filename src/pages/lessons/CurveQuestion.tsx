/** A curve drawn by hand on the chart's own axes: with mouse, pen or finger, or point by point with the arrow keys. */
import { createMemo, createSignal, Show } from 'solid-js';
import { lessonCommonMessages, type Question, type QuestionWords, type Reader } from '../../../sim/index.ts';
import { PlainPlot, type PlainCurve } from '../../charts/plain/PlainPlot.tsx';
import type { PlainScale } from '../../charts/plain/plain-scale.ts';
import { tickWords } from '../../charts/model/time-axis.ts';
import { classRoom, CURVE_PLACES, drawnOn, noCurve, placeTimes } from './commitments.ts';

export interface CurveQuestionProps {
  readonly lesson: string;
  readonly question: Extract<Question, { kind: 'curve' }>;
  readonly words: QuestionWords;
  readonly reader: Reader;
}

/** The curve of a group, for a chart. */
export const drawnCurves = (lesson: string, question: CurveQuestionProps['question']): readonly PlainCurve[] =>
  classRoom.groups().flatMap(({ id, name }) => {
    const commitment = classRoom.commitment(lesson, question.id, id);
    return commitment?.kind === 'curve'
      ? [{ name, at_s: placeTimes(question.until_s), values: commitment.values, class: `is-group-${id}` }]
      : [];
  });

/** Steps of the arrow keys over the height of the axis. */
const COARSE = 20;
const FINE = 100;

export function CurveQuestion(props: CurveQuestionProps) {
  const common = () => lessonCommonMessages(props.reader);
  const locked = () => classRoom.revealed().has(props.lesson);
  const [place, setPlace] = createSignal(0);
  let last: { readonly place: number; readonly value: number } | null = null;
  const times = createMemo(() => placeTimes(props.question.until_s));
  const mine = createMemo(() => {
    const commitment = classRoom.commitment(props.lesson, props.question.id, classRoom.active());
    return commitment?.kind === 'curve' ? commitment.values : noCurve();
  });
  const commit = (values: readonly (number | null)[]) =>
    classRoom.commit(
      props.lesson,
      props.question.id,
      values.every((value) => value === null) ? null : { kind: 'curve', values },
    );
  const drawTo = (scale: PlainScale, event: PointerEvent) => {
    if (locked() || !(event.currentTarget instanceof Element)) return;
    const box = event.currentTarget.getBoundingClientRect();
    const time_s = scale.timeAt(event.clientX - box.left + scale.left);
    const to = {
      place: Math.round((time_s / props.question.until_s) * (CURVE_PLACES - 1)),
      value: scale.valueAt(event.clientY - box.top + scale.top),
    };
    commit(drawnOn(mine(), last, to));
    setPlace(to.place);
    last = to;
  };
  const nearest = (): number => {
    const values = mine();
    for (let away = 0; away < CURVE_PLACES; away++)
      for (const at of [place() - away, place() + away]) {
        const value = values[at];
        if (value !== null && value !== undefined) return value;
      }
    return (props.question.min + props.question.max) / 2;
  };
  const key = (event: KeyboardEvent) => {
    const span = props.question.max - props.question.min;
    const step = span / (event.shiftKey ? FINE : COARSE);
    const raise = (by: number) => {
      const value = Math.min(props.question.max, Math.max(props.question.min, (mine()[place()] ?? nearest()) + by));
      commit(mine().map((each, at) => (at === place() ? value : each)));
    };
    /** To the next place, the curve drawn on at its height. */
    const go = (by: number) => {
      const next = Math.min(CURVE_PLACES - 1, Math.max(0, place() + by));
      const here = mine()[place()];
      setPlace(next);
      if (here !== null && here !== undefined && mine()[next] === null)
        commit(mine().map((each, at) => (at === next ? here : each)));
    };
    if (locked()) return;
    if (event.key === 'ArrowUp') raise(step);
    else if (event.key === 'ArrowDown') raise(-step);
    else if (event.key === 'ArrowRight') go(1);
    else if (event.key === 'ArrowLeft') go(-1);
    else if (event.key === 'Home') setPlace(0);
    else if (event.key === 'End') setPlace(CURVE_PLACES - 1);
    else if (event.key === 'Delete') commit(mine().map((each, at) => (at === place() ? null : each)));
    else return;
    event.preventDefault();
  };
  const valueWords = () => {
    const value = mine()[place()];
    return `${tickWords(Math.round((times()[place()] ?? 0) / 60) * 60)}: ${
      value === null || value === undefined ? 'no point' : common().quantity(props.question.quantity, value)
    }`;
  };
  const valueShare = () => {
    const value = mine()[place()] ?? null;
    return value === null
      ? 0
      : Math.round(((value - props.question.min) / (props.question.max - props.question.min)) * 100);
  };
  return (
    <div class="curve-question">
      <PlainPlot
        axes={props.question}
        title={common().curve[props.question.quantity]}
        units={props.reader.units}
        curves={drawnCurves(props.lesson, props.question)}
        says={`Empty axes to draw on: ${common().curve[props.question.quantity]} over ${tickWords(props.question.until_s)}.`}
        over={(scale) => (
          <div
            class="curve-pane"
            classList={{ 'is-locked': locked() }}
            role="slider"
            tabindex="0"
            aria-label={`Draw. ${props.words.ask} Left and right choose a time, up and down set the value, Delete takes a point out.`}
            aria-valuemin={0}
            aria-valuemax={100}
            aria-valuenow={valueShare()}
            aria-valuetext={valueWords()}
            style={{
              left: `${scale.left}px`,
              top: `${scale.top}px`,
              width: `${scale.right - scale.left}px`,
              height: `${scale.bottom - scale.top}px`,
            }}
            onKeyDown={key}
            onPointerDown={(event) => {
              if (event.button !== 0) return;
              event.currentTarget.setPointerCapture(event.pointerId);
              last = null;
              drawTo(scale, event);
            }}
            onPointerMove={(event) => {
              if (event.currentTarget.hasPointerCapture(event.pointerId)) drawTo(scale, event);
            }}
          >
            <span
              class="curve-place"
              style={{ left: `${scale.x(times()[place()] ?? 0) - scale.left}px` }}
              aria-hidden="true"
            />
          </div>
        )}
      />
      <p class="curve-hand">
        <span>{valueWords()}</span>
        <Show when={!locked() && mine().some((value) => value !== null)}>
          <button type="button" onClick={() => commit(noCurve())}>
            Erase
          </button>
        </Show>
      </p>
    </div>
  );
}
