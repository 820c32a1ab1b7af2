import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const cedarwoodVirginia: BotanicalText = {
  oilSite: sourced('heartwood cells (parenchyma and ray cells; wood oil, no ducts)', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'chipped or hammer-milled, dust removed to avoid caking',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced('steam under slight pressure, long; some with water', 'memory', 'trade practice'),
  compositionNotes: [
    'thujopsene: 0.19 in alpha-cedrene',
    'beta-cedrene, cuparene and other sesquiterpenes: 0.17 in alpha-cedrene',
    'widdrol and other alcohols: 0.11 in cedrol',
  ],
  publishedRanges: [
    {
      constituent: 'alpha-cedrene',
      low: 0.22,
      high: 0.35,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
      ),
    },
    {
      constituent: 'thujopsene',
      low: 0.1,
      high: 0.25,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
      ),
    },
    {
      constituent: 'cedrol',
      low: 0.16,
      high: 0.25,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
      ),
    },
    { constituent: 'cedrol', low: 0.03, high: 0.14, provenance: origin('memory', 'ISO 4724', 'older limits, unsure') },
  ],
  relativeDensity: sourced(
    { low: 0.941, high: 0.965 },
    'secondary',
    'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
    'may partly solidify at room temperature',
  ),
  qualityNotes: [
    sourced(
      'Diffusion through wood sets the pace; steam reaches about half the oil; 30 % more by CO2.',
      'read',
      'USDA ARS news 17 June 1999, cedarwood oil (Eller & King)',
    ),
    sourced(
      'Low steam pressure (under {69 kPa}) and hammer-milling gave better and more oil from western juniper.',
      'read',
      'Kurth & Ross, Oregon Forest Products Lab. Rep. C-3, 1954 (summary), western juniper wood',
    ),
    sourced(
      'Here 95 % of the oil is not over before a home pot runs dry: diffusion through the chips goes on for many hours. Return the water, use a boiler that can be refilled, or be content with about two thirds of it.',
      'derived',
      'run of this plant at a usual boil; its rates are estimates bounded by published runs',
    ),
    sourced('Cedrol (melts at {86 °C}) crystallises in the condenser when rich: keep it warm.', 'memory', 'handbook'),
  ],
  cautions: [
    sourced(
      'Yew wood is deadly and thuja oil poisonous. Never distil treated or painted timber.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'Generally low hazard; skin irritation when old; pregnancy caution in aromatherapy texts.',
      'memory',
      'Tisserand & Young',
    ),
  ],
};
