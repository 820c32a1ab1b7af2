/** When and how each plant is cut, wilted and prepared, what a garden gives, and how else its oil is won. */
import { sourced, type Sourced } from './provenance.ts';

/** Lowest and highest. */
export type Range = readonly [low: number, high: number];

export interface Garden {
  readonly plants_per_m2: Range | null;
  /** kg of harvest from a square metre in a year. */
  readonly fresh_kg_m2: Range | null;
  readonly dry_kg_m2: Range | null;
}

export interface Harvest {
  readonly stage: Sourced<string>;
  readonly season: Sourced<string>;
  readonly hour: Sourced<string>;
  readonly wilting: Sourced<string>;
  readonly cutting: Sourced<string>;
  /** Share of water once wilted. */
  readonly wiltedMoisture: Range | null;
  readonly garden: Sourced<Garden>;
  /** How else the oil is won, and what steam does instead; not modelled. */
  readonly otherWay: Sourced<string>;
}

export const harvests: Readonly<Record<string, Harvest>> = {
  'lavender-true': {
    stage: sourced(
      '70–80 % of the florets open',
      'read',
      'Agricultural University of Plovdiv, page on the lavender harvest',
    ),
    season: sourced('late June to early August, by altitude', 'memory', 'trade practice'),
    hour: sourced(
      'after the dew, before the heat: sources say 9 to 16 h, or 8 h best and 14 h worst',
      'read',
      'Plovdiv page and a field trial; they differ',
    ),
    wilting: sourced(
      'distil fresh, or lay {10–20 cm} deep in the shade for 12–48 h and turn once',
      'memory',
      'trade practice',
    ),
    cutting: sourced(
      'whole, with at most {15 cm} of stalk; never chopped',
      'read',
      'Agricultural University of Plovdiv, page on the lavender harvest',
    ),
    wiltedMoisture: [0.45, 0.6],
    garden: sourced(
      { plants_per_m2: [2, 3], fresh_kg_m2: [0.3, 0.9], dry_kg_m2: [0.1, 0.3] },
      'read',
      'Plovdiv page, a rich field; a garden gives a third to a half',
      'full crop from the third year',
    ),
    otherWay: sourced(
      'Solvent extraction gives lavender absolute for perfume. Steam gives the oil and a scented water.',
      'memory',
      'trade practice',
    ),
  },
  lavandin: {
    stage: sourced('60–100 % of the flowers wilted', 'memory', 'trade practice'),
    season: sourced('July to August', 'memory', 'trade practice'),
    hour: sourced('as lavender: dry, after the dew', 'memory', 'trade practice'),
    wilting: sourced(
      '1–3 days in the field; dry at {30 °C}, not at {60 °C}, which lost three quarters of the oil',
      'read',
      'drying trial, abstract',
    ),
    cutting: sourced('whole sheaves, or coarsely chopped straight into the closed vessel', 'memory', 'trade practice'),
    wiltedMoisture: [0.35, 0.55],
    garden: sourced(
      { plants_per_m2: [1, 1.5], fresh_kg_m2: [0.4, 1.0], dry_kg_m2: [0.12, 0.3] },
      'memory',
      'field yields of oil per hectare',
    ),
    otherWay: sourced('Steam is the usual way.', 'memory', 'trade practice'),
  },
  rosemary: {
    stage: sourced('in flower or just after', 'memory', 'trade practice'),
    season: sourced('spring and autumn; evergreen', 'memory', 'trade practice'),
    hour: sourced('dry late morning', 'common-practice', 'trade practice'),
    wilting: sourced('0–3 days in the shade; strip the leaves if the twigs are woody', 'memory', 'trade practice'),
    cutting: sourced('twigs of {3–10 cm}, the youngest {20–30 cm} of the shoot', 'memory', 'trade practice'),
    wiltedMoisture: [0.4, 0.55],
    garden: sourced(
      { plants_per_m2: [1.5, 3], fresh_kg_m2: [0.5, 1.5], dry_kg_m2: [0.2, 0.5] },
      'memory',
      'garden books',
    ),
    otherWay: sourced(
      'For the kitchen the leaf is steeped in a fixed oil. That is another product: it holds what steam leaves behind.',
      'memory',
      'trade practice',
    ),
  },
  peppermint: {
    stage: sourced('full bloom', 'read', 'harvest trial, abstract'),
    season: sourced('July to September; a second cut is possible', 'memory', 'trade practice'),
    hour: sourced('late morning to afternoon, dry', 'memory', 'trade practice'),
    wilting: sourced('1–5 days in the row, until 30–50 % is water', 'read', 'harvest trial, abstract'),
    cutting: sourced('whole, or chopped into the vessel at the still', 'memory', 'trade practice'),
    wiltedMoisture: [0.3, 0.5],
    garden: sourced(
      { plants_per_m2: [8, 12], fresh_kg_m2: [1.5, 3.5], dry_kg_m2: [0.3, 0.7] },
      'memory',
      'field yields of oil per hectare',
      'in two cuts',
    ),
    otherWay: sourced('Steam is the usual way.', 'memory', 'trade practice'),
  },
  'thyme-thymol': {
    stage: sourced(
      'start to full flower; one wild stand gave most after flowering',
      'read',
      'naturalised thyme in New Zealand, abstract',
    ),
    season: sourced('May to July; a second cut by early September', 'memory', 'trade practice'),
    hour: sourced('dry, near noon', 'memory', 'trade practice'),
    wilting: sourced('1–3 days in the shade, or dry at {35–40 °C}', 'memory', 'trade practice'),
    cutting: sourced('whole or {2–5 cm} long, cut above the wood', 'memory', 'trade practice'),
    wiltedMoisture: [0.35, 0.5],
    garden: sourced(
      { plants_per_m2: [6, 10], fresh_kg_m2: [0.4, 1.0], dry_kg_m2: [0.11, 0.22] },
      'read',
      'course page that does not name the crop; the text fits',
    ),
    otherWay: sourced('Steam is the usual way.', 'memory', 'trade practice'),
  },
  oregano: {
    stage: sourced('full flower', 'memory', 'trade practice'),
    season: sourced('June to August', 'memory', 'trade practice'),
    hour: sourced('dry, midday', 'memory', 'trade practice'),
    wilting: sourced('dry in the shade, then rub leaf and flower off the stalk', 'memory', 'trade practice'),
    cutting: sourced('whole, cut or rubbed', 'memory', 'trade practice'),
    wiltedMoisture: [0.35, 0.5],
    garden: sourced(
      { plants_per_m2: [6, 8], fresh_kg_m2: [0.6, 2.0], dry_kg_m2: [0.2, 0.6] },
      'memory',
      'garden books',
      'in one or two cuts',
    ),
    otherWay: sourced(
      'For the kitchen the herb is steeped in a fixed oil. That is another product.',
      'memory',
      'trade practice',
    ),
  },
  sage: {
    stage: sourced('before flowering for leaf; thujone is lowest at flowering', 'read', 'Perry et al. 1999, abstract'),
    season: sourced('May to September; thujone is highest in autumn and winter', 'read', 'Perry et al. 1999, abstract'),
    hour: sourced('dry morning', 'common-practice', 'trade practice'),
    wilting: sourced('1–3 days, at {35 °C} at most', 'memory', 'trade practice'),
    cutting: sourced('whole or coarsely cut', 'memory', 'trade practice'),
    wiltedMoisture: [0.45, 0.6],
    garden: sourced(
      { plants_per_m2: [3, 5], fresh_kg_m2: [0.6, 1.6], dry_kg_m2: [0.15, 0.4] },
      'memory',
      'garden books',
    ),
    otherWay: sourced('Steam is the usual way.', 'memory', 'trade practice'),
  },
  'lemon-balm': {
    stage: sourced('bud to first flower; trials disagree', 'read', 'Ayanoglu et al. 2005, abstract'),
    season: sourced('June to September, two or three cuts', 'memory', 'trade practice'),
    hour: sourced(
      'no rule: best at 6 h at one site, at 19 h at another; cool and dry',
      'read',
      'Ayanoglu et al. 2005, abstract',
    ),
    wilting: sourced(
      'a few hours only; leaf dried in the shade held most oil in one trial',
      'read',
      'Ayanoglu et al. 2005, abstract',
    ),
    cutting: sourced('whole; press it down, the load is bulky; distil the same day', 'memory', 'trade practice'),
    wiltedMoisture: [0.55, 0.7],
    garden: sourced(
      { plants_per_m2: [4, 8], fresh_kg_m2: [1.0, 3.0], dry_kg_m2: [0.2, 0.6] },
      'memory',
      'garden books; planting density read in FAO X5043E',
      'in two or three cuts',
    ),
    otherWay: sourced(
      'So little oil comes that its water is the usual product. Return the water to the pot, or keep it.',
      'memory',
      'trade practice',
    ),
  },
  'chamomile-german': {
    stage: sourced('white rays level to just bent back, two thirds of the disc open', 'memory', 'trade practice'),
    season: sourced('May to August, two to four pickings', 'read', 'page on chamomile yields that quotes Heeger'),
    hour: sourced('noon or evening gave 0.18 % of oil, 6 h 0.15 %', 'read', 'harvest trial, abstract'),
    wilting: sourced(
      'dry at once in a thin layer, at {40 °C} at most; five to six and a half parts fresh give one dry',
      'read',
      'page on chamomile yields that quotes Heeger',
    ),
    cutting: sourced('whole heads, with less than {3 cm} of stalk', 'memory', 'trade practice'),
    wiltedMoisture: [0.5, 0.65],
    garden: sourced(
      { plants_per_m2: null, fresh_kg_m2: [0.3, 0.7], dry_kg_m2: [0.05, 0.12] },
      'read',
      'page on chamomile yields that quotes Heeger',
      'flower heads',
    ),
    otherWay: sourced(
      'Flowers steeped in a fixed oil are common. They hold no blue chamazulene, which forms only in the steam.',
      'memory',
      'trade practice',
    ),
  },
  'eucalyptus-globulus': {
    stage: sourced('adult leaf', 'memory', 'trade practice'),
    season: sourced('all year; the warm season is a little richer', 'memory', 'trade practice'),
    hour: sourced('any dry time', 'common-practice', 'trade practice'),
    wilting: sourced('fresh, within three days', 'memory', 'trade practice'),
    cutting: sourced('whole or coarsely chopped; distil at once', 'memory', 'trade practice'),
    wiltedMoisture: [0.35, 0.45],
    garden: sourced(
      { plants_per_m2: [0.1, 0.3], fresh_kg_m2: [1, 3], dry_kg_m2: [0.5, 1.5] },
      'memory',
      'coppice yields, wide',
      'leaf from coppiced trees',
    ),
    otherWay: sourced(
      'Steam is the usual way. The medicine is distilled a second time, which this model does not do.',
      'memory',
      'trade practice',
    ),
  },
  'juniper-berry': {
    stage: sourced('blue-black, in their second or third year', 'memory', 'trade practice'),
    season: sourced('September to November', 'memory', 'trade practice'),
    hour: sourced('a dry day; beat them onto a sheet', 'common-practice', 'trade practice'),
    wilting: sourced('spread for one to three weeks in the cool, safe from mould', 'memory', 'trade practice'),
    cutting: sourced('crush just before charging', 'memory', 'trade practice'),
    wiltedMoisture: [0.2, 0.4],
    garden: sourced(
      { plants_per_m2: [0.1, 0.4], fresh_kg_m2: [0.02, 0.2], dry_kg_m2: [0.01, 0.1] },
      'estimated',
      '0.2 to 1 kg on a grown shrub',
      'protected in some countries: ask first',
    ),
    otherWay: sourced('Steam is the usual way.', 'memory', 'trade practice'),
  },
  'fennel-bitter': {
    stage: sourced('just before full ripeness, umbels brown-green', 'memory', 'trade practice'),
    season: sourced('September to October', 'memory', 'trade practice'),
    hour: sourced('early, damp with dew, so that the seed does not fall', 'common-practice', 'trade practice'),
    wilting: sourced('finish in the swath, then dry below 10 % water', 'memory', 'trade practice'),
    cutting: sourced('crush just before charging', 'memory', 'trade practice'),
    wiltedMoisture: [0.12, 0.2],
    garden: sourced(
      { plants_per_m2: [6, 10], fresh_kg_m2: null, dry_kg_m2: [0.1, 0.2] },
      'memory',
      'field yields',
      'fruit',
    ),
    otherWay: sourced('Steam is the usual way.', 'memory', 'trade practice'),
  },
  caraway: {
    stage: sourced('a third of the umbels brown', 'memory', 'trade practice'),
    season: sourced('June to July of the second year', 'memory', 'trade practice'),
    hour: sourced('early, damp with dew', 'common-practice', 'trade practice'),
    wilting: sourced('dry below 10 % water', 'memory', 'trade practice'),
    cutting: sourced('crush, and distil at once', 'memory', 'trade practice'),
    wiltedMoisture: [0.12, 0.2],
    garden: sourced(
      { plants_per_m2: [30, 60], fresh_kg_m2: null, dry_kg_m2: [0.08, 0.18] },
      'memory',
      'field yields',
      'fruit, in the second year',
    ),
    otherWay: sourced('Steam is the usual way.', 'memory', 'trade practice'),
  },
  'clove-bud': {
    stage: sourced('picked pink and dried; bought dry', 'memory', 'trade practice'),
    season: sourced('not a garden crop where it is cool', 'memory', 'trade practice'),
    hour: sourced('bought', 'common-practice', 'trade practice'),
    wilting: sourced('store whole, crush last', 'memory', 'trade practice'),
    cutting: sourced(
      'whole, or coarsely crushed and mixed with something that keeps it open',
      'memory',
      'trade practice',
    ),
    wiltedMoisture: null,
    garden: sourced({ plants_per_m2: null, fresh_kg_m2: null, dry_kg_m2: null }, 'common-practice', 'bought', 'buy it'),
    otherWay: sourced('Water distillation is usual too, for buds that cake in steam.', 'memory', 'trade practice'),
  },
  'orange-peel': {
    stage: sourced('ripe fruit', 'memory', 'trade practice'),
    season: sourced('winter to spring', 'memory', 'trade practice'),
    hour: sourced('any', 'common-practice', 'trade practice'),
    wilting: sourced(
      'dried to about 55 % water it gave more oil per kilogram charged',
      'read',
      'distillation trial, abstract',
    ),
    cutting: sourced('grate or mince just before charging; fill only half', 'memory', 'trade practice'),
    wiltedMoisture: [0.5, 0.6],
    garden: sourced(
      { plants_per_m2: null, fresh_kg_m2: null, dry_kg_m2: null },
      'memory',
      'peel is 20 to 30 % of the fruit',
      '1 kg of oranges gives 0.2–0.3 kg of peel',
    ),
    otherWay: sourced(
      'Citrus oil is usually pressed cold from the peel. Pressed oil smells fresher, and may burn skin in sunlight; steam leaves behind what does that.',
      'memory',
      'trade practice',
    ),
  },
  'cedarwood-virginia': {
    stage: sourced('red heartwood, any age', 'memory', 'trade practice'),
    season: sourced('any', 'memory', 'trade practice'),
    hour: sourced('any', 'common-practice', 'trade practice'),
    wilting: sourced('green or air-dry', 'memory', 'trade practice'),
    cutting: sourced('chips or sawdust under {10 mm}; sieve out the dust', 'memory', 'trade practice'),
    wiltedMoisture: [0.1, 0.2],
    garden: sourced(
      { plants_per_m2: null, fresh_kg_m2: null, dry_kg_m2: null },
      'estimated',
      'heartwood is 20 to 60 % of a log',
      'by the log',
    ),
    otherWay: sourced('Steam is the usual way. It takes many hours.', 'memory', 'trade practice'),
  },
  'geranium-rose': {
    stage: sourced(
      'before or at first flower; leaf slightly yellow, smell turning from lemon to rose',
      'memory',
      'trade practice',
    ),
    season: sourced(
      'first cut 90–95 days after planting, then every 65–75 days',
      'read',
      'course page of an agricultural institute that does not name the crop; the text fits',
    ),
    hour: sourced(
      'bright and dry, never after rain',
      'read',
      'course page of an agricultural institute that does not name the crop; the text fits',
    ),
    wilting: sourced(
      '4–5 h in the field; up to 8 h without loss',
      'read',
      'course page of an agricultural institute that does not name the crop; the text fits',
    ),
    cutting: sourced('whole leafy shoots of {20–30 cm}', 'memory', 'trade practice'),
    wiltedMoisture: [0.7, 0.8],
    garden: sourced(
      { plants_per_m2: [3, 5], fresh_kg_m2: [1.0, 1.5], dry_kg_m2: [0.15, 0.25] },
      'read',
      'course page of an agricultural institute that does not name the crop; the text fits',
      'in two or three cuts',
    ),
    otherWay: sourced(
      'Steam is the usual way. Returning the water brings more of what dissolves.',
      'memory',
      'trade practice',
    ),
  },
  'scots-pine': {
    stage: sourced('this year’s and last year’s growth', 'memory', 'trade practice'),
    season: sourced('all year: 0.55 % of oil in July, 0.45 % in December', 'read', 'needle trial, abstract'),
    hour: sourced('any', 'common-practice', 'trade practice'),
    wilting: sourced('fresh, within days', 'memory', 'trade practice'),
    cutting: sourced('chop to {1–3 cm} just before charging', 'memory', 'trade practice'),
    wiltedMoisture: [0.4, 0.5],
    garden: sourced(
      { plants_per_m2: null, fresh_kg_m2: [0.3, 1.0], dry_kg_m2: null },
      'estimated',
      'prunings for each square metre of crown',
      'only where cutting is allowed',
    ),
    otherWay: sourced('Steam is the usual way. Turpentine is another oil, from the resin.', 'memory', 'trade practice'),
  },
};
