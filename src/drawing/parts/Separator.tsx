/** Separator and jug: oil and water at their true heights, the legs, the jug that fills. */
import { Show } from 'solid-js';
import { GLASS_WALL } from '../geometry/line-weights.ts';
import type { JugShape, SeparatorShape } from '../geometry/separator-shape.ts';
import { bottom, pathThrough, right } from '../geometry/shapes.ts';

interface SeparatorProps {
  readonly shape: SeparatorShape;
  readonly oilLayer_m: number;
  readonly sinks: boolean;
}

/** An oil layer thinner than a pen line is still drawn. */
const LEAST_LAYER = 1.4;

export function Separator(props: SeparatorProps) {
  const shape = () => props.shape;
  const glass = () => shape().glass;
  const deep = () => bottom(glass()) - shape().surfaceY;
  const layer = () =>
    props.oilLayer_m <= 0 ? 0 : Math.min(deep(), Math.max(LEAST_LAYER, props.oilLayer_m * shape().pxPerMetre));
  const layerY = () => (props.sinks ? bottom(glass()) - layer() : shape().surfaceY);
  const interfaceY = () => (props.sinks ? layerY() : layerY() + layer());
  const funnel = () => shape().funnel;
  const leg = () => (props.sinks ? shape().overTop : shape().waterLeg);
  return (
    <>
      <path
        class="drawing-inside"
        d={`M${glass().x} ${glass().y}h${glass().width}V${bottom(glass())}h${-glass().width}Z`}
      />
      <rect
        class="drawing-water"
        x={glass().x}
        y={shape().surfaceY}
        width={glass().width}
        height={Math.max(0, deep())}
      />
      <Show when={layer() > 0}>
        <rect class="drawing-oil" x={glass().x} y={layerY()} width={glass().width} height={layer()} />
        <path class="drawing-oil-line" d={`M${glass().x} ${interfaceY()}H${right(glass())}`} />
      </Show>
      <path class="drawing-surface drawing-thin" d={`M${glass().x} ${shape().surfaceY}H${right(glass())}`} />
      <path class="drawing-leg-wall" d={pathThrough(leg())} style={{ 'stroke-width': `${shape().legWidth + 2}` }} />
      <path class="drawing-leg-bore" d={pathThrough(leg())} style={{ 'stroke-width': `${shape().legWidth}` }} />
      <path
        class="drawing-glass"
        d={`M${glass().x - GLASS_WALL / 2} ${glass().y}V${bottom(glass()) + GLASS_WALL / 2}H${right(glass()) + GLASS_WALL / 2}V${glass().y}`}
      />
      <Show when={props.sinks} fallback={<path class="drawing-spout" d={pathThrough(shape().spout)} />}>
        <path class="drawing-spout" d={`${pathThrough(shape().bottomTap)}m-4 -4v8`} />
      </Show>
      <path
        class="drawing-funnel"
        d={`M${shape().centreX - funnel().half} ${funnel().topY}L${shape().centreX - funnel().stemHalf} ${funnel().neckY}V${funnel().endY}M${shape().centreX + funnel().half} ${funnel().topY}L${shape().centreX + funnel().stemHalf} ${funnel().neckY}V${funnel().endY}`}
      />
    </>
  );
}

interface JugProps {
  readonly shape: JugShape;
  readonly hydrosol_kg: number;
}

export function Jug(props: JugProps) {
  const glass = () => props.shape.glass;
  const level = () => Math.min(glass().height, props.hydrosol_kg * props.shape.pxPerKg);
  return (
    <>
      <path
        class="drawing-inside"
        d={`M${glass().x} ${glass().y}h${glass().width}V${bottom(glass())}h${-glass().width}Z`}
      />
      <Show when={level() > 0.2}>
        <rect
          class="drawing-water"
          x={glass().x}
          y={bottom(glass()) - level()}
          width={glass().width}
          height={level()}
        />
        <path class="drawing-surface drawing-thin" d={`M${glass().x} ${bottom(glass()) - level()}H${right(glass())}`} />
      </Show>
      <path
        class="drawing-glass"
        d={`M${glass().x - GLASS_WALL / 2 - 3} ${glass().y - 3}q3 0 3 4V${bottom(glass()) + GLASS_WALL / 2}H${right(glass()) + GLASS_WALL / 2}V${glass().y - 3}`}
      />
    </>
  );
}
