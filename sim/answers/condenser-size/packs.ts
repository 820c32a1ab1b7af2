/** Whole pieces of tube as they are sold, for so many tubes of a length. */
export interface Packs {
  readonly count: number;
  /** Length of each, m. */
  readonly length_m: number;
  /** Whether pieces must be joined to one tube. */
  readonly joined: boolean;
}

/** The fewest metres of pieces; `null` where nothing is known of how the tube is sold. */
export function packsOf(lengths_m: readonly number[], length: number, count: number): Packs | null {
  const packs = [...lengths_m].sort((a, b) => a - b);
  const longest = packs.at(-1);
  if (longest === undefined) return null;
  const enough = packs.find((pack) => pack >= length);
  if (enough === undefined) return { count: count * Math.ceil(length / longest), length_m: longest, joined: true };
  return packs
    .filter((pack) => pack >= length)
    .map((pack) => ({ count: Math.ceil(count / Math.floor(pack / length)), length_m: pack, joined: false }))
    .reduce((best, next) => (next.count * next.length_m < best.count * best.length_m ? next : best));
}
