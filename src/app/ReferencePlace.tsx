/** The reference, wired to the page's address and the reader's units. */
import { createSignal, onCleanup } from 'solid-js';
import { ReferenceView } from '../pages/reference/ReferenceView.tsx';
import { useBench } from '../state/bench.ts';
import { restOf } from '../state/places.ts';

export function ReferencePlace() {
  const bench = useBench();
  const [opened, setOpened] = createSignal(restOf(location.hash));
  const follow = () => setOpened(restOf(location.hash));
  addEventListener('hashchange', follow);
  onCleanup(() => removeEventListener('hashchange', follow));
  return (
    <div class="answers-place">
      <h1 class="visually-hidden">Reference</h1>
      <ReferenceView opened={opened()} units={bench.units()} />
    </div>
  );
}
