/** Finds what a reader asks for in plain words: relations, oil constituents and plants, best first. */
import type { Correlation } from '../correlation.ts';
import { constituents, type Constituent } from '../fluids/constituents.ts';
import { botanicals } from '../library/botanicals.ts';
import type { Botanical } from '../library/types.ts';
import { distance } from './closest-words.ts';
import { correlations } from './entries.ts';

export type ReferenceItem =
  | { readonly kind: 'relation'; readonly id: string; readonly entry: Correlation }
  | { readonly kind: 'constituent'; readonly id: string; readonly constituent: Constituent }
  | { readonly kind: 'plant'; readonly id: string; readonly plant: Botanical };

/** Words that say nothing of what is asked for. */
const IDLE = new Set(
  'a an and are at by can do does for from how i in is it its many me much my of on or the there to what when which with'.split(
    ' ',
  ),
);

/** Words for one thing; the first finds what the others name. */
const ALIKE: readonly (readonly string[])[] = [
  ['coil', 'tube', 'winding', 'worm'],
  ['steam', 'vapour', 'vapor'],
  ['velocity', 'speed', 'fast'],
  ['length', 'long'],
  ['inside', 'within'],
  ['boiling', 'saturation', 'boil'],
  ['condensing', 'condensation', 'condense'],
  ['condensate', 'distillate'],
  ['altitude', 'elevation', 'height'],
  ['density', 'weight', 'heavy', 'mass'],
  ['convection', 'cooling', 'loss'],
  ['loss', 'lost'],
  ['friction', 'pressure drop'],
  ['conductance', 'conductivity'],
  ['separator', 'separation', 'decanter', 'settling'],
  ['solubility', 'dissolve', 'dissolved'],
  ['cineole', 'eucalyptol'],
];

/** What the sheet of a constituent or a plant tells. */
const CONSTITUENT_VALUES =
  'molar mass melting boiling critical temperature flash point partition coefficient surface tension provenance';
const PLANT_VALUES = 'moisture oil content packing bulk density composition release minutes cautions provenance';

const SHORTEST_STEM = 4;

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/gu, '')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');

/** Some words of an item and how much they count. */
interface Field {
  readonly words: readonly string[];
  readonly weight: number;
}

interface Indexed {
  readonly item: ReferenceItem;
  readonly fields: readonly Field[];
  /** What it is called. */
  readonly title: readonly string[];
  /** What tells equals apart: the plainer and shorter comes first. */
  readonly handicap: number;
}

const field = (text: string, weight: number): Field => ({ words: wordsOf(text), weight });

const ofRelation = (entry: Correlation): Indexed => ({
  item: { kind: 'relation', id: entry.name, entry },
  fields: [
    field(entry.name, 3),
    field(entry.says, 4),
    ...Object.values(entry.arguments).map(({ says }) => field(says, 1)),
    field(entry.source, 1),
  ],
  title: wordsOf(entry.name),
  handicap:
    0.02 * Object.keys(entry.arguments).length +
    0.01 * wordsOf(entry.says).length +
    (entry.role === 'alternative' ? 0.3 : 0),
});

const ofConstituent = (constituent: Constituent): Indexed => ({
  item: { kind: 'constituent', id: constituent.id, constituent },
  fields: [
    field(constituent.name, 5),
    field([constituent.cas, ...constituent.otherCas, constituent.formula].join(' '), 3),
    field(`${constituent.family} oil constituent`, 1),
    field(CONSTITUENT_VALUES, 0.5),
  ],
  title: wordsOf(constituent.name),
  handicap: 0,
});

const ofPlant = (plant: Botanical): Indexed => ({
  item: { kind: 'plant', id: plant.id, plant },
  fields: [
    field(`${plant.name.value} ${plant.latinName.value}`, 5),
    field(`${plant.part.value} ${plant.kind} plant`, 1),
    field(PLANT_VALUES, 0.5),
  ],
  title: wordsOf(plant.name.value),
  handicap: 0,
});

const indexed: readonly Indexed[] = [
  ...correlations.map(ofRelation),
  ...constituents.map(ofConstituent),
  ...botanicals.map(ofPlant),
];

/** How well a word answers a wanted one, 0–1. */
function likeness(wanted: string, word: string): number {
  if (word === wanted) return 1;
  if (wanted.length >= 3 && word.startsWith(wanted)) return 0.8;
  return word.length >= SHORTEST_STEM && wanted.startsWith(word) ? 0.7 : 0;
}

