/** Lessons: the list, or what the address names: a lesson, two stills side by side, a lesson that a teacher wrote. */
import { createMemo, createSignal, lazy, Match, onCleanup, Suspense, Switch } from 'solid-js';
import { LESSON_IDS, type LessonId } from '../../../sim/index.ts';
import { useBench } from '../../state/bench.ts';
import { restOf } from '../../state/places.ts';
import { setProjecting } from '../../state/projector.ts';
import { courseLesson } from './course-lesson.tsx';
import { LessonsList, PAIRS, SIDE_BY_SIDE } from './LessonsList.tsx';
import { OpenedLesson } from './OpenedLesson.tsx';
import './lessons.css';
import './questions.css';

const SideBySide = lazy(async () => ({ default: (await import('./side-by-side/SideBySide.tsx')).SideBySide }));
const OwnLessonPlace = lazy(async () => ({ default: (await import('./own/OwnLessonPlace.tsx')).OwnLessonPlace }));
const WriteLesson = lazy(async () => ({ default: (await import('./own/WriteLesson.tsx')).WriteLesson }));

const OWN = 'own/';
const WRITE = 'write';

export function LessonsView() {
  const bench = useBench();
  const reader = bench.reader;
  const [rest, setRest] = createSignal(restOf(location.hash));
  const follow = () => setRest(restOf(location.hash));
  addEventListener('hashchange', follow);
  onCleanup(() => removeEventListener('hashchange', follow));
  const course = createMemo<LessonId | null>(() => LESSON_IDS.find((id) => id === rest()) ?? null);
  const taught = createMemo(() => {
    const id = course();
    return id && courseLesson(id, reader());
  });
  const pair = createMemo(() => PAIRS.find((id) => rest() === SIDE_BY_SIDE + id) ?? null);
  const own = createMemo(() => (rest().startsWith(OWN) ? rest().slice(OWN.length) : null));
  const isOpen = () => course() !== null || pair() !== null || own() !== null;
  const fetching = <p class="opening">Fetching this lesson…</p>;
  return (
    <div class="lessons" classList={{ 'is-open': isOpen() }}>
      <Switch fallback={<LessonsList reader={reader()} />}>
        <Match when={taught()}>
          {(lesson) => <OpenedLesson lesson={lesson()} address={`#lessons/${lesson().key}`} reader={reader()} />}
        </Match>
        <Match when={pair()} keyed>
          {(id) => (
            <>
              <nav class="lesson-bar" aria-label="These two stills">
                <a href="#lessons">All lessons</a>
                <button type="button" onClick={() => setProjecting(true)}>
                  Projector view
                </button>
              </nav>
              <Suspense fallback={fetching}>
                <SideBySide pair={id} reader={reader()} />
              </Suspense>
            </>
          )}
        </Match>
        <Match when={own()} keyed>
          {(letters) => (
            <Suspense fallback={fetching}>
              <OwnLessonPlace letters={letters} reader={reader()} />
            </Suspense>
          )}
        </Match>
        <Match when={rest() === WRITE}>
          <Suspense fallback={fetching}>
            <WriteLesson reader={reader()} />
          </Suspense>
        </Match>
      </Switch>
    </div>
  );
}
