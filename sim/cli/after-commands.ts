/** `limbeck plant`, `quantity`, `bottle`, `dilute` and `blend`: what comes before and after the still. */
import {
  amountsOf,
  botanicals,
  BOTTLE_SIZES_m3,
  DROPS_RANGE_per_mL,
  drying,
  fading,
  FILL_RANGE,
  FILTER_KINDS,
  filmOfOils,
  flashPoint,
  freezesAt,
  hydrosolLife,
  judgeDilution,
  keeping,
  oilDensity,
  oilFrom,
  leftToBottle,
  planBottles,
  plantFor,
  quantityQuestion,
  standing,
  SURFACES,
  USES,
  USUAL_CHAMBER_FILL,
  USUAL_DROPS_per_mL,
  USUAL_FILL,
  USUAL_LOSS,
  USUAL_SURFACES,
  WATER_DROPS_m,
  yieldOf,
  dilutionMessages,
  libraryText,
  type Botanical,
} from '../index.ts';
import { botanicalTexts, harvests, lookAlikes, neverDistil, whoAvoids } from '../library-texts.ts';
import { closestWords } from '../reference/closest-words.ts';
import { BadInput } from './bad-input.ts';
import {
  isSet,
  listOf,
  numberIn,
  numberOf,
  onlyWord,
  readerOf,
  readWords,
  textOf,
  UNITS,
  wholeNumberOf,
  type Words,
} from './options.ts';
import { toJson } from './print.ts';

const MILLILITRE_m3 = 1e-6;
const ROOM_K = 293.15;
const ZERO_K = 273.15;

function plantNamed(id: string): Botanical {
  const ids = botanicals.map((each) => each.id);
  const found = botanicals.find((each) => each.id === id);
  if (found) return found;
  throw new BadInput([
    `“${id}” is not a plant of the library; did you mean ${closestWords(id, ids, 1).join()}? There are ${ids.join(', ')}.`,
    ...neverDistil.map(({ plants, why }) => `Never distil ${plants}: ${why}`),
  ]);
}

const compositionOf = (plant: Botanical) =>
  plant.composition.value.map(({ constituent, massFraction }) => ({ constituent, share: massFraction }));

/** Oil from a kilogram as charged, mL/kg. */
function oil_mL_kg(plant: Botanical, state: 'fresh' | 'dry') {
  const found = yieldOf(plant, state);
  if (found === null) return null;
  const { low, typical, high } = found;
  return { low: low / MILLILITRE_m3, typical: typical / MILLILITRE_m3, high: high / MILLILITRE_m3 };
}

export function plantCommand(args: readonly string[]): string {
  const words = readWords(args, UNITS);
  const plant = plantNamed(onlyWord(words, 'plant'));
  const reader = readerOf(words);
  const composition = compositionOf(plant);
  const written = (text: string): string => libraryText(text, reader);
  const harvest = harvests[plant.id];
  const freezes = freezesAt(composition);
  return toJson({
    id: plant.id,
    name: plant.name.value,
    latinName: plant.latinName.value,
    lookAlikes: (lookAlikes[plant.id] ?? []).map(({ severity, plant: other, tellApart, provenance }) => ({
      severity,
      plant: other,
      tellApart: written(tellApart),
      provenance,
    })),
    whoAvoids: whoAvoids[plant.id],
    part: written(plant.part.value),
    stage: written(harvest?.stage.value ?? ''),
    season: written(harvest?.season.value ?? ''),
    hour: written(harvest?.hour.value ?? ''),
    wilting: written(harvest?.wilting.value ?? ''),
    cutting: written(harvest?.cutting.value ?? ''),
    otherWay: written(harvest?.otherWay.value ?? ''),
    oil_mL_kg: { fresh: oil_mL_kg(plant, 'fresh'), dry: oil_mL_kg(plant, 'dry') },
    homeRun_min: plant.distillationMinutes.home.value,
    oil: plant.floats.value,
    freezes_C: freezes === null ? null : freezes - ZERO_K,
    flash_C: flashPoint(composition) - ZERO_K,
    garden: harvest?.garden ?? null,
    cautions: (botanicalTexts[plant.id]?.cautions ?? []).map(({ value }) => written(value)),
  });
}

