/** One palette: what stands outside the style sheet repeats it to the letter. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { darkPalette, lightPalette } from './palettes.ts';

const fileOf = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const pairs = new Map(
  [...fileOf('src/styles/tokens.css').matchAll(/--([a-z-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/gu)].map(
    ([, token = '', light = '', dark = '']) => [token, { light, dark }] as const,
  ),
);

describe('the palette', () => {
  test.each(Object.keys(lightPalette) as (keyof typeof lightPalette)[])(
    'has %s as the charts are tested with it',
    (token) => {
      expect(pairs.get(token)).toEqual({ light: lightPalette[token], dark: darkPalette[token] });
    },
  );

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
