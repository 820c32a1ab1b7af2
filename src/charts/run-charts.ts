/** Everything that the charts of some runs share: the charts themselves by name, their events, the ends of their axes. */
import { createMemo, type Accessor } from 'solid-js';
import {
  bedHeight,
  captureByDropSize,
  englishReader,
  rowAt,
  type DropCapture,
  type RunResult,
} from '../../sim/index.ts';
import { bedChart } from './catalogue/bed.ts';
import { condenserExtents } from './catalogue/condenser.ts';
import { coolingChart } from './catalogue/cooling.ts';
import { dropDomain } from './catalogue/drops.ts';
import { heatChart } from './catalogue/heat.ts';
import { oilChart } from './catalogue/oil.ts';
import { oilNames } from './catalogue/oil-names.ts';
import { recoveryChart, type RecoveryBand, type RecoveryPoint } from './catalogue/recovery.ts';
import type { NamedRun } from './catalogue/runs.ts';
import { steamChart } from './catalogue/steam.ts';
import { temperaturesChart } from './catalogue/temperatures.ts';
import type { Chart, TimeChartId } from './model/chart.ts';
import { flagsOf } from './model/event-words.ts';
import type { UnitSystem } from './model/measure.ts';

export interface RunChartsProps {
  readonly result: RunResult;
  /** The run before the last change, drawn dashed behind the run at hand. */
  readonly ghost?: RunResult | undefined;
  /** Several runs on shared axes, instead of `result` and `ghost`; the first is the one at hand. */
  readonly runs?: readonly NamedRun[] | undefined;
  readonly time_s: Accessor<number>;
  readonly units: UnitSystem;
  /** End of the time axis; else that of the longest run. */
  readonly end_s?: number | undefined;
  readonly recoveryBand?: RecoveryBand | undefined;
  readonly recoveryPoints?: readonly RecoveryPoint[] | undefined;
}

const endOf = ({ record }: RunResult): number => record.columns.time_s[record.rows - 1] ?? 0;

export type RunCharts = ReturnType<typeof createRunCharts>;

export function createRunCharts(props: RunChartsProps) {
  const runs = createMemo<readonly NamedRun[]>(() => {
    if (props.runs && props.runs.length > 0) return props.runs;
    const atHand = { name: props.result.scenario.name, result: props.result };
    return props.ghost ? [atHand, { name: 'before the change', result: props.ghost }] : [atHand];
  });
  const result = createMemo(() => runs()[0]?.result ?? props.result);
  const end_s = createMemo(() => props.end_s ?? Math.max(...runs().map((run) => endOf(run.result))));
  const rowTime_s = createMemo(() => {
    const { record } = result();
    return record.columns.time_s[rowAt(record, props.time_s())] ?? 0;
  });
  const captureNow = createMemo(() => captureByDropSize(result().scenario, result().record, rowTime_s()));
  const captureAt = (time_s: number): DropCapture =>
    time_s === rowTime_s() ? captureNow() : captureByDropSize(result().scenario, result().record, time_s);
  const makers: Readonly<Record<TimeChartId, () => Chart>> = {
    temperatures: () => temperaturesChart(runs()),
    heat: () => heatChart(runs()),
    steam: () => steamChart(runs()),
    cooling: () => coolingChart(runs()),
    oil: () => oilChart(runs(), oilNames(result().record.constituents)),
    recovery: () => recoveryChart(runs(), props.recoveryBand, props.recoveryPoints),
    bed: () => bedChart(runs(), bedHeight(result().scenario)),
  };
  const timeDomain = createMemo(() => [0, end_s()] as const);
  const flags = createMemo(() => flagsOf(result().events, englishReader(props.units)));
  const extents = createMemo(() => condenserExtents(result()));
  const dropAxis = createMemo(() => dropDomain(captureAt(end_s())));
  return {
    runs,
    result,
    end_s,
    rowTime_s,
    timeDomain,
    flags,
    timeChart: (id: TimeChartId): Chart => makers[id](),
    extents,
    captureAt,
    dropAxis,
  };
}
