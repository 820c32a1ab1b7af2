/** Which run of the book is opened; chosen here by whoever puts one into it. */
import { createSignal } from 'solid-js';

const [openedRun, openRun] = createSignal<string | null>(null);
export { openedRun, openRun };
