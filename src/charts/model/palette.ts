/** The inks charts are drawn with: names here, colours from the page's tokens, so that a theme changes them all. */
import { scaleLinear } from 'd3-scale';

const TOKENS = [
  'paper',
  'ink',
  'ink-muted',
  'gridline',
  'border',
  'copper',
  'copper-tint',
  'water',
  'water-tint',
  'oil',
  'oil-tint',
  'plant',
  'steam',
  'alarm',
] as const;

/** How much of their ink traces keep beyond the time mark: every one stays 3 : 1 on its paper. */
export const UNPLAYED = 0.78;

export type Token = (typeof TOKENS)[number];
/** A token, or a step of the oil hue from 0 (most volatile, light) to 1 (least volatile, dark). */
export type Ink = Token | `oil-step-${number}`;

export type Palette = Readonly<Record<Token, string>>;

/** Colours of the theme in force at an element. */
export function readPalette(element: Element): Palette {
  const style = getComputedStyle(element);
  return Object.fromEntries(TOKENS.map((token) => [token, style.getPropertyValue(`--${token}`).trim()])) as Record<
    Token,
    string
  >;
}

export const oilStep = (share: number): Ink => `oil-step-${Math.round(share * 1000) / 1000}`;

/** Resolves an ink to a colour. */
export function colourOf(palette: Palette, ink: Ink): string {
  if (!ink.startsWith('oil-step-')) return palette[ink as Token];
  return oilScale(palette)(Number(ink.slice('oil-step-'.length)));
}

const mixOf = (from: string, to: string, share: number): string =>
  scaleLinear<string>().domain([0, 1]).range([from, to])(share);

/** Light to dark whatever the theme: in a dark theme the oil’s tint is its darker tone. */
function oilScale(palette: Palette): (share: number) => string {
  const tones = [mixOf(palette['oil-tint'], palette.paper, 0.6), palette['oil-tint'], palette.oil];
  tones.sort((a, b) => lightness(b) - lightness(a));
  return scaleLinear<string>().domain([0, 0.5, 1]).range(tones).clamp(true);
}

/** Rough lightness of `#rgb`, `#rrggbb` or `rgb(r, g, b)`, 0–255, enough to put tones in order. */
export function lightness(colour: string): number {
  const hex = /^#([0-9a-f]{3}|[0-9a-f]{6})$/iu.exec(colour)?.[1];
  const parts = hex
    ? (hex.length === 3 ? [...hex].map((digit) => digit + digit) : (hex.match(/../gu) ?? [])).map((pair) =>
        Number.parseInt(pair, 16),
      )
    : (colour.match(/[\d.]+/gu) ?? []).slice(0, 3).map(Number);
  const [red = 0, green = 0, blue = 0] = parts;
  return 0.3 * red + 0.59 * green + 0.11 * blue;
}

/** Colours of a temperature field, cold to hot: from paper through a tint of copper to copper. */
export function heatColours(palette: Palette, steps: number): readonly string[] {
  const ramp = scaleLinear<string>()
    .domain([0, 0.5, 1])
    .range([
      mixOf(palette.paper, palette['copper-tint'], 0.3),
      mixOf(palette['copper-tint'], palette.copper, 0.25),
      palette.copper,
    ]);
  return Array.from({ length: steps }, (_, step) => ramp(steps === 1 ? 1 : step / (steps - 1)));
}