export function quantityCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...UNITS,
    oil: { type: 'string' },
    harvest: { type: 'string' },
    state: { type: 'string' },
    chamber: { type: 'string' },
    fill: { type: 'string' },
    loss: { type: 'string' },
    'batches-a-day': { type: 'string' },
  });
  const plant = plantNamed(onlyWord(words, 'plant'));
  const state = textOf(words, 'state') ?? plant.defaultCharge.state;
  if (state !== 'fresh' && state !== 'dry')
    throw new BadInput(`--state: “${state}” is not allowed; there are fresh, dry.`);
  const oil_mL = numberOf(words, 'oil', 0.01, 1e6, 'mL');
  const harvest_kg = numberOf(words, 'harvest', 0.001, 1e6, 'kg');
  if ((oil_mL === undefined) === (harvest_kg === undefined))
    throw new BadInput('Give either --oil mL, what is wanted, or --harvest kg, what there is.');
  const question = quantityQuestion(plant, state, harvests[plant.id]?.garden.value, {
    loss: numberOf(words, 'loss', 0, 0.5, '1') ?? USUAL_LOSS,
    chamber_m3: (numberOf(words, 'chamber', 0.1, 10000, 'L') ?? 20) / 1000,
    fill: numberOf(words, 'fill', 0.1, 1, '1') ?? USUAL_CHAMBER_FILL,
    batchesADay: wholeNumberOf(words, 'batches-a-day', 1, 24) ?? 2,
  });
  if (question === null) throw new BadInput(`--state: nothing is known of ${plant.id} ${state}.`);
  return toJson({
    plant: plant.id,
    state,
    ...(oil_mL === undefined ? oilFrom(harvest_kg ?? 0, question) : plantFor(oil_mL * MILLILITRE_m3, question)),
  });
}

export function bottleCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...UNITS,
    oil: { type: 'string' },
    bottle: { type: 'string' },
    fill: { type: 'string' },
    height: { type: 'string' },
    'kept-at': { type: 'string' },
    'opened-often': { type: 'boolean' },
    filter: { type: 'string' },
    dried: { type: 'boolean' },
  });
  const plant = plantNamed(onlyWord(words, 'plant'));
  const composition = compositionOf(plant);
  const oil_m3 = (numberOf(words, 'oil', 0.1, 1e5, 'mL') ?? 30) * MILLILITRE_m3;
  const size_m3 = (numberOf(words, 'bottle', 1, 5000, 'mL') ?? 10) * MILLILITRE_m3;
  const fill = numberOf(words, 'fill', 0.25, FILL_RANGE[1], '1') ?? USUAL_FILL;
  const height_m = (numberOf(words, 'height', 5, 500, 'mm') ?? 50) / 1000;
  const kept_K = (numberOf(words, 'kept-at', -18, 40, '°C') ?? 15) + ZERO_K;
  const filter = FILTER_KINDS.find((known) => known === (textOf(words, 'filter') ?? 'none'));
  if (filter === undefined)
    throw new BadInput(
      `--filter: “${textOf(words, 'filter') ?? ''}” is not a filter; there are ${FILTER_KINDS.join(', ')}.`,
    );
  const settle = standing(composition, 298.15, height_m);
  const dry = drying(composition, oil_m3, 298.15);
  const left = leftToBottle(oil_m3, filter, isSet(words, 'dried') ? dry : null);
  return toJson({
    plant: plant.id,
    ...left,
    bottles: planBottles(left.left_m3, size_m3, fill, kept_K),
    commonSizes_mL: BOTTLE_SIZES_m3.map((size) => Math.round(size / MILLILITRE_m3)),
    standing: {
      waterSinks: settle.waterSinks,
      drops: WATER_DROPS_m.map((drop_m, at) => ({ drop_m, time_s: settle.times_s[at] })),
    },
    drying: dry,
    keeping: keeping(plant.id, kept_K, isSet(words, 'opened-often')),
    hydrosol: { clean_s: hydrosolLife('clean', kept_K), kitchen_s: hydrosolLife('kitchen', kept_K) },
  });
}

