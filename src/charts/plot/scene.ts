/** What all charts of a column share. */
import type { Accessor } from 'solid-js';
import type { Domain } from '../model/domain.ts';
import type { Flag } from '../model/event-words.ts';
import { layOutChart, layOutChartIn, type ChartLayout, type Gutters } from '../model/layout.ts';
import type { Chart } from '../model/chart.ts';
import type { UnitSystem } from '../model/measure.ts';
import type { Look } from './look.ts';

export interface Scene {
  readonly look: Accessor<Look>;
  readonly width: Accessor<number>;
  /** Height that the chart must keep to; left out where it takes what it needs. */
  readonly height?: Accessor<number>;
  readonly inset: Accessor<Gutters>;
  readonly units: Accessor<UnitSystem>;
  readonly runName: Accessor<string>;
  readonly time_s: Accessor<number>;
  /** Time of the last row of the record before the time mark: often enough for what shows one moment. */
  readonly rowTime_s: Accessor<number>;
  /** The time mark once it rests: what is off the screen follows no sooner. Left out where nothing moves. */
  readonly restedTime_s?: Accessor<number>;
  readonly timeDomain: Accessor<Domain>;
  readonly flags: Accessor<readonly Flag[]>;
  /** The reading line of the time charts, common to them all. */
  readonly reading_s: Accessor<number | null>;
  readonly setReading: (time_s: number | null) => void;
  readonly scrub: (time_s: number) => void;
  /** Brings the chart up to the first screen, where there is one. */
  readonly bringUp?: (() => void) | undefined;
  /** Says something politely, once the reader pauses. */
  readonly speak: (words: string) => void;
}

export const layoutIn = (scene: Scene, chart: Chart): ChartLayout =>
  scene.height
    ? layOutChartIn(chart, scene.width(), scene.height(), scene.inset(), scene.look().textScale)
    : layOutChart(chart, scene.width(), scene.inset(), scene.look().textScale);

/** Width of an exported picture, whatever the screen. */
const PICTURE_WIDTH = 960;

export const pictureLayout = (chart: Chart): ChartLayout =>
  layOutChart(chart, PICTURE_WIDTH, { left: 56, right: 184 }, 1);