const ALIKE_COUNTS = 0.6;

const allWords: readonly string[] = [...new Set(indexed.flatMap(({ fields }) => fields.flatMap(({ words }) => words)))];

/** How well each word that is used anywhere answers the wanted one or one that means the same; others are left out. */
type Answers = ReadonlyMap<string, number>;

function answersTo(wanted: string): Answers {
  const alike = ALIKE.filter((group) => group.some((word) => likeness(wanted, word) >= 0.8)).flat();
  const answers = new Map<string, number>();
  for (const word of allWords) {
    const best = alike.reduce(
      (so, other) => Math.max(so, ALIKE_COUNTS * likeness(other, word)),
      likeness(wanted, word),
    );
    if (best > 0) answers.set(word, best);
  }
  return answers;
}

/** By the heaviest field in which the word stands; zero where it stands in none. */
const weightIn = (answers: Answers, { fields }: Indexed): number =>
  fields.reduce(
    (best, { words, weight }) => words.reduce((so, word) => Math.max(so, weight * (answers.get(word) ?? 0)), best),
    0,
  );

/** Share of what an item is called that was asked for. */
const titleShare = (wanted: readonly Answers[], { title }: Indexed): number =>
  title.filter((word) => wanted.some((answers) => answers.has(word))).length / title.length;

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** Share of what was asked, rare words counting more, that an answer must speak of. */
const LEAST_SPOKEN = 0.6;
/** Answers less than this part as good as the best are left out. */
const LEAST_OF_BEST = 0.55;
export const MOST_FOUND = 40;

function ranked(words: readonly string[]): readonly ReferenceItem[] {
  const wanted = words.map(answersTo);
  const weights = wanted.map((answers) => indexed.map((entry) => weightIn(answers, entry)));
  const rarity = weights.map((row) => Math.log(1 + indexed.length / (1 + row.filter((weight) => weight > 0).length)));
  const asked = sum(rarity);
  const answers = indexed
    .map((entry, index) => {
      const here = weights.map((row) => row[index] as number);
      const spoken = sum(rarity.map((rare, word) => ((here[word] as number) > 0 ? rare : 0)));
      const score = sum(rarity.map((rare, word) => rare * (here[word] as number))) / asked;
      return {
        item: entry.item,
        score: score + titleShare(wanted, entry) - entry.handicap,
        isAnswer: spoken >= LEAST_SPOKEN * asked,
      };
    })
    .filter(({ isAnswer }) => isAnswer)
    .sort((a, b) => b.score - a.score);
  const least = LEAST_OF_BEST * (answers[0]?.score ?? 0);
  return answers
    .filter(({ score }) => score >= least)
    .slice(0, MOST_FOUND)
    .map(({ item }) => item);
}

const vocabulary = [...ALIKE.flat(), ...allWords].filter((word) => word.length >= SHORTEST_STEM);

const sharedStart = (a: string, b: string): number => {
  let length = 0;
  while (length < a.length && a[length] === b[length]) length += 1;
  return length;
};

/** A word that nothing speaks of, as it was probably meant; itself where nothing is near. */
function respelt(word: string): string {
  if (word.length < SHORTEST_STEM || vocabulary.some((known) => likeness(word, known) > 0)) return word;
  const far = word.length > 6 ? 2 : 1;
  const near = vocabulary
    .map((known) => ({ known, away: distance(word, known) }))
    .filter(({ away }) => away <= far)
    .sort((a, b) => a.away - b.away || sharedStart(word, b.known) - sharedStart(word, a.known));
  return near[0]?.known ?? word;
}

export interface SearchAnswer {
  readonly items: readonly ReferenceItem[];
  /** The words as they were read, where they were read otherwise than typed. */
  readonly readAs: string | null;
}

/** What speaks of the words typed, best first; nothing for no words. */
export function searchReference(typed: string): SearchAnswer {
  const words = [...new Set(wordsOf(typed))].filter((word) => !IDLE.has(word));
  if (words.length === 0) return { items: [], readAs: null };
  const items = ranked(words);
  if (items.length > 0) return { items, readAs: null };
  const meant = words.map(respelt);
  return meant.every((word, index) => word === words[index])
    ? { items: [], readAs: null }
    : { items: ranked(meant), readAs: meant.join(' ') };
}
