/** The horizontal axis of the picture of a condenser, and the fields that put a scenario at a point of it. */
import type { Scenario } from '../../sim/index.ts';

/** What the axis stands for: a constant flow in kg/s, or the volume of a still tub in m³. */
export type MapAxis = 'flow' | 'tub-volume';

/** A tub of another volume: as deep as before, wider or narrower. */
export const tubDiameterFor = ({ cooling }: Scenario, volume_m3: number): number =>
  Math.sqrt(volume_m3 / (cooling.tubHeight_m * cooling.tubFill * (Math.PI / 4)));

export const tubVolumeOf = ({ cooling }: Scenario): number =>
  (Math.PI / 4) * cooling.tubDiameter_m ** 2 * cooling.tubHeight_m * cooling.tubFill;

export const coolingAt = (scenario: Scenario, axis: MapAxis, x: number): Scenario['cooling'] =>
  axis === 'flow'
    ? { ...scenario.cooling, flow_kg_s: [{ at_s: 0, value: x, shape: 'step' }] }
    : { ...scenario.cooling, tubDiameter_m: tubDiameterFor(scenario, x) };
