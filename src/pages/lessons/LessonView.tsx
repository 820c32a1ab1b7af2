/**
 * One lesson, step by step: the still, each question with its commitment, the reveal, why, and something to try. The
 * answer is asked of the model only when the class has gone past its last question, so that nothing of it is in the page
 * before.
 */
import { createMediaQuery } from '@solid-primitives/media';
import {
  createEffect,
  createMemo,
  createSignal,
  For,
  lazy,
  Match,
  on,
  onCleanup,
  Show,
  Suspense,
  Switch,
} from 'solid-js';
import {
  findLesson,
  lessonCommonMessages,
  lessonMessages,
  toldLesson,
  type LessonAnswer,
  type LessonId,
  type LessonWords,
  type Question,
  type Reader,
  type Turned,
  type WorkingId,
} from '../../../sim/index.ts';
import { errorMessage, wasGivenUp } from '../../workers/errors.ts';
import { projecting, setProjecting } from '../../state/projector.ts';
import { workerPool } from '../../workers/start-pool.ts';
import { REDUCED_MOTION } from '../../ui/reduced-motion.ts';
import { BigNumbersOf } from './BigNumbersOf.tsx';
import { ChoiceQuestion } from './ChoiceQuestion.tsx';
import { anyoneCommitted, classRoom } from './commitments.ts';
import { CurveQuestion } from './CurveQuestion.tsx';
import { Explained } from './Explained.tsx';
import { GroupBar } from './GroupBar.tsx';
import { NumberQuestion } from './NumberQuestion.tsx';
import { Outcomes } from './Outcomes.tsx';
import { LessonPicture } from './pictures/LessonPicture.tsx';
import { ControlInput, TryIt } from './TryIt.tsx';

const WorkingDialog = lazy(async () => ({ default: (await import('../working/WorkingDialog.tsx')).WorkingDialog }));

export interface LessonViewProps {
  readonly id: LessonId;
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
  const lesson = createMemo(() => findLesson(props.id));
  const words = createMemo<LessonWords<LessonId>>(() => lessonMessages(props.id, props.reader));
  const common = () => lessonCommonMessages(props.reader);
  const calm = createMediaQuery(REDUCED_MOTION);
  const steps = createMemo<readonly Step[]>(() => [
    { kind: 'set-up' },
    ...lesson().questions.map((question): Step => ({ kind: 'question', question })),
    { kind: 'reveal' },
    { kind: 'why' },
    { kind: 'try' },
  ]);
  const [at, setAt] = createSignal(0);
  const [chosen, setChosen] = createSignal<Turned>({});
  const [answer, setAnswer] = createSignal<LessonAnswer | null>(null);
  const [problem, setProblem] = createSignal<string | null>(null);
  const [shown, setShown] = createSignal(0);
  const [working, setWorking] = createSignal<'never' | 'open' | 'closed'>('never');
  const step = (): Step => steps()[at()] ?? { kind: 'set-up' };
  const question = () => {
    const now = step();
    return now.kind === 'question' ? now.question : null;
  };
  const isRevealed = () => classRoom.revealed().has(props.id);
  const told = createMemo(() => {
    const found = answer();
    return found ? toldLesson(found, props.reader) : null;
  });
  let heading: HTMLHeadingElement | undefined;
  let frame = 0;
  onCleanup(() => cancelAnimationFrame(frame));

