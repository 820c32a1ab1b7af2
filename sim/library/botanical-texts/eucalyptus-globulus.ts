import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const eucalyptusGlobulus: BotanicalText = {
  oilSite: sourced('internal schizogenous secretory cavities in the leaf blade', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'whole or coarsely chopped; chopping opens cavities but distil at once',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced('direct steam; traditional field stills water-and-steam', 'memory', 'trade practice'),
  compositionNotes: [
    'globulol, viridiflorol, epiglobulol: 0.04 as cedrol',
    'aromadendrene, alloaromadendrene: 0.03 as beta-caryophyllene',
    'trans-pinocarveol, terpinyl acetate: 0.005 in alpha-terpineol',
    'myrcene 0.004 added to beta-pinene to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: '1,8-cineole',
      low: 0.6,
      high: 0.75,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
        'crude above 60 %; upper end estimated',
      ),
    },
    {
      constituent: 'alpha-pinene',
      low: 0.1,
      high: 0.22,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
        'crude',
      ),
    },
    {
      constituent: '1,8-cineole',
      low: 0.7,
      high: 1,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'rectified oil minimum 70 %'),
    },
    {
      constituent: 'limonene',
      low: 0.001,
      high: 0.12,
      provenance: origin('memory', 'European Pharmacopoeia monograph'),
    },
  ],
  relativeDensity: sourced(
    { low: 0.904, high: 0.927 },
    'secondary',
    'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
    'crude 0.905–0.925; rectified 0.904–0.920; Ph. Eur. 0.906–0.927 from memory',
  ),
  qualityNotes: [
    sourced(
      '1,8-Cineole dissolves in water, up to about 0.35 %: the hydrosol takes a noticeable share. Return it, or keep its volume down.',
      'memory',
      'solubility of the constituent',
    ),
    sourced('Isovaleraldehyde foreshot is irritating; crude oils are rectified.', 'memory', 'handbook'),
  ],
  cautions: [
    sourced(
      'Oleander in the same hedge is deadly. It does not smell of camphor.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'A teaspoon swallowed can poison a child. Never use it on the face of a young child; the European committee on herbal medicines (HMPC) allows no cineole products under 30 months.',
      'memory',
      'EMA/HMPC eucalyptus oil; terpenic derivatives',
    ),
    sourced('Dogs and cats: toxic.', 'memory', 'veterinary poison texts'),
  ],
};
