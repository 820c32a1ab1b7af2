/** Places labels along a line as near as possible to where they belong, without overlap. */

export interface WantedLabel {
  /** Where the middle of the label should be. */
  readonly at: number;
  /** Extent along the line. */
  readonly size: number;
  /** When space is short, labels with lower rank go first. */
  readonly rank?: number;
}

interface Cluster {
  members: number[];
  /** Sum over members of the wanted start of the cluster. */
  wantedStarts: number;
  size: number;
  start: number;
}

/**
 * Middles of the labels in the order given, `null` for those there was no room for. Order along the line follows
 * the wanted positions; displacement is least in the sense of least squares.
 */
export function spreadLabels(labels: readonly WantedLabel[], low: number, high: number): readonly (number | null)[] {
  const placed = new Array<number | null>(labels.length).fill(null);
  const kept = keepWhatFits(labels, high - low);
  kept.sort((a, b) => labels[a]!.at - labels[b]!.at || a - b);

  const clusters: Cluster[] = [];
  for (const index of kept) {
    const { at, size } = labels[index]!;
    let cluster: Cluster = { members: [index], wantedStarts: at - size / 2, size, start: 0 };
    cluster.start = clamp(cluster.wantedStarts, low, high - size);
    let before = clusters.at(-1);
    while (before && before.start + before.size > cluster.start) {
      clusters.pop();
      cluster = merge(before, cluster);
      cluster.start = clamp(cluster.wantedStarts / cluster.members.length, low, high - cluster.size);
      before = clusters.at(-1);
    }
    clusters.push(cluster);
  }

  for (const { members, start } of clusters) {
    let edge = start;
    for (const index of members) {
      const { size } = labels[index]!;
      placed[index] = edge + size / 2;
      edge += size;
    }
  }
  return placed;
}

function keepWhatFits(labels: readonly WantedLabel[], room: number): number[] {
  const byRank = labels
    .map((_, index) => index)
    .sort((a, b) => (labels[b]!.rank ?? 0) - (labels[a]!.rank ?? 0) || a - b);
  const kept: number[] = [];
  let used = 0;
  for (const index of byRank) {
    const { size } = labels[index]!;
    if (used + size > room + 1e-9) continue;
    used += size;
    kept.push(index);
  }
  return kept;
}

/** A later cluster behind an earlier one: its wanted start counts from the start of the whole. */
const merge = (before: Cluster, after: Cluster): Cluster => ({
  members: [...before.members, ...after.members],
  wantedStarts: before.wantedStarts + after.wantedStarts - before.size * after.members.length,
  size: before.size + after.size,
  start: before.start,
});

const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value));
