/** A log over the model: one lane a reading, the readings as points on the model's line; and the residuals of a fit. */
import type { ColumnName, Fit, LoggedPoint, ReadingKind, RunResult } from '../../../sim/index.ts';
import { columnOf, LONG_DASH, oilVolumeOf, SOLID, timesOf } from '../../charts/catalogue/runs.ts';
import type { Chart, LinesLane, LoggedPoints, Series } from '../../charts/model/chart.ts';
import type { Measure } from '../../charts/model/measure.ts';
import type { Ink } from '../../charts/model/palette.ts';
import { CUBIC_METRES_A_MILLILITRE } from '../run-length/fan-charts.ts';

export interface ModelLine {
  /** Two words at most, such as `As set` or `Fitted`. */
  readonly label: string;
  readonly result: RunResult;
}

interface LaneWords {
  readonly kind: ReadingKind;
  readonly title: string;
  /** Stands before the name of each line. */
  readonly short: string;
  readonly measure: Measure;
  readonly ink: Ink;
  readonly fromZero: boolean;
  readonly leastSpan: number;
  readonly logged: (point: LoggedPoint) => number | undefined;
  readonly model: (result: RunResult) => Float64Array | null;
}

const column = (name: ColumnName) => (result: RunResult) => columnOf(result, name);

/** Before vapour comes there is no distillate to have a temperature. */
function distillateTemperature(result: RunResult): Float64Array {
  const rate = columnOf(result, 'condensateRate_kg_s');
  return columnOf(result, 'condensateTemperature_K').map((temperature, row) =>
    (rate[row] as number) > 0 ? temperature : Number.NaN,
  );
}

function distillate(result: RunResult): Float64Array {
  const returned = columnOf(result, 'returned_kg');
  const oil = columnOf(result, 'oilCollected_kg');
  return columnOf(result, 'hydrosol_kg').map((kept, row) => kept + (returned[row] as number) + (oil[row] as number));
}

const LANES: readonly LaneWords[] = [
  {
    kind: 'oil_mL',
    title: 'Oil in the receiver',
    short: 'Oil',
    measure: 'oilVolume',
    ink: 'oil',
    fromZero: true,
    leastSpan: 1,
    logged: ({ oil_mL }) => (oil_mL === undefined ? undefined : oil_mL * CUBIC_METRES_A_MILLILITRE),
    model: oilVolumeOf,
  },
  {
    kind: 'oil_kg',
    title: 'Oil in the receiver, by weight',
    short: 'Oil',
    measure: 'oil',
    ink: 'oil',
    fromZero: true,
    leastSpan: 1,
    logged: ({ oil_kg }) => oil_kg,
    model: column('oilCollected_kg'),
  },
  {
    kind: 'outlet_K',
    title: 'Distillate at the outlet',
    short: 'Outlet',
    measure: 'temperature',
    ink: 'copper',
    fromZero: false,
    leastSpan: 10,
    logged: ({ outlet_K }) => outlet_K,
    model: distillateTemperature,
  },
  {
    kind: 'tub_K',
    title: 'Cooling water',
    short: 'Tub',
    measure: 'temperature',
    ink: 'water',
    fromZero: false,
    leastSpan: 10,
    logged: ({ tub_K }) => tub_K,
    model: column('tubMean_K'),
  },
  {
    kind: 'distillate_kg',
    title: 'Distillate so far',
    short: 'Water',
    measure: 'distillate',
    ink: 'steam',
    fromZero: true,
    leastSpan: 0.5,
    logged: ({ distillate_kg }) => distillate_kg,
    model: distillate,
  },
];

