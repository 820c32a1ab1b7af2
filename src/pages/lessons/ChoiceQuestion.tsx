/** One of three or four, chosen by each group or counted by a show of hands. */
import { createSignal, createUniqueId, For, Show } from 'solid-js';
import type { Question, QuestionWords } from '../../../sim/index.ts';
import { classRoom } from './commitments.ts';
import { GroupDash } from './GroupBar.tsx';

export interface ChoiceQuestionProps {
  readonly lesson: string;
  readonly question: Extract<Question, { kind: 'choice' }>;
  readonly words: QuestionWords;
}

const MOST_HANDS = 99;

const anyHands = (lesson: string, { id, options }: ChoiceQuestionProps['question']): boolean =>
  options.some((option) => classRoom.hands(lesson, id, option) > 0);

export function ChoiceQuestion(props: ChoiceQuestionProps) {
  const name = createUniqueId();
  const [asked, setAsked] = createSignal<boolean | null>(null);
  const counting = () => asked() ?? anyHands(props.lesson, props.question);
  const locked = () => classRoom.revealed().has(props.lesson);
  const chosen = (group: number): string | null => {
    const commitment = classRoom.commitment(props.lesson, props.question.id, group);
    return commitment?.kind === 'choice' ? commitment.option : null;
  };
  const words = (option: string) => props.words.options?.[option] ?? option;
  return (
    <div class="choice">
      <fieldset class="choice-options" disabled={locked()}>
        <legend class="visually-hidden">{props.words.ask}</legend>
        <For each={props.question.options}>
          {(option, index) => (
            <div class="choice-option" classList={{ 'is-on': chosen(classRoom.active()) === option }}>
              <Show
                when={counting()}
                fallback={
                  <label>
                    <input
                      type="radio"
                      name={name}
                      checked={chosen(classRoom.active()) === option}
                      onChange={() => classRoom.commit(props.lesson, props.question.id, { kind: 'choice', option })}
                    />
                    <span class="choice-letter" aria-hidden="true">
                      {String.fromCharCode(65 + index())}
                    </span>
                    <span>{words(option)}</span>
                  </label>
                }
              >
                <label>
                  <span class="choice-letter" aria-hidden="true">
                    {String.fromCharCode(65 + index())}
                  </span>
                  <span>{words(option)}</span>
                  <input
                    type="number"
                    class="choice-hands"
                    min="0"
                    max={MOST_HANDS}
                    value={classRoom.hands(props.lesson, props.question.id, option)}
                    onInput={(event) =>
                      classRoom.countHands(
                        props.lesson,
                        props.question.id,
                        option,
                        Math.max(0, Math.min(MOST_HANDS, Math.round(event.currentTarget.valueAsNumber || 0))),
                      )
                    }
                  />
                  <span>hands</span>
                </label>
              </Show>
              <span class="choice-groups">
                <For each={classRoom.groups().filter(({ id }) => chosen(id) === option)}>
                  {(group) => (
                    <span class="choice-group">
                      <GroupDash id={group.id} /> {group.name}
                    </span>
                  )}
                </For>
              </span>
            </div>
          )}
        </For>
      </fieldset>
      <Show when={!locked()}>
        <button type="button" class="group-word" aria-pressed={counting()} onClick={() => setAsked(!counting())}>
          Count hands
        </button>
      </Show>
    </div>
  );
}
