/** What stands below the first view: made when the reader comes near to it, or once the first view has had its time. */
import { createSignal, onCleanup, onMount, Show, type JSX } from 'solid-js';

export interface WhenNearProps {
  /** Query for by something else on the page, wherever the reader is. */
  readonly wanted?: boolean;
  readonly children: JSX.Element;
}

const LATEST_MS = 1200;

export function WhenNear(props: WhenNearProps) {
  let place!: HTMLDivElement;
  const [due, setDue] = createSignal(false);
  onMount(() => {
    const come = () => void setDue(true);
    const timer = setTimeout(come, LATEST_MS);
    const observer = new IntersectionObserver((entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) come();
    });
    observer.observe(place);
    onCleanup(() => {
      clearTimeout(timer);
      observer.disconnect();
    });
  });
  return (
    <div class="when-near" ref={place}>
      <Show when={due() || props.wanted}>{props.children}</Show>
    </div>
  );
}
