/**
 * A still from a few answers: what is not answered is assumed by rules of a workshop, stated here (common practice, no
 * source), and told as an assumption.
 */
import { circleArea, cylinderDiameter } from '../../geometry/cylinder.ts';
import { findBotanical, findHeatSource, findSeparator, findTube, type HeatSource } from '../../library/index.ts';
import { chargeFromBotanical, condenserFromTube, heatFromSource, separatorFromVessel } from '../../scenario/presets.ts';
import { readScenario } from '../../scenario/read-scenario.ts';
import type { Problem } from '../../scenario/problem.ts';
import type { INLET_KINDS } from '../../scenario/condenser-fields.ts';
import type { Scenario, ScenarioInput } from '../../scenario/scenario.ts';

export interface PlanValues {
  /** Id of a plant of the library. */
  readonly plant: string;
  readonly plant_kg: number;
  readonly pot_m3: number;
  /** Id of a heat source of the library. */
  readonly heatSource: string;
  readonly heat_W: number;
  readonly tub_m3: number;
  readonly tap_K: number;
  readonly waterRuns: boolean;
  readonly hose: (typeof INLET_KINDS)[number];
  readonly altitude_m: number;
  /** Id of a tube of the library. */
  readonly tube: string;
}

export type PlanQuestion = keyof PlanValues;
export type PlanAnswers = { readonly [Q in PlanQuestion]?: PlanValues[Q] | undefined };

export const PLAN_QUESTIONS: readonly PlanQuestion[] = [
  'plant',
  'plant_kg',
  'pot_m3',
  'heatSource',
  'heat_W',
  'tub_m3',
  'tap_K',
  'waterRuns',
  'hose',
  'altitude_m',
  'tube',
];

export interface PlannedStill {
  readonly scenario: Scenario;
  readonly used: PlanValues;
  /** Questions without an answer. */
  readonly assumed: readonly PlanQuestion[];
  /** More plant was asked for than the pot holds. */
  readonly plantCut: boolean;
  /** The fire is turned down after the first drop, or the pot would run dry. */
  readonly turnedDown: boolean;
}

export type Planned =
  { readonly ok: true; readonly plan: PlannedStill } | { readonly ok: false; readonly problems: readonly Problem[] };

const USUAL = {
  plant: 'lavender-true',
  pot_m3: 0.03,
  heatSource: 'electric-plate',
  tub_m3: 0.06,
  tap_K: 288.15,
  waterRuns: true,
  hose: 'laid',
  altitude_m: 100,
  tube: 'en-1057-12x1',
} as const;

/** Shares of the pot's height: water, grid, and the room for the plant over it. */
const WATER = 0.28;
const GRID = 0.32;
const BED = 0.55;
/** Share of the bed that is filled where no weight is given. */
const FILLED = 0.8;
/** Steam faster than this in the neck is avoided, m/s; bores that tubes have, m. */
const NECK_SPEED = 10;
const NECK_BORES = [0.015, 0.02, 0.025, 0.032, 0.04, 0.05, 0.065, 0.08] as const;
/** Of water at its boil, for first sizes only. */
const LATENT_J_kg = 2.257e6;
const STEAM_kg_m3 = 0.598;
const HEAT_CAPACITY = 4186;
/** Share of the pot's water that a run may take. */
const TAKEN = 0.7;
/** Rise of the cooling water for which the tap is set, K. */
const RISE = 30;
/** Coil against its tub. */
const COIL_SHARE = 0.7;
const LEAST_PITCH = 0.03;
const WALL = 0.02;
/** Length before it is sized. */
const FIRST_LENGTH = 5;
const ROOM_K = 293.15;
const BOIL_K = 373.15;
const LONGEST_RUN = 6 * 3600;

/** As wide as high. */
const cubeDiameter = (volume_m3: number): number => Math.cbrt((4 * volume_m3) / Math.PI);

const neckBore = (power_W: number): number => {
  const area = power_W / LATENT_J_kg / STEAM_kg_m3 / NECK_SPEED;
  const bore = cylinderDiameter(area, 1);
  return NECK_BORES.find((each) => each >= bore) ?? bore;
};

const powerOf = (source: HeatSource): number => source.ratedPower_W.value.typical;

