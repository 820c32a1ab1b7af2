/** Plants of the reader's own as files and the device hold them, in SI, and what has to be right of one. */
import * as z from 'zod/mini';
import { constituents, constituentById, liquidDensity } from '../fluids/constituents.ts';
import { botanicals, type Botanical, type BotanicalState } from '../library/index.ts';
import { neverDistilled } from '../library/look-alikes.ts';
import { between } from './field.ts';
import { isObject } from './json.ts';
import { LONGEST_PLANT_NAME } from './own-name.ts';

/** The first version knew no plants gathered wild. */
export const OWN_PLANTS_VERSION = 2;
const OLDEST_VERSION = 1;
/** More plants in a file than anybody grows. */
export const MOST_OWN_PLANTS = 200;
const MOST_CONSTITUENTS = 12;
const MOST_LOOK_ALIKES = 12;
const LONGEST_TEXT = 400;

const amount = (unit: string, title: string, description: string, min: number, max: number) =>
  between({ min, max }).check(z.meta({ title, description, unit }));

const words = (title: string, description: string) =>
  z
    ._default(z.string().check(z.maxLength(LONGEST_TEXT)), '')
    .check(z.meta({ title, description: `${description} May be left empty.` }));

export const OWN_LIMITS = {
  moisture: [0, 0.95],
  oil_m3_kg: [1e-8, 0.3e-3],
  packing_kg_m3: [20, 900],
  homeRun_s: [300, 86400],
  plants_per_m2: [0.01, 1000],
  harvest_kg_m2: [0.001, 20],
} as const;

const range = (unit: string, title: string, description: string, [min, max]: readonly [number, number]) =>
  z
    ._default(z.nullable(z.tuple([between({ min, max }), between({ min, max })])), null)
    .check(z.meta({ title, description, unit }));

const yields = (title: string) =>
  amount('m³/kg', title, 'Oil from a kilogram of plant as charged.', ...OWN_LIMITS.oil_m3_kg);

const state = z.strictObject({
  moisture: amount('1', 'Moisture', 'Water as a share of the charged weight.', ...OWN_LIMITS.moisture),
  oil_m3_kg: z.strictObject({ low: yields('Oil, least'), typical: yields('Oil, usually'), high: yields('Oil, most') }),
  packing_kg_m3: amount('kg/m³', 'Packing', 'Plant as charged in a volume of still.', ...OWN_LIMITS.packing_kg_m3),
});

export const PLANT_KINDS = ['flower', 'leaf', 'herb', 'seed', 'berry', 'bud', 'peel', 'needle', 'wood'] as const;
const LOOK_ALIKE_SEVERITIES = ['deadly', 'harmful', 'quality'] as const;

const text = (title: string, most: number) =>
  z.string().check(z.minLength(1), z.maxLength(most), z.meta({ title, description: `At most ${most} letters.` }));

