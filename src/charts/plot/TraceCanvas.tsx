/**
 * Canvas with the traces of one chart: in full ink up to a place, faint beyond it. The traces are drawn once for a run,
 * off screen; a moving time mark only copies the strip it has passed.
 */
import { createEffect, on } from 'solid-js';
import { UNPLAYED, type Palette } from '../model/palette.ts';
import type { Shape } from '../model/shapes.ts';
import { drawShapes } from './draw-shapes.ts';

export interface TraceCanvasProps {
  readonly shapes: readonly Shape[];
  readonly palette: Palette;
  readonly left: number;
  readonly width: number;
  readonly height: number;
  readonly pixelRatio: number;
  /** Pixels from the left edge that are in full ink; `Infinity` for all. */
  readonly inked: number;
}

export function TraceCanvas(props: TraceCanvasProps) {
  let canvas!: HTMLCanvasElement;
  const traces = document.createElement('canvas');
  /** Device pixels in full ink on the canvas now. */
  let inkedNow = 0;

  const inkedWanted = (): number => Math.round(Math.max(0, Math.min(props.width, props.inked)) * props.pixelRatio);

  /** Shows the device columns from one to another, inked up to a place. */
  const show = (from: number, to: number, inked: number): void => {
    const context = canvas.getContext('2d');
    if (!context || to <= from || canvas.width === 0 || canvas.height === 0) return;
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(from, 0, to - from, canvas.height);
    const copy = (start: number, end: number, alpha: number): void => {
      if (end <= start) return;
      context.globalAlpha = alpha;
      context.drawImage(traces, start, 0, end - start, canvas.height, start, 0, end - start, canvas.height);
    };
    copy(from, Math.min(to, inked), 1);
    copy(Math.max(from, inked), to, UNPLAYED);
    context.globalAlpha = 1;
  };

  createEffect(
    on(
      () => [props.shapes, props.palette, props.width, props.height, props.pixelRatio] as const,
      ([shapes, palette, width, height, ratio]) => {
        const deviceWidth = Math.round(width * ratio);
        const deviceHeight = Math.round(height * ratio);
        const allInked = props.inked === Infinity;
        for (const sheet of allInked ? [canvas] : [canvas, traces]) {
          if (sheet.width !== deviceWidth) sheet.width = deviceWidth;
          if (sheet.height !== deviceHeight) sheet.height = deviceHeight;
        }
        // What is all in full ink needs no copy.
        const context = (allInked ? canvas : traces).getContext('2d');
        if (!context) return;
        context.setTransform(1, 0, 0, 1, 0, 0);
        context.clearRect(0, 0, deviceWidth, deviceHeight);
        context.setTransform(ratio, 0, 0, ratio, 0, 0);
        drawShapes(context, shapes, palette);
        inkedNow = inkedWanted();
        if (allInked) return;
        show(0, deviceWidth, inkedNow);
      },
    ),
  );

  createEffect(() => {
    const inked = inkedWanted();
    if (inked === inkedNow) return;
    show(Math.min(inked, inkedNow), Math.max(inked, inkedNow), inked);
    inkedNow = inked;
  });

  return (
    <canvas
      ref={canvas}
      class="chart-traces"
      aria-hidden="true"
      style={{ left: `${props.left}px`, width: `${props.width}px`, height: `${props.height}px` }}
    />
  );
}
