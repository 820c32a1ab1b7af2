/**
 * The page for a room: full screen, the still, one chart, four numbers, Heat and Tap, and nothing of what is still to
 * come until it is revealed. Over a lesson it leaves the screen to the lesson, and adds only the spot.
 */
import { createMediaQuery } from '@solid-primitives/media';
import { createMemo, createSignal, For, onCleanup, onMount, Show } from 'solid-js';
import {
  eventTimes,
  formatQuantity,
  quantities,
  soFarMessage,
  verdictMessages,
  verdictOf,
} from '../../../sim/index.ts';
import { PlainPlot } from '../../charts/plain/PlainPlot.tsx';
import { StillDrawing } from '../../drawing/StillDrawing.tsx';
import { stillStateAt } from '../../drawing/still-state.ts';
import { useBench } from '../../state/bench.ts';
import { setProjecting } from '../../state/projector.ts';
import { createPlace } from '../../state/route.ts';
import { fieldValue, liveControls, type LiveControl } from '../../state/live-controls.ts';
import { focusOf } from '../../state/keyboard.ts';
import { createThrottled } from '../../ui/throttled.ts';
import { REDUCED_MOTION } from '../../ui/reduced-motion.ts';
import { createLiveReach } from '../bench/LivePanel.tsx';
import { ROOM_CHART_NAMES, ROOM_CHARTS, roomChart, type RoomChartId } from './room-charts.ts';
import './projector.css';

const TOLD_EVERY_MS = 120;
const NONE = '–';
/** A key turns the heat, or the tap, by so much of the slider. */
const KEY_STEPS = 10;

type RoomCommand = 'reveal' | 'chart' | 'ground' | 'spot' | 'leave' | 'heat' | 'tap';

const KEYS: Readonly<Record<string, RoomCommand>> = {
  r: 'reveal',
  c: 'chart',
  l: 'ground',
  o: 'spot',
  h: 'heat',
  t: 'tap',
  escape: 'leave',
};

/** Takes the screen while it lives, where the browser lets it. */
function createFullScreen(onLeft: () => void): void {
  const left = () => {
    if (document.fullscreenElement === null) onLeft();
  };
  onMount(() => {
    document.documentElement.toggleAttribute('data-projecting', true);
    // A browser that refuses shows the same in its window.
    void document.documentElement.requestFullscreen?.().then(
      () => document.addEventListener('fullscreenchange', left),
      () => undefined,
    );
  });
  onCleanup(() => {
    document.removeEventListener('fullscreenchange', left);
    document.documentElement.removeAttribute('data-projecting');
    if (document.fullscreenElement !== null) void document.exitFullscreen();
  });
}

function createRoomKeys(carryOut: (command: RoomCommand, down: boolean) => void): void {
  const onKey = (event: KeyboardEvent) => {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    if (focusOf(event.target) === 'typing') return;
    const command = KEYS[event.key.toLowerCase()];
    if (!command) return;
    event.preventDefault();
    carryOut(command, event.shiftKey);
  };
  addEventListener('keydown', onKey);
  onCleanup(() => removeEventListener('keydown', onKey));
}

/** A ring that follows the pointer, for the last row. */
function Spot() {
  const [at, setAt] = createSignal<readonly [number, number] | null>(null);
  const follow = (event: PointerEvent) => setAt([event.clientX, event.clientY]);
  addEventListener('pointermove', follow);
  onCleanup(() => removeEventListener('pointermove', follow));
  return (
    <Show when={at()}>
      {(place) => (
        <div class="room-spot" style={{ left: `${place()[0]}px`, top: `${place()[1]}px` }} aria-hidden="true" />
      )}
    </Show>
  );
}

