/**
 * How strong an oil may be in a product for adults, by place of use. A figure stands here only where its source was read
 * or where it is plainly a rule of the trade; where all that is known is a figure that nobody here has read, the entry
 * says that a limit exists and where to look it up.
 */
import { origin, sourced, type Provenance, type Sourced } from './provenance.ts';

export const USES = ['body', 'face', 'small-area', 'bath', 'cleaning', 'diffuser'] as const;
export type Use = (typeof USES)[number];

/** Share of the product by volume; `null` where the limit has to be looked up. */
export interface OilLimit {
  readonly body: number | null;
  readonly face: number | null;
  readonly provenance: Provenance;
}

const general = origin('common-practice', 'rule of the trade for leave-on products, adults with healthy skin');
const lookUp = (where: string): Provenance => origin('memory', where);

const limit = (body: number | null, face: number | null, provenance: Provenance = general): OilLimit => ({
  body,
  face,
  provenance,
});

export const oilLimits: Readonly<Record<string, OilLimit>> = {
  'lavender-true': limit(0.02, 0.01),
  lavandin: limit(0.02, 0.01),
  rosemary: limit(0.02, 0.005),
  peppermint: limit(0.02, 0.005),
  'thyme-thymol': limit(null, null, lookUp('reference books on the safety of essential oils, thyme rich in thymol')),
  oregano: limit(null, null, lookUp('reference books on the safety of essential oils, oregano')),
  sage: limit(null, null, lookUp('reference books on the safety of essential oils, for thujone')),
  'lemon-balm': limit(null, null, lookUp('the current IFRA Standards, melissa oil and citral')),
  'chamomile-german': limit(0.01, 0.005),
  'eucalyptus-globulus': limit(0.02, 0.005),
  'juniper-berry': limit(0.01, 0.005),
  'fennel-bitter': limit(
    0.01,
    0.001,
    origin(
      'derived',
      'IFRA Standards, Amendment 49 (2020), estragole: 0.075 % on the body, 0.0062 % on the face, at 6 % estragole in the oil',
      'rounded down; later amendments exist',
    ),
  ),
  caraway: limit(0.01, 0.005),
  'clove-bud': limit(null, null, lookUp('the current IFRA Standards, eugenol and methyl eugenol')),
  'orange-peel': limit(0.02, 0.01),
  'cedarwood-virginia': limit(0.02, 0.01),
  'geranium-rose': limit(0.02, 0.01),
  'scots-pine': limit(0.01, 0.005),
};

/** An oil of which nothing is known. */
export const unknownLimit: OilLimit = limit(null, null, lookUp('reference books and the current IFRA Standards'));

/** What is usual in all, by place of use, for all oils of a product together. */
export const usualLevels: Readonly<
  Record<'body' | 'face' | 'small-area' | 'cleaning', Sourced<readonly [number, number]>>
> = {
  body: sourced([0.01, 0.02], 'common-practice', 'rule of the trade'),
  face: sourced([0.002, 0.01], 'common-practice', 'rule of the trade'),
  'small-area': sourced([0.02, 0.03], 'common-practice', 'rule of the trade, a few days'),
  cleaning: sourced([0.002, 0.01], 'common-practice', 'rule of the trade'),
};

/** Limits for single constituents in a product, by share. */
export interface ConstituentLimit {
  readonly constituent: string;
  readonly name: string;
  readonly body: number;
  readonly face: number;
  readonly smallArea: number;
  readonly provenance: Provenance;
}

const amendment49 = origin(
  'read',
  'IFRA Standards, Amendment 49 (2020), copy of the standard',
  'later amendments exist',
);

export const constituentLimits: readonly ConstituentLimit[] = [
  {
    constituent: 'citronellal',
    name: 'citronellal',
    body: 0.0033,
    face: 0.00051,
    smallArea: 0.0049,
    provenance: amendment49,
  },
  {
    constituent: 'estragole',
    name: 'estragole',
    body: 0.00075,
    face: 0.000062,
    smallArea: 0.0042,
    provenance: amendment49,
  },
  {
    constituent: 'methyl_eugenol',
    name: 'methyl eugenol',
    body: 0.00002,
    face: 0.0000058,
    smallArea: 0.00016,
    provenance: amendment49,
  },
];

/** What oils hold of constituents that the library's compositions leave out, by weight. */
export const traces: Readonly<
  Record<string, readonly { readonly constituent: string; readonly share: number; readonly provenance: Provenance }[]>
> = {
  'fennel-bitter': [
    { constituent: 'estragole', share: 0.06, provenance: origin('memory', 'usual content of bitter fennel oil') },
  ],
  'clove-bud': [
    { constituent: 'methyl_eugenol', share: 0.002, provenance: origin('memory', 'usual content of clove bud oil') },
  ],
};

/** From which share in a product an allergen must be named on its label, EU. */
export const allergenLabel = {
  leaveOn: 0.00001,
  rinseOff: 0.0001,
  provenance: origin(
    'read',
    'Commission Regulation (EU) 2023/1545: new products from 31 July 2026, all from 31 July 2028',
  ),
} as const;

/** Constituents that are on the list of allergens. */
export const listedAllergens: ReadonlySet<string> = new Set([
  ...['linalool', 'limonene', 'citral', 'geraniol', 'citronellol', 'eugenol', 'trans_anethole', 'camphor', 'carvone'],
  ...['beta_caryophyllene', 'linalyl_acetate', 'menthol', 'alpha_terpineol', 'alpha_pinene', 'beta_pinene'],
  ...['eugenyl_acetate', 'alpha_santalol'],
]);

/** Oils that are themselves on that list. */
export const listedOils: ReadonlySet<string> = new Set([
  ...['lavender-true', 'lavandin', 'peppermint', 'eucalyptus-globulus', 'clove-bud', 'orange-peel'],
  ...['cedarwood-virginia', 'geranium-rose'],
]);

/** Who should leave an oil alone. */
export const whoAvoids: Readonly<Record<string, string>> = {
  'lavender-true': 'Nobody should use it old and oxidised.',
  lavandin: 'Not near small children, and not with epilepsy: it holds camphor.',
  rosemary: 'Not near children, in pregnancy, or with epilepsy: it holds camphor and cineole.',
  peppermint: 'Never near the face of a child: it can close the throat. Not with G6PD deficiency.',
  'thyme-thymol': 'Not under 18, not on broken skin or mucous membranes. It burns.',
  oregano: 'Not for children, not in pregnancy, not on broken skin. It burns.',
  sage: 'Not in pregnancy, while breast-feeding, with epilepsy, for children, or in a diffuser: thujone causes fits.',
  'lemon-balm': 'Not on sensitised skin.',
  'chamomile-german': 'Not with an allergy to daisies and their kin.',
  'eucalyptus-globulus':
    'Never near the nose of a small child. Not with asthma. A few millilitres swallowed have killed.',
  'juniper-berry': 'Not with kidney disease or in pregnancy. Never old and oxidised.',
  'fennel-bitter': 'Not in pregnancy, for small children, or with a disease that oestrogen feeds.',
  caraway: 'Not on sensitised skin.',
  'clove-bud': 'Not for children, not on mucous membranes or damaged skin. It burns.',
  'orange-peel': 'Never old and oxidised: it then sensitises the skin.',
  'cedarwood-virginia': 'Not old oil.',
  'geranium-rose': 'Not on sensitised skin.',
  'scots-pine': 'Not with asthma. Never old and oxidised: it then sensitises the skin.',
};
export const whoAvoidsProvenance = origin('memory', 'texts on the safety of essential oils and herbal monographs');
