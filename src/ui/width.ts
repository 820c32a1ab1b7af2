/** How wide an element is, followed. */
import { createElementSize } from '@solid-primitives/resize-observer';
import type { Accessor } from 'solid-js';

/** Width of an element in whole pixels, 0 before it stands on the page. */
export function createWidth(element: Accessor<HTMLElement | undefined>): Accessor<number> {
  const size = createElementSize(element);
  return () => size.clientWidth ?? 0;
}
