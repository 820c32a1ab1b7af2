import type { BotanicalRow } from '../botanical-row.ts';
import { driedDensity, driedMoisture, freshDensity, freshMoisture, handbookMinutes, TWIGS } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'leaf', thickness_m: 0.0004, share: 0.7 },
    { shape: 'stick', diameter_m: 0.004, length_m: 0.05, share: 0.3 },
  ],
  'estimated',
  'leaf, botany; twig 4 mm recalled',
);

export const eucalyptusGlobulus: BotanicalRow = {
  id: 'eucalyptus-globulus',
  kind: 'leaf',
  name: sourced('eucalyptus (blue gum)', 'memory', 'general botany'),
  latinName: sourced('Eucalyptus globulus Labill.', 'memory', 'general botany'),
  part: sourced('leaf and terminal branchlets', 'memory', 'trade practice'),
  usualState: sourced('fresh or part-dried', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.515, 0.45, 0.58),
      oil_mL_kg: sourced(
        band(11, 7, 20),
        'read',
        'Fenaroli’s Handbook of Flavor Ingredients, Burdock, quoted on property pages',
        'about 1 % w/w of fresh or partly dried leaves; ends 0.7–2 % from memory',
      ),
      bulkDensity_kg_m3: freshDensity(170, 280, TWIGS),
      particleDensity_kg_m3: sourced(900, 'estimated', '900 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(1.56, 'estimated', 'tissue water and 0.5 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.09, 0.08, 0.1),
      oil_mL_kg: sourced(
        band(22, 12, 40),
        'estimated',
        'judged from European Pharmacopoeia monograph',
        'minimum 20 mL/kg whole leaf, 15 mL/kg cut, anhydrous; low end estimated, high end memory',
      ),
      bulkDensity_kg_m3: driedDensity(90, 150),
      particleDensity_kg_m3: sourced(650, 'estimated', 'dried tissue with its gas space, 500 to 700 kg/m³'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(1.5, 'estimated', 'dried plant swells to 2 to 4 times its mass when soaked'),
    },
  },
  defaultCharge: {
    state: 'fresh',
    packing: 'packed',
    layout: 'water-and-steam',
    mass_kg: 2,
    cut: 'leaf and twig tips, coarsely chopped just before',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['cedrol', 0.04],
      ['alpha_pinene', 0.15],
      ['limonene', 0.04],
      ['cineole_1_8', 0.68],
      ['beta_caryophyllene', 0.03],
      ['p_cymene', 0.02],
      ['alpha_terpineol', 0.015],
      ['beta_pinene', 0.01],
      ['gamma_terpinene', 0.008],
      ['terpinen_4_ol', 0.007],
    ],
    'estimated',
    'crude oil; closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced([75, 180], 'estimated', 'published runs of the plant and its relatives', '0.5–5 kg in a home still'),
    field: handbookMinutes(60, 180),
  },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.1, 0.02, 0.3], heldRate_1_min: [0.015, 0.009, 0.03] },
      oxygenate: { readyShare: [0.25, 0.1, 0.5], heldRate_1_min: [0.023, 0.013, 0.04] },
      takeUp: [0.05, 0.02, 0.1],
      why: 'tea tree and Eucalyptus grandis stand in',
    }),
    curves: ['tea-tree-fast', 'tea-tree-slow'],
    note: 'tea tree stands in for eucalyptus',
  },
  hydrolysis: [],
};
