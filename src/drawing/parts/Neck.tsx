/** The swan neck: a tube over to the condenser, lagged or bare, with a break where its run is not drawn at length. */
import { For, Show } from 'solid-js';
import type { NeckShape } from '../geometry/neck-shape.ts';
import { pathThrough } from '../geometry/shapes.ts';
import { BreakMark } from './BreakMark.tsx';

export function Neck(props: { readonly shape: NeckShape }) {
  return (
    <>
      <Show when={props.shape.insulation > 0}>
        <path
          class="drawing-tube-wall"
          d={pathThrough(props.shape.run)}
          style={{ 'stroke-width': `${props.shape.width + 2 * props.shape.insulation + 2}` }}
        />
        <path
          class="drawing-tube-lagging"
          d={pathThrough(props.shape.run)}
          style={{ 'stroke-width': `${props.shape.width + 2 * props.shape.insulation}` }}
        />
      </Show>
      <path
        class="drawing-tube-wall"
        d={pathThrough(props.shape.run)}
        style={{ 'stroke-width': `${props.shape.width + 4}` }}
      />
      <path
        class="drawing-tube-bore"
        d={pathThrough(props.shape.run)}
        style={{ 'stroke-width': `${props.shape.width}` }}
      />
      <For each={props.shape.breaks}>
        {(mark) => (
          <BreakMark at={mark.at} dx={mark.dx} dy={mark.dy} half={props.shape.width / 2 + props.shape.insulation + 6} />
        )}
      </For>
    </>
  );
}
