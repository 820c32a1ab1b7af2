/** One curve with its marks, small and whole: value against something that is chosen. */
import { extent } from 'd3-array';
import { scaleLinear, scaleLog } from 'd3-scale';
import { line } from 'd3-shape';
import { createMemo, For, Show } from 'solid-js';
import { createWidth } from '../../ui/width.ts';

export interface CurveMark {
  readonly x: number;
  readonly y: number;
  readonly label: string;
}

export interface CurvePictureProps {
  readonly label: string;
  readonly xTitle: string;
  readonly yTitle: string;
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly marks: readonly CurveMark[];
  readonly xTicks: readonly (readonly [at: number, words: string])[];
  readonly yTicks: readonly (readonly [at: number, words: string])[];
  readonly logarithmic?: boolean;
}

const HEIGHT_px = 220;
const LEFT_px = 60;
const RIGHT_px = 16;
const TOP_px = 28;
const BOTTOM_px = 44;
/** Marks may stand close together; the name of each next one stands a line higher. */
const LINE_px = 16;

export function CurvePicture(props: CurvePictureProps) {
  let host: HTMLDivElement | undefined;
  const width = createWidth(() => host);
  const x = createMemo(() => {
    const [low = 0, high = 1] = extent(props.points, ([at]) => at);
    return scaleLinear()
      .domain([low, high])
      .range([LEFT_px, Math.max(LEFT_px + 60, width() - RIGHT_px)]);
  });
  const y = createMemo(() => {
    const ends = props.yTicks.map(([at]) => at);
    const [low = 0, high = 1] = extent(ends);
    const scale = props.logarithmic === true ? scaleLog() : scaleLinear();
    return scale
      .domain([low, high])
      .range([HEIGHT_px - BOTTOM_px, TOP_px])
      .clamp(true);
  });
  const path = createMemo(() => {
    const across = x();
    const up = y();
    const shape = line<readonly [number, number]>()
      .digits(1)
      .x(([at]) => across(at))
      .y(([, value]) => up(value));
    return shape(props.points) ?? '';
  });
  /** Whether the curve goes up after a place: a name to the right of it then stands under the curve. */
  const risesAfter = (place: number): boolean => {
    const next = props.points.findIndex(([at]) => at > place);
    const [before, after] = [props.points[next - 1], props.points[next]];
    return before !== undefined && after !== undefined && after[1] > before[1];
  };
  return (
    <div ref={host} class="curve-picture">
      <Show when={width() > 0}>
        <svg width={width()} height={HEIGHT_px} role="img" aria-label={props.label}>
          <text class="curve-title" x={0} y={14}>
            {props.yTitle}
          </text>
          <For each={props.yTicks}>
            {([at, words]) => (
              <g>
                <line class="curve-grid" x1={x().range()[0]} x2={x().range()[1]} y1={y()(at)} y2={y()(at)} />
                <text class="curve-tick" x={LEFT_px - 6} y={y()(at)} text-anchor="end" dominant-baseline="middle">
                  {words}
                </text>
              </g>
            )}
          </For>
          <For each={props.xTicks}>
            {([at, words]) => (
              <text class="curve-tick" x={x()(at)} y={HEIGHT_px - BOTTOM_px + 18} text-anchor="middle">
                {words}
              </text>
            )}
          </For>
          <text class="curve-title" x={x().range()[1]} y={HEIGHT_px - 6} text-anchor="end">
            {props.xTitle}
          </text>
          <path class="curve-line" d={path()} />
          <For each={props.marks}>
            {(mark, at) => {
              const right = () => x()(mark.x) > width() / 2;
              const isUnder = () => !right() && risesAfter(mark.x);
              return (
                <g>
                  <circle class="curve-mark" cx={x()(mark.x)} cy={y()(mark.y)} r="5" />
                  <text
                    class="curve-label"
                    x={x()(mark.x) + (right() ? -10 : 10)}
                    y={y()(mark.y) + (isUnder() ? 18 + LINE_px * at() : -8 - LINE_px * at())}
                    text-anchor={right() ? 'end' : 'start'}
                  >
                    {mark.label}
                  </text>
                </g>
              );
            }}
          </For>
        </svg>
      </Show>
    </div>
  );
}
