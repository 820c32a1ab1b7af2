/** How far a longer piece of work has come, and the way to stop it. */
import { Show } from 'solid-js';

export interface ProgressProps {
  /** What is being done, e.g. `tubes tried`. */
  readonly words: string;
  readonly done: number;
  readonly of: number;
  readonly running: boolean;
  readonly onCancel: () => void;
}

export function Progress(props: ProgressProps) {
  const label = () => `${props.done} of ${props.of} ${props.words}`;
  return (
    <div class="answer-progress">
      <Show when={props.running || props.done < props.of}>
        <progress max={props.of} value={props.done} aria-label={props.words} />
      </Show>
      <span class="answer-progress-words">{label()}</span>
      <Show when={props.running}>
        <button type="button" onClick={() => props.onCancel()}>
          Stop<span class="visually-hidden"> with {label()}</span>
        </button>
      </Show>
      <span class="visually-hidden" role="status">
        {props.running
          ? ''
          : props.done >= props.of
            ? `Done: ${label()}`
            : `Stopped with ${label()}; what was found stays.`}
      </span>
    </div>
  );
}
