/** The horizontal axis of the picture of a condenser, and the fields that put a scenario at a point of it. */
import { tubDiameterFor, withHeat, type Scenario } from '../../sim/index.ts';

/** What the axis stands for: a constant flow in kg/s, the volume of a still tub in m³, or a constant power of the source in W. */
export type MapAxis = 'flow' | 'tub-volume' | 'heat';

export function stillAt(scenario: Scenario, axis: MapAxis, x: number): Scenario {
  const { cooling, heat } = scenario;
  switch (axis) {
    case 'flow':
      return { ...scenario, cooling: { ...cooling, flow_kg_s: [{ at_s: 0, value: x, shape: 'step' }] } };
    case 'tub-volume':
      return { ...scenario, cooling: { ...cooling, tubDiameter_m: tubDiameterFor(cooling, x) } };
    case 'heat':
      return withHeat(scenario, Math.min(1, x / heat.ratedPower_W));
  }
}

/** The fields of the still that a point changes. */
export function changesAt(scenario: Scenario, axis: MapAxis, x: number): Readonly<Record<string, unknown>> {
  const { cooling, heat } = stillAt(scenario, axis, x);
  switch (axis) {
    case 'flow':
      return { 'cooling.flow_kg_s': cooling.flow_kg_s };
    case 'tub-volume':
      return { 'cooling.tubDiameter_m': cooling.tubDiameter_m };
    case 'heat':
      return { 'heat.control': heat.control, 'heat.setting': heat.setting };
  }
}
