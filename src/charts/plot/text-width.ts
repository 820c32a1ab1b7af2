/** Width of words in the text face, measured once. */

let context: CanvasRenderingContext2D | null = null;
const known = new Map<string, number>();

/** `font` as in CSS, e.g. `13px sans-serif`. */
export function textWidth(words: string, font: string): number {
  const key = `${font} ${words}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  context ??= document.createElement('canvas').getContext('2d');
  if (!context) return words.length * 7;
  context.font = font;
  const { width } = context.measureText(words);
  known.set(key, width);
  return width;
}

/** Measured widths no longer hold once a face has arrived. */
export const forgetWidths = (): void => known.clear();
