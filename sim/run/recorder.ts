/** Writes rows of the record from the still's state. */
import type { Still } from '../still/still.ts';
import { COLUMN_NAMES, GRID_NAMES, type ColumnName, type Grid, type GridName, type RunRecord } from './record.ts';

type Columns = Record<ColumnName, Float64Array>;

/** Values that a record holds at most, about 80 MB. */
export const MOST_VALUES = 1e7;

/** Cells of each grid for a still. */
const cellsFor = (still: Still): Record<GridName, number> => {
  const layers = still.bed?.layers ?? 1;
  return {
    bedTemperature_K: layers,
    bedOil_kg: layers,
    tubTemperature_K: still.coolant.layers().length,
    condenserHeat_W_m: still.condenser.segments,
    condenserVapourShare: still.condenser.segments,
    condenserInside_K: still.condenser.segments,
    condenserWall_K: still.condenser.segments,
    condenserCoolant_K: still.condenser.segments,
    oilCollectedBy_kg: still.oil.count,
    oilLostBy_kg: still.oil.count,
  };
};

/** Values in a row of the record. */
export const valuesInRow = (still: Still): number =>
  Object.values(cellsFor(still)).reduce((sum, cells) => sum + cells, COLUMN_NAMES.length);

export class Recorder {
  private rows = 0;
  private readonly columns: Columns;
  private readonly grids: Record<GridName, { cells: number; data: Float64Array }>;

  private readonly still: Still;
  private readonly capacity: number;

  constructor(still: Still, capacity: number) {
    this.still = still;
    this.capacity = capacity;
    this.columns = Object.fromEntries(COLUMN_NAMES.map((name) => [name, new Float64Array(capacity)])) as Columns;
    const cellsOf = cellsFor(still);
    this.grids = Object.fromEntries(
      GRID_NAMES.map((name) => [name, { cells: cellsOf[name], data: new Float64Array(cellsOf[name] * capacity) }]),
    ) as Record<GridName, { cells: number; data: Float64Array }>;
  }

  /** Takes a row at a time, for the step of length dt that ended there. */
  take(time: number, dt: number, startEnergy: number): void {
    if (this.rows >= this.capacity) return;
    const row = this.rows++;
    this.takeColumns(row, time, dt, startEnergy);
    this.takeGrids(row);
  }

