/** Three steps for someone who has never been here. Once dismissed they do not come back. */
import { createSignal, Show } from 'solid-js';

const STEPS = [
  'This is a still at work. Pause it and play it, or drag the round time mark to go back and on.',
  'Turn up the heat and read the first line of the verdict: it tells whether the coil still holds.',
  'Pick any part of the drawing to see its sizes and change them to yours. Nothing you do here leaves this device.',
] as const;

export function FirstHints(props: { readonly onDismiss: () => void }) {
  const [step, setStep] = createSignal(0);
  const isLast = () => step() === STEPS.length - 1;
  return (
    <aside class="hints screen-only" aria-label="First steps">
      <p class="hints-count">
        {step() + 1} of {STEPS.length}
      </p>
      <p aria-live="polite">{STEPS[step()]}</p>
      <div class="hints-buttons">
        <Show when={!isLast()}>
          <button type="button" onClick={() => setStep(step() + 1)}>
            Next
          </button>
        </Show>
        <button type="button" onClick={() => props.onDismiss()}>
          {isLast() ? 'Done' : 'Skip'}
        </button>
      </div>
    </aside>
  );
}
