/** Which fields matter for the kinds that are chosen: no jacket for a coil, no boiler without one. */
import { isBundle, isCoil, waterSource, type Scenario, type ScenarioPart } from '../../../../sim/index.ts';

const FUEL: ReadonlySet<string> = new Set(['gas-ring', 'gas-burner', 'wood-fire']);
const HEATS_NO_BASE: ReadonlySet<string> = new Set(['immersion-element', 'steam-generator']);

const coiled = ({ condenser }: Scenario): boolean => isCoil(condenser);
const letsWaterIn = (scenario: Scenario): boolean =>
  coiled(scenario) && scenario.cooling.flow_kg_s.some(({ value }) => value > 0);
const hasVessel = (scenario: Scenario): boolean => waterSource(scenario) !== 'tap';
/** Whether the source hangs on a circuit. */
export const isElectric = ({ heat }: Scenario): boolean => !FUEL.has(heat.kind);
const isInsulated = ({ pot, boiler, neck }: Scenario): boolean =>
  pot.insulationThickness_m > 0 ||
  neck.insulationThickness_m > 0 ||
  (pot.layout === 'steam' && boiler.insulationThickness_m > 0);
const hasEster = ({ charge }: Scenario): boolean =>
  charge.composition.some(({ constituent }) => constituent === 'linalyl_acetate');

/** Conditions by path; a field that stands nowhere here always matters. */
const CONDITIONS: Readonly<Record<string, (scenario: Scenario) => boolean>> = {
  'site.relativeHumidity': hasVessel,
  'site.airSpeed_m_s': hasVessel,
  'heat.setting': ({ heat }) => heat.control === 'schedule',
  'heat.targetRate_kg_s': ({ heat }) => heat.control === 'hold-rate',
  'heat.heatedDiameter_m': ({ heat }) => !HEATS_NO_BASE.has(heat.kind),
  'heat.supplyVolts_V': isElectric,
  'heat.supplyAmps_A': isElectric,
  'pot.insulationConductivity_W_mK': isInsulated,
  'pot.gridHeight_m': ({ pot }) => pot.layout === 'water-and-steam',
  'charge.hydrolysisImmersed_1_s': (scenario) => scenario.pot.layout === 'water' && hasEster(scenario),
  'charge.hydrolysisBed_1_s': (scenario) => scenario.pot.layout !== 'water' && hasEster(scenario),
  'condenser.tubes': ({ condenser }) => isBundle(condenser),
  'condenser.coilDiameter_m': coiled,
  'condenser.coilPitch_m': coiled,
  'condenser.coilTopDepth_m': coiled,
  'condenser.orientation': (scenario) => !coiled(scenario),
  'condenser.slope_rad': (scenario) => !coiled(scenario) && scenario.condenser.orientation === 'sloping',
  'condenser.jacketDiameter_m': (scenario) => !coiled(scenario),
  'condenser.flow': (scenario) => !coiled(scenario),
  'cooling.jacketSupply': (scenario) => !coiled(scenario),
  'cooling.tubDiameter_m': hasVessel,
  'cooling.tubHeight_m': hasVessel,
  'cooling.tubFill': hasVessel,
  'cooling.startTemperature_K': hasVessel,
  'cooling.tubWallResistance_m2K_W': hasVessel,
  'cooling.inlet': letsWaterIn,
  'cooling.hoseBore_m': (scenario) => letsWaterIn(scenario) && scenario.cooling.inlet !== 'perforated',
  'cooling.holes': (scenario) => letsWaterIn(scenario) && scenario.cooling.inlet === 'perforated',
  'cooling.holeBore_m': (scenario) => letsWaterIn(scenario) && scenario.cooling.inlet === 'perforated',
  'cooling.stir_m_s': coiled,
  'factors.curvature': coiled,
  'factors.evaporation': hasVessel,
  'factors.jetMixing': (scenario) => letsWaterIn(scenario) && scenario.cooling.inlet !== 'top',
  'cooling.ice': hasVessel,
  'advanced.tubLayers': hasVessel,
  'advanced.bedLayers': ({ pot }) => pot.layout !== 'water',
};

export const CONDITIONAL_PATHS: readonly string[] = Object.keys(CONDITIONS);

/** Whether a field has any bearing on the run of this scenario. */
export function isRelevant(path: string, scenario: Scenario): boolean {
  if (path.startsWith('boiler.')) return scenario.pot.layout === 'steam';
  return CONDITIONS[path]?.(scenario) ?? true;
}

export const isRelevantPart = (part: ScenarioPart, scenario: Scenario): boolean =>
  part !== 'boiler' || scenario.pot.layout === 'steam';
