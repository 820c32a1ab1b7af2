import type { BotanicalRow } from '../botanical-row.ts';
import { driedDensity, driedMoisture, freshDensity, freshMoisture, handbookMinutes, HERB } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'leaf', thickness_m: 0.0003, share: 0.6 },
    { shape: 'stick', diameter_m: 0.004, length_m: 0.05, share: 0.4 },
  ],
  'estimated',
  'leaf and stem, botany and field practice',
);

export const peppermint: BotanicalRow = {
  id: 'peppermint',
  kind: 'herb',
  name: sourced('peppermint', 'memory', 'general botany'),
  latinName: sourced('Mentha x piperita L.', 'memory', 'general botany'),
  part: sourced('leafy flowering herb', 'memory', 'trade practice'),
  usualState: sourced('wilted 1–2 days (to 30–50 % moisture) or dried leaf', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.8, 0.75, 0.85),
      oil_mL_kg: sourced(
        band(5, 3.3, 7.7),
        'estimated',
        'judged from Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
        '0.3–0.7 % w/w of fresh herb, divided by 0.905; low end read, high end read',
      ),
      bulkDensity_kg_m3: freshDensity(120, 230, HERB),
      particleDensity_kg_m3: sourced(850, 'estimated', 'leafy tissue is 15–30 % gas space; 850 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(4.8, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.1, 0.08, 0.12),
      oil_mL_kg: sourced(
        band(18, 9, 35),
        'estimated',
        'judged from European Pharmacopoeia monograph',
        'minimum 12 mL/kg whole leaf, 9 mL/kg cut leaf; low end memory, high end memory',
      ),
      bulkDensity_kg_m3: driedDensity(60, 100),
      particleDensity_kg_m3: sourced(600, 'estimated', 'dried tissue with its gas space, 500 to 700 kg/m³'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(3, 'estimated', 'dried plant swells to 2 to 4 times its mass when soaked'),
    },
  },
  defaultCharge: {
    state: 'fresh',
    packing: 'packed',
    layout: 'water-and-steam',
    mass_kg: 1.5,
    cut: 'whole herb, wilted until limp',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['menthyl_acetate', 0.055],
      ['menthone', 0.29],
      ['menthol', 0.43],
      ['cineole_1_8', 0.055],
      ['beta_caryophyllene', 0.05],
      ['alpha_terpineol', 0.035],
      ['limonene', 0.033],
      ['beta_pinene', 0.027],
      ['carvone', 0.015],
      ['terpinen_4_ol', 0.01],
    ],
    'estimated',
    'within Ph. Eur. limits, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(30, 90), field: handbookMinutes(60, 120) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.25, 0.1, 0.6], heldRate_1_min: [0.06, 0.03, 0.15] },
      oxygenate: { readyShare: [0.25, 0.1, 0.6], heldRate_1_min: [0.07, 0.035, 0.18] },
      takeUp: [0.05, 0.02, 0.1],
      why: 'between runs in the field and 0.15 to 0.4 per minute in laboratory steam',
    }),
    curves: ['peppermint', 'cornmint'],
    note: 'the laboratory runs are too fast for a home still',
  },
  hydrolysis: [],
};
