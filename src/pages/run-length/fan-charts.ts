/** The likely runs as charts: share of the oil and volume of oil over time, with their spread. */
import type { EnsembleSummary, RunResult } from '../../../sim/index.ts';
import { recoveryChart } from '../../charts/catalogue/recovery.ts';
import { lineInRuns, LONG_DASH, oilVolumeOf, SOLID, type NamedRun } from '../../charts/catalogue/runs.ts';
import type { Band, Chart, Series } from '../../charts/model/chart.ts';

export const CUBIC_METRES_A_MILLILITRE = 1e-6;

const inCubicMetres = (volumes_mL: Float64Array): Float64Array =>
  volumes_mL.map((volume) => volume * CUBIC_METRES_A_MILLILITRE);

function spread({ times_s, oil_mL }: EnsembleSummary): {
  readonly bands: readonly Band[];
  readonly middle: readonly Series[];
} {
  const middle: Series = {
    key: 'p50',
    label: 'Typical run',
    says: 'typical of the likely runs',
    measure: 'oilVolume',
    run: 0,
    runName: 'likely runs',
    xs: times_s,
    values: inCubicMetres(oil_mL.p50),
    ink: 'oil',
    weight: 1,
    dash: LONG_DASH,
    labelled: 'end',
  };
  const low: Series = {
    ...middle,
    key: 'p10',
    label: 'Low, 1 in 10',
    says: '1 of 10 likely runs gives less',
    values: inCubicMetres(oil_mL.p10),
    labelled: 'end',
    hidden: true,
  };
  const high: Series = {
    ...middle,
    key: 'p90',
    label: 'High, 1 in 10',
    says: '1 of 10 likely runs gives more',
    values: inCubicMetres(oil_mL.p90),
    labelled: 'end',
    hidden: true,
  };
  const band: Band = {
    key: 'p10-p90',
    label: '8 of 10 runs',
    xs: times_s,
    low: inCubicMetres(oil_mL.p10),
    high: inCubicMetres(oil_mL.p90),
    ink: 'oil-tint',
  };
  return { bands: [band], middle: [high, middle, low] };
}

/** @param summary of the likely runs, `null` before any has run */
export function fanCharts(result: RunResult, summary: EnsembleSummary | null): readonly Chart[] {
  const run: NamedRun = { name: result.scenario.name, result };
  const { bands, middle } = summary && summary.finished > 1 ? spread(summary) : { bands: [], middle: [] };
  const volume: Chart = {
    id: 'oil',
    title: 'Oil, and how sure it is',
    says: 'Oil collected as the run is planned, with the typical one of the likely runs and the band of 8 of 10 runs.',
    xAxis: 'time',
    derived: [],
    lanes: [
      {
        kind: 'lines',
        key: 'oil',
        title: 'Oil in the receiver',
        measure: 'oilVolume',
        policy: { fromZero: true, leastSpan: 1 },
        parts: 1.25,
        bands,
        points: [],
        series: [
          ...middle,
          ...lineInRuns(
            [run],
            {
              key: 'planned',
              label: 'As planned',
              says: 'oil collected as the run is planned',
              measure: 'oilVolume',
              ink: 'oil',
              weight: 2,
              dash: SOLID,
            },
            oilVolumeOf,
          ),
        ],
      },
    ],
  };
  const band = summary && summary.finished > 1 ? { times: summary.times_s, ...summary.recovery } : undefined;
  return [volume, recoveryChart([run], band)];
}
