/** A value that changes every frame, passed on at most so many times a second, its last change included. */
import { createEffect, createSignal, onCleanup, untrack, type Accessor } from 'solid-js';

export function createThrottled<T>(source: Accessor<T>, least_ms: number): Accessor<T> {
  const [shown, setShown] = createSignal<T>(untrack(source));
  let lastShown = -Infinity;
  let waiting = 0;
  const show = () => {
    waiting = 0;
    lastShown = performance.now();
    setShown(() => untrack(source));
  };
  createEffect(() => {
    source();
    if (waiting !== 0) return;
    const left = lastShown + least_ms - performance.now();
    if (left <= 0) show();
    else waiting = window.setTimeout(show, left);
  });
  onCleanup(() => clearTimeout(waiting));
  return shown;
}
