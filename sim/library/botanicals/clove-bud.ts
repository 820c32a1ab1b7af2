import type { BotanicalRow } from '../botanical-row.ts';
import { driedMoisture } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { seedHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [{ shape: 'grain', diameter_m: 0.002, share: 1 }],
  'estimated',
  'coarsely crushed bud',
);

export const cloveBud: BotanicalRow = {
  id: 'clove-bud',
  kind: 'bud',
  name: sourced('clove bud', 'memory', 'general botany'),
  latinName: sourced('Syzygium aromaticum (L.) Merr. & L.M.Perry', 'memory', 'general botany'),
  part: sourced('dried flower bud', 'memory', 'trade practice'),
  usualState: sourced('dried', 'memory', 'trade practice'),
  states: {
    dry: {
      moisture: driedMoisture(0.1, 0.08, 0.12),
      oil_mL_kg: sourced(
        band(165, 140, 200),
        'estimated',
        'judged from A Treatise on Beverages, 19th century, scan',
        '15–20 % w/w (about 140–190 mL/kg); chemical dictionary 15–21 % (read); Ph. Eur. minimum 150 mL/kg from memory; low end read, high end read',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 430, packed: 520 },
        'estimated',
        'crushed or coarsely ground',
        'dried bud (loose: whole; packed: crushed); loose whole buds, irregular nails',
      ),
      particleDensity_kg_m3: sourced(1050, 'estimated', 'dried clove sinks slowly in water; 1050 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: seedHeatCapacity,
      waterHolding: sourced(1, 'estimated', 'crushed buds soak up about their own mass'),
    },
  },
  defaultCharge: {
    state: 'dry',
    packing: 'loose',
    layout: 'water',
    mass_kg: 0.5,
    cut: 'buds coarsely crushed and stirred into the water',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['eugenol', 0.81],
      ['eugenyl_acetate', 0.1],
      ['beta_caryophyllene', 0.09],
    ],
    'estimated',
    'mid of ISO/Ph. Eur. limits, closed to 1',
  ),
  floats: sourced('sinks', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced(
      [180, 480],
      'common-practice',
      'common practice, no source; as a course page on clove processing has it',
      '8–25 h at still-house scale; small scale from memory',
    ),
    field: sourced(
      [480, 1500],
      'common-practice',
      'common practice, no source; as a course page on clove processing has it',
      '8–25 h at still-house scale; small scale from memory',
    ),
  },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.3, 0.15, 0.5], heldRate_1_min: [0.008, 0.003, 0.02] },
      oxygenate: { readyShare: [0.35, 0.15, 0.55], heldRate_1_min: [0.009, 0.004, 0.02] },
      sesquiterpene: { readyShare: [0.3, 0.15, 0.5], heldRate_1_min: [0.008, 0.003, 0.02] },
      takeUp: [1, 0.4, 2],
      why: 'runs of 4 to 10 h, and no curve; take-up of a bed with twenty times lavender’s oil in a cubic metre',
    }),
    curves: [],
    note: 'no curve found; release from the glands governs the run, and how far eugenol can load the steam',
  },
  hydrolysis: [],
};
