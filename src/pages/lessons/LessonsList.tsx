/** The list of the lessons, with what else the class can do. */
import { createSignal, For } from 'solid-js';
import {
  CLASS_PLANS,
  findLesson,
  glossaryMessages,
  LESSON_IDS,
  lessonMessages,
  PAIR_IDS,
  sideBySideMessages,
  type PairId,
  type Reader,
} from '../../../sim/index.ts';
import { useBench } from '../../state/bench.ts';
import { loadSheets, SheetsOnPaper } from './sheets/SheetsOnPaper.tsx';

/** Lists of the page that name a time in class. */
const PLANS = [45, 90] as const;

/** What stands before a pair of stills in the address of the place. */
export const SIDE_BY_SIDE = 'side-by-side/';
export const PAIRS: readonly (PairId | 'bench')[] = [...PAIR_IDS, 'bench'];

export function LessonsList(props: { readonly reader: Reader }) {
  const bench = useBench();
  const [problems, setProblems] = createSignal<readonly string[]>([]);
  let picker: HTMLInputElement | undefined;
  const open = async (file: File) => {
    const { openLessonFile } = await import('./own/own-file.ts');
    const read = await openLessonFile(file, props.reader);
    if (read.ok) location.hash = read.address;
    else setProblems(read.problems);
  };
  return (
    <>
      <SheetsOnPaper kind="plan" lesson={null} answer={null} reader={props.reader} />
      <div class="answer lessons-list">
        <header class="answer-head">
          <h2>Lessons</h2>
          <p class="answer-lead">The class commits itself first. Then the run is revealed.</p>
          <div class="answer-tools">
            <button type="button" onClick={() => void loadSheets().then(() => bench.paper.print())}>
              Print the class plans
            </button>
            <a href="#lessons/write">Write a lesson</a>
            <button type="button" onClick={() => picker?.click()}>
              Open a lesson’s file
            </button>
            <input
              ref={picker}
              type="file"
              hidden
              accept=".json,application/json"
              onChange={(event) => {
                const file = event.currentTarget.files?.[0];
                event.currentTarget.value = '';
                if (file) void open(file);
              }}
            />
          </div>
          <div role="alert">
            <For each={problems()}>{(problem) => <p class="answer-problem">{problem}</p>}</For>
          </div>
        </header>
        <ol class="lesson-cards">
          <For each={LESSON_IDS}>
            {(id) => (
              <li>
                <a href={`#lessons/${id}`}>{lessonMessages(id, props.reader).title}</a>
                <p>
                  {Object.values(lessonMessages(id, props.reader).questions)[0]?.ask}
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
        <section aria-labelledby="pairs-title">
          <h3 id="pairs-title">Two stills side by side</h3>
          <p>The class drives both at once, each with its own heat and tap.</p>
          <ul class="lesson-pairs">
            <For each={PAIRS}>
              {(id) => (
                <li>
                  <a href={`#lessons/${SIDE_BY_SIDE}${id}`}>{sideBySideMessages(props.reader).pairs[id].title}</a>
                </li>
              )}
            </For>
          </ul>
        </section>
        <section aria-labelledby="glossary-title">
          <h3 id="glossary-title">Words of the trade</h3>
          <dl class="glossary">
            <For each={glossaryMessages(props.reader)}>
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
    </>
  );
}
