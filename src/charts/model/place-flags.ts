/** Sets the words of event flags on one row: to the right of their staff, else to the left, else staff alone. */

export interface WantedFlag {
  /** Where the staff stands. */
  readonly x: number;
  /** Width of the words with their distance from the staff. */
  readonly width: number;
  /** Flags of higher rank get their words first. */
  readonly rank: number;
}

export type FlagSide = 'right' | 'left' | 'none';

/** Side of the words for each flag, in the order given. */
export function placeFlags(flags: readonly WantedFlag[], rowWidth: number, gap = 6): readonly FlagSide[] {
  const sides = new Array<FlagSide>(flags.length).fill('none');
  const taken: [number, number][] = [];
  const isFree = (from: number, to: number, own: number): boolean =>
    from >= 0 &&
    to <= rowWidth &&
    taken.every(([start, end]) => to + gap <= start || from >= end + gap) &&
    // Words may not run over the staff of another flag.
    flags.every(({ x }, index) => index === own || x <= from - 2 || x >= to + 2 || x === flags[own]!.x);

  const order = flags.map((_, index) => index).sort((a, b) => flags[b]!.rank - flags[a]!.rank || flags[a]!.x - flags[b]!.x);
  for (const index of order) {
    const { x, width } = flags[index]!;
    if (isFree(x, x + width, index)) {
      sides[index] = 'right';
      taken.push([x, x + width]);
    } else if (isFree(x - width, x, index)) {
      sides[index] = 'left';
      taken.push([x - width, x]);
    }
  }
  return sides;
}
