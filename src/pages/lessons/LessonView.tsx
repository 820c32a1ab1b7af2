/**
 * One lesson, step by step: the still, each question with its commitment, the reveal, why, and something to try. The
 * answer is asked of the model only when the class has gone past its last question, so that nothing of it is in the page
 * before.
 */
import { createMediaQuery } from '@solid-primitives/media';
import { createEffect, createMemo, createSignal, For, Match, on, onCleanup, Show, Switch } from 'solid-js';
import { type Question, type Reader, type Turned } from '../../../sim/index.ts';
import { errorMessage, wasGivenUp } from '../../workers/errors.ts';
import { projecting, setProjecting } from '../../state/projector.ts';
import { REDUCED_MOTION } from '../../ui/reduced-motion.ts';
import { BigNumbersOf } from './BigNumbersOf.tsx';
import { classRoom } from './commitments.ts';
import { Explained } from './Explained.tsx';
import { Outcomes } from './Outcomes.tsx';
import { QuestionStep } from './QuestionStep.tsx';
import type { TaughtAnswer, TaughtLesson } from './taught.ts';
import { ControlInput } from './TryIt.tsx';

export interface LessonViewProps {
  readonly lesson: TaughtLesson;
  readonly reader: Reader;
}

/** The run draws itself over what was drawn in so many seconds. */
const SWEEP_S = 6;

type Step =
  { readonly kind: 'set-up' | 'reveal' | 'why' | 'try' } | { readonly kind: 'question'; readonly question: Question };

/** The keys that turn pages, which a remote in the teacher's hand sends too, go from step to step. */
function createPageKeys(go: (by: number) => void): void {
  const onKey = (event: KeyboardEvent) => {
    if (event.defaultPrevented || (event.key !== 'PageDown' && event.key !== 'PageUp')) return;
    if (event.target instanceof HTMLInputElement) return;
    event.preventDefault();
    go(event.key === 'PageDown' ? 1 : -1);
  };
  addEventListener('keydown', onKey);
  onCleanup(() => removeEventListener('keydown', onKey));
}

