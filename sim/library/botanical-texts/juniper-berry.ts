import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const juniperBerry: BotanicalText = {
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
  tradeMethod: sourced('steam or water distillation of crushed berries; long', 'memory', 'trade practice'),
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
      provenance: origin('common-practice', 'common practice, no source; safety sheet of a seller'),
    },
    {
      constituent: 'myrcene',
      low: 0.05,
      high: 0.18,
      provenance: origin('common-practice', 'common practice, no source; safety sheet of a seller'),
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
      'Savin and yew are deadly. Savin has scales instead of needles and smells foul; yew has red cups.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'Rich in pinene: it burns easily, and swallowed it can get into the lungs and kill (H304). Not in severe kidney disease or pregnancy (European committee on herbal medicines, HMPC).',
      'memory',
      'CLP self-classification; EMA/HMPC juniper',
    ),
  ],
};
