import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const lavandin: BotanicalText = {
  oilSite: sourced('surface glandular trichomes on the calyx', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'whole wilted sheaves, or coarse field-chop distilled in the container',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced('direct steam, container (trailer) or pot stills', 'memory', 'trade practice'),
  compositionNotes: [
    'lavandulyl acetate: 0.025 in bornyl acetate',
    'ocimenes: 0.02 in myrcene',
    'beta-farnesene, germacrene D: 0.03 in beta-caryophyllene',
    'hexyl esters: in linalyl acetate',
    'alpha-pinene 0.01 added to camphene to keep ten entries',
    'beta-pinene 0.01 added to myrcene to keep ten entries',
    'limonene 0.015 added to myrcene to keep ten entries',
    'alpha-terpineol 0.015 added to borneol to keep ten entries',
  ],
  publishedRanges: [
    { constituent: 'linalool', low: 0.24, high: 0.35, provenance: origin('memory', 'ISO 8902 (Grosso)') },
    { constituent: 'linalyl acetate', low: 0.28, high: 0.38, provenance: origin('memory', 'ISO 8902 (Grosso)') },
    { constituent: 'camphor', low: 0.06, high: 0.08, provenance: origin('memory', 'ISO 8902 (Grosso)') },
    { constituent: '1,8-cineole', low: 0.04, high: 0.07, provenance: origin('memory', 'ISO 8902 (Grosso)') },
    { constituent: 'borneol', low: 0.015, high: 0.03, provenance: origin('memory', 'ISO 8902 (Grosso)') },
    {
      constituent: 'total ester as linalyl acetate',
      low: 0.27,
      high: 0.37,
      provenance: origin(
        'read',
        'ISO 3054:1987 catalogue abstract, lavandin Abrial; superseded by 2001 edition',
        'Abrial type',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.885, high: 0.899 },
    'read',
    'ISO 3054:1987 catalogue abstract, lavandin Abrial; superseded by 2001 edition',
    '0.885–0.897 is of Abrial, another cultivar (read); Grosso 0.891–0.899 from memory of ISO 8902',
  ),
  qualityNotes: [
    sourced(
      'Release step from intact trichomes under steam about 0.072 1/min.',
      'read',
      'Cerpa, Mato and Cocero, AIChE J. 54 (2008) 909–917, abstract',
    ),
    sourced(
      'Oven drying of Super A at {60 °C} lost 75 % of the oil compared with {30 °C}: dry cool.',
      'read',
      'Erbaş and Baydar, Effects of harvest time and drying temperature … in lavandin, Turkish J. Field Crops, abstract, cultivar Super A',
    ),
    sourced('Ester loss as for lavender but camphor and cineole are stable.', 'memory', 'chemistry'),
  ],
  cautions: [
    sourced(
      'Camphor 6–8 %: avoid near the face of infants; oxidised linalool sensitises.',
      'memory',
      'Tisserand & Young; SCCS',
    ),
  ],
};
