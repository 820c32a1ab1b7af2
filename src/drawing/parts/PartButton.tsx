/** One part of the still as a button: its shapes, its words, what a screen reader hears, and a ring when focused. */
import { createMemo, For, Show, type JSX } from 'solid-js';
import type { Box } from '../geometry/shapes.ts';
import { atLeast, grown } from '../geometry/shapes.ts';
import type { Place, LabelId } from '../geometry/labels.ts';
import { PartLabel, type PartWords } from './PartLabel.tsx';

interface PartButtonProps {
  readonly id: LabelId;
  /** What may be hit besides the drawn lines, and what the ring goes round: the first is the part itself. */
  readonly boxes: readonly Box[];
  readonly words: PartWords;
  readonly place: Place<LabelId> | undefined;
  readonly textScale: number;
  readonly selected: boolean;
  readonly onSelect: () => void;
  readonly children: JSX.Element;
}

/** Pointer targets are at least this large, px. */
const LEAST_TARGET = 26;
const RING_GAP = 4;

export function PartButton(props: PartButtonProps) {
  const targets = createMemo(() => props.boxes.map((box) => atLeast(box, LEAST_TARGET, LEAST_TARGET)));
  const ring = createMemo(() => grown(targets()[0] as Box, RING_GAP));
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    props.onSelect();
  };
  return (
    <g
      class="drawing-part"
      classList={{ 'is-selected': props.selected }}
      role="button"
      tabindex="0"
      data-part={props.id}
      aria-pressed={props.selected}
      aria-label={props.words.label}
      onClick={() => props.onSelect()}
      onKeyDown={onKeyDown}
    >
      <For each={targets()}>
        {(box) => <rect class="drawing-target" x={box.x} y={box.y} width={box.width} height={box.height} />}
      </For>
      {props.children}
      <Show when={props.place}>
        {(place) => (
          <PartLabel
            place={place()}
            words={props.words}
            id={props.id}
            textScale={props.textScale}
            selected={props.selected}
          />
        )}
      </Show>
      <rect class="drawing-ring" x={ring().x} y={ring().y} width={ring().width} height={ring().height} rx="3" />
    </g>
  );
}
