/** What was just done, said to all, with its undo while there is one. */
import { Show } from 'solid-js';

export interface Told {
  readonly words: string;
  readonly undo?: () => void;
}

export function ToldLine(props: { readonly told: Told | null; readonly onUndone: () => void }) {
  return (
    <p class="told-line" role="status">
      <Show when={props.told}>
        {(now) => (
          <>
            {now().words}{' '}
            <Show when={now().undo}>
              {(undo) => (
                <button
                  type="button"
                  class="word"
                  onClick={() => {
                    undo()();
                    props.onUndone();
                  }}
                >
                  Undo
                </button>
              )}
            </Show>
          </>
        )}
      </Show>
    </p>
  );
}
