/** The horizontal axis of the picture of a condenser, and the fields that put a scenario at a point of it. */
import { tubDiameterFor, type Scenario } from '../../sim/index.ts';

/** What the axis stands for: a constant flow in kg/s, or the volume of a still tub in m³. */
export type MapAxis = 'flow' | 'tub-volume';

export const coolingAt = (scenario: Scenario, axis: MapAxis, x: number): Scenario['cooling'] =>
  axis === 'flow'
    ? { ...scenario.cooling, flow_kg_s: [{ at_s: 0, value: x, shape: 'step' }] }
    : { ...scenario.cooling, tubDiameter_m: tubDiameterFor(scenario.cooling, x) };
