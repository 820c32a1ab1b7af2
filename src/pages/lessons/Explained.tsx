/** Text whose words of the trade open their line of the glossary. */
import { createMemo, createSignal, For, Show } from 'solid-js';
import { glossaryMessages, type GlossaryEntry, type Reader } from '../../../sim/index.ts';
import { termsIn, termsOf } from './terms.ts';

function createOpenTerm() {
  const [open, setOpen] = createSignal<GlossaryEntry | null>(null);
  return { open, toggle: (entry: GlossaryEntry) => setOpen(open() === entry ? null : entry) };
}

function TermLine(props: { readonly entry: GlossaryEntry | null }) {
  return (
    <Show when={props.entry}>
      {(entry) => (
        <p class="term-line" role="status">
          <strong>{entry().term}</strong>: {entry().means}
        </p>
      )}
    </Show>
  );
}

export function Explained(props: { readonly text: string; readonly reader: Reader; readonly class?: string }) {
  const { open, toggle } = createOpenTerm();
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
                  onClick={() => toggle(found())}
                >
                  {words}
                </button>
              )}
            </Show>
          )}
        </For>
      </p>
      <TermLine entry={open()} />
    </>
  );
}

/** The words of the trade of texts that are no place for buttons: a heading, the label of an answer. */
export function Terms(props: { readonly texts: readonly string[]; readonly reader: Reader }) {
  const { open, toggle } = createOpenTerm();
  const entries = createMemo(() => termsOf(props.texts, glossaryMessages(props.reader)));
  return (
    <Show when={entries().length > 0}>
      <p class="terms">
        Words:{' '}
        <For each={entries()}>
          {(entry) => (
            <button type="button" class="word term" aria-expanded={open() === entry} onClick={() => toggle(entry)}>
              {entry.term}
            </button>
          )}
        </For>
      </p>
      <TermLine entry={open()} />
    </Show>
  );
}
