import type { BotanicalRow } from '../botanical-row.ts';
import { driedDensity, driedMoisture, freshDensity, freshMoisture, handbookMinutes, HERB } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'leaf', thickness_m: 0.00025, share: 0.6 },
    { shape: 'stick', diameter_m: 0.002, length_m: 0.02, share: 0.4 },
  ],
  'estimated',
  'leaf and stem, botany; leaf thickness 0.25 mm recalled',
);

export const oregano: BotanicalRow = {
  id: 'oregano',
  kind: 'herb',
  name: sourced('oregano (Greek, carvacrol type)', 'memory', 'general botany'),
  latinName: sourced('Origanum vulgare L. subsp. hirtum (Link) Ietsw. / O. onites L.', 'memory', 'general botany'),
  part: sourced('flowering tops', 'memory', 'trade practice'),
  usualState: sourced('dried, rubbed leaf and flower; or part-dried herb', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.675, 0.6, 0.75),
      oil_mL_kg: sourced(
        band(10, 4, 25),
        'estimated',
        'dry content times dry-matter share of herb with stalks',
        'low end estimated, high end estimated',
      ),
      bulkDensity_kg_m3: freshDensity(110, 190, HERB),
      particleDensity_kg_m3: sourced(850, 'estimated', 'leafy tissue is 15–30 % gas space; 850 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(2.88, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.1, 0.08, 0.12),
      oil_mL_kg: sourced(
        band(35, 15, 80),
        'estimated',
        'judged from European Pharmacopoeia monograph',
        'minimum 25 mL/kg anhydrous drug with 1.5 % carvacrol plus thymol; subsp. hirtum to 80 mL/kg; subsp. vulgare under 10; low end estimated, high end memory',
      ),
      bulkDensity_kg_m3: driedDensity(80, 140),
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
      ['carvacrol', 0.68],
      ['p_cymene', 0.115],
      ['gamma_terpinene', 0.07],
      ['thymol', 0.035],
      ['beta_caryophyllene', 0.025],
      ['borneol', 0.02],
      ['linalool', 0.018],
      ['myrcene', 0.015],
      ['sabinene', 0.012],
      ['alpha_pinene', 0.01],
    ],
    'estimated',
    'carvacrol chemotype, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(60, 120), field: handbookMinutes(60, 120) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.3, 0.1, 0.6], heldRate_1_min: [0.08, 0.04, 0.15] },
      oxygenate: { readyShare: [0.2, 0.05, 0.5], heldRate_1_min: [0.06, 0.03, 0.1] },
      takeUp: [0.08, 0.03, 0.15],
      why: 'low boilers gone in 20 min of steam in excess and the share of carvacrol level from 40 min; take-up higher for a bed with 1.6 times lavender’s oil in a cubic metre',
    }),
    curves: ['thymbra'],
    note: 'low boilers lead here, as volatility would have it',
  },
  hydrolysis: [],
};
