import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const cloveBud: BotanicalText = {
  oilSite: sourced(
    'internal schizolysigenous oil glands under the epidermis of the hypanthium',
    'memory',
    'plant anatomy texts',
  ),
  preparation: sourced(
    'whole for finest oil (slower), or crushed/ground; ground cakes and channels, so stir into water or mix with coarse filler',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced('water distillation or direct steam; long, with cohobation', 'memory', 'trade practice'),
  compositionNotes: ['alpha-humulene: 0.01 in beta-caryophyllene'],
  publishedRanges: [
    {
      constituent: 'eugenol',
      low: 0.75,
      high: 0.88,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'ISO 3142 similar, 75–87'),
    },
    {
      constituent: 'eugenyl acetate',
      low: 0.04,
      high: 0.15,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'ISO 3142 8–15'),
    },
    {
      constituent: 'beta-caryophyllene',
      low: 0.05,
      high: 0.14,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'ISO 3142 2–7'),
    },
    {
      constituent: 'eugenol',
      low: 0.6,
      high: 0.9,
      provenance: origin(
        'secondary',
        'a chemical dictionary quoted on property pages; dictionary not named there',
        'acetate 2–27, caryophyllene 5–12',
      ),
    },
    {
      constituent: 'eugenol',
      low: 0.87,
      high: 0.87,
      provenance: origin(
        'read',
        'Alma et al., BioResources 2007 2 265 (abstract), clove bud',
        'Turkish sample: 87.00, with acetate 8.01 and caryophyllene 3.56',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 1.03, high: 1.063 },
    'memory',
    'European Pharmacopoeia monograph',
    'ISO 3142 about 1.044–1.057; read elsewhere: 1.038–1.060 (USP-style text), 1.046–1.058 (Pharmacographia)',
  ),
  qualityNotes: [
    sourced(
      'Oil sinks, receiver must draw from the bottom; early caryophyllene-rich light fraction floats or stays as droplets until mixed with eugenol, so both layers can appear.',
      'read',
      'A Treatise on Beverages, 19th century, scan',
    ),
    sourced(
      'Eugenyl acetate hydrolyses in boiling water, more so in long water distillation; eugenol dissolves to about 0.2 %: return the water.',
      'memory',
      'chemistry',
    ),
    sourced('Attacks and darkens with iron and copper: stainless or glass.', 'memory', 'handbook'),
  ],
  cautions: [
    sourced(
      'Eugenol causes skin allergy (H317) and irritates mouth and eyes. A teaspoon can poison the liver of a small child.',
      'memory',
      'CLP; case reports; EMA/HMPC clove oil',
    ),
    sourced('Eugenol is a labelled allergen.', 'memory', 'EU 1223/2009'),
  ],
};
