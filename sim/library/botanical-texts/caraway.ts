import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const caraway: BotanicalText = {
  oilSite: sourced('internal oil ducts (vittae) in the fruit wall', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'crushed between rollers and distilled at once',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced('direct steam on crushed seed', 'memory', 'trade practice'),
  compositionNotes: ['carveols, dihydrocarveols: 0.011 as alpha-terpineol', 'dihydrocarvone: 0.007 in carvone'],
  publishedRanges: [
    { constituent: 'carvone', low: 0.5, high: 0.65, provenance: origin('memory', 'European Pharmacopoeia monograph') },
    { constituent: 'limonene', low: 0.3, high: 0.45, provenance: origin('memory', 'European Pharmacopoeia monograph') },
    {
      constituent: 'carvone',
      low: 0.47,
      high: 0.81,
      provenance: origin('read', 'Peter (ed.), Handbook of Herbs and Spices vol. 3, caraway chapter (page read)'),
    },
    {
      constituent: 'carvone (volume)',
      low: 0.53,
      high: 0.63,
      provenance: origin('secondary', 'a chemical dictionary quoted on property pages; dictionary not named there'),
    },
    {
      constituent: 'limonene',
      low: 0.09,
      high: 0.48,
      provenance: origin('read', 'Peter (ed.), Handbook of Herbs and Spices vol. 3, caraway chapter (page read)'),
    },
    {
      constituent: 'dihydrocarvone',
      low: 0,
      high: 0.025,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'maximum'),
    },
  ],
  relativeDensity: sourced(
    { low: 0.904, high: 0.92 },
    'memory',
    'European Pharmacopoeia monograph',
    'read elsewhere: d25/25 0.900–0.910 (chemical dictionary), specific gravity at 15 °C 0.907–0.919 (Handbook of Herbs and Spices)',
  ),
  qualityNotes: [
    sourced(
      'Volatility alone would send limonene (boils at {176 °C}) first and carvone ({231 °C}) late, but a measurement on whole seed found carvone richer at the start and limonene at the end, because carvone is much more water-soluble and crosses the wet tissue faster.',
      'secondary',
      'Bazata et al. 1984 as reported in a caraway monograph',
    ),
    sourced(
      'Finely crushed or surface oil should follow volatility; intact seed should follow solubility (hydrodiffusion).',
      'estimated',
      'reasoning from the note above and the published curves',
    ),
  ],
  cautions: [
    sourced(
      'Hemlock and fool’s parsley look alike and are deadly. Never gather wild umbels for the still: use seed that is sown and named.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'Old oil causes skin allergy, since limonene takes up oxygen; carvone causes it fresh (H317).',
      'memory',
      'CLP Annex VI limonene; ECHA carvone',
    ),
  ],
};
