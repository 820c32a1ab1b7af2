/** The condenser along its tube at a moment of a run: what is vapour still, how warm all is, where the heat goes. */
import { columnAt, positionAt, type GridName, type RunRecord } from './record.ts';
import { cellAt } from '../maths/interpolate.ts';

export interface CondenserMoment {
  /** Vapour that comes in; no more than nothing before and after the boil. */
  readonly vapour_kg_s: number;
  /** From the vapour end to where condensing ends; the whole length where vapour comes out at the end. */
  readonly condensing_m: number;
  readonly escapes: boolean;
  readonly duty_W: number;
  /** From the vapour end to where half of the heat has passed the wall; `null` while none passes. */
  readonly halfOfHeat_m: number | null;
  readonly distillate_K: number;
  /** By segment from the vapour end: share of what came in that is vapour still, and temperatures. */
  readonly vapourShare: Float64Array;
  readonly heat_W_m: Float64Array;
  readonly inside_K: Float64Array;
  readonly coolant_K: Float64Array;
}

export function condenserAt(length_m: number, record: RunRecord, time_s: number): CondenserMoment {
  const position = positionAt(record, time_s);
  const row = (name: GridName): Float64Array => {
    const { cells, data } = record.grids[name];
    return Float64Array.from({ length: cells }, (_, cell) => cellAt(data, cells, cell, position));
  };
  const heat_W_m = row('condenserHeat_W_m');
  const condensing_m = Math.min(length_m, columnAt(record, 'condensingLength_m', time_s));
  const vapour_kg_s = Math.max(0, columnAt(record, 'vapourRate_kg_s', time_s));
  return {
    vapour_kg_s,
    condensing_m,
    escapes: vapour_kg_s > 0 && condensing_m >= length_m,
    duty_W: columnAt(record, 'duty_W', time_s),
    halfOfHeat_m: halfwayOf(heat_W_m, length_m / heat_W_m.length),
    distillate_K: columnAt(record, 'condensateTemperature_K', time_s),
    vapourShare: row('condenserVapourShare'),
    heat_W_m,
    inside_K: row('condenserInside_K'),
    coolant_K: row('condenserCoolant_K'),
  };
}

/** Where half of a sum is reached, straight within its cell. */
function halfwayOf(values: Float64Array, cell_m: number): number | null {
  const half = values.reduce((sum, value) => sum + Math.max(0, value), 0) / 2;
  let sum = 0;
  for (let cell = 0; cell < values.length; cell += 1) {
    const value = Math.max(0, values[cell] as number);
    if (value > 0 && sum + value >= half) return (cell + (half - sum) / value) * cell_m;
    sum += value;
  }
  return null;
}
