import type { BotanicalRow } from '../botanical-row.ts';
import { driedDensity, driedMoisture, freshDensity, freshMoisture, handbookMinutes, HERB } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'leaf', thickness_m: 0.00025, share: 0.7 },
    { shape: 'stick', diameter_m: 0.003, length_m: 0.05, share: 0.3 },
  ],
  'estimated',
  'leaf, botany; stem 3 mm recalled',
);

export const lemonBalm: BotanicalRow = {
  id: 'lemon-balm',
  kind: 'leaf',
  name: sourced('lemon balm', 'memory', 'general botany'),
  latinName: sourced('Melissa officinalis L.', 'memory', 'general botany'),
  part: sourced('leaf and top', 'memory', 'trade practice'),
  usualState: sourced('fresh or wilted a few hours; dried leaf', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.8, 0.75, 0.85),
      oil_mL_kg: sourced(
        band(0.16, 0.08, 0.5),
        'read',
        'FAO document X5043E, Melissa monograph',
        '0.014 % w/w from fresh herb = 0.16 mL/kg; ends from memory',
      ),
      bulkDensity_kg_m3: freshDensity(100, 200, HERB),
      particleDensity_kg_m3: sourced(850, 'estimated', 'leafy tissue is 15–30 % gas space; 850 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(4.8, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.09, 0.08, 0.1),
      oil_mL_kg: sourced(
        band(1.2, 0.3, 3.5),
        'read',
        'FAO document X5043E, Melissa monograph',
        '0.112 % from dried herb, 0.13 % with cohobation; high end 0.34 % Algerian leaf by hydrodistillation (PMC4464394, read); low end memory. Ph. Eur. sets rosmarinic acid, no oil minimum',
      ),
      bulkDensity_kg_m3: driedDensity(50, 90),
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
    mass_kg: 2,
    cut: 'leaf and tops, whole, soon after cutting',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['citral', 0.48],
      ['beta_caryophyllene', 0.2],
      ['cedrol', 0.09],
      ['alpha_bisabolol', 0.06],
      ['citronellal', 0.04],
      ['bornyl_acetate', 0.04],
      ['geraniol', 0.04],
      ['cineole_1_8', 0.03],
      ['linalool', 0.015],
      ['limonene', 0.005],
    ],
    'estimated',
    'from remembered analyses (geranial 20–40, neral 15–30, caryophyllene 5–20 %), closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(60, 120), field: handbookMinutes(90, 180) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.15, 0.05, 0.5], heldRate_1_min: [0.03, 0.015, 0.06] },
      oxygenate: { readyShare: [0.2, 0.05, 0.5], heldRate_1_min: [0.04, 0.02, 0.08] },
      takeUp: [0.05, 0.02, 0.1],
      why: 'as rose geranium; nothing measured',
    }),
    curves: [],
    note: 'no curve found; most of the oil stays dissolved in the water',
  },
  hydrolysis: [],
};
