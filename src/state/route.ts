/** Which place of the page is shown, as the address says after its `#`. */
import { createSignal, onCleanup, type Accessor } from 'solid-js';
import { placeOf, type Place } from './places.ts';

/** Any other anchor leaves the reader where they are. */
export function createPlace(): Accessor<Place> {
  const [place, setPlace] = createSignal<Place>(placeOf(location.hash) ?? 'bench');
  const follow = () => {
    const next = location.hash === '' ? 'bench' : placeOf(location.hash);
    if (next) setPlace(next);
  };
  addEventListener('hashchange', follow);
  onCleanup(() => removeEventListener('hashchange', follow));
  return place;
}

/** Whether an address holds a whole still. */
export const isShareHash = (hash: string): boolean => hash.startsWith('#still=');
