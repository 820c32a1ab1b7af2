/** What is to be said of each part: its name, its line of live numbers, and what a screen reader hears besides. */
import {
  bedHeight,
  isBundle,
  isCoil,
  englishReader,
  isOwnPlant,
  ownPlantName,
  partLineMessage,
  partMessage,
  partNameMessage,
  spokenPartMessage,
  type PartDetail,
  type PartFacts,
  type PartLine,
  type PartNameKind,
  type Scenario,
  type ScenarioPart,
  type UnitSystem,
} from '../../sim/index.ts';
import type { LabelId } from './geometry/labels.ts';
import type { StillState } from './still-state.ts';

/** The part of the scenario that each label stands for. */
export const SCENARIO_PART: Readonly<Record<LabelId, ScenarioPart>> = {
  heat: 'heat',
  boiler: 'boiler',
  pot: 'pot',
  charge: 'charge',
  neck: 'neck',
  condenser: 'condenser',
  cooling: 'cooling',
  separator: 'separator',
  receiver: 'separator',
};

function nameOf(id: LabelId, { heat, condenser, cooling }: Scenario): PartNameKind {
  switch (id) {
    case 'heat':
      return heat.kind;
    case 'condenser':
      return isCoil(condenser) ? 'coil' : isBundle(condenser) ? 'bundle' : 'condenser';
    case 'cooling':
      if (isCoil(condenser)) return 'tub';
      return cooling.jacketSupply === 'barrel' ? 'barrel' : 'cooling-water';
    case 'receiver':
      return 'hydrosol';
    default:
      return id;
  }
}

/** A front lower than this has not begun to climb. */
const LEAST_FRONT_M = 0.001;
/** A front this far up the bed is through. */
const THROUGH = 0.995;

function chargeLine(scenario: Scenario, state: StillState | null): PartLine {
  const { charge, pot } = scenario;
  const { mass_kg } = charge;
  if (mass_kg === 0) return { kind: 'charge-empty', values: {} };
  if (pot.layout === 'water') return { kind: 'charge-in-water', values: { mass_kg } };
  if (!state || state.frontHeight_m < LEAST_FRONT_M) return { kind: 'charge-on-grid', values: { mass_kg } };
  return state.frontHeight_m >= THROUGH * bedHeight(scenario)
    ? { kind: 'charge-steamed', values: { mass_kg } }
    : { kind: 'charge-steaming', values: { mass_kg, front_m: state.frontHeight_m } };
}

function condenserLine({ condenser }: Scenario, state: StillState | null): PartLine {
  const { length_m, tubes } = condenser;
  if (!state || state.vapour_kg_s <= 0)
    return isBundle(condenser)
      ? { kind: 'tubes', values: { tubes, length_m } }
      : { kind: 'tube', values: { length_m } };
  if (state.alarms.escaping) return { kind: 'tube-too-short', values: { length_m } };
  return { kind: 'condensing', values: { condensing_m: state.condensingLength_m, length_m } };
}

function coolingLine({ cooling, condenser }: Scenario, state: StillState | null): PartLine {
  if (!state) return { kind: 'coolant-start', values: { temperature_K: cooling.startTemperature_K } };
  const { coolantFlow_kg_s: flow_kg_s, coolantIn_K: in_K, coolantOut_K: out_K } = state;
  if (flow_kg_s > 0) return { kind: 'coolant-flow', values: { flow_kg_s, in_K, out_K } };
  return isCoil(condenser)
    ? { kind: 'still-tub', values: { top_K: out_K } }
    : { kind: 'still-coolant', values: { temperature_K: out_K } };
}

const boilingWater = ({ pot }: Scenario, state: StillState | null): PartLine =>
  state
    ? { kind: 'hot-water', values: { water_kg: state.potWater_kg, temperature_K: state.potTemperature_K } }
    : { kind: 'water', values: { water_kg: pot.water_kg } };

