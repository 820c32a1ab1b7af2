import { band, origin, sourced, type BotanicalRow } from '../botanical-row.ts';
import type { Piece } from '../piece-size.ts';
import { woodHeatCapacity } from '../plant-heat.ts';
import { heldRateEstimated, readyShareEstimated, sameRelease } from '../release-rows.ts';

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
  oilSite: sourced('heartwood cells (parenchyma and ray cells; wood oil, no ducts)', 'memory', 'plant anatomy texts'),
  preparation: sourced(
    'chipped or hammer-milled, dust removed to avoid caking',
    'memory',
    'trade practice and pharmacopoeia assay practice',
  ),
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
        'read',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
      ),
    },
    {
      constituent: 'thujopsene',
      low: 0.1,
      high: 0.25,
      provenance: origin(
        'read',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
      ),
    },
    {
      constituent: 'cedrol',
      low: 0.16,
      high: 0.25,
      provenance: origin(
        'read',
        'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
      ),
    },
    { constituent: 'cedrol', low: 0.03, high: 0.14, provenance: origin('memory', 'ISO 4724', 'older limits, unsure') },
  ],
  relativeDensity: sourced(
    { low: 0.941, high: 0.965 },
    'read',
    'Bauer, Garbe, Surburg, Common Fragrance and Flavor Materials, quoted on property pages',
    'may partly solidify at room temperature',
  ),
  floats: sourced('floats', 'derived', 'relative density against 1'),
  distillationMinutes: {
    home: sourced(
      [240, 480],
      'memory',
      'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
      'not checked; small scale means 0.5–5 kg in a home or lab still',
    ),
    field: sourced(
      [360, 1440],
      'memory',
      'general distilling handbooks (Guenther; FAO/UNIDO manuals)',
      'not checked; small scale means 0.5–5 kg in a home or lab still',
    ),
  },
  tradeMethod: sourced('steam under slight pressure, long; some with water', 'memory', 'trade practice'),
  qualityNotes: [
    sourced(
      'Diffusion through wood sets the pace; steam reaches about half the oil; 30 % more by CO2.',
      'read',
      'USDA ARS news 17 June 1999, cedarwood oil (Eller & King)',
    ),
    sourced(
      'Low steam pressure (under 10 psi) and hammer-milling gave better and more oil from western juniper.',
      'read',
      'Kurth & Ross, Oregon Forest Products Lab. Rep. C-3, 1954 (summary), western juniper wood',
    ),
    sourced('Cedrol (m.p. 86 °C) crystallises in the condenser when rich: keep it warm.', 'memory', 'handbook'),
  ],
  cautions: [
    sourced(
      'Generally low hazard; skin irritation when old; pregnancy caution in aromatherapy texts.',
      'memory',
      'Tisserand & Young',
    ),
  ],
  release: {
    ...sameRelease(
      readyShareEstimated(0.15, 0.05, 0.3, 'only the faces of the chips lie open'),
      heldRateEstimated(0.005, 0.0015, 0.012, 'vetiver roots 0.001 to 0.005 per minute; wood runs of 6 to 24 h'),
    ),
    curves: [],
    note: 'no curve found; steam reaches about half of the oil in the wood, and the oil content here is what steam gives',
  },
  hydrolysis: [],
};
