/**
 * All charts of a run in a grid: common gutters, one time axis, one time mark, one reading line. Drag in a chart to move
 * the time mark.
 */
import { createMemo, createSignal, For, Show } from 'solid-js';
import { CHART_IDS, type ChartId } from './model/chart.ts';
import { gutters } from './model/layout.ts';
import { OneChart } from './OneChart.tsx';
import { createLook, createWidth } from './plot/look.ts';
import type { Scene } from './plot/scene.ts';
import { createRunCharts, type RunChartsProps } from './run-charts.ts';
import { createDeferred } from '../ui/visibility.ts';
import { createVoice } from '../ui/voice.ts';
import './charts.css';

export interface ChartColumnProps extends RunChartsProps {
  readonly onScrub: (time_s: number) => void;
  /** Whatever the page's colours depend on; a change makes the charts read them again. */
  readonly theme?: unknown;
  /** Whether a newer run is being computed. */
  readonly stale?: boolean | undefined;
  /** Charts folded away are `false`; one that is not named is open. */
  readonly open?: Readonly<Partial<Record<ChartId, boolean>>> | undefined;
  readonly onToggle?: ((id: ChartId, open: boolean) => void) | undefined;
  /** Brings a chart up to the first screen. */
  readonly onBringUp?: ((id: ChartId) => void) | undefined;
}

export function ChartColumn(props: ChartColumnProps) {
  const [column, setColumn] = createSignal<HTMLDivElement>();
  const [cell, setCell] = createSignal<HTMLDivElement>();
  const width = createWidth(cell);
  const look = createLook(column, () => props.theme);
  const [reading_s, setReading] = createSignal<number | null>(null);
  const [folded, setFolded] = createSignal<ReadonlySet<ChartId>>(new Set());
  const { spoken, speak } = createVoice();
  const charts = createRunCharts(props);
  const inset = createMemo(() => gutters(width(), look()?.textScale ?? 1));

  const isOpen = (id: ChartId): boolean => props.open?.[id] ?? !folded().has(id);
  const toggle = (id: ChartId, open: boolean): void => {
    setFolded((before) => new Set(open ? [...before].filter((other) => other !== id) : [...before, id]));
    props.onToggle?.(id, open);
  };
  const restedTime_s = createDeferred(
    () => props.time_s(),
    () => false,
  );

  return (
    <div class="charts" ref={setColumn} data-stale={props.stale ? '' : undefined}>
      {/* As wide as a chart, whatever the number of columns. */}
      <div class="charts-grid charts-ruler" aria-hidden="true">
        <div ref={setCell} />
      </div>
      <Show when={width() > 0 && look()}>
        {(seen) => {
          const scene: Scene = {
            look: seen,
            width,
            inset,
            units: () => props.units,
            runName: () => charts.runs()[0]?.name ?? '',
            time_s: () => props.time_s(),
            rowTime_s: charts.rowTime_s,
            restedTime_s,
            timeDomain: charts.timeDomain,
            flags: charts.flags,
            reading_s,
            setReading,
            scrub: (time_s) => props.onScrub(time_s),
            speak,
          };
          return (
            <div class="charts-grid">
              <For each={CHART_IDS}>
                {(id) => (
                  <div class="charts-cell">
                    <OneChart
                      id={id}
                      charts={charts}
                      scene={{ ...scene, bringUp: props.onBringUp && (() => props.onBringUp?.(id)) }}
                      open={isOpen(id)}
                      onToggle={(open) => toggle(id, open)}
                    />
                  </div>
                )}
              </For>
            </div>
          );
        }}
      </Show>
      <p class="visually-hidden" role="status">
        {spoken()}
      </p>
    </div>
  );
}
