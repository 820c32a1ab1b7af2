/** What the page lends to its charts: colours, text size, pixel density. Followed for as long as the owner lives. */
import { createEffect, createSignal, on, onCleanup, onMount, type Accessor } from 'solid-js';
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

export function createLook(
  element: Accessor<HTMLElement | undefined>,
  theme: Accessor<unknown>,
): Accessor<Look | undefined> {
  const [look, setLook] = createSignal<Look>();

  const refresh = (): void => {
    const at = element();
    if (!at) return;
    const style = getComputedStyle(at);
    const size = Number.parseFloat(style.fontSize) || SMALL_TEXT_px;
    setLook({
      palette: readPalette(at),
      textScale: size / SMALL_TEXT_px,
      font: `${size}px ${style.fontFamily}`,
      pixelRatio: window.devicePixelRatio || 1,
    });
  };

  onMount(() => {
    refresh();
    const queries = WATCHED.map((query) => matchMedia(query));
    for (const query of queries) query.addEventListener('change', refresh);
    onCleanup(() => queries.forEach((query) => query.removeEventListener('change', refresh)));
    onCleanup(followPixelRatio(refresh));
    void document.fonts.ready.then(() => {
      forgetWidths();
      refresh();
    });
  });

  // The theme's attribute is set by whoever owns the page, perhaps after this effect.
  createEffect(on(theme, () => queueMicrotask(refresh), { defer: true }));

  return look;
}

/** Calls back whenever the pixel density changes; answers how to stop. */
function followPixelRatio(changed: () => void): () => void {
  let query: MediaQueryList | null = null;
  const listen = (): void => {
    query?.removeEventListener('change', heard);
    query = matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    query.addEventListener('change', heard);
  };
  const heard = (): void => {
    listen();
    changed();
  };
  listen();
  return () => query?.removeEventListener('change', heard);
}
