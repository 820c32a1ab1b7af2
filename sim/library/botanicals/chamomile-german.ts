import type { BotanicalRow } from '../botanical-row.ts';
import { driedMoisture, freshDensity, freshMoisture, handbookMinutes } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { leafHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [
    { shape: 'grain', diameter_m: 0.008, share: 0.7 },
    { shape: 'stick', diameter_m: 0.0005, length_m: 0.002, share: 0.3 },
  ],
  'estimated',
  'receptacle and florets, botany; receptacle 8 mm and floret 0.5 mm recalled',
);

export const chamomileGerman: BotanicalRow = {
  id: 'chamomile-german',
  kind: 'flower',
  name: sourced('German chamomile', 'memory', 'general botany'),
  latinName: sourced('Matricaria chamomilla L. (M. recutita L.)', 'memory', 'general botany'),
  part: sourced('flower heads (with a little stalk)', 'memory', 'trade practice'),
  usualState: sourced('dried, or wilted/part-dried', 'memory', 'trade practice'),
  states: {
    fresh: {
      moisture: freshMoisture(0.79, 0.75, 0.83),
      oil_mL_kg: sourced(
        band(1.6, 0.6, 2.5),
        'read',
        'Evaluation of harvesting time and standardization of distillation duration for higher essential oil content and quality in German chamomile (Chamomilla recutita L.), abstract; authors not seen',
        '0.15–0.18 % flowers alone, 0.06–0.09 % flowers with herb (fresh state assumed); high end estimated',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 160, packed: 260 },
        'estimated',
        'fresh heads pack about twice as heavy as dried ones',
        'no measurement found',
      ),
      particleDensity_kg_m3: sourced(800, 'estimated', 'fresh tissue with its gas space'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(4.56, 'estimated', 'tissue water and 0.8 kg/kg of film and puddles'),
    },
    dry: {
      moisture: driedMoisture(0.105, 0.09, 0.12),
      oil_mL_kg: sourced(
        band(6, 3, 12),
        'estimated',
        'judged from ESCOP Matricariae flos monograph text, quoting Ph. Eur.',
        'minimum 4 mL/kg blue oil; Savikin (read) 0.3–1.0 %; upper end memory of selected cultivars',
      ),
      bulkDensity_kg_m3: freshDensity(90, 150, 'dried flower heads; loose about 60–70 % of the packed value'),
      particleDensity_kg_m3: sourced(500, 'estimated', 'dry flower tissue 400–600; 500 assumed'),
      pieces,
      dryHeatCapacity_J_kgK: leafHeatCapacity,
      waterHolding: sourced(4, 'estimated', 'dried plant swells to 2 to 4 times its mass when soaked'),
    },
  },
  defaultCharge: {
    state: 'dry',
    packing: 'packed',
    layout: 'water-and-steam',
    mass_kg: 1,
    cut: 'whole dried flower heads',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['alpha_bisabolol', 0.58],
      ['beta_caryophyllene', 0.25],
      ['chamazulene', 0.1],
      ['cedrol', 0.05],
      ['cineole_1_8', 0.01],
      ['p_cymene', 0.01],
    ],
    'estimated',
    'bisabolol-oxide type; closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced([240, 480], 'estimated', 'published runs of the plant and its relatives', '0.5–5 kg in a home still'),
    field: handbookMinutes(240, 600),
  },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.25, 0.05, 0.45], heldRate_1_min: [0.008, 0.004, 0.014] },
      oxygenate: { readyShare: [0.12, 0.02, 0.3], heldRate_1_min: [0.0085, 0.004, 0.014] },
      sesquiterpene: { readyShare: [0.17, 0.03, 0.4], heldRate_1_min: [0.0083, 0.004, 0.014] },
      takeUp: [0.2, 0.08, 0.4],
      why: '95 % between 480 and 720 min; a four-hour assay asks for a faster start; take-up so high since five hours at 1.2 kg/h carry the bisabolol only at a fifth of saturation or more',
    }),
    curves: ['chamomile'],
    note: 'chamazulene forms from matricin in the still, which the model does not follow',
  },
  hydrolysis: [],
};
