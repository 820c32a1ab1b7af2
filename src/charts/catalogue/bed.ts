/** Heat climbing through the bed: time across, height up, warmth as colour, the steam front as a line. */
import type { Grid } from '../../../sim/index.ts';
import { CHART_NAMES, type Chart, type Series } from '../model/chart.ts';
import { extentOf } from '../model/domain.ts';
import { gridColumn } from '../model/sample.ts';
import { columnOf, columnSays, timesOf, type NamedRun } from './runs.ts';

export function bedChart(runs: readonly NamedRun[], bedHeight_m: number): Chart {
  const run = runs[0];
  const grid = run?.result.record.grids.bedTemperature_K;
  const data = run && grid ? grid.data.subarray(0, run.result.record.rows * grid.cells) : new Float64Array();
  return {
    id: 'bed',
    title: CHART_NAMES.bed,
    says: 'Temperature of the charge by height and time; the line is the steam front.',
    xAxis: 'time',
    derived: [],
    lanes:
      run && grid
        ? [
            {
              kind: 'strip',
              key: 'bed',
              title: 'Height',
              measure: 'height',
              policy: { fromZero: true, leastSpan: 1, ceiling: Infinity },
              parts: 0.75,
              xs: timesOf(run.result),
              cells: grid.cells,
              data,
              valueMeasure: 'temperature',
              valueDomain: extentOf([data]) ?? [273.15, 373.15],
              extent: [0, bedHeight_m],
              series: [...frontOf(run, grid.cells), ...layersOf(run, grid, bedHeight_m)],
            },
          ]
        : [],
  };
}

/** A bed of one well-stirred layer has no front. */
function frontOf(run: NamedRun, cells: number): readonly Series[] {
  if (cells < 2) return [];
  return [
    {
      key: 'frontHeight_m',
      label: 'Steam front',
      says: columnSays('frontHeight_m'),
      measure: 'height',
      run: 0,
      runName: run.name,
      xs: timesOf(run.result),
      values: columnOf(run.result, 'frontHeight_m'),
      ink: 'ink',
      weight: 1.25,
      dash: [],
      labelled: 'end',
    },
  ];
}

/** Temperatures to read beside the strip: top, middle and bottom layer, or the one there is. */
function layersOf(run: NamedRun, grid: Grid, bedHeight_m: number): readonly Series[] {
  const { cells } = grid;
  const places: readonly (readonly [string, number])[] =
    cells < 3
      ? [['Charge', 0]]
      : [
          ['Top', cells - 1],
          ['Middle', Math.floor((cells - 1) / 2)],
          ['Bottom', 0],
        ];
  return places.map(([label, cell]) => ({
    key: `bedLayer${cell + 1}`,
    label,
    says: `temperature of bed layer ${cell + 1} of ${cells}, counted from the bottom`,
    measure: 'temperature',
    run: 0,
    runName: run.name,
    xs: timesOf(run.result),
    values: gridColumn(grid, cell, run.result.record.rows),
    ink: 'copper',
    weight: 1,
    dash: [],
    labelled: 'end',
    anchor: ((cell + 0.5) / cells) * bedHeight_m,
    hidden: true,
  }));
}
