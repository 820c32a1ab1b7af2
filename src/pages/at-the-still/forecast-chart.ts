/** Expected and measured over one time axis: the plan, the likely runs with their band, and the readings. */
import type { CourseColumn, CurveBand, Forecast, SeenKind } from '../../../sim/index.ts';
import { LONG_DASH, SOLID } from '../../charts/catalogue/runs.ts';
import type { Chart, LinesLane, Series } from '../../charts/model/chart.ts';
import type { Measure } from '../../charts/model/measure.ts';
import type { Ink } from '../../charts/model/palette.ts';
import { CUBIC_METRES_A_MILLILITRE } from '../run-length/fan-charts.ts';

interface LaneWords {
  readonly column: CourseColumn;
  readonly kind: SeenKind;
  readonly title: string;
  readonly measure: Measure;
  readonly ink: Ink;
  readonly tint: Ink;
  readonly fromZero: boolean;
  readonly leastSpan: number;
}

const LANES: readonly LaneWords[] = [
  {
    column: 'oil_mL',
    kind: 'oil_mL',
    title: 'Oil in the receiver',
    measure: 'oilVolume',
    ink: 'oil',
    tint: 'oil-tint',
    fromZero: true,
    leastSpan: 1,
  },
  {
    column: 'outlet_K',
    kind: 'outlet_K',
    title: 'Distillate at the outlet',
    measure: 'temperature',
    ink: 'copper',
    tint: 'copper-tint',
    fromZero: false,
    leastSpan: 10,
  },
  {
    column: 'tub_K',
    kind: 'tub_K',
    title: 'Cooling water',
    measure: 'temperature',
    ink: 'water',
    tint: 'water-tint',
    fromZero: false,
    leastSpan: 10,
  },
];

export function forecastChart(forecast: Forecast): Chart {
  const { times_s, bands, planned, readings } = forecast;
  const lane = ({ column, kind, title, measure, ink, tint, fromZero, leastSpan }: LaneWords): LinesLane | null => {
    const points = readings.filter((reading) => reading.kind === kind);
    if (column !== 'oil_mL' && points.length === 0) return null;
    const by = column === 'oil_mL' ? CUBIC_METRES_A_MILLILITRE : 1;
    const scaled = (values: Float64Array) => values.map((value) => value * by);
    const line = (key: string, label: string, values: Float64Array, isPlan: boolean): Series => ({
      key: `${column}-${key}`,
      label,
      says: `${title}, ${label.toLowerCase()}`,
      measure,
      run: 0,
      runName: label,
      xs: times_s,
      values: scaled(values),
      ink,
      weight: isPlan ? 1 : 2,
      dash: isPlan ? LONG_DASH : SOLID,
      labelled: 'end',
    });
    const band: CurveBand = bands[column];
    return {
      kind: 'lines',
      key: column,
      title,
      measure,
      policy: { fromZero, leastSpan },
      parts: column === 'oil_mL' ? 1.25 : 0.8,
      series: [line('expected', 'Expected', band.p50, false), line('planned', 'Planned', planned[column], true)],
      bands: [
        {
          key: `${column}-band`,
          label: '8 of 10 runs',
          xs: times_s,
          low: scaled(band.p10),
          high: scaled(band.p90),
          ink: tint,
        },
      ],
      points:
        points.length === 0
          ? []
          : [
              {
                key: `${column}-read`,
                label: 'Measured',
                ink: 'ink',
                points: points.map(({ time_s, value }) => ({ x: time_s, value: value * by })),
              },
            ],
    };
  };
  return {
    id: 'recovery',
    title: 'Expected and measured',
    says: 'What you read as points, what is expected now with the band of 8 of 10 likely runs, and the plan.',
    xAxis: 'time',
    derived: [],
    lanes: LANES.flatMap((words) => lane(words) ?? []),
  };
}
