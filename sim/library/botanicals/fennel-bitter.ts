import type { BotanicalRow } from '../botanical-row.ts';
import { driedMoisture, handbookMinutes } from '../common-rows.ts';
import type { Piece } from '../piece-size.ts';
import { seedHeatCapacity } from '../plant-heat.ts';
import { band, origin, sourced } from '../provenance.ts';
import { estimatedRelease } from '../release-rows.ts';

const pieces = sourced<readonly Piece[]>(
  [{ shape: 'grain', diameter_m: 0.0015, share: 1 }],
  'estimated',
  'crushed fruit',
);

export const fennelBitter: BotanicalRow = {
  id: 'fennel-bitter',
  kind: 'seed',
  name: sourced('fennel seed (bitter)', 'memory', 'general botany'),
  latinName: sourced('Foeniculum vulgare Mill. subsp. vulgare var. vulgare', 'memory', 'general botany'),
  part: sourced('ripe fruit', 'memory', 'trade practice'),
  usualState: sourced('dried', 'memory', 'trade practice'),
  states: {
    dry: {
      moisture: driedMoisture(0.085, 0.07, 0.1),
      oil_mL_kg: sourced(
        band(45, 20, 60),
        'estimated',
        'judged from Raal, Orav and Arak, Essential oil composition of Foeniculum vulgare fruits from pharmacies in different countries, Nat. Prod. Res., PMID 21827282, abstract (authors from memory)',
        '22–51 mL/kg for pharmacy fruit, 5 for a poor spice sample; Ph. Eur. minimum 40 (bitter), 20 (sweet) mL/kg from memory; high end memory',
      ),
      bulkDensity_kg_m3: sourced(
        { loose: 413, packed: 460 },
        'estimated',
        'crushed, settled: about 10 % above loose whole',
        'dried fruit (loose: whole; packed: crushed); loose Ahmadi et al., J. Agric. Sci. 1(1), physical properties of fennel seed (abstract)',
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
    cut: 'fruit crushed or coarsely ground just before, in a shallow bed',
    provenance: origin('common-practice', 'home stills of 20 to 50 L'),
  },
  composition: sourced(
    [
      ['trans_anethole', 0.67],
      ['fenchone', 0.185],
      ['limonene', 0.055],
      ['alpha_pinene', 0.05],
      ['myrcene', 0.01],
      ['p_cymene', 0.01],
      ['camphene', 0.005],
      ['beta_pinene', 0.005],
      ['sabinene', 0.005],
      ['gamma_terpinene', 0.005],
    ],
    'estimated',
    'bitter type within Ph. Eur. limits, closed to 1',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: { home: handbookMinutes(120, 240), field: handbookMinutes(240, 600) },
  release: {
    ...estimatedRelease({
      hydrocarbon: { readyShare: [0.6, 0.4, 0.75], heldRate_1_min: [0.016, 0.006, 0.03] },
      oxygenate: { readyShare: [0.6, 0.4, 0.75], heldRate_1_min: [0.016, 0.006, 0.03] },
      sesquiterpene: { readyShare: [0.6, 0.4, 0.75], heldRate_1_min: [0.016, 0.006, 0.03] },
      takeUp: [0.5, 0.2, 1],
      why: 'coriander at 15 and 120 min and fennel in water at 120 min; low rate from cumin and from 18 h of probably whole fennel; take-up of a bed rich in oil',
    }),
    curves: ['cumin-seed', 'cumin-hours'],
    note: 'cumin stands in for fennel',
  },
  hydrolysis: [],
};
