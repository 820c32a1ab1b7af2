import type { BotanicalRow } from '../botanical-row.ts';
import { handbookMinutes } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { woodHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [{ shape: 'block', sides_m: [0.02, 0.01, 0.004], share: 1 }],
  'estimated',
  'chips, trade; chip width 10 mm estimated',
);

export const cedarwoodVirginia: BotanicalRow = {
  id: 'cedarwood-virginia',
  kind: 'wood',
  name: sourced('Virginia cedarwood chips', 'memory', 'general botany'),
  latinName: sourced('Juniperus virginiana L.', 'memory', 'general botany'),
  part: sourced('heartwood chips or sawdust', 'memory', 'trade practice'),
  usualState: sourced('air-dry or green', 'memory', 'trade practice'),
  states: {
    dry: {
      moisture: sourced(band(0.12, 0.08, 0.25), 'estimated', 'air-dry chips; green ones to 0.25'),
      oil_mL_kg: sourced(
        band(20, 8, 40),
        'estimated',
        'judged from literature, 1 to 4 % w/w of heartwood',
        'read elsewhere: 1.4 % average for western juniper (Kurth & Ross); about 0.9 % (16 oz per cwt, old dictionary); steam recovers only about half of the oil present (USDA ARS); low end memory, high end memory',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 190, packed: 240 },
        'estimated',
        'chips compact to 1.25 times their loose density (Briggs chip table, read: solid share 0.33 loose, 0.42 compacted)',
        'chips at 12–25 % moisture; loose from Briggs chip table (read): loose chips 96–133 dry, 200–255 wet kg/m³ for western softwoods; scaled to denser red cedar at 12–25 % moisture',
      ),
      particleDensity_kg_m3: sourced(
        500,
        'estimated',
        'basic density of red cedar about 440 dry, 500 with moisture; pores inside the wood not counted as bed void',
      ),
      pieces,
      dryHeatCapacity_J_kgK: woodHeatCapacity,
      waterHolding: sourced(1.2, 'estimated', 'fibre saturation near 0.3 kg/kg and part of the cell space'),
    },
  },
  defaultCharge: {
    state: 'dry',
    packing: 'packed',
    layout: 'water-and-steam',
    mass_kg: 2,
    cut: 'chips of 20 mm, dust sieved off',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['alpha_cedrene', 0.64],
      ['cedrol', 0.33],
      ['beta_caryophyllene', 0.03],
    ],
    'estimated',
    'closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced([300, 720], 'estimated', 'published runs of the plant and its relatives', '0.5–5 kg in a home still'),
    field: handbookMinutes(360, 1440),
  },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.15, 0.05, 0.3], heldRate_1_min: [0.006, 0.002, 0.012] },
      oxygenate: { readyShare: [0.1, 0.02, 0.25], heldRate_1_min: [0.006, 0.002, 0.012] },
      sesquiterpene: { readyShare: [0.12, 0.03, 0.28], heldRate_1_min: [0.006, 0.002, 0.012] },
      takeUp: [0.12, 0.04, 0.3],
      why: 'vetiver roots, and runs of 6 to 24 h in the trade; take-up so high since cedrol saturates the steam so little',
    }),
    curves: [],
    note: 'no curve found; steam reaches about half of the oil in the wood, and the oil content here is what steam gives',
  },
  hydrolysis: [],
};
