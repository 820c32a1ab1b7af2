/**
 * Published distillation curves: oil gained against time, as printed. Times are in minutes and yields in the
 * source's own unit; only the shape matters for the release parameters.
 */
import type { Provenance } from './provenance.ts';

/**
 * Which law a curve can bear.
 * `two-pool`: ready oil leaves at a fast rate, held oil at a slow one.
 * `emptied-pool`: the ready oil had gone before the first point, so only its share can be found.
 * `first-order`: one rate for all the oil.
 */
export type ReleaseLaw = 'two-pool' | 'emptied-pool' | 'first-order';

export interface PublishedCurve {
  readonly id: string;
  readonly plant: string;
  readonly how: string;
  /** Minutes from the first drop (or as the source counts) and cumulative yield. */
  readonly points: readonly (readonly [minutes: number, yielded: number])[];
  /** What the yields are measured in. */
  readonly unit: string;
  readonly law: ReleaseLaw;
  /** Final yield where the source gives or implies it; otherwise it is fitted. */
  readonly finalYield?: number;
  readonly provenance: Provenance;
}

const dryHerb = '% of dry herb';
const ofFinal = 'share of the final yield';

const cumulative = (
  minutes: readonly number[],
  fractions: readonly number[],
  areaPercent?: readonly (readonly number[])[],
): [number, number][] => {
  let sum = 0;
  return minutes.map((time, index) => {
    const area = areaPercent ? areaPercent.reduce((total, row) => total + (row[index] ?? 0), 0) / 100 : 1;
    sum += (fractions[index] ?? 0) * area;
    return [time, sum];
  });
};

const juniperSource =
  'Semerdjieva, Shiwakoti, Cantrell, Zheljazkov, Astatkie, Schlegel and Radoukova, Molecules 24 (2019) 986, doi 10.3390/molecules24050986, tables of yield and composition';
const juniperHow =
  'dried needles ground with the water just before the run; water distillation, 0.1 kg in 1.2 L; fractions drawn off';
const juniperClosure =
  'interrupted collection recovered less than the uninterrupted control; the shape is used, not the level';
const areaNote = 'fraction yield times peak-area share, area taken as mass';

/** Fractions of the three needle oils: end of each fraction in minutes, yield in % of dry herb, peak areas in %. */
export const juniperTables = {
  virginiana: {
    minutes: [5, 10, 20, 40, 80, 160, 240],
    yields: [0.12, 0.07, 0.07, 0.16, 0.2, 0.15, 0.08],
    limonene: [43.2, 34.9, 22.7, 20.7, 18.1, 19.1, 15.6],
    safrole: [20.6, 29.0, 36.5, 36.79, 26.15, 8.94, 1.45],
    methylEugenol: [5.48, 6.28, 9.12, 11.85, 13.97, 9.75, 5.24],
    sesquiterpenes: [13.07, 9.34, 10.11, 11.47, 17.32, 25.84, 35.4],
  },
  excelsa: {
    minutes: [5, 10, 20, 40, 80, 160, 240],
    yields: [0.29, 0.07, 0.08, 0.08, 0.0, 0.01, 0.01],
    alphaPinene: [34.4, 19.7, 11.1, 16.4, 24.7, 24.0, 13.9],
    limonene: [39.2, 35.3, 20.7, 22.1, 22.3, 15.8, 9.0],
    cedrol: [4.9, 30.6, 47.1, 43.8, 53.1, 50.3, 50.5],
  },
  sabina: {
    minutes: [3, 5, 10, 20, 40, 80],
    yields: [0.57, 0.19, 0.19, 0.11, 0.14, 0.22],
    sabinene: [80.1, 41.2, 45.1, 42.4, 33.7, 26.6],
    alphaPinene: [3.67, 1.33, 1.7, 1.69, 1.48, 1.25],
    alphaThujene: [1.75, 0.55, 0.85, 0.93, 0.82, 0.7],
    betaPinene: [4.36, 1.6, 2.38, 2.18, 1.88, 1.45],
  },
} as const;

