import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const lemonBalm: BotanicalText = {
  oilSite: sourced('surface glandular trichomes, sparse', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'whole, quickly after cutting; do not chop',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced(
    'direct steam with cohobation or water-soluble oil recovery; hydrosol is often the main product',
    'memory',
    'trade practice',
  ),
  compositionNotes: [
    'geranial + neral: citral',
    'caryophyllene oxide: 0.09 as cedrol',
    'germacrene D, humulene: 0.08 in beta-caryophyllene',
    'geranyl acetate: 0.04 as bornyl acetate',
    '6-methyl-5-hepten-2-one: 0.03 as 1,8-cineole (boils near it)',
    'cadinols and other heavy alcohols: 0.06 as alpha-bisabolol',
    'citronellol: 0.01 as geraniol, which boils {6 K} higher',
  ],
  publishedRanges: [
    {
      constituent: 'citral (geranial + neral)',
      low: 0.35,
      high: 0.75,
      provenance: origin('common-practice', 'common practice, no source; specification of a seller'),
    },
    {
      constituent: 'beta-caryophyllene',
      low: 0.02,
      high: 0.23,
      provenance: origin('common-practice', 'common practice, no source; specification of a seller'),
    },
    {
      constituent: 'citronellal',
      low: 0.02,
      high: 0.15,
      provenance: origin('common-practice', 'common practice, no source; specification of a seller'),
    },
    {
      constituent: 'geranial + neral',
      low: 0.744,
      high: 0.744,
      provenance: origin(
        'read',
        'EXCLI Journal paper PMC4464394, Algerian Melissa (abstract; authors not seen)',
        '44.2 + 30.2; citronellal 6.3',
      ),
    },
  ],
  relativeDensity: sourced(
    { low: 0.885, high: 0.905 },
    'common-practice',
    'common practice, no source; specification of a seller',
    'memory: up to about 0.93 when rich in caryophyllene oxide',
  ),
  qualityNotes: [
    sourced(
      'The plant holds so little oil, and so much water comes with it, that most of the citral can stay dissolved: with a small charge a layer of oil may never appear.',
      'derived',
      '0.13 g oil per kg herb against 0.5–1 g/L solubility',
    ),
    sourced(
      'Citral breaks down to 6-methyl-5-hepten-2-one and acetaldehyde in hot water and cyclises in acid.',
      'memory',
      'chemistry',
    ),
    sourced(
      'Here 95 % of the oil takes about two and a half hours, longer than the one to two hours at home: a third of it is sesquiterpenes and heavy alcohols, which come at less than half the rate of the rest.',
      'derived',
      'run of this plant at a usual boil; its rates are estimates, nothing measured',
    ),
  ],
  cautions: [
    sourced(
      'Citral often causes skin allergy (H317). The fragrance trade (IFRA) first prohibited true melissa oil and now limits it: at most 0.60 % in fine fragrance (category 4), 0.15 % in body cream (category 5A).',
      'secondary',
      'IFRA 49th Amendment melissa oil limits as listed by a third party',
    ),
    sourced('Citral: CLP Annex VI Skin Sens. 1, Skin Irrit. 2.', 'memory', 'CLP Annex VI'),
  ],
};
