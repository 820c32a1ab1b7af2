/** Whether the plant was gathered wild, and who identified it: asked once, kept while the page is open. */
import { createSignal } from 'solid-js';

const [wild, setWild] = createSignal(false);
const [identifiedBy, setIdentifiedBy] = createSignal('');

export { wild, setWild, identifiedBy, setIdentifiedBy };

/** A plant from the wild goes into the still only once somebody has put a name to it. */
export const isIdentified = (): boolean => !wild() || identifiedBy().trim() !== '';
