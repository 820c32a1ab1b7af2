import { band, origin, sourced, type BotanicalRow } from '../botanical-row.ts';
import { eugenylAcetateLoss } from '../ester-rows.ts';
import type { Piece } from '../piece-size.ts';
import { seedHeatCapacity } from '../plant-heat.ts';
import { heldRateEstimated, readyShareEstimated, sameRelease, takeUpOfRichBed } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [{ shape: 'grain', diameter_m: 0.002, share: 1 }],
  'estimated',
  'coarsely crushed bud',
);

export const cloveBud: BotanicalRow = {
  id: 'clove-bud',
  kind: 'bud',
  name: sourced('clove bud', 'memory', 'general botany'),
  latinName: sourced('Syzygium aromaticum (L.) Merr. & L.M.Perry', 'memory', 'general botany'),
  part: sourced('dried flower bud', 'memory', 'trade practice'),
  usualState: sourced('dried', 'memory', 'trade practice'),
  oilSite: sourced(
    'internal schizolysigenous oil glands under the epidermis of the hypanthium',
    'memory',
    'plant anatomy texts',
  ),
  preparation: sourced(
    'whole for finest oil (slower), or crushed/ground; ground cakes and channels, so stir into water or mix with coarse filler',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  states: {
    dry: {
      moisture: sourced(
        band(0.1, 0.08, 0.12),
        'memory',
        'European Pharmacopoeia monograph',
        'water or loss-on-drying limits of 10–13 % give the upper end; typical is the middle of the range',
      ),
      oil_mL_kg: sourced(
        band(165, 140, 200),
        'estimated',
        'judged from A Treatise on Beverages, 19th century, scan',
        '15–20 % w/w (about 140–190 mL/kg); chemical dictionary 15–21 % (read); Ph. Eur. minimum 150 mL/kg from memory; low end read, high end read',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 430, packed: 520 },
        'estimated',
        'crushed or coarsely ground',
        'dried bud (loose: whole; packed: crushed); loose whole buds, irregular nails',
      ),
      particleDensity_kg_m3: sourced(1050, 'estimated', 'dried clove sinks slowly in water; 1050 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: seedHeatCapacity,
      waterHolding: sourced(1, 'estimated', 'crushed buds soak up about their own mass'),
    },
  },
  defaultCharge: {
    state: 'dry',
    packing: 'loose',
    layout: 'water',
    mass_kg: 0.5,
    cut: 'buds coarsely crushed and stirred into the water',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['eugenol', 0.81],
      ['eugenyl_acetate', 0.1],
      ['beta_caryophyllene', 0.09],
    ],
    'estimated',
    'mid of ISO/Ph. Eur. limits, closed to 1',
  ),
  compositionNotes: ['alpha-humulene: 0.01 in beta-caryophyllene'],
  publishedRanges: [
    {
      constituent: 'eugenol',
      low: 0.75,
      high: 0.88,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'ISO 3142 similar, 75–87'),
    },
    {
      constituent: 'eugenyl acetate',
      low: 0.04,
      high: 0.15,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'ISO 3142 8–15'),
    },
    {
      constituent: 'beta-caryophyllene',
      low: 0.05,
      high: 0.14,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'ISO 3142 2–7'),
    },
    {
      constituent: 'eugenol',
      low: 0.6,
      high: 0.9,
      provenance: origin(
        'read',
        'chemical dictionary entry, quoted on property pages',
        'acetate 2–27, caryophyllene 5–12',
      ),
    },
    {
      constituent: 'eugenol',
      low: 0.87,
      high: 0.87,
      provenance: origin(
        'read',
        'Alma et al., BioResources 2007 2 265 (abstract), clove bud',
        'Turkish sample: 87.00, with acetate 8.01 and caryophyllene 3.56',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 1.03, high: 1.063 },
    'memory',
    'European Pharmacopoeia monograph',
    'ISO 3142 about 1.044–1.057; read elsewhere: 1.038–1.060 (USP-style text), 1.046–1.058 (Pharmacographia)',
  ),
  floats: sourced('sinks', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced(
      [180, 480],
      'read',
      'agricultural e-course page, clove processing',
      '8–25 h at still-house scale; small scale from memory',
    ),
    field: sourced(
      [480, 1500],
      'read',
      'agricultural e-course page, clove processing',
      '8–25 h at still-house scale; small scale from memory',
    ),
  },
  tradeMethod: sourced('water distillation or direct steam; long, with cohobation', 'memory', 'trade practice'),
  qualityNotes: [
    sourced(
      'Oil sinks, receiver must draw from the bottom; early caryophyllene-rich light fraction floats or stays as droplets until mixed with eugenol, so both layers can appear.',
      'read',
      'A Treatise on Beverages, 19th century, scan',
    ),
    sourced(
      'Eugenyl acetate hydrolyses in boiling water, more so in long water distillation; eugenol about 2 g/L soluble: return the water.',
      'memory',
      'chemistry',
    ),
    sourced('Attacks and darkens with iron and copper: stainless or glass.', 'memory', 'handbook'),
  ],
  cautions: [
    sourced(
      'Eugenol skin sensitiser H317, mucosa irritant; liver toxicity in small children from mL doses.',
      'memory',
      'CLP; case reports; EMA/HMPC clove oil',
    ),
    sourced('Eugenol is a labelled allergen.', 'memory', 'EU 1223/2009'),
  ],
  release: {
    ...sameRelease(
      readyShareEstimated(0.3, 0.15, 0.5, 'glands under the skin, opened by crushing'),
      heldRateEstimated(0.008, 0.003, 0.02, 'works run 8 to 25 h and home stills 3 to 8 h'),
      takeUpOfRichBed(
        20,
        'a third of 75 kg in a cubic metre, against half of 1.4 to 2.7 for lavender and lavandin; with lavender’s own, two hours of the pharmacopoeia’s assay would not bring half of the oil',
      ),
    ),
    curves: [],
    note: 'no curve found; release from the glands governs the run, and how far eugenol can load the steam',
  },
  hydrolysis: [eugenylAcetateLoss],
};
