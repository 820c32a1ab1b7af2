/** Plants that can be mistaken for those of the library, the deadly ones first, and plants that never go into a still. */
import { origin, type Provenance } from './provenance.ts';

export const SEVERITIES = ['deadly', 'harmful', 'quality'] as const;
export type Severity = (typeof SEVERITIES)[number];

export interface LookAlike {
  readonly plant: string;
  readonly tellApart: string;
  readonly severity: Severity;
  readonly provenance: Provenance;
}

const guides = origin('memory', 'guides to poisonous plants');
const botany = origin('memory', 'general botany');

const deadly = (plant: string, tellApart: string, provenance = guides): LookAlike => ({
  plant,
  tellApart,
  severity: 'deadly',
  provenance,
});
const harmful = (plant: string, tellApart: string, provenance = guides): LookAlike => ({
  plant,
  tellApart,
  severity: 'harmful',
  provenance,
});
const quality = (plant: string, tellApart: string, provenance = botany): LookAlike => ({
  plant,
  tellApart,
  severity: 'quality',
  provenance,
});

const ragwort = harmful(
  'ragwort and groundsel (Jacobaea, Senecio) as weeds among the crop',
  'Yellow daisy heads and lobed leaves. Pull them out before you cut. Their liver poison stays in the spent plant and in any tea.',
);
const yewTwigs = (tellApart: string): LookAlike => deadly('yew (Taxus baccata)', tellApart);
const umbels = origin('read', 'account of a forager, and lists of poisonous umbels', 'partly from memory');

/** By the plant that is meant. */
export const lookAlikes: Readonly<Record<string, readonly LookAlike[]>> = {
  'lavender-true': [
    ragwort,
    quality(
      'French lavender (Lavandula stoechas), lavandin, spike lavender',
      'French lavender has a tuft of coloured bracts on top. Lavandin and spike lavender are taller, with branched stalks. Their oil is rich in camphor: another product, not a poison.',
    ),
  ],
  lavandin: [
    ragwort,
    quality('true lavender (Lavandula angustifolia)', 'Shorter, without side branches. Label the plant that you cut.'),
  ],
  rosemary: [
    yewTwigs('Flat, soft needles in two rows, and no smell when rubbed. Look for it in mixed hedge cuttings.'),
    harmful(
      'bog rosemary (Andromeda polifolia)',
      'Grows in bogs. Leathery leaf, white beneath, pink bells, no smell of rosemary. Poisonous.',
    ),
    harmful(
      'Labrador tea, also called wild rosemary (Rhododendron tomentosum)',
      'Rusty felt under the leaf and a heady smell. Poisonous.',
    ),
  ],
  peppermint: [
    deadly(
      'pennyroyal (Mentha pulegium)',
      'A small creeping mint with whorls of flowers along the stalk and a harsh smell. Its oil is a liver poison that has killed in spoonfuls.',
    ),
    harmful(
      'dog’s mercury (Mercurialis perennis)',
      'Grows at the edge of woods. Green flowers and no smell of mint. Poisonous.',
    ),
  ],
  'thyme-thymol': [
    ragwort,
    quality(
      'lemon thyme, caraway thyme, wild thymes',
      'They smell of lemon, caraway or flowers: other oils, rich in geraniol, linalool or carvone.',
    ),
  ],
  oregano: [
    ragwort,
    quality(
      'common marjoram (Origanum vulgare subsp. vulgare), marjoram',
      'They look alike. The leaf of the right plant bites the tongue; the others give little carvacrol.',
    ),
  ],
  sage: [
    deadly(
      'foxglove (Digitalis purpurea) in its first year',
      'A rosette of larger, soft, grey-green leaves with a winged stalk and net veins. No smell when rubbed. A heart poison.',
    ),
    harmful('comfrey and borage leaves', 'Bristly, without the smell of sage. They hold a liver poison.'),
  ],
  'lemon-balm': [
    quality('dead-nettles, catmint, motherwort', 'Rub a leaf: only lemon balm smells of lemon.'),
    quality('stinging nettle', 'It stings.'),
  ],
  'chamomile-german': [
    harmful(
      'stinking mayweed (Anthemis cotula)',
      'It stinks, and its solid flower cone bears scales. Many people become allergic to it.',
      origin('read', 'guide to telling mayweeds apart', 'the allergy from memory'),
    ),
    ragwort,
    quality(
      'scentless mayweed, corn chamomile',
      'Cut a head in half: true chamomile has a hollow cone, and it smells of apple.',
      origin('read', 'guide to telling mayweeds apart'),
    ),
  ],
  'eucalyptus-globulus': [
    deadly(
      'oleander and mountain laurel in hedges (Nerium, Kalmia)',
      'No smell of camphor when rubbed. Oleander bleeds a sticky sap. Heart poisons.',
    ),
    quality('other eucalypts', 'Some smell of lemon or mint: other oils. Rub and smell.'),
  ],
  'juniper-berry': [
    deadly(
      'savin (Juniperus sabina) and ornamental junipers',
      'Scale leaves instead of sharp needles in threes, a foul smell, nodding cones with one to three seeds. Savin oil is poisonous and ends pregnancies. Young shoots of savin may have needles too.',
    ),
    yewTwigs('Single flat, soft needles, and a seed in an open red cup.'),
  ],
  'fennel-bitter': [
    deadly(
      'hemlock (Conium maculatum)',
      'Smooth stem with purple blotches, white flowers, a smell of mice. Dry and brown, the stalks look like fennel.',
      umbels,
    ),
    deadly(
      'hemlock water-dropwort, cowbane, fool’s parsley',
      'Never gather wild umbels for the still. A smell is no proof.',
      umbels,
    ),
    harmful(
      'wild parsnip, giant hogweed',
      'Leaves that are not threadlike, no smell of aniseed. In sunlight the sap burns the skin.',
    ),
  ],
  caraway: [
    deadly(
      'hemlock, fool’s parsley, cowbane',
      'Use only seed that you sowed or bought under its name. A smell is no proof.',
      umbels,
    ),
  ],
  'clove-bud': [
    quality(
      'clove stems and buds whose oil is already taken',
      'Sold as filler. A good bud floats upright in water, stem down.',
      origin('memory', 'trade practice'),
    ),
  ],
  'orange-peel': [
    quality(
      'treated or waxed fruit, bitter oranges',
      'Use untreated fruit: washing takes off only part of wax and fungicide.',
      origin('memory', 'trade practice'),
    ),
  ],
  'cedarwood-virginia': [
    deadly('yew wood (Taxus)', 'Orange-red heart without the smell of pencils.'),
    harmful('thuja and Lawson cypress wood', 'Another smell. Thuja oil is poisonous.'),
    harmful('treated timber, painted pencil slats', 'Never distil them.', origin('memory', 'workshop safety')),
  ],
  'geranium-rose': [
    deadly(
      'monkshood and larkspur (Aconitum, Delphinium), taken for cranesbill',
      'Deeply cut leaf like a hand, without smell. A poison for heart and nerves, also through the skin.',
    ),
    quality('zonal and ivy pelargoniums, cranesbills', 'They do not smell of roses and hold little oil.'),
  ],
  'scots-pine': [
    yewTwigs('Single flat, soft needles, no smell of resin, red seed cups.'),
    quality(
      'other pines, spruce, fir',
      'Scots pine has blue-green, twisted needles in pairs, {4–7 cm} long. The others give other oils and are no poison.',
    ),
  ],
};

