/** The condenser tube: coil or straight, with the liquid where vapour has become liquid and a bracket along the part that condenses. */
import { createMemo, createUniqueId, For, Show } from 'solid-js';
import { cutRuns, pointAlong, type CondenserShape } from '../geometry/condenser-shape.ts';
import { pathThrough, type Point } from '../geometry/shapes.ts';
import { BreakMark } from './BreakMark.tsx';

interface CondenserProps {
  readonly shape: CondenserShape;
  /** Share of the cooled length that is needed to condense, 0–1. */
  readonly condensing: number;
  readonly runsLiquid: boolean;
  readonly escaping: boolean;
  /** Warmth of the jacket water at the vapour end and at the outlet end, 0–1. */
  readonly warmth: readonly number[];
  readonly counterflow: boolean;
  readonly flows: boolean;
}

const percent = (share: number): string => `${Math.round(100 * Math.min(1, Math.max(0, share)))}%`;
export const warmColour = (share: number): string =>
  `color-mix(in oklab, var(--drawing-hot-water) ${percent(share)}, var(--water-tint))`;

function Tubes(props: CondenserProps) {
  const widths = () => ({
    wall: `${props.shape.tubeWidth + 2.2}`,
    bore: `${props.shape.tubeWidth - 0.6}`,
    liquid: `${Math.max(1.6, Math.min(4, props.shape.tubeWidth * 0.32))}`,
  });
  const liquid = createMemo(() => (props.runsLiquid ? cutRuns(props.shape.runs, props.condensing, 1) : ''));
  return (
    <>
      <For each={props.shape.behind}>
        {(points) => (
          <>
            <path class="drawing-behind" d={pathThrough(points)} style={{ 'stroke-width': widths().wall }} />
            <path class="drawing-behind-bore" d={pathThrough(points)} style={{ 'stroke-width': widths().bore }} />
          </>
        )}
      </For>
      <Show when={props.shape.feed.length > 0}>
        <path class="drawing-tube-wall" d={pathThrough(props.shape.feed)} style={{ 'stroke-width': widths().wall }} />
        <path class="drawing-tube-bore" d={pathThrough(props.shape.feed)} style={{ 'stroke-width': widths().bore }} />
      </Show>
      <path class="drawing-tube-wall" d={pathThrough(props.shape.tail)} style={{ 'stroke-width': widths().wall }} />
      <path class="drawing-tube-bore" d={pathThrough(props.shape.tail)} style={{ 'stroke-width': widths().bore }} />
      <For each={props.shape.runs}>
        {(run) => (
          <>
            <path
              class="drawing-tube-wall drawing-tube-round"
              d={pathThrough(run.points)}
              style={{ 'stroke-width': widths().wall }}
            />
            <path
              class="drawing-tube-bore drawing-tube-round"
              d={pathThrough(run.points)}
              style={{ 'stroke-width': widths().bore }}
            />
          </>
        )}
      </For>
      <path class="drawing-liquid" d={liquid()} style={{ 'stroke-width': widths().liquid }} />
      <Show when={props.runsLiquid}>
        <path class="drawing-liquid" d={pathThrough(props.shape.tail)} style={{ 'stroke-width': widths().liquid }} />
      </Show>
    </>
  );
}

function Jacket(props: CondenserProps) {
  const id = createUniqueId();
  const ends = () => props.shape.runs[0]?.points as readonly [Point, Point];
  const arrow = (share: number, off: number, along: number): string => {
    const at = pointAlong(props.shape.runs.slice(Math.floor(props.shape.runs.length / 2)), share) as Point;
    const { dx, dy } = props.shape.axis;
    const x = at.x - dy * off;
    const y = at.y + dx * off;
    const head = 5 * along;
    const reach = 13 * along;
    return `M${x - dx * reach} ${y - dy * reach}L${x + dx * reach} ${y + dy * reach}m${-dx * head - dy * 3.5} ${-dy * head + dx * 3.5}L${x + dx * reach} ${y + dy * reach}l${-dx * head + dy * 3.5} ${-dy * head - dx * 3.5}`;
  };
  const lane = () => props.shape.jacketHalf + 7;
  return (
    <>
      <defs>
        <linearGradient
          id={id}
          gradientUnits="userSpaceOnUse"
          x1={ends()[0].x}
          y1={ends()[0].y}
          x2={ends()[1].x}
          y2={ends()[1].y}
        >
          <stop offset="0" style={{ 'stop-color': warmColour(props.warmth[0] ?? 0) }} />
          <stop offset="1" style={{ 'stop-color': warmColour(props.warmth[1] ?? 0) }} />
        </linearGradient>
      </defs>
      <path class="drawing-jacket" d={pathThrough(props.shape.jacket, true)} style={{ fill: `url(#${id})` }} />
      <For each={props.shape.nozzles}>
        {(nozzle) => <path class="drawing-nozzle" d={pathThrough([nozzle.at, nozzle.away])} />}
      </For>
      <Show when={props.flows}>
        <path
          class="drawing-arrow drawing-arrow-water"
          d={arrow(0.36, -lane(), props.counterflow ? -1 : 1) + arrow(0.72, -lane(), props.counterflow ? -1 : 1)}
        />
      </Show>
    </>
  );
}

/** Along the part that condenses, beside the tube: from the first turn to where the vapour ends. */
function Bracket(props: CondenserProps) {
  const path = createMemo(() => {
    const shape = props.shape;
    const share = props.condensing;
    const from = pointAlong(shape.runs, 0);
    const to = pointAlong(shape.runs, share);
    if (share <= 0 || !from || !to) return '';
    if (shape.kind === 'coil') {
      const x = shape.box.x + shape.box.width + 6;
      const end = Math.max(to.y, from.y + 4);
      return `M${x} ${from.y}h5V${end}h-5`;
    }
    const { dx, dy } = shape.axis;
    const off = shape.jacketHalf + 5;
    const at = (point: Point, out: number) => `${point.x - dy * out} ${point.y + dx * out}`;
    return `M${at(from, off)}L${at(from, off + 5)}L${at(to, off + 5)}L${at(to, off)}`;
  });
  return <path class="drawing-bracket" classList={{ 'is-alarm': props.escaping }} d={path()} />;
}

export function Condenser(props: CondenserProps) {
  return (
    <>
      <Show when={props.shape.kind === 'straight'}>
        <Jacket {...props} />
      </Show>
      <Tubes {...props} />
      <Bracket {...props} />
      <Show when={props.shape.breakAt}>
        {(at) => (
          <BreakMark at={at()} dx={props.shape.axis.dx} dy={props.shape.axis.dy} half={props.shape.jacketHalf + 5} />
        )}
      </Show>
    </>
  );
}
