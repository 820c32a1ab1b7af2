import type { Correlation } from '../correlation.ts';
import { condenserChains } from './condenser-at-conditions.ts';
import { lossChains } from './loss-at-conditions.ts';
import { potChains } from './pot-at-conditions.ts';
import { steamInTubeChains } from './steam-in-tube-at-conditions.ts';

/** Entries that look up water's and air's properties themselves, so that a desk user types temperatures only. */
export const withWaterCorrelations: readonly Correlation[] = [
  ...steamInTubeChains,
  ...condenserChains,
  ...lossChains,
  ...potChains,
];
