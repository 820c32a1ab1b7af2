/** Points of the picture of a condenser: what its outlet does for one length and one amount of cooling. */
import { simulate, type Scenario } from '../../sim/index.ts';
import { stillAt, type MapAxis } from './map-axis.ts';

export type { MapAxis };

export interface MapNode {
  readonly x: number;
  readonly length_m: number;
}

export interface OutletReading extends MapNode {
  /** Warmest distillate over the whole run, flow-weighted; `null` where nothing came over, or nothing is known. */
  readonly outlet_K: number | null;
  /** Vapour left the outlet, or the still held back so much that a lid can lift. */
  readonly fails: boolean;
  /** Whether it fails by pressure. */
  readonly pressure: boolean;
}

/** `rough` is quick and a kelvin or two off where the curve is steep; `fine` is a few tenths of a kelvin off. */
export type MapDetail = 'rough' | 'fine';

const PICTURE_STEP_s = 10;
const PICTURE_SEGMENTS: Readonly<Record<MapDetail, number>> = { rough: 14, fine: 30 };
const PICTURE_LAYERS = 5;
const ZERO_CELSIUS = 273.15;

function outletAt(scenario: Scenario, axis: MapAxis, node: MapNode, detail: MapDetail): OutletReading {
  const still = stillAt(scenario, axis, node.x);
  const { advanced, run } = still;
  const { summary, events, failure } = simulate({
    ...still,
    condenser: { ...still.condenser, length_m: node.length_m },
    advanced: {
      ...advanced,
      step_s: Math.max(advanced.step_s, PICTURE_STEP_s),
      segments: Math.min(advanced.segments, PICTURE_SEGMENTS[detail]),
      bedLayers: Math.min(advanced.bedLayers, PICTURE_LAYERS),
      recordEvery_s: Math.min(600, run.duration_s),
    },
  });
  if (failure !== null) return { ...node, outlet_K: null, fails: false, pressure: false };
  const pressure = events.some(({ kind }) => kind === 'pressure-high' || kind === 'over-pressure');
  const fails = pressure || events.some(({ kind }) => kind === 'vapour-escapes' || kind === 'cooling-boils');
  return {
    ...node,
    outlet_K: summary.condensatePeak_C === null ? null : summary.condensatePeak_C + ZERO_CELSIUS,
    fails,
    pressure,
  };
}

export const outletsAt = (
  scenario: Scenario,
  axis: MapAxis,
  nodes: readonly MapNode[],
  detail: MapDetail,
): readonly OutletReading[] => nodes.map((node) => outletAt(scenario, axis, node, detail));
