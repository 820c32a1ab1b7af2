/** What the drawing says: each part's name, its line of live numbers, and the sentence a screen reader hears. */
import {
  type Scenario,
  type ScenarioPart,
  bedHeight,
  isBundle,
  isCoil,
  displayUnit,
  formatNumber,
  formatQuantity,
  THIN_SPACE,
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

const HEAT_NAMES: Readonly<Record<Scenario['heat']['kind'], string>> = {
  'electric-plate': 'Electric plate',
  'immersion-element': 'Heating element',
  induction: 'Induction plate',
  'gas-ring': 'Gas ring',
  'gas-burner': 'Gas burner',
  'wood-fire': 'Wood fire',
  'steam-generator': 'Steam generator',
};

export function partName(id: LabelId, scenario: Scenario): string {
  switch (id) {
    case 'heat':
      return HEAT_NAMES[scenario.heat.kind];
    case 'boiler':
      return 'Boiler';
    case 'pot':
      return 'Pot';
    case 'charge':
      return 'Charge';
    case 'neck':
      return 'Swan neck';
    case 'condenser':
      return isCoil(scenario.condenser) ? 'Coil' : isBundle(scenario.condenser) ? 'Tube bundle' : 'Condenser';
    case 'cooling':
      return isCoil(scenario.condenser)
        ? 'Cooling tub'
        : scenario.cooling.jacketSupply === 'barrel'
          ? 'Cooling barrel'
          : 'Cooling water';
    case 'separator':
      return 'Separator';
    case 'receiver':
      return 'Hydrosol';
  }
}

const temperature = (value: number, units: UnitSystem) => formatQuantity(value, 'K', units, { decimals: 0 });
const water = (value: number, units: UnitSystem) => formatQuantity(value, 'kg', units, { hint: 'water' });
const shortLength = (value: number, units: UnitSystem) => formatQuantity(value, 'm', units, { hint: 'size' });
const run = (value: number, units: UnitSystem) => formatQuantity(value, 'm', units, { hint: 'run', decimals: 1 });

/** In the unit and decimals of a column, so that a number that changes fast keeps its shape. */
const steady = (value: number, unit: string, units: UnitSystem, decimals?: number, hint?: string): string => {
  const shown = displayUnit(unit, units, hint);
  return `${formatNumber(shown.fromSI(value), decimals ?? shown.decimals)}${THIN_SPACE}${shown.label}`;
};

/** An oil by volume where its density is known, else by weight. */
export const oilAmount = (state: StillState, units: UnitSystem): string =>
  state.oilDensity_kg_m3 === null
    ? formatQuantity(state.oilCollected_kg, 'kg', units, { hint: 'oil' })
    : formatQuantity(state.oilCollected_kg, 'kg', units, { density_kg_m3: state.oilDensity_kg_m3 });

/** A front lower than this has not begun to climb. */
const LEAST_FRONT_M = 0.001;

function chargeLine(scenario: Scenario, state: StillState | null, units: UnitSystem): string {
  const { charge, pot } = scenario;
  if (charge.mass_kg === 0) return 'empty';
  const mass = formatQuantity(charge.mass_kg, 'kg', units);
  if (pot.layout === 'water') return `${mass} in the water`;
  if (!state || state.frontHeight_m < LEAST_FRONT_M) return `${mass} on the grid`;
  return state.frontHeight_m >= 0.995 * bedHeight(scenario)
    ? `${mass}, steam through`
    : `${mass}, steam up ${shortLength(state.frontHeight_m, units)}`;
}

function condenserLine(scenario: Scenario, state: StillState | null, units: UnitSystem): string {
  const { condenser } = scenario;
  const whole = run(condenser.length_m, units);
  if (!state || state.vapour_kg_s <= 0)
    return isBundle(condenser) ? `${condenser.tubes} tubes of ${whole}` : `${whole} of tube`;
  if (state.alarms.escaping) return `all ${whole} are not enough`;
  return `condenses in ${run(state.condensingLength_m, units)} of ${whole}`;
}

function coolingLine(scenario: Scenario, state: StillState | null, units: UnitSystem): string {
  const start = scenario.cooling.startTemperature_K;
  if (!state) return temperature(start, units);
  const flow = steady(state.coolantFlow_kg_s, 'kg/s', units, undefined, 'coolantFlow');
  if (state.coolantFlow_kg_s > 0)
    return `${flow}, ${temperature(state.coolantIn_K, units)} to ${temperature(state.coolantOut_K, units)}`;
  return isCoil(scenario.condenser)
    ? `no flow, ${temperature(state.coolantOut_K, units)} at the top`
    : `no flow, ${temperature(state.coolantOut_K, units)}`;
}

/** The one line of live numbers beside a part; what the scenario says while no run does. */
export function partLine(id: LabelId, scenario: Scenario, state: StillState | null, units: UnitSystem): string {
  switch (id) {
    case 'heat':
      return state
        ? `${formatQuantity(state.power_W, 'W', units)} of ${formatQuantity(scenario.heat.ratedPower_W, 'W', units, { hint: 'power' })}`
        : formatQuantity(scenario.heat.ratedPower_W, 'W', units, { hint: 'power' });
    case 'boiler':
      return state
        ? `${water(state.potWater_kg, units)} water, ${temperature(state.potTemperature_K, units)}`
        : `${water(scenario.pot.water_kg, units)} water`;
    case 'pot':
      if (scenario.pot.layout === 'steam')
        return state ? `${temperature(state.vapourTemperature_K, units)} at the lid` : 'fed with steam';
      return state
        ? `${water(state.potWater_kg, units)} water, ${temperature(state.potTemperature_K, units)}`
        : `${water(scenario.pot.water_kg, units)} water`;
    case 'charge':
      return chargeLine(scenario, state, units);
    case 'neck':
      return state && state.vapour_kg_s > 0
        ? `${temperature(state.vapourTemperature_K, units)}, ${steady(state.neckSpeed_m_s, 'm/s', units, 1)}`
        : `${run(scenario.neck.length_m, units)} long`;
    case 'condenser':
      return condenserLine(scenario, state, units);
    case 'cooling':
      return coolingLine(scenario, state, units);
    case 'separator':
      return state && state.oilCollected_kg > 0 ? `${oilAmount(state, units)} oil` : 'no oil yet';
    case 'receiver':
      return state && state.hydrosol_kg > 0 ? water(state.hydrosol_kg, units) : 'empty';
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

/** Units as they are spoken. */
const SPOKEN: readonly (readonly [RegExp, string])[] = [
  [/\u202fmL\b/gu, ' millilitres'],
  [/\u202fL\/min\b/gu, ' litres a minute'],
  [/\u202fL\b/gu, ' litres'],
  [/\u202fgal\/min\b/gu, ' gallons a minute'],
  [/\u202fgal\b/gu, ' gallons'],
  [/\u202ffl oz\b/gu, ' fluid ounces'],
  [/\u202fkW\b/gu, ' kilowatts'],
  [/\u202fW\b/gu, ' watts'],
  [/\u202fkg\b/gu, ' kilograms'],
  [/\u202flb\b/gu, ' pounds'],
  [/\u202fmm\b/gu, ' millimetres'],
  [/\u202fm\/s\b/gu, ' metres a second'],
  [/\u202fft\/s\b/gu, ' feet a second'],
  [/\u202fm\b/gu, ' metres'],
  [/\u202fµm\b/gu, ' micrometres'],
  [/\u202fkPa\b/gu, ' kilopascals'],
];

export const spoken = (words: string): string =>
  SPOKEN.reduce((text, [unit, word]) => text.replace(unit, word), words).replaceAll('\u202f', ' ');

/** The id of a botanical is its name in plain words; the library itself is too large to fetch for one. */
const plantName = ({ charge }: Scenario): string =>
  charge.botanical === 'own' ? 'own plant' : charge.botanical.replaceAll('-', ' ');

function moreOf(id: LabelId, scenario: Scenario, state: StillState | null, units: UnitSystem): string {
  if (id === 'charge') return `, ${plantName(scenario)}`;
  if (!state) return '';
  const { alarms } = state;
  switch (id) {
    case 'boiler':
    case 'pot': {
      const water = partAlarm(id, scenario, state) ? (alarms.potDry ? ', dry' : ', water is low') : '';
      return `${water}${alarms.pressure ? `, ${formatQuantity(state.potGauge_Pa, 'Pa', units)} above the air` : ''}`;
    }
    case 'condenser':
      return alarms.escaping ? ', vapour is escaping from the outlet' : '';
    case 'cooling':
      return alarms.tubHot ? ', hot enough to scald' : '';
    case 'separator':
      return state.cutSize_m > 0
        ? `, catches drops over ${formatQuantity(state.cutSize_m, 'm', units, { hint: 'drop' })}`
        : '';
    default:
      return '';
  }
}

/** Name and state in the very words that are seen, and what else there is to say. */
export const partLabel = (id: LabelId, scenario: Scenario, state: StillState | null, units: UnitSystem): string =>
  `${partName(id, scenario)}, ${partLine(id, scenario, state, units)}${moreOf(id, scenario, state, units)}`;

/** The same with its units in words, for example `Pot, 7.9 litres water, 99 °C`. */
export const partSentence = (id: LabelId, scenario: Scenario, state: StillState | null, units: UnitSystem): string =>
  spoken(partLabel(id, scenario, state, units));