export function planStill(answers: PlanAnswers): Planned {
  const plant = findBotanical(answers.plant ?? USUAL.plant);
  const source = findHeatSource(answers.heatSource ?? USUAL.heatSource);
  const pot_m3 = answers.pot_m3 ?? USUAL.pot_m3;
  const pot = cubeDiameter(pot_m3);
  const charge = chargeFromBotanical(plant.id, plant.defaultCharge.state);
  const mostPlant = (charge.bulkDensity_kg_m3 ?? 0) * circleArea(pot) * BED * pot;
  const wantedPlant = answers.plant_kg ?? FILLED * mostPlant;
  const used: PlanValues = {
    plant: plant.id,
    plant_kg: Number(Math.min(wantedPlant, mostPlant).toPrecision(3)),
    pot_m3,
    heatSource: source.id,
    heat_W: answers.heat_W ?? powerOf(source),
    tub_m3: answers.tub_m3 ?? USUAL.tub_m3,
    tap_K: answers.tap_K ?? USUAL.tap_K,
    waterRuns: answers.waterRuns ?? USUAL.waterRuns,
    hose: answers.hose ?? USUAL.hose,
    altitude_m: answers.altitude_m ?? USUAL.altitude_m,
    tube: answers.tube ?? USUAL.tube,
  };
  const heat = heatFromSource(source.id);
  const potPower = used.heat_W * (heat.shareToPot ?? 1);
  const water_kg = 1000 * circleArea(pot) * WATER * pot;
  const warming = (HEAT_CAPACITY * (water_kg + used.plant_kg) * (BOIL_K - ROOM_K)) / potPower;
  const [, minutes] = plant.distillationMinutes.home.value;
  const distilling = minutes * 60;
  // Most of a boil's heat makes steam; the pot must last.
  const lasting = (TAKEN * water_kg * LATENT_J_kg) / (potPower * distilling);
  const setting = Math.min(1, Math.floor(lasting * 20) / 20);
  const kept = Math.max(setting, 0.05);
  const tub = cubeDiameter(used.tub_m3);
  const tube = findTube(used.tube);
  const coil = Math.max(
    4 * tube.outsideDiameter_m,
    Math.min(COIL_SHARE * tub, tub - tube.outsideDiameter_m - 2 * WALL),
  );
  const flow = used.waterRuns ? Number((potPower / (HEAT_CAPACITY * RISE)).toPrecision(2)) : 0;
  const separator = findSeparator(
    plant.floats.value === 'sinks' ? 'sinking-1000' : pot_m3 > 0.04 ? 'glass-2000' : 'glass-1000',
  );
  const still: ScenarioInput = {
    name: 'My still',
    site: { altitude_m: used.altitude_m, airTemperature_K: ROOM_K },
    heat: {
      ...heat,
      ratedPower_W: used.heat_W,
      setting:
        kept < 1
          ? [
              { at_s: 0, value: 1 },
              { at_s: 0, after: 'first-drop', value: kept },
            ]
          : [{ at_s: 0, value: 1 }],
    },
    pot: {
      layout: 'water-and-steam',
      diameter_m: pot,
      height_m: pot,
      gridHeight_m: GRID * pot,
      water_kg,
      waterTemperature_K: used.tap_K,
    },
    charge: { ...charge, mass_kg: used.plant_kg },
    neck: { bore_m: neckBore(potPower) },
    condenser: {
      kind: 'coil-in-tub',
      ...condenserFromTube(used.tube),
      length_m: FIRST_LENGTH,
      coilDiameter_m: coil,
      coilPitch_m: Math.max(LEAST_PITCH, 2 * tube.outsideDiameter_m),
      coilTopDepth_m: Math.min(0.05, 0.1 * tub),
    },
    cooling: {
      flow_kg_s: [{ at_s: 0, value: flow }],
      tapTemperature_K: [{ at_s: 0, value: used.tap_K }],
      startTemperature_K: used.tap_K,
      tubDiameter_m: tub,
      tubHeight_m: tub,
      inlet: used.hose,
    },
    separator: separatorFromVessel(separator.id),
    run: { duration_s: Math.min(LONGEST_RUN, Math.ceil((warming * 1.3 + distilling) / 600) * 600) },
  };
  const read = readScenario(still);
  if (!read.ok) return { ok: false, problems: read.problems };
  return {
    ok: true,
    plan: {
      scenario: read.scenario,
      used,
      assumed: PLAN_QUESTIONS.filter((question) => answers[question] === undefined),
      plantCut: wantedPlant > mostPlant,
      turnedDown: kept < 1,
    },
  };
}
