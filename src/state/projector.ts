/** Whether the page is shown to a room: full screen, large, nothing but what is taught. */
import { createSignal } from 'solid-js';

export const [projecting, setProjecting] = createSignal(false);
