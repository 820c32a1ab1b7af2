/** Pot or boiler in section: cut walls, insulation, lid, and the water at its depth. */
import { createMemo, Show } from 'solid-js';
import { bottom, right } from '../geometry/shapes.ts';
import { waveLine } from '../geometry/strokes.ts';
import { warmColour } from './Condenser.tsx';
import type { VesselShape } from '../geometry/vessel-shape.ts';

interface VesselProps {
  readonly shape: VesselShape;
  readonly pxPerMetre: number;
  /** Depth of the liquid, m; null when this vessel holds none. */
  readonly depth_m: number | null;
  /** Warmth of the liquid, 0–1. */
  readonly warmth: number;
  /** How hard it boils, 0–1: the surface is livelier. */
  readonly boil: number;
  readonly waterAlarm: 'none' | 'low' | 'dry';
}

export function VesselBody(props: VesselProps) {
  const inner = () => props.shape.inner;
  const surface = () => Math.max(inner().y + 2, bottom(inner()) - (props.depth_m ?? 0) * props.pxPerMetre);
  const wave = createMemo(() => waveLine(inner().x, inner().width));
  return (
    <>
      <Show when={props.shape.insulationPath}>{(path) => <path class="drawing-lagging" d={path()} />}</Show>
      <path
        class="drawing-inside"
        d={`M${inner().x} ${inner().y}h${inner().width}v${inner().height}h${-inner().width}Z`}
      />
      <path class="drawing-inside" d={props.shape.lidInside} />
      <Show when={props.depth_m !== null && props.depth_m > 0.0002}>
        <rect
          x={inner().x}
          y={surface()}
          width={inner().width}
          height={bottom(inner()) - surface()}
          style={{ fill: warmColour(props.warmth) }}
        />
        <path
          class="drawing-surface"
          d={wave()}
          transform={`translate(0 ${surface()}) scale(1 ${0.35 + 1.3 * props.boil})`}
        />
      </Show>
      <path class="drawing-wall" d={props.shape.wallPath} />
      <path class="drawing-outline" d={props.shape.outline} />
      <Show when={props.waterAlarm !== 'none'}>
        <path class="drawing-alarm-line" d={`M${inner().x} ${bottom(inner()) - 2}H${right(inner())}`} />
        <path
          class="drawing-alarm-line drawing-alarm-dash"
          d={`M${inner().x} ${bottom(inner()) - 7}H${right(inner())}`}
        />
      </Show>
    </>
  );
}

export function VesselLid(props: { readonly shape: VesselShape; readonly pressureAlarm: boolean }) {
  const lid = () => props.shape;
  const arrows = () => {
    const { centreX, lidTop, inner } = lid();
    return [-0.3, 0.3].map((share) => `M${centreX + share * inner.width} ${lidTop + 2}v-12m-4 4l4 -5l4 5`).join('');
  };
  return (
    <>
      <path class="drawing-lid" d={lid().lidPath} />
      <path
        class="drawing-rim"
        d={`M${lid().inner.x - lid().wall - 4} ${lid().inner.y}H${lid().inner.x + 2}M${right(lid().inner) - 2} ${lid().inner.y}H${right(lid().inner) + lid().wall + 4}`}
      />
      <Show when={props.pressureAlarm}>
        <path class="drawing-alarm-line" d={lid().lidPath} />
        <path class="drawing-alarm-line" d={arrows()} />
      </Show>
    </>
  );
}
