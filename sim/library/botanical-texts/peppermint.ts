import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const peppermint: BotanicalText = {
  oilSite: sourced('surface peltate glandular trichomes on both leaf faces', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'whole wilted hay, or field-chopped into tubs just before steaming',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced('direct steam in mobile tubs', 'memory', 'trade practice'),
  compositionNotes: [
    'menthofuran: 0.03 in menthone',
    'isomenthone: 0.035 in menthone',
    'neomenthol: 0.03 in menthol',
    'pulegone: 0.015 as carvone',
    'germacrene D: 0.02 in beta-caryophyllene',
    'minor alcohols (neoiso-menthol, viridiflorol): 0.03 in alpha-terpineol',
    'myrcene 0.002 added to beta-pinene to keep ten entries',
    'p-cymene 0.003 added to limonene to keep ten entries',
    'sabinene 0.005 added to beta-pinene to keep ten entries',
    'gamma-terpinene 0.005 added to limonene to keep ten entries',
    'linalool 0.005 added to menthone to keep ten entries',
    'alpha-pinene 0.008 added to beta-pinene to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'menthol',
      low: 0.3,
      high: 0.55,
      provenance: origin(
        'secondary',
        'European Pharmacopoeia limits for peppermint oil, quoted in a book on transgenic plants',
      ),
    },
    {
      constituent: 'menthone',
      low: 0.14,
      high: 0.32,
      provenance: origin(
        'secondary',
        'European Pharmacopoeia limits for peppermint oil, quoted in a book on transgenic plants',
      ),
    },
    {
      constituent: 'menthyl acetate',
      low: 0.028,
      high: 0.1,
      provenance: origin(
        'secondary',
        'European Pharmacopoeia limits for peppermint oil, quoted in a book on transgenic plants',
      ),
    },
    {
      constituent: '1,8-cineole',
      low: 0.035,
      high: 0.14,
      provenance: origin(
        'secondary',
        'European Pharmacopoeia limits for peppermint oil, quoted in a book on transgenic plants',
      ),
    },
    {
      constituent: 'limonene',
      low: 0.01,
      high: 0.05,
      provenance: origin(
        'secondary',
        'European Pharmacopoeia limits for peppermint oil, quoted in a book on transgenic plants',
      ),
    },
    {
      constituent: 'menthol',
      low: 0.36,
      high: 0.46,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
        'US oils',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.898, high: 0.918 },
    'secondary',
    'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
    'US 0.899–0.911, other origins 0.898–0.918',
  ),
  qualityNotes: [
    sourced(
      'Oregon practice: windrow 3–5 days, then chop into tubs; other growers wilt only until limp.',
      'read',
      'Oregon Mint Commission, process page',
    ),
    sourced(
      'Menthol freezes out below about {20–30 °C} if rich: keep condenser and receiver above {30 °C} for menthol-rich cornmint; peppermint stays liquid.',
      'memory',
      'distilling literature',
    ),
    sourced('Menthyl acetate hydrolyses slowly; menthone and menthofuran come early.', 'memory', 'chemistry'),
  ],
  cautions: [
    sourced(
      'Pennyroyal, a small creeping mint with a harsh smell, has a deadly oil.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'Pulegone and menthofuran harm the liver: the European Pharmacopoeia allows at most 4 % of pulegone in the edition quoted, and the European committee on herbal medicines (HMPC) limits the intake.',
      'secondary',
      'European Pharmacopoeia limits for peppermint oil, quoted in a book on transgenic plants',
    ),
    sourced(
      'Never on the face of children under 2 years (laryngospasm).',
      'memory',
      'EMA/HMPC peppermint oil monograph',
    ),
  ],
};