export interface NeverDistil {
  readonly plants: string;
  /** Genera and species that are meant, in small letters. */
  readonly latin: readonly string[];
  readonly why: string;
}

/** Plants that never go into a still, and why. */
export const neverDistil: readonly NeverDistil[] = [
  {
    plants: 'yew, oleander, hemlock, foxglove, monkshood, any umbel without a name',
    latin: ['taxus', 'nerium', 'conium', 'digitalis', 'aconitum', 'oenanthe', 'cicuta', 'aethusa'],
    why: 'Deadly to handle, and in the water and the spent plant.',
  },
  { plants: 'pennyroyal', latin: ['mentha pulegium'], why: 'Its oil is a liver poison that has killed.' },
  {
    plants: 'savin, thuja, tansy, wormwood, mugwort',
    latin: ['juniperus sabina', 'thuja', 'tanacetum vulgare', 'artemisia absinthium', 'artemisia vulgaris'],
    why: 'Their oils cause fits and end pregnancies.',
  },
  {
    plants: 'wintergreen, sweet birch',
    latin: ['gaultheria', 'betula lenta'],
    why: 'The oil is almost pure methyl salicylate: a teaspoon can kill a child.',
  },
  {
    plants: 'bitter almond, peach, apricot and cherry laurel: stones or leaves',
    latin: ['prunus'],
    why: 'Hydrogen cyanide comes over with the steam.',
  },
  {
    plants: 'mustard, horseradish',
    latin: ['sinapis', 'brassica nigra', 'armoracia'],
    why: 'The vapour blinds and chokes.',
  },
  {
    plants: 'camphor wood, boldo',
    latin: ['cinnamomum camphora', 'peumus'],
    why: 'Camphor and ascaridole cause fits; ascaridole can explode when heated.',
  },
  {
    plants: 'sassafras, calamus',
    latin: ['acorus'],
    why: 'Their oils are suspected of causing cancer, and sassafras falls under drug laws.',
  },
  { plants: 'rue, giant hogweed', latin: ['ruta graveolens', 'heracleum'], why: 'They burn the skin in sunlight.' },
  {
    plants: 'treated or painted wood, birch tar, mouldy plants',
    latin: [],
    why: 'Preservatives, tar and mould poisons come over or stay in the water.',
  },
];
export const neverDistilProvenance = origin('memory', 'texts on toxicology and on the safety of essential oils');

/** Names within a line of the list, such as `sweet birch`; its last words may say what of a plant is meant. */
const namesIn = ({ plants, latin }: NeverDistil): readonly string[] => [
  ...(plants.split(':')[0] ?? '').split(/, | and /u).filter((name) => !/^any |^treated|^mouldy/u.test(name)),
  ...latin,
];

/** The line of the list on which a plant stands by its name or Latin name, if on any. */
export const neverDistilled = (name: string): NeverDistil | undefined =>
  neverDistil.find((line) => namesIn(line).some((each) => new RegExp(`\\b${each}\\b`, 'iu').test(name)));
