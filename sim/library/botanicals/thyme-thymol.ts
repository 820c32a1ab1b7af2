import type { BotanicalRow } from '../botanical-row.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'leaf', thickness_m: 0.0003, share: 0.5 },
    { shape: 'stick', diameter_m: 0.0015, length_m: 0.02, share: 0.5 },
  ],
  'estimated',
  'leaf and twig, botany; leaf thickness 0.3 mm recalled',
);

export const thymeThymol: BotanicalRow = {
  id: 'thyme-thymol',
  kind: 'herb',
  name: sourced('thyme, thymol type', 'memory', 'general botany'),
  latinName: sourced('Thymus vulgaris L. (or T. zygis L.)', 'memory', 'general botany'),
  part: sourced('flowering tops', 'memory', 'trade practice'),
  usualState: sourced(
    'part-dried or dried; fresh by the list of the European committee on herbal medicines',
    'memory',
    'trade practice',
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
        band(5, 2.5, 10),
        'estimated',
        'dry content times dry-matter share of leafy tops with stalks',
        'low end estimated, high end estimated',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 120, packed: 200 },
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
        band(18, 10, 35),
        'estimated',
        'judged from European Pharmacopoeia monograph',
        'minimum 12 mL/kg anhydrous herb, of it at least 40 % thymol plus carvacrol; low end estimated, high end memory',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 90, packed: 150 },
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
    mass_kg: 1.5,
    cut: 'flowering tops, whole or cut',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['thymol', 0.47],
      ['p_cymene', 0.2],
      ['gamma_terpinene', 0.09],
      ['linalool', 0.06],
      ['carvacrol', 0.035],
      ['borneol', 0.035],
      ['myrcene', 0.033],
      ['alpha_pinene', 0.032],
      ['beta_caryophyllene', 0.03],
      ['bornyl_acetate', 0.015],
    ],
    'estimated',
    'within Ph. Eur. limits, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced([45, 120], 'estimated', 'published runs of the plant and its relatives', '0.5–5 kg in a home still'),
    field: sourced(
      [60, 120],
      'memory',
      'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
      'not checked; small scale means 0.5–5 kg in a home or lab still',
    ),
  },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.25, 0.1, 0.6], heldRate_1_min: [0.05, 0.03, 0.1] },
      oxygenate: { readyShare: [0.2, 0.05, 0.5], heldRate_1_min: [0.042, 0.02, 0.08] },
      takeUp: [0.05, 0.02, 0.1],
      why: 'thymbra, a relative, gave 0.04 per minute',
    }),
    curves: ['thymbra'],
    note: 'in the relative, oxygenated terpenes came fastest at both steam rates',
  },
  hydrolysis: [],
};
