/**
 * The picture: length of tube against cooling, with the outlet temperature as contours and what fails shaded. The
 * reader's own design is a point in it that can be dragged, or moved with the arrow keys, and changes the still.
 */
import { createMemo, createSignal, For, Show, type Accessor } from 'solid-js';
import { debounce } from '@solid-primitives/scheduled';
import { isCoil, type Scenario, formatQuantity, type UnitSystem } from '../../../sim/index.ts';
import { createLook, createWidth } from '../../charts/plot/look.ts';
import { changesAt } from '../../workers/map-axis.ts';
import { SaveBar } from '../parts/SaveBar.tsx';
import { axisName, lengthWords, mapAxes, xWords } from './map-axes.ts';
import { failureWords, longestTube, ownX, type MapBounds, type MapField, type OfRun } from './map-grid.ts';
import { mapPicture, mapTable, type MapWords } from './map-picture.ts';
import { ownLabel, withClearNames } from './own-label.ts';
import { mapShapes, pixelsOf, plotHeight, plotWidth, type MapFrame } from './map-shapes.ts';

export interface CondenserMapProps {
  readonly scenario: Scenario;
  readonly run: OfRun;
  readonly bounds: MapBounds;
  readonly field: MapField | null;
  /** Of the run that decides for nine runs of ten. */
  readonly doubt: MapField | null;
  readonly units: UnitSystem;
  readonly theme: Accessor<unknown>;
  /** Puts the still at a point of the picture; what shares a gesture is undone together. */
  readonly onMove: (changes: Readonly<Record<string, unknown>>, gesture: string) => void;
}

const PICTURE_WIDTH = 960;

const frameFor = (width: number, textScale: number): MapFrame => ({
  width,
  height: Math.round(Math.max(300, Math.min(0.58 * width, 560)) * Math.sqrt(textScale)),
  left: Math.round(52 * textScale),
  right: Math.round(16 * textScale),
  top: Math.round(28 * textScale),
  bottom: Math.round(48 * textScale),
  textScale,
});

const clamped = (value: number, [low, high]: readonly [number, number]): number => Math.min(high, Math.max(low, value));
/** Small and large steps of the arrow keys, as parts of an axis. */
const STEP = 1 / 100;
const LEAP = 1 / 10;
/** Arrow keys that follow each other within this time are one gesture; a drag is one until it is let go. */
const QUIET_MS = 1000;

let gestures = 0;

