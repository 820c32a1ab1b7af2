/** A drawn picture of one part at the moment of the time mark, with the ways out of every chart. */
import { createMediaQuery } from '@solid-primitives/media';
import { createMemo, Index, Match, Switch, type JSX } from 'solid-js';
import { formatDuration } from '../../../sim/index.ts';
import type { DataTable } from '../export/data-table.ts';
import { picture } from '../export/svg-markup.ts';
import { CHART_NAMES, type ChartId } from '../model/chart.ts';
import { markup, type Mark, type Picture, type PictureFrame } from '../pictures/picture.ts';
import { REDUCED_MOTION } from '../../ui/reduced-motion.ts';
import { createVisibility } from '../../ui/visibility.ts';
import { ChartFrame } from './ChartFrame.tsx';
import type { Scene } from './scene.ts';

export interface PictureChartProps {
  readonly name: ChartId;
  readonly scene: Scene;
  readonly pictureAt: (time_s: number, frame: PictureFrame) => Picture;
  readonly tableAt: (time_s: number) => DataTable;
  readonly open: boolean;
  readonly onToggle: (open: boolean) => void;
  readonly head?: JSX.Element;
}

/** Width of an exported picture, whatever the screen. */
const PICTURE_WIDTH = 720;

const only = <Tag extends Mark['tag']>(mark: Mark, tag: Tag): Extract<Mark, { tag: Tag }> | null =>
  mark.tag === tag ? (mark as Extract<Mark, { tag: Tag }>) : null;

const lookOf = (mark: Exclude<Mark, { tag: 'text' }>): JSX.CSSProperties => ({
  fill: mark.fill ? `var(--${mark.fill})` : 'none',
  stroke: mark.stroke ? `var(--${mark.stroke})` : 'none',
});

export function PictureChart(props: PictureChartProps) {
  const { near, watch } = createVisibility();
  const isCalm = createMediaQuery(REDUCED_MOTION);
  const scene = () => props.scene;
  const time_s = createMemo<number>(
    (before) => (near() ? scene().rowTime_s() : (scene().restedTime_s?.() ?? before)),
    0,
  );
  const shown = createMemo(() =>
    props.pictureAt(time_s(), {
      width: scene().width(),
      height: scene().height?.(),
      textScale: scene().look().textScale,
      units: scene().units(),
      isCalm: isCalm(),
    }),
  );
  const note = () => `at ${formatDuration(time_s())}`;
  const title = () => CHART_NAMES[props.name];
  const svg = (): string => {
    const { palette } = scene().look();
    const drawn = props.pictureAt(time_s(), {
      width: PICTURE_WIDTH,
      textScale: 1,
      units: scene().units(),
      isCalm: true,
    });
    return picture(
      {
        width: drawn.width,
        height: drawn.height,
        title: title(),
        says: drawn.says,
        subtitle: `${scene().runName()}, ${note()}`,
      },
      palette,
      drawn.marks.map((mark) => markup(mark, palette)).join(''),
    );
  };
  return (
    <ChartFrame
      title={title()}
      note={note()}
      runName={scene().runName()}
      open={props.open}
      onToggle={(open) => props.onToggle(open)}
      head={props.head}
      bringUp={scene().bringUp}
      units={scene().units()}
      table={() => props.tableAt(time_s())}
      svg={svg}
    >
      <div ref={watch}>
        <svg class="chart-picture" role="img" aria-label={shown().says} width={shown().width} height={shown().height}>
          <Index each={shown().marks}>
            {(mark) => (
              <Switch>
                <Match when={only(mark(), 'path')}>
                  {(path) => (
                    <path
                      d={path().d}
                      style={lookOf(path())}
                      stroke-width={path().width}
                      stroke-dasharray={path().dash}
                      stroke-linecap={path().round ? 'round' : undefined}
                      opacity={path().opacity}
                    />
                  )}
                </Match>
                <Match when={only(mark(), 'circle')}>
                  {(circle) => (
                    <circle
                      cx={circle().cx}
                      cy={circle().cy}
                      r={circle().r}
                      style={lookOf(circle())}
                      stroke-width={circle().width}
                      stroke-dasharray={circle().dash}
                      opacity={circle().opacity}
                    />
                  )}
                </Match>
                <Match when={only(mark(), 'text')}>
                  {(text) => (
                    <text
                      x={text().x}
                      y={text().y}
                      text-anchor={text().anchor}
                      classList={{ 'is-name': text().bold === true }}
                      style={{ fill: `var(--${text().fill})` }}
                    >
                      {text().words}
                    </text>
                  )}
                </Match>
              </Switch>
            )}
          </Index>
        </svg>
      </div>
    </ChartFrame>
  );
}
