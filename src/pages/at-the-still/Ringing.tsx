/** What rings now, silenced by one press. */
import { For, Show } from 'solid-js';
import { runSheetMessages, type Reader } from '../../../sim/index.ts';
import { stillSession } from './session.ts';

export function Ringing(props: { readonly reader: Reader }) {
  const session = stillSession();
  const words = () => runSheetMessages(props.reader);
  return (
    <Show when={session.ringing().length > 0}>
      <section
        class="ringing"
        role="alert"
        classList={{ 'is-alarm': session.ringing().some(({ rings }) => rings === 'alarm') }}
      >
        <ul>
          <For each={session.ringing()}>
            {(step) => (
              <li>
                <strong>{words().step(step).title}.</strong> {words().step(step).danger ?? words().step(step).look}
              </li>
            )}
          </For>
        </ul>
        <button type="button" class="ringing-silence" onClick={() => session.silence()}>
          Silence
        </button>
      </section>
    </Show>
  );
}
