/** A teacher's lesson that the address holds. */
import { createMemo, createResource, For, Show } from 'solid-js';
import { ownLessonProblem, stillOf, type OwnLesson, type Reader } from '../../../../sim/index.ts';
import { useBench } from '../../../state/bench.ts';
import { OpenedLesson } from '../OpenedLesson.tsx';
import { draftOf, keepDraft } from './draft.ts';
import { saveLesson } from './own-file.ts';
import { OWN_ADDRESS, readOwnAddress } from './own-link.ts';
import { ownTaught } from './own-taught.tsx';

export function OwnLessonPlace(props: { readonly letters: string; readonly reader: Reader }) {
  const bench = useBench();
  const [read] = createResource(() => props.letters, readOwnAddress);
  const lesson = createMemo<OwnLesson | null>(() => {
    const found = read();
    return found?.ok ? found.lesson : null;
  });
  const problems = createMemo(() => {
    const found = read();
    if (read.loading || found?.ok) return [];
    return found
      ? found.problems.map((problem) => ownLessonProblem(problem, props.reader))
      : ['This link is not whole: a letter is missing or has changed on the way.'];
  });
  const taught = createMemo(() => {
    const known = lesson();
    return (
      known &&
      ownTaught(known, `own ${props.letters}`, props.reader, () => {
        void bench.load(stillOf(known));
        location.hash = '#bench';
      })
    );
  });
  return (
    <Show
      when={taught()}
      fallback={
        <div role="alert">
          <For each={problems()}>{(problem) => <p class="answer-problem">{problem}</p>}</For>
          <Show when={problems().length > 0}>
            <a href="#lessons">All lessons</a>
          </Show>
        </div>
      }
    >
      {(found) => (
        <OpenedLesson
          lesson={found()}
          address={`#lessons/${OWN_ADDRESS}${props.letters}`}
          reader={props.reader}
          tools={
            <>
              <button type="button" onClick={() => saveLesson(lesson() as OwnLesson)}>
                Save as a file
              </button>
              <button
                type="button"
                onClick={() => {
                  keepDraft(draftOf(lesson() as OwnLesson));
                  location.hash = '#lessons/write';
                }}
              >
                Change this lesson
              </button>
            </>
          }
        />
      )}
    </Show>
  );
}
