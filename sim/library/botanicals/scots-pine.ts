import type { BotanicalRow } from '../botanical-row.ts';
import { freshDensity, freshMoisture, handbookMinutes, TWIGS } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'stick', diameter_m: 0.0012, length_m: 0.02, share: 0.8 },
    { shape: 'stick', diameter_m: 0.004, length_m: 0.02, share: 0.2 },
  ],
  'estimated',
  'chopped needles, botany; twig 4 mm recalled',
);

export const scotsPine: BotanicalRow = {
  id: 'scots-pine',
  kind: 'needle',
  name: sourced('Scots pine needles (twigs)', 'memory', 'general botany'),
  latinName: sourced('Pinus sylvestris L.', 'memory', 'general botany'),
  part: sourced('fresh needles and twig tips', 'memory', 'trade practice'),
  usualState: sourced('fresh', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.55, 0.5, 0.6),
      oil_mL_kg: sourced(
        band(4, 1.5, 6),
        'estimated',
        'judged from Gildemeister & Hoffmann, The Volatile Oils, 2nd ed., scan',
        'needles 0.45–0.55 % w/w fresh (about 5.1–6.3 mL/kg); twigs 0.30 %; low end estimated, high end read',
      ),
      bulkDensity_kg_m3: freshDensity(180, 260, TWIGS),
      particleDensity_kg_m3: sourced(900, 'estimated', '900 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(1.72, 'estimated', 'tissue water and 0.5 kg/kg of film and puddles'),
    },
  },
  defaultCharge: {
    state: 'fresh',
    packing: 'packed',
    layout: 'water-and-steam',
    mass_kg: 2,
    cut: 'needles and twig tips chopped just before',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['limonene', 0.16],
      ['beta_pinene', 0.18],
      ['alpha_pinene', 0.4],
      ['beta_caryophyllene', 0.1],
      ['myrcene', 0.05],
      ['camphene', 0.03],
      ['bornyl_acetate', 0.03],
      ['cedrol', 0.02],
      ['p_cymene', 0.015],
      ['alpha_terpineol', 0.015],
    ],
    'estimated',
    'within Ph. Eur. limits, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(90, 240), field: handbookMinutes(180, 420) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.2, 0.05, 0.45], heldRate_1_min: [0.019, 0.009, 0.035] },
      oxygenate: { readyShare: [0.1, 0, 0.3], heldRate_1_min: [0.019, 0.009, 0.035] },
      takeUp: [0.05, 0.02, 0.1],
      why: 'ponderosa pine done in 160 min; whole twigs at 0.0056 to 0.01 per minute are the low end',
    }),
    curves: ['scots-pine-twigs', 'ponderosa-pine', 'juniperus-virginiana-hydrocarbons'],
    note: 'whole twigs are three times slower than chopped needles',
  },
  hydrolysis: [],
};
