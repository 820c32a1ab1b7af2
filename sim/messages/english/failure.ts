/** A run that broke off, in English. */
import type { NonFinite } from '../../run/result.ts';
import type { Quantities } from '../quantities.ts';
import type { Message } from '../section.ts';
import { VARIABLES } from './events.ts';

export function failure(q: Quantities) {
  return {
    brokeOff: ({ variable, time_s }: NonFinite): Message => ({
      sentence: `The calculation failed at ${q.time(time_s)} (${VARIABLES[variable]}). No result is shown.`,
      advice: 'Undo the last change, and save the file if you want to report it.',
    }),
  };
}
