/** How long the hydrosol of a run takes to clear when it stands. */
import { tableLiquidDensity, tableLiquidViscosity } from '../fluids/water-table.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { timeToClear } from '../transfer/haze.ts';
import { LIMITS } from './limits.ts';
import { columnAt, type RunRecord } from './record.ts';

/** Share of the haze after which the water counts as clear. */
export const STILL_CLOUDY = 0.1;

/**
 * Time in which nine tenths of the haze leave a jar at the air's temperature, s; `null` where a month does not do or
 * nothing is known of the oil. The drops are those that passed the separator when half the oil had come.
 */
export function timeToStand(
  record: RunRecord,
  scenario: Scenario,
  oilDensity_kg_m3: number | null,
  t50_s: number | null,
): number | null {
  if (oilDensity_kg_m3 === null || t50_s === null) return null;
  const cut_m = columnAt(record, 'cutSize_m', t50_s);
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
