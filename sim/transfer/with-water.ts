import type { Correlation } from '../correlation.ts';
import { condenserChains } from './condenser-chains.ts';
import { lossChains } from './loss-chains.ts';
import { potChains } from './pot-chains.ts';
import { steamInTubeChains } from './steam-in-tube-chains.ts';

/** Entries that look up water's and air's properties themselves, so that a desk user types temperatures only. */
export const withWaterCorrelations: readonly Correlation[] = [
  ...steamInTubeChains,
  ...condenserChains,
  ...lossChains,
  ...potChains,
];
