/** A plant of the reader's own in the shape of the library's rows, so that all that reads those can read it. */
import { tableLiquidDensity } from '../fluids/water-table.ts';
import { constituentById } from '../fluids/constituents.ts';
import { findBotanical, type Band, type Botanical, type BotanicalState, type Sourced } from '../library/index.ts';
import type { Harvest } from '../library/harvests.ts';
import type { LookAlike } from '../library/look-alikes.ts';
import type { BotanicalText } from '../library/types.ts';
import { origin, sourced } from '../library/provenance.ts';
import { ownPlantId } from './own-name.ts';
import { ownOilDensity, stateOf, type OwnPlant, type OwnPlantState } from './own-plants.ts';

const ROOM_K = 293.15;

const own = <T>(value: T, { source }: OwnPlant): Sourced<T> =>
  sourced<T>(value, 'own', source === '' ? 'typed, without a source' : source);

const likeIt = <T>(of: Sourced<T>, like: Botanical): Sourced<T> => ({
  ...of,
  kind: 'assumption',
  source: `taken over from ${like.name.value}`,
});

function stateFrom(of: OwnPlantState, usual: BotanicalState, plant: OwnPlant, like: Botanical): BotanicalState {
  const density = ownOilDensity(plant);
  const dry = 1 - of.moisture;
  const content = (volume: number): number => (volume * density) / dry;
  const particle = usual.particleDensity_kg_m3;
  const room = 1 - of.packing_kg_m3 / particle.value;
  const { low, typical, high } = of.oil_m3_kg;
  return {
    moisture: own<Band>({ low: of.moisture, typical: of.moisture, high: of.moisture }, plant),
    oilContent: own<Band>({ low: content(low), typical: content(typical), high: content(high) }, plant),
    bulkDensity_kg_m3: own({ loose: of.packing_kg_m3, packed: of.packing_kg_m3 }, plant),
    particleDensity_kg_m3: likeIt(particle, like),
    voidFraction: sourced({ loose: room, packed: room }, 'derived', 'one less packing over the density of a piece'),
    particleSize_m: likeIt(usual.particleSize_m, like),
    dryHeatCapacity_J_kgK: likeIt(usual.dryHeatCapacity_J_kgK, like),
    waterHolding: likeIt(usual.waterHolding, like),
  };
}

export function botanicalOfOwn(plant: OwnPlant): Botanical {
  const like = findBotanical(plant.like);
  const { fresh, dry } = plant.states;
  const density = ownOilDensity(plant);
  const state = fresh === undefined ? 'dry' : dry === undefined ? 'fresh' : like.defaultCharge.state;
  const whole = plant.composition.reduce((sum, { share }) => sum + share, 0);
  const minutes = plant.homeRun_s;
  return {
    id: ownPlantId(plant.name),
    name: own(plant.name.trim(), plant),
    latinName: own(plant.latinName, plant),
    kind: plant.kind,
    part: own(plant.part, plant),
    usualState: own(state === 'fresh' ? 'fresh' : 'dried', plant),
    states: {
      ...(fresh === undefined ? {} : { fresh: stateFrom(fresh, stateOf(like, 'fresh'), plant, like) }),
      ...(dry === undefined ? {} : { dry: stateFrom(dry, stateOf(like, 'dry'), plant, like) }),
    },
    defaultCharge: { ...like.defaultCharge, state, cut: plain(plant.cutting), provenance: own('', plant) },
    composition: own(
      plant.composition.map(({ constituent, share }) => ({
        constituent,
        massFraction: share / whole,
        group: constituentById(constituent).group,
      })),
      plant,
    ),
    oilDensity_kg_m3: sourced(density, 'computed', 'ideal mixing of the composition at 20 °C'),
    floats: sourced(density < tableLiquidDensity(ROOM_K) ? 'floats' : 'sinks', 'computed', 'density against water'),
    distillationMinutes: {
      home:
        minutes === null
          ? likeIt(like.distillationMinutes.home, like)
          : own([Math.round(minutes[0] / 60), Math.round(minutes[1] / 60)], plant),
      field: likeIt(like.distillationMinutes.field, like),
    },
    release: { ...like.release, curves: [], note: `taken over from ${like.name.value}` },
    hydrolysis: like.hydrolysis.filter(({ ester }) =>
      plant.composition.some(({ constituent }) => constituent === ester),
    ),
  };
}

