/** Whether something is on the screen, so that what nobody sees need not follow every frame. */
import { createIntersectionObserver } from '@solid-primitives/intersection-observer';
import { debounce } from '@solid-primitives/scheduled';
import { createEffect, createMemo, createSignal, onCleanup, untrack, type Accessor } from 'solid-js';

/**
 * Whether an element is on the screen or nearly; what is not, or is folded away, need not follow the time mark. `watch`
 * is the element's `ref`.
 */
export function createVisibility(): {
  readonly near: Accessor<boolean>;
  readonly watch: (element: HTMLElement) => void;
} {
  const [element, setElement] = createSignal<HTMLElement>();
  const [near, setNear] = createSignal(true);
  createEffect(() => setNear(element() !== undefined));
  createIntersectionObserver(
    () => {
      const at = element();
      return at ? [at] : [];
    },
    (entries) => setNear(entries.at(-1)?.isIntersecting ?? true),
    { rootMargin: '64px' },
  );
  return {
    near,
    watch: (at) => {
      setElement(at);
      onCleanup(() => setElement(undefined));
    },
  };
}

/** A value that has not changed for so long is at rest. */
const RESTS_AFTER_MS = 120;

/** A value that changes often: at once where it is near, else once it rests. */
export function createDeferred<T>(source: Accessor<T>, near: Accessor<boolean>): Accessor<T> {
  const [rested, setRested] = createSignal({ value: untrack(source) });
  const restSoon = debounce((value: T) => setRested({ value }), RESTS_AFTER_MS);
  let seen = untrack(rested);
  createEffect(() => {
    const value = source();
    if (near()) restSoon.clear();
    else restSoon(value);
  });
  const followed = createMemo<T>((before) => {
    if (near()) return source();
    const latest = rested();
    if (latest === seen) return before;
    seen = latest;
    return latest.value;
  }, seen.value);
  return followed;
}
