/** Starts the shelf beside the bench, for as long as the page is open. */
import { createRoot } from 'solid-js';
import { createShelf, type Shelf, type ShelfParts } from '../state/shelf.ts';

export function startShelf(parts: Omit<ShelfParts, 'now'>): Shelf {
  const shelf = createRoot(() => createShelf({ ...parts, now: () => Date.now() }));
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'hidden') return;
    shelf.leave();
    parts.store.leave();
  });
  return shelf;
}
