import { band, origin, sourced, type BotanicalRow } from '../botanical-row.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { heldRateFrom, readyShareEstimated, sameRelease } from '../release-rows.ts';

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
  oilSite: sourced('surface glandular trichomes, sheltered under rolled leaf margins', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'whole or coarsely cut twigs; leaves stripped for lab work',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  states: {
    fresh: {
      moisture: sourced(
        band(0.625, 0.55, 0.7),
        'estimated',
        'typical range for this tissue from general drying literature, unchecked',
        'typical is the middle of the range',
      ),
      oil_mL_kg: sourced(
        band(8, 4, 13),
        'estimated',
        'judged from Fenaroli’s Handbook of Flavor Ingredients, Burdock, quoted on property pages',
        '0.5–1.2 % w/w from fresh flowering tops = 5.5–13 mL/kg; woody twigs lower (estimate); low end estimated, high end read',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 130, packed: 210 },
        'estimated',
        'scaled from charge densities commonly quoted by small distillers (100–300 kg/m³ for herb) and from seed or wood measurements; no handbook value was readable',
        'fresh leafy twigs; loose about 60–70 % of the packed value',
      ),
      particleDensity_kg_m3: sourced(900, 'estimated', '900 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(2.47, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: sourced(
        band(0.095, 0.07, 0.12),
        'memory',
        'European Pharmacopoeia monograph',
        'water or loss-on-drying limits of 10–13 % give the upper end; typical is the middle of the range',
      ),
      oil_mL_kg: sourced(
        band(16, 10, 25),
        'estimated',
        'judged from European Pharmacopoeia monograph',
        'minimum 12 mL/kg anhydrous leaf; 5–25 mL/kg quoted for leaves on property pages (read); low end estimated, high end read',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 120, packed: 200 },
        'estimated',
        'dried plant in practice packs at 60 to 150 kg/m³, more for stiff pieces',
        'placed in that range by the density of the fresh plant',
      ),
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
  compositionNotes: [
    'alpha-humulene: 0.01 in beta-caryophyllene',
    'verbenone (Spanish type): read as camphor',
    'alpha-thujene, alpha-phellandrene: in beta-pinene',
    'gamma-terpinene 0.008 added to p-cymene to keep ten entries',
    'terpinen-4-ol 0.01 added to borneol to keep ten entries',
    'linalool 0.012 added to camphor to keep ten entries',
    'bornyl acetate 0.015 added to alpha-terpineol to keep ten entries',
    'myrcene 0.02 added to beta-pinene to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: '1,8-cineole',
      low: 0.38,
      high: 0.55,
      provenance: origin(
        'read',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
        'North African; Spanish 16–23',
      ),
    },
    {
      constituent: 'alpha-pinene',
      low: 0.09,
      high: 0.14,
      provenance: origin(
        'read',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
        'North African; Spanish 18–26',
      ),
    },
    {
      constituent: 'camphor',
      low: 0.05,
      high: 0.15,
      provenance: origin(
        'read',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
        'North African; Spanish 12.5–22',
      ),
    },
    { constituent: 'borneol', low: 0.015, high: 0.05, provenance: origin('memory', 'ISO 1342 / Ph. Eur.') },
    { constituent: 'camphene', low: 0.025, high: 0.06, provenance: origin('memory', 'ISO 1342 / Ph. Eur.') },
  ],
  relativeDensity: sourced(
    { low: 0.892, high: 0.92 },
    'read',
    'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
    '0.892–0.910 Spanish, 0.907–0.920 North African',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced(
      [45, 120],
      'memory',
      'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
      'not checked; small scale means 0.5–5 kg in a home or lab still',
    ),
    field: sourced(
      [40, 120],
      'memory',
      'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
      'not checked; small scale means 0.5–5 kg in a home or lab still',
    ),
  },
  tradeMethod: sourced('direct steam; twigs on a grid', 'memory', 'trade practice'),
  qualityNotes: [
    sourced(
      'No ester problem worth speaking of; pinene and cineole come first, borneol, verbenone and sesquiterpenes late.',
      'memory',
      'distilling literature',
    ),
    sourced(
      'Two published single analyses: alpha-pinene 28–29 %, cineole 18–29 %, camphor 7–12 %.',
      'read',
      'Lawrence, Progress in Essential Oils, rosemary (page read)',
    ),
  ],
  cautions: [
    sourced(
      'Camphor: convulsant by mouth, avoid with epilepsy, pregnancy, infants.',
      'memory',
      'EMA/HMPC rosemary oil; Tisserand & Young',
    ),
    sourced('Pinene-rich: aspiration hazard H304, flammable H226.', 'memory', 'CLP self-classifications'),
  ],
  release: {
    ...sameRelease(
      readyShareEstimated(0.4, 0.2, 0.6, 'glands sheltered under the rolled leaf margin'),
      heldRateFrom('rosemary-ground', 0.02, 0.07, 'ground leaf; whole twigs may be slower'),
    ),
    curves: ['rosemary-ground'],
    note: 'one project found more oil from less steam and a shorter bed',
  },
  hydrolysis: [],
};
