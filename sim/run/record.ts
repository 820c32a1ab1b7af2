/**
 * The record of a run: columnar typed arrays, one row every `recordEvery_s`, transferable between workers.
 * Views read it; they never compute physics. Rates are means over the step that ends at the row; amounts are totals
 * since the start.
 */
import { lastRowUpTo, positionOf, valueAt, type Position } from '../maths/interpolate.ts';

/** Every scalar column and its unit; what it holds is said in `sim/messages/english/columns.ts`. */
export const COLUMN_UNITS = {
  time_s: 's',
  heatSetting: '1',
  sourcePower_W: 'W',
  potPower_W: 'W',
  lossPower_W: 'W',
  potTemperature_K: 'K',
  vapourTemperature_K: 'K',
  potGauge_Pa: 'Pa',
  bedDrop_Pa: 'Pa',
  neckDrop_Pa: 'Pa',
  condenserDrop_Pa: 'Pa',
  neckSpeed_m_s: 'm/s',
  potWater_kg: 'kg',
  potDepth_m: 'm',
  steamRate_kg_s: 'kg/s',
  vapourRate_kg_s: 'kg/s',
  oilVapourRate_kg_s: 'kg/s',
  frontHeight_m: 'm',
  oilReady_kg: 'kg',
  oilHeld_kg: 'kg',
  duty_W: 'W',
  condensingLength_m: 'm',
  condensateRate_kg_s: 'kg/s',
  condensateTemperature_K: 'K',
  escapingWater_kg_s: 'kg/s',
  escapingOil_kg_s: 'kg/s',
  coolantFlow_kg_s: 'kg/s',
  coolantIn_K: 'K',
  coolantOut_K: 'K',
  coolantUsed_kg: 'kg',
  tubMean_K: 'K',
  tubDepth_m: 'm',
  mixedDepth_m: 'm',
  iceLeft_kg: 'kg',
  evaporated_kg: 'kg',
  separatorTemperature_K: 'K',
  cutSize_m: 'm',
  captureShare: '1',
  oilLayer_m: 'm',
  oilCollected_kg: 'kg',
  oilRate_kg_s: 'kg/s',
  hydrosol_kg: 'kg',
  oilDissolved_kg: 'kg',
  oilHaze_kg: 'kg',
  oilUncondensed_kg: 'kg',
  waterUncondensed_kg: 'kg',
  returned_kg: 'kg',
  fuelEnergy_J: 'J',
  sourceLossEnergy_J: 'J',
  potEnergy_J: 'J',
  lossEnergy_J: 'J',
  dutyEnergy_J: 'J',
  escapeEnergy_J: 'J',
  productEnergy_J: 'J',
  storedEnergy_J: 'J',
} as const satisfies Record<string, string>;

export type ColumnName = keyof typeof COLUMN_UNITS;
export const COLUMN_NAMES = Object.keys(COLUMN_UNITS) as readonly ColumnName[];

/** Every grid: several cells per row. Row r, cell c stands at `data[r * cells + c]`. */
export const GRID_UNITS = {
  bedTemperature_K: 'K',
  bedOil_kg: 'kg',
  tubTemperature_K: 'K',
  condenserHeat_W_m: 'W/m',
  condenserVapourShare: '1',
  condenserInside_K: 'K',
  condenserWall_K: 'K',
  condenserCoolant_K: 'K',
  oilCollectedBy_kg: 'kg',
  oilLostBy_kg: 'kg',
} as const satisfies Record<string, string>;

export type GridName = keyof typeof GRID_UNITS;
export const GRID_NAMES = Object.keys(GRID_UNITS) as readonly GridName[];

export interface Grid {
  readonly cells: number;
  readonly data: Float64Array;
}

export interface RunRecord {
  /** Rows filled; every column has at least this many entries and is cut to it when the run ends. */
  readonly rows: number;
  readonly columns: Readonly<Record<ColumnName, Float64Array>>;
  readonly grids: Readonly<Record<GridName, Grid>>;
  /** Ids of the oil constituents, in the order of the grids by constituent. */
  readonly constituents: readonly string[];
}

/** Buffers of a record, for transfer between threads. */
export const recordBuffers = (record: RunRecord): ArrayBuffer[] => [
  ...COLUMN_NAMES.map((name) => record.columns[name].buffer as ArrayBuffer),
  ...GRID_NAMES.map((name) => record.grids[name].data.buffer as ArrayBuffer),
];

/** Index of the last row at or before a time. */
export const rowAt = (record: RunRecord, time_s: number): number =>
  lastRowUpTo(record.columns.time_s, time_s, record.rows);

/** Where a time lies among the rows. */
export const positionAt = (record: RunRecord, time_s: number): Position =>
  positionOf(record.columns.time_s, time_s, record.rows);

/** Value of a column at a time, in a straight line between rows. */
export const columnAt = (record: RunRecord, name: ColumnName, time_s: number): number =>
  valueAt(record.columns[name], positionAt(record, time_s));
