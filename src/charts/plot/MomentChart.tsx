/** A chart of one moment: along the tube or by drop size, redrawn as the time mark moves. */
import { createMemo, createSignal, Show, type JSX } from 'solid-js';
import { formatDuration } from '../../../sim/index.ts';
import { chartPicture } from '../export/chart-svg.ts';
import { chartTable } from '../export/data-table.ts';
import type { Chart } from '../model/chart.ts';
import type { Domain } from '../model/domain.ts';
import { endLabels, type EndLabel } from '../model/end-labels.ts';
import type { Flag } from '../model/event-words.ts';
import { pixelOf, prepare, settleBounds, withChart, type Bounds } from '../model/prepare.ts';
import { readingWords } from '../model/reading.ts';
import { ChartFrame } from './ChartFrame.tsx';
import { FlagRow } from './FlagRow.tsx';
import { createDeferred, createVisibility } from '../../ui/visibility.ts';
import { Plot } from './Plot.tsx';
import { layoutIn, pictureLayout, type Scene } from './scene.ts';

export interface MomentChartProps {
  readonly scene: Scene;
  readonly chartAt: (time_s: number) => Chart;
  readonly flagsAt: (time_s: number) => readonly Flag[];
  readonly xDomain: Domain;
  /** What stands beside a name while nobody reads; else the value at the end of the line. */
  readonly restingWords?: ((label: EndLabel, time_s: number) => string) | undefined;
  readonly open: boolean;
  readonly onToggle: (open: boolean) => void;
  readonly head?: JSX.Element;
}

/** The reading line takes a hundred small steps, ten large ones. */
const SMALL = 1 / 100;
const LARGE = 1 / 10;

export function MomentChart(props: MomentChartProps) {
  const { near, watch } = createVisibility();
  const scene = () => props.scene;
  const [reading, setReading] = createSignal<number | null>(null);
  const time_s = createMemo<number>(
    (before) => (near() ? scene().rowTime_s() : (scene().restedTime_s?.() ?? before)),
    0,
  );
  /** Axes are those of the first moment: what they span holds for the whole run, so the time mark leaves them alone. */
  const newestFirst = createMemo(() => props.chartAt(0));
  const firstChart = createDeferred(() => newestFirst(), near);
  const bounds = createMemo<Bounds>((earlier) => settleBounds(firstChart(), scene().units(), earlier), {});
  const layout = createMemo(() => layoutIn(scene(), firstChart()));
  const frame = createMemo(() => prepare(firstChart(), layout(), bounds(), props.xDomain, scene().units()));
  const newest = createMemo(() => props.chartAt(time_s()));
  const chart = createDeferred(() => newest(), near);
  const flags = createMemo(() => props.flagsAt(time_s()));
  const prepared = createMemo(() => withChart(frame(), chart()));
  const labels = createMemo(() => endLabels(prepared()));
  const span = () => props.xDomain[1] - props.xDomain[0];

  const wordsOf = (label: EndLabel): string => {
    const at = reading();
    const resting = at === null ? (props.restingWords?.(label, time_s()) ?? null) : null;
    return resting ?? readingWords(chart(), label, at ?? props.xDomain[1], scene().units());
  };

  const svg = (): string => {
    const resting = props.restingWords;
    const at = time_s();
    const picture = prepare(chart(), pictureLayout(chart()), bounds(), props.xDomain, scene().units());
    return chartPicture({
      prepared: picture,
      labels: endLabels(picture),
      flags: flags(),
      palette: scene().look().palette,
      system: scene().units(),
      subtitle: `${scene().runName()}, at ${formatDuration(time_s())}`,
      readAt: props.xDomain[1],
      restingWords: resting && ((label) => resting(label, at)),
    });
  };

  return (
    <ChartFrame
      title={firstChart().title}
      note={`at ${formatDuration(time_s())}`}
      runName={scene().runName()}
      open={props.open}
      onToggle={(open) => props.onToggle(open)}
      head={props.head}
      bringUp={scene().bringUp}
      units={scene().units()}
      table={() => chartTable(chart(), scene().units())}
      svg={svg}
    >
      <div ref={watch}>
        <Show when={flags().length > 0} fallback={<div class="chart-flags" />}>
          <FlagRow
            flags={flags()}
            left={layout().left}
            width={layout().plotWidth}
            right={layout().width - layout().right}
            pixelOf={(x) => pixelOf(frame(), x)}
            font={scene().look().font}
            timed={false}
          />
        </Show>
        <Plot
          frame={frame()}
          prepared={prepared()}
          labels={labels()}
          flags={flags()}
          look={scene().look()}
          units={scene().units()}
          timeMark={null}
          reading={reading()}
          steps={{ small: span() * SMALL, large: span() * LARGE }}
          valueOf={wordsOf}
          onReading={setReading}
          onSpeak={() =>
            scene().speak(
              labels()
                .map((label) => `${label.label} ${wordsOf(label)}`)
                .join(', '),
            )
          }
        />
      </div>
    </ChartFrame>
  );
}
