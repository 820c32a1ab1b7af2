import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const oregano: BotanicalText = {
  oilSite: sourced('surface peltate glandular trichomes', 'memory', 'plant anatomy texts'),
  preparation: sourced('whole, cut or rubbed', 'memory', 'trade practice and pharmacopoeia assay practice'),
  tradeMethod: sourced('direct steam', 'memory', 'trade practice'),
  compositionNotes: [
    'alpha-terpinene: 0.012 in gamma-terpinene',
    'alpha-thujene: 0.007 in sabinene',
    'beta-bisabolene: 0.01 in beta-caryophyllene',
    '1,8-cineole 0.003 added to linalool to keep ten entries',
    'alpha-terpineol 0.003 added to borneol to keep ten entries',
    'camphene 0.005 added to sabinene to keep ten entries',
    'limonene 0.005 added to p-cymene to keep ten entries',
    'terpinen-4-ol 0.007 added to borneol to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'carvacrol',
      low: 0.6,
      high: 0.8,
      provenance: origin('memory', 'ISO 13171 (O. vulgare subsp. hirtum)'),
    },
    { constituent: 'p-cymene', low: 0.04, high: 0.15, provenance: origin('memory', 'ISO 13171', 'unsure') },
    { constituent: 'gamma-terpinene', low: 0.02, high: 0.11, provenance: origin('memory', 'ISO 13171', 'unsure') },
    { constituent: 'thymol', low: 0, high: 0.09, provenance: origin('memory', 'ISO 13171', 'unsure') },
    {
      constituent: 'carvacrol',
      low: 0.6,
      high: 0.65,
      provenance: origin('common-practice', 'common practice, no source; data sheet of a seller, Spanish oil'),
    },
  ],
  relativeDensity: sourced({ low: 0.93, high: 0.96 }, 'memory', 'ISO 13171 / EOA origanum oil Spanish 0.935–0.960'),
  qualityNotes: [
    sourced(
      'Carvacrol share of distillate rises from 18 % in the first minute to about 81 % from 40 min: stop early and the oil is terpene-rich and lighter.',
      'read',
      'Zheljazkov, Astatkie and Schlegel, HortScience 47 (2012) 777–784, abstract',
    ),
    sourced(
      'Density close to water and phenolic: slow separation, warm receiver {35–45 °C} helps; hydrosol strong.',
      'derived',
      'density difference about 50 kg/m³',
    ),
  ],
  cautions: [
    sourced(
      'Neat oil irritates or burns skin and eyes (carvacrol, H314 and H318). On skin at most about 1 %.',
      'memory',
      'CLP self-classifications; Tisserand & Young',
    ),
  ],
};