const { virginiana, excelsa, sabina } = juniperTables;
const juniper = (
  id: string,
  plant: string,
  points: [number, number][],
  law: ReleaseLaw,
  note: string,
): PublishedCurve => ({
  id,
  plant,
  how: juniperHow,
  points,
  unit: dryHerb,
  law,
  provenance: { kind: 'read', source: juniperSource, note },
});

/** A finishing time read as a share of the final yield: one rate, no shape. */
const finishedAt = (
  id: string,
  plant: string,
  how: string,
  minutes: number,
  share: number,
  provenance: Provenance,
): PublishedCurve => ({
  id,
  plant,
  how,
  points: [[minutes, share]],
  unit: ofFinal,
  law: 'first-order',
  finalYield: 1,
  provenance,
});

const assumed95 = 'the source says when the maximum was reached; 95 % of the final yield is assumed at that time';

export const publishedCurves: readonly PublishedCurve[] = [
  juniper(
    'juniperus-virginiana',
    'Juniperus virginiana, all oil',
    cumulative(virginiana.minutes, virginiana.yields),
    'two-pool',
    juniperClosure,
  ),
  juniper(
    'juniperus-virginiana-hydrocarbons',
    'Juniperus virginiana, limonene',
    cumulative(virginiana.minutes, virginiana.yields, [virginiana.limonene]),
    'two-pool',
    areaNote,
  ),
  juniper(
    'juniperus-virginiana-oxygenates',
    'Juniperus virginiana, safrole and methyl eugenol',
    cumulative(virginiana.minutes, virginiana.yields, [virginiana.safrole, virginiana.methylEugenol]),
    'first-order',
    areaNote,
  ),
  juniper(
    'juniperus-virginiana-sesquiterpenes',
    'Juniperus virginiana, sesquiterpenes',
    cumulative(virginiana.minutes, virginiana.yields, [virginiana.sesquiterpenes]),
    'first-order',
    areaNote,
  ),
  juniper(
    'juniperus-excelsa',
    'Juniperus excelsa, all oil',
    cumulative(excelsa.minutes, excelsa.yields),
    'emptied-pool',
    juniperClosure,
  ),
  juniper(
    'juniperus-excelsa-hydrocarbons',
    'Juniperus excelsa, alpha-pinene and limonene',
    cumulative(excelsa.minutes, excelsa.yields, [excelsa.alphaPinene, excelsa.limonene]),
    'emptied-pool',
    areaNote,
  ),
  juniper(
    'juniperus-excelsa-oxygenates',
    'Juniperus excelsa, cedrol',
    cumulative(excelsa.minutes, excelsa.yields, [excelsa.cedrol]),
    'first-order',
    areaNote,
  ),
  juniper(
    'juniperus-sabina',
    'Juniperus sabina, all oil',
    cumulative(sabina.minutes, sabina.yields),
    'two-pool',
    'still rising at the last point, so that the fitted final yield is an extrapolation',
  ),
  {
    ...juniper(
      'juniperus-sabina-final-fixed',
      'Juniperus sabina, all oil',
      cumulative(sabina.minutes, sabina.yields),
      'two-pool',
      'final yield set to 1.6 % by judgement; the run still rose at 1.42 %',
    ),
    finalYield: 1.6,
  },
  juniper(
    'juniperus-sabina-hydrocarbons',
    'Juniperus sabina, sabinene, pinenes and thujene',
    cumulative(sabina.minutes, sabina.yields, [
      sabina.sabinene,
      sabina.alphaPinene,
      sabina.alphaThujene,
      sabina.betaPinene,
    ]),
    'two-pool',
    areaNote,
  ),
  {
    id: 'scots-pine-twigs',
    plant: 'Pinus sylvestris twigs',
    how: 'steam, field still',
    unit: '% of fresh twigs',
    law: 'first-order',
    finalYield: 0.2965,
    points: [
      [180, 0.189],
      [420, 0.289],
    ],
    provenance: {
      kind: 'read',
      source: 'Gildemeister and Hoffmann, The Volatile Oils, 2nd ed.',
      note: 'final yield includes 0.0075 % from cohobation',
    },
  },
  {
    id: 'lavender-dry-flowers',
    plant: 'Lavandula angustifolia, dried flowers',
    how: 'steam, small laboratory unit, steam in excess',
    unit: dryHerb,
    law: 'first-order',
    finalYield: 6.8,
    points: [[1.5, 0.5]],
    provenance: {
      kind: 'read',
      source: 'Zheljazkov, Cantrell, Astatkie and Jeliazkova, J. Oleo Sci. 62 (2013) 195–199, abstract',
      note: 'only the ends of the range: 0.5 % at 1.5 min, 6.8 % from 60 min on',
    },
  },
  {
    id: 'lavender-herb',
    plant: 'Lavandula angustifolia, flowers and herb',
    how: 'steam, laboratory',
    unit: dryHerb,
    law: 'first-order',
    points: [
      [40, 1.0],
      [120, 2.0],
    ],
    provenance: {
      kind: 'read',
      source: 'Wesolowska, Jadczak and Grzeszczuk, Herba Polonica, abstract',
      note: 'two points fix two unknowns; the final yield is an extrapolation',
    },
  },
  finishedAt('lavender-solar', 'Lavandula, whole plant', 'direct steam, 0.8 kg with 1.25 kg/h', 240, 0.9813, {
    kind: 'read',
    source: 'Radwan, Morad, Ali and Wasfy, Energy Reports 6 (2020) 3080–3087, abstract',
    note: '98.13 % extraction efficiency at 4 h',
  }),
  {
    id: 'cornmint',
    plant: 'Mentha canadensis',
    how: 'steam, small laboratory unit, steam in excess',
    unit: dryHerb,
    law: 'first-order',
    finalYield: 1.06,
    points: [[1.25, 0.43]],
    provenance: {
      kind: 'read',
      source: 'Zheljazkov and Astatkie, HortScience 47 (2012) 643–647, abstract',
      note: 'no gain after 10 min; an upper bound for a field still',
    },
  },
  finishedAt('peppermint', 'Mentha x piperita', 'steam, small laboratory unit, steam in excess', 20, 0.95, {
    kind: 'read',
    source: 'Cannon, Cantrell, Astatkie and Zheljazkov, Ind. Crops Prod. 41 (2013) 214–220, abstract',
    note: assumed95,
  }),
  finishedAt('garden-sage', 'Salvia officinalis, dried', 'steam, small laboratory unit, steam in excess', 10, 0.9, {
    kind: 'read',
    source: 'Zheljazkov and others, HortScience 49 (2014) 785, abstract',
    note: '“most” of the oil by 10 min, taken as 90 %',
  }),
  finishedAt('rosemary-ground', 'Salvia rosmarinus, dried and ground', 'steam, 0.3 kg, 0.16 kg/h', 70, 0.95, {
    kind: 'read',
    source:
      'Nguyen Dinh Phuc, Pham Hoang Danh, Trieu Tuan Anh and Thai Huynh Yen Phuong, J. of Science and Technology, Nguyen Tat Thanh University, no. 10 (2020), abstract',
    note: '70 min is the length of the run of best yield, not the time at which the oil was out; 95 % of the final yield is assumed at its end',
  }),
  finishedAt('thymbra', 'Thymbra spicata, whole leaf', 'direct steam, 1.03 kg/h', 75, 0.95, {
    kind: 'read',
    source: 'Hanci and others, Nahrung/Food 47 (2003) 252–255, abstract',
    note: assumed95,
  }),
  finishedAt('tea-tree-fast', 'Melaleuca alternifolia', 'direct steam, small batch still', 120, 0.95, {
    kind: 'read',
    source: 'Johns, Johns and Rudolph, J. Sci. Food Agric. 58 (1992) 49–53, abstract',
    note: 'finished in 2 to 3 h; 95 % assumed',
  }),
  finishedAt('tea-tree-slow', 'Melaleuca alternifolia', 'water distillation against solvent extraction', 120, 0.82, {
    kind: 'read',
    source: 'Baker, Lowe and Southwell, J. Agric. Food Chem. 48 (2000) 4041–4043, abstract',
    note: '82 to 88 % of the extractable oil at 2 h',
  }),
  finishedAt('ponderosa-pine', 'Pinus ponderosa, needles and twigs', 'steam, laboratory', 160, 0.95, {
    kind: 'read',
    source: 'Zheljazkov, Astatkie and Schlegel, HortScience 47 (2012) 785, abstract',
    note: assumed95,
  }),
  finishedAt('cumin-seed', 'Cuminum cyminum', 'steam, laboratory', 480, 0.95, {
    kind: 'read',
    source: 'Zheljazkov, Gawde, Cantrell, Astatkie and Schlegel, PLoS ONE 10 (2015) e0144120, abstract',
    note: assumed95,
  }),
  {
    id: 'cumin-hours',
    plant: 'Cuminum cyminum',
    how: 'steam or water-and-steam, details not seen',
    unit: '% of seed',
    law: 'emptied-pool',
    points: [
      [180, 1.9],
      [300, 2.1],
      [420, 2.23],
    ],
    provenance: {
      kind: 'secondary',
      source: 'Sudibyo 1989, quoted in a thesis of Bogor Agricultural University',
      note: 'three points fix three unknowns',
    },
  },
  finishedAt('chamomile', 'Matricaria chamomilla, dried heads', 'steam, laboratory', 600, 0.95, {
    kind: 'read',
    source: 'Gawde, Cantrell, Zheljazkov, Astatkie and Schlegel, Ind. Crops Prod. 58 (2014), abstract',
    note: 'maximum at 480 to 720 min; 95 % assumed in the middle',
  }),
  finishedAt('petitgrain', 'Citrus aurantium, leaves', 'water distillation', 150, 0.95, {
    kind: 'read',
    source: 'Ellouze and Abderrabba, J. Mater. Environ. Sci. 5 (2014) 841–848, abstract',
    note: `bitter orange; no curve of sweet orange (Citrus sinensis) was found; ${assumed95}`,
  }),
  {
    id: 'lemongrass-flexuosus',
    plant: 'Cymbopogon flexuosus',
    how: 'water distillation, laboratory',
    unit: '% of dry matter',
    law: 'two-pool',
    points: [
      [30, 0.127],
      [60, 0.236],
      [120, 0.414],
      [180, 0.552],
      [240, 0.662],
      [360, 0.828],
    ],
    provenance: {
      kind: 'read',
      source: 'Baou, Bassiloua, Silou and others, Asian J. Res. Chem. 15 (2022) no. 3, abstract',
      note: "points of the authors' Peleg curve y = t/(217.94 + 0.6022 t); their first-order rate disagrees twofold",
    },
  },
  {
    id: 'lemongrass-citratus',
    plant: 'Cymbopogon citratus',
    how: 'water distillation, laboratory',
    unit: '% of dry matter',
    law: 'two-pool',
    points: [
      [30, 0.242],
      [60, 0.432],
      [120, 0.712],
      [180, 0.907],
      [240, 1.052],
      [360, 1.25],
    ],
    provenance: {
      kind: 'read',
      source: 'Baou, Bassiloua, Silou and others, Asian J. Res. Chem. 15 (2022) no. 3, abstract',
      note: "points of the authors' Peleg curve y = t/(108.94 + 0.4971 t); their first-order rate disagrees twofold",
    },
  },
  {
    id: 'patchouli',
    plant: 'Pogostemon cablin, dried',
    how: 'water-and-steam or steam',
    unit: dryHerb,
    law: 'first-order',
    points: [
      [240, 2.28],
      [300, 2.52],
      [360, 2.59],
    ],
    provenance: {
      kind: 'secondary',
      source: 'Setiadji and Tamtarini 2006, quoted in a thesis of Bogor Agricultural University',
    },
  },
];

/** Release rates that authors state without a curve, 1/min. */
export const publishedRates = {
  lavandinRelease: {
    value: 0.072,
    kind: 'read',
    source: 'Cerpa, Mato and Cocero, AIChE J. 54 (2008) 909–917, abstract',
    note: 'first-order exudation from the trichomes of lavandin Super, direct steam in a packed bed',
  },
  lemongrassSteam: {
    value: 0.0451,
    kind: 'read',
    source:
      'Amenaghawon and others, Modelling the kinetics of steam distillation of essential oils from lemon grass, Int. J. Appl. Sci. Eng. 12(2) (2014) 107–115, abstract',
    note: 'unit taken as 1/min',
  },
} as const;
