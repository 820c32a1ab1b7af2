/** A lesson of the course with its picture, its working and something to try. */
import { createSignal, lazy, Show, Suspense } from 'solid-js';
import {
  findLesson,
  PAIR_OF_LESSON,
  sideBySideMessages,
  type LessonAnswer,
  type LessonId,
  type Reader,
  type WorkingId,
} from '../../../sim/index.ts';
import { LessonPicture } from './pictures/LessonPicture.tsx';
import { courseText, type TaughtAnswer, type TaughtLesson } from './taught.ts';
import { TryIt } from './TryIt.tsx';

const WorkingDialog = lazy(async () => ({ default: (await import('../working/WorkingDialog.tsx')).WorkingDialog }));

const ofCourse = (answer: TaughtAnswer): LessonAnswer => {
  if (answer.id === 'own') throw new RangeError('this answer is of another lesson');
  return answer;
};

function Working(props: { readonly id: LessonId; readonly answer: LessonAnswer; readonly reader: Reader }) {
  const [working, setWorking] = createSignal<'never' | 'open' | 'closed'>('never');
  const where = () => findLesson(props.id).working;
  return (
    <>
      <p class="lesson-tools">
        <Show
          when={where().kind === 'sheet' && props.answer.runs[0]}
          fallback={<a href={`#reference/${(where() as { readonly name?: string }).name ?? ''}`}>Show the equation</a>}
        >
          <button type="button" onClick={() => setWorking('open')}>
            Show the working
          </button>
        </Show>
      </p>
      <Show when={working() !== 'never' && props.answer.runs[0]}>
        {(run) => (
          <Suspense>
            <WorkingDialog
              open={working() === 'open'}
              topic={(where() as { readonly id?: WorkingId }).id ?? 'steam-rate'}
              scenario={run().scenario}
              units={props.reader.units}
              onClose={() => setWorking('closed')}
            />
          </Suspense>
        )}
      </Show>
    </>
  );
}

export function courseLesson(id: LessonId, reader: Reader): TaughtLesson {
  const { words, ...text } = courseText(id, reader);
  const pair = PAIR_OF_LESSON[id];
  return {
    ...text,
    picture: (answer) => <LessonPicture answer={ofCourse(answer)} reader={reader} />,
    working: (answer) => <Working id={id} answer={ofCourse(answer)} reader={reader} />,
    lastStep: (answer, turned) => (
      <>
        <TryIt lesson={findLesson(id)} words={words} answer={ofCourse(answer)} turned={turned} reader={reader} />
        <Show when={pair}>
          {(known) => (
            <p class="lesson-tools">
              <a href={`#lessons/side-by-side/${known()}`}>
                Drive two stills side by side: {sideBySideMessages(reader).pairs[known()].title}
              </a>
            </p>
          )}
        </Show>
      </>
    ),
  };
}
