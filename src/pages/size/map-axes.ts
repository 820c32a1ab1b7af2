/** Axes of the picture of a condenser, in the units shown. */
import { scaleLinear } from 'd3-scale';
import { displayUnit, formatNumber, formatQuantity, type UnitSystem } from '../../../sim/index.ts';
import type { MapAxis } from '../../workers/map-axis.ts';
import { pixelsOf, plotHeight, plotWidth, type MapFrame } from './map-shapes.ts';
import type { MapBounds } from './map-grid.ts';

export interface AxisTick {
  readonly at_px: number;
  readonly words: string;
}

export interface MapAxes {
  readonly across: readonly AxisTick[];
  readonly up: readonly AxisTick[];
  readonly acrossTitle: string;
  readonly upTitle: string;
}

const AXES = {
  flow: { name: 'Cooling-water flow', unit: 'kg/s', how: { hint: 'coolantFlow' } },
  'tub-volume': { name: 'Water in the tub', unit: 'm³', how: { hint: 'volume', significant: 3 } },
  heat: { name: 'Heat throughout', unit: 'W', how: { hint: 'power', significant: 3 } },
} as const satisfies Readonly<Record<MapAxis, unknown>>;

export const axisUnit = (axis: MapAxis, units: UnitSystem) => displayUnit(AXES[axis].unit, units, AXES[axis].how.hint);

export const axisName = (axis: MapAxis): string => AXES[axis].name;

export function xWords(axis: MapAxis, x: number, units: UnitSystem): string {
  const { unit, how } = AXES[axis];
  return formatQuantity(x, unit, units, how);
}

export const lengthWords = (length_m: number, units: UnitSystem): string =>
  formatQuantity(length_m, 'm', units, { hint: 'run' });

const TICK_ROOM = { across: 90, up: 64 } as const;

function ticksOf(
  low: number,
  high: number,
  most: number,
): { readonly values: readonly number[]; readonly decimals: number } {
  const scale = scaleLinear().domain([low, high]);
  const values = scale.ticks(Math.max(2, most));
  const step = Math.abs((values[1] ?? 1) - (values[0] ?? 0)) || 1;
  return { values, decimals: Math.max(0, -Math.floor(Math.log10(step) + 1e-9)) };
}

export function mapAxes(bounds: MapBounds, frame: MapFrame, kind: 'coil' | 'tube', units: UnitSystem): MapAxes {
  const pixels = pixelsOf(frame, bounds);
  const xUnit = axisUnit(bounds.axis, units);
  const yUnit = displayUnit('m', units, 'run');
  const across = ticksOf(
    xUnit.fromSI(bounds.x[0]),
    xUnit.fromSI(bounds.x[1]),
    Math.floor(plotWidth(frame) / (TICK_ROOM.across * frame.textScale)),
  );
  const up = ticksOf(
    yUnit.fromSI(bounds.length_m[0]),
    yUnit.fromSI(bounds.length_m[1]),
    Math.floor(plotHeight(frame) / (TICK_ROOM.up * frame.textScale)),
  );
  return {
    across: across.values.map((value) => ({
      at_px: pixels.x(xUnit.toSI(value)),
      words: formatNumber(value, across.decimals),
    })),
    up: up.values.map((value) => ({ at_px: pixels.y(yUnit.toSI(value)), words: formatNumber(value, up.decimals) })),
    acrossTitle: `${axisName(bounds.axis)}, ${xUnit.label}`,
    upTitle: `${kind === 'coil' ? 'Coil length' : 'Tube length'}, ${yUnit.label}`,
  };
}
