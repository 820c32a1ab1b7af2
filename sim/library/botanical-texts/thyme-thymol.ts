import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const thymeThymol: BotanicalText = {
  oilSite: sourced('surface peltate glandular trichomes', 'memory', 'plant anatomy texts'),
  preparation: sourced('whole or cut tops', 'memory', 'trade practice and pharmacopoeia assay practice'),
  tradeMethod: sourced('direct steam or water-and-steam', 'memory', 'trade practice'),
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
  qualityNotes: [
    sourced(
      'Thymol melts at {50 °C}: very rich oils may crystallise in a cold condenser; usual oil stays liquid.',
      'memory',
      'handbook',
    ),
    sourced(
      'p-Cymene and gamma-terpinene come first, phenols later; phenols dissolve in water, to about 0.1 %, so the hydrosol is rich: returning the water pays.',
      'memory',
      'chemistry',
    ),
    sourced('Phenols darken on iron and copper: stainless or glass.', 'memory', 'trade'),
  ],
  cautions: [
    sourced(
      'Neat oil irritates or burns skin, mouth and eyes (phenols). On skin at most 10 %, and not under 18 years; in a bath 0.0007 to 0.0025 % for adults, and never under 3 years.',
      'read',
      'Commission Decision 2012/67/EU community list entry (HMPC)',
    ),
  ],
};
