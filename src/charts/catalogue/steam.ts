/** Steam made, steam that arrives, distillate that runs, and vapour that gets away. */
import { CHART_NAMES, type Chart } from '../model/chart.ts';
import { columnInRuns, columnOf, hasAny, LONG_DASH, type NamedRun } from './runs.ts';

export function steamChart(runs: readonly NamedRun[]): Chart {
  const escapes = runs.some(({ result }) => hasAny(columnOf(result, 'escapingWater_kg_s')));
  return {
    id: 'steam',
    title: CHART_NAMES.steam,
    says: 'Steam made in the pot, vapour that reaches the condenser and distillate that leaves it, by the hour.',
    xAxis: 'time',
    derived: [],
    lanes: [
      {
        kind: 'lines',
        key: 'rate',
        title: 'Rate',
        measure: 'steamRate',
        policy: { fromZero: true, leastSpan: 0.2 },
        parts: 1,
        bands: [],
        points: [],
        series: [
          ...columnInRuns(runs, {
            column: 'steamRate_kg_s',
            label: 'Steam made',
            measure: 'steamRate',
            ink: 'steam',
            dash: LONG_DASH,
          }),
          ...columnInRuns(runs, {
            column: 'vapourRate_kg_s',
            label: 'At condenser',
            measure: 'steamRate',
            ink: 'steam',
          }),
          ...columnInRuns(runs, {
            column: 'condensateRate_kg_s',
            label: 'Distillate',
            measure: 'steamRate',
            ink: 'water',
          }),
          ...(escapes
            ? columnInRuns(runs, {
                column: 'escapingWater_kg_s',
                label: 'Escaping',
                measure: 'steamRate',
                ink: 'alarm',
                dash: [4, 2],
                weight: 2.2,
              })
            : []),
        ],
      },
    ],
  };
}
