/** A lesson as a link, and as a code to photograph from the wall. */
import { createMemo, createSignal, Show } from 'solid-js';
import { qrCode } from '../bench/hand-out/qr-code.ts';

/** A denser code is not read from a wall. */
const LONGEST_IN_A_CODE = 1500;

export function ShareLesson(props: { readonly address: string }) {
  const link = () => new URL(props.address, location.href).href;
  const code = createMemo(() => (link().length > LONGEST_IN_A_CODE ? null : qrCode(link())));
  const [said, setSaid] = createSignal('');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link());
      setSaid('Copied.');
    } catch {
      setSaid('This browser won’t copy by itself. Select the link and copy it by hand.');
    }
  };
  return (
    <section class="lesson-share" aria-label="Share the lesson">
      <Show when={code()} fallback={<p>This lesson is too long for a code. Send the link, or save it as a file.</p>}>
        {(drawn) => (
          <svg role="img" aria-label="Code that opens this lesson" viewBox={`0 0 ${drawn().size} ${drawn().size}`}>
            <path d={drawn().path} shape-rendering="crispEdges" />
          </svg>
        )}
      </Show>
      <div>
        <input class="share-link" type="text" readOnly aria-label="Link to this lesson" value={link()} />
        <button type="button" onClick={() => void copy()}>
          Copy
        </button>
        <p role="status">{said()}</p>
      </div>
    </section>
  );
}
