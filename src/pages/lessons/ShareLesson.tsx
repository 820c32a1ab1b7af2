/** A lesson as a link, and as a code to photograph from the wall. */
import { createMemo, createSignal } from 'solid-js';
import type { LessonId } from '../../../sim/index.ts';
import { qrCode } from '../bench/hand-out/qr-code.ts';

export function ShareLesson(props: { readonly id: LessonId }) {
  const link = () => new URL(`#lessons/${props.id}`, location.href).href;
  const code = createMemo(() => qrCode(link()));
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
      <svg role="img" aria-label="Code that opens this lesson" viewBox={`0 0 ${code().size} ${code().size}`}>
        <path d={code().path} shape-rendering="crispEdges" />
      </svg>
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