export function CondenserMap(props: CondenserMapProps) {
  const [root, setRoot] = createSignal<HTMLDivElement>();
  const width = createWidth(root);
  // eslint-disable-next-line solid/reactivity -- followed as an accessor
  const look = createLook(root, props.theme);
  const frame = createMemo(() => frameFor(Math.max(280, width()), look()?.textScale ?? 1));
  const pixels = createMemo(() => pixelsOf(frame(), props.bounds));
  const coiled = () => isCoil(props.scenario.condenser);
  const axes = createMemo(() => mapAxes(props.bounds, frame(), coiled() ? 'coil' : 'tube', props.units));
  const field = createMemo(() => (props.field?.bounds === props.bounds ? props.field : null));
  const doubt = createMemo(() => (props.doubt?.bounds === props.bounds ? props.doubt : null));
  const limit_K = () => props.scenario.condenser.outletLimit_K;
  const longest_m = createMemo(() => longestTube(props.scenario));
  const shapes = createMemo(() => {
    const known = field();
    return known ? mapShapes(known, frame(), limit_K(), longest_m(), props.units, doubt()) : null;
  });
  const x = () => clamped(ownX(props.scenario, props.bounds.axis, props.run), props.bounds.x);
  const own = () => ({
    x: pixels().x(x()),
    y: pixels().y(clamped(props.scenario.condenser.length_m, props.bounds.length_m)),
  });
  /** The shapes with their names clear of the reader's own point. */
  const seen = createMemo(() => withClearNames(shapes(), own(), frame()));
  const named = createMemo(() => ownLabel(own(), frame(), seen()));
  const words = (): MapWords => ({
    title: coiled() ? 'How much coil' : 'How much tube',
    subtitle: `${props.scenario.name}: ${axisName(props.bounds.axis).toLowerCase()} against length`,
    says: 'Warmest distillate over the whole run, as contours; hatched where the distillate is too warm, densely where steam escapes or a lid can lift. Up to the dashed line it is too warm in more than one run of ten.',
    warm: `warmer than ${formatQuantity(limit_K(), 'K', props.units, { decimals: 0 })}`,
    escapes: failureWords(field() ?? { readings: new Map() }),
    holds: 'works',
    tooTall: 'too tall for the tub',
    own: 'your still',
    doubt: 'works in nine runs of ten',
  });
  const place = () =>
    `${lengthWords(props.scenario.condenser.length_m, props.units)}, ${xWords(props.bounds.axis, ownX(props.scenario, props.bounds.axis, props.run), props.units)}`;

  const [gesture, setGesture] = createSignal<string | null>(null);
  let keys: string | null = null;
  const keysRest = debounce(() => (keys = null), QUIET_MS);
  const move = (length_m: number, at: number, name: string) => {
    const bounds = props.bounds;
    props.onMove(
      {
        'condenser.length_m': Number(clamped(length_m, bounds.length_m).toPrecision(4)),
        ...changesAt(props.scenario, bounds.axis, Number(clamped(at, bounds.x).toPrecision(4))),
      },
      name,
    );
  };
  const drag = (event: PointerEvent, svg: SVGSVGElement) => {
    const name = gesture();
    if (name === null) return;
    const box = svg.getBoundingClientRect();
    const { left, top } = frame();
    const {
      x: [x0, x1],
      length_m: [y0, y1],
    } = props.bounds;
    const across = (event.clientX - box.left - left) / plotWidth(frame());
    const down = (event.clientY - box.top - top) / plotHeight(frame());
    move(y0 + (y1 - y0) * (1 - down), x0 + (x1 - x0) * across, name);
  };
  const key = (event: KeyboardEvent) => {
    const part = event.shiftKey ? LEAP : STEP;
    const {
      x: [x0, x1],
      length_m: [y0, y1],
    } = props.bounds;
    const steps: Readonly<Record<string, readonly [number, number]>> = {
      ArrowUp: [part, 0],
      ArrowDown: [-part, 0],
      ArrowRight: [0, part],
      ArrowLeft: [0, -part],
      PageUp: [LEAP, 0],
      PageDown: [-LEAP, 0],
    };
    const step = steps[event.key];
    if (!step) return;
    event.preventDefault();
    event.stopPropagation();
    keys ??= `map-keys-${(gestures += 1)}`;
    keysRest();
    move(props.scenario.condenser.length_m + step[0] * (y1 - y0), x() + step[1] * (x1 - x0), keys);
  };

  const svg = (): string => {
    const known = field();
    const drawnIn = look();
    if (!known || !drawnIn) return '';
    const wide = frameFor(PICTURE_WIDTH, 1);
    const at = pixelsOf(wide, props.bounds);
    const ownAt = { x: at.x(x()), y: at.y(props.scenario.condenser.length_m) };
    return mapPicture({
      frame: wide,
      shapes: withClearNames(mapShapes(known, wide, limit_K(), longest_m(), props.units, doubt()), ownAt, wide),
      axes: mapAxes(props.bounds, wide, coiled() ? 'coil' : 'tube', props.units),
      words: words(),
      own: ownAt,
      palette: drawnIn.palette,
    });
  };
  const label = (at: { readonly x: number; readonly y: number } | null, said: string, kind: string) => (
    <Show when={at}>
      {(here) => (
        <text class={`map-label is-${kind}`} x={here().x} y={here().y} dy="0.32em" text-anchor="middle">
          {said}
        </text>
      )}
    </Show>
  );

  let picture: SVGSVGElement | undefined;
  return (
    <div class="map" ref={setRoot}>
      <svg
        class="map-svg"
        ref={picture}
        width={frame().width}
        height={frame().height}
        viewBox={`0 0 ${frame().width} ${frame().height}`}
        role="group"
        aria-label={`${words().title}: ${words().says}`}
      >
        <defs>
          <clipPath id="map-plot">
            <rect x={frame().left} y={frame().top} width={plotWidth(frame())} height={plotHeight(frame())} />
          </clipPath>
          <pattern id="map-warm" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path class="map-hatch is-warm" d="M0,0V9" />
          </pattern>
          <pattern id="map-escapes" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
            <path class="map-hatch is-escapes" d="M0,0V5" />
          </pattern>
        </defs>
        <g aria-hidden="true">
          <Show when={shapes()}>
            {(drawn) => (
              <g clip-path="url(#map-plot)">
                <path class="map-doubtful" d={drawn().doubtful} />
                <path class="map-warm" d={drawn().warm} />
                <For each={drawn().isotherms}>{({ path }) => <path class="map-isotherm" d={path} />}</For>
                <path class="map-limit" d={drawn().warm} />
                <path class="map-escapes-ground" d={drawn().escapes} />
                <path class="map-escapes" d={drawn().escapes} />
                <Show when={drawn().tooTallBelow_px}>
                  {(below) => (
                    <>
                      <rect
                        class="map-too-tall"
                        x={frame().left}
                        y={frame().top}
                        width={plotWidth(frame())}
                        height={below() - frame().top}
                      />
                      <path class="map-tallest" d={`M${frame().left},${below()}h${plotWidth(frame())}`} />
                    </>
                  )}
                </Show>
              </g>
            )}
          </Show>
          <For each={axes().across}>
            {(tick) => (
              <>
                <path class="map-axis" d={`M${tick.at_px},${frame().top + plotHeight(frame())}v5`} />
                <text
                  class="map-tick"
                  x={tick.at_px}
                  y={frame().top + plotHeight(frame()) + 20 * frame().textScale}
                  text-anchor="middle"
                >
                  {tick.words}
                </text>
              </>
            )}
          </For>
          <For each={axes().up}>
            {(tick) => (
              <>
                <path class="map-axis" d={`M${frame().left},${tick.at_px}h-5`} />
                <text class="map-tick" x={frame().left - 9} y={tick.at_px} dy="0.32em" text-anchor="end">
                  {tick.words}
                </text>
              </>
            )}
          </For>
          <path
            class="map-axis"
            d={`M${frame().left},${frame().top}V${frame().top + plotHeight(frame())}H${frame().left + plotWidth(frame())}`}
          />
          <text class="map-tick" x={frame().left + plotWidth(frame())} y={frame().height - 6} text-anchor="end">
            {axes().acrossTitle}
          </text>
          <text class="map-tick" x={4} y={frame().top - 12 * frame().textScale}>
            {axes().upTitle}
          </text>
          <Show when={seen()}>
            {(drawn) => (
              <>
                <For each={drawn().isotherms}>{(isotherm) => label(isotherm.label, isotherm.words, 'isotherm')}</For>
                {label(drawn().warmLabel, words().warm, 'warm')}
                {label(drawn().escapesLabel, words().escapes, 'escapes')}
                {label(drawn().holdsLabel, words().holds, 'holds')}
                {label(drawn().tooTallLabel, words().tooTall, 'too-tall')}
                {label(drawn().doubtLabel, words().doubt, 'doubt')}
              </>
            )}
          </Show>
        </g>
        <g
          class="map-own"
          classList={{ 'is-dragged': gesture() !== null }}
          role="slider"
          tabindex="0"
          aria-label={`Your still: length up and down, ${axisName(props.bounds.axis).toLowerCase()} left and right`}
          aria-valuemin={props.bounds.length_m[0]}
          aria-valuemax={props.bounds.length_m[1]}
          aria-valuenow={props.scenario.condenser.length_m}
          aria-valuetext={place()}
          transform={`translate(${own().x} ${own().y})`}
          onKeyDown={key}
          onPointerDown={(event) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            setGesture(`map-drag-${(gestures += 1)}`);
          }}
          onPointerMove={(event) => picture && drag(event, picture)}
          onPointerUp={() => setGesture(null)}
          onPointerCancel={() => setGesture(null)}
        >
          <circle class="map-own-reach" r={22} />
          <circle class="map-own-point" r={7} />
          <text
            class="map-own-words"
            x={named().x - own().x}
            y={named().y - own().y}
            text-anchor={named()['text-anchor']}
          >
            {words().own}
          </text>
        </g>
      </svg>
      <Show when={field()}>
        {(known) => (
          <SaveBar
            of="the picture"
            runName={props.scenario.name}
            svg={svg}
            table={() => mapTable(known(), props.units)}
          />
        )}
      </Show>
    </div>
  );
}
