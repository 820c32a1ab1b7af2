/** A small run with numbers one can check by hand: ten rows a minute apart, every value different. */
import {
  COLUMN_NAMES,
  GRID_NAMES,
  readScenario,
  type ColumnName,
  type Grid,
  type GridName,
  type RunResult,
} from '../../../sim/index.ts';
import { eventOf } from '../../sim/messages/sample-events.ts';

export const ROWS = 10;
export const TIMES = Float64Array.from({ length: ROWS }, (_, row) => row * 60);

const CELLS: Record<GridName, number> = {
  bedTemperature_K: 4,
  bedOil_kg: 4,
  tubTemperature_K: 3,
  condenserHeat_W_m: 5,
  condenserVapourShare: 5,
  condenserInside_K: 5,
  condenserWall_K: 5,
  condenserCoolant_K: 5,
  oilCollectedBy_kg: 2,
  oilLostBy_kg: 2,
};

/** Columns rise evenly from one value to another over the run. */
const COURSES: Partial<Record<ColumnName, readonly [number, number]>> = {
  sourcePower_W: [0, 2000],
  potPower_W: [0, 1500],
  potTemperature_K: [288.15, 373.15],
  vapourTemperature_K: [293.15, 372.15],
  coolantIn_K: [285.15, 285.15],
  coolantOut_K: [285.15, 312.15],
  tubMean_K: [285.15, 300.15],
  coolantFlow_kg_s: [0.02, 0.02],
  condensateTemperature_K: [293.15, 302.15],
  condensateRate_kg_s: [0, 0.0006],
  condensingLength_m: [0, 1.8],
  vapourRate_kg_s: [0, 0.0006],
  frontHeight_m: [0, 0.18],
  oilCollected_kg: [0, 0.018],
  oilRate_kg_s: [0, 3e-6],
  cutSize_m: [5e-5, 5e-5],
  fuelEnergy_J: [0, 1_000_000],
  sourceLossEnergy_J: [0, 250_000],
  potEnergy_J: [0, 700_000],
  dutyEnergy_J: [0, 400_000],
  lossEnergy_J: [0, 90_000],
  productEnergy_J: [0, 20_000],
  escapeEnergy_J: [0, 0],
  storedEnergy_J: [0, 240_000],
};

const rising = ([from, to]: readonly [number, number]): Float64Array =>
  Float64Array.from({ length: ROWS }, (_, row) => from + ((to - from) * row) / (ROWS - 1));

export function handMadeRun(courses: Partial<Record<ColumnName, readonly [number, number]>> = {}): RunResult {
  const read = readScenario({ name: 'Tern Hollow, by hand' });
  if (!read.ok) throw new Error('the default scenario is not valid');
  const all = { ...COURSES, ...courses };
  const columns = Object.fromEntries(
    COLUMN_NAMES.map((name) => [name, name === 'time_s' ? TIMES.slice() : rising(all[name] ?? [0, 0])]),
  ) as Record<ColumnName, Float64Array>;
  const grids = Object.fromEntries(
    GRID_NAMES.map((name): [GridName, Grid] => {
      const cells = CELLS[name];
      const data = Float64Array.from({ length: ROWS * cells }, (_, at) => {
        const row = Math.floor(at / cells);
        const cell = at % cells;
        if (name === 'oilCollectedBy_kg') return (0.018 * row * (cell === 0 ? 2 : 1)) / (3 * (ROWS - 1));
        return name.endsWith('_K') ? 290 + 8 * row + cell : 10 * row + cell;
      });
      return [name, { cells, data }];
    }),
  ) as Record<GridName, Grid>;
  const result = {
    scenario: read.scenario,
    record: { rows: ROWS, columns, grids, constituents: ['linalyl_acetate', 'limonene'] },
    events: [eventOf('first-boil', 120), eventOf('vapour-escapes', 400), eventOf('run-ends', 540)],
    summary: { oilInCharge_kg: 0.02, oilDensity_kg_m3: 800, end_s: 540 },
  };
  return result as unknown as RunResult;
}
