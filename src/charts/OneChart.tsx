/** A chart of some runs by its name: over time, of one moment, or the flow of energy. */
import { createMemo, Match, Switch, type JSX } from 'solid-js';
import { condenserChart, condensingEnd, tubeLength } from './catalogue/condenser.ts';
import { captureWords, cutSizeFlag, dropsChart } from './catalogue/drops.ts';
import { isTimeChart, type ChartId } from './model/chart.ts';
import { EnergyChart } from './plot/EnergyChart.tsx';
import { MomentChart } from './plot/MomentChart.tsx';
import { PictureChart } from './plot/PictureChart.tsx';
import type { Scene } from './plot/scene.ts';
import { condenserPicture, condenserTable } from './pictures/condenser-picture.ts';
import { separatorPicture, separatorTable } from './pictures/separator-picture.ts';
import { TimeChart } from './plot/TimeChart.tsx';
import type { RunCharts } from './run-charts.ts';

export interface OneChartProps {
  readonly id: ChartId;
  readonly charts: RunCharts;
  readonly scene: Scene;
  readonly open: boolean;
  readonly onToggle: (open: boolean) => void;
  /** Stands in place of the chart's own head. */
  readonly head?: JSX.Element;
}

export function OneChart(props: OneChartProps) {
  const common = {
    get scene() {
      return props.scene;
    },
    get open() {
      return props.open;
    },
    get head() {
      return props.head;
    },
    onToggle: (open: boolean) => props.onToggle(open),
  };
  const timeChart = createMemo(() => (isTimeChart(props.id) ? props.charts.timeChart(props.id) : null));
  return (
    <Switch>
      <Match when={timeChart()}>{(chart) => <TimeChart chart={chart()} {...common} />}</Match>
      <Match when={props.id === 'condenser'}>
        <MomentChart
          {...common}
          chartAt={(time_s) => condenserChart(props.charts.runs(), props.charts.extents(), time_s)}
          flagsAt={(time_s) => condensingEnd(props.charts.result(), time_s, props.scene.units())}
          xDomain={[0, tubeLength(props.charts.result())]}
        />
      </Match>
      <Match when={props.id === 'drops'}>
        <MomentChart
          {...common}
          chartAt={(time_s) => dropsChart(props.charts.captureAt(time_s))}
          flagsAt={(time_s) => cutSizeFlag(props.charts.captureAt(time_s), props.scene.units())}
          xDomain={props.charts.dropAxis()}
          restingWords={(label, time_s) => captureWords(props.charts.captureAt(time_s), label.key)}
        />
      </Match>
      <Match when={props.id === 'tube'}>
        <PictureChart
          {...common}
          name="tube"
          pictureAt={(time_s, frame) => condenserPicture(props.charts.result(), time_s, frame)}
          tableAt={(time_s) => condenserTable(props.charts.result(), time_s, props.scene.units())}
        />
      </Match>
      <Match when={props.id === 'separator'}>
        <PictureChart
          {...common}
          name="separator"
          pictureAt={(time_s, frame) => separatorPicture(props.charts.result(), time_s, frame)}
          tableAt={(time_s) => separatorTable(props.charts.result(), time_s, props.scene.units())}
        />
      </Match>
      <Match when={props.id === 'energy'}>
        <EnergyChart record={props.charts.result().record} {...common} />
      </Match>
    </Switch>
  );
}
