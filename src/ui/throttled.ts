/** A value that follows another at most every so often, and always comes to its last. */
import { createScheduled, throttle } from '@solid-primitives/scheduled';
import { createMemo, type Accessor } from 'solid-js';

const NOTHING = Symbol('nothing shown yet');

export function createThrottled<T>(source: Accessor<T>, every_ms: number): Accessor<T> {
  const isDue = createScheduled((follow) => throttle(follow, every_ms));
  const shown = createMemo<T | typeof NOTHING>((before) => {
    const latest = source();
    return before === NOTHING || isDue() ? latest : before;
  }, NOTHING);
  return shown as Accessor<T>;
}
