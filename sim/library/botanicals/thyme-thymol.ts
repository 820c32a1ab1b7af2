import type { BotanicalRow } from '../botanical-row.ts';
import { driedDensity, driedMoisture, freshDensity, freshMoisture, handbookMinutes, HERB } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'leaf', thickness_m: 0.0003, share: 0.5 },
    { shape: 'stick', diameter_m: 0.0015, length_m: 0.02, share: 0.5 },
  ],
  'estimated',
  'leaf and twig, botany; leaf thickness 0.3 mm recalled',
);

export const thymeThymol: BotanicalRow = {
  id: 'thyme-thymol',
  kind: 'herb',
  name: sourced('thyme, thymol type', 'memory', 'general botany'),
  latinName: sourced('Thymus vulgaris L. (or T. zygis L.)', 'memory', 'general botany'),
  part: sourced('flowering tops', 'memory', 'trade practice'),
  usualState: sourced(
    'part-dried or dried; fresh by the list of the European committee on herbal medicines',
    'memory',
    'trade practice',
  ),
  states: {
    fresh: {
      moisture: freshMoisture(0.675, 0.6, 0.75),
      oil_mL_kg: sourced(
        band(5, 2.5, 10),
        'estimated',
        'dry content times dry-matter share of leafy tops with stalks',
        'low end estimated, high end estimated',
      ),
      bulkDensity_kg_m3: freshDensity(120, 200, HERB),
      particleDensity_kg_m3: sourced(850, 'estimated', 'leafy tissue is 15–30 % gas space; 850 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(2.88, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.1, 0.08, 0.12),
      oil_mL_kg: sourced(
        band(18, 10, 35),
        'estimated',
        'judged from European Pharmacopoeia monograph',
        'minimum 12 mL/kg anhydrous herb, of it at least 40 % thymol plus carvacrol; low end estimated, high end memory',
      ),
      bulkDensity_kg_m3: driedDensity(90, 150),
      particleDensity_kg_m3: sourced(600, 'estimated', 'dried tissue with its gas space, 500 to 700 kg/m³'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(2.5, 'estimated', 'dried plant swells to 2 to 4 times its mass when soaked'),
    },
  },
  defaultCharge: {
    state: 'fresh',
    packing: 'packed',
    layout: 'water-and-steam',
    mass_kg: 1.5,
    cut: 'flowering tops, whole or cut',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['thymol', 0.47],
      ['p_cymene', 0.2],
      ['gamma_terpinene', 0.09],
      ['linalool', 0.06],
      ['carvacrol', 0.035],
      ['borneol', 0.035],
      ['myrcene', 0.033],
      ['alpha_pinene', 0.032],
      ['beta_caryophyllene', 0.03],
      ['bornyl_acetate', 0.015],
    ],
    'estimated',
    'within Ph. Eur. limits, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced([45, 120], 'estimated', 'published runs of the plant and its relatives', '0.5–5 kg in a home still'),
    field: handbookMinutes(60, 120),
  },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.25, 0.1, 0.6], heldRate_1_min: [0.05, 0.03, 0.1] },
      oxygenate: { readyShare: [0.2, 0.05, 0.5], heldRate_1_min: [0.042, 0.02, 0.08] },
      takeUp: [0.05, 0.02, 0.1],
      why: 'thymbra, a relative, gave 0.04 per minute',
    }),
    curves: ['thymbra'],
    note: 'in the relative, oxygenated terpenes came fastest at both steam rates',
  },
  hydrolysis: [],
};
