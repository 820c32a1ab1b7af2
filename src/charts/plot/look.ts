/** What the page lends to its charts: colours, text size, pixel density. Followed for as long as the owner lives. */
import { makeMediaQueryListener } from '@solid-primitives/media';
import { createResizeObserver } from '@solid-primitives/resize-observer';
import { createEffect, createSignal, on, onMount, type Accessor } from 'solid-js';
import { readPalette, type Palette } from '../model/palette.ts';
import { forgetWidths } from './text-width.ts';

export { createWidth } from '../../ui/width.ts';

export interface Look {
  readonly palette: Palette;
  /** Size of small text against 13 px. */
  readonly textScale: number;
  /** Small text as a CSS font. */
  readonly font: string;
  readonly pixelRatio: number;
}

const SMALL_TEXT_px = 13;
/** A theme follows the system, a print has its own colours, a window moves between screens. */
const WATCHED = ['(prefers-color-scheme: dark)', 'print'];

const textSize = (at: Element): number => Number.parseFloat(getComputedStyle(at).fontSize) || SMALL_TEXT_px;

const fontOf = (at: Element): string => `${textSize(at)}px ${getComputedStyle(at).fontFamily}`;

export function createLook(
  element: Accessor<HTMLElement | undefined>,
  theme: Accessor<unknown>,
): Accessor<Look | undefined> {
  const [look, setLook] = createSignal<Look>();

  const refresh = (): void => {
    const at = element();
    if (!at) return;
    setLook({
      palette: readPalette(at),
      textScale: textSize(at) / SMALL_TEXT_px,
      font: fontOf(at),
      pixelRatio: window.devicePixelRatio || 1,
    });
  };

  onMount(() => {
    refresh();
    for (const query of WATCHED) makeMediaQueryListener(query, refresh);
    createEffect(on(createPixelRatio(), refresh, { defer: true }));
    // A reader who makes the text larger makes what holds a chart higher.
    createResizeObserver(element, (_size, at) => {
      if (fontOf(at) !== look()?.font) refresh();
    });
    void document.fonts.ready.then(() => {
      forgetWidths();
      refresh();
    });
  });

  // The theme's attribute is set by whoever owns the page, perhaps after this effect.
  createEffect(on(theme, () => queueMicrotask(refresh), { defer: true }));

  return look;
}

/** Pixel density of the screen that the window stands on. */
function createPixelRatio(): Accessor<number> {
  const [ratio, setRatio] = createSignal(window.devicePixelRatio);
  createEffect(() => {
    makeMediaQueryListener(`(resolution: ${ratio()}dppx)`, () => setRatio(window.devicePixelRatio));
  });
  return ratio;
}
