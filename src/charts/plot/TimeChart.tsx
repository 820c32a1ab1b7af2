/** A chart over the time of the run: grows with the time mark, axes settled once a run. */
import { createMemo, type JSX } from 'solid-js';
import { chartPicture } from '../export/chart-svg.ts';
import { chartTable } from '../export/data-table.ts';
import type { Chart } from '../model/chart.ts';
import { endLabels } from '../model/end-labels.ts';
import { prepare, settleBounds, type Bounds } from '../model/prepare.ts';
import { readingWords, spokenReading } from '../model/reading.ts';
import { readingSteps } from '../model/time-axis.ts';
import { createThrottled } from '../../ui/throttled.ts';
import { ChartFrame } from './ChartFrame.tsx';
import { createDeferred, createVisibility } from '../../ui/visibility.ts';
import { Plot } from './Plot.tsx';
import { layoutIn, pictureLayout, type Scene } from './scene.ts';

export interface TimeChartProps {
  readonly chart: Chart;
  readonly scene: Scene;
  readonly open: boolean;
  readonly onToggle: (open: boolean) => void;
  readonly head?: JSX.Element;
}

const TOLD_EVERY_MS = 100;

export function TimeChart(props: TimeChartProps) {
  const { near, watch } = createVisibility();
  const scene = () => props.scene;
  /** A new run is drawn where it is seen; the rest follows when the hand rests. */
  const chart = createDeferred(() => props.chart, near);
  const bounds = createMemo<Bounds>((earlier) => settleBounds(chart(), scene().units(), earlier), {});
  const prepared = createMemo(() =>
    prepare(chart(), layoutIn(scene(), chart()), bounds(), scene().timeDomain(), scene().units()),
  );
  const labels = createMemo(() => endLabels(prepared()));
  const time_s = createMemo<number>((before) => (near() ? scene().time_s() : (scene().restedTime_s?.() ?? before)), 0);
  /** Numbers that change faster can't be read. */
  const throttled_s = createThrottled(() => time_s(), TOLD_EVERY_MS);
  const readAt = () => scene().reading_s() ?? throttled_s();

  const svg = (): string => {
    const picture = prepare(chart(), pictureLayout(chart()), bounds(), scene().timeDomain(), scene().units());
    return chartPicture({
      prepared: picture,
      labels: endLabels(picture),
      flags: scene().flags(),
      palette: scene().look().palette,
      system: scene().units(),
      subtitle: scene().runName(),
      readAt: scene().timeDomain()[1],
    });
  };

  return (
    <ChartFrame
      title={chart().title}
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
        <Plot
          frame={prepared()}
          prepared={prepared()}
          labels={labels()}
          flags={scene().flags()}
          look={scene().look()}
          units={scene().units()}
          timeMark={time_s()}
          reading={scene().reading_s()}
          steps={readingSteps(scene().timeDomain()[1])}
          valueOf={(label) => readingWords(chart(), label, readAt(), scene().units())}
          onReading={(x) => scene().setReading(x)}
          onSpeak={(x) => scene().speak(spokenReading(chart(), labels(), x, scene().units()))}
          onScrub={(x) => scene().scrub(x)}
        />
      </div>
    </ChartFrame>
  );
}