const ownPlantSchema = z.strictObject({
  name: text('Name', LONGEST_PLANT_NAME),
  latinName: words('Latin name', 'Genus and species.'),
  kind: z.enum(PLANT_KINDS).check(z.meta({ title: 'Part of the plant', description: 'What of it is distilled.' })),
  like: z
    .enum(botanicals.map(({ id }) => id) as [string, ...string[]])
    .check(
      z.meta({
        title: 'Gives up its oil like',
        description: 'Plant of the library whose release, pieces and heat are taken over.',
      }),
    ),
  part: words('What to cut', 'Part of the plant that goes into the still.'),
  stage: words('When in its growth', 'Stage at which it is cut.'),
  season: words('Season', 'Months of the cut.'),
  hour: words('Hour', 'Time of day of the cut.'),
  wilting: words('Wilting', 'How long it wilts or dries.'),
  cutting: words('Before charging', 'How it is cut or crushed.'),
  hydrosol: words('Hydrosol', 'What its water is like.'),
  quality: words('Quality', 'What makes a good oil.'),
  whoAvoids: words('Who should avoid it', 'People and animals for whom it is not.'),
  otherWay: words('Other ways than steam', 'How else its oil is won.'),
  source: words('Where the figures come from', 'Book, weighing or person.'),
  wild: z
    ._default(z.boolean(), false)
    .check(z.meta({ title: 'Gathered wild', description: 'Whether it is gathered where it grows by itself.' })),
  identifiedBy: words('Who identified it', 'Name of a person who knows a plant gathered wild for certain.'),
  states: z.strictObject({ fresh: z.optional(state), dry: z.optional(state) }),
  composition: z
    .array(
      z.strictObject({
        constituent: z.enum(constituents.map(({ id }) => id) as [string, ...string[]]),
        share: amount('1', 'Share', 'By weight of the oil; all add up to one.', 0, 1),
      }),
    )
    .check(z.minLength(1), z.maxLength(MOST_CONSTITUENTS)),
  homeRun_s: range('s', 'Run at home', 'Shortest and longest, where known.', OWN_LIMITS.homeRun_s),
  plants_per_m2: range('1/m²', 'Plants on an area', 'Fewest and most.', OWN_LIMITS.plants_per_m2),
  harvest_kg_m2: range('kg/m²', 'Harvest of a year', 'Least and most, as charged.', OWN_LIMITS.harvest_kg_m2),
  lookAlikes: z
    ._default(
      z
        .array(
          z.strictObject({
            plant: text('Look-alike', 100),
            tellApart: z.string().check(z.maxLength(LONGEST_TEXT)),
            severity: z.enum(LOOK_ALIKE_SEVERITIES),
          }),
        )
        .check(z.maxLength(MOST_LOOK_ALIKES)),
      [],
    )
    .check(z.meta({ title: 'Look-alikes', description: 'Plants that it may be mistaken for.' })),
});

export const ownPlantsSchema = z.strictObject({
  plants: z.array(ownPlantSchema).check(z.maxLength(MOST_OWN_PLANTS)),
  version: z.literal([OLDEST_VERSION, OWN_PLANTS_VERSION]),
});

export type OwnPlant = z.output<typeof ownPlantSchema>;
export type OwnPlantState = z.output<typeof state>;

export const ownPlantsJsonSchema = (): Record<string, unknown> => z.toJSONSchema(ownPlantsSchema, { io: 'input' });

/** Fields that are a range, each of which may be left open. */
const OWN_RANGES = ['homeRun_s', 'plants_per_m2', 'harvest_kg_m2'] as const;
export type OwnPlantRange = (typeof OWN_RANGES)[number];

export type OwnPlantProblem =
  | { readonly kind: 'not-a-file-of-plants' }
  | { readonly kind: 'other-version'; readonly version: number }
  /** A field that cannot be read, by its path in the file. */
  | { readonly kind: 'bad-field'; readonly path: string }
  | { readonly kind: 'no-name' }
  | { readonly kind: 'name-taken'; readonly name: string }
  /** Gathered wild, and nobody has put a name to it. */
  | { readonly kind: 'not-identified'; readonly name: string }
  | { readonly kind: 'never-distil'; readonly name: string; readonly plants: string; readonly why: string }
  | { readonly kind: 'no-state'; readonly name: string }
  | { readonly kind: 'yields-out-of-order'; readonly name: string; readonly state: 'fresh' | 'dry' }
  | { readonly kind: 'range-out-of-order'; readonly name: string; readonly field: OwnPlantRange }
  | { readonly kind: 'shares-not-whole'; readonly name: string; readonly sum: number }
  | { readonly kind: 'constituent-twice'; readonly name: string; readonly constituent: string }
  | {
      readonly kind: 'packed-too-tight';
      readonly name: string;
      readonly state: 'fresh' | 'dry';
      readonly most_kg_m3: number;
    }
  | { readonly kind: 'too-much-oil'; readonly name: string; readonly state: 'fresh' | 'dry' };

/** Shares that were typed to a tenth of a percent. */
const WHOLE_WITHIN = 1e-3;
/** Most oil in the dry plant, and least room for steam, that a charge may have. */
const MOST_OIL_kg_kg = 0.3;
const LEAST_VOID = 0.2;
const ROOM_K = 293.15;

