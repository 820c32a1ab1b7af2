import { band, origin, sourced, type BotanicalRow } from '../botanical-row.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { heldRateEstimated, readyShareEstimated, sameRelease } from '../release-rows.ts';

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
  oilSite: sourced('surface glandular trichomes (capitate hairs)', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'whole wilted; spread thinly, heaping over 6 h harms yield and composition',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  states: {
    fresh: {
      moisture: sourced(
        band(0.825, 0.78, 0.87),
        'estimated',
        'typical range for this tissue from general drying literature, unchecked',
        'typical is the middle of the range',
      ),
      oil_mL_kg: sourced(
        band(1, 0.6, 2.2),
        'read',
        'Water-soluble fractions of rose-scented geranium oil (abstract; Rajeswara Rao and others, from memory)',
        '0.06–0.22 % by method; 100.2 mL per 100 kg including 7 % from hydrosol; low end read, high end read',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 150, packed: 280 },
        'estimated',
        'scaled from charge densities commonly quoted by small distillers (100–300 kg/m³ for herb) and from seed or wood measurements; no handbook value was readable',
        'fresh to lightly wilted herb; loose about 60–70 % of the packed value',
      ),
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
      ['geraniol', 0.43],
      ['linalyl_acetate', 0.19],
      ['beta_caryophyllene', 0.12],
      ['linalool', 0.07],
      ['menthone', 0.06],
      ['alpha_bisabolol', 0.035],
      ['cedrol', 0.06],
      ['myrcene', 0.015],
      ['alpha_terpineol', 0.01],
      ['citral', 0.01],
    ],
    'estimated',
    'mid-range of Bourbon/Egypt types, closed to 1',
  ),
  compositionNotes: [
    'citronellyl formate, geranyl formate and lighter esters: 0.19 as linalyl acetate (real formates hydrolyse too; the model keeps them)',
    'isomenthone: 0.05 in menthone',
    '10-epi-gamma-eudesmol: 0.05 in cedrol',
    'guaia-6,9-diene, germacrene D: all of beta-caryophyllene',
    'cis/trans-rose oxide: 0.01 as 1,8-cineole',
    'geranyl tiglate and heavy esters: 0.035 as alpha-bisabolol',
    'citronellol: 0.29 as geraniol, which boils 6 K higher',
    'alpha-pinene 0.005 added to myrcene to keep ten entries',
    'limonene 0.005 added to myrcene to keep ten entries',
    '1,8-cineole 0.01 added to linalool to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'citronellol content as set in ISO 4731 (1972 wording; probably total alcohols as citronellol)',
      low: 0.42,
      high: 0.55,
      provenance: origin(
        'read',
        'Lis-Balchin, Geranium and Pelargonium, ch. 17 abstract (quotes ISO 4731)',
        'Bourbon; Moroccan 35–58, Egyptian and Chinese 40–58',
      ),
    },
    {
      constituent: 'citronellyl formate',
      low: 0.062,
      high: 0.075,
      provenance: origin(
        'read',
        'Water-soluble fractions of rose-scented geranium oil (abstract; Rajeswara Rao and others, from memory)',
      ),
    },
    {
      constituent: 'geranyl formate',
      low: 0.041,
      high: 0.047,
      provenance: origin(
        'read',
        'Water-soluble fractions of rose-scented geranium oil (abstract; Rajeswara Rao and others, from memory)',
      ),
    },
    { constituent: 'citronellol', low: 0.18, high: 0.43, provenance: origin('memory', 'ISO 4731:2012 by origin') },
    {
      constituent: '10-epi-gamma-eudesmol',
      low: 0.049,
      high: 0.055,
      provenance: origin(
        'read',
        'Water-soluble fractions of rose-scented geranium oil (abstract; Rajeswara Rao and others, from memory)',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.882, high: 0.905 },
    'memory',
    'ISO 4731 by origin (0.884–0.892 Bourbon, 0.882–0.892 China)',
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
      [60, 120],
      'memory',
      'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
      'not checked; small scale means 0.5–5 kg in a home or lab still',
    ),
  },
  tradeMethod: sourced('direct steam with recycling of distillation water (cohobation)', 'memory', 'trade practice'),
  qualityNotes: [
    sourced(
      '7 % of the oil was in the hydrosol; recovered oil was rich in geraniol (21–38 %), linalool (15–20 %).',
      'read',
      'Water-soluble fractions of rose-scented geranium oil (abstract; Rajeswara Rao and others, from memory)',
    ),
    sourced(
      'Water distillation gave 0.16–0.22 %, steam 0.06–0.18 %.',
      'read',
      'Babu & Kaul, Flavour Fragr. J. 2005 20 222 (abstract)',
    ),
    sourced(
      'Formates hydrolyse to free alcohols and formic acid on standing wet (storage wet cut geraniol, geranyl formate and raised citronellol).',
      'read',
      'Kaul et al. 1997 cited by Lawrence, Perfumer & Flavorist (page read)',
    ),
  ],
  cautions: [
    sourced(
      'Geraniol, citronellol, linalool, citral: labelled allergens; IFRA limits by category.',
      'memory',
      'EU 1223/2009; IFRA',
    ),
  ],
  release: {
    ...sameRelease(
      readyShareEstimated(0.5, 0.3, 0.7, 'surface hairs'),
      heldRateEstimated(0.04, 0.02, 0.08, 'as other herbs with surface glands'),
    ),
    curves: [],
    note: 'no curve found',
  },
  hydrolysis: [],
};
