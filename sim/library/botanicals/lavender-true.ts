import type { BotanicalRow } from '../botanical-row.ts';
import { driedDensity, driedMoisture, freshDensity, freshMoisture, handbookMinutes, HERB } from '../common-rows.ts';
import { linalylAcetateLoss } from '../ester-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'stick', diameter_m: 0.0015, length_m: 0.15, share: 0.5 },
    { shape: 'stick', diameter_m: 0.0025, length_m: 0.006, share: 0.5 },
  ],
  'estimated',
  'stalk and calyx, botany; calyx width 2.5 mm recalled',
);

export const lavenderTrue: BotanicalRow = {
  id: 'lavender-true',
  kind: 'flower',
  name: sourced('true lavender', 'memory', 'general botany'),
  latinName: sourced('Lavandula angustifolia Mill.', 'memory', 'general botany'),
  part: sourced('flowering tops (spikes with {10–20 cm} stalk)', 'memory', 'trade practice'),
  usualState: sourced('fresh or wilted 12–48 h; dried flowers possible', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.675, 0.6, 0.75),
      oil_mL_kg: sourced(
        band(9, 4, 16),
        'estimated',
        'judged from Kiran Babu & Singh, lavender by three hydrodistillation techniques (abstract)',
        '0.9–1.6 % by method; Isparta field run 1.32 % w/w; low end from memory for stalky herb',
      ),
      bulkDensity_kg_m3: freshDensity(100, 170, HERB),
      particleDensity_kg_m3: sourced(850, 'estimated', 'leafy tissue is 15–30 % gas space; 850 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(2.88, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.1, 0.08, 0.12),
      oil_mL_kg: sourced(
        band(20, 10, 35),
        'estimated',
        'judged from European Pharmacopoeia monograph',
        'minimum 13 mL/kg anhydrous drug (Lavandulae flos); typical and high from dried-flower trade; low end estimated, high end memory',
      ),
      bulkDensity_kg_m3: driedDensity(80, 130),
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
    cut: 'whole flowering tops, wilted a day, pressed down by hand',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['linalyl_acetate', 0.36],
      ['linalool', 0.32],
      ['myrcene', 0.095],
      ['beta_caryophyllene', 0.065],
      ['terpinen_4_ol', 0.045],
      ['bornyl_acetate', 0.04],
      ['cineole_1_8', 0.025],
      ['borneol', 0.02],
      ['alpha_terpineol', 0.015],
      ['limonene', 0.015],
    ],
    'estimated',
    'mid-range of the ISO 3515 / Ph. Eur. limits, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(30, 90), field: handbookMinutes(20, 60) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.15, 0, 0.5], heldRate_1_min: [0.05, 0.012, 0.08] },
      oxygenate: { readyShare: [0.15, 0, 0.5], heldRate_1_min: [0.055, 0.012, 0.08] },
      takeUp: [0.05, 0.02, 0.1],
      why: 'the two-point lavender curve has 0.056 per minute; neither it nor the lavandin release model has a ready pool; low rate from lavender herb, high rate from lavandin',
    }),
    curves: ['lavender-dry-flowers', 'lavender-herb', 'lavender-solar'],
    note: 'two papers disagree on when a lavender run is over: 60 min, or still rising at 120 min',
  },
  hydrolysis: [linalylAcetateLoss],
};
