/** What the still stands on, the bar that tells its scale, and what the shades of water mean. */
import { createMemo, createUniqueId, For, Match, Switch } from 'solid-js';
import { WATER_BAR, type Ground } from '../geometry/still-layout.ts';
import type { Stand } from '../geometry/still-shapes.ts';
import { groundHatch } from '../geometry/strokes.ts';
import { bottom, right, type Box } from '../geometry/shapes.ts';
import { displayUnit, formatQuantity, withUnit, type UnitSystem } from '../../../sim/index.ts';
import { warmColour } from './Condenser.tsx';
import { COLD_K, HOT_K } from './part-context.ts';

export function Floor(props: { readonly ground: Ground }) {
  return (
    <>
      <path class="drawing-floor" d={`M${props.ground.x} ${props.ground.y}h${props.ground.width}`} />
      <path class="drawing-floor-hatch" d={groundHatch(props.ground.x, props.ground.y, props.ground.width)} />
    </>
  );
}

const BOARD = 4;

export function Stands(props: { readonly stands: readonly Stand[] }) {
  return (
    <For each={props.stands}>
      {(stand) => (
        <Switch>
          <Match when={stand.kind === 'table'}>
            <rect
              class="drawing-solid drawing-thin"
              x={stand.box.x}
              y={stand.box.y}
              width={stand.box.width}
              height={Math.min(BOARD, stand.box.height)}
            />
            <path
              class="drawing-stand"
              d={`M${stand.box.x + 8} ${stand.box.y + BOARD}V${bottom(stand.box)}m5 0V${stand.box.y + BOARD}M${right(stand.box) - 8} ${stand.box.y + BOARD}V${bottom(stand.box)}m-5 0V${stand.box.y + BOARD}`}
            />
          </Match>
          <Match when={stand.kind === 'block'}>
            <rect
              class="drawing-solid drawing-thin drawing-hatched"
              x={stand.box.x}
              y={stand.box.y}
              width={stand.box.width}
              height={stand.box.height}
            />
          </Match>
          <Match when={stand.kind === 'rod'}>
            <path
              class="drawing-stand"
              d={`M${stand.box.x + 1.5} ${stand.box.y}V${bottom(stand.box)}M${stand.box.x - 10} ${bottom(stand.box)}h23M${stand.box.x - 3} ${stand.box.y + 1}h9`}
            />
          </Match>
        </Switch>
      )}
    </For>
  );
}

/** Round lengths for the bar, m. */
const BARS: Readonly<Record<UnitSystem, readonly number[]>> = {
  metric: [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2],
  us: [0.0127, 0.0254, 0.0508, 0.1016, 0.1524, 0.3048, 0.6096, 0.9144, 1.8288],
};
/** Bars from here on are told in metres or feet, m. */
const WHOLE: Readonly<Record<UnitSystem, number>> = { metric: 1, us: 0.3048 };
const LONGEST_BAR = 110;

export function ScaleBar(props: {
  readonly x: number;
  readonly y: number;
  readonly pxPerMetre: number;
  readonly units: UnitSystem;
  readonly textScale: number;
  /** Its words stand beside it, not below. */
  readonly isInline: boolean;
}) {
  const length_m = createMemo(() => {
    const longest_m = LONGEST_BAR / props.pxPerMetre;
    const bars = BARS[props.units];
    return bars.findLast((length) => length <= longest_m) ?? (bars[0] as number);
  });
  const width = () => length_m() * props.pxPerMetre;
  const words = () => {
    const { fromSI, label } = displayUnit('m', props.units, length_m() < WHOLE[props.units] ? 'size' : 'run');
    return withUnit(String(Number(fromSI(length_m()).toPrecision(2))), label);
  };
  return (
    <g class="drawing-scale" text-anchor="end">
      <path
        class="drawing-fine"
        d={`M${props.x - width()} ${props.y + 4}v-8M${props.x} ${props.y + 4}v-8M${props.x - width()} ${props.y}h${width()}M${props.x - width() / 2} ${props.y}v-4`}
      />
      <path class="drawing-scale-fill" d={`M${props.x - width()} ${props.y - 2}h${width() / 2}v2h${-width() / 2}Z`} />
      <text
        class="drawing-line"
        x={props.isInline ? props.x - width() - 8 : props.x}
        y={props.y + (props.isInline ? 4 : 18 * props.textScale)}
      >
        {words()}
      </text>
    </g>
  );
}

/** Share of the room for words that those before the bar take. */
const COLD_WORDS = 0.66;
const KEY_GAP = 6;

/** How warm the shades of water are. */
export function WaterKey(props: { readonly at: Box; readonly units: UnitSystem }) {
  const id = createUniqueId();
  const words = (temperature_K: number) => formatQuantity(temperature_K, 'K', props.units, { decimals: 0 });
  const bar = () => props.at.x + (props.at.width - WATER_BAR) * COLD_WORDS;
  const baseline = () => props.at.y + 12;
  return (
    <g class="drawing-key">
      <linearGradient id={id}>
        <For each={[0, 0.25, 0.5, 0.75, 1]}>
          {(at) => <stop offset={at} style={{ 'stop-color': warmColour(at) }} />}
        </For>
      </linearGradient>
      <text class="drawing-line" text-anchor="end" x={bar() - KEY_GAP} y={baseline()}>
        water {words(COLD_K)}
      </text>
      <rect
        class="drawing-fine"
        x={bar()}
        y={props.at.y + 3}
        width={WATER_BAR}
        height="10"
        style={{ fill: `url(#${id})` }}
      />
      <text class="drawing-line" x={bar() + WATER_BAR + KEY_GAP} y={baseline()}>
        {words(HOT_K)}
      </text>
    </g>
  );
}
