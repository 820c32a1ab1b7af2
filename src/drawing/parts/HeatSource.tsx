/** The heat source, each kind drawn as it is; how strongly it glows or burns follows the power it takes. */
import { For, Match, Switch } from 'solid-js';
import type { HeatShape } from '../geometry/heat-shape.ts';
import { flamePath } from '../geometry/strokes.ts';
import { bottom, pathThrough, right } from '../geometry/shapes.ts';

interface HeatSourceProps {
  readonly shape: HeatShape;
  /** Power drawn as a share of the rated power, 0–1. */
  readonly share: number;
}

const glow = (share: number): number => (share <= 0.005 ? 0 : 0.3 + 0.7 * share);

function windings(left: number, rightEdge: number, y: number): string {
  const count = Math.max(3, Math.round((rightEdge - left) / 16));
  const step = (rightEdge - left) / count;
  let path = `M${left} ${y}`;
  for (let index = 0; index < count; index++) path += `q${step / 4} -5 ${step / 2} 0t${step / 2} 0`;
  return path;
}

function Plate(props: HeatSourceProps) {
  const body = () => props.shape.body;
  return (
    <>
      <rect class="drawing-solid" x={body().x} y={body().y} width={body().width} height={body().height} rx="3" />
      <path
        class="drawing-heat"
        d={windings(
          props.shape.heatedLeft + 6,
          props.shape.heatedRight - 6,
          body().y + Math.min(6, body().height * 0.45),
        )}
        style={{ 'stroke-opacity': glow(props.share) }}
      />
      <path
        class="drawing-fine"
        d={`M${body().x + 8} ${bottom(body()) - Math.min(5, body().height * 0.25)}H${right(body()) - 8}`}
      />
    </>
  );
}

function Induction(props: HeatSourceProps) {
  const body = () => props.shape.body;
  const coils = () => {
    const { heatedLeft, heatedRight } = props.shape;
    const count = Math.max(4, 2 * Math.round((heatedRight - heatedLeft) / 26));
    const step = (heatedRight - heatedLeft) / count;
    return Array.from({ length: count }, (_, index) => heatedLeft + step * (index + 0.5));
  };
  const y = () => body().y + body().height * 0.55;
  const fields = () => {
    const { heatedLeft, heatedRight, topY } = props.shape;
    const quarter = (heatedRight - heatedLeft) / 4;
    return [1, 3]
      .map(
        (part) =>
          `M${heatedLeft + quarter * (part - 0.6)} ${y()}q${quarter * 0.6} ${(topY - y()) * 2.4} ${quarter * 1.2} 0`,
      )
      .join('');
  };
  return (
    <>
      <rect class="drawing-solid" x={body().x} y={body().y} width={body().width} height={body().height} rx="2" />
      <path class="drawing-fine" d={`M${body().x} ${body().y + Math.min(4, body().height * 0.3)}H${right(body())}`} />
      <path class="drawing-heat drawing-heat-fine" d={fields()} style={{ 'stroke-opacity': glow(props.share) }} />
      <For each={coils()}>
        {(x) => (
          <>
            <circle class="drawing-solid drawing-thin" cx={x} cy={y()} r={Math.min(3.4, body().height * 0.2)} />
            <circle
              class="drawing-heat-dot"
              cx={x}
              cy={y()}
              r={Math.min(1.5, body().height * 0.1)}
              style={{ 'fill-opacity': glow(props.share) }}
            />
          </>
        )}
      </For>
    </>
  );
}

function Flames(props: HeatSourceProps) {
  return (
    <For each={props.shape.flames}>
      {(flame) => (
        <g
          transform={`translate(${flame.x} ${flame.baseY}) scale(1 ${props.share <= 0.005 ? 0 : 0.22 + 0.78 * props.share})`}
        >
          <path class="drawing-flame" d={flamePath(flame.half, flame.height)} />
          <path class="drawing-flame-heart" d={flamePath(flame.half * 0.4, flame.height * 0.5)} />
        </g>
      )}
    </For>
  );
}

function GasRing(props: HeatSourceProps) {
  const shape = () => props.shape;
  const base = () => shape().flames[0]?.baseY ?? shape().floorY;
  const trivet = () => {
    const { body, topY, floorY } = shape();
    const legs = [body.x + 5, right(body) - 5].map((x) => `M${x} ${topY}V${floorY}`).join('');
    return `M${body.x} ${topY}H${right(body)}${legs}`;
  };
  const low = () => shape().floorY - 4;
  return (
    <>
      <path class="drawing-line-ink" d={trivet()} />
      <path
        class="drawing-fine"
        d={`M${shape().body.x - 9} ${low()}v-3v6v-3H${(shape().heatedLeft + shape().heatedRight) / 2}V${base() + 4}`}
      />
      <rect
        class="drawing-solid"
        x={shape().heatedLeft + 4}
        y={base()}
        width={Math.max(4, shape().heatedRight - shape().heatedLeft - 8)}
        height={Math.max(3, Math.min(7, (shape().floorY - base()) * 0.4))}
        rx="2"
      />
      <Flames {...props} />
    </>
  );
}

