import { createRoot, createSignal } from 'solid-js';
import { describe, expect, test } from 'vitest';
import { createPlayback, runSecondsPerSecond, type Clock, type Playback } from '../../../src/state/playback.ts';

/** A clock that stands still until it is told to move. */
function handClock() {
  let now_ms = 0;
  let waiting: (() => void) | null = null;
  const clock: Clock = {
    now: () => now_ms,
    nextFrame: (then) => {
      waiting = then;
      return 1;
    },
    cancelFrame: () => {
      waiting = null;
    },
  };
  const frames = (count: number, each_ms: number) => {
    for (let frame = 0; frame < count; frame++) {
      now_ms += each_ms;
      const then = waiting;
      waiting = null;
      then?.();
    }
  };
  return { clock, frames, asksForFrames: () => waiting !== null };
}

function inPlayback(
  check: (parts: { playback: Playback; setEnd: (end_s: number) => void } & ReturnType<typeof handClock>) => void,
) {
  createRoot((dispose) => {
    const hand = handClock();
    const [end_s, setEnd] = createSignal(3600);
    check({ playback: createPlayback(end_s, hand.clock), setEnd, ...hand });
    dispose();
  });
}

describe('the time mark', () => {
  test('moves a minute of the run in a second of real time, at the speed it starts with', () =>
    inPlayback(({ playback, frames }) => {
      playback.play();
      frames(100, 10);
      expect(playback.time_s()).toBeCloseTo(60, 9);
    }));

  test('goes through the whole run in ten seconds when asked', () => {
    expect(runSecondsPerSecond('run-in-10-s', 9000)).toBe(900);
    inPlayback(({ playback, frames }) => {
      playback.setSpeed('run-in-10-s');
      playback.play();
      frames(500, 10);
      expect(playback.time_s()).toBeCloseTo(1800, 6);
    });
  });

  test('stops at the end, asks for no more frames, and starts over when played again', () =>
    inPlayback(({ playback, frames, asksForFrames }) => {
      playback.setTime(3599);
      playback.play();
      frames(30, 16);
      expect(playback.time_s()).toBe(3600);
      expect(playback.playing()).toBe(false);
      expect(asksForFrames()).toBe(false);
      playback.play();
      expect(playback.time_s()).toBe(0);
    }));

  test('rests while paused', () =>
    inPlayback(({ playback, frames }) => {
      playback.play();
      frames(10, 16);
      playback.pause();
      const rest = playback.time_s();
      frames(10, 16);
      expect(playback.time_s()).toBe(rest);
    }));

  test('takes up after a hidden tab where it was left, not where real time went', () =>
    inPlayback(({ playback, frames }) => {
      playback.play();
      frames(1, 60_000);
      expect(playback.time_s()).toBeLessThanOrEqual(15);
    }));

  test('stays within the run, and finds its place again when a shorter run grows back', () =>
    inPlayback(({ playback, setEnd }) => {
      playback.setTime(99_999);
      expect(playback.time_s()).toBe(3600);
      playback.setTime(-5);
      expect(playback.time_s()).toBe(0);
      playback.setTime(Number.NaN);
      expect(playback.time_s()).toBe(0);
      playback.setTime(3000);
      setEnd(1800);
      expect(playback.time_s()).toBe(1800);
      setEnd(3600);
      expect(playback.time_s()).toBe(3000);
    }));

  test('steps through the speeds and stays at either end', () =>
    inPlayback(({ playback }) => {
      const faster = [1, 2, 3].map(() => {
        playback.stepSpeed(1);
        return playback.speed();
      });
      expect(faster).toEqual([300, 'run-in-10-s', 'run-in-10-s']);
      for (let step = 0; step < 9; step++) playback.stepSpeed(-1);
      expect(playback.speed()).toBe(1);
    }));

  test('a newly loaded run is at rest and has never played', () =>
    inPlayback(({ playback }) => {
      playback.play();
      expect(playback.everPlayed()).toBe(true);
      playback.load(120);
      expect([playback.time_s(), playback.playing(), playback.everPlayed()]).toEqual([120, false, false]);
    }));
});
