/** A chart's numbers as a table: every row of the record, in the units shown. */
import type { Lane, Chart } from '../model/chart.ts';
import { shownUnit, type UnitSystem } from '../model/measure.ts';
import { readKey } from '../model/reading.ts';
import { readLine } from '../model/sample.ts';
import { xUnit } from '../model/x-axis.ts';

export interface TableColumn {
  readonly title: string;
  /** Empty for words and pure numbers. */
  readonly unit: string;
  readonly says: string;
  readonly decimals: number;
  readonly values: ArrayLike<number | string>;
}

export interface DataTable {
  readonly caption: string;
  /** The first column names the rows. */
  readonly columns: readonly TableColumn[];
  readonly rows: number;
}

/** Every line of a chart against the x of the run at hand. */
export function chartTable(chart: Chart, system: UnitSystem): DataTable {
  const xs =
    chart.lanes[0]?.series[0]?.xs ?? (chart.lanes[0]?.kind === 'strip' ? chart.lanes[0].xs : new Float64Array());
  const columns = chart.lanes.flatMap((lane) => laneColumns(lane, xs, system));
  const derived = chart.derived.map(({ key, label, says, measure }): TableColumn => {
    const unit = shownUnit(measure, system);
    return {
      title: label,
      unit: unit.label,
      says,
      decimals: unit.decimals,
      values: xs.map((x) => unit.fromSI(readKey(chart, key, x))),
    };
  });
  return { caption: chart.title, rows: xs.length, columns: [xColumn(chart, xs, system), ...columns, ...derived] };
}

function xColumn({ xAxis }: Chart, xs: Float64Array, system: UnitSystem): TableColumn {
  const { title, says, unit, decimals, shown } = xUnit(xAxis, system);
  return { title, says, unit, decimals, values: xs.map(shown) };
}

function laneColumns(lane: Lane, xs: Float64Array, system: UnitSystem): readonly TableColumn[] {
  const lines = lane.series.map((series): TableColumn => {
    const unit = shownUnit(series.measure, system);
    return {
      title: series.run === 0 ? series.label : `${series.label}, ${series.runName}`,
      unit: unit.label,
      says: series.says,
      decimals: unit.decimals,
      values: xs.map((x) => unit.fromSI(readLine(series, x))),
    };
  });
  return lane.kind === 'strip' ? [...lines, ...fieldColumns(lane, system)] : lines;
}

function fieldColumns(lane: Extract<Lane, { kind: 'strip' }>, system: UnitSystem): readonly TableColumn[] {
  const unit = shownUnit(lane.valueMeasure, system);
  return Array.from({ length: lane.cells }, (_, cell) => ({
    title: `Layer ${cell + 1}`,
    unit: unit.label,
    says: `layer ${cell + 1} of ${lane.cells}, counted from the bottom`,
    decimals: unit.decimals,
    values: lane.xs.map((_x, row) => unit.fromSI(lane.data[row * lane.cells + cell] as number)),
  }));
}

/** Rows to show on a page: evenly spaced, first and last among them. */
export function thinnedRows(rows: number, most: number): readonly number[] {
  if (rows <= most) return Array.from({ length: rows }, (_, row) => row);
  return Array.from({ length: most }, (_, index) => Math.round((index * (rows - 1)) / (most - 1)));
}
