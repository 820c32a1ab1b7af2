import type { BotanicalRow } from '../botanical-row.ts';
import { driedMoisture, freshMoisture, handbookMinutes } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { seedHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [{ shape: 'grain', diameter_m: 0.002, share: 1 }],
  'estimated',
  'crushed berries',
);

export const juniperBerry: BotanicalRow = {
  id: 'juniper-berry',
  kind: 'berry',
  name: sourced('juniper berry', 'memory', 'general botany'),
  latinName: sourced('Juniperus communis L.', 'memory', 'general botany'),
  part: sourced('ripe female cones', 'memory', 'trade practice'),
  usualState: sourced('ripe fresh, or dried', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.5, 0.4, 0.6),
      oil_mL_kg: sourced(
        band(7, 4.6, 14),
        'estimated',
        'judged from Flückiger & Hanbury, Pharmacographia, scan',
        '0.4–1.2 % w/w (Pharmacographia) divided by 0.865; Parry 0.5–1.5 % by origin; berry state not given in either, taken as fresh or part-dried; low end read, high end read',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 450, packed: 600 },
        'estimated',
        'fresh berries weigh about a third more than dried ones',
        'no measurement found',
      ),
      particleDensity_kg_m3: sourced(1050, 'estimated', 'fresh tissue with its gas space'),
      pieces,
      dryHeatCapacity_J_kgK: seedHeatCapacity,
      waterHolding: sourced(1.5, 'estimated', 'tissue water and 0.5 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.11, 0.08, 0.14),
      oil_mL_kg: sourced(
        band(12, 5, 26),
        'estimated',
        'judged from Fenaroli’s Handbook of Flavor Ingredients, Burdock, quoted on property pages',
        '0.5–0.6 % unfermented, 0.8–1.6 % fermented, Italian dried to 2.6 %; Ph. Eur. minimum 10 mL/kg from memory; low end read, high end read',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 330, packed: 430 },
        'estimated',
        'crushed, settled',
        'dried berries (loose: whole; packed: crushed); loose whole dried berries; between dried cherries and peppercorns',
      ),
      particleDensity_kg_m3: sourced(1000, 'estimated', 'semi-dry fleshy cone 1000 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: seedHeatCapacity,
      waterHolding: sourced(1, 'estimated', 'crushed berries soak up about their own mass'),
    },
  },
  defaultCharge: {
    state: 'dry',
    packing: 'packed',
    layout: 'water',
    mass_kg: 1,
    cut: 'berries crushed between rollers just before',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['alpha_pinene', 0.38],
      ['myrcene', 0.14],
      ['sabinene', 0.115],
      ['terpinen_4_ol', 0.065],
      ['beta_caryophyllene', 0.13],
      ['limonene', 0.05],
      ['beta_pinene', 0.04],
      ['gamma_terpinene', 0.03],
      ['cedrol', 0.03],
      ['p_cymene', 0.02],
    ],
    'estimated',
    'within Ph. Eur. limits, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(90, 240), field: handbookMinutes(240, 480) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.3, 0.15, 0.55], heldRate_1_min: [0.02, 0.008, 0.04] },
      oxygenate: { readyShare: [0.1, 0, 0.3], heldRate_1_min: [0.02, 0.01, 0.04] },
      takeUp: [0.03, 0.01, 0.08],
      why: 'ground needles of three junipers bracket it, and a crushed berry opens less; take-up lower since the ready hydrocarbons of ground, immersed needles left at 0.06 to 0.7 per minute and not at once',
    }),
    curves: [
      'juniperus-virginiana',
      'juniperus-excelsa',
      'juniperus-sabina',
      'juniperus-virginiana-hydrocarbons',
      'juniperus-excelsa-hydrocarbons',
      'juniperus-sabina-hydrocarbons',
      'juniperus-virginiana-oxygenates',
      'juniperus-excelsa-oxygenates',
    ],
    note: 'needles stand in for berries; ground and immersed, volatility sets the order',
  },
  hydrolysis: [],
};
