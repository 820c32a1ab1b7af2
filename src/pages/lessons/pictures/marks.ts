/** Small pieces that the lessons' pictures are put together from. */
import type { Mark } from '../../../charts/pictures/picture.ts';
import type { Token } from '../../../charts/model/palette.ts';

export const rect = (x: number, y: number, width: number, height: number, fill: Token, opacity = 1): Mark => ({
  tag: 'path',
  d: `M${x.toFixed(1)},${y.toFixed(1)}h${width.toFixed(1)}v${height.toFixed(1)}h${(-width).toFixed(1)}z`,
  fill,
  opacity,
});

export const outline = (d: string, width = 2.2, stroke: Token = 'ink'): Mark => ({ tag: 'path', d, stroke, width });

export const words = (
  x: number,
  y: number,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'start',
  fill: Token = 'ink',
  bold = false,
): Mark => ({ tag: 'text', x, y, words: text, fill, anchor, bold });

/** An arrow from a point up (negative) or down, its head as large as the text asks. */
export const forceArrow = (x: number, y: number, dy: number, text: number, stroke: Token): Mark => {
  const head = Math.sign(dy) * Math.min(Math.abs(dy) * 0.6, 0.5 * text);
  return {
    tag: 'path',
    d: `M${x},${y}v${dy}m${-0.35 * text},${-head}l${0.35 * text},${head}l${0.35 * text},${-head}`,
    stroke,
    width: 0.16 * text,
  };
};

export interface Bar {
  readonly name: string;
  readonly value: number;
  readonly says: string;
  readonly fill: Token;
  /** Hatching doubles the colour. */
  readonly isHatched?: boolean;
}

/** Lying bars from one line, named above, their amounts at their ends; as long at most as the greatest of `ends` would be. */
export function bars(
  all: readonly Bar[],
  left: number,
  top: number,
  width: number,
  text: number,
  ends: readonly number[] = [],
): readonly Mark[] {
  const most = Math.max(...all.map(({ value }) => value), ...ends, 1e-12);
  const row = 3.1 * text;
  const room = width - 6.5 * text;
  return [
    ...all.flatMap((bar, index): readonly Mark[] => {
      const y = top + index * row;
      const length = Math.max(2, (bar.value / most) * room);
      const height = 1.25 * text;
      const strokes = Math.floor(length / (0.5 * text));
      return [
        words(left, y + text, bar.name),
        rect(left, y + 1.35 * text, length, height, bar.fill, bar.isHatched ? 0.45 : 0.9),
        ...(bar.isHatched
          ? [
              outline(
                Array.from(
                  { length: strokes },
                  (_, k) => `M${left + (k + 1) * 0.5 * text},${y + 1.35 * text}l${-0.4 * text},${height}`,
                ).join(''),
                1,
                bar.fill,
              ),
            ]
          : []),
        words(left + length + 0.5 * text, y + 1.35 * text + 0.95 * text, bar.says, 'start', 'ink', true),
      ];
    }),
    outline(`M${left},${top + 1.2 * text}v${(all.length - 1) * row + 1.6 * text}`, 1.25),
  ];
}

/** A line over axes of its own. */
export function line(
  xs: readonly number[],
  ys: readonly number[],
  x: (value: number) => number,
  y: (value: number) => number,
  stroke: Token,
  width: number,
  dash?: string,
): Mark {
  const d = xs
    .map((value, index) => `${index === 0 ? 'M' : 'L'}${x(value).toFixed(1)},${y(ys[index] ?? 0).toFixed(1)}`)
    .join('');
  return { tag: 'path', d, stroke, width, ...(dash === undefined ? {} : { dash }) };
}

/** A person who stands, feet at a point: head, body, arms, legs. */
export const person = (x: number, foot: number, height: number): readonly Mark[] => [
  { tag: 'circle', cx: x, cy: foot - 0.88 * height, r: 0.12 * height, stroke: 'ink', width: 0.05 * height },
  outline(
    `M${x},${foot - 0.76 * height}V${foot - 0.4 * height}M${x},${foot - 0.4 * height}L${x - 0.15 * height},${foot}` +
      `M${x},${foot - 0.4 * height}L${x + 0.15 * height},${foot}` +
      `M${x - 0.2 * height},${foot - 0.48 * height}L${x},${foot - 0.66 * height}L${x + 0.2 * height},${foot - 0.48 * height}`,
    0.05 * height,
  ),
];
