/** The marks of a chart in pixels, the same for canvas and for an exported picture. */
import { cellAt, positionOf } from '../../../sim/index.ts';
import type { LinesLane, Series, StackLane, StripLane } from './chart.ts';
import { tracePoints, type Polyline } from './decimate.ts';
import type { Ink } from './palette.ts';
import type { PreparedChart, PreparedLane } from './prepare.ts';
import { stackTops } from './stack.ts';

export type Shape =
  | {
      readonly kind: 'line';
      readonly points: Polyline;
      readonly ink: Ink;
      readonly width: number;
      readonly dash: readonly number[];
    }
  | {
      readonly kind: 'area';
      readonly upper: Polyline;
      readonly lower: Polyline;
      readonly ink: Ink;
      readonly opacity: number;
    }
  | { readonly kind: 'dots'; readonly points: Polyline; readonly ink: Ink }
  | FieldShape;

/** A field of cells: `columns` times `cells`, cell 0 at the bottom, each holding a share 0–1 of the colour range. */
export interface FieldShape {
  readonly kind: 'field';
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly cells: number;
  readonly shares: Float64Array;
}

export const shapesOf = (prepared: PreparedChart): readonly Shape[] =>
  prepared.lanes.flatMap((lane) => {
    switch (lane.lane.kind) {
      case 'lines':
        return lineShapes(prepared, lane, lane.lane);
      case 'stack':
        return stackShapes(prepared, lane, lane.lane);
      case 'strip':
        return [fieldShape(prepared, lane, lane.lane), ...tracesOf(prepared, lane, lane.lane.series)];
    }
  });

function lineShapes(
  prepared: PreparedChart,
  lane: PreparedLane,
  { series, bands, points, between }: LinesLane,
): readonly Shape[] {
  const shaded = between ? between.map((key) => series.find((line) => line.key === key && line.run === 0)) : [];
  const [first, second] = shaded;
  return [
    ...bands.map(({ xs, low, high, ink }) => areaShape(prepared, lane, xs, high, low, ink, 0.35)),
    ...(first && second ? [areaShape(prepared, lane, first.xs, second.values, first.values, 'water-tint', 0.45)] : []),
    ...tracesOf(prepared, lane, series),
    ...points.map(({ points: logged, ink }): Shape => ({
      kind: 'dots',
      ink,
      points: tracePoints(
        logged.map(({ x }) => x),
        logged.map(({ value }) => value),
        prepared.x,
        lane.y,
        lane.unit.fromSI,
      ),
    })),
  ];
}

function stackShapes(prepared: PreparedChart, lane: PreparedLane, { series }: StackLane): readonly Shape[] {
  const layers = series.filter(({ run }) => run === 0);
  const tops = stackTops(layers);
  const areas = layers.map(({ xs, ink }, index) => {
    const top = tops[index] as Float64Array;
    return areaShape(prepared, lane, xs, top, tops[index - 1] ?? new Float64Array(top.length), ink, 1);
  });
  const edges = layers.map((layer, index): Shape => {
    const isTotal = index === layers.length - 1;
    return {
      kind: 'line',
      points: tracePoints(layer.xs, tops[index] as Float64Array, prepared.x, lane.y, lane.unit.fromSI),
      ink: isTotal ? 'oil' : 'paper',
      width: isTotal ? 1.25 : 0.75,
      dash: [],
    };
  });
  return [
    ...areas,
    ...edges,
    ...tracesOf(
      prepared,
      lane,
      series.filter(({ run }) => run > 0),
    ),
  ];
}

/** Lines, other runs first so that the run at hand lies on top. */
function tracesOf(prepared: PreparedChart, lane: PreparedLane, series: readonly Series[]): readonly Shape[] {
  return series
    .filter(({ hidden }) => hidden !== true)
    .toSorted((a, b) => b.run - a.run)
    .map(({ xs, values, ink, weight, dash }) => ({
      kind: 'line',
      points: tracePoints(xs, values, prepared.x, lane.y, lane.unit.fromSI),
      ink,
      width: weight,
      dash,
    }));
}

const areaShape = (
  prepared: PreparedChart,
  lane: PreparedLane,
  xs: Float64Array,
  upper: Float64Array,
  lower: Float64Array,
  ink: Ink,
  opacity: number,
): Shape => ({
  kind: 'area',
  upper: tracePoints(xs, upper, prepared.x, lane.y, lane.unit.fromSI),
  lower: tracePoints(xs, lower, prepared.x, lane.y, lane.unit.fromSI),
  ink,
  opacity,
});

/** Columns of a field are two pixels wide, so that a long run costs no more than a short one. */
const FIELD_COLUMN_px = 2;

function fieldShape(
  prepared: PreparedChart,
  lane: PreparedLane,
  { xs, cells, data, valueDomain }: StripLane,
): FieldShape {
  const last = xs[xs.length - 1] ?? 0;
  const width = Math.max(1, prepared.x.offset + prepared.x.slope * last);
  const columns = Math.max(1, Math.ceil(width / FIELD_COLUMN_px));
  const [low, high] = valueDomain;
  const shares = new Float64Array(columns * cells);
  for (let column = 0; column < columns; column += 1) {
    const position = positionOf(xs, (last * (column + 0.5)) / columns);
    for (let cell = 0; cell < cells; cell += 1) {
      const value = cellAt(data, cells, cell, position);
      shares[column * cells + cell] = high > low ? (value - low) / (high - low) : 0;
    }
  }
  const bottom = lane.y.offset + lane.y.slope * lane.domain[0];
  const top = lane.y.offset + lane.y.slope * lane.domain[1];
  return { kind: 'field', left: 0, top, width, height: bottom - top, columns, cells, shares };
}
