/** The blend fading: what is in the air over a logarithmic time axis, what is left, and the moment that is read. */
import { createMemo, createSignal, For, Index, onCleanup, Show } from 'solid-js';
import { formatQuantity, type Fading, type UnitSystem } from '../../../sim/index.ts';
import { colourOf, type Ink } from '../../charts/model/palette.ts';
import { createLook } from '../../charts/plot/look.ts';
import { REDUCED_MOTION } from '../../ui/reduced-motion.ts';
import { createThrottled } from '../../ui/throttled.ts';
import { createWidth } from '../../ui/width.ts';
import { RadioRow } from '../parts/fields.tsx';
import { Source } from '../parts/Source.tsx';
import { OdourPicture } from './OdourPicture.tsx';
import {
  areasOf,
  placesOf,
  layersOf,
  leftLine,
  rowAtPlace,
  ticksOf,
  timeScale,
  timeWords,
  VIEWS,
  LATEST_ms,
  type AreaShape,
  type View,
} from './fade-picture.ts';

export interface FadePictureProps {
  readonly fading: Fading;
  /** Another blend, on the same time axis. */
  readonly other: { readonly name: string; readonly fading: Fading } | null;
  readonly oilNames: readonly string[];
  readonly theme: unknown;
  readonly units: UnitSystem;
  readonly surface: string;
}

const VIEW_WORDS: Readonly<Record<View, string>> = { constituent: 'by constituent', oil: 'by oil', note: 'by note' };
const AIR_px = 280;
const LEFT_px = 110;
const GAP_px = 34;
const AXIS_px = 28;
const EDGE_px = 44;
const END_px = 12;
const PLAY_ms = 12_000;
const STILL_STEPS = 12;
const MOST_NAMED = 4;

