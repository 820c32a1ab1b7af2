import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const rosemary: BotanicalText = {
  oilSite: sourced('surface glandular trichomes, sheltered under rolled leaf margins', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'whole or coarsely cut twigs; leaves stripped for lab work',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced('direct steam; twigs on a grid', 'memory', 'trade practice'),
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
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
        'North African; Spanish 16–23',
      ),
    },
    {
      constituent: 'alpha-pinene',
      low: 0.09,
      high: 0.14,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
        'North African; Spanish 18–26',
      ),
    },
    {
      constituent: 'camphor',
      low: 0.05,
      high: 0.15,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
        'North African; Spanish 12.5–22',
      ),
    },
    { constituent: 'borneol', low: 0.015, high: 0.05, provenance: origin('memory', 'ISO 1342 / Ph. Eur.') },
    { constituent: 'camphene', low: 0.025, high: 0.06, provenance: origin('memory', 'ISO 1342 / Ph. Eur.') },
  ],
  relativeDensity: sourced(
    { low: 0.892, high: 0.92 },
    'secondary',
    'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
    '0.892–0.910 Spanish, 0.907–0.920 North African',
  ),
  qualityNotes: [
    sourced(
      'No ester problem worth speaking of; pinene and cineole come first, borneol, verbenone and sesquiterpenes late.',
      'memory',
      'distilling literature',
    ),
    sourced(
      'Two published single analyses: alpha-pinene 28–29 %, cineole 18–29 %, camphor 7–12 %.',
      'secondary',
      'Lawrence, Progress in Essential Oils, rosemary (page read)',
    ),
  ],
  cautions: [
    sourced(
      'Yew twigs in mixed hedge cuttings are deadly. Bog rosemary and wild rosemary (Labrador tea) are poisonous, and neither smells of rosemary.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'Camphor: convulsant by mouth, avoid with epilepsy, pregnancy, infants.',
      'memory',
      'EMA/HMPC rosemary oil; Tisserand & Young',
    ),
    sourced(
      'Rich in pinene: swallowed it can get into the lungs and kill (H304), and it burns easily (H226).',
      'memory',
      'CLP self-classifications',
    ),
  ],
};
