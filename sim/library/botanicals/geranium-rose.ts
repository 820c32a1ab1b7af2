import type { BotanicalRow } from '../botanical-row.ts';
import { freshDensity, freshMoisture, handbookMinutes, HERB } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'leaf', thickness_m: 0.0004, share: 0.6 },
    { shape: 'stick', diameter_m: 0.005, length_m: 0.05, share: 0.4 },
  ],
  'estimated',
  'leaf and stem, botany; leaf thickness 0.4 mm recalled',
);

export const geraniumRose: BotanicalRow = {
  id: 'geranium-rose',
  kind: 'herb',
  name: sourced('rose-scented geranium', 'memory', 'general botany'),
  latinName: sourced('Pelargonium graveolens L’Her. and hybrids (cv. Rose)', 'memory', 'general botany'),
  part: sourced('fresh leafy shoots', 'memory', 'trade practice'),
  usualState: sourced('fresh or wilted 6–24 h', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.825, 0.78, 0.87),
      oil_mL_kg: sourced(
        band(1, 0.6, 2.2),
        'read',
        'Rajeswara Rao, Kaul, Syamasundar and Ramesh, Water soluble fractions of rose-scented geranium (Pelargonium species) essential oil, Bioresource Technol. 84 (2002) 243–246, abstract (authors and pages from memory)',
        '0.06–0.22 % by method; 100.2 mL per 100 kg including 7 % from hydrosol; low end read, high end read',
      ),
      bulkDensity_kg_m3: freshDensity(150, 280, HERB),
      particleDensity_kg_m3: sourced(850, 'estimated', 'leafy tissue is 15–30 % gas space; 850 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(5.51, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
  },
  defaultCharge: {
    state: 'fresh',
    packing: 'packed',
    layout: 'water-and-steam',
    mass_kg: 2,
    cut: 'leafy shoots, whole, wilted and spread thinly',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['linalool', 0.08],
      ['geraniol', 0.14],
      ['linalyl_acetate', 0.19],
      ['beta_caryophyllene', 0.12],
      ['citronellol', 0.29],
      ['menthone', 0.06],
      ['alpha_bisabolol', 0.035],
      ['cedrol', 0.06],
      ['myrcene', 0.015],
      ['citral', 0.01],
    ],
    'estimated',
    'mid-range of Bourbon/Egypt types, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced([60, 150], 'estimated', 'published runs of the plant and its relatives', '0.5–5 kg in a home still'),
    field: handbookMinutes(60, 120),
  },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.2, 0.05, 0.5], heldRate_1_min: [0.03, 0.015, 0.06] },
      oxygenate: { readyShare: [0.2, 0.05, 0.5], heldRate_1_min: [0.035, 0.02, 0.07] },
      takeUp: [0.05, 0.02, 0.1],
      why: '2 to 3.5 h in the field, from memory, and 2 h at home',
    }),
    curves: [],
    note: 'no curve found',
  },
  hydrolysis: [],
};
