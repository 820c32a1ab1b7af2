/** Where the heat goes: source, pot, condenser, losses. */
import { CHART_NAMES, type Chart } from '../model/chart.ts';
import { columnInRuns, DOTS, LONG_DASH, type NamedRun } from './runs.ts';

export const heatChart = (runs: readonly NamedRun[]): Chart => ({
  id: 'heat',
  title: CHART_NAMES.heat,
  says: 'Power taken by the source, power that enters the pot, heat taken out by the condenser and heat lost to the air.',
  xAxis: 'time',
  derived: [],
  lanes: [
    {
      kind: 'lines',
      key: 'power',
      title: 'Power',
      measure: 'power',
      policy: { fromZero: true, leastSpan: 0.1 },
      parts: 1,
      bands: [],
      points: [],
      series: [
        ...columnInRuns(runs, {
          column: 'lossPower_W',
          label: 'Lost to air',
          measure: 'power',
          ink: 'ink-muted',
          dash: DOTS,
        }),
        ...columnInRuns(runs, {
          column: 'sourcePower_W',
          label: 'Source',
          measure: 'power',
          ink: 'copper',
          dash: LONG_DASH,
          weight: 1.25,
        }),
        ...columnInRuns(runs, { column: 'potPower_W', label: 'Into pot', measure: 'power', ink: 'copper' }),
        ...columnInRuns(runs, { column: 'duty_W', label: 'Condenser', measure: 'power', ink: 'water' }),
      ],
    },
  ],
});
