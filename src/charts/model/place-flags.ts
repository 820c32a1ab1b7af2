/** Sets the words of event flags on one row, beside their staff; a flag without room keeps its staff alone. */

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
export function placeFlags(flags: readonly WantedFlag[], rowWidth: number, gap = 3): readonly FlagSide[] {
  const sides = new Array<FlagSide>(flags.length).fill('none');
  const taken: (readonly [number, number])[] = [];
  const isFree = ([from, to]: readonly [number, number]): boolean =>
    from >= 0 && to <= rowWidth && taken.every(([start, end]) => to + gap <= start || from >= end + gap);
  /** How much the words would be in the way of flags that still wait. */
  const inTheWay = ([from, to]: readonly [number, number], own: number): number =>
    flags.reduce(
      (sum, { x, rank }, index) =>
        index !== own && sides[index] === 'none' && x > from - gap && x < to + gap ? sum + rank : sum,
      0,
    );

  const order = flags
    .map((_, index) => index)
    .sort((a, b) => flags[b]!.rank - flags[a]!.rank || flags[a]!.x - flags[b]!.x);
  for (const own of order) {
    const { x, width } = flags[own]!;
    const right = [x, x + width] as const;
    const left = [x - width, x] as const;
    const wantsLeft = isFree(left) && (!isFree(right) || inTheWay(left, own) < inTheWay(right, own));
    if (wantsLeft || isFree(right)) {
      sides[own] = wantsLeft ? 'left' : 'right';
      taken.push(wantsLeft ? left : right);
    }
  }
  return sides;
}
