/**
 * The record of a run: columnar typed arrays, one row every `recordEvery_s`, transferable between workers.
 * Views read it; they never compute physics. Rates are means over the step that ends at the row; amounts are totals
 * since the start.
 */
import { lastRowUpTo, positionOf, valueAt, type Position } from '../maths/interpolate.ts';

interface ColumnWords {
  readonly unit: string;
  readonly says: string;
}

/** Every scalar column: its unit and what it holds. */
export const COLUMNS = {
  time_s: { unit: 's', says: 'time since the heat went on' },
  heatSetting: { unit: '1', says: 'heat setting as a share of rated power' },
  sourcePower_W: { unit: 'W', says: 'power the source takes' },
  potPower_W: { unit: 'W', says: 'power entering the pot' },
  lossPower_W: { unit: 'W', says: 'heat lost to the air by pot, bed, lid and neck' },
  potTemperature_K: { unit: 'K', says: 'temperature of the water in the pot' },
  vapourTemperature_K: { unit: 'K', says: 'temperature of the vapour leaving the lid' },
  potGauge_Pa: { unit: 'Pa', says: 'pressure in the pot above the air' },
  bedDrop_Pa: { unit: 'Pa', says: 'pressure drop of the bed' },
  neckDrop_Pa: { unit: 'Pa', says: 'pressure drop of the neck' },
  condenserDrop_Pa: { unit: 'Pa', says: 'pressure drop of the condenser' },
  neckSpeed_m_s: { unit: 'm/s', says: 'vapour speed in the neck' },
  potWater_kg: { unit: 'kg', says: 'water in the pot' },
  potDepth_m: { unit: 'm', says: 'depth of the liquid in the pot' },
  steamRate_kg_s: { unit: 'kg/s', says: 'steam made in the pot' },
  vapourRate_kg_s: { unit: 'kg/s', says: 'water vapour reaching the condenser' },
  oilVapourRate_kg_s: { unit: 'kg/s', says: 'oil vapour reaching the condenser' },
  frontHeight_m: { unit: 'm', says: 'height of the steam front in the bed above the grid' },
  oilReady_kg: { unit: 'kg', says: 'ready oil left in the charge' },
  oilHeld_kg: { unit: 'kg', says: 'held oil left in the charge' },
  duty_W: { unit: 'W', says: 'heat the condenser takes out' },
  condensingLength_m: { unit: 'm', says: 'length of tube needed to condense at this moment, at most the tube length' },
  condensateRate_kg_s: { unit: 'kg/s', says: 'distillate leaving the condenser, water and oil' },
  condensateTemperature_K: { unit: 'K', says: 'temperature of the distillate at the outlet' },
  escapingWater_kg_s: { unit: 'kg/s', says: 'water vapour leaving the outlet uncondensed' },
  escapingOil_kg_s: { unit: 'kg/s', says: 'oil vapour leaving the outlet uncondensed' },
  coolantFlow_kg_s: { unit: 'kg/s', says: 'cooling water let in or pumped' },
  coolantIn_K: { unit: 'K', says: 'temperature of the cooling water coming in' },
  coolantOut_K: { unit: 'K', says: 'temperature of the cooling water leaving, or of the tub surface' },
  coolantUsed_kg: { unit: 'kg', says: 'tap water used so far' },
  tubMean_K: { unit: 'K', says: 'mean temperature of tub, barrel or jacket water' },
  tubDepth_m: { unit: 'm', says: 'depth of water in the tub' },
  mixedDepth_m: {
    unit: 'm',
    says: 'depth of the tub that the incoming water mixes: from the bottom up, with a hose from the top from the surface down',
  },
  iceLeft_kg: { unit: 'kg', says: 'ice still floating in the tub' },
  evaporated_kg: { unit: 'kg', says: 'water evaporated from the tub so far' },
  separatorTemperature_K: { unit: 'K', says: 'temperature in the separator' },
  cutSize_m: { unit: 'm', says: 'smallest oil drop the separator catches whole' },
  captureShare: { unit: '1', says: 'share of the separable oil that the separator catches' },
  oilLayer_m: { unit: 'm', says: 'thickness of the oil layer in the separator' },
  oilCollected_kg: { unit: 'kg', says: 'oil collected so far' },
  oilRate_kg_s: { unit: 'kg/s', says: 'oil being collected' },
  hydrosol_kg: { unit: 'kg', says: 'distillate water kept so far' },
  oilDissolved_kg: { unit: 'kg', says: 'oil dissolved in the kept distillate water' },
  oilHaze_kg: { unit: 'kg', says: 'oil carried off as haze in the kept distillate water' },
  oilUncondensed_kg: { unit: 'kg', says: 'oil lost as vapour at the outlet' },
  waterUncondensed_kg: { unit: 'kg', says: 'water lost as vapour at the outlet' },
  returned_kg: { unit: 'kg', says: 'distillate water run back to the pot' },
  fuelEnergy_J: { unit: 'J', says: 'energy taken by the source so far' },
  sourceLossEnergy_J: { unit: 'J', says: 'heat of the source that missed the pot so far' },
  potEnergy_J: { unit: 'J', says: 'energy that entered the pot so far' },
  lossEnergy_J: { unit: 'J', says: 'heat lost to the air by pot, bed, lid and neck so far' },
  dutyEnergy_J: { unit: 'J', says: 'heat taken out by the condenser so far' },
  escapeEnergy_J: { unit: 'J', says: 'energy carried off by escaping vapour so far, above liquid at 0 °C' },
  productEnergy_J: { unit: 'J', says: 'heat carried off in the distillate so far, above liquid at 0 °C' },
  storedEnergy_J: { unit: 'J', says: 'heat stored in source, pot, bed, lid and neck since the start' },
} as const satisfies Record<string, ColumnWords>;

export type ColumnName = keyof typeof COLUMNS;
export const COLUMN_NAMES = Object.keys(COLUMNS) as readonly ColumnName[];

/** Every grid: several cells per row. Row r, cell c stands at `data[r * cells + c]`. */
export const GRIDS = {
  bedTemperature_K: { unit: 'K', says: 'temperature of each layer of the bed, from the grid up' },
  bedOil_kg: { unit: 'kg', says: 'oil left in each layer of the bed, from the grid up' },
  tubTemperature_K: { unit: 'K', says: 'temperature of each layer of the tub, from the top down' },
  condenserHeat_W_m: { unit: 'W/m', says: 'heat passing each segment of the condenser, from the vapour end' },
  condenserVapourShare: { unit: '1', says: 'share of the vapour not yet condensed at the end of each segment' },
  condenserInside_K: { unit: 'K', says: 'temperature inside the tube at each segment' },
  condenserWall_K: { unit: 'K', says: 'outer wall temperature at each segment' },
  condenserCoolant_K: { unit: 'K', says: 'cooling-water temperature at each segment' },
  oilCollectedBy_kg: { unit: 'kg', says: 'oil collected so far, by constituent' },
  oilLostBy_kg: { unit: 'kg', says: 'oil dissolved, hazed or uncondensed so far, by constituent' },
} as const satisfies Record<string, ColumnWords>;

export type GridName = keyof typeof GRIDS;
export const GRID_NAMES = Object.keys(GRIDS) as readonly GridName[];

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
