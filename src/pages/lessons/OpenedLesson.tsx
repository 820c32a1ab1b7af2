/** A lesson with what can be done with it: taught, shown to a room, printed, shared. */
import { createSignal, lazy, Show, Suspense, type JSX } from 'solid-js';
import type { Reader } from '../../../sim/index.ts';
import { useBench } from '../../state/bench.ts';
import { setProjecting } from '../../state/projector.ts';
import { LessonView } from './LessonView.tsx';
import type { SheetKind } from './sheets/Sheets.tsx';
import { loadSheets, SheetsOnPaper } from './sheets/SheetsOnPaper.tsx';
import type { TaughtAnswer, TaughtLesson } from './taught.ts';

const ShareLesson = lazy(async () => ({ default: (await import('./ShareLesson.tsx')).ShareLesson }));

export interface OpenedLessonProps {
  readonly lesson: TaughtLesson;
  /** What follows the page in a link to it. */
  readonly address: string;
  readonly reader: Reader;
  /** More to do with it. */
  readonly tools?: JSX.Element;
}

export function OpenedLesson(props: OpenedLessonProps) {
  const bench = useBench();
  const [sheet, setSheet] = createSignal<SheetKind>('worksheet');
  const [answer, setAnswer] = createSignal<TaughtAnswer | null>(null);
  const [sharing, setSharing] = createSignal(false);
  const print = async (kind: SheetKind) => {
    setSheet(kind);
    await loadSheets();
    if (kind === 'answers') setAnswer(await props.lesson.reveal({}));
    await bench.paper.print();
    setSheet('worksheet');
    setAnswer(null);
  };
  return (
    <>
      <SheetsOnPaper kind={sheet()} lesson={props.lesson} answer={answer()} reader={props.reader} />
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
        {props.tools}
      </nav>
      <Show when={sharing()}>
        <Suspense>
          <ShareLesson address={props.address} />
        </Suspense>
      </Show>
      <LessonView lesson={props.lesson} reader={props.reader} />
    </>
  );
}
