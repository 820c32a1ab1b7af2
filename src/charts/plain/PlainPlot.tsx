/** A plain chart, drawn as SVG: large enough for a room, and the same on paper. */
import { createElementSize } from '@solid-primitives/resize-observer';
import { createMemo, createSignal, For, Show, type JSX } from 'solid-js';
import { formatNumber, type UnitSystem } from '../../../sim/index.ts';
import { plainPath, plainScale, type PlainAxes, type PlainScale } from './plain-scale.ts';
import './plain.css';

export interface PlainCurve {
  readonly name: string;
  readonly at_s: readonly number[];
  /** SI; `null` where there is none. */
  readonly values: readonly (number | null)[];
  readonly class: string;
}

export interface PlainPlotProps {
  readonly axes: PlainAxes;
  readonly title: string;
  readonly units: UnitSystem;
  readonly curves: readonly PlainCurve[];
  /** Curves of the class `is-run` are shown up to here. */
  readonly until_s?: number | undefined;
  /** What is seen, in words. */
  readonly says: string;
  /** Fixed size, for paper; else it fills the width it is given. */
  readonly size?: { readonly width: number; readonly height: number; readonly text: number };
  /** Lies over the axes. */
  readonly over?: (scale: PlainScale) => JSX.Element;
}

const FIRST = { width: 640, height: 320, text: 15 };

export function PlainPlot(props: PlainPlotProps) {
  const [place, setPlace] = createSignal<HTMLDivElement>();
  const measured = createElementSize(place);
  const size = createMemo(() => {
    const element = place();
    if (props.size) return props.size;
    if (!element || measured.width === null) return FIRST;
    return {
      width: Math.max(240, Math.floor(measured.width)),
      height: Math.max(200, Math.floor(measured.height ?? FIRST.height)),
      text: Number.parseFloat(getComputedStyle(element).fontSize) || FIRST.text,
    };
  });
  const scale = createMemo(() => plainScale(props.axes, size(), props.units));
  return (
    <div class="plain-plot" ref={setPlace} style={props.size ? { height: `${props.size.height}px` } : undefined}>
      <svg
        role="img"
        aria-label={props.says}
        width={size().width}
        height={size().height}
        viewBox={`0 0 ${size().width} ${size().height}`}
        style={{ 'font-size': `${size().text}px` }}
      >
        <For each={scale().timeTicks}>
          {(tick) => (
            <>
              <path class="plain-grid" d={`M${tick.x},${scale().top}V${scale().bottom}`} />
              <text class="plain-tick" x={tick.x} y={scale().bottom + 1.25 * size().text} text-anchor="middle">
                {tick.words}
              </text>
            </>
          )}
        </For>
        <For each={scale().valueTicks}>
          {(tick) => (
            <>
              <path class="plain-grid" d={`M${scale().left},${tick.y}H${scale().right}`} />
              <text class="plain-tick" x={scale().left - 8} y={tick.y} dy="0.32em" text-anchor="end">
                {formatNumber(tick.value, scale().decimals)}
              </text>
            </>
          )}
        </For>
        <path class="plain-axis" d={`M${scale().left},${scale().top}V${scale().bottom}H${scale().right}`} />
        <text class="plain-title" x={scale().left} y={0.95 * size().text}>
          {props.title}, {scale().unit}
        </text>
        <For each={props.curves}>
          {(curve) => (
            <path
              class={`plain-curve ${curve.class}`}
              d={plainPath(
                scale(),
                curve.at_s,
                curve.values,
                curve.class.includes('is-run') ? (props.until_s ?? Infinity) : Infinity,
              )}
            />
          )}
        </For>
        <Show when={props.until_s !== undefined && props.until_s < props.axes.until_s ? props.until_s : undefined}>
          {(until_s) => <path class="plain-mark" d={`M${scale().x(until_s())},${scale().top}V${scale().bottom}`} />}
        </Show>
      </svg>
      {props.over?.(scale())}
    </div>
  );
}
