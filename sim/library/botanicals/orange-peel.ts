import type { BotanicalRow } from '../botanical-row.ts';
import { driedMoisture, freshMoisture, handbookMinutes } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [{ shape: 'block', sides_m: [0.03, 0.005, 0.004], share: 1 }],
  'estimated',
  'shredded rind, practice',
);

export const orangePeel: BotanicalRow = {
  id: 'orange-peel',
  kind: 'peel',
  name: sourced('sweet orange peel (distilled)', 'memory', 'general botany'),
  latinName: sourced('Citrus sinensis (L.) Osbeck', 'memory', 'general botany'),
  part: sourced('fresh rind (flavedo with albedo)', 'memory', 'trade practice'),
  usualState: sourced('fresh; dried possible', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.735, 0.67, 0.8),
      oil_mL_kg: sourced(
        band(7, 3, 15),
        'read',
        'Yuniati et al., AIP Conf. Proc. 2024 3071 020031 (abstract), orange peel steam distillation',
        '0.58–0.62 % w/w at 67 % moisture, 7 h steam = 7 mL/kg; zest-only higher, up to 4 % claimed in Vietnam; ends memory',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 350, packed: 500 },
        'estimated',
        'fresh chopped peel settled',
        'fresh chopped peel; loose about 60–70 % of the packed value',
      ),
      particleDensity_kg_m3: sourced(850, 'estimated', 'spongy albedo; 850 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(3.57, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.1, 0.08, 0.12),
      oil_mL_kg: sourced(
        band(20, 8, 40),
        'estimated',
        'fresh yields divided by dry matter; drying in air loses limonene',
        'low end estimated, high end estimated',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 180, packed: 300 },
        'estimated',
        'dried shreds, from the density of fresh ones',
        'no measurement found',
      ),
      particleDensity_kg_m3: sourced(500, 'estimated', 'dried tissue with its gas space, 500 to 700 kg/m³'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(4, 'estimated', 'dried plant swells to 2 to 4 times its mass when soaked'),
    },
  },
  defaultCharge: {
    state: 'fresh',
    packing: 'loose',
    layout: 'water',
    mass_kg: 2,
    cut: 'rind shredded or grated just before',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['limonene', 0.945],
      ['myrcene', 0.021],
      ['alpha_pinene', 0.006],
      ['sabinene', 0.006],
      ['linalool', 0.006],
      ['citronellal', 0.005],
      ['alpha_terpineol', 0.004],
      ['gamma_terpinene', 0.003],
      ['citral', 0.002],
      ['beta_caryophyllene', 0.002],
    ],
    'estimated',
    'expressed-oil limits adapted to distilled oil, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(40, 90), field: handbookMinutes(60, 120) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.35, 0.15, 0.6], heldRate_1_min: [0.045, 0.02, 0.08] },
      oxygenate: { readyShare: [0.35, 0.15, 0.6], heldRate_1_min: [0.045, 0.02, 0.08] },
      sesquiterpene: { readyShare: [0.35, 0.15, 0.6], heldRate_1_min: [0.045, 0.02, 0.08] },
      takeUp: [0.02, 0.008, 0.06],
      why: 'constants of pomelo peel; take-up lower for peel in water, so that half of the oil takes 4 min and more',
    }),
    curves: [],
    note: 'no curve of sweet orange peel was found: both numbers are estimates, the rate after pomelo; the one other citrus curve is of bitter orange leaves (Citrus aurantium)',
  },
  hydrolysis: [],
};
