import type { BotanicalRow } from '../botanical-row.ts';
import { driedDensity, driedMoisture, freshDensity, freshMoisture, handbookMinutes, TWIGS } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'block', sides_m: [0.025, 0.002, 0.0008], share: 0.6 },
    { shape: 'stick', diameter_m: 0.003, length_m: 0.05, share: 0.4 },
  ],
  'estimated',
  'leaf and twig, botany; leaf thickness 0.8 mm recalled',
);

export const rosemary: BotanicalRow = {
  id: 'rosemary',
  kind: 'leaf',
  name: sourced('rosemary', 'memory', 'general botany'),
  latinName: sourced('Salvia rosmarinus Spenn. (Rosmarinus officinalis L.)', 'memory', 'general botany'),
  part: sourced('leafy and flowering twigs', 'memory', 'trade practice'),
  usualState: sourced('fresh or part-dried; dried leaf', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.625, 0.55, 0.7),
      oil_mL_kg: sourced(
        band(8, 4, 13),
        'estimated',
        'judged from Fenaroli’s Handbook of Flavor Ingredients, Burdock, quoted on property pages',
        '0.5–1.2 % w/w from fresh flowering tops = 5.5–13 mL/kg; woody twigs lower (estimate); low end estimated, high end read',
      ),
      bulkDensity_kg_m3: freshDensity(130, 210, TWIGS),
      particleDensity_kg_m3: sourced(900, 'estimated', '900 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(2.47, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.095, 0.07, 0.12),
      oil_mL_kg: sourced(
        band(16, 10, 25),
        'estimated',
        'judged from European Pharmacopoeia monograph',
        'minimum 12 mL/kg anhydrous leaf; 5–25 mL/kg quoted for leaves on property pages (read); low end estimated, high end read',
      ),
      bulkDensity_kg_m3: driedDensity(120, 200),
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
    mass_kg: 2,
    cut: 'leafy twigs, coarsely cut',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['cineole_1_8', 0.4],
      ['camphor', 0.132],
      ['alpha_pinene', 0.13],
      ['beta_pinene', 0.08],
      ['borneol', 0.055],
      ['beta_caryophyllene', 0.06],
      ['camphene', 0.045],
      ['alpha_terpineol', 0.04],
      ['limonene', 0.03],
      ['p_cymene', 0.028],
    ],
    'estimated',
    'Tunisian/Moroccan (cineole) type within the quoted ranges; Spanish type has more pinene and camphor, and verbenone',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(45, 120), field: handbookMinutes(40, 120) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.2, 0.05, 0.5], heldRate_1_min: [0.04, 0.02, 0.07] },
      oxygenate: { readyShare: [0.2, 0.05, 0.5], heldRate_1_min: [0.043, 0.02, 0.07] },
      takeUp: [0.05, 0.02, 0.1],
      why: 'ground leaf gave 0.043 per minute; whole twigs are slower',
    }),
    curves: ['rosemary-ground'],
    note: 'one project found more oil from less steam and a shorter bed',
  },
  hydrolysis: [],
};
