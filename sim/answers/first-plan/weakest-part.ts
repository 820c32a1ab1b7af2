/** Which part of a still is nearest to what it can take in a run, as a share of that. */
import { LIMITS } from '../../run/limits.ts';
import type { RunResult } from '../../run/result.ts';
import { ZERO_CELSIUS } from '../../constants.ts';
import { waterSource } from '../../geometry/condenser-kind.ts';
import { sheetMeasures } from '../building-sheet/measures.ts';

/** What a part is used to; each with its value and its limit in SI. */
export interface PartLoad {
  readonly part: 'pot-water' | 'tub' | 'neck' | 'separator' | 'pressure' | 'base';
  readonly value: number;
  readonly limit: number;
  /** One and more is too much. */
  readonly load: number;
}

/** Every part, most loaded first. */
export function partLoads({ scenario, summary }: RunResult): readonly PartLoad[] {
  const { pot, cooling, separator } = scenario;
  const tap_K = Math.max(...cooling.tapTemperature_K.map(({ value }) => value));
  const least = sheetMeasures(scenario, summary.peakSteam_kg_s).separator.leastBore_m;
  const part = (name: PartLoad['part'], value: number, limit: number, load = value / limit): PartLoad => ({
    part: name,
    value,
    limit,
    load,
  });
  const warmest_K = summary.coolantPeakOut_C + ZERO_CELSIUS;
  const loads = [
    part('pot-water', pot.water_kg - summary.potWaterLeft_kg, pot.water_kg),
    part('neck', summary.peakNeckSpeed_m_s, LIMITS.vapourSpeed_m_s),
    part('pressure', summary.peakPotGauge_Pa, LIMITS.potGauge_Pa),
    part('base', summary.baseFlux_W_m2, LIMITS.scorchFlux_W_m2),
    ...(least === null ? [] : [part('separator', separator.bore_m, least, (least / separator.bore_m) ** 2)]),
    ...(waterSource(scenario) === 'tap'
      ? []
      : [
          part(
            'tub',
            warmest_K,
            LIMITS.scaldingWater_K,
            Math.max(0, (warmest_K - tap_K) / Math.max(1, LIMITS.scaldingWater_K - tap_K)),
          ),
        ]),
  ];
  return loads.sort((a, b) => b.load - a.load);
}
