/** A run whose oil follows a chosen curve, for tests of what is read off a run. */
import { COLUMN_NAMES, exampleScenario, simulate, type RunEvent, type RunResult } from '../../../sim/index.ts';

const short = simulate({
  ...exampleScenario('class-glass'),
  run: { duration_s: 60, stopAtShare: null, stopAtOilRate_kg_s: null, stopAtDistillate_kg: null },
});

export interface MadeUp {
  readonly end_s: number;
  readonly every_s: number;
  /** Oil collected, kg, by time. */
  readonly oil: (time_s: number) => number;
  /** Oil still in the plant, kg, by time. */
  readonly inPlant: (time_s: number) => number;
  /** Power of the source, W; water, kg/s; steam, kg/s. */
  readonly power: number;
  readonly tap: number;
  readonly steam: number;
  readonly events?: readonly RunEvent[];
}

export function madeUpRun({ end_s, every_s, oil, inPlant, power, tap, steam, events = [] }: MadeUp): RunResult {
  const rows = Math.round(end_s / every_s) + 1;
  const columns = Object.fromEntries(COLUMN_NAMES.map((name) => [name, new Float64Array(rows)])) as Record<
    (typeof COLUMN_NAMES)[number],
    Float64Array
  >;
  for (let row = 0; row < rows; row++) {
    const time = row * every_s;
    columns.time_s[row] = time;
    columns.oilCollected_kg[row] = oil(time);
    columns.oilHeld_kg[row] = inPlant(time);
    columns.fuelEnergy_J[row] = power * time;
    columns.coolantUsed_kg[row] = tap * time;
    columns.hydrosol_kg[row] = steam * time;
    columns.potWater_kg[row] = 10 - steam * time;
    columns.coolantOut_K[row] = 300 + time / 1000;
  }
  return {
    ...short,
    record: { ...short.record, rows, columns },
    events,
    summary: {
      ...short.summary,
      oilCollected_kg: oil(end_s),
      oilDensity_kg_m3: 900,
      oilCollected_mL: (oil(end_s) / 900) * 1e6,
      end_s,
    },
  };
}
