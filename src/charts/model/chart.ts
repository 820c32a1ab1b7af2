/**
 * What a chart is before anything is drawn: lanes above each other that share one horizontal axis, each with its own
 * value axis. The screen, the table, the CSV file and the exported picture all read it.
 */
import type { Domain, DomainPolicy } from './domain.ts';
import { SHOWN_CHARTS, type ShownChart } from '../../state/kept-bench.ts';
import type { Measure } from './measure.ts';
import type { Ink } from './palette.ts';
import type { XAxis } from './x-axis.ts';

/** The charts of a run in the order in which they stand, the ones over time first. */
export const CHART_IDS = SHOWN_CHARTS;
export type ChartId = ShownChart;
const OF_ONE_MOMENT = ['condenser', 'tube', 'drops', 'separator', 'energy'] as const satisfies readonly ChartId[];
export type TimeChartId = Exclude<ChartId, (typeof OF_ONE_MOMENT)[number]>;
export const isTimeChart = (id: ChartId): id is TimeChartId => !OF_ONE_MOMENT.some((other) => other === id);

export const CHART_NAMES: Readonly<Record<ChartId, string>> = {
  temperatures: 'Temperatures',
  heat: 'Heat',
  steam: 'Steam and distillate',
  cooling: 'Cooling water',
  oil: 'Oil out',
  recovery: 'Recovery',
  bed: 'Heat in the bed',
  condenser: 'Along the condenser',
  tube: 'Condenser, close up',
  drops: 'Drops caught',
  separator: 'Separator, close up',
  energy: 'Energy',
};

/** One line. `run` is 0 for the run at hand; other runs are drawn finer, in the dash of their run. */
export interface Series {
  /** Unique within its chart and run; by it a value is found again in another run. */
  readonly key: string;
  /** Two words at most: it stands at the end of the line. */
  readonly label: string;
  /** The whole sentence, for tables and screen readers. */
  readonly says: string;
  readonly measure: Measure;
  readonly run: number;
  readonly runName: string;
  /** Rising: seconds, metres, or whatever the chart's horizontal axis holds. */
  readonly xs: Float64Array;
  /** SI. */
  readonly values: Float64Array;
  readonly ink: Ink;
  readonly weight: number;
  readonly dash: readonly number[];
  /** `end`: name and value beside the chart; `none`: one of a bundle, or a run behind. */
  readonly labelled: 'end' | 'none';
  /** Where on the lane's axis its label stands, SI; else at the end of its line. */
  readonly anchor?: number;
  /** Read and tabled but not drawn as a line. */
  readonly hidden?: boolean;
}

/** A spread between a low and a high line. */
export interface Band {
  readonly key: string;
  readonly label: string;
  readonly xs: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly ink: Ink;
}

/** Measured points laid over the lines. */
export interface LoggedPoints {
  readonly key: string;
  readonly label: string;
  readonly points: readonly { readonly x: number; readonly value: number }[];
  readonly ink: Ink;
}

interface LaneBasis {
  readonly key: string;
  readonly title: string;
  readonly measure: Measure;
  readonly policy: DomainPolicy;
  /** Extent of the values over the whole run, SI, where the chart shows one moment of it; else that of its lines. */
  readonly extent?: Domain;
  /** Height in parts of the whole. */
  readonly parts: number;
}

export interface LinesLane extends LaneBasis {
  readonly kind: 'lines';
  readonly series: readonly Series[];
  readonly bands: readonly Band[];
  readonly points: readonly LoggedPoints[];
  /** Keys of the two lines whose distance is shaded. */
  readonly between?: readonly [string, string];
}

/** Amounts on top of each other, the first at the bottom; `series` hold the single amounts. */
export interface StackLane extends LaneBasis {
  readonly kind: 'stack';
  readonly series: readonly Series[];
}

/** A field over x and one other direction, cell 0 at the bottom. */
export interface StripLane extends LaneBasis {
  readonly kind: 'strip';
  readonly xs: Float64Array;
  readonly cells: number;
  readonly data: Float64Array;
  readonly valueMeasure: Measure;
  /** Bounds of the field's colours, SI. */
  readonly valueDomain: Domain;
  /** Extent of the other direction, SI; its axis ends there. */
  readonly extent: Domain;
  readonly series: readonly Series[];
}

export type Lane = LinesLane | StackLane | StripLane;

/** A number that follows from two lines rather than being one. */
export interface DerivedReading {
  readonly key: string;
  readonly label: string;
  readonly says: string;
  readonly measure: Measure;
  readonly lane: string;
  readonly minuend: string;
  readonly subtrahend: string;
}

export interface Chart {
  readonly id: ChartId;
  readonly title: string;
  readonly xAxis: XAxis;
  /** One sentence: what the chart shows and how to read it. */
  readonly says: string;
  readonly lanes: readonly Lane[];
  readonly derived: readonly DerivedReading[];
}
