/** The charge: small strokes of herb, warmed layer by layer as the steam front climbs. */
import { createMemo, createUniqueId, Index, Show } from 'solid-js';
import { bottom, right } from '../geometry/shapes.ts';
import { herbStrokes, waveLine } from '../geometry/strokes.ts';
import type { BedShape } from '../geometry/vessel-shape.ts';

interface ChargeProps {
  readonly shape: BedShape;
  readonly pxPerMetre: number;
  /** Height of the steam front above the grid, m. */
  readonly front_m: number;
  /** Warmth of each layer from the grid up: 0 as filled, 1 at the boil. */
  readonly warmth: readonly number[];
  /** Surface of the water the charge lies in, when it is submerged. */
  readonly surfaceY: number | null;
}

export function Charge(props: ChargeProps) {
  const box = createMemo(() => {
    const whole = props.shape.box;
    if (props.surfaceY === null) return whole;
    const top = Math.min(bottom(whole) - 4, Math.max(whole.y, props.surfaceY + 3));
    return { ...whole, y: Math.round(top), height: bottom(whole) - Math.round(top) };
  });
  const strokes = createMemo(() => herbStrokes(props.shape.submerged ? props.shape.box : box()));
  const frontY = () => Math.max(box().y, bottom(box()) - props.front_m * props.pxPerMetre);
  const wave = createMemo(() => waveLine(box().x, box().width, 46));
  const layer = () => box().height / Math.max(1, props.warmth.length);
  const id = createUniqueId();
  return (
    <Show when={props.shape.box.height > 0}>
      <rect
        class="drawing-plant"
        classList={{ 'is-submerged': props.shape.submerged }}
        x={box().x}
        y={box().y}
        width={box().width}
        height={box().height}
      />
      <Show when={!props.shape.submerged}>
        <Index each={props.warmth}>
          {(warm, index) => (
            <rect
              class="drawing-warm"
              x={box().x}
              y={bottom(box()) - layer() * (index + 1)}
              width={box().width}
              height={layer() + 0.4}
              style={{ 'fill-opacity': 0.85 * warm() }}
            />
          )}
        </Index>
      </Show>
      <clipPath id={id}>
        <rect x={box().x} y={box().y} width={box().width} height={box().height} />
      </clipPath>
      <path class="drawing-herb" d={strokes()} clip-path={`url(#${id})`} />
      <Show when={!props.shape.submerged && props.front_m > 0 && frontY() > box().y + 1}>
        <path class="drawing-front" d={wave()} transform={`translate(0 ${frontY()})`} />
      </Show>
      <Show when={props.shape.gridY}>
        {(y) => (
          <>
            <path class="drawing-grid" d={`M${box().x} ${y()}H${right(box())}`} />
            <path class="drawing-fine" d={`M${box().x} ${y()}v6M${right(box())} ${y()}v6`} />
          </>
        )}
      </Show>
    </Show>
  );
}
