/** The grid behind the picture of a condenser: what its axes span, which points are reckoned when, and the field they give. */
import { scaleLinear } from 'd3-scale';
import {
  isCoil,
  clockSchedule,
  coilFit,
  longestCoil,
  tubVolume,
  type EventTimes,
  type Scenario,
} from '../../../sim/index.ts';
import type { MapNode, OutletReading } from '../../workers/condenser-map.ts';
import type { MapAxis } from '../../workers/map-axis.ts';

/** Points along each side of the finest grid, and how many are skipped at each stage: coarse first, then the rest. */
export const FINEST = 17;
export const STRIDES = [4, 2, 1] as const;

export interface MapBounds {
  readonly axis: MapAxis;
  readonly x: readonly [low: number, high: number];
  readonly length_m: readonly [low: number, high: number];
}

/** Cooling-water flow of a schedule as one number: its mean over the run, each setting for as long as it stands. */
export function meanFlow({ cooling, run }: Pick<Scenario, 'cooling' | 'run'>, times: EventTimes): number {
  const knots = clockSchedule(cooling.flow_kg_s, times);
  return (
    knots.reduce((sum, { at_s, value }, index) => {
      const until = Math.min(run.duration_s, knots[index + 1]?.at_s ?? run.duration_s);
      return sum + value * Math.max(0, until - at_s);
    }, 0) / run.duration_s
  );
}

export const isConstant = (schedule: Scenario['cooling']['flow_kg_s']): boolean =>
  schedule.every(({ value }) => value === schedule[0]?.value);

/** A tub without running water is looked at by its volume, all else by its flow. */
export const usualAxis = ({ condenser, cooling }: Scenario): MapAxis =>
  isCoil(condenser) && cooling.flow_kg_s.every(({ value }) => value === 0) ? 'tub-volume' : 'flow';

/** What the present run tells of where the still stands. */
export interface OfRun {
  /** When the events came that a tap may wait for. */
  readonly times: EventTimes;
  /** Power of the source while the run is busy, W; `null` where nothing comes over. */
  readonly heat_W: number | null;
}

/** Where the scenario itself stands on the horizontal axis. */
export function ownX(scenario: Scenario, axis: MapAxis, { times, heat_W }: OfRun): number {
  switch (axis) {
    case 'flow':
      return meanFlow(scenario, times);
    case 'tub-volume':
      return tubVolume(scenario.cooling);
    case 'heat':
      return heat_W ?? scenario.heat.ratedPower_W;
  }
}

/** The picture begins at this share of the source's power, or lower where the still is there: with less nothing comes over. */
const LEAST_HEAT = 0.2;
const BELOW = 0.7;

const LEAST_FLOW_SPAN = 0.004;
/** A point nearer to the ends than these parts of the axis asks for another axis. */
const TOO_FAR = 0.88;
const TOO_NEAR = 0.12;
const ROOM = 2;

const roundUp = (value: number): number => scaleLinear().domain([0, value]).nice(5).domain()[1] ?? value;

/** Axis that spans a value with room to either side; the earlier one stays while it still serves. */
function spanOf(value: number, least: number, earlier: number | undefined): number {
  if (earlier !== undefined && value <= TOO_FAR * earlier && (value >= TOO_NEAR * earlier || earlier <= least))
    return earlier;
  return roundUp(Math.max(least, ROOM * value));
}

/**
 * @param run the present one
 * @param needed_m length that would hold, where it is known, so that the picture shows it
 */
export function mapBounds(
  scenario: Scenario,
  axis: MapAxis,
  run: OfRun,
  needed_m: number | null,
  earlier: MapBounds | null,
): MapBounds {
  const before = earlier?.axis === axis ? earlier : null;
  const wanted = Math.max(scenario.condenser.length_m, needed_m === null ? 0 : needed_m * 1.1);
  const length = Math.min(100, spanOf(wanted, 0.5, before?.length_m[1]));
  if (axis === 'heat') {
    const { ratedPower_W } = scenario.heat;
    const low = Math.min(LEAST_HEAT * ratedPower_W, BELOW * ownX(scenario, axis, run));
    return {
      axis,
      x: [before && before.x[1] === ratedPower_W ? Math.min(before.x[0], low) : low, ratedPower_W],
      length_m: [length / 20, length],
    };
  }
  const least = axis === 'flow' ? LEAST_FLOW_SPAN : leastTubVolume(scenario) * ROOM;
  const high = spanOf(ownX(scenario, axis, run), least, before?.x[1]);
  const low = axis === 'flow' ? (isCoil(scenario.condenser) ? 0 : high / 20) : leastTubVolume(scenario);
  return { axis, x: [low, high], length_m: [length / 20, length] };
}

