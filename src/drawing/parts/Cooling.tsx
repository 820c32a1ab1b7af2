/** Cooling water: the tub or barrel in layers of temperature, the tap or pump, the way out. */
import { createMemo, createUniqueId, For, Index, Show } from 'solid-js';
import type { CoolingShape, TubShape } from '../geometry/cooling-shape.ts';
import { TUB_WALL } from '../geometry/line-weights.ts';
import { bottom, pathThrough, right, type Point } from '../geometry/shapes.ts';
import { scatter, waveLine } from '../geometry/strokes.ts';
import { cutWall, wallOutline } from '../geometry/vessel-shape.ts';
import { warmColour } from './Condenser.tsx';

interface CoolingProps {
  readonly shape: CoolingShape;
  readonly depth_m: number;
  /** Depth of water that what comes in mixes. */
  readonly mixed_m: number;
  /** Warmth of each layer from the top down, 0–1. */
  readonly warmth: readonly number[];
  readonly ice_kg: number;
  readonly stirred: boolean;
  readonly flows: boolean;
  readonly hot: boolean;
  readonly floorY: number;
}

/** Kilograms of ice that one drawn piece stands for. */
const ICE_PIECE_KG = 0.5;
const MOST_ICE = 14;

function TubWater(props: CoolingProps & { readonly tub: TubShape }) {
  const id = createUniqueId();
  const water = () => props.tub.water;
  const surface = () => Math.max(water().y, bottom(water()) - props.depth_m * props.tub.pxPerMetre);
  const mixedTop = () =>
    props.shape.mixes === 'upward'
      ? Math.max(surface(), bottom(water()) - props.mixed_m * props.tub.pxPerMetre)
      : surface();
  const mixedHeight = () => Math.min(props.mixed_m * props.tub.pxPerMetre, Math.max(0, bottom(water()) - surface()));
  const wave = createMemo(() => waveLine(water().x, water().width, 34));
  const offset = (index: number) => (index + 0.5) / Math.max(1, props.warmth.length);
  const pieces = createMemo(() => {
    const count = Math.min(MOST_ICE, Math.ceil(props.ice_kg / ICE_PIECE_KG));
    const { x, width } = water();
    const size = Math.max(5, Math.min(13, width / 14));
    return Array.from({ length: count }, (_, index) => ({
      x: x + size + scatter(index + 1) * (width - 2 * size),
      turn: 50 * scatter(index + 9) - 25,
      size: size * (0.7 + 0.5 * scatter(index + 4)),
    }));
  });
  return (
    <>
      <defs>
        <linearGradient id={id} x1="0" y1="0" x2="0" y2="1">
          <Index each={props.warmth}>
            {(warm, index) => <stop offset={offset(index)} style={{ 'stop-color': warmColour(warm()) }} />}
          </Index>
        </linearGradient>
      </defs>
      <path
        class="drawing-inside"
        d={`M${water().x} ${props.tub.rimY}h${water().width}V${bottom(water())}h${-water().width}Z`}
      />
      <rect
        x={water().x}
        y={surface()}
        width={water().width}
        height={Math.max(0, bottom(water()) - surface())}
        style={{ fill: props.warmth.length > 0 ? `url(#${id})` : 'var(--water-tint)' }}
      />
      <Show when={mixedHeight() > 0}>
        <rect class="drawing-mixed" x={water().x} y={mixedTop()} width={water().width} height={mixedHeight()} />
      </Show>
      <path class="drawing-surface" d={wave()} transform={`translate(0 ${surface()}) scale(1 0.8)`} />
      <For each={pieces()}>
        {(piece) => (
          <rect
            class="drawing-ice"
            x={-piece.size / 2}
            y={-piece.size / 2}
            width={piece.size}
            height={piece.size}
            transform={`translate(${piece.x} ${surface() + 1}) rotate(${piece.turn})`}
          />
        )}
      </For>
      <Show when={props.stirred}>
        <path
          class="drawing-fine"
          d={`M${right(water()) - 12} ${props.tub.rimY - 14}V${surface() + 0.55 * (bottom(water()) - surface())}m-7 -4l14 8m0 -8l-14 8`}
        />
      </Show>
    </>
  );
}

/** A tap on its standpipe; its handle lies along the pipe while water runs, across it while shut. */
function Tap(props: { readonly at: Point; readonly floorY: number; readonly open: boolean }) {
  return (
    <g transform={`translate(${props.at.x} ${props.at.y})`}>
      <path class="drawing-stand" d={`M-11 ${props.floorY - props.at.y}V-5M-7 ${props.floorY - props.at.y}V5`} />
      <path class="drawing-solid drawing-thin" d="M-13 -6h8v3h6v6h-6v3h-8Z" />
      <path class="drawing-line-ink" d={props.open ? 'M-9 -6v-4m-5 0h10' : 'M-9 -6v-8m-3 0h6'} />
    </g>
  );
}

const inside = (tub: TubShape) => ({ ...tub.water, y: tub.rimY, height: bottom(tub.water) - tub.rimY });

export function Cooling(props: CoolingProps) {
  return (
    <>
      <Show when={props.shape.drain.length > 0}>
        <path class="drawing-hose-wall" d={pathThrough(props.shape.drain)} />
        <path class="drawing-hose-bore" d={pathThrough(props.shape.drain)} />
      </Show>
      <Show when={props.shape.gully}>
        {(at) => <path class="drawing-gully" d={`M${at().x - 8} ${at().y}h16m-13 0v5m5 -5v5m5 -5v5`} />}
      </Show>
      <Show when={props.shape.tub}>
        {(tub) => (
          <>
            <TubWater {...props} tub={tub()} />
            <path class="drawing-tub" d={cutWall(inside(tub()), TUB_WALL)} />
            <path
              class="drawing-outline"
              classList={{ 'is-hot': props.hot }}
              d={wallOutline(inside(tub()), TUB_WALL)}
            />
            <path
              class="drawing-rim"
              d={`M${tub().outer.x - 3} ${tub().rimY}h8M${right(tub().outer) + 3} ${tub().rimY}h-8`}
            />
          </>
        )}
      </Show>
      <Show when={props.shape.supply.length > 0}>
        <path class="drawing-hose-wall" d={pathThrough(props.shape.supply)} />
        <path class="drawing-hose-bore" d={pathThrough(props.shape.supply)} />
        <For each={props.shape.holes}>{(hole) => <circle class="drawing-hole" cx={hole.x} cy={hole.y} r="1.1" />}</For>
      </Show>
      <Show when={props.shape.source === 'tap' && props.shape.supply[0]}>
        {(at) => <Tap at={at()} floorY={props.floorY} open={props.flows} />}
      </Show>
      <Show when={props.shape.source === 'pump' && props.shape.supply[0]}>
        {(at) => (
          <>
            <rect class="drawing-solid drawing-thin" x={at().x - 8} y={at().y - 6} width="16" height="13" rx="3" />
            <path class="drawing-fine" d={`M${at().x - 3} ${at().y}l6 0m-3 -3v6`} />
          </>
        )}
      </Show>
    </>
  );
}
