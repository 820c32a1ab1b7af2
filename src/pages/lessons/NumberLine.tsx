/** A line of numbers with what each group set, and what the model answers once it is known. */
import { For, Show } from 'solid-js';
import type { Question } from '../../../sim/index.ts';

export interface LineMark {
  readonly value: number;
  readonly words: string;
  /** Number of a group; `null` for the model's answer. */
  readonly group: number | null;
}

export interface NumberLineProps {
  readonly question: Extract<Question, { kind: 'number' }>;
  readonly marks: readonly LineMark[];
  readonly quantity: (value: number) => string;
}

export function NumberLine(props: NumberLineProps) {
  const share = (value: number) =>
    `${Math.min(100, Math.max(0, ((value - props.question.min) / (props.question.max - props.question.min)) * 100)).toFixed(2)}%`;
  return (
    <div class="number-line" style={{ '--rows': props.marks.length }}>
      <div class="number-line-rule" />
      <For each={props.marks}>
        {(mark, index) => (
          <p
            class={`number-mark ${mark.group === null ? 'is-truth' : `is-group-${mark.group}`}`}
            classList={{ 'is-right': mark.value > (props.question.min + props.question.max) / 2 }}
            style={{ '--at': share(mark.value), '--row': index() }}
          >
            <span>{mark.words}</span>
          </p>
        )}
      </For>
      <Show when={props.marks.length === 0}>
        <p class="visually-hidden">No mark yet.</p>
      </Show>
      <p class="number-ends" aria-hidden="true">
        <span>{props.quantity(props.question.min)}</span>
        <span>{props.quantity(props.question.max)}</span>
      </p>
    </div>
  );
}
