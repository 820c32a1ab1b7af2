/** SVG as text, escaped, for pictures that must stand alone. */
import type { Palette } from '../model/palette.ts';

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** What XML has no way to write: control characters and halves of pairs. */
const UNWRITABLE = /[^\t\n\r -\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu;

const escaped = (words: string): string =>
  words
    .replace(UNWRITABLE, '\uFFFD')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

const rounded = (value: number): string => String(Math.round(value * 100) / 100);

/** One element; numbers are rounded to a hundredth of a pixel, `undefined` leaves the attribute out. */
export function element(tag: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => ` ${name}="${typeof value === 'number' ? rounded(value) : escaped(String(value))}"`)
    .join('');
  return children.length === 0 ? `<${tag}${written}/>` : `<${tag}${written}>${children.join('')}</${tag}>`;
}

export const words = (text: string): string => escaped(text);

/** Faces of the page first; whoever opens the picture elsewhere gets a plain sans serif of the same build. */
const TEXT_FACE =
  "'Source Sans 3 Variable', 'Source Sans 3', 'Source Sans Pro', 'Noto Sans', 'Liberation Sans', Arial, sans-serif";
const TITLE_FACE = "'Fraunces Variable', Fraunces, 'Noto Serif', 'Liberation Serif', Georgia, serif";

export interface PictureFrame {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly says: string;
  /** Shown under the title: run, moment. */
  readonly subtitle: string;
}

export const HEADER_HEIGHT = 56;
const MARGIN = 16;

/** A whole picture: ground, title, body. The body's origin lies under the title, inside the margin. */
export function picture(
  { width, height, title, says, subtitle }: PictureFrame,
  palette: Palette,
  body: string,
): string {
  const outerWidth = width + 2 * MARGIN;
  const outerHeight = height + HEADER_HEIGHT + MARGIN;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: outerWidth,
      height: outerHeight,
      viewBox: `0 0 ${outerWidth} ${outerHeight}`,
      role: 'img',
      'font-family': TEXT_FACE,
      'font-size': 13,
      fill: palette.ink,
      style: 'font-variant-numeric: tabular-nums lining-nums',
    },
    element('title', {}, words(title)),
    element('desc', {}, words(says)),
    element('rect', { width: outerWidth, height: outerHeight, fill: palette.paper }),
    element('text', { x: MARGIN, y: 26, 'font-size': 18, 'font-family': TITLE_FACE }, words(title)),
    element('text', { x: MARGIN, y: 44, fill: palette['ink-muted'] }, words(subtitle)),
    element('g', { transform: `translate(${MARGIN} ${HEADER_HEIGHT})` }, body),
  );
}
