/** Temperatures along the way: pot, lid, outlet, tub, cooling water. */
import { CHART_NAMES, type Chart } from '../model/chart.ts';
import { columnInRuns, columnOf, columnSays, DOTS, lineInRuns, LONG_DASH, SOLID, type NamedRun } from './runs.ts';

export const temperaturesChart = (runs: readonly NamedRun[]): Chart => ({
  id: 'temperatures',
  title: CHART_NAMES.temperatures,
  says: 'Temperature of the pot, the vapour at the lid, the distillate and the cooling water over the run.',
  xAxis: 'time',
  derived: [],
  lanes: [
    {
      kind: 'lines',
      key: 'temperature',
      title: 'Temperature',
      measure: 'temperature',
      policy: { fromZero: false, leastSpan: 20 },
      parts: 1.25,
      bands: [],
      points: [],
      series: [
        ...columnInRuns(runs, {
          column: 'coolantIn_K',
          label: 'Cooling in',
          measure: 'temperature',
          ink: 'water',
          weight: 1.25,
          dash: DOTS,
        }),
        ...columnInRuns(runs, {
          column: 'tubMean_K',
          label: 'Tub mean',
          measure: 'temperature',
          ink: 'water',
          weight: 1.25,
          dash: LONG_DASH,
        }),
        ...columnInRuns(runs, {
          column: 'coolantOut_K',
          label: 'Water out',
          measure: 'temperature',
          ink: 'water',
          dash: SOLID,
        }),
        ...lineInRuns(
          runs,
          {
            key: 'condensateTemperature_K',
            label: 'Distillate',
            says: columnSays('condensateTemperature_K'),
            measure: 'temperature',
            ink: 'ink',
          },
          (result) =>
            whileFlowing(columnOf(result, 'condensateTemperature_K'), columnOf(result, 'condensateRate_kg_s')),
        ),
        ...columnInRuns(runs, {
          column: 'vapourTemperature_K',
          label: 'Vapour',
          measure: 'temperature',
          ink: 'steam',
          dash: LONG_DASH,
        }),
        ...columnInRuns(runs, { column: 'potTemperature_K', label: 'Pot', measure: 'temperature', ink: 'copper' }),
      ],
    },
  ],
});

/** Distillate has a temperature only while it runs. */
const whileFlowing = (temperature: Float64Array, rate: Float64Array): Float64Array =>
  temperature.map((value, row) => ((rate[row] as number) > 0 ? value : NaN));
