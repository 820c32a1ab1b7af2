/** One plot: axes below, traces, names at their ends, time mark and reading line above, and the pane that takes input. */
import { createMemo, createUniqueId, Show } from 'solid-js';
import type { EndLabel } from '../model/end-labels.ts';
import type { Flag } from '../model/event-words.ts';
import { isWide } from '../model/layout.ts';
import type { UnitSystem } from '../model/measure.ts';
import { pixelOf, type PreparedChart } from '../model/prepare.ts';
import { shapesOf } from '../model/shapes.ts';
import { xWords } from '../model/x-axis.ts';
import { Axes } from './Axes.tsx';
import { EndLabels } from './EndLabels.tsx';
import { HeatKey } from './HeatKey.tsx';
import type { Look } from './look.ts';
import { ReadingPane } from './ReadingPane.tsx';
import { ReadingTable } from './ReadingTable.tsx';
import { TraceCanvas } from './TraceCanvas.tsx';
import './plot.css';

export interface PlotProps {
  /** Axes and their pixels, the same for the whole run. */
  readonly frame: PreparedChart;
  /** The frame with the lines to draw. */
  readonly prepared: PreparedChart;
  readonly labels: readonly EndLabel[];
  readonly flags: readonly Flag[];
  readonly look: Look;
  readonly units: UnitSystem;
  /** Where the time mark stands, or `null` where the whole chart is of one moment. */
  readonly timeMark: number | null;
  /** Where the reading line stands, or `null` when nobody reads. */
  readonly reading: number | null;
  readonly steps: { readonly small: number; readonly large: number };
  readonly valueOf: (label: EndLabel) => string;
  readonly onReading: (x: number | null) => void;
  readonly onSpeak: (x: number) => void;
  readonly onScrub?: ((x: number) => void) | undefined;
}

/** A flag this near to the reading line is named beside the time. */
const NEAR_FLAG_px = 6;

export function Plot(props: PlotProps) {
  const summaryId = createUniqueId();
  const layout = () => props.frame.layout;
  const top = () => layout().lanes[0]?.top ?? 0;
  const wide = () => isWide(layout().width, layout().textScale);
  const shapes = createMemo(() => shapesOf(props.prepared));
  const inked = () => (props.timeMark === null ? Infinity : pixelOf(props.frame, props.timeMark));
  /** The pane follows the time mark by the minute only: each step is a write to the page. */
  const paneAt = () =>
    props.reading ?? (props.timeMark === null ? props.frame.xDomain[1] : 60 * Math.floor(props.timeMark / 60));
  const strip = () => {
    const lane = props.frame.lanes[0]?.lane;
    return lane?.kind === 'strip' ? lane : undefined;
  };
  const nearFlag = (x: number): string => {
    const near = props.flags.find(
      (flag) => Math.abs(pixelOf(props.frame, flag.x) - pixelOf(props.frame, x)) <= NEAR_FLAG_px,
    );
    return near ? ` · ${near.words}` : '';
  };
  const across = (x: number) => `translateX(${Math.round((layout().left + pixelOf(props.frame, x)) * 2) / 2}px)`;
  /** The chip stays inside the chart. */
  const chipShift = (x: number) => {
    const share = (layout().left + pixelOf(props.frame, x)) / layout().width;
    return `translateX(-${Math.round(Math.max(8, Math.min(92, share * 100)))}%)`;
  };

  return (
    <>
      <p class="visually-hidden" id={summaryId}>
        {props.frame.chart.says} Left and Right move the reading line.
      </p>
      <div class="chart-plot" style={{ height: `${layout().height}px` }}>
        <Axes prepared={props.frame} flags={props.flags} />
        <TraceCanvas
          shapes={shapes()}
          palette={props.look.palette}
          pixelRatio={props.look.pixelRatio}
          left={layout().left}
          width={layout().plotWidth}
          height={layout().axisTop + 2}
          inked={inked()}
        />
        <EndLabels
          labels={props.labels}
          layout={layout()}
          palette={props.look.palette}
          withValues={wide()}
          valueOf={props.valueOf}
        />
        <Show when={strip()}>
          {(lane) => <HeatKey lane={lane()} layout={layout()} palette={props.look.palette} units={props.units} />}
        </Show>
        <Show when={props.timeMark !== null}>
          <div
            class="chart-time-mark"
            style={{
              top: `${top()}px`,
              height: `${layout().axisTop - top()}px`,
              transform: across(props.timeMark ?? 0),
            }}
          />
        </Show>
        <Show when={props.reading !== null}>
          <div
            class="chart-reading-line"
            style={{
              top: `${top()}px`,
              height: `${layout().axisTop - top()}px`,
              transform: across(props.reading ?? 0),
            }}
          >
            <span class="chart-chip" style={{ transform: chipShift(props.reading ?? 0) }}>
              {xWords(props.frame.chart.xAxis, props.reading ?? 0, props.units)}
              {nearFlag(props.reading ?? 0)}
            </span>
          </div>
        </Show>
        <ReadingPane
          prepared={props.frame}
          reading={paneAt()}
          steps={props.steps}
          placeWords={xWords(props.frame.chart.xAxis, paneAt(), props.units)}
          describedBy={summaryId}
          onReading={(x) => props.onReading(x)}
          onSpeak={(x) => props.onSpeak(x)}
          onScrub={props.onScrub}
        />
      </div>
      <Show when={!wide()}>
        <ReadingTable labels={props.labels} palette={props.look.palette} valueOf={props.valueOf} />
      </Show>
    </>
  );
}