function GasBurner(props: HeatSourceProps) {
  const shape = () => props.shape;
  const base = () => shape().flames[0]?.baseY ?? shape().floorY;
  const centre = () => (shape().heatedLeft + shape().heatedRight) / 2;
  const legs = () => {
    const { body, topY, floorY } = shape();
    const ring = topY + (floorY - topY) * 0.82;
    return `M${body.x} ${topY}H${right(body)}M${body.x + 6} ${topY}L${body.x - 3} ${floorY}M${right(body) - 6} ${topY}L${right(body) + 3} ${floorY}M${body.x} ${ring}H${right(body)}`;
  };
  const cup = () => {
    const half = Math.max(7, (shape().heatedRight - shape().heatedLeft) * 0.32);
    const deep = Math.max(5, (shape().floorY - base()) * 0.32);
    return `M${centre() - half} ${base()}h${2 * half}l${-half * 0.55} ${deep}h${-half * 0.9}Z`;
  };
  return (
    <>
      <path class="drawing-line-ink" d={legs()} />
      <path
        class="drawing-fine"
        d={`M${shape().body.x - 9} ${shape().floorY - 4}v-3v6v-3q${0.5 * (centre() - shape().body.x)} 0 ${centre() - shape().body.x + 9} ${-(shape().floorY - base()) * 0.6}`}
      />
      <path class="drawing-solid" d={cup()} />
      <Flames {...props} />
    </>
  );
}

function WoodFire(props: HeatSourceProps) {
  const shape = () => props.shape;
  const stone = () => Math.max(8, shape().body.width * 0.12);
  const tall = () => shape().floorY - shape().topY;
  const logs = () => {
    const width = shape().body.width - 2 * stone() - 8;
    const radius = Math.max(3, Math.min(10, width / 9, tall() * 0.16));
    const count = Math.max(2, Math.min(5, Math.floor(width / (radius * 3))));
    const left = shape().body.x + stone() + 4;
    return Array.from({ length: count }, (_, index) => ({
      x: left + (width * (index + 0.5)) / count,
      r: radius * (index % 2 === 0 ? 1 : 0.8),
    }));
  };
  const stones = () => {
    const { body, topY } = shape();
    return [body.x, right(body) - stone()].map((x) => ({ x, y: topY, width: stone(), height: tall() }));
  };
  return (
    <>
      <For each={stones()}>
        {(box) => (
          <path
            class="drawing-solid drawing-hatched"
            d={`M${box.x + 2} ${box.y}h${box.width - 4}l2 ${box.height * 0.4}l-1 ${box.height * 0.6}h${-box.width + 1}l-1 ${-box.height * 0.5}Z`}
          />
        )}
      </For>
      <Flames {...props} />
      <For each={logs()}>
        {(log) => (
          <>
            <circle class="drawing-solid drawing-thin" cx={log.x} cy={shape().floorY - log.r} r={log.r} />
            <circle class="drawing-fine" cx={log.x} cy={shape().floorY - log.r} r={log.r * 0.55} />
            <circle
              class="drawing-heat-dot"
              cx={log.x}
              cy={shape().floorY - log.r}
              r={log.r * 0.25}
              style={{ 'fill-opacity': glow(props.share) }}
            />
          </>
        )}
      </For>
    </>
  );
}

const Feet = (props: { readonly of: HeatShape['feet'] }) => (
  <For each={props.of}>
    {(foot) => (
      <rect class="drawing-solid drawing-thin" x={foot.x} y={foot.y} width={foot.width} height={foot.height} />
    )}
  </For>
);

function Rod(props: HeatSourceProps) {
  const body = () => props.shape.body;
  const path = () => pathThrough(props.shape.rod);
  return (
    <>
      <Feet of={props.shape.feet} />
      <path class="drawing-rod" d={path()} />
      <path class="drawing-rod-heat" d={path()} style={{ 'stroke-opacity': glow(props.share) }} />
      <rect class="drawing-solid" x={body().x} y={body().y} width={body().width} height={body().height} rx="2" />
      <path class="drawing-fine" d={`M${body().x} ${body().y + body().height / 2}q-16 0 -16 14`} />
    </>
  );
}

function Generator(props: HeatSourceProps) {
  const body = () => props.shape.body;
  const path = () => pathThrough(props.shape.rod);
  return (
    <>
      <Feet of={props.shape.feet} />
      <path class="drawing-tube-wall" d={path()} style={{ 'stroke-width': '8' }} />
      <path class="drawing-tube-bore" d={path()} style={{ 'stroke-width': '5.5' }} />
      <rect class="drawing-solid" x={body().x} y={body().y} width={body().width} height={body().height} rx="4" />
      <path
        class="drawing-fine"
        d={`M${body().x + 7} ${body().y + 24}V${bottom(body()) - 9}M${body().x + 7} ${bottom(body()) - 9}H${right(body()) - 7}`}
      />
      <circle class="drawing-solid drawing-thin" cx={body().x + body().width / 2} cy={body().y + 15} r="7" />
      <path
        class="drawing-heat"
        d={`M${body().x + body().width / 2} ${body().y + 15}l${5 * Math.sin(2.4 * (props.share - 0.5) * 2)} ${-5 * Math.cos(2.4 * (props.share - 0.5) * 2)}`}
      />
      <path
        class="drawing-heat"
        d={windings(body().x + 12, right(body()) - 6, bottom(body()) - 18)}
        style={{ 'stroke-opacity': glow(props.share) }}
      />
    </>
  );
}

export function HeatSource(props: HeatSourceProps) {
  return (
    <Switch fallback={<Rod {...props} />}>
      <Match when={props.shape.kind === 'electric-plate'}>
        <Plate {...props} />
      </Match>
      <Match when={props.shape.kind === 'induction'}>
        <Induction {...props} />
      </Match>
      <Match when={props.shape.kind === 'gas-ring'}>
        <GasRing {...props} />
      </Match>
      <Match when={props.shape.kind === 'gas-burner'}>
        <GasBurner {...props} />
      </Match>
      <Match when={props.shape.kind === 'wood-fire'}>
        <WoodFire {...props} />
      </Match>
      <Match when={props.shape.beside}>
        <Generator {...props} />
      </Match>
    </Switch>
  );
}
