/** A paragraph whose words of the trade open their line of the glossary. */
import { createMemo, createSignal, For, Show } from 'solid-js';
import { glossaryMessages, type GlossaryEntry, type Reader } from '../../../sim/index.ts';
import { termsIn } from './terms.ts';

export function Explained(props: { readonly text: string; readonly reader: Reader; readonly class?: string }) {
  const [open, setOpen] = createSignal<GlossaryEntry | null>(null);
  const parts = createMemo(() => termsIn(props.text, glossaryMessages(props.reader)));
  return (
    <>
      <p class={props.class}>
        <For each={parts()}>
          {({ words, entry }) => (
            <Show when={entry} fallback={words}>
              {(found) => (
                <button
                  type="button"
                  class="word term"
                  aria-expanded={open() === found()}
                  onClick={() => setOpen(open() === found() ? null : found())}
                >
                  {words}
                </button>
              )}
            </Show>
          )}
        </For>
      </p>
      <Show when={open()}>
        {(entry) => (
          <p class="term-line" role="status">
            <strong>{entry().term}</strong>: {entry().means}
          </p>
        )}
      </Show>
    </>
  );
}
