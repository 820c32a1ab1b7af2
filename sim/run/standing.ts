/** How long the hydrosol of a run takes to clear when it stands. */
import { tableLiquidDensity, tableLiquidViscosity } from '../fluids/water-table.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { timeToClear } from '../transfer/haze.ts';
import { LIMITS } from './limits.ts';
import type { RunRecord } from './record.ts';

/** Share of the haze after which the water counts as clear. */
export const STILL_CLOUDY = 0.1;

/** Mean size of the smallest drop that the separator caught whole, m, weighted by the haze that left; 0 without haze. */
function meanCut({ columns, rows }: RunRecord): number {
  const { cutSize_m, oilHaze_kg } = columns;
  let weighted = 0;
  for (let row = 1; row < rows; row++) {
    const haze = (oilHaze_kg[row] as number) - (oilHaze_kg[row - 1] as number);
    weighted += haze * (cutSize_m[row] as number);
  }
  const all = rows > 0 ? (oilHaze_kg[rows - 1] as number) : 0;
  return all > 0 ? weighted / all : 0;
}

/**
 * Time in which nine tenths of the haze leave a jar at the air's temperature, s; `null` where a month does not do or
 * nothing is known of the oil. The drops are those that pass the separator at its mean cut, each cut counted by the haze
 * that it let through.
 */
export function timeToStand(record: RunRecord, scenario: Scenario, oilDensity_kg_m3: number | null): number | null {
  if (oilDensity_kg_m3 === null) return null;
  const cut_m = meanCut(record);
  if (!(cut_m > 0)) return null;
  const { separator, factors, site } = scenario;
  return timeToClear(
    { median_m: separator.dropMedian_m * factors.dropSize, spread: separator.dropSpread, cut_m },
    {
      height_m: LIMITS.jarDepth_m,
      densityDifference_kg_m3: tableLiquidDensity(site.airTemperature_K) - oilDensity_kg_m3,
      viscosity_Pa_s: tableLiquidViscosity(site.airTemperature_K),
    },
    STILL_CLOUDY,
  );
}
