import { origin, sourced } from '../provenance.ts';
import type { BotanicalText } from '../types.ts';

export const chamomileGerman: BotanicalText = {
  oilSite: sourced(
    'surface glandular hairs on florets and bracts, plus schizogenous ducts in bracts and receptacle',
    'memory',
    'plant anatomy texts',
  ),
  preparation: sourced(
    'whole heads, not ground; crumbled heads pack into a felt and channel',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
  tradeMethod: sourced(
    'direct steam, long; hydrodistillation in small stills; cohobation common',
    'memory',
    'trade practice',
  ),
  compositionNotes: [
    'bisabolol oxides A, B and bisabolone oxide: 0.41 in alpha-bisabolol',
    'spiroethers (en-yne-dicycloethers): 0.05 in alpha-bisabolol',
    '(E)-beta-farnesene, germacrene D, bicyclogermacrene: all of beta-caryophyllene',
    'spathulenol: cedrol',
    'artemisia ketone: 1,8-cineole',
  ],
  publishedRanges: [
    {
      constituent: 'bisabolol oxides',
      low: 0.29,
      high: 0.81,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'Matricariae aetheroleum, oxide-rich type'),
    },
    {
      constituent: 'alpha-bisabolol',
      low: 0.1,
      high: 0.65,
      provenance: origin('memory', 'European Pharmacopoeia monograph', 'bisabolol-rich type'),
    },
    {
      constituent: 'chamazulene',
      low: 0.01,
      high: 0.25,
      provenance: origin(
        'memory',
        'European Pharmacopoeia monograph',
        'at least 1.0 %; ESCOP text (read) says up to 15 %',
      ),
    },
    {
      constituent: 'alpha-bisabolol and its oxides, bisabolonoxide (sum)',
      low: 0.45,
      high: 0.55,
      provenance: origin('secondary', 'ESCOP Matricariae flos monograph text, quoting Ph. Eur.', 'about 50 %'),
    },
  ],
  relativeDensity: sourced(
    { low: 0.91, high: 0.96 },
    'memory',
    'ISO 19332 and handbooks',
    'cold oil is thick and near water density: slow parting',
  ),
  qualityNotes: [
    sourced(
      'Dried flowers: oil still rising after 6 h of distillation in the water; (Z)-spiroether share highest at 3 h, bisabolol oxides and chamazulene at 5–6 h. Noon or evening harvest beat 06:00.',
      'read',
      'Evaluation of harvesting time and standardization of distillation duration for higher essential oil content and quality in German chamomile (Chamomilla recutita L.), abstract; authors not seen',
    ),
    sourced(
      'Matricin (colourless) becomes blue chamazulene during distillation via chamazulene carboxylic acid, which loses CO2: needs hot water and time (mechanism and need from memory; the conversion itself is in the ESCOP text read).',
      'secondary',
      'ESCOP Matricariae flos monograph text, quoting Ph. Eur.',
    ),
    sourced(
      'High-boiling sesquiterpenoids: very slow, low vapour pressure sets the steam demand; oil viscous, sticks to condenser: run condenser {30–40 °C} and rinse.',
      'memory',
      'distilling literature',
    ),
    sourced('Chamazulene fades to green then brown in light and air.', 'memory', 'handbook'),
  ],
  cautions: [
    sourced(
      'Stinking mayweed looks alike, smells foul and causes skin allergy.',
      'memory',
      'guides to poisonous plants',
    ),
    sourced(
      'Can cause allergy, as other plants of the daisy family do. The European committee on herbal medicines (HMPC) allows it in baths from 12 years on.',
      'read',
      'EMA/HMPC public summary matricaria oil (page read)',
    ),
  ],
};