export function Projector() {
  const bench = useBench();
  const reducedMotion = createMediaQuery(REDUCED_MOTION);
  const prefersDark = createMediaQuery('(prefers-color-scheme: dark)');
  const place = createPlace();
  /** A lesson that is open has the screen. */
  const inLesson = () => place() === 'lessons' && location.hash !== '#lessons';
  const live = createLiveReach();
  const [chart, setChart] = createSignal<RoomChartId>('oil');
  const [revealed, setRevealed] = createSignal(false);
  const [spot, setSpot] = createSignal(false);
  createFullScreen(() => setProjecting(false));

  const told_s = createThrottled(() => bench.time_s(), TOLD_EVERY_MS);
  const controls = createMemo(() =>
    liveControls(
      bench.scenario(),
      bench.loaded(),
      live.reach(),
      live.toldMoment_s(),
      eventTimes(bench.result().summary),
    ).filter(({ id }) => id === 'heat' || id === 'tap'),
  );
  const turn = (control: LiveControl, value: number, gesture?: string) =>
    bench.change(
      control.path,
      fieldValue(
        control,
        Math.min(Math.max(value, control.range.min), control.range.max),
        live.reach(),
        live.moment_s(),
      ),
      gesture,
    );
  const turnByKey = (id: LiveControl['id'], down: boolean) => {
    const control = controls().find((each) => each.id === id);
    if (!control) return;
    const step = (control.sliderMax - control.range.min) / KEY_STEPS;
    turn(control, Math.min(control.sliderMax, control.value + (down ? -step : step)));
  };
  const isDark = () => {
    const theme = bench.theme();
    return theme === 'dark' || theme === 'projector' || (theme === 'auto' && prefersDark());
  };
  const changeGround = () => bench.setTheme(isDark() ? 'light' : 'dark');
  const nextChart = () => setChart((id) => ROOM_CHARTS[(ROOM_CHARTS.indexOf(id) + 1) % ROOM_CHARTS.length] ?? 'oil');
  createRoomKeys((command, down) => {
    if (command === 'leave') setProjecting(false);
    else if (command === 'spot') setSpot(!spot());
    else if (command === 'ground') changeGround();
    else if (inLesson()) return;
    else if (command === 'reveal') setRevealed(!revealed());
    else if (command === 'chart') nextChart();
    else turnByKey(command, down);
  });

  const numbers = createMemo(() => {
    const state = stillStateAt(bench.result(), told_s());
    const q = quantities(bench.reader());
    return [
      ['time', q.time(60 * Math.floor(state.time_s / 60))],
      ['oil', q.oil(state.oilCollected_kg, state.oilDensity_kg_m3)],
      ['distillate', state.condensate_kg_s > 0 ? q.temperature(state.condensateTemperature_K) : NONE],
      ['cooling water', q.temperature(state.tubTemperature_K[0] ?? state.coolantOut_K)],
    ] as const;
  });
  const drawn = createMemo(() => roomChart(chart(), bench.result(), bench.axisEnd_s()));
  /** What has happened by now; the verdict on the whole only once it is revealed. */
  const said = createMemo(() =>
    revealed()
      ? verdictMessages(verdictOf(bench.result(), bench.holds()), bench.reader()).lead
      : soFarMessage(bench.result(), told_s(), bench.reader()),
  );

  return (
    <>
      <Show when={!inLesson()}>
        <section class="room" aria-label="Projector view">
          <dl class="room-numbers">
            <For each={numbers()}>
              {([name, value]) => (
                <div>
                  <dt>{name}</dt>
                  <dd>{value}</dd>
                </div>
              )}
            </For>
          </dl>
          <div class="room-still" inert>
            <StillDrawing
              scenario={bench.result().scenario}
              result={bench.result()}
              time_s={bench.time_s}
              selected={null}
              onSelect={() => undefined}
              units={bench.units()}
              reducedMotion={reducedMotion()}
              stale={bench.stale()}
              fills
            />
          </div>
          <div class="room-chart">
            <PlainPlot
              axes={drawn().axes}
              title={ROOM_CHART_NAMES[chart()]}
              units={bench.units()}
              curves={[drawn().curve]}
              until_s={revealed() ? undefined : bench.time_s()}
              says={`${ROOM_CHART_NAMES[chart()]}, ${revealed() ? 'whole run' : 'up to now'}`}
            />
          </div>
          <p class={`room-said is-${said().severity}`}>{bench.staleBecause() ?? said().sentence}</p>
          <div class="room-controls">
            <For each={controls()}>
              {(control) => (
                <label class="room-control">
                  <span>{control.label}</span>
                  <input
                    type="range"
                    class="drawn-slider"
                    min={control.range.min}
                    max={control.sliderMax}
                    step={control.step}
                    value={control.value}
                    aria-valuetext={formatQuantity(control.value, control.unit, bench.units(), { hint: control.path })}
                    onInput={(event) => turn(control, event.currentTarget.valueAsNumber, `room-${control.id}`)}
                  />
                  <strong>{formatQuantity(control.value, control.unit, bench.units(), { hint: control.path })}</strong>
                </label>
              )}
            </For>
            <button type="button" class="is-first" onClick={() => (bench.playing() ? bench.pause() : bench.play())}>
              {bench.playing() ? 'Pause' : 'Play'}
            </button>
            <button type="button" aria-pressed={revealed()} onClick={() => setRevealed(!revealed())}>
              Reveal
            </button>
            <button type="button" onClick={nextChart}>
              Chart
            </button>
            <button type="button" onClick={() => setProjecting(false)}>
              Leave
            </button>
          </div>
        </section>
      </Show>
      <Show when={spot()}>
        <Spot />
      </Show>
    </>
  );
}