  createEffect(
    on(
      () => props.id,
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
    const { id } = lesson();
    classRoom.reveal(id);
    setProblem(null);
    setAnswer(null);
    try {
      const found = await workerPool().ask('lesson', [id, chosen()], { priority: 'high' });
      if (id !== lesson().id) return;
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
    classRoom.startAgain(props.id);
    setAnswer(null);
    setAt(0);
  };
  createPageKeys((by) => go(by));

  const title = (): string => {
    const now = step();
    switch (now.kind) {
      case 'set-up':
        return words().title;
      case 'question':
        return words().questions[now.question.id]?.ask ?? '';
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
    <article class={`lesson is-${step().kind}`} aria-label={words().title}>
      <header class="lesson-head">
        <p class="lesson-count">
          {words().title} · step {at() + 1} of {steps().length}
        </p>
        <h2 class="lesson-title" tabindex="-1" ref={heading}>
          {title()}
        </h2>
      </header>
      <div class="lesson-body">
        <Switch>
          <Match when={step().kind === 'set-up'}>
            <div class="lesson-text">
              <For each={words().setUp}>{(sentence) => <Explained text={sentence} reader={props.reader} />}</For>
              <Show when={lesson().modelOnly}>
                <p class="lesson-caution alarm-mark">{common().modelOnly}</p>
              </Show>
              <For each={lesson().hazards}>
                {(hazard) => <p class="lesson-caution alarm-mark">{common().hazards[hazard]}</p>}
              </For>
              <Show when={lesson().choose}>
                {(control) => (
                  <ControlInput
                    control={control()}
                    words={words().choose ?? words().tryIt}
                    value={chosen()[control().id] ?? control().start}
                    reader={props.reader}
                    onTurn={(value) => !isRevealed() && setChosen({ [control().id]: value })}
                  />
                )}
              </Show>
            </div>
          </Match>
          <Match when={question()} keyed>
            {(asked) => (
              <div class="lesson-question">
                <GroupBar committed={(group) => classRoom.commitment(props.id, asked.id, group) !== null} />
                <Switch>
                  <Match when={asked.kind === 'choice' && asked}>
                    {(q) => (
                      <ChoiceQuestion
                        lesson={props.id}
                        question={q()}
                        words={words().questions[asked.id] ?? { ask: '' }}
                      />
                    )}
                  </Match>
                  <Match when={asked.kind === 'number' && asked}>
                    {(q) => (
                      <NumberQuestion
                        lesson={props.id}
                        question={q()}
                        words={words().questions[asked.id] ?? { ask: '' }}
                        reader={props.reader}
                      />
                    )}
                  </Match>
                  <Match when={asked.kind === 'curve' && asked}>
                    {(q) => (
                      <CurveQuestion
                        lesson={props.id}
                        question={q()}
                        words={words().questions[asked.id] ?? { ask: '' }}
                        reader={props.reader}
                      />
                    )}
                  </Match>
                </Switch>
                <p class="lesson-quiet" role="status">
                  {anyoneCommitted(props.id, asked)
                    ? ''
                    : 'Nobody has answered yet. A guess first makes the answer stick.'}
                </p>
              </div>
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
                  questions={lesson().questions}
                  answer={found()}
                  words={words()}
                  reader={props.reader}
                  shown={shown()}
                />
                <Show when={shown() >= 1}>
                  <div class="lesson-text" role="status">
                    <BigNumbersOf numbers={told()?.big ?? []} />
                    <For each={told()?.happened}>
                      {(sentence) => <Explained text={sentence} reader={props.reader} />}
                    </For>
                    <p class="lesson-quiet">{words().believed}</p>
                  </div>
                </Show>
              </div>
            )}
          </Match>
          <Match when={step().kind === 'why' && answer()}>
            {(found) => (
              <div class="lesson-columns">
                <LessonPicture answer={found()} reader={props.reader} />
                <div class="lesson-text">
                  <For each={told()?.why}>{(sentence) => <Explained text={sentence} reader={props.reader} />}</For>
                  <p class="lesson-quiet">Left out: {words().leavesOut}</p>
                  <p class="lesson-tools">
                    <Show
                      when={lesson().working.kind === 'sheet' && found().runs[0]}
                      fallback={
                        <a href={`#reference/${(lesson().working as { readonly name?: string }).name ?? ''}`}>
                          Show the equation
                        </a>
                      }
                    >
                      <button type="button" onClick={() => setWorking('open')}>
                        Show the working
                      </button>
                    </Show>
                  </p>
                  <Show when={working() !== 'never' && found().runs[0]}>
                    {(run) => (
                      <Suspense>
                        <WorkingDialog
                          open={working() === 'open'}
                          topic={(lesson().working as { readonly id?: WorkingId }).id ?? 'steam-rate'}
                          scenario={run().scenario}
                          units={props.reader.units}
                          onClose={() => setWorking('closed')}
                        />
                      </Suspense>
                    )}
                  </Show>
                </div>
              </div>
            )}
          </Match>
          <Match when={step().kind === 'try' && answer()}>
            {(found) => (
              <TryIt lesson={lesson()} words={words()} answer={found()} turned={chosen()} reader={props.reader} />
            )}
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
