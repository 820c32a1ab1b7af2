import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const fennelBitter: BotanicalText = {
  oilSite: sourced('internal oil ducts (vittae) in the fruit wall', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'crushed or coarsely ground just before distilling',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced('direct steam, crushed seed in shallow beds or stirred water', 'memory', 'trade practice'),
  compositionNotes: [
    'estragole: 0.04 in trans-anethole (estragole boils {18 K} lower)',
    'anisaldehyde: 0.01 in trans-anethole',
    'alpha-phellandrene: 0.025 in limonene',
    'camphor 0.003 and 1,8-cineole 0.002 added to fenchone to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'trans-anethole',
      low: 0.55,
      high: 0.75,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'bitter-fennel fruit oil'),
    },
    {
      constituent: 'fenchone',
      low: 0.12,
      high: 0.25,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'bitter'),
    },
    {
      constituent: 'trans-anethole',
      low: 0.348,
      high: 0.82,
      provenance: origin(
        'read',
        'Raal, Orav and Arak, Essential oil composition of Foeniculum vulgare fruits from pharmacies in different countries, Nat. Prod. Res., PMID 21827282, abstract (authors from memory)',
      ),
    },
    {
      constituent: 'fenchone',
      low: 0.016,
      high: 0.228,
      provenance: origin(
        'read',
        'Raal, Orav and Arak, Essential oil composition of Foeniculum vulgare fruits from pharmacies in different countries, Nat. Prod. Res., PMID 21827282, abstract (authors from memory)',
      ),
    },
    {
      constituent: 'estragole',
      low: 0.024,
      high: 0.17,
      provenance: origin(
        'read',
        'Raal, Orav and Arak, Essential oil composition of Foeniculum vulgare fruits from pharmacies in different countries, Nat. Prod. Res., PMID 21827282, abstract (authors from memory)',
      ),
    },
    {
      constituent: 'fenchone',
      low: 0.072,
      high: 0.204,
      provenance: origin(
        'secondary',
        'Lawrence, Progress in Essential Oils, fennel (page read)',
        'bitter; sweet 2.2–5.2',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.961, high: 0.975 },
    'memory',
    'European Pharmacopoeia monograph',
    'read elsewhere: d25/25 0.953–0.973 (chemical dictionary)',
  ),
  qualityNotes: [
    sourced(
      'trans-Anethole freezes at about {20–21 °C}: run condenser and receiver above {25–30 °C} or the tube plugs; sweet fennel worse.',
      'memory',
      'handbook',
    ),
    sourced('Density near water: slow separation; warm receiver helps.', 'derived', 'density difference 25–40 kg/m³'),
  ],
  cautions: [
    sourced(
      'Hemlock and water dropwort look alike and are deadly. Never gather wild umbels for the still: use seed that is sown and named.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'Estragole causes cancer in rodents. The European committee on herbal medicines (HMPC) keeps its intake low and does not advise the oil for young children or in pregnancy.',
      'memory',
      'EMA/HMPC estragole public statement; fennel oil monograph',
    ),
  ],
};
