/** What prints: a worksheet, its answer sheet, or the plans for a class. */
import { For, Match, Show, Switch } from 'solid-js';
import {
  CLASS_PLANS,
  glossaryMessages,
  lessonCommonMessages,
  lessonMessages,
  type Question,
  type Reader,
} from '../../../../sim/index.ts';
import { CheckMark } from '../../parts/marks.tsx';
import { PlainPlot } from '../../../charts/plain/PlainPlot.tsx';
import { NumberLine } from '../NumberLine.tsx';
import type { TaughtAnswer, TaughtLesson } from '../taught.ts';
import { termsOf } from '../terms.ts';
import './sheets.css';

export type SheetKind = 'worksheet' | 'answers' | 'plan';

export interface SheetsProps {
  readonly kind: SheetKind;
  readonly lesson: TaughtLesson | null;
  readonly answer: TaughtAnswer | null;
  readonly reader: Reader;
}

const ONE_CURVE = { width: 660, height: 330, text: 13 };
const LINES = [0, 1, 2];
/** Kept at the end of a class. */
const FINISH_MIN = 8;

const minutesEach = (minutes: 45 | 90): number => Math.floor((minutes - FINISH_MIN) / CLASS_PLANS[minutes].length);

interface OneSheetProps {
  readonly lesson: TaughtLesson;
  readonly reader: Reader;
  /** `null` on a worksheet. */
  readonly answer: TaughtAnswer | null;
}

function Asked(props: OneSheetProps & { readonly question: Question }) {
  const common = () => lessonCommonMessages(props.reader);
  const truth = () => props.answer?.truths[props.question.id] ?? null;
  const choice = () => (props.question.kind === 'choice' ? props.question : null);
  const number = () => (props.question.kind === 'number' ? props.question : null);
  const curve = () => (props.question.kind === 'curve' ? props.question : null);
  const isTrue = (option: string) => {
    const found = truth();
    return found?.kind === 'choice' && found.option === option;
  };
  return (
    <section class="sheet-question">
      <h2>{props.lesson.asked[props.question.id]?.ask}</h2>
      <Switch>
        <Match when={choice()}>
          {(q) => (
            <ul class="sheet-options">
              <For each={q().options}>
                {(option) => (
                  <li classList={{ 'is-true': isTrue(option) }}>
                    <span class="sheet-box">
                      <Show when={isTrue(option)}>
                        <CheckMark />
                      </Show>
                    </span>{' '}
                    {props.lesson.asked[props.question.id]?.options?.[option]}
                  </li>
                )}
              </For>
            </ul>
          )}
        </Match>
        <Match when={number()}>
          {(q) => (
            <NumberLine
              question={q()}
              marks={(() => {
                const found = truth();
                return found?.kind === 'number'
                  ? [{ value: found.value, words: common().quantity(q().quantity, found.value), group: null }]
                  : [];
              })()}
              quantity={(value) => common().setting(q().quantity, value)}
            />
          )}
        </Match>
        <Match when={curve()}>
          {(q) => (
            <PlainPlot
              axes={q()}
              title={common().curve[q().quantity]}
              units={props.reader.units}
              curves={(() => {
                const found = truth();
                return found?.kind === 'curve'
                  ? [{ name: 'the run', at_s: found.at_s, values: found.values, class: 'is-run' }]
                  : [];
              })()}
              says="Axes to draw on"
              size={ONE_CURVE}
            />
          )}
        </Match>
      </Switch>
    </section>
  );
}

function OneSheet(props: OneSheetProps) {
  const told = () => (props.answer ? props.lesson.told(props.answer) : null);
  const terms = () =>
    termsOf(
      [
        ...props.lesson.setUp,
        ...Object.values(props.lesson.asked).flatMap(({ ask, options }) => [ask, ...Object.values(options ?? {})]),
      ],
      glossaryMessages(props.reader),
    );
  return (
    <article class="sheet-page">
      <header>
        <h1>{props.lesson.title}</h1>
        <p class="sheet-names">
          {props.answer ? (
            'Answer sheet, from the model'
          ) : (
            <>
              Name: <span class="sheet-line" /> Date: <span class="sheet-line is-short" />
            </>
          )}
        </p>
      </header>
      <p>{props.lesson.setUp.join(' ')}</p>
      <For each={props.lesson.questions}>{(question) => <Asked {...props} question={question} />}</For>
      <Show
        when={told()}
        fallback={
          <>
            <section>
              <h2>Why do you think so?</h2>
              <For each={LINES}>{() => <p class="sheet-rule" />}</For>
            </section>
            <section class="sheet-surprise">
              <h2>What surprised me</h2>
            </section>
            <section class="sheet-terms">
              <For each={terms()}>
                {({ term, means }) => (
                  <p>
                    <strong>{term}</strong>: {means}
                  </p>
                )}
              </For>
            </section>
          </>
        }
      >
        {(said) => (
          <section>
            <h2>What happened, and why</h2>
            <p>{said().happened.join(' ')}</p>
            <p>{said().why.join(' ')}</p>
            <p>{props.lesson.believed}</p>
            <Show when={props.lesson.further}>
              <p>
                <strong>To go on with:</strong> {props.lesson.further}
              </p>
            </Show>
            <Show when={props.lesson.leavesOut}>
              <p>Left out: {props.lesson.leavesOut}</p>
            </Show>
          </section>
        )}
      </Show>
      <footer>
        <For each={props.lesson.cautions}>{(caution) => <p>{caution}</p>}</For>
      </footer>
    </article>
  );
}

function Plans(props: { readonly reader: Reader }) {
  return (
    <article class="sheet-page">
      <h1>Plans for a class</h1>
      <For each={[45, 90] as const}>
        {(minutes) => (
          <section>
            <h2>{minutes} minutes</h2>
            <table class="sheet-plan">
              <tbody>
                <For each={CLASS_PLANS[minutes]}>
                  {(id, index) => (
                    <tr>
                      <td>{index() * minutesEach(minutes)} min</td>
                      <td>{lessonMessages(id, props.reader).title}</td>
                      <td>{Object.values(lessonMessages(id, props.reader).questions)[0]?.ask}</td>
                    </tr>
                  )}
                </For>
                <tr>
                  <td>{CLASS_PLANS[minutes].length * minutesEach(minutes)} min</td>
                  <td>To finish</td>
                  <td>What surprised us? Look at the real still, cold, with the outlet open.</td>
                </tr>
              </tbody>
            </table>
          </section>
        )}
      </For>
      <section>
        <h2>A day in the garden, with a still running</h2>
        <p>
          “Who turned off the tap?” with a hand on the outside of the tub near its foot. “Float or sink?” with the
          separator in view. “When do we stop?” decided together.
        </p>
      </section>
      <footer>
        <p>
          One adult stays with the still all the time. Nobody touches pot, neck or coil. Faces stay away from the
          outlet.
        </p>
      </footer>
    </article>
  );
}

export function Sheets(props: SheetsProps) {
  return (
    <Show when={props.kind !== 'plan' && props.lesson} fallback={<Plans reader={props.reader} />} keyed>
      {(lesson) => (
        <OneSheet lesson={lesson} reader={props.reader} answer={props.kind === 'answers' ? props.answer : null} />
      )}
    </Show>
  );
}