/** The tub must go round the coil. */
function leastTubVolume({ condenser, cooling }: Scenario): number {
  return tubVolume({ ...cooling, tubDiameter_m: coilFit(condenser, cooling).width_m });
}

/** Longest coil that goes under water in the tub, m; `null` for a condenser without a tub. */
export const longestTube = ({ condenser, cooling }: Pick<Scenario, 'condenser' | 'cooling'>): number | null =>
  isCoil(condenser) ? longestCoil(condenser, cooling) : null;

/** What the failing part of a field fails by, in words. */
export function failureWords({ readings }: Pick<MapField, 'readings'>): string {
  const failing = [...readings.values()].filter(({ fails }) => fails);
  const pressed = failing.filter(({ pressure }) => pressure).length;
  if (pressed === 0) return 'steam escapes';
  return pressed === failing.length ? 'pressure lifts the lid' : 'steam escapes or lifts the lid';
}

/** A point of the grid; column and row from the lower left. */
export function nodeAt({ x, length_m }: MapBounds, column: number, row: number): MapNode {
  const along = ([low, high]: readonly [number, number], index: number) => low + ((high - low) * index) / (FINEST - 1);
  return { x: along(x, column), length_m: along(length_m, row) };
}

/** What is known of the grid: by `row * FINEST + column`. */
export interface MapField {
  readonly bounds: MapBounds;
  /** Points skipped between two that are known. */
  readonly stride: number;
  readonly readings: ReadonlyMap<number, OutletReading>;
  /** By column: the shortest length found to let no vapour out; `null` where none does, or all do. */
  readonly edges: ReadonlyMap<number, number>;
}

export const placeOf = (column: number, row: number): number => row * FINEST + column;

/** Places of a stage that no earlier stage has. */
export function placesOf(
  stride: number,
  known: ReadonlyMap<number, OutletReading>,
): readonly (readonly [column: number, row: number])[] {
  const places: (readonly [number, number])[] = [];
  for (let row = 0; row < FINEST; row += stride) {
    for (let column = 0; column < FINEST; column += stride) {
      if (!known.has(placeOf(column, row))) places.push([column, row]);
    }
  }
  return places;
}

/** Columns at which vapour escapes below some length, with the lengths between which that changes. */
export function changesOf({
  bounds,
  readings,
  stride,
}: MapField): readonly { readonly column: number; readonly fails_m: number; readonly holds_m: number }[] {
  const changes: { column: number; fails_m: number; holds_m: number }[] = [];
  for (let column = 0; column < FINEST; column += stride) {
    for (let row = FINEST - 1 - stride; row >= 0; row -= stride) {
      const below = readings.get(placeOf(column, row));
      const above = readings.get(placeOf(column, row + stride));
      if (below?.fails === true && above?.fails === false) {
        changes.push({
          column,
          fails_m: nodeAt(bounds, column, row).length_m,
          holds_m: nodeAt(bounds, column, row + stride).length_m,
        });
        break;
      }
    }
  }
  return changes;
}

/** The line under which vapour escapes: one length a known column, the top where every length fails, the bottom where none does. */
export function escapeLine(field: MapField): readonly (readonly [x: number, length_m: number])[] {
  const { bounds, readings, stride, edges } = field;
  const changes = new Map(changesOf(field).map((change) => [change.column, change]));
  const line: (readonly [number, number])[] = [];
  for (let column = 0; column < FINEST; column += stride) {
    const change = changes.get(column);
    const highest = readings.get(placeOf(column, FINEST - 1));
    const bare = highest?.fails === true ? bounds.length_m[1] : 0;
    const between = change ? (change.fails_m + change.holds_m) / 2 : bare;
    line.push([nodeAt(bounds, column, 0).x, edges.get(column) ?? between]);
  }
  return line;
}
