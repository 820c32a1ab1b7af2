/** What writes to the store of the real page. */
import { SHELF } from './kept-still.ts';
import { writesOver, type Writes } from './kept-writes.ts';
import { bothStills } from './shelf-both.ts';

export const browserWrites = (): Writes =>
  writesOver(globalThis.BroadcastChannel ? new BroadcastChannel('limbeck-kept') : null, { [SHELF]: bothStills });
