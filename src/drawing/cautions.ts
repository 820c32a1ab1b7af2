/** What to watch for where the hazard is: when the part is picked, or when the danger is there. */
import {
  cautionMessage,
  coilFit,
  englishReader,
  isCoil,
  LIMITS,
  type CautionFact,
  type Scenario,
  type ScenarioPart,
  type UnitSystem,
} from '../../sim/index.ts';
import type { HazardId } from './geometry/labels.ts';
import type { StillState } from './still-state.ts';

export interface Caution {
  readonly words: string;
  /** The same in two or three words, for where there is little room. */
  readonly brief: string;
  /** A danger of the part in general, one to look at now, or one that is there now. */
  readonly level: 'general' | 'care' | 'alarm';
}

type Found = CautionFact & Pick<Caution, 'level'>;

const FLAMES: readonly Scenario['heat']['kind'][] = ['gas-ring', 'gas-burner', 'wood-fire'];
const hasFlame = ({ heat }: Scenario): boolean => FLAMES.includes(heat.kind);

/** What to mind at the lid when a part under it is picked. */
const AT_LID: Partial<Readonly<Record<ScenarioPart, 'hot-pot' | 'spent-plant' | 'hot-steam'>>> = {
  pot: 'hot-pot',
  charge: 'spent-plant',
  neck: 'hot-steam',
  boiler: 'hot-steam',
};

function flameCaution(scenario: Scenario, state: StillState | null, selected: ScenarioPart | null): Found | null {
  if (state?.alarms.potDry) return { kind: 'pot-dry', values: {}, level: 'alarm' };
  const open = hasFlame(scenario);
  if (open && state?.alarms.escaping) return { kind: 'flame-out', values: {}, level: 'alarm' };
  if (state?.alarms.potLow) return { kind: 'pot-low', values: {}, level: 'alarm' };
  if (selected !== 'heat') return null;
  return { kind: open ? 'flame' : 'mains', values: {}, level: 'general' };
}

function lidCaution(state: StillState | null, selected: ScenarioPart | null): Found | null {
  if (state?.alarms.pressure) return { kind: 'pressure', values: { gauge_Pa: state.potGauge_Pa }, level: 'alarm' };
  const kind = selected && AT_LID[selected];
  return kind ? { kind, values: {}, level: 'general' } : null;
}

function outletCaution(scenario: Scenario, state: StillState | null, selected: ScenarioPart | null): Found | null {
  if (state?.alarms.escaping)
    return {
      kind: 'escaping',
      values: { vapour_kg_s: state.escaping_kg_s, flame: hasFlame(scenario) },
      level: 'alarm',
    };
  if (selected === 'condenser')
    return {
      kind: scenario.condenser.material === 'borosilicate-glass' ? 'glass' : 'outlet',
      values: {},
      level: 'general',
    };
  return selected === 'separator' ? { kind: 'neat-oil', values: {}, level: 'general' } : null;
}

/** A coil that does not fit its tub is drawn squeezed into it; the caution says what it would need. */
function squeezedCoil({ condenser, cooling }: Scenario): Found | null {
  if (!isCoil(condenser)) return null;
  const { isTooDeep, isTooWide, turns, depth_m, width_m } = coilFit(condenser, cooling);
  if (isTooDeep)
    return { kind: 'coil-too-deep', values: { turns, depth_m, tub_m: cooling.tubHeight_m }, level: 'care' };
  return isTooWide ? { kind: 'coil-too-wide', values: { width_m, tub_m: cooling.tubDiameter_m }, level: 'care' } : null;
}

function tubCaution(scenario: Scenario, state: StillState | null, selected: ScenarioPart | null): Found | null {
  const water_K = state ? (state.tubTemperature_K[0] ?? state.coolantOut_K) : 0;
  if (state?.alarms.tubHot) return { kind: 'tub-hot', values: { water_K }, level: 'care' };
  if (water_K >= LIMITS.hotWater_K) return { kind: 'tub-warm', values: { water_K }, level: 'care' };
  return (
    squeezedCoil(scenario) ?? (selected === 'cooling' ? { kind: 'tub-warms', values: {}, level: 'general' } : null)
  );
}

function found(
  hazard: HazardId,
  scenario: Scenario,
  state: StillState | null,
  selected: ScenarioPart | null,
): Found | null {
  switch (hazard) {
    case 'flame':
      return flameCaution(scenario, state, selected);
    case 'lid':
      return lidCaution(state, selected);
    case 'outlet':
      return outletCaution(scenario, state, selected);
    case 'tub':
      return tubCaution(scenario, state, selected);
  }
}

export function cautionAt(
  hazard: HazardId,
  scenario: Scenario,
  state: StillState | null,
  selected: ScenarioPart | null,
  units: UnitSystem,
): Caution | null {
  const fact = found(hazard, scenario, state, selected);
  if (!fact) return null;
  const { sentence, brief } = cautionMessage(fact, englishReader(units));
  return { words: sentence, brief, level: fact.level };
}
