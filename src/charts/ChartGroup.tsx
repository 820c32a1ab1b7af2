/** Charts of an answer on one time axis, in the manner of the bench's own. */
import { createMemo, createSignal, Index, Show } from 'solid-js';
import type { Chart } from './model/chart.ts';
import { gutters } from './model/layout.ts';
import { createLook, createWidth } from './plot/look.ts';
import type { Scene } from './plot/scene.ts';
import { TimeChart } from './plot/TimeChart.tsx';
import type { UnitSystem } from '../../sim/index.ts';
import { createVoice } from '../ui/voice.ts';
import './charts.css';

export interface ChartGroupProps {
  readonly charts: readonly Chart[];
  readonly runName: string;
  readonly end_s: number;
  readonly units: UnitSystem;
  readonly theme: unknown;
}

export function ChartGroup(props: ChartGroupProps) {
  const [column, setColumn] = createSignal<HTMLDivElement>();
  const width = createWidth(column);
  const look = createLook(column, () => props.theme);
  const [reading_s, setReading] = createSignal<number | null>(null);
  const { spoken, speak } = createVoice();
  const [folded, setFolded] = createSignal<ReadonlySet<number>>(new Set());
  const inset = createMemo(() => gutters(width(), look()?.textScale ?? 1));
  const timeDomain = createMemo(() => [0, props.end_s] as const);
  const fold = (index: number, open: boolean) =>
    setFolded((before) => new Set(open ? [...before].filter((other) => other !== index) : [...before, index]));

  return (
    <div class="charts answer-charts" ref={setColumn}>
      <Show when={width() > 0 && look()}>
        {(seen) => {
          const scene: Scene = {
            look: seen,
            width,
            inset,
            units: () => props.units,
            runName: () => props.runName,
            // These charts show a whole answer; nothing plays in them.
            time_s: () => props.end_s,
            rowTime_s: () => props.end_s,
            timeDomain,
            flags: () => [],
            reading_s,
            setReading,
            scrub: setReading,
            speak,
          };
          return (
            <Index each={props.charts}>
              {(chart, index) => (
                <TimeChart
                  chart={chart()}
                  scene={scene}
                  open={!folded().has(index)}
                  onToggle={(open) => fold(index, open)}
                />
              )}
            </Index>
          );
        }}
      </Show>
      <p class="visually-hidden" role="status">
        {spoken()}
      </p>
    </div>
  );
}
