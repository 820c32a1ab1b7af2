/** The playback bar: play, speed, the time line of the whole run with its events, and the playhead one can drag. */
import { createMemo, createSignal, For, Index, onCleanup, onMount, Show, type Accessor } from 'solid-js';
import type { RunEvent } from '../../sim/index.ts';
import { SPEEDS, type Speed } from '../app/playback.ts';
import { formatDuration } from '../units/index.ts';
import { timelineMarks } from './timeline-marks.ts';
import './playback.css';

export interface PlaybackBarProps {
  readonly time_s: number;
  readonly end_s: number;
  readonly playing: boolean;
  readonly speed: Speed;
  readonly events: readonly RunEvent[];
  /** When nine tenths of the oil are in, if ever. */
  readonly mostOil_s: number | null;
  readonly nextEvent: RunEvent | null;
  readonly previousEvent: RunEvent | null;
  readonly onTime: (time_s: number) => void;
  readonly onPlay: () => void;
  readonly onPause: () => void;
  readonly onSpeed: (speed: Speed) => void;
}

const SPEED_WORDS: Readonly<Record<Speed, string>> = {
  1: 'real time',
  10: '10 times as fast',
  60: 'a minute a second',
  300: '5 minutes a second',
  'run-in-10-s': 'the run in 10 seconds',
};

const clock = (time_s: number): string => formatDuration(time_s, { short: true });

/** Width of the playhead; the line begins and ends half of it in from the edge. */
const HEAD_PX = 18;

/** Set like the words on the time line, it tells how wide their letters are. */
const RULER = 'first drop 53 min vapour escapes 1 h 52 first boil';

/** Width of an element in pixels, followed. */
function createWidth(element: Accessor<HTMLElement | undefined>): Accessor<number> {
  const [width, setWidth] = createSignal(0);
  onMount(() => {
    const watched = element();
    if (!watched) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry) setWidth(Math.round(entry.contentRect.width));
    });
    observer.observe(watched);
    onCleanup(() => observer.disconnect());
  });
  return width;
}

export function PlaybackBar(props: PlaybackBarProps) {
  const [line, setLine] = createSignal<HTMLDivElement>();
  const [ruler, setRuler] = createSignal<HTMLSpanElement>();
  const width = createWidth(line);
  const rulerWidth = createWidth(ruler);
  const share = () => (props.end_s > 0 ? props.time_s / props.end_s : 0);
  const marks = createMemo(() => timelineMarks(props.events, props.mostOil_s, props.end_s, width() - HEAD_PX, rulerWidth() / RULER.length));
  const jump = (event: RunEvent | null) => {
    if (event) props.onTime(event.time_s);
  };

  return (
    <section class="playback" aria-label="Playback">
      <div class="playback-buttons screen-only">
        <button type="button" class="playback-play" onClick={() => (props.playing ? props.onPause() : props.onPlay())}>
          {props.playing ? 'Pause' : 'Play'}
        </button>
        <button
          type="button"
          aria-disabled={props.previousEvent === null}
          title={props.previousEvent ? props.previousEvent.sentence : 'No event before this'}
          onClick={() => jump(props.previousEvent)}
        >
          <span aria-hidden="true">‹ </span>Event
          <span class="heard"> before: {props.previousEvent ? props.previousEvent.sentence : 'none'}</span>
        </button>
        <button
          type="button"
          aria-disabled={props.nextEvent === null}
          title={props.nextEvent ? props.nextEvent.sentence : 'No event after this'}
          onClick={() => jump(props.nextEvent)}
        >
          Event<span aria-hidden="true"> ›</span>
          <span class="heard"> after: {props.nextEvent ? props.nextEvent.sentence : 'none'}</span>
        </button>
      </div>
      <p class="playback-time">
        <span class="playback-now">{clock(props.time_s)}</span> <span class="playback-of">of {clock(props.end_s)}</span>
      </p>
      <div class="playback-line" ref={setLine} style={{ '--share': share() }}>
        <input
          type="range"
          class="playback-head prints"
          data-playhead
          aria-label="Playhead"
          aria-valuetext={`${clock(props.time_s)} of ${clock(props.end_s)}`}
          min="0"
          max={props.end_s}
          step="1"
          value={props.time_s}
          onInput={(event) => props.onTime(event.currentTarget.valueAsNumber)}
        />
        <span class="playback-ruler" aria-hidden="true" ref={setRuler}>
          {RULER}
        </span>
        <ul class="playback-marks" aria-label="Events of the run">
          <Index each={marks()}>
            {(mark) => (
              <li class={`playback-mark is-${mark().severity}`} style={{ '--at': mark().time_s / props.end_s }}>
                <Show when={mark().wordsAt_px !== null} fallback={<span class="heard">{mark().words} </span>}>
                  <button
                    type="button"
                    class="playback-word prints"
                    title={mark().sentence}
                    style={{ left: `${mark().wordsAt_px ?? 0}px` }}
                    onClick={() => props.onTime(mark().time_s)}
                  >
                    {mark().words} <span class="playback-when">{clock(mark().time_s)}</span>
                  </button>
                </Show>
              </li>
            )}
          </Index>
        </ul>
      </div>
      <label class="playback-speed screen-only">
        <span>Speed</span>
        <select value={String(props.speed)} onChange={(event) => props.onSpeed(SPEEDS[event.currentTarget.selectedIndex] ?? 60)}>
          <For each={SPEEDS}>{(speed) => <option value={String(speed)}>{SPEED_WORDS[speed]}</option>}</For>
        </select>
      </label>
    </section>
  );
}