/** What the scenario says while no run does. */
function lineOf(id: LabelId, scenario: Scenario, state: StillState | null): PartLine {
  const { ratedPower_W: rated_W } = scenario.heat;
  switch (id) {
    case 'heat':
      return state
        ? { kind: 'power', values: { power_W: state.power_W, rated_W } }
        : { kind: 'rated-power', values: { rated_W } };
    case 'boiler':
      return boilingWater(scenario, state);
    case 'pot':
      if (scenario.pot.layout !== 'steam') return boilingWater(scenario, state);
      return state
        ? { kind: 'lid-temperature', values: { temperature_K: state.vapourTemperature_K } }
        : { kind: 'fed-with-steam', values: {} };
    case 'charge':
      return chargeLine(scenario, state);
    case 'neck':
      return state && state.vapour_kg_s > 0
        ? { kind: 'neck-vapour', values: { temperature_K: state.vapourTemperature_K, speed_m_s: state.neckSpeed_m_s } }
        : { kind: 'neck-length', values: { length_m: scenario.neck.length_m } };
    case 'condenser':
      return condenserLine(scenario, state);
    case 'cooling':
      return coolingLine(scenario, state);
    case 'separator':
      return state && state.oilCollected_kg > 0
        ? { kind: 'oil', values: { oil_kg: state.oilCollected_kg, density_kg_m3: state.oilDensity_kg_m3 } }
        : { kind: 'no-oil', values: {} };
    case 'receiver':
      return state && state.hydrosol_kg > 0
        ? { kind: 'hydrosol', values: { water_kg: state.hydrosol_kg } }
        : { kind: 'receiver-empty', values: {} };
  }
}

/** Whether a part's line tells of a danger that is there now. */
export function partAlarm(id: LabelId, scenario: Scenario, state: StillState | null): boolean {
  if (!state) return false;
  const { alarms } = state;
  if (id === 'condenser') return alarms.escaping;
  const boils = id === (scenario.pot.layout === 'steam' ? 'boiler' : 'pot');
  return boils && (alarms.potLow || alarms.potDry);
}

/** The id of a botanical is its name in plain words; the library itself is too large to fetch for one. */
function plantDetail({ charge: { botanical } }: Scenario): PartDetail {
  if (!isOwnPlant(botanical)) return { kind: 'plant', values: { name: botanical.replaceAll('-', ' ') } };
  const name = ownPlantName(botanical);
  return name === '' ? { kind: 'own-plant', values: {} } : { kind: 'plant', values: { name } };
}

function detailsOf(id: LabelId, scenario: Scenario, state: StillState | null): readonly PartDetail[] {
  if (id === 'charge') return [plantDetail(scenario)];
  if (!state) return [];
  const { alarms } = state;
  const details: PartDetail[] = [];
  if (id === 'boiler' || id === 'pot') {
    if (partAlarm(id, scenario, state)) details.push({ kind: alarms.potDry ? 'dry' : 'water-low', values: {} });
    if (alarms.pressure) details.push({ kind: 'pressure', values: { gauge_Pa: state.potGauge_Pa } });
  }
  if (id === 'condenser' && alarms.escaping) details.push({ kind: 'escaping', values: {} });
  if (id === 'cooling' && alarms.tubHot) details.push({ kind: 'scalding', values: {} });
  if (id === 'separator' && state.cutSize_m > 0) details.push({ kind: 'catches', values: { drop_m: state.cutSize_m } });
  return details;
}

const factsOf = (id: LabelId, scenario: Scenario, state: StillState | null): PartFacts => ({
  name: nameOf(id, scenario),
  line: lineOf(id, scenario, state),
  details: detailsOf(id, scenario, state),
});

export const partName = (id: LabelId, scenario: Scenario): string =>
  partNameMessage(nameOf(id, scenario), englishReader('metric'));

/** The one line of live numbers beside a part. */
export const partLine = (id: LabelId, scenario: Scenario, state: StillState | null, units: UnitSystem): string =>
  partLineMessage(lineOf(id, scenario, state), englishReader(units));

/** Name and state in the very words that are seen, and what else there is to say. */
export const partLabel = (id: LabelId, scenario: Scenario, state: StillState | null, units: UnitSystem): string =>
  partMessage(factsOf(id, scenario, state), englishReader(units));

/** The same with its units in words, for example `Pot, 7.9 litres water, 99 degrees Celsius`. */
export const partSentence = (id: LabelId, scenario: Scenario, state: StillState | null, units: UnitSystem): string =>
  spokenPartMessage(factsOf(id, scenario, state), englishReader(units));