/** `plant=parts`, as many as are given. */
function oilsOf(words: Words): readonly { readonly plant: Botanical; readonly parts: number }[] {
  const given = listOf(words, 'oil');
  if (given.length === 0) throw new BadInput('At least one --oil plant=parts is needed.');
  return given.map((text) => {
    const [id = '', parts] = text.split('=');
    return { plant: plantNamed(id), parts: parts === undefined ? 1 : numberIn(parts, `--oil ${id}`, 0, 1e6, '1') };
  });
}

export function diluteCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...UNITS,
    oil: { type: 'string', multiple: true },
    strength: { type: 'string' },
    product: { type: 'string' },
    use: { type: 'string' },
    drops: { type: 'string' },
  });
  const oils = oilsOf(words);
  const use = USES.find((known) => known === (textOf(words, 'use') ?? 'body'));
  if (use === undefined)
    throw new BadInput(`--use: “${textOf(words, 'use') ?? ''}” is not a use; there are ${USES.join(', ')}.`);
  const strength = (numberOf(words, 'strength', 0.01, 100, '%') ?? 2) / 100;
  const product_m3 = (numberOf(words, 'product', 1, 5000, 'mL') ?? 30) * MILLILITRE_m3;
  const drops =
    numberOf(words, 'drops', DROPS_RANGE_per_mL[0] / 2, DROPS_RANGE_per_mL[1] * 2, '1') ?? USUAL_DROPS_per_mL;
  const whole = oils.reduce((sum, { parts }) => sum + parts, 0);
  if (!(whole > 0)) throw new BadInput('The parts of the oils add to nothing.');
  const shares = oils.map(({ parts }) => (strength * parts) / whole);
  const verdict = judgeDilution(
    oils.map(({ plant }, i) => ({
      botanical: plant.id,
      composition: compositionOf(plant),
      share: shares[i] as number,
    })),
    use,
  );
  const messages = dilutionMessages(readerOf(words));
  return toJson({
    use,
    lead: messages.lead(verdict, use),
    oils: oils.map(({ plant }, i) => ({
      plant: plant.id,
      share: shares[i],
      ...amountsOf(shares[i] as number, product_m3, drops, oilDensity(compositionOf(plant), ROOM_K)),
    })),
    findings: verdict.findings.map((finding) => ({ ...finding, sentence: messages.finding(finding) })),
    allergens: messages.allergens(verdict),
    cautions: [...messages.forUse(use), ...messages.always],
  });
}

export function blendCommand(args: readonly string[]): string {
  const words = readWords(args, {
    ...UNITS,
    oil: { type: 'string', multiple: true },
    carrier: { type: 'string' },
    surface: { type: 'string' },
    temperature: { type: 'string' },
    coefficient: { type: 'string' },
    real: { type: 'boolean' },
    until: { type: 'string' },
  });
  const oils = oilsOf(words);
  const kind = SURFACES.find((known) => known === (textOf(words, 'surface') ?? 'paper'));
  if (kind === undefined)
    throw new BadInput(
      `--surface: “${textOf(words, 'surface') ?? ''}” is not a surface; there are ${SURFACES.join(', ')}.`,
    );
  const usual = USUAL_SURFACES[kind];
  const celsius = numberOf(words, 'temperature', 5, 40, '°C');
  const surface = {
    ...usual,
    temperature_K: celsius === undefined ? usual.temperature_K : celsius + ZERO_K,
    coefficient_m_s: numberOf(words, 'coefficient', 1e-4, 2e-2, 'm/s') ?? usual.coefficient_m_s,
  };
  const carrier = (numberOf(words, 'carrier', 0, 99.99, '%') ?? 0) / 100;
  const film = filmOfOils(
    oils.map(({ plant, parts }) => ({ composition: compositionOf(plant), parts })),
    1 - carrier,
    surface,
  );
  if (film === null) throw new BadInput('The parts of the oils add to nothing.');
  const { fade: found, summary } = fading(film, isSet(words, 'real'), numberOf(words, 'until', 60, 1e8, 's'));
  const count = film.ids.length;
  return toJson({
    surface: kind,
    oils: oils.map(({ plant, parts }) => ({ plant: plant.id, parts })),
    ...summary,
    times: Array.from(found.times_s, (time_s, k) => ({
      time_s,
      left: found.leftShare[k],
      leaving_kg_m2_s: Object.fromEntries(film.ids.map((id, i) => [id, found.leaving_kg_m2_s[k * count + i]])),
    })),
  });
}
