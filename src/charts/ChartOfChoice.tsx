/** One chart of the reader's choice that fills the place it is given, with the run before the last change behind it. */
import { createElementSize } from '@solid-primitives/resize-observer';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { CHART_IDS, CHART_NAMES, type ChartId } from './model/chart.ts';
import { closeGutters } from './model/layout.ts';
import { OneChart } from './OneChart.tsx';
import { createLook } from './plot/look.ts';
import type { Scene } from './plot/scene.ts';
import { createRunCharts, type RunChartsProps } from './run-charts.ts';
import { createVoice } from '../ui/voice.ts';
import './charts.css';

export interface ChartOfChoiceProps extends RunChartsProps {
  readonly id: ChartId;
  readonly onChoose: (id: ChartId) => void;
  readonly onScrub: (time_s: number) => void;
  readonly theme: unknown;
  readonly stale: boolean;
}

export function ChartOfChoice(props: ChartOfChoiceProps) {
  const [place, setPlace] = createSignal<HTMLDivElement>();
  const size = createElementSize(place);
  const look = createLook(place, () => props.theme);
  const [reading_s, setReading] = createSignal<number | null>(null);
  const { spoken, speak } = createVoice();
  const charts = createRunCharts(props);
  const width = () => Math.floor(size.width ?? 0);
  const inset = createMemo(() => closeGutters(look()?.textScale ?? 1));

  return (
    <div class="charts chart-of-choice" data-stale={props.stale ? '' : undefined}>
      <div class="chart-of-choice-head">
        <label>
          <span class="visually-hidden">Chart</span>
          <select
            value={props.id}
            onChange={(event) => props.onChoose(CHART_IDS[event.currentTarget.selectedIndex] ?? 'oil')}
          >
            <For each={CHART_IDS}>{(id) => <option value={id}>{CHART_NAMES[id]}</option>}</For>
          </select>
        </label>
        <p class="chart-note">
          <Show when={props.ghost}>dashed: before your last change</Show>
        </p>
      </div>
      <div class="chart-of-choice-place" ref={setPlace}>
        <Show when={width() > 0 && look()}>
          {(seen) => {
            const scene: Scene = {
              look: seen,
              width,
              height: () => Math.floor(size.height ?? 0),
              inset,
              units: () => props.units,
              runName: () => charts.runs()[0]?.name ?? '',
              time_s: () => props.time_s(),
              rowTime_s: charts.rowTime_s,
              timeDomain: charts.timeDomain,
              flags: charts.flags,
              reading_s,
              setReading,
              scrub: (time_s) => props.onScrub(time_s),
              speak,
            };
            return (
              <OneChart id={props.id} charts={charts} scene={scene} open onToggle={() => undefined} head={<></>} />
            );
          }}
        </Show>
      </div>
      <p class="visually-hidden" role="status">
        {spoken()}
      </p>
    </div>
  );
}
