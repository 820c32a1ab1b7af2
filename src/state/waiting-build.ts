/** A newer build that is there whole and waits; what takes it, which opens the page anew. */
import { createSignal } from 'solid-js';

export const [waitingBuild, setWaitingBuild] = createSignal<(() => void) | null>(null);
