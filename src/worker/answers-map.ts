/** Points of the picture of a condenser: what its outlet does for one length and one amount of cooling. */
import { simulate, type Scenario } from '../../sim/index.ts';
import { coolingAt, type MapAxis } from './map-axis.ts';

export type { MapAxis };

export interface MapNode {
  readonly x: number;
  readonly length_m: number;
}

export interface OutletReading extends MapNode {
  /** Warmest distillate over the whole run, flow-weighted; `null` where nothing came over. */
  readonly outlet_K: number | null;
  /** Vapour left the outlet, or the tube held back so much that the run could not go on. */
  readonly fails: boolean;
}

/** Steps and pieces for a point of a picture: they move the outlet temperature by some tenths of a kelvin. */
const PICTURE_STEP_s = 10;
const PICTURE_SEGMENTS = 30;
const ZERO_CELSIUS = 273.15;

function outletAt(scenario: Scenario, axis: MapAxis, node: MapNode): OutletReading {
  const { advanced, run } = scenario;
  const { summary, events } = simulate({
    ...scenario,
    condenser: { ...scenario.condenser, length_m: node.length_m },
    cooling: coolingAt(scenario, axis, node.x),
    advanced: {
      ...advanced,
      step_s: Math.max(advanced.step_s, PICTURE_STEP_s),
      segments: Math.min(advanced.segments, PICTURE_SEGMENTS),
      recordEvery_s: Math.min(600, run.duration_s),
    },
  });
  const fails = events.some(({ kind }) => kind === 'vapour-escapes' || kind === 'cooling-boils' || kind === 'over-pressure');
  return { ...node, outlet_K: summary.condensatePeak_C === null ? null : summary.condensatePeak_C + ZERO_CELSIUS, fails };
}

export const outletsAt = (scenario: Scenario, axis: MapAxis, nodes: readonly MapNode[]): readonly OutletReading[] =>
  nodes.map((node) => outletAt(scenario, axis, node));
