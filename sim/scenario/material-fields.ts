/** What fields of several parts share: the metals and glass a still is made of, and where a usual value comes from. */
import { choice } from './field.ts';

const MATERIALS = ['copper', 'stainless-steel', 'aluminium', 'brass', 'carbon-steel', 'borosilicate-glass'] as const;

export const materialOf = (title: string, initial: (typeof MATERIALS)[number], says: string) =>
  choice(MATERIALS, { title, says, default: initial, source: 'common practice, no source' });

export const practice = 'common practice, no source';
