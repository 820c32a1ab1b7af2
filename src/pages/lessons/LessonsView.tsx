/** Lessons: the list, or the one that the address names, and the sheets that print from them. */
import { createMemo, createSignal, For, lazy, onCleanup, Show, Suspense } from 'solid-js';
import {
  CLASS_PLANS,
  findLesson,
  glossaryMessages,
  LESSON_IDS,
  lessonMessages,
  type LessonAnswer,
  type LessonId,
} from '../../../sim/index.ts';
import { useBench } from '../../state/bench.ts';
import { restOf } from '../../state/places.ts';
import { setProjecting } from '../../state/projector.ts';
import { workerPool } from '../../workers/start-pool.ts';
import { LessonView } from './LessonView.tsx';
import type { SheetKind } from './sheets/Sheets.tsx';
import './lessons.css';
import './questions.css';

const loadSheets = () => import('./sheets/Sheets.tsx');
const Sheets = lazy(async () => ({ default: (await loadSheets()).Sheets }));
const ShareLesson = lazy(async () => ({ default: (await import('./ShareLesson.tsx')).ShareLesson }));

/** Lists of the page that name a time in class. */
const PLANS = [45, 90] as const;

export function LessonsView() {
  const bench = useBench();
  const reader = bench.reader;
  const known = (name: string): LessonId | null => LESSON_IDS.find((id) => id === name) ?? null;
  const [opened, setOpened] = createSignal(known(restOf(location.hash)));
  const follow = () => setOpened(known(restOf(location.hash)));
  addEventListener('hashchange', follow);
  onCleanup(() => removeEventListener('hashchange', follow));
  const [sheet, setSheet] = createSignal<SheetKind>('worksheet');
  const [answer, setAnswer] = createSignal<LessonAnswer | null>(null);
  const [sharing, setSharing] = createSignal(false);
  const wanted = createMemo<SheetKind>(() => (opened() === null ? 'plan' : sheet()));

  // There by the time the browser's own menu prints, too.
  void loadSheets();
  const print = async (kind: SheetKind) => {
    const id = opened();
    setSheet(kind);
    await loadSheets();
    if (id !== null && kind === 'answers') setAnswer(await workerPool().ask('lesson', [id, {}], { priority: 'high' }));
    await bench.paper.print();
    setSheet('worksheet');
    setAnswer(null);
  };

  return (
    <div class="lessons" classList={{ 'is-open': opened() !== null }}>
      <Show when={bench.paper.onPaper()}>
        <div class="lesson-sheets">
          <Suspense>
            <Sheets kind={wanted()} id={opened()} answer={answer()} reader={reader()} />
          </Suspense>
        </div>
      </Show>
      <Show
        when={opened()}
        fallback={
          <div class="answer lessons-list">
            <header class="answer-head">
              <h2>Lessons</h2>
              <p class="answer-lead">The class commits itself first. Then the run is revealed.</p>
              <div class="answer-tools">
                <button type="button" onClick={() => void print('plan')}>
                  Print the class plans
                </button>
              </div>
            </header>
            <ol class="lesson-cards">
              <For each={LESSON_IDS}>
                {(id) => (
                  <li>
                    <a href={`#lessons/${id}`}>{lessonMessages(id, reader()).title}</a>
                    <p>
                      {Object.values(lessonMessages(id, reader()).questions)[0]?.ask}
                      <span class="lesson-plans">
                        {[
                          ...PLANS.filter((minutes) => CLASS_PLANS[minutes].includes(id)).map(
                            (minutes) => `in the plan for ${minutes} min`,
                          ),
                          ...(findLesson(id).modelOnly ? ['model only'] : []),
                        ].join(', ')}
                      </span>
                    </p>
                  </li>
                )}
              </For>
            </ol>
            <section aria-labelledby="glossary-title">
              <h3 id="glossary-title">Words of the trade</h3>
              <dl class="glossary">
                <For each={glossaryMessages(reader())}>
                  {({ term, means }) => (
                    <div>
                      <dt>{term}</dt>
                      <dd>{means}</dd>
                    </div>
                  )}
                </For>
              </dl>
            </section>
          </div>
        }
      >
        {(id) => (
          <>
            <nav class="lesson-bar" aria-label="This lesson">
              <a href="#lessons">All lessons</a>
              <button type="button" onClick={() => setProjecting(true)}>
                Projector view
              </button>
              <button type="button" onClick={() => void print('worksheet')}>
                Print the worksheet
              </button>
              <button type="button" onClick={() => void print('answers')}>
                Print the answers
              </button>
              <button type="button" aria-expanded={sharing()} onClick={() => setSharing(!sharing())}>
                Share the lesson
              </button>
            </nav>
            <Show when={sharing()}>
              <Suspense>
                <ShareLesson id={id()} />
              </Suspense>
            </Show>
            <LessonView id={id()} reader={reader()} />
          </>
        )}
      </Show>
    </div>
  );
}
