import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const scotsPine: BotanicalText = {
  oilSite: sourced('internal resin ducts in the needle and bark', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'chopped or minced just before distilling',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced('direct steam on chopped needles; long', 'memory', 'trade practice'),
  compositionNotes: [
    'delta-3-carene: 0.12 split half beta-pinene, half limonene (boils at {171 °C})',
    'terpinolene, beta-phellandrene: 0.02 in limonene',
    'cadinenes, germacrene D: 0.07 in beta-caryophyllene',
    'cadinols: 0.02 as cedrol',
    'gamma-terpinene 0.005 added to p-cymene to keep ten entries',
    'borneol 0.005 added to alpha-terpineol to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'alpha-pinene',
      low: 0.32,
      high: 0.6,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'Pini silvestris aetheroleum'),
    },
    {
      constituent: 'delta-3-carene',
      low: 0.06,
      high: 0.18,
      provenance: origin('memory', 'European Pharmacopoeia monograph'),
    },
    {
      constituent: 'beta-pinene',
      low: 0.05,
      high: 0.22,
      provenance: origin('memory', 'European Pharmacopoeia monograph'),
    },
    {
      constituent: 'limonene',
      low: 0.07,
      high: 0.12,
      provenance: origin('memory', 'European Pharmacopoeia monograph'),
    },
    {
      constituent: 'ester as bornyl acetate',
      low: 0.015,
      high: 0.05,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.855, high: 0.885 },
    'memory',
    'European Pharmacopoeia monograph',
    '0.855–0.875 memory; read elsewhere: d25 0.857–0.885 (Bauer)',
  ),
  qualityNotes: [
    sourced(
      'Twig steam run: 0.189 % after 3 h (d15 0.872), 0.1 % in the next 4 h (d15 0.880), 0.0075 % by cohobation (d15 0.891): later cuts denser.',
      'read',
      'Gildemeister & Hoffmann, The Volatile Oils, 2nd ed., scan',
    ),
    sourced('Resin ducts are slow; no ester issue except bornyl acetate (stable).', 'memory', 'chemistry'),
  ],
  cautions: [
    sourced(
      'Yew has flat, soft needles without a smell of resin, and is deadly.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'Pinene and carene burn easily, and swallowed they can get into the lungs and kill (H304). Old oil causes skin allergy (delta-3-carene): the fragrance trade (IFRA) limits its peroxides.',
      'memory',
      'IFRA standard Pinaceae; CLP',
    ),
  ],
};
