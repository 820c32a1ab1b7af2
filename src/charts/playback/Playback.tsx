/** The time line of the whole run with its events, the time mark one can drag, play and speed. */
import { createMemo, createSignal, For, Index, Show } from 'solid-js';
import { type Reader, formatDuration } from '../../../sim/index.ts';
import { SPEEDS, type Speed } from '../../state/playback.ts';
import { createWidth } from '../../ui/width.ts';
import { forgetWidths, textWidth } from '../plot/text-width.ts';
import { timelineMarks, type TimelineRun } from './timeline-marks.ts';
import './playback.css';

export interface PlaybackBarProps {
  readonly time_s: number;
  readonly end_s: number;
  /** Where the charts' time axis ends, which is later where a run breaks off or one behind it is longer. */
  readonly axisEnd_s?: number;
  readonly playing: boolean;
  readonly speed: Speed;
  /** The run, or several that share the time mark. */
  readonly runs: readonly TimelineRun[];
  readonly reader: Reader;
  readonly onTime: (time_s: number) => void;
  readonly onPlay: () => void;
  readonly onPause: () => void;
  readonly onSpeed: (speed: Speed) => void;
}

export const SPEED_WORDS: Readonly<Record<Speed, string>> = {
  1: 'real time',
  10: '10 times as fast',
  60: 'a minute a second',
  300: '5 minutes a second',
  'run-in-10-s': 'the run in 10 seconds',
};

const clock = (time_s: number): string => formatDuration(time_s);

/** Set like the words on the time line, it tells of their size and of a face that has come. */
const RULER = 'first drop 53 min';

/** Size of small text where nothing enlarges it, px. */
const SMALL_TEXT_PX = 13;

export function PlaybackBar(props: PlaybackBarProps) {
  const [axis, setAxis] = createSignal<HTMLDivElement>();
  const [ruler, setRuler] = createSignal<HTMLSpanElement>();
  const width = createWidth(axis);
  const rulerWidth = createWidth(ruler);
  const small = createMemo(() => {
    rulerWidth();
    const words = ruler();
    if (!words) return { size: SMALL_TEXT_PX, face: 'sans-serif' };
    const { fontSize, fontFamily } = getComputedStyle(words);
    forgetWidths();
    return { size: Number.parseFloat(fontSize), face: fontFamily };
  });
  const widthOf = (words: string, isAlarm: boolean) =>
    textWidth(words, `${isAlarm ? 600 : 400} ${small().size}px ${small().face}`);
  const axisWidth = () => Math.max(0, width());
  const axisEnd_s = () => props.axisEnd_s ?? props.end_s;
  /** Share of the axis that the run at hand takes. */
  const reach = () => (axisEnd_s() > 0 ? Math.min(1, props.end_s / axisEnd_s()) : 1);
  /** While it plays the head moves in half pixels: what cannot be seen need not be laid out. */
  const head_s = createMemo(() => {
    const step_s = axisEnd_s() / (2 * axisWidth());
    return props.playing && step_s > 0 && Number.isFinite(step_s)
      ? Math.round(props.time_s / step_s) * step_s
      : props.time_s;
  });
  const share = () => (props.end_s > 0 ? head_s() / props.end_s : 0);
  const hasRows = () => props.runs.length > 1;
  const rows = createMemo(() =>
    props.runs.map((run) => ({
      run,
      marks: timelineMarks(run, props.reader, axisEnd_s(), axisWidth(), widthOf, hasRows()),
    })),
  );
  return (
    <section
      class="playback"
      classList={{ 'has-rows': hasRows() }}
      style={{ '--rows': props.runs.length }}
      aria-label="Playback"
    >
      <button
        type="button"
        class="playback-play screen-only"
        onClick={() => (props.playing ? props.onPause() : props.onPlay())}
      >
        {props.playing ? 'Pause' : 'Play'}
      </button>
      <div class="playback-axis" ref={setAxis} style={{ '--reach': reach() }}>
        <div class="playback-line" style={{ '--share': share() }}>
          <input
            type="range"
            class="playback-head drawn-slider prints"
            data-time-mark
            aria-label="Time mark"
            aria-valuetext={`${clock(props.time_s)} of ${clock(props.end_s)}`}
            min="0"
            max={props.end_s}
            step="1"
            value={head_s()}
            onInput={(event) => props.onTime(event.currentTarget.valueAsNumber)}
          />
          <span class="playback-ruler" aria-hidden="true" ref={setRuler}>
            {RULER}
          </span>
          <Index each={rows()}>
            {(row, index) => (
              <>
                <Show when={hasRows()}>
                  <span class="playback-letter" style={{ '--row': index }} aria-hidden="true">
                    {row().run.letter}
                  </span>
                </Show>
                <ul
                  class="playback-marks"
                  style={{ '--row': index, '--run-reach': axisEnd_s() > 0 ? row().run.end_s / axisEnd_s() : 1 }}
                  aria-label={hasRows() ? `Events of ${row().run.letter} ${row().run.name}` : 'Events of the run'}
                >
                  <Index each={row().marks}>
                    {(mark) => (
                      <li class={`playback-mark is-${mark().severity}`} style={{ '--at': mark().time_s / axisEnd_s() }}>
                        <Show
                          when={mark().wordsAt_px !== null}
                          fallback={<span class="visually-hidden">{mark().words} </span>}
                        >
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
              </>
            )}
          </Index>
        </div>
      </div>
      <div class="playback-side">
        <p class="playback-time">
          <span class="playback-now">{clock(props.time_s)}</span>{' '}
          <span class="playback-of">of {clock(props.end_s)}</span>
        </p>
        <label class="playback-speed screen-only">
          <span class="visually-hidden">Speed</span>
          <select
            value={String(props.speed)}
            onChange={(event) => props.onSpeed(SPEEDS[event.currentTarget.selectedIndex] ?? 60)}
          >
            <For each={SPEEDS}>{(speed) => <option value={String(speed)}>{SPEED_WORDS[speed]}</option>}</For>
          </select>
        </label>
      </div>
    </section>
  );
}
