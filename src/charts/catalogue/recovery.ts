/** Share of the oil in the charge that has been collected. */
import { CHART_NAMES, type Band, type LoggedPoints, type Chart } from '../model/chart.ts';
import { columnOf, lineInRuns, type NamedRun } from './runs.ts';

/** Spread of an ensemble of runs, as shares. */
export interface RecoveryBand {
  readonly times: Float64Array;
  readonly p10: Float64Array;
  readonly p50: Float64Array;
  readonly p90: Float64Array;
}

/** A share of the oil that somebody weighed. */
export type RecoveryPoint = LoggedPoints['points'][number];

export function recoveryChart(
  runs: readonly NamedRun[],
  band?: RecoveryBand,
  logged: readonly RecoveryPoint[] = [],
): Chart {
  const bands: readonly Band[] = band
    ? [{ key: 'p10-p90', label: '8 of 10 runs', xs: band.times, low: band.p10, high: band.p90, ink: 'oil-tint' }]
    : [];
  return {
    id: 'recovery',
    title: CHART_NAMES.recovery,
    says: 'Oil collected as a share of the oil in the charge.',
    xAxis: 'time',
    derived: [],
    lanes: [
      {
        kind: 'lines',
        key: 'share',
        title: 'Share of the oil in the charge',
        measure: 'share',
        policy: { fromZero: true, leastSpan: 100, ceiling: 100 },
        parts: 1,
        bands,
        points: logged.length > 0 ? [{ key: 'logged', label: 'Weighed', points: logged, ink: 'ink' }] : [],
        series: [
          ...(band
            ? [
                {
                  key: 'p50',
                  label: 'Typical run',
                  says: 'middle of the likely runs',
                  measure: 'share',
                  run: 0,
                  runName: 'likely runs',
                  xs: band.times,
                  values: band.p50,
                  ink: 'oil',
                  weight: 1,
                  dash: [3, 3],
                  labelled: 'end',
                } as const,
              ]
            : []),
          ...lineInRuns(
            runs,
            {
              key: 'recovery',
              label: 'Collected',
              says: 'oil collected as a share of the oil in the charge',
              measure: 'share',
              ink: 'oil',
              weight: 2,
            },
            (result) => {
              const inCharge = result.summary.oilInCharge_kg;
              return inCharge > 0 ? columnOf(result, 'oilCollected_kg').map((collected) => collected / inCharge) : null;
            },
          ),
        ],
      },
    ],
  };
}
