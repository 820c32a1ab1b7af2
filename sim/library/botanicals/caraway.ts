import type { BotanicalRow } from '../botanical-row.ts';
import { driedMoisture, handbookMinutes } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { seedHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [{ shape: 'grain', diameter_m: 0.0012, share: 1 }],
  'estimated',
  'crushed fruit',
);

export const caraway: BotanicalRow = {
  id: 'caraway',
  kind: 'seed',
  name: sourced('caraway seed', 'memory', 'general botany'),
  latinName: sourced('Carum carvi L.', 'memory', 'general botany'),
  part: sourced('ripe fruit', 'memory', 'trade practice'),
  usualState: sourced('dried', 'memory', 'trade practice'),
  states: {
    dry: {
      moisture: driedMoisture(0.085, 0.07, 0.1),
      oil_mL_kg: sourced(
        band(42, 20, 75),
        'estimated',
        'judged from Peter (ed.), Handbook of Herbs and Spices vol. 3, caraway chapter (page read)',
        '2–5 % w/w generally; 3–7 % (chemical dictionary), 5–7 %, 2.65 % (Alberta), all read; Ph. Eur. minimum 30 mL/kg from memory; low end read, high end read',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 440, packed: 490 },
        'estimated',
        'crushed, settled',
        'dried fruit (loose: whole; packed: crushed); loose like fennel, slightly denser; Iranian study at 7.5 % moisture exists but its figures were not visible',
      ),
      particleDensity_kg_m3: sourced(
        940,
        'estimated',
        'from fennel: bulk 413.5 and porosity 55.9 % give 938 (Ahmadi et al.)',
      ),
      pieces,
      dryHeatCapacity_J_kgK: seedHeatCapacity,
      waterHolding: sourced(1, 'estimated', 'crushed fruit soaks up about its own mass'),
    },
  },
  defaultCharge: {
    state: 'dry',
    packing: 'packed',
    layout: 'water-and-steam',
    mass_kg: 1,
    cut: 'fruit crushed between rollers and distilled at once',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['carvone', 0.545],
      ['limonene', 0.43],
      ['alpha_terpineol', 0.011],
      ['myrcene', 0.005],
      ['beta_caryophyllene', 0.003],
      ['alpha_pinene', 0.002],
      ['sabinene', 0.002],
      ['linalool', 0.002],
    ],
    'estimated',
    'within Ph. Eur. limits, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced([100, 240], 'estimated', 'published runs of the plant and its relatives', '0.5–5 kg in a home still'),
    field: handbookMinutes(240, 480),
  },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.6, 0.4, 0.75], heldRate_1_min: [0.016, 0.006, 0.03] },
      oxygenate: { readyShare: [0.6, 0.4, 0.75], heldRate_1_min: [0.016, 0.006, 0.03] },
      sesquiterpene: { readyShare: [0.6, 0.4, 0.75], heldRate_1_min: [0.016, 0.006, 0.03] },
      takeUp: [0.5, 0.2, 1],
      why: 'as fennel',
    }),
    curves: ['cumin-seed', 'cumin-hours'],
    note: 'for crushed fruit; whole fruit gives carvone first and limonene last',
  },
  hydrolysis: [],
};
