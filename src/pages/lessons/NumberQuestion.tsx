/** A number set on a line by each group. */
import { createMemo, Show } from 'solid-js';
import { lessonCommonMessages, type Question, type QuestionWords, type Reader } from '../../../sim/index.ts';
import { classRoom } from './commitments.ts';
import { NumberLine, type LineMark } from './NumberLine.tsx';

export interface NumberQuestionProps {
  readonly lesson: string;
  readonly question: Extract<Question, { kind: 'number' }>;
  readonly words: QuestionWords;
  readonly reader: Reader;
}

/** What each group has set. */
export const marksOf = (
  lesson: string,
  question: NumberQuestionProps['question'],
  reader: Reader,
): readonly LineMark[] =>
  classRoom.groups().flatMap(({ id, name }) => {
    const commitment = classRoom.commitment(lesson, question.id, id);
    if (commitment?.kind !== 'number') return [];
    const said = lessonCommonMessages(reader).setting(question.quantity, commitment.value);
    return [{ value: commitment.value, words: `${name}: ${said}`, group: id }];
  });

export function NumberQuestion(props: NumberQuestionProps) {
  const said = (value: number) => lessonCommonMessages(props.reader).setting(props.question.quantity, value);
  const mine = createMemo(() => {
    const commitment = classRoom.commitment(props.lesson, props.question.id, classRoom.active());
    return commitment?.kind === 'number' ? commitment.value : null;
  });
  const middle = () => {
    const { min, max, step } = props.question;
    return min + Math.round((max - min) / 2 / step) * step;
  };
  return (
    <div class="number-question">
      <p class="number-set" aria-hidden="true">
        {mine() === null ? '–' : said(mine() ?? 0)}
      </p>
      <input
        type="range"
        class="number-slider drawn-slider"
        aria-label={props.words.ask}
        aria-valuetext={mine() === null ? 'not set yet' : said(mine() ?? 0)}
        disabled={classRoom.revealed().has(props.lesson)}
        min={props.question.min}
        max={props.question.max}
        step={props.question.step}
        value={mine() ?? middle()}
        onInput={(event) =>
          classRoom.commit(props.lesson, props.question.id, {
            kind: 'number',
            value: event.currentTarget.valueAsNumber,
          })
        }
        // A tap on the place where it stands changes nothing, but is an answer.
        onPointerUp={(event) => {
          if (mine() === null)
            classRoom.commit(props.lesson, props.question.id, {
              kind: 'number',
              value: event.currentTarget.valueAsNumber,
            });
        }}
      />
      <Show when={classRoom.groups().length > 0}>
        <NumberLine
          question={props.question}
          marks={marksOf(props.lesson, props.question, props.reader)}
          quantity={said}
        />
      </Show>
    </div>
  );
}
