/** Headline numbers whose spread is told, in this order. */
import type { HeadlineName } from '../../../sim/index.ts';

export const TOLD: readonly HeadlineName[] = [
  'oil_mL',
  't90_s',
  'firstDrop_s',
  'hydrosol_kg',
  'condensingLength_m',
  'distillateWarmest_K',
  'coolantUsed_kg',
  'energyFuel_J',
  'cost',
];