  private takeColumns(row: number, time: number, dt: number, startEnergy: number): void {
    const { still, columns: c } = this;
    const { source, pot, condenser, coolant, separator } = still;
    c.time_s[row] = time;
    c.heatSetting[row] = source.setting;
    c.sourcePower_W[row] = source.taken / dt;
    c.potPower_W[row] = source.toPot / dt;
    c.lossPower_W[row] = still.lossInStep() / dt;
    c.potTemperature_K[row] = pot.temperature;
    c.vapourTemperature_K[row] = still.lidTemperature;
    c.potGauge_Pa[row] = still.gauge();
    c.bedDrop_Pa[row] = still.bedDrop;
    c.neckDrop_Pa[row] = still.neckDrop;
    c.condenserDrop_Pa[row] = condenser.drop;
    c.neckSpeed_m_s[row] = still.neckSpeed;
    c.potWater_kg[row] = pot.water;
    c.potDepth_m[row] = pot.depth();
    c.steamRate_kg_s[row] = pot.out.water / dt;
    c.vapourRate_kg_s[row] = still.arrivingWater / dt;
    c.oilVapourRate_kg_s[row] = still.arrivingOil / dt;
    c.frontHeight_m[row] = still.bed?.frontHeight(pot.boilingTemperature) ?? 0;
    c.oilReady_kg[row] = still.release.total(still.release.ready);
    c.oilHeld_kg[row] = still.release.total(still.release.held);
    c.duty_W[row] = condenser.duty / dt;
    c.condensingLength_m[row] = condenser.condensingLength;
    c.condensateRate_kg_s[row] = (condenser.condensate.water + condenser.condensate.oilTotal()) / dt;
    c.condensateTemperature_K[row] =
      condenser.condensate.water > 0 ? condenser.condensateTemperature : still.scenario.site.airTemperature_K;
    c.escapingWater_kg_s[row] = condenser.escaped.water / dt;
    c.escapingOil_kg_s[row] = condenser.escaped.oilTotal() / dt;
    c.coolantFlow_kg_s[row] = coolant.flow;
    c.coolantIn_K[row] = coolant.inletTemperature;
    c.coolantOut_K[row] = coolant.outletTemperature;
    c.coolantUsed_kg[row] = coolant.used;
    c.tubMean_K[row] = coolant.meanTemperature();
    c.tubDepth_m[row] = coolant.depth();
    c.mixedDepth_m[row] = coolant.mixedDepth();
    c.iceLeft_kg[row] = coolant.iceLeft;
    c.evaporated_kg[row] = coolant.evaporated;
    c.separatorTemperature_K[row] = separator.temperature;
    c.cutSize_m[row] = separator.cutSize;
    c.captureShare[row] = separator.captureShare;
    c.oilLayer_m[row] = separator.layer();
    c.oilCollected_kg[row] = sum(separator.collected);
    c.oilRate_kg_s[row] = sum(separator.caught) / dt;
    c.hydrosol_kg[row] = still.keptWater;
    c.oilDissolved_kg[row] = sum(separator.dissolved);
    c.oilHaze_kg[row] = sum(separator.haze);
    c.oilUncondensed_kg[row] = sum(still.escapedOil);
    c.waterUncondensed_kg[row] = still.escapedWater;
    c.returned_kg[row] = still.returnedWater;
    c.fuelEnergy_J[row] = still.fuelEnergy;
    c.sourceLossEnergy_J[row] = still.missedEnergy;
    c.potEnergy_J[row] = still.potEnergy;
    c.lossEnergy_J[row] = still.lossEnergy;
    c.dutyEnergy_J[row] = still.dutyEnergy;
    c.escapeEnergy_J[row] = still.escapeEnergy;
    c.productEnergy_J[row] = still.condensateEnergy;
    c.storedEnergy_J[row] = still.storedEnergy() - startEnergy;
  }

  private takeGrids(row: number): void {
    const { still, grids } = this;
    const { bed, release, condenser, coolant, separator } = still;
    const put = (grid: { cells: number; data: Float64Array }, values: ArrayLike<number>) => {
      for (let cell = 0; cell < grid.cells; cell++) grid.data[row * grid.cells + cell] = values[cell] as number;
    };
    if (bed) put(grids.bedTemperature_K, bed.temperature);
    else grids.bedTemperature_K.data[row] = still.pot.temperature;
    for (let cell = 0; cell < grids.bedOil_kg.cells; cell++)
      grids.bedOil_kg.data[row * grids.bedOil_kg.cells + cell] = release.oilIn[cell] as number;
    put(grids.tubTemperature_K, coolant.layers());
    put(grids.condenserHeat_W_m, condenser.heatPerMetre);
    put(grids.condenserVapourShare, condenser.vapourShare);
    put(grids.condenserInside_K, condenser.inside);
    put(grids.condenserWall_K, condenser.wall);
    put(grids.condenserCoolant_K, coolant.segmentTemperature);
    put(grids.oilCollectedBy_kg, separator.collected);
    const lost = grids.oilLostBy_kg;
    for (let i = 0; i < lost.cells; i++)
      lost.data[row * lost.cells + i] =
        (separator.dissolved[i] as number) + (separator.haze[i] as number) + (still.escapedOil[i] as number);
  }

  /** The record, cut to the rows taken. */
  finish(): RunRecord {
    const columns = Object.fromEntries(
      COLUMN_NAMES.map((name) => [name, this.columns[name].slice(0, this.rows)]),
    ) as Columns;
    const grids = Object.fromEntries(
      GRID_NAMES.map((name) => {
        const { cells, data } = this.grids[name];
        return [name, { cells, data: data.slice(0, this.rows * cells) }];
      }),
    ) as Record<GridName, Grid>;
    return { rows: this.rows, columns, grids, constituents: [...this.still.oil.ids] };
  }
}

export function sum(values: Float64Array): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += values[i] as number;
  return total;
}
