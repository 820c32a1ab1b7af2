/** One of a few: radio buttons when there are up to three, else the browser's own list. */
import { For, Show } from 'solid-js';
import './ui.css';

export interface Option {
  readonly value: string;
  readonly words: string;
}

/** More than this many choices are a list. */
export const MOST_RADIOS = 3;

export interface ChoiceInputProps {
  readonly id: string;
  readonly options: readonly Option[];
  readonly value: string;
  readonly describedBy: string;
  readonly onChoose: (value: string) => void;
}

export function ChoiceInput(props: ChoiceInputProps) {
  return (
    <Show
      when={props.options.length <= MOST_RADIOS}
      fallback={
        <select
          id={props.id}
          class="choice-list"
          aria-describedby={props.describedBy}
          onChange={(event) => props.onChoose(event.currentTarget.value)}
        >
          <For each={props.options}>
            {(option) => (
              <option value={option.value} selected={option.value === props.value}>
                {option.words}
              </option>
            )}
          </For>
        </select>
      }
    >
      <span class="choice-radios">
        <For each={props.options}>
          {(option) => (
            <label class="choice-radio">
              <input
                type="radio"
                name={`${props.id}-choice`}
                value={option.value}
                checked={option.value === props.value}
                onChange={() => props.onChoose(option.value)}
              />{' '}
              {option.words}
            </label>
          )}
        </For>
      </span>
    </Show>
  );
}
