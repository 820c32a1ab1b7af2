import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const orangePeel: BotanicalText = {
  oilSite: sourced('internal oil glands ({0.4–0.6 mm}) in the flavedo', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'chopped or grated immediately before distilling',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced(
    'water distillation of slurry or steam; industrial: steam stripping of juice oil',
    'memory',
    'trade practice',
  ),
  compositionNotes: [
    'decanal, octanal: 0.003 as citronellal',
    'valencene: 0.002 in beta-caryophyllene',
    'beta-pinene 0.001 added to myrcene to keep ten entries',
    'terpinen-4-ol 0.002 added to citronellal to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'limonene',
      low: 0.93,
      high: 0.96,
      provenance: origin('memory', 'ISO 3140 / Ph. Eur. (expressed oil)'),
    },
    {
      constituent: 'limonene',
      low: 0.9339,
      high: 0.9757,
      provenance: origin(
        'read',
        'Yuniati et al., AIP Conf. Proc. 2024 3071 020031 (abstract), orange peel steam distillation',
        'steam distilled',
      ),
    },
    { constituent: 'myrcene', low: 0.015, high: 0.035, provenance: origin('memory', 'ISO 3140') },
    { constituent: 'linalool', low: 0.0015, high: 0.007, provenance: origin('memory', 'ISO 3140') },
  ],
  relativeDensity: sourced(
    { low: 0.838, high: 0.85 },
    'memory',
    'ISO 3140 0.842–0.850 expressed; distilled slightly lower',
  ),
  qualityNotes: [
    sourced(
      'Pectin foams and jellies in boiling water: fill no more than half; lift peel off the base.',
      'memory',
      'practice',
    ),
    sourced(
      'Acid slurry hydrates limonene and linalool to terpineols on long boiling: short run.',
      'memory',
      'chemistry',
    ),
    sourced(
      'Drying raised the measured yield by weight of the charge, 0.59–1.05 % at 55 % moisture.',
      'read',
      'Yuniati et al., AIP Conf. Proc. 2024 3071 020031 (abstract), orange peel steam distillation',
    ),
  ],
  cautions: [
    sourced(
      'Distilled oil does not make skin sensitive to sunlight (no furocoumarins). Limonene burns easily (H226), swallowed it can get into the lungs and kill (H304), and old oil causes skin allergy (H317): the fragrance trade (IFRA) limits its peroxides.',
      'memory',
      'CLP Annex VI; IFRA citrus and limonene standards',
    ),
  ],
};
