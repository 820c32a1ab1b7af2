/** The one thing worth trying next, with what the model saw when it tried. Its room is kept while there is none. */
import { Show } from 'solid-js';
import type { SaidSuggestion } from '../../../sim/index.ts';

export interface QuestionProps {
  readonly suggestion: (SaidSuggestion & { readonly act: () => void }) | null;
}

export function Question(props: QuestionProps) {
  return (
    <div class="question screen-only">
      <Show when={props.suggestion}>
        {(suggestion) => (
          <>
            <button type="button" aria-describedby="question-sees" onClick={() => suggestion().act()}>
              {suggestion().words}
            </button>
            <p id="question-sees">{suggestion().sees}</p>
          </>
        )}
      </Show>
    </div>
  );
}