export function LessonView(props: LessonViewProps) {
  const lesson = () => props.lesson;
  const key = createMemo(() => props.lesson.key);
  const calm = createMediaQuery(REDUCED_MOTION);
  const steps = createMemo<readonly Step[]>(() => [
    { kind: 'set-up' },
    ...lesson().questions.map((question): Step => ({ kind: 'question', question })),
    { kind: 'reveal' },
    { kind: 'why' },
    ...(lesson().lastStep ? [{ kind: 'try' } as const] : []),
  ]);
  const [at, setAt] = createSignal(0);
  const [chosen, setChosen] = createSignal<Turned>({});
  const [answer, setAnswer] = createSignal<TaughtAnswer | null>(null);
  const [problem, setProblem] = createSignal<string | null>(null);
  const [shown, setShown] = createSignal(0);
  const step = (): Step => steps()[at()] ?? { kind: 'set-up' };
  const question = () => {
    const now = step();
    return now.kind === 'question' ? now.question : null;
  };
  const isRevealed = () => classRoom.revealed().has(key());
  const told = createMemo(() => {
    const found = answer();
    return found ? lesson().told(found) : null;
  });
  let heading: HTMLHeadingElement | undefined;
  let frame = 0;
  onCleanup(() => cancelAnimationFrame(frame));

  createEffect(
    on(
      key,
      () => {
        setAt(0);
        setChosen({});
        setAnswer(null);
      },
      { defer: true },
    ),
  );
  createEffect(on(at, () => queueMicrotask(() => heading?.focus({ preventScroll: true })), { defer: true }));

  /** Lets the run draw itself; where things should stand still it is there at once. */
  const sweep = () => {
    cancelAnimationFrame(frame);
    if (calm() || !lesson().questions.some(({ kind }) => kind === 'curve')) {
      setShown(1);
      return;
    }
    const began_ms = performance.now();
    const next = () => {
      const share = Math.min(1, (performance.now() - began_ms) / (1000 * SWEEP_S));
      setShown(share);
      if (share < 1) frame = requestAnimationFrame(next);
    };
    setShown(0);
    frame = requestAnimationFrame(next);
  };
  const reveal = async () => {
    const taught = lesson();
    classRoom.reveal(taught.key);
    setProblem(null);
    setAnswer(null);
    try {
      const found = await taught.reveal(chosen());
      if (taught.key !== key()) return;
      setAnswer(found);
      sweep();
    } catch (error) {
      if (!wasGivenUp(error)) setProblem(errorMessage(error));
    }
  };
  const go = (by: number) => {
    const next = Math.min(steps().length - 1, Math.max(0, at() + by));
    if (next === at()) return;
    setAt(next);
    if (by > 0 && step().kind === 'reveal' && answer() === null) void reveal();
  };
  const startAgain = () => {
    cancelAnimationFrame(frame);
    classRoom.startAgain(key());
    setAnswer(null);
    setAt(0);
  };
  createPageKeys((by) => go(by));

  const title = (): string => {
    const now = step();
    switch (now.kind) {
      case 'set-up':
        return lesson().title;
      case 'question':
        return lesson().asked[now.question.id]?.ask ?? '';
      case 'reveal':
        return 'What happened';
      case 'why':
        return 'Why?';
      case 'try':
        return 'Now you try';
    }
  };
  const nextWords = () => (steps()[at() + 1]?.kind === 'reveal' ? (isRevealed() ? 'What happened' : 'Reveal') : 'Next');

  return (
    <article class={`lesson is-${step().kind}`} aria-label={lesson().title}>
      <header class="lesson-head">
        <p class="lesson-count">
          {step().kind === 'set-up' ? 'Step' : `${lesson().title} · step`} {at() + 1} of {steps().length}
        </p>
        <h2 class="lesson-title" tabindex="-1" ref={heading}>
          {title()}
        </h2>
      </header>
      <div class="lesson-body">
        <Switch>
          <Match when={step().kind === 'set-up'}>
            <div class="lesson-text">
              <For each={lesson().setUp}>{(sentence) => <Explained text={sentence} reader={props.reader} />}</For>
              <For each={lesson().cautions}>
                {(caution) => <Explained class="lesson-caution alarm-mark" text={caution} reader={props.reader} />}
              </For>
              <Show when={lesson().choose}>
                {(choose) => (
                  <ControlInput
                    control={choose().control}
                    words={choose().words}
                    value={chosen()[choose().control.id] ?? choose().control.start}
                    reader={props.reader}
                    onTurn={(value) => !isRevealed() && setChosen({ [choose().control.id]: value })}
                  />
                )}
              </Show>
            </div>
          </Match>
          <Match when={question()} keyed>
            {(asked) => (
              <QuestionStep
                lesson={key()}
                question={asked}
                words={lesson().asked[asked.id] ?? { ask: '' }}
                reader={props.reader}
              />
            )}
          </Match>
          <Match when={problem()}>
            {(words) => <p class="answer-problem">The model gave no answer: {words()}.</p>}
          </Match>
          <Match when={answer() === null}>
            <p class="lesson-quiet" role="status">
              Working it out…
            </p>
          </Match>
          <Match when={step().kind === 'reveal' && answer()}>
            {(found) => (
              <div class="lesson-columns">
                <Outcomes
                  lesson={key()}
                  questions={lesson().questions}
                  truths={found().truths}
                  asked={lesson().asked}
                  reader={props.reader}
                  shown={shown()}
                />
                <Show when={shown() >= 1}>
                  <div class="lesson-text" role="status">
                    <BigNumbersOf numbers={told()?.big ?? []} />
                    <For each={told()?.happened}>
                      {(sentence) => <Explained text={sentence} reader={props.reader} />}
                    </For>
                    <Show when={lesson().believed}>
                      {(believed) => <Explained class="lesson-quiet" text={believed()} reader={props.reader} />}
                    </Show>
                  </div>
                </Show>
              </div>
            )}
          </Match>
          <Match when={step().kind === 'why' && answer()}>
            {(found) => (
              <div class="lesson-columns">
                {lesson().picture(found())}
                <div class="lesson-text">
                  <For each={told()?.why}>{(sentence) => <Explained text={sentence} reader={props.reader} />}</For>
                  <Show when={lesson().leavesOut}>
                    {(left) => <Explained class="lesson-quiet" text={`Left out: ${left()}`} reader={props.reader} />}
                  </Show>
                  {lesson().working(found())}
                </div>
              </div>
            )}
          </Match>
          <Match when={step().kind === 'try' && answer()}>
            {(found) => <>{lesson().lastStep?.(found(), chosen())}</>}
          </Match>
        </Switch>
      </div>
      <nav class="lesson-steps" aria-label="Steps of the lesson">
        <button type="button" aria-disabled={at() === 0} onClick={() => go(-1)}>
          Back
        </button>
        <Show
          when={at() < steps().length - 1}
          fallback={
            <button type="button" class="is-first" onClick={startAgain}>
              Start again
            </button>
          }
        >
          <button type="button" class="is-first" onClick={() => go(1)}>
            {nextWords()}
          </button>
        </Show>
        <Show when={projecting()}>
          <button type="button" onClick={() => setProjecting(false)}>
            Leave
          </button>
        </Show>
        <Show when={step().kind === 'reveal' && lesson().questions.some(({ kind }) => kind === 'curve')}>
          <button type="button" onClick={sweep}>
            Watch again
          </button>
        </Show>
      </nav>
    </article>
  );
}
