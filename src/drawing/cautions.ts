/** Small words where the hazard is: when the part is picked, or when the danger is there. */
import { isCoil, coilFit, formatQuantity, type Scenario, type ScenarioPart, type UnitSystem } from '../../sim/index.ts';
import type { HazardId } from './geometry/labels.ts';
import type { StillState } from './still-state.ts';

export interface Caution {
  readonly words: string;
  /** A danger of the part in general, one to look at now, or one that is there now. */
  readonly level: 'general' | 'care' | 'alarm';
}

const FLAMES: readonly Scenario['heat']['kind'][] = ['gas-ring', 'gas-burner', 'wood-fire'];

function flameCaution(scenario: Scenario, state: StillState | null, selected: ScenarioPart | null): Caution | null {
  if (state?.alarms.potDry)
    return { words: 'The pot is dry. Heat off, and let it cool before you add water.', level: 'alarm' };
  if (state?.alarms.potLow) return { words: 'Water is low: heat off now, before the base runs dry.', level: 'alarm' };
  if (selected !== 'heat') return null;
  return FLAMES.includes(scenario.heat.kind)
    ? { words: 'Keep flame and sparks well away from the receiver: oil vapour burns.', level: 'general' }
    : { words: 'Never let it boil dry, and keep the mains away from the water.', level: 'general' };
}

function lidCaution(state: StillState | null, selected: ScenarioPart | null, units: UnitSystem): Caution | null {
  if (state?.alarms.pressure)
    return {
      words: `${formatQuantity(state.potGauge_Pa, 'Pa', units)} under the lid: it can lift. Heat down, clear the way out.`,
      level: 'alarm',
    };
  if (selected === 'pot' || selected === 'charge' || selected === 'neck' || selected === 'boiler')
    return { words: 'Steam scalds: open the lid only when the pot has cooled.', level: 'general' };
  return null;
}

function outletCaution(state: StillState | null, selected: ScenarioPart | null, units: UnitSystem): Caution | null {
  if (state?.alarms.escaping)
    return {
      words: `Vapour is escaping, ${formatQuantity(state.escaping_kg_s, 'kg/s', units)}. It scalds and burns: heat down, water up.`,
      level: 'alarm',
    };
  if (selected === 'condenser') return { words: 'Never close the outlet: the still breathes here.', level: 'general' };
  if (selected === 'separator')
    return { words: 'Neat oil irritates and burns: gloves on, no flame near.', level: 'general' };
  return null;
}

/** A coil that does not fit its tub is drawn squeezed into it; the words say what it would need. */
function squeezedCoil({ condenser, cooling }: Scenario, units: UnitSystem): Caution | null {
  if (!isCoil(condenser)) return null;
  const fit = coilFit(condenser, cooling);
  const size = (length_m: number) => formatQuantity(length_m, 'm', units, { hint: 'size' });
  if (fit.isTooDeep)
    return {
      words: `${fit.turns.toFixed(1)} turns need ${size(fit.depth_m)} of water; the tub has ${size(cooling.tubHeight_m)}.`,
      level: 'care',
    };
  return fit.isTooWide
    ? { words: `The coil is ${size(fit.width_m)} across; the tub is ${size(cooling.tubDiameter_m)}.`, level: 'care' }
    : null;
}

function tubCaution(
  scenario: Scenario,
  state: StillState | null,
  selected: ScenarioPart | null,
  units: UnitSystem,
): Caution | null {
  if (state?.alarms.tubHot)
    return {
      words: `The water here is ${formatQuantity(state.tubTemperature_K[0] ?? state.coolantOut_K, 'K', units, { decimals: 0 })}: it scalds.`,
      level: 'care',
    };
  const squeezed = squeezedCoil(scenario, units);
  if (squeezed) return squeezed;
  if (selected === 'cooling') return { words: 'The top of the water grows hot enough to scald.', level: 'general' };
  return null;
}

export function cautionAt(
  hazard: HazardId,
  scenario: Scenario,
  state: StillState | null,
  selected: ScenarioPart | null,
  units: UnitSystem,
): Caution | null {
  switch (hazard) {
    case 'flame':
      return flameCaution(scenario, state, selected);
    case 'lid':
      return lidCaution(state, selected, units);
    case 'outlet':
      return outletCaution(state, selected, units);
    case 'tub':
      return tubCaution(scenario, state, selected, units);
  }
}
