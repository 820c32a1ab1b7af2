/** A drawn picture of one moment as plain marks: the page shows them, and the exported file writes them. */
import type { UnitSystem } from '../../../sim/index.ts';
import { element, words } from '../export/svg-markup.ts';
import type { Palette, Token } from '../model/palette.ts';

export interface Look {
  readonly fill?: Token;
  readonly stroke?: Token;
  readonly width?: number;
  readonly dash?: string;
  /** Strokes end in half a circle: many dots are one path. */
  readonly round?: boolean;
  readonly opacity?: number;
}

export type Mark =
  | ({ readonly tag: 'path'; readonly d: string } & Look)
  | ({ readonly tag: 'circle'; readonly cx: number; readonly cy: number; readonly r: number } & Look)
  | {
      readonly tag: 'text';
      readonly x: number;
      readonly y: number;
      readonly words: string;
      readonly fill: Token;
      readonly bold?: boolean;
      readonly anchor?: 'start' | 'middle' | 'end';
    };

export interface Picture {
  readonly marks: readonly Mark[];
  readonly width: number;
  readonly height: number;
  /** The same in sentences, for those who do not see it. */
  readonly says: string;
}

/** What a picture is drawn for. */
export interface PictureFrame {
  readonly width: number;
  /** Height it must keep to; else it takes what it needs. */
  readonly height?: number | undefined;
  readonly textScale: number;
  readonly units: UnitSystem;
  /** Nothing but the state moves. */
  readonly isCalm: boolean;
}

/** A mark's attributes with the colours of a palette. */
export function markup(mark: Mark, palette: Palette): string {
  if (mark.tag === 'text') {
    const { x, y, fill, bold, anchor } = mark;
    return element(
      'text',
      { x, y, fill: palette[fill], 'font-weight': bold ? 600 : undefined, 'text-anchor': anchor },
      words(mark.words),
    );
  }
  const look = {
    fill: mark.fill ? palette[mark.fill] : 'none',
    stroke: mark.stroke ? palette[mark.stroke] : undefined,
    'stroke-width': mark.width,
    'stroke-dasharray': mark.dash,
    'stroke-linecap': mark.round ? 'round' : undefined,
    opacity: mark.opacity,
  };
  return mark.tag === 'path'
    ? element('path', { d: mark.d, ...look })
    : element('circle', { cx: mark.cx, cy: mark.cy, r: mark.r, ...look });
}

/** Even scatter without chance: the n-th of points that fill a unit square. */
export const scattered = (n: number): { readonly x: number; readonly y: number } => ({
  x: (0.5 + n * 0.7548776662466927) % 1,
  y: (0.5 + n * 0.5698402909980532) % 1,
});

/** An arrow from a point straight up (negative) or down. */
export const arrow = (x: number, y: number, dy: number): string =>
  `M${x} ${y}v${dy}m-2.5 ${dy < 0 ? 3.5 : -3.5}l2.5 ${dy < 0 ? -3.5 : 3.5}l2.5 ${dy < 0 ? 3.5 : -3.5}`;
