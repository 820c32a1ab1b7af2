/** One palette: what stands outside the style sheet repeats it to the letter. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { UNPLAYED } from '../../../src/charts/model/palette.ts';
import { darkPalette, lightPalette } from './palettes.ts';

const fileOf = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const pairs = new Map(
  [...fileOf('src/styles/tokens.css').matchAll(/--([a-z-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/gu)].map(
    ([, token = '', light = '', dark = '']) => [token, { light, dark }] as const,
  ),
);

const channels = (hex: string): number[] => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));

/** Relative luminance and contrast ratio as the guidelines for accessible pages define them. */
const luminance = (rgb: readonly number[]): number =>
  rgb
    .map((channel) => channel / 255)
    .map((share) => (share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4))
    .reduce((sum, share, index) => sum + share * ([0.2126, 0.7152, 0.0722][index] ?? 0), 0);
const contrast = (a: readonly number[], b: readonly number[]): number => {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
};

describe('the palette', () => {
  test.each(Object.keys(lightPalette) as (keyof typeof lightPalette)[])(
    'has %s as the charts are tested with it',
    (token) => {
      expect(pairs.get(token)).toEqual({ light: lightPalette[token], dark: darkPalette[token] });
    },
  );

  test.each(['light', 'dark'] as const)('keeps traces that are not played yet at 3 : 1 on %s paper', (ground) => {
    const paper = channels(pairs.get('paper')?.[ground] ?? '');
    for (const token of ['ink', 'copper', 'water', 'oil', 'plant', 'steam', 'alarm']) {
      const ink = channels(pairs.get(token)?.[ground] ?? '');
      const seen = paper.map((channel, index) => channel + UNPLAYED * ((ink[index] ?? Number.NaN) - channel));
      expect(contrast(seen, paper), token).toBeGreaterThanOrEqual(3);
    }
  });

  test('registers every pair as a colour that begins light', () => {
    const registered = [
      ...fileOf('src/styles/tokens.css').matchAll(/@property --([a-z-]+) \{[^}]*initial-value: (#[0-9a-f]{6});/gu),
    ].map(([, token, light]) => [token, light]);
    expect(registered).toEqual([...pairs].map(([token, { light }]) => [token, light]));
  });

  test('lends its paper to the browser’s own frame', () => {
    const paper = pairs.get('paper');
    const frames = [...fileOf('index.html').matchAll(/name="theme-color" content="(#\w+)"/gu)].map(
      ([, colour]) => colour,
    );
    expect(frames).toEqual([paper?.light, paper?.dark]);
    const { background_color, theme_color } = JSON.parse(fileOf('public/manifest.webmanifest')) as Record<
      string,
      unknown
    >;
    expect([background_color, theme_color]).toEqual([paper?.light, paper?.light]);
  });
});
