/** The condenser along its tube at one moment: temperatures, heat, and where condensing ends. */
import { formatQuantity, positionAt, type GridName, type RunResult } from '../../../sim/index.ts';
import { CHART_NAMES, type Chart, type LinesLane, type Series } from '../model/chart.ts';
import { extentOf, type Domain } from '../model/domain.ts';
import type { Flag } from '../model/event-words.ts';
import type { Measure, UnitSystem } from '../model/measure.ts';
import type { Ink } from '../model/palette.ts';
import { gridRowAt, readLine } from '../model/sample.ts';
import { columnOf, columnSays, LONG_DASH, SOLID, THICK, timesOf, type NamedRun } from './runs.ts';

const TEMPERATURES: readonly {
  readonly grid: GridName;
  readonly label: string;
  readonly ink: Ink;
  readonly dash: readonly number[];
}[] = [
  { grid: 'condenserCoolant_K', label: 'Coolant', ink: 'water', dash: SOLID },
  { grid: 'condenserWall_K', label: 'Wall', ink: 'copper', dash: LONG_DASH },
  { grid: 'condenserInside_K', label: 'Inside', ink: 'steam', dash: SOLID },
];

/** Bounds that hold for every moment of the run, so that the axes stand still while the time mark moves. */
export interface CondenserExtents {
  readonly temperature: Domain;
  readonly heat: Domain;
}

export function condenserExtents({ record }: RunResult): CondenserExtents {
  const cellsOf = (name: GridName) => record.grids[name].data.subarray(0, record.rows * record.grids[name].cells);
  return {
    temperature: extentOf(TEMPERATURES.map(({ grid }) => cellsOf(grid))) ?? [273.15, 373.15],
    heat: extentOf([cellsOf('condenserHeat_W_m')]) ?? [0, 1],
  };
}

export const tubeLength = ({ scenario }: RunResult): number => scenario.condenser.length_m;

export function condenserChart(runs: readonly NamedRun[], extents: CondenserExtents, time_s: number): Chart {
  const lanes: readonly LinesLane[] = [
    {
      kind: 'lines',
      key: 'temperature',
      title: 'Temperature',
      measure: 'temperature',
      policy: { fromZero: false, leastSpan: 10 },
      extent: extents.temperature,
      parts: 1,
      bands: [],
      points: [],
      series: runs.flatMap((run, index) =>
        TEMPERATURES.map((words) => profile(run, index, words.grid, 'temperature', words, time_s)),
      ),
    },
    {
      kind: 'lines',
      key: 'heat',
      title: 'Heat passing each length of tube',
      measure: 'heatPerLength',
      policy: { fromZero: true, leastSpan: 50 },
      extent: extents.heat,
      parts: 0.5,
      bands: [],
      points: [],
      series: runs.map((run, index) =>
        profile(
          run,
          index,
          'condenserHeat_W_m',
          'heatPerLength',
          { label: 'Heat', ink: 'copper', dash: SOLID },
          time_s,
        ),
      ),
    },
  ];
  return {
    id: 'condenser',
    title: CHART_NAMES.condenser,
    says: 'Temperatures inside the tube, at its wall and in the cooling water, and the heat that passes, from the vapour end to the outlet.',
    xAxis: 'tube',
    lanes,
    derived: [],
  };
}

function profile(
  { name, result }: NamedRun,
  run: number,
  grid: GridName,
  measure: Measure,
  words: { readonly label: string; readonly ink: Ink; readonly dash: readonly number[] },
  time_s: number,
): Series {
  const { record } = result;
  const { cells, data } = record.grids[grid];
  const length = tubeLength(result);
  return {
    key: grid,
    label: words.label,
    says: columnSays(grid),
    measure,
    run,
    runName: name,
    xs: Float64Array.from({ length: cells }, (_, cell) => ((cell + 0.5) * length) / cells),
    values: gridRowAt(data, cells, positionAt(result.record, time_s), new Float64Array(cells)),
    ink: words.ink,
    weight: run === 0 ? THICK : 0.8,
    dash: run === 0 ? words.dash : [3, 3],
    labelled: run === 0 ? 'end' : 'none',
  };
}

/** A flag where condensing ends at a time, or an alarm when the tube is too short for it; none while no vapour comes. */
export function condensingEnd(result: RunResult, time_s: number, system: UnitSystem): readonly Flag[] {
  const at = (column: Float64Array): number => readLine({ xs: timesOf(result), values: column }, time_s);
  const vapour = at(columnOf(result, 'vapourRate_kg_s'));
  if (!(vapour > 0)) return [];
  const length = tubeLength(result);
  const used = at(columnOf(result, 'condensingLength_m'));
  if (used >= length)
    return [
      {
        x: length,
        words: 'vapour escapes',
        severity: 'alarm',
        sentence: 'The tube is too short to condense everything at this moment.',
        rank: 3,
      },
    ];
  const words = `condensing ends at ${formatQuantity(used, 'm', system, { hint: 'condensingLength_m' })}`;
  return [{ x: used, words, severity: 'note', sentence: `At this moment ${words}.`, rank: 1 }];
}
