/** A canvas for the many small marks of the drawing; it is painted only when the time mark or the picture changes. */
import { makeMediaQueryListener } from '@solid-primitives/media';
import { createEffect, createMemo, on, onCleanup, onMount } from 'solid-js';
import type { StillLayout } from '../geometry/still-layout.ts';
import type { StillState } from '../still-state.ts';
import { createCanvasPainter, inksOf, type Inks } from './canvas-painter.ts';
import type { DrawMarks } from './draw-marks.ts';
import { markSites } from './mark-sites.ts';
import { advancePhases, stillPhases } from './phases.ts';

interface MarksCanvasProps {
  readonly marks: DrawMarks;
  readonly layout: StillLayout;
  readonly state: StillState | null;
  readonly reducedMotion: boolean;
}

/** A longer pause than this between two frames is a rest, not motion, s. */
const LONGEST_STEP = 0.06;

export function MarksCanvas(props: MarksCanvasProps) {
  let canvas!: HTMLCanvasElement;
  let inks: Inks | null = null;
  let frame = 0;
  let lastPaint = 0;
  const phases = stillPhases();
  const sites = createMemo(() => markSites(props.layout));

  const paint = (now: number) => {
    frame = 0;
    const context = canvas.getContext('2d');
    const state = props.state;
    if (!context) return;
    const ratio = window.devicePixelRatio || 1;
    const wide = Math.round(props.layout.width * ratio);
    const tall = Math.round(props.layout.height * ratio);
    if (canvas.width !== wide) canvas.width = wide;
    if (canvas.height !== tall) canvas.height = tall;
    context.setTransform(ratio, 0, 0, ratio, 0, 0);
    context.clearRect(0, 0, props.layout.width, props.layout.height);
    if (!state) return;
    const { pxPerMetre, neckBore_m, potDiameter_m } = sites();
    if (!props.reducedMotion)
      advancePhases(
        phases,
        state,
        Math.min(LONGEST_STEP, Math.max(0, (now - lastPaint) / 1000)),
        pxPerMetre,
        neckBore_m,
        potDiameter_m,
      );
    lastPaint = now;
    inks ??= inksOf(canvas);
    props.marks(createCanvasPainter(context, inks), sites(), state, phases);
  };
  const askForPaint = () => {
    if (frame === 0) frame = requestAnimationFrame(paint);
  };

  onMount(() => {
    createEffect(on([() => props.state, sites, () => props.reducedMotion], askForPaint));
    const recolour = () => {
      inks = null;
      askForPaint();
    };
    const themes = new MutationObserver(recolour);
    themes.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme', 'class', 'style'] });
    makeMediaQueryListener('(prefers-color-scheme: dark)', recolour);
    window.addEventListener('resize', askForPaint);
    onCleanup(() => {
      cancelAnimationFrame(frame);
      themes.disconnect();
      window.removeEventListener('resize', askForPaint);
    });
  });
  return (
    <canvas
      ref={canvas}
      class="drawing-marks"
      aria-hidden="true"
      style={{ width: `${props.layout.width}px`, height: `${props.layout.height}px` }}
    />
  );
}