export function FadePicture(props: FadePictureProps) {
  let host: HTMLDivElement | undefined;
  const [view, setView] = createSignal<View>('constituent');
  const [place, setPlace] = createSignal(0.5);
  const [playing, setPlaying] = createSignal(false);
  const look = createLook(
    () => host,
    () => props.theme,
  );
  const width = createWidth(() => host);
  const times = createMemo(() => props.fading.fade.times_s);
  const frame = createMemo(() => ({
    left: EDGE_px,
    right: Math.max(EDGE_px + 100, width() - END_px),
    top: 8,
    bottom: AIR_px,
  }));
  const below = createMemo(() => ({ ...frame(), top: AIR_px + GAP_px, bottom: AIR_px + GAP_px + LEFT_px }));
  const height = AIR_px + GAP_px + LEFT_px + AXIS_px;
  const layers = createMemo(() => layersOf(props.fading, view(), props.oilNames));
  const xs = createMemo(() => placesOf(times(), frame()));
  const otherPlaces = createMemo(() => (props.other ? placesOf(props.other.fading.fade.times_s, frame()) : xs()));
  const areas = createMemo(() => areasOf(layers(), xs(), frame()));
  const x = createMemo(() => timeScale(times(), frame()));
  const row = () => rowAtPlace(place(), times().length);
  const time = () => times()[row()] as number;
  /** From the top one down: each covers the foot of the one before. */
  const drawn = createMemo(() => [...areas()].reverse());
  const colours = createMemo(() => {
    const palette = look()?.palette;
    const known = new Map<Ink, string>();
    return (ink: Ink): string => {
      if (!palette) return '';
      const colour = known.get(ink) ?? colourOf(palette, ink);
      known.set(ink, colour);
      return colour;
    };
  });
  /** The picture follows the hand; words follow as fast as they can be read. */
  const read = createThrottled(() => ({ layers: layers(), fade: props.fading.fade, row: row() }), LATEST_ms);
  const percent = (share: number) => formatQuantity(share, '1', props.units, { hint: 'share' });
  const told = createMemo(() => {
    const { layers: all, fade, row: at } = read();
    const after = timeWords(fade.times_s[at] as number);
    const inAir = all
      .map(({ label, shares }) => ({ label, share: shares[at] as number }))
      .filter(({ share }) => share > 0)
      .sort((one, other) => other.share - one.share);
    if (inAir.length === 0) return `After ${after} nothing is left to leave.`;
    const named = inAir.slice(0, MOST_NAMED).map(({ label, share }) => `${label} ${percent(share)}`);
    const left = percent(fade.leftShare[at] as number);
    return `After ${after}, ${left} is left on the ${props.surface}. In the air: ${named.join(', ')}.`;
  });

  let handle = 0;
  const halt = () => {
    cancelAnimationFrame(handle);
    clearInterval(handle);
    setPlaying(false);
  };
  const advance = () => {
    if (setPlace((at) => Math.min(1, at + 1 / STILL_STEPS)) >= 1) halt();
  };
  const play = () => {
    if (playing()) {
      halt();
      return;
    }
    const from = place() >= 1 ? 0 : place();
    setPlace(from);
    setPlaying(true);
    if (matchMedia(REDUCED_MOTION).matches) {
      handle = window.setInterval(advance, PLAY_ms / STILL_STEPS);
      return;
    }
    const began = performance.now();
    const step = (now: number) => {
      setPlace(Math.min(1, from + (now - began) / PLAY_ms));
      if (place() >= 1) halt();
      else handle = requestAnimationFrame(step);
    };
    handle = requestAnimationFrame(step);
  };
  onCleanup(halt);

  return (
    <figure class="fade-picture" aria-label="How the blend fades">
      <RadioRow
        label="Show what is in the air"
        class="screen-only"
        value={view()}
        options={VIEWS.map((id) => ({ value: id, words: VIEW_WORDS[id] }))}
        onChoose={setView}
      />
      <div ref={host} class="fade-host">
        <Show when={width() > 0 && look()}>
          <svg width={width()} height={height} role="img" aria-label={told()}>
            <Index each={drawn()}>
              {(shape) => <path d={shape().path} fill={colours()(shape().layer.ink)} class="fade-area" />}
            </Index>
            <Index each={areas()}>{(shape) => <AreaName of={shape()} />}</Index>
            <For each={[0, 0.5, 1]}>
              {(share) => (
                <g>
                  <text
                    class="fade-tick"
                    x={EDGE_px - 6}
                    y={frame().bottom - share * (frame().bottom - frame().top)}
                    text-anchor="end"
                    dominant-baseline="middle"
                  >
                    {share * 100}&#8239;%
                  </text>
                  <line
                    class="fade-grid"
                    x1={frame().left}
                    x2={frame().right}
                    y1={below().bottom - share * LEFT_px}
                    y2={below().bottom - share * LEFT_px}
                  />
                  <text
                    class="fade-tick"
                    x={EDGE_px - 6}
                    y={below().bottom - share * LEFT_px}
                    text-anchor="end"
                    dominant-baseline="middle"
                  >
                    {share * 100}&#8239;%
                  </text>
                </g>
              )}
            </For>
            <text class="fade-title" x={frame().left} y={below().top - 12}>
              Left on the {props.surface}
            </text>
            <Show when={props.other}>
              {(other) => <path class="fade-left is-other" d={leftLine(other().fading.fade, otherPlaces(), below())} />}
            </Show>
            <path class="fade-left" d={leftLine(props.fading.fade, xs(), below())} />
            <For each={ticksOf(times())}>
              {(tick) => (
                <g>
                  <line class="fade-grid" x1={x()(tick)} x2={x()(tick)} y1={frame().top} y2={below().bottom} />
                  <text class="fade-tick" x={x()(tick)} y={below().bottom + 18} text-anchor="middle">
                    {timeWords(tick)}
                  </text>
                </g>
              )}
            </For>
            <line class="fade-mark" x1={x()(time())} x2={x()(time())} y1={frame().top} y2={below().bottom} />
          </svg>
        </Show>
      </div>
      <Show when={width() > 0}>
        <OdourPicture fading={props.fading} frame={frame()} width={width()} />
      </Show>
      <div class="fade-controls screen-only">
        <button type="button" onClick={play}>
          {playing() ? 'Pause' : 'Play'}
          <span class="visually-hidden"> the fading</span>
        </button>
        <input
          type="range"
          class="fade-slider"
          min="0"
          max="1"
          step="0.005"
          aria-label="Time after it is spread"
          aria-valuetext={timeWords(time())}
          value={place()}
          onInput={(event) => {
            halt();
            setPlace(Number(event.currentTarget.value));
          }}
        />
      </div>
      <p class="fade-told" role={playing() ? undefined : 'status'}>
        {told()}
      </p>
      <Source
        of={{
          kind: 'computed',
          source:
            'the film as a mixed liquid drying into the air; the working of its times stands at the top of the page',
        }}
      />
      <Show when={props.other}>{(other) => <p class="answer-quiet">Dashed: {other().name}.</p>}</Show>
    </figure>
  );
}

/** The name of a layer where it is wide enough; it keeps its last place while it is hidden. */
function AreaName(props: { readonly of: AreaShape }) {
  const at = createMemo<AreaShape['label']>((before) => props.of.label ?? before ?? null, null);
  return (
    <text
      class="fade-label"
      transform={`translate(${Math.round(at()?.x ?? 0)} ${Math.round(at()?.y ?? 0)})`}
      visibility={props.of.label === null ? 'hidden' : undefined}
      text-anchor="middle"
      dominant-baseline="middle"
    >
      {props.of.layer.label}
    </text>
  );
}
