import { band, origin, sourced, type BotanicalRow } from '../botanical-row.ts';
import type { Piece } from '../piece-size.ts';
import { seedHeatCapacity } from '../plant-heat.ts';
import { groupRelease, heldRateFrom, readyShareEstimated, readyShareFrom } from '../release-rows.ts';

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
  oilSite: sourced(
    'internal schizogenous oil cavities in the fleshy scales and resin glands on the seed',
    'memory',
    'plant anatomy texts',
  ),
  preparation: sourced(
    'crushed between rollers or roughly milled just before distilling (whole berries give a fraction only)',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  states: {
    fresh: {
      moisture: sourced(
        band(0.5, 0.4, 0.6),
        'estimated',
        'typical range for this tissue from general drying literature, unchecked',
        'typical is the middle of the range',
      ),
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
      moisture: sourced(
        band(0.11, 0.08, 0.14),
        'memory',
        'European Pharmacopoeia monograph',
        'water or loss-on-drying limits of 10–13 % give the upper end; typical is the middle of the range',
      ),
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
  compositionNotes: [
    'germacrene D, delta-cadinene, humulene, elemenes: 0.10 in beta-caryophyllene',
    'cadinols: 0.03 as cedrol',
    'alpha-thujene: 0.01 in sabinene',
    'terpinolene, alpha-terpinene: 0.015 in gamma-terpinene',
    'camphene 0.005 added to sabinene to keep ten entries',
    'bornyl acetate 0.005 added to alpha-terpineol to keep ten entries',
    'alpha-terpineol 0.015 added to terpinen-4-ol to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'alpha-pinene',
      low: 0.2,
      high: 0.5,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'Juniperi aetheroleum'),
    },
    { constituent: 'myrcene', low: 0.01, high: 0.35, provenance: origin('memory', 'European Pharmacopoeia monograph') },
    {
      constituent: 'sabinene',
      low: 0,
      high: 0.2,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'maximum'),
    },
    {
      constituent: 'terpinen-4-ol',
      low: 0.005,
      high: 0.1,
      provenance: origin('memory', 'European Pharmacopoeia monograph'),
    },
    {
      constituent: 'alpha-pinene',
      low: 0.33,
      high: 0.71,
      provenance: origin('read', 'supplier safety sheet, juniper berry oil'),
    },
    {
      constituent: 'myrcene',
      low: 0.05,
      high: 0.18,
      provenance: origin('read', 'supplier safety sheet, juniper berry oil'),
    },
    {
      constituent: 'alpha-pinene',
      low: 0.311,
      high: 0.416,
      provenance: origin(
        'read',
        'Falcao et al., Ind. Crops Prod. 2018 124 878 (abstract), juniper berries',
        'two of three oils',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.857, high: 0.876 },
    'memory',
    'European Pharmacopoeia monograph',
    'read elsewhere: 0.840–0.870 (safety sheet), 0.865–0.882 (old dictionary)',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced(
      [90, 240],
      'memory',
      'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
      'not checked; small scale means 0.5–5 kg in a home or lab still',
    ),
    field: sourced(
      [240, 480],
      'memory',
      'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
      'not checked; small scale means 0.5–5 kg in a home or lab still',
    ),
  },
  tradeMethod: sourced('steam or water distillation of crushed berries; long', 'memory', 'trade practice'),
  qualityNotes: [
    sourced(
      'Two-stage: crushed surface oil fast, the rest by diffusion for hours; hydrocarbons first, terpinen-4-ol and sesquiterpenes late.',
      'memory',
      'Milojević and others, Hem. Ind. 67 (2013) 843–859',
    ),
    sourced(
      'Sugar-rich (old analyses 16–42 % glucose): berries in contact with a hot base scorch; keep them on a grid or stir in ample water.',
      'read',
      'Flückiger & Hanbury, Pharmacographia, scan',
    ),
  ],
  cautions: [
    sourced(
      'Pinene-rich: flammable, aspiration hazard H304; HMPC advises against use in severe kidney disease, pregnancy.',
      'memory',
      'CLP self-classification; EMA/HMPC juniper',
    ),
  ],
  release: {
    hydrocarbon: groupRelease(
      readyShareFrom(
        'juniperus-excelsa-hydrocarbons',
        0.27,
        0.71,
        'ground needles of a relative, the middle of three species',
      ),
      heldRateFrom(
        'juniperus-sabina-hydrocarbons',
        0.006,
        0.078,
        'ground needles of a relative, the middle of three species; sesquiterpenes 0.009 per minute',
      ),
    ),
    oxygenate: groupRelease(
      readyShareEstimated(0.05, 0, 0.2, 'one rate served for the oxygenates of two juniper needle oils'),
      heldRateFrom(
        'juniperus-virginiana-oxygenates',
        0.014,
        0.046,
        'ground needles of a relative; cedrol of another 0.046 per minute',
      ),
    ),
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
