/** Which working stands behind the number of a sentence. */
import type { WorkingId } from '../../../sim/index.ts';

const WORKING_OF: Readonly<Partial<Record<string, WorkingId>>> = {
  'condenser-holds': 'condensing-length',
  'condenser-scant': 'condensing-length',
  'condenser-fails': 'condensing-length',
  'first-drop': 'time-to-boil',
  'most-oil': 'time-to-90',
  products: 'recovery',
  'cooling-water': 'cooling-rise',
  'outlet-temperature': 'outlet-temperature',
  separator: 'captured-share',
  energy: 'cost',
};

export const workingOf = (sentenceId: string): WorkingId | undefined => WORKING_OF[sentenceId];
