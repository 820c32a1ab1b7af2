import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const sage: BotanicalText = {
  oilSite: sourced(
    'surface glandular trichomes (peltate and capitate) between woolly hairs',
    'memory',
    'plant anatomy texts',
  ),
  preparation: sourced('whole or coarsely cut', 'memory', 'trade practice and pharmacopoeia assay practice'),
  tradeMethod: sourced('direct steam', 'memory', 'trade practice'),
  compositionNotes: [
    'alpha-humulene: 0.04 in beta-caryophyllene',
    'viridiflorol: 0.055 as cedrol',
    'manool (diterpene): 0.015 as alpha-bisabolol (manool is much less volatile)',
    'thujone: 0.34 as menthone, which is not its data but near in boiling point',
    'sabinene 0.005 added to beta-pinene to keep ten entries',
    'gamma-terpinene 0.005 added to p-cymene to keep ten entries',
    'linalool 0.005 added to camphor to keep ten entries',
    'terpinen-4-ol 0.005 added to borneol to keep ten entries',
    'myrcene 0.01 added to beta-pinene to keep ten entries',
    'limonene 0.015 added to p-cymene to keep ten entries',
    'alpha-bisabolol 0.015 added to cedrol to keep ten entries',
    'bornyl acetate 0.02 added to borneol to keep ten entries',
  ],
  publishedRanges: [
    {
      constituent: 'alpha-thujone',
      low: 0.18,
      high: 0.43,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
      ),
    },
    {
      constituent: 'beta-thujone',
      low: 0.03,
      high: 0.085,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
      ),
    },
    {
      constituent: '1,8-cineole',
      low: 0.055,
      high: 0.13,
      provenance: origin(
        'secondary',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
      ),
    },
    {
      constituent: 'camphor',
      low: 0.045,
      high: 0.245,
      provenance: origin('memory', 'ISO 9909', 'Bauer page shows 3–8.5, probably a slip'),
    },
    {
      constituent: 'camphor',
      low: 0.117,
      high: 0.27,
      provenance: origin('read', 'sage cv. Bona, three-year study 1997–1999 (abstract)'),
    },
    {
      constituent: 'alpha-thujone',
      low: 0.184,
      high: 0.279,
      provenance: origin('read', 'sage cv. Bona, three-year study 1997–1999 (abstract)'),
    },
  ],
  relativeDensity: sourced(
    { low: 0.91, high: 0.93 },
    'secondary',
    'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
  ),
  qualityNotes: [
    sourced(
      'In lab steam most oil from dry herb came in 10 min; monoterpene hydrocarbons peaked at 5–10 min, sesquiterpenes at 160 min.',
      'read',
      'Zheljazkov and others, HortScience 49(6) (2014) 785, abstract',
    ),
    sourced(
      'Thujone lowest near flowering, highest in autumn or winter.',
      'read',
      'Perry et al., J. Agric. Food Chem. 1999 47 2048 (abstract), Dalmatian sage',
    ),
  ],
  cautions: [
    sourced(
      'Foxglove leaves in their first year look like sage and are deadly. They are larger and soft, and have no smell when rubbed.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'Thujone and camphor can cause fits: not in pregnancy, with epilepsy or for children. The European committee on herbal medicines (HMPC) allows at most 6 mg of thujone a day from sage leaf.',
      'memory',
      'EMA/HMPC Salvia officinalis folium; thujone public statement',
    ),
  ],
};
