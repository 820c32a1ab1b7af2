/**
 * Fits of the published curves, as `npx tsx sim/library/fit-release.ts` finds them. A test runs the fits again and
 * compares.
 */
import type { FittedRelease } from './two-pool-release.ts';

export const fittedRelease = {
  'juniperus-virginiana': { curve: 'juniperus-virginiana', finalYield: 0.86958, readyShare: 0.091444, fastRate_1_s: 0.0067485, heldRate_1_s: 0.00023256, residual: 0.010686 },
  'juniperus-virginiana-hydrocarbons': { curve: 'juniperus-virginiana-hydrocarbons', finalYield: 0.20541, readyShare: 0.27487, fastRate_1_s: 0.0045747, heldRate_1_s: 0.0002513, residual: 0.0089229 },
  'juniperus-virginiana-oxygenates': { curve: 'juniperus-virginiana-oxygenates', finalYield: 0.28456, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00036279, residual: 0.023195 },
  'juniperus-virginiana-sesquiterpenes': { curve: 'juniperus-virginiana-sesquiterpenes', finalYield: 0.16726, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00014414, residual: 0.030534 },
  'juniperus-excelsa': { curve: 'juniperus-excelsa', finalYield: 0.53241, readyShare: 0.3572, fastRate_1_s: null, heldRate_1_s: 0.0011391, residual: 0.012452 },
  'juniperus-excelsa-hydrocarbons': { curve: 'juniperus-excelsa-hydrocarbons', finalYield: 0.31191, readyShare: 0.54303, fastRate_1_s: null, heldRate_1_s: 0.001306, residual: 0.010737 },
  'juniperus-excelsa-oxygenates': { curve: 'juniperus-excelsa-oxygenates', finalYield: 0.11654, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00076283, residual: 0.056731 },
  'juniperus-sabina': { curve: 'juniperus-sabina', finalYield: 2.1957, readyShare: 0.41596, fastRate_1_s: 0.0051162, heldRate_1_s: 0.00010479, residual: 0.001165 },
  'juniperus-sabina-final-fixed': { curve: 'juniperus-sabina-final-fixed', finalYield: 1.6, readyShare: 0.53369, fastRate_1_s: 0.0055925, heldRate_1_s: 0.00027855, residual: 0.007282 },
  'juniperus-sabina-hydrocarbons': { curve: 'juniperus-sabina-hydrocarbons', finalYield: 0.89322, readyShare: 0.70781, fastRate_1_s: 0.008113, heldRate_1_s: 0.0004402, residual: 0.007401 },
  'scots-pine-twigs': { curve: 'scots-pine-twigs', finalYield: 0.2965, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00010146, residual: 0.042016 },
  'lavender-dry-flowers': { curve: 'lavender-dry-flowers', finalYield: 6.8, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00084859, residual: 0 },
  'lavender-herb': { curve: 'lavender-herb', finalYield: 2.618, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.0002005, residual: 0 },
  'lavender-solar': { curve: 'lavender-solar', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00027634, residual: 0 },
  'cornmint': { curve: 'cornmint', finalYield: 1.06, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.0069374, residual: 0 },
  'peppermint': { curve: 'peppermint', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.0024964, residual: 0 },
  'garden-sage': { curve: 'garden-sage', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.0038376, residual: 0 },
  'rosemary-ground': { curve: 'rosemary-ground', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00071327, residual: 0 },
  'thymbra': { curve: 'thymbra', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00066572, residual: 0 },
  'tea-tree-fast': { curve: 'tea-tree-fast', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00041607, residual: 0 },
  'tea-tree-slow': { curve: 'tea-tree-slow', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00023817, residual: 0 },
  'ponderosa-pine': { curve: 'ponderosa-pine', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00031206, residual: 0 },
  'cumin-seed': { curve: 'cumin-seed', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00010402, residual: 0 },
  'cumin-hours': { curve: 'cumin-hours', finalYield: 2.4714, readyShare: 0.55879, fastRate_1_s: null, heldRate_1_s: 0.000059831, residual: 0 },
  'chamomile': { curve: 'chamomile', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.000083215, residual: 0 },
  'petitgrain': { curve: 'petitgrain', finalYield: 1, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00033286, residual: 0 },
  'lemongrass-flexuosus': { curve: 'lemongrass-flexuosus', finalYield: 1.4609, readyShare: 0.26872, fastRate_1_s: 0.00012193, heldRate_1_s: 0.000026346, residual: 0.00006429 },
  'lemongrass-citratus': { curve: 'lemongrass-citratus', finalYield: 1.6021, readyShare: 0.20256, fastRate_1_s: 0.00023299, heldRate_1_s: 0.000059951, residual: 0.00011721 },
  'patchouli': { curve: 'patchouli', finalYield: 2.8563, readyShare: 0, fastRate_1_s: null, heldRate_1_s: 0.00011325, residual: 0.008859 },
} as const satisfies Readonly<Record<string, FittedRelease>>;
