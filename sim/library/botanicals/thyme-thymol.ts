import { band, origin, sourced, type BotanicalRow } from '../botanical-row.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { heldRateFrom, readyShareEstimated, sameRelease } from '../release-rows.ts';

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
  usualState: sourced('part-dried or dried; fresh per HMPC list entry', 'memory', 'trade practice'),
  oilSite: sourced('surface peltate glandular trichomes', 'memory', 'plant anatomy texts'),
  preparation: sourced('whole or cut tops', 'memory', 'trade practice and pharmacopoeia assay practice'),
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
  compositionNotes: [
    'carvacrol/thymol methyl ether: 0.015 in bornyl acetate',
    'alpha-thujene: 0.01 in sabinene',
    'alpha-terpinene: 0.015 in gamma-terpinene',
    'beta-pinene 0.005 added to myrcene to keep ten entries',
    'camphor 0.005 added to terpinen-4-ol to keep ten entries',
    'alpha-terpineol 0.005 added to borneol to keep ten entries',
    'sabinene 0.01 added to myrcene to keep ten entries',
    'limonene 0.01 added to p-cymene to keep ten entries',
    'camphene 0.012 added to alpha-pinene to keep ten entries',
    '1,8-cineole 0.015 added to linalool to keep ten entries',
    'terpinen-4-ol 0.015 added to borneol to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'thymol',
      low: 0.36,
      high: 0.55,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'Thymi aetheroleum; newer edition 37–55'),
    },
    {
      constituent: 'carvacrol',
      low: 0.01,
      high: 0.04,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'newer 0.5–5.5'),
    },
    {
      constituent: 'p-cymene',
      low: 0.15,
      high: 0.28,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'newer 14–28'),
    },
    {
      constituent: 'gamma-terpinene',
      low: 0.05,
      high: 0.1,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'newer 4–12'),
    },
    {
      constituent: 'linalool',
      low: 0.04,
      high: 0.065,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'newer 1.5–6.5'),
    },
    {
      constituent: 'thymol + carvacrol',
      low: 0.194,
      high: 0.844,
      provenance: origin(
        'read',
        'Herba Polonica article 1432, Thymus vulgaris oils from several countries (abstract; authors not seen, Raal group assumed)',
        'survey of 59-compound analyses',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.915, high: 0.935 },
    'memory',
    'European Pharmacopoeia monograph',
    'Thymi aetheroleum',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced(
      [60, 120],
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
  tradeMethod: sourced('direct steam or water-and-steam', 'memory', 'trade practice'),
  qualityNotes: [
    sourced(
      'Thymol melts at 50 °C: very rich oils may crystallise in a cold condenser; usual oil stays liquid.',
      'memory',
      'handbook',
    ),
    sourced(
      'p-Cymene and gamma-terpinene come first, phenols later; phenols are 1 g/L soluble so hydrosol is rich: cohobation pays.',
      'memory',
      'chemistry',
    ),
    sourced('Phenols darken on iron and copper: stainless or glass.', 'memory', 'trade'),
  ],
  cautions: [
    sourced(
      'Phenolic: skin and mucosa irritant/corrosive neat. Cutaneous use up to 10 %, not recommended under 18 years; bath 0.007–0.025 g/L adults, not under 3 years.',
      'read',
      'Commission Decision 2012/67/EU community list entry (HMPC)',
    ),
  ],
  release: {
    ...sameRelease(
      readyShareEstimated(0.5, 0.3, 0.7, 'surface glands'),
      heldRateFrom('thymbra', 0.02, 0.08, 'a close relative with the same phenols'),
    ),
    curves: ['thymbra'],
    note: 'in the relative, oxygenated terpenes came fastest at both steam rates',
  },
  hydrolysis: [],
};
