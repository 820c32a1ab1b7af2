/** The one thing worth trying next, as a button. Its room is kept while there is none. */
import { Show } from 'solid-js';

export interface QuestionProps {
  readonly suggestion: { readonly words: string; readonly act: () => void } | null;
}

export function Question(props: QuestionProps) {
  return (
    <p class="question screen-only">
      <Show when={props.suggestion}>
        {(suggestion) => (
          <>
            <span class="question-lead">Try this:</span>{' '}
            <button type="button" onClick={() => suggestion().act()}>
              {suggestion().words}
            </button>
          </>
        )}
      </Show>
    </p>
  );
}