function laneOf(words: LaneWords, lines: readonly ModelLine[], points: readonly LoggedPoint[]): LinesLane | null {
  const found = points.flatMap((point) => {
    const value = words.logged(point);
    return value === undefined ? [] : [{ x: point.time_s, value }];
  });
  const isOil = words.kind === 'oil_mL';
  if (found.length === 0 && !(isOil && points.every(({ oil_kg }) => oil_kg === undefined))) return null;
  const logged: readonly LoggedPoints[] =
    found.length > 0 ? [{ key: 'logged', label: 'Logged', points: found, ink: 'ink' }] : [];
  const series = lines.flatMap(({ label, result }, index): readonly Series[] => {
    const values = words.model(result);
    if (!values) return [];
    return [
      {
        key: `${words.kind}-${index}`,
        label: `${words.short}, ${label.toLowerCase()}`,
        says: `${words.title}, ${label.toLowerCase()}`,
        measure: words.measure,
        run: 0,
        runName: label,
        xs: timesOf(result),
        values,
        ink: words.ink,
        weight: index === 0 ? 2 : 1,
        dash: index === 0 ? SOLID : LONG_DASH,
        labelled: 'end',
      },
    ];
  });
  return {
    kind: 'lines',
    key: words.kind,
    title: words.title,
    measure: words.measure,
    policy: { fromZero: words.fromZero, leastSpan: words.leastSpan },
    parts: isOil || words.kind === 'oil_kg' ? 1.25 : 0.8,
    series,
    bands: [],
    points: logged,
  };
}

/** @param lines of the model, the one that counts first */
export function logChart(lines: readonly ModelLine[], points: readonly LoggedPoint[]): Chart {
  return {
    id: 'recovery',
    title: 'Measured and predicted',
    says: 'The readings as points over what the model says of the same still.',
    xAxis: 'time',
    derived: [],
    lanes: LANES.flatMap((words) => laneOf(words, lines, points) ?? []),
  };
}

const RESIDUAL_NAMES: Readonly<Record<ReadingKind, { readonly title: string; readonly ink: Ink }>> = {
  oil_mL: { title: 'Oil', ink: 'oil' },
  oil_kg: { title: 'Oil by weight', ink: 'oil' },
  outlet_K: { title: 'Outlet', ink: 'copper' },
  tub_K: { title: 'Tub', ink: 'water' },
  distillate_kg: { title: 'Distillate', ink: 'steam' },
};

/** What a fit leaves over: each reading less the model, in its own uncertainties; one lane a kind of reading. */
export function residualChart({ residuals: all }: Fit, end_s: number): Chart {
  // Of runs that were fitted together, the one that is looked at comes first.
  const residuals = all.filter(({ log }) => log === 0);
  const xs = Float64Array.from([0, end_s]);
  const flat = (value: number) => Float64Array.from([value, value]);
  const lane = (kind: ReadingKind): LinesLane => ({
    kind: 'lines',
    key: kind,
    title: `${RESIDUAL_NAMES[kind].title}: measured less predicted, in uncertainties`,
    measure: 'number',
    policy: { fromZero: false, leastSpan: 6 },
    parts: 0.5,
    bands: [{ key: 'two', label: 'two uncertainties', xs, low: flat(-2), high: flat(2), ink: 'gridline' }],
    points: [
      {
        key: 'left',
        label: 'Difference',
        ink: RESIDUAL_NAMES[kind].ink,
        points: residuals
          .filter((left) => left.kind === kind)
          .map(({ time_s, scaled }) => ({ x: time_s, value: scaled })),
      },
    ],
    series: [
      {
        key: `zero-${kind}`,
        label: 'No difference',
        says: 'where reading and prediction agree',
        measure: 'number',
        run: 0,
        runName: '',
        xs,
        values: flat(0),
        ink: 'ink-muted',
        weight: 0.8,
        dash: SOLID,
        labelled: 'none',
      },
    ],
  });
  return {
    id: 'recovery',
    title: 'Measured less predicted',
    says: 'Each reading less the prediction, in uncertainties of the reading. Points should lie on both sides of the line and mostly within two of it.',
    xAxis: 'time',
    derived: [],
    lanes: [...new Set(residuals.map(({ kind }) => kind))].map(lane),
  };
}
