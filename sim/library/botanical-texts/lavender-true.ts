import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const lavenderTrue: BotanicalText = {
  oilSite: sourced('surface glandular trichomes on the calyx', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'whole, wilted; not chopped (chopping bruises glands and lets oil evaporate)',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced(
    'direct steam in a packed pot or container still; water-and-steam on a small scale',
    'memory',
    'trade practice',
  ),
  compositionNotes: [
    'beta-ocimenes: 0.08 in myrcene',
    'lavandulyl acetate: 0.04 in bornyl acetate',
    'lavandulol: 0.01 in borneol',
    '3-octanone: 0.015 in 1,8-cineole',
    'beta-farnesene: 0.025 in beta-caryophyllene',
    'alpha-pinene 0.005 added to myrcene to keep ten entries',
    'p-cymene 0.005 added to limonene to keep ten entries',
    'camphor 0.005 added to terpinen-4-ol to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'linalool',
      low: 0.2,
      high: 0.45,
      provenance: origin(
        'secondary',
        'Molecules 2022 27 3216 table 2 (PMC9148000): quotes Ph. Eur. 10 and ISO 3515:2002 limits for lavender oil',
        'Ph. Eur.',
      ),
    },
    {
      constituent: 'linalyl acetate',
      low: 0.25,
      high: 0.47,
      provenance: origin(
        'secondary',
        'Molecules 2022 27 3216 table 2 (PMC9148000): quotes Ph. Eur. 10 and ISO 3515:2002 limits for lavender oil',
        'Ph. Eur. and ISO 3515 other origins',
      ),
    },
    {
      constituent: 'terpinen-4-ol',
      low: 0.001,
      high: 0.08,
      provenance: origin(
        'secondary',
        'Molecules 2022 27 3216 table 2 (PMC9148000): quotes Ph. Eur. 10 and ISO 3515:2002 limits for lavender oil',
        'Ph. Eur.',
      ),
    },
    {
      constituent: 'camphor',
      low: 0,
      high: 0.012,
      provenance: origin(
        'secondary',
        'Molecules 2022 27 3216 table 2 (PMC9148000): quotes Ph. Eur. 10 and ISO 3515:2002 limits for lavender oil',
        'Ph. Eur. maximum; ISO 1.5',
      ),
    },
    {
      constituent: '1,8-cineole',
      low: 0,
      high: 0.025,
      provenance: origin(
        'secondary',
        'Molecules 2022 27 3216 table 2 (PMC9148000): quotes Ph. Eur. 10 and ISO 3515:2002 limits for lavender oil',
        'Ph. Eur. maximum; ISO 3',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.878, high: 0.892 },
    'memory',
    'European Pharmacopoeia monograph',
    'Lavandulae aetheroleum; ISO 3515 about 0.880–0.890',
  ),
  qualityNotes: [
    sourced(
      'Linalyl acetate hydrolyses when herb sits in boiling water: oil ester 30 % (water), 47 % (water and steam), 35 % (steam) in one trial. Short, brisk steam runs keep ester.',
      'read',
      'Kiran Babu & Singh, lavender by three hydrodistillation techniques (abstract)',
    ),
    sourced(
      'Cineole, ocimenes and 3-octanone come first, then esters, then sesquiterpenes.',
      'read',
      'Zhekova and Nedkov, Agric. Sci. Technol. (Bulgaria); Zheljazkov and others, J. Oleo Sci. 62 (2013) 195–199, abstracts',
      'that sesquiterpenes come last is recalled',
    ),
    sourced(
      'One hot-site trial: best oil yield cutting at 08:00, worst at 14:00.',
      'read',
      'Sönmez and Okkaoğlu, The effect of diurnal variation … of lavender, Turkish J. Agric. Food Sci. Technol., abstract',
    ),
    sourced(
      'Wilting raises charge density and oil percent of the charge; content rose with drying to 72 h.',
      'read',
      'Rathore & Kumar, Molecules 2022 27 3391 (abstract)',
    ),
  ],
  cautions: [
    sourced(
      'Low hazard; oxidised linalool and linalyl acetate sensitise skin. Linalool is a labelled fragrance allergen (EU cosmetics).',
      'memory',
      'EU 1223/2009; SCCS/1459/11; EMA/HMPC lavender oil monograph',
    ),
    sourced(
      'Not for children under 12 without medical advice (European committee on herbal medicines, HMPC).',
      'memory',
      'EMA/HMPC',
    ),
  ],
};