/** Whatever state of a plant there is, the wanted one first. */
export const stateOf = ({ states }: Botanical, wanted: 'fresh' | 'dry'): BotanicalState =>
  (states[wanted] ?? states.fresh ?? states.dry) as BotanicalState;

/** kg/m³ at 20 °C, volumes added. */
export const ownOilDensity = ({ composition }: Pick<OwnPlant, 'composition'>): number => {
  const mass = composition.reduce((sum, { share }) => sum + share, 0);
  return (
    mass /
    composition.reduce(
      (sum, { constituent, share }) => sum + share / liquidDensity(constituentById(constituent), ROOM_K),
      0,
    )
  );
};

/** What is wrong with a plant whose fields are each in order. */
export function ownPlantProblems(plant: OwnPlant): readonly OwnPlantProblem[] {
  const { name } = plant;
  const found: OwnPlantProblem[] = [];
  if (name.trim() === '') found.push({ kind: 'no-name' });
  if (botanicals.some((row) => row.name.value.toLowerCase() === name.trim().toLowerCase()))
    found.push({ kind: 'name-taken', name });
  const never = neverDistilled(`${name} ${plant.latinName}`);
  if (never) found.push({ kind: 'never-distil', name, plants: never.plants, why: never.why });
  if (plant.wild && plant.identifiedBy.trim() === '') found.push({ kind: 'not-identified', name });
  const like = botanicals.find(({ id }) => id === plant.like) as Botanical;
  const states = (['fresh', 'dry'] as const).flatMap((id) => {
    const of = plant.states[id];
    return of ? [{ id, of }] : [];
  });
  if (states.length === 0) found.push({ kind: 'no-state', name });
  for (const { id, of } of states) {
    const { low, typical, high } = of.oil_m3_kg;
    if (low > typical || typical > high) found.push({ kind: 'yields-out-of-order', name, state: id });
    if ((high * ownOilDensity(plant)) / (1 - of.moisture) > MOST_OIL_kg_kg)
      found.push({ kind: 'too-much-oil', name, state: id });
    const most_kg_m3 = (1 - LEAST_VOID) * stateOf(like, id).particleDensity_kg_m3.value;
    if (of.packing_kg_m3 > most_kg_m3) found.push({ kind: 'packed-too-tight', name, state: id, most_kg_m3 });
  }
  for (const key of OWN_RANGES) {
    const of = plant[key];
    if (of && of[0] > of[1]) found.push({ kind: 'range-out-of-order', name, field: key });
  }
  const sum = plant.composition.reduce((whole, { share }) => whole + share, 0);
  if (Math.abs(sum - 1) > WHOLE_WITHIN) found.push({ kind: 'shares-not-whole', name, sum });
  const seen = new Set<string>();
  for (const { constituent } of plant.composition) {
    if (seen.has(constituent)) found.push({ kind: 'constituent-twice', name, constituent });
    seen.add(constituent);
  }
  return found;
}

export type ReadOwnPlants =
  | { readonly ok: true; readonly plants: readonly OwnPlant[] }
  | { readonly ok: false; readonly problems: readonly OwnPlantProblem[] };

/** Reads a file of plants: all of it, or what is wrong with it. */
export function readOwnPlants(input: unknown): ReadOwnPlants {
  const refused = (...problems: OwnPlantProblem[]): ReadOwnPlants => ({ ok: false, problems });
  if (!isObject(input) || !Array.isArray(input['plants'])) return refused({ kind: 'not-a-file-of-plants' });
  const { version } = input;
  if (typeof version === 'number' && (version < OLDEST_VERSION || version > OWN_PLANTS_VERSION))
    return refused({ kind: 'other-version', version });
  const read = ownPlantsSchema.safeParse(input);
  if (!read.success)
    return refused(
      ...read.error.issues.map(({ path }): OwnPlantProblem => ({
        kind: 'bad-field',
        path: path.map(String).join('.'),
      })),
    );
  const { plants } = read.data;
  const problems = plants.flatMap(ownPlantProblems);
  const names = new Set<string>();
  for (const { name } of plants) {
    const plain = name.trim().toLowerCase();
    if (names.has(plain)) problems.push({ kind: 'name-taken', name });
    names.add(plain);
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, plants };
}
