import type { BotanicalRow } from '../botanical-row.ts';
import { driedDensity, driedMoisture, freshDensity, freshMoisture, handbookMinutes, HERB } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'leaf', thickness_m: 0.0007, share: 0.7 },
    { shape: 'stick', diameter_m: 0.003, length_m: 0.05, share: 0.3 },
  ],
  'estimated',
  'leaf and shoot, botany',
);

export const sage: BotanicalRow = {
  id: 'sage',
  kind: 'leaf',
  name: sourced('common (Dalmatian) sage', 'memory', 'general botany'),
  latinName: sourced('Salvia officinalis L.', 'memory', 'general botany'),
  part: sourced('leaf and soft shoot', 'memory', 'trade practice'),
  usualState: sourced('part-dried or dried leaf; fresh possible', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.76, 0.7, 0.82),
      oil_mL_kg: sourced(
        band(4, 2, 7),
        'estimated',
        'dry content times dry-matter share; Burdock (read) gives 0.5–1.0 % for partially dried leaves',
        'low end estimated, high end estimated',
      ),
      bulkDensity_kg_m3: freshDensity(110, 200, HERB),
      particleDensity_kg_m3: sourced(850, 'estimated', 'leafy tissue is 15–30 % gas space; 850 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(3.97, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.1, 0.08, 0.12),
      oil_mL_kg: sourced(
        band(14, 8, 25),
        'estimated',
        'judged from European Pharmacopoeia monograph',
        'whole leaf minimum 15 (older text) or 12 mL/kg, cut leaf 10 mL/kg; read elsewhere: 0.8–1.8 % by harvest (cv. Bona), leaves 1.1 % and flowering parts 1.6 % (Perry); low end read, high end memory',
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
    cut: 'leaf and soft shoot, coarsely cut',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['menthone', 0.34],
      ['camphor', 0.175],
      ['cineole_1_8', 0.1],
      ['beta_caryophyllene', 0.09],
      ['cedrol', 0.07],
      ['borneol', 0.055],
      ['camphene', 0.05],
      ['alpha_pinene', 0.045],
      ['beta_pinene', 0.045],
      ['p_cymene', 0.03],
    ],
    'estimated',
    'within quoted ranges, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(30, 90), field: handbookMinutes(45, 120) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.25, 0.1, 0.6], heldRate_1_min: [0.07, 0.035, 0.2] },
      oxygenate: { readyShare: [0.25, 0.1, 0.6], heldRate_1_min: [0.075, 0.04, 0.2] },
      takeUp: [0.05, 0.02, 0.1],
      why: 'most of the oil came in 10 min of steam in excess, and twice in half an hour in water',
    }),
    curves: ['garden-sage'],
    note: 'the laboratory run is too fast for a home still',
  },
  hydrolysis: [],
};
