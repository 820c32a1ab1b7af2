/** How wide an element is, followed. */
import { createSignal, onCleanup, onMount, type Accessor } from 'solid-js';

/** Width of an element in whole pixels. */
export function createWidth(element: Accessor<HTMLElement | undefined>): Accessor<number> {
  const [width, setWidth] = createSignal(0);
  onMount(() => {
    const at = element();
    if (!at) return;
    setWidth(Math.floor(at.clientWidth));
    const observer = new ResizeObserver(() => setWidth(Math.floor(at.clientWidth)));
    observer.observe(at);
    onCleanup(() => observer.disconnect());
  });
  return width;
}
