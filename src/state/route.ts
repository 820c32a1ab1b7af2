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

/** Whether an address holds a whole still, or did before a letter of its beginning changed. */
export const isShareHash = (hash: string): boolean =>
  hash.startsWith('#still=') || (placeOf(hash) === null && /^.{9}[\w-]{16,}$/u.test(hash));