/** What a plant page tells in words. */
export interface PlantWords {
  readonly harvest: Harvest | undefined;
  readonly text: BotanicalText | undefined;
  readonly lookAlikes: readonly LookAlike[];
  readonly whoAvoids: Sourced<string>;
}

/** Braces mark quantities in texts of the library; a reader's text has none. */
const plain = (text: string): string => text.replaceAll('{', '(').replaceAll('}', ')');

export function wordsOfOwn(plant: OwnPlant): PlantWords {
  const say = (text: string): Sourced<string> => own(plain(text.trim()), plant);
  const relative = ownOilDensity(plant) / tableLiquidDensity(ROOM_K);
  const rounded = Number(relative.toFixed(3));
  const onlyDry = plant.states.fresh === undefined;
  return {
    harvest: {
      stage: say(plant.stage),
      season: say(plant.season),
      hour: say(plant.hour),
      wilting: say(plant.wilting),
      cutting: say(plant.cutting),
      wiltedMoisture: null,
      garden: own(
        {
          plants_per_m2: plant.plants_per_m2,
          fresh_kg_m2: onlyDry ? null : plant.harvest_kg_m2,
          dry_kg_m2: onlyDry ? plant.harvest_kg_m2 : null,
        },
        plant,
      ),
      otherWay: say(plant.otherWay),
    },
    text: {
      oilSite: say(''),
      preparation: say(plant.cutting),
      tradeMethod: say(''),
      compositionNotes: [],
      publishedRanges: [],
      relativeDensity: sourced({ low: rounded, high: rounded }, 'computed', 'densities of the constituents at 20 °C'),
      qualityNotes: [plant.hydrosol, plant.quality].filter((each) => each.trim() !== '').map(say),
      cautions: [],
    },
    lookAlikes: plant.lookAlikes.map((each) => ({
      ...each,
      tellApart: plain(each.tellApart),
      provenance: origin('own', 'typed by the reader'),
    })),
    whoAvoids: say(plant.whoAvoids),
  };
}

/** A plant of one's own that begins as one of the library. */
export function ownPlantLike(id: string): OwnPlant {
  const like = findBotanical(id);
  const from = (of: BotanicalState | undefined): OwnPlantState | undefined => {
    if (!of) return undefined;
    const dry = 1 - of.moisture.value.typical;
    const volume = (content: number): number => (content * dry) / like.oilDensity_kg_m3.value;
    const { low, typical, high } = of.oilContent.value;
    return {
      moisture: of.moisture.value.typical,
      oil_m3_kg: { low: volume(low), typical: volume(typical), high: volume(high) },
      packing_kg_m3: of.bulkDensity_kg_m3.value[like.defaultCharge.packing],
    };
  };
  const fresh = from(like.states.fresh);
  const dry = from(like.states.dry);
  return {
    name: '',
    latinName: '',
    kind: like.kind,
    like: like.id,
    part: '',
    stage: '',
    season: '',
    hour: '',
    wilting: '',
    cutting: '',
    hydrosol: '',
    quality: '',
    whoAvoids: '',
    otherWay: '',
    source: '',
    wild: false,
    identifiedBy: '',
    states: { ...(fresh ? { fresh } : {}), ...(dry ? { dry } : {}) },
    composition: like.composition.value.map(({ constituent, massFraction }) => ({ constituent, share: massFraction })),
    homeRun_s: null,
    plants_per_m2: null,
    harvest_kg_m2: null,
    lookAlikes: [],
  };
}
