import { band, origin, sourced, type BotanicalRow } from '../botanical-row.ts';
import { linalylAcetateLoss } from '../ester-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { heldRateFrom, readyShareEstimated, sameRelease } from '../release-rows.ts';

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
  part: sourced('flowering tops (spikes with 10–20 cm stalk)', 'memory', 'trade practice'),
  usualState: sourced('fresh or wilted 12–48 h; dried flowers possible', 'memory', 'trade practice'),
  oilSite: sourced('surface glandular trichomes on the calyx', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'whole, wilted; not chopped (chopping bruises glands and lets oil evaporate)',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  states: {
    fresh: {
      moisture: sourced(
        band(0.675, 0.6, 0.75),
        'estimated',
        'typical range for this tissue from general drying literature, unchecked',
        'typical is the middle of the range',
      ),
      oil_mL_kg: sourced(
        band(9, 4, 16),
        'estimated',
        'judged from Kiran Babu & Singh, lavender by three hydrodistillation techniques (abstract)',
        '0.9–1.6 % by method; Isparta field run 1.32 % w/w; low end from memory for stalky herb',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 100, packed: 170 },
        'estimated',
        'scaled from charge densities commonly quoted by small distillers (100–300 kg/m³ for herb) and from seed or wood measurements; no handbook value was readable',
        'fresh to lightly wilted herb; loose about 60–70 % of the packed value',
      ),
      particleDensity_kg_m3: sourced(850, 'estimated', 'leafy tissue is 15–30 % gas space; 850 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(2.88, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: sourced(
        band(0.1, 0.08, 0.12),
        'memory',
        'European Pharmacopoeia monograph',
        'water or loss-on-drying limits of 10–13 % give the upper end; typical is the middle of the range',
      ),
      oil_mL_kg: sourced(
        band(20, 10, 35),
        'estimated',
        'judged from European Pharmacopoeia monograph',
        'minimum 13 mL/kg anhydrous drug (Lavandulae flos); typical and high from dried-flower trade; low end estimated, high end memory',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 80, packed: 130 },
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
  compositionNotes: [
    'beta-ocimenes: 0.08 in myrcene',
    'lavandulyl acetate: 0.04 in bornyl acetate',
    'lavandulol: 0.01 in borneol',
    '3-octanone: 0.015 in 1,8-cineole',
    'beta-farnesene: 0.025 in beta-caryophyllene',
    'alpha-pinene 0.005 added to myrcene to keep ten entries',
    'p-cymene 0.005 added to limonene to keep ten entries',
    'camphor 0.005 added to terpinen-4-ol to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'linalool',
      low: 0.2,
      high: 0.45,
      provenance: origin(
        'read',
        'Molecules 2022 27 3216 table 2 (PMC9148000): quotes Ph. Eur. 10 and ISO 3515:2002 limits for lavender oil',
        'Ph. Eur.',
      ),
    },
    {
      constituent: 'linalyl acetate',
      low: 0.25,
      high: 0.47,
      provenance: origin(
        'read',
        'Molecules 2022 27 3216 table 2 (PMC9148000): quotes Ph. Eur. 10 and ISO 3515:2002 limits for lavender oil',
        'Ph. Eur. and ISO 3515 other origins',
      ),
    },
    {
      constituent: 'terpinen-4-ol',
      low: 0.001,
      high: 0.08,
      provenance: origin(
        'read',
        'Molecules 2022 27 3216 table 2 (PMC9148000): quotes Ph. Eur. 10 and ISO 3515:2002 limits for lavender oil',
        'Ph. Eur.',
      ),
    },
    {
      constituent: 'camphor',
      low: 0,
      high: 0.012,
      provenance: origin(
        'read',
        'Molecules 2022 27 3216 table 2 (PMC9148000): quotes Ph. Eur. 10 and ISO 3515:2002 limits for lavender oil',
        'Ph. Eur. maximum; ISO 1.5',
      ),
    },
    {
      constituent: '1,8-cineole',
      low: 0,
      high: 0.025,
      provenance: origin(
        'read',
        'Molecules 2022 27 3216 table 2 (PMC9148000): quotes Ph. Eur. 10 and ISO 3515:2002 limits for lavender oil',
        'Ph. Eur. maximum; ISO 3',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.878, high: 0.892 },
    'memory',
    'European Pharmacopoeia monograph',
    'Lavandulae aetheroleum; ISO 3515 about 0.880–0.890',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced(
      [30, 90],
      'memory',
      'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
      'not checked; small scale means 0.5–5 kg in a home or lab still',
    ),
    field: sourced(
      [20, 60],
      'memory',
      'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
      'not checked; small scale means 0.5–5 kg in a home or lab still',
    ),
  },
  tradeMethod: sourced(
    'direct steam in a packed pot or container still; water-and-steam on a small scale',
    'memory',
    'trade practice',
  ),
  qualityNotes: [
    sourced(
      'Linalyl acetate hydrolyses when herb sits in boiling water: oil ester 30 % (water), 47 % (water and steam), 35 % (steam) in one trial. Short, brisk steam runs keep ester.',
      'read',
      'Kiran Babu & Singh, lavender by three hydrodistillation techniques (abstract)',
    ),
    sourced(
      'Cineole, ocimenes and 3-octanone come first, then esters, then sesquiterpenes.',
      'read',
      'Zhekova and Nedkov, Agric. Sci. Technol. (Bulgaria); Zheljazkov and others, J. Oleo Sci. 62 (2013) 195–199, abstracts',
      'that sesquiterpenes come last is recalled',
    ),
    sourced(
      'One hot-site trial: best oil yield cutting at 08:00, worst at 14:00.',
      'read',
      'Sonmez & Okkaoglu, TURJAF, lavender diurnal harvest (abstract)',
    ),
    sourced(
      'Wilting raises charge density and oil percent of the charge; content rose with drying to 72 h.',
      'read',
      'Rathore & Kumar, Molecules 2022 27 3391 (abstract)',
    ),
  ],
  cautions: [
    sourced(
      'Low hazard; oxidised linalool and linalyl acetate sensitise skin. Linalool is a labelled fragrance allergen (EU cosmetics).',
      'memory',
      'EU 1223/2009; SCCS/1459/11; EMA/HMPC lavender oil monograph',
    ),
    sourced('HMPC: not for children under 12 without advice.', 'memory', 'EMA/HMPC'),
  ],
  release: {
    ...sameRelease(
      readyShareEstimated(
        0.5,
        0.3,
        0.7,
        'glands on the calyx lie open to the steam; 0.3 to 0.7 spans the published lavender runs',
      ),
      heldRateFrom(
        'lavender-dry-flowers',
        0.012,
        0.072,
        'low end: lavender herb, Herba Polonica; high end: lavandin release, AIChE J. 54 (2008) 909',
      ),
    ),
    curves: ['lavender-dry-flowers', 'lavender-herb', 'lavender-solar'],
    note: 'two papers disagree on when a lavender run is over: 60 min, or still rising at 120 min',
  },
  hydrolysis: [linalylAcetateLoss],
};
