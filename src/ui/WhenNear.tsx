/** What stands below the first view: made when the reader comes near to it, or once the first view has had its time. */
import { createIntersectionObserver } from '@solid-primitives/intersection-observer';
import { debounce } from '@solid-primitives/scheduled';
import { createSignal, onMount, Show, type JSX } from 'solid-js';

export interface WhenNearProps {
  /** Query for by something else on the page, wherever the reader is. */
  readonly wanted?: boolean;
  readonly children: JSX.Element;
}

const LATEST_MS = 1200;

export function WhenNear(props: WhenNearProps) {
  let place!: HTMLDivElement;
  const [due, setDue] = createSignal(false);
  onMount(debounce(() => setDue(true), LATEST_MS));
  createIntersectionObserver(
    () => [place],
    (entries) => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) setDue(true);
    },
  );
  return (
    <div class="when-near" ref={place}>
      <Show when={due() || props.wanted}>{props.children}</Show>
    </div>
  );
}
