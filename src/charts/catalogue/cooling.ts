/** Cooling water: temperatures with the layers of the tub, and below them the flow. */
import { isCoil } from '../../../sim/index.ts';
import { CHART_NAMES, type Series, type Chart } from '../model/chart.ts';
import { gridColumn } from '../model/sample.ts';
import { columnInRuns, DOTS, SOLID, THIN, timesOf, type NamedRun } from './runs.ts';

export function coolingChart(runs: readonly NamedRun[]): Chart {
  return {
    id: 'cooling',
    title: CHART_NAMES.cooling,
    says: 'Temperature of the cooling water coming in and leaving, the rise between them, the layers of the tub as thin lines, and the flow.',
    xAxis: 'time',
    derived: [
      {
        key: 'rise',
        label: 'Rise',
        says: 'rise of the cooling water from inlet to outlet',
        measure: 'rise',
        lane: 'temperature',
        minuend: 'coolantOut_K',
        subtrahend: 'coolantIn_K',
      },
    ],
    lanes: [
      {
        kind: 'lines',
        key: 'temperature',
        title: 'Temperature',
        measure: 'temperature',
        policy: { fromZero: false, leastSpan: 10 },
        parts: 1,
        bands: [],
        points: [],
        between: ['coolantIn_K', 'coolantOut_K'],
        series: [
          ...tubLayers(runs),
          ...columnInRuns(runs, {
            column: 'coolantIn_K',
            label: 'In',
            measure: 'temperature',
            ink: 'water',
            dash: DOTS,
          }),
          ...columnInRuns(runs, {
            column: 'coolantOut_K',
            label: 'Out',
            measure: 'temperature',
            ink: 'water',
            dash: SOLID,
          }),
        ],
      },
      {
        kind: 'lines',
        key: 'flow',
        title: 'Flow',
        measure: 'coolantFlow',
        policy: { fromZero: true, leastSpan: 0.2 },
        parts: 0.4,
        bands: [],
        points: [],
        series: columnInRuns(runs, { column: 'coolantFlow_kg_s', label: 'Flow', measure: 'coolantFlow', ink: 'water' }),
      },
    ],
  };
}

/** Only a tub has layers worth a line; a jacket or barrel is one body of water. */
function tubLayers(runs: readonly NamedRun[]): readonly Series[] {
  const first = runs[0];
  if (!first || !isCoil(first.result.scenario.condenser)) return [];
  const grid = first.result.record.grids.tubTemperature_K;
  if (grid.cells < 2) return [];
  return Array.from({ length: grid.cells }, (_, cell) => ({
    key: `tubLayer${cell + 1}`,
    label: `Layer ${cell + 1}`,
    says: `temperature of tub layer ${cell + 1} of ${grid.cells}, counted from the top`,
    measure: 'temperature',
    run: 0,
    runName: first.name,
    xs: timesOf(first.result),
    values: gridColumn(grid, cell, first.result.record.rows),
    ink: 'water',
    weight: THIN * 0.75,
    dash: SOLID,
    labelled: 'none',
  }));
}
