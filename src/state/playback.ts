/** The time mark: where in the run the reader stands, and how it moves. The clock is handed in, so tests can turn it. */
import { batch, createMemo, createSignal, onCleanup, type Accessor } from 'solid-js';

export interface Clock {
  /** Milliseconds from any fixed moment. */
  now(): number;
  /** Calls back once, before the next frame is drawn. */
  nextFrame(then: () => void): number;
  cancelFrame(handle: number): void;
}

export const screenClock: Clock = {
  now: () => performance.now(),
  nextFrame: (then) => requestAnimationFrame(then),
  cancelFrame: (handle) => cancelAnimationFrame(handle),
};

/** Run seconds per real second, or the whole run in ten seconds. */
export type Speed = 1 | 10 | 60 | 300 | 'run-in-10-s';
export const SPEEDS: readonly Speed[] = [1, 10, 60, 300, 'run-in-10-s'];

/** Longest real time that one frame may stand for: a hidden tab resumes where it was left. */
const LONGEST_FRAME_S = 0.25;

export const runSecondsPerSecond = (speed: Speed, end_s: number): number =>
  speed === 'run-in-10-s' ? end_s / 10 : speed;

export interface Playback {
  readonly time_s: Accessor<number>;
  /** Moves the time mark; a playing run plays on from there. */
  setTime(time_s: number): void;
  readonly playing: Accessor<boolean>;
  /** Whether the run has been set playing since it was loaded. */
  readonly everPlayed: Accessor<boolean>;
  play(): void;
  pause(): void;
  readonly speed: Accessor<Speed>;
  setSpeed(speed: Speed): void;
  /** To the next faster (+1) or slower (−1) speed. */
  stepSpeed(direction: 1 | -1): void;
  /** Stands the time mark in a newly loaded run, at rest. */
  load(time_s: number): void;
}

export function createPlayback(end_s: Accessor<number>, clock: Clock, initialSpeed: Speed = 60): Playback {
  const [wanted_s, setWanted] = createSignal(0);
  const [playing, setPlaying] = createSignal(false);
  const [everPlayed, setEverPlayed] = createSignal(false);
  const [speed, setSpeed] = createSignal<Speed>(initialSpeed);
  const time_s = createMemo(() => Math.min(Math.max(wanted_s(), 0), end_s()));
  let frame: number | null = null;
  let last_ms = 0;

  const stop = () => {
    if (frame !== null) clock.cancelFrame(frame);
    frame = null;
    setPlaying(false);
  };

  const advance = () => {
    const now_ms = clock.now();
    const passed_s = Math.min((now_ms - last_ms) / 1000, LONGEST_FRAME_S);
    last_ms = now_ms;
    const end = end_s();
    const next = time_s() + passed_s * runSecondsPerSecond(speed(), end);
    setWanted(Math.min(next, end));
    if (next >= end) {
      frame = null;
      setPlaying(false);
    } else {
      frame = clock.nextFrame(advance);
    }
  };

  const play = () => {
    if (playing()) return;
    batch(() => {
      if (time_s() >= end_s()) setWanted(0);
      setPlaying(true);
      setEverPlayed(true);
    });
    last_ms = clock.now();
    frame = clock.nextFrame(advance);
  };

  onCleanup(stop);

  return {
    time_s,
    setTime: (next) => {
      if (Number.isFinite(next)) setWanted(Math.min(Math.max(next, 0), end_s()));
    },
    playing,
    everPlayed,
    play,
    pause: stop,
    speed,
    setSpeed: (next) => setSpeed(next),
    stepSpeed: (direction) => {
      const index = SPEEDS.indexOf(speed()) + direction;
      const next = SPEEDS[Math.min(Math.max(index, 0), SPEEDS.length - 1)];
      if (next !== undefined) setSpeed(next);
    },
    load: (start_s) => {
      stop();
      batch(() => {
        setWanted(start_s);
        setEverPlayed(false);
      });
    },
  };
}
