/** Which working stands behind the number of a conclusion. */
import type { SaidFact, WorkingId } from '../../../sim/index.ts';

const WORKING_OF: Readonly<Partial<Record<SaidFact['kind'], WorkingId>>> = {
  'condenser-enough': 'condensing-length',
  'condenser-scant': 'condensing-length',
  'condenser-fails': 'condensing-length',
  'first-drop': 'time-to-boil',
  'most-oil': 'time-to-90',
  products: 'recovery',
  'cooling-water': 'cooling-rise',
  'distillate-warm': 'outlet-temperature',
  'distillate-cool': 'outlet-temperature',
  'separator-catches': 'captured-share',
  'cloudy-hydrosol': 'captured-share',
  energy: 'cost',
};

export const workingOf = (kind: SaidFact['kind']): WorkingId | undefined => WORKING_OF[kind];
