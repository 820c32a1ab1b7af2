/** Oil collected, by constituent, stacked from the most to the least volatile; below it the rate. */
import { CHART_NAMES, type Series, type Chart } from '../model/chart.ts';
import { oilStep } from '../model/palette.ts';
import { gridColumn } from '../model/sample.ts';
import { asOilVolume, columnOf, columnSays, lineInRuns, SOLID, THICK, timesOf, type NamedRun } from './runs.ts';

/** A constituent as it is called beside its layer. */
export interface OilName {
  readonly id: string;
  readonly name: string;
}

/** `byVolatility` names the constituents of the run at hand, the most volatile first. */
export function oilChart(runs: readonly NamedRun[], byVolatility: readonly OilName[]): Chart {
  return {
    id: 'oil',
    title: CHART_NAMES.oil,
    says: 'Oil collected so far by constituent, the most volatile at the bottom and lightest, and the rate at which it comes.',
    xAxis: 'time',
    derived: [],
    lanes: [
      {
        kind: 'stack',
        key: 'oil',
        title: 'Oil collected',
        measure: 'oilVolume',
        policy: { fromZero: true, leastSpan: 0.01 },
        parts: 1.25,
        series: [
          ...constituentLayers(runs[0], byVolatility),
          ...lineInRuns(
            runs.slice(1),
            { key: 'oilCollected_kg', label: 'Oil', says: 'oil collected so far', measure: 'oilVolume', ink: 'oil' },
            (result) => asOilVolume(result, columnOf(result, 'oilCollected_kg')),
          ).map((series) => ({ ...series, run: series.run + 1, labelled: 'none' as const, dash: [3, 3], weight: 1 })),
        ],
      },
      {
        kind: 'lines',
        key: 'rate',
        title: 'Rate',
        measure: 'oilVolumeRate',
        policy: { fromZero: true, leastSpan: 0.01 },
        parts: 0.5,
        bands: [],
        points: [],
        series: lineInRuns(
          runs,
          { key: 'oilRate', label: 'Oil rate', says: columnSays('oilRate_kg_s'), measure: 'oilVolumeRate', ink: 'oil' },
          (result) => asOilVolume(result, columnOf(result, 'oilRate_kg_s')),
        ),
      },
    ],
  };
}

function constituentLayers(run: NamedRun | undefined, byVolatility: readonly OilName[]): readonly Series[] {
  if (!run) return [];
  const { record } = run.result;
  return byVolatility.flatMap(({ id, name }, index) => {
    const cell = record.constituents.indexOf(id);
    if (cell < 0) return [];
    return [
      {
        key: id,
        label: name,
        says: `${name} collected so far`,
        measure: 'oilVolume',
        run: 0,
        runName: run.name,
        xs: timesOf(run.result),
        values: asOilVolume(run.result, gridColumn(record.grids.oilCollectedBy_kg, cell, record.rows)),
        ink: oilStep(byVolatility.length < 2 ? 0.5 : index / (byVolatility.length - 1)),
        weight: THICK,
        dash: SOLID,
        labelled: 'end',
      } satisfies Series,
    ];
  });
}
