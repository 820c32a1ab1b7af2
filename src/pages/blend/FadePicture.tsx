/** The blend fading: what is in the air over a logarithmic time axis, what is left, and the moment that is read. */
import { createMemo, createSignal, For, Index, onCleanup, Show } from 'solid-js';
import { formatQuantity, type UnitSystem } from '../../../sim/index.ts';
import { colourOf } from '../../charts/model/palette.ts';
import { createLook } from '../../charts/plot/look.ts';
import { REDUCED_MOTION } from '../../ui/reduced-motion.ts';
import { createWidth } from '../../ui/width.ts';
import { OdourPicture } from './OdourPicture.tsx';
import {
  areasOf,
  layersOf,
  leftLine,
  rowAtPlace,
  ticksOf,
  timeScale,
  timeWords,
  VIEWS,
  type Fading,
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
  const times = () => props.fading.fade.times_s;
  const frame = createMemo(() => ({
    left: EDGE_px,
    right: Math.max(EDGE_px + 100, width() - END_px),
    top: 8,
    bottom: AIR_px,
  }));
  const below = createMemo(() => ({ ...frame(), top: AIR_px + GAP_px, bottom: AIR_px + GAP_px + LEFT_px }));
  const height = AIR_px + GAP_px + LEFT_px + AXIS_px;
  const layers = createMemo(() => layersOf(props.fading, view(), props.oilNames));
  const areas = createMemo(() => areasOf(layers(), times(), frame()));
  const x = createMemo(() => timeScale(times(), frame()));
  const row = () => rowAtPlace(place(), times().length);
  const time = () => times()[row()] as number;
  const left = () => props.fading.fade.leftShare[row()] as number;
  const atMark = createMemo(() =>
    layers()
      .map(({ key, label, shares }) => ({ key, label, share: shares[row()] as number }))
      .filter(({ share }) => share > 0)
      .sort((a, b) => b.share - a.share),
  );
  const percent = (share: number) => formatQuantity(share, '1', props.units, { hint: 'share' });
  const told = () =>
    atMark().length === 0
      ? `After ${timeWords(time())} nothing is left to leave.`
      : `After ${timeWords(time())}, ${percent(left())} is left on the ${props.surface}. In the air: ${atMark()
          .slice(0, MOST_NAMED)
          .map(({ label, share }) => `${label} ${percent(share)}`)
          .join(', ')}.`;

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
      <fieldset class="choice-radios screen-only">
        <legend class="visually-hidden">Show what is in the air</legend>
        <For each={VIEWS}>
          {(id) => (
            <label class="choice-radio">
              <input type="radio" name="fade-view" checked={view() === id} onChange={() => setView(id)} />{' '}
              {VIEW_WORDS[id]}
            </label>
          )}
        </For>
      </fieldset>
      <div ref={host} class="fade-host">
        <Show when={width() > 0 && look()}>
          {(seen) => (
            <svg width={width()} height={height} role="img" aria-label={told()}>
              <Index each={areas()}>
                {(shape) => (
                  <path d={shape().path} fill={colourOf(seen().palette, shape().layer.ink)} class="fade-area" />
                )}
              </Index>
              <Index each={areas()}>
                {(shape) => (
                  <text
                    class="fade-label"
                    x={shape().label?.x ?? 0}
                    y={shape().label?.y ?? 0}
                    text-anchor="middle"
                    dominant-baseline="middle"
                  >
                    {shape().label === null ? '' : shape().layer.label}
                  </text>
                )}
              </Index>
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
                {(other) => <path class="fade-left is-other" d={leftLine(other().fading.fade, below(), times())} />}
              </Show>
              <path class="fade-left" d={leftLine(props.fading.fade, below(), times())} />
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
          )}
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
      <Show when={props.other}>{(other) => <p class="answer-quiet">Dashed: {other().name}.</p>}</Show>
    </figure>
  );
}
