/** What an ensemble says: bands of the oil over time and of every headline number, and which doubt moves them most. */
import { valueAt } from '../../maths/interpolate.ts';
import {
  ensembleTimes,
  GRID_POINTS,
  HEADLINE_NAMES,
  type Design,
  type Headline,
  type HeadlineName,
  type MemberResult,
} from './ensemble.ts';
import type { UncertainId } from './factors.ts';

export interface CurveBand {
  readonly p10: Float64Array;
  readonly p50: Float64Array;
  readonly p90: Float64Array;
}

/** Of the members whose run got so far; `counted` of `of` did. */
export interface NumberBand {
  readonly p10: number | null;
  readonly p50: number | null;
  readonly p90: number | null;
  readonly counted: number;
  readonly of: number;
}

/** How much one doubt moves a headline number. */
export interface Influence {
  readonly id: UncertainId;
  /** The number with this doubt alone at its 10th and 90th percentile; `null` until both have run. */
  readonly atLow: number | null;
  readonly atHigh: number | null;
  /** Difference of the two, at high less at low. */
  readonly swing: number | null;
  /** Rank correlation over the draws, −1 to 1; `null` when nothing varies or fewer than three have run. */
  readonly spearman: number | null;
}

export interface EnsembleSummary {
  /** Draws that have run, of the design's members. */
  readonly finished: number;
  readonly members: number;
  /** Draws that broke off; they count in no band. */
  readonly failed: number;
  readonly times_s: Float64Array;
  readonly oil_mL: CurveBand;
  readonly recovery: CurveBand;
  readonly headline: Readonly<Record<HeadlineName, NumberBand>>;
  /** The scenario as it stands, run as the members are; `null` until it has run. */
  readonly asPlanned: Headline | null;
  /** For every headline number, the doubts from most to least moving. */
  readonly influences: Readonly<Record<HeadlineName, readonly Influence[]>>;
}

/** Numbers closer than this share of the larger are one number, summed up in another order. */
const ROUNDING = 1e-9;
const differ = (a: number, b: number): boolean => Math.abs(a - b) > ROUNDING * Math.max(Math.abs(a), Math.abs(b));

/** Quantile of sorted numbers, straight line between order statistics (Hyndman and Fan's definition 7). */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const rank = share * (sorted.length - 1);
  const row = Math.floor(rank);
  return valueAt(sorted, { row, share: rank - row });
}

/** Ranks from 1; equal values share the mean of their ranks. */
function ranks(values: readonly number[]): number[] {
  const order = values.map((_, index) => index).sort((a, b) => (values[a] as number) - (values[b] as number));
  const rank = new Array<number>(values.length).fill(0);
  for (let from = 0; from < order.length;) {
    let to = from;
    while (to + 1 < order.length && values[order[to + 1] as number] === values[order[from] as number]) to++;
    for (let k = from; k <= to; k++) rank[order[k] as number] = 0.5 * (from + to) + 1;
    from = to + 1;
  }
  return rank;
}

/** Rank correlation of Spearman, −1 to 1; `null` for fewer than three pairs or when one side does not vary. */
export function spearman(x: readonly number[], y: readonly number[]): number | null {
  if (x.length < 3) return null;
  const a = ranks(x);
  const b = ranks(y);
  const middle = (x.length + 1) / 2;
  let cross = 0;
  let aa = 0;
  let bb = 0;
  a.forEach((rank, index) => {
    const da = rank - middle;
    const db = (b[index] as number) - middle;
    cross += da * db;
    aa += da * da;
    bb += db * db;
  });
  return aa > 0 && bb > 0 ? cross / Math.sqrt(aa * bb) : null;
}

function curveBand(curves: readonly Float64Array[]): CurveBand {
  const band = {
    p10: new Float64Array(GRID_POINTS),
    p50: new Float64Array(GRID_POINTS),
    p90: new Float64Array(GRID_POINTS),
  };
  if (curves.length === 0) return { p10: band.p10.fill(NaN), p50: band.p50.fill(NaN), p90: band.p90.fill(NaN) };
  const column = new Float64Array(curves.length);
  for (let k = 0; k < GRID_POINTS; k++) {
    curves.forEach((curve, at) => {
      column[at] = curve[k] as number;
    });
    column.sort();
    band.p10[k] = quantile(column, 0.1);
    band.p50[k] = quantile(column, 0.5);
    band.p90[k] = quantile(column, 0.9);
  }
  return band;
}

function numberBand(values: readonly (number | null)[]): NumberBand {
  const reached = Float64Array.from(values.filter((value) => value !== null)).sort();
  const at = (share: number) => (reached.length > 0 ? quantile(reached, share) : null);
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9), counted: reached.length, of: values.length };
}

function influencesOn(
  name: HeadlineName,
  design: Design,
  byRow: ReadonlyMap<number, MemberResult>,
  draws: readonly MemberResult[],
): Influence[] {
  const reached = draws.filter((member) => member.headline[name] !== null);
  const numbers = reached.map((member) => member.headline[name] as number);
  const varies = differ(Math.min(...numbers), Math.max(...numbers));
  const found = design.doubts.map(({ id }, index): Influence => {
    const alone = (side: 'low' | 'high'): number | null => {
      const row = design.rows.findIndex(({ swing }) => swing?.id === id && swing.side === side);
      return byRow.get(row)?.headline[name] ?? null;
    };
    const atLow = alone('low');
    const atHigh = alone('high');
    return {
      id,
      atLow,
      atHigh,
      swing: atLow === null || atHigh === null ? null : differ(atLow, atHigh) ? atHigh - atLow : 0,
      spearman: varies
        ? spearman(
            reached.map((member) => design.rows[member.index]?.values[index] ?? NaN),
            numbers,
          )
        : null,
    };
  });
  const weight = ({ swing, spearman: rank }: Influence): readonly [number, number] => [
    swing === null ? -1 : Math.abs(swing),
    Math.abs(rank ?? 0),
  ];
  return found.sort((a, b) => weight(b)[0] - weight(a)[0] || weight(b)[1] - weight(a)[1]);
}

/** Sums up as many members as have run, in any order; a member given twice counts once. */
export function summariseEnsemble(design: Design, members: readonly MemberResult[]): EnsembleSummary {
  const isDraw = ({ index }: MemberResult) => design.rows[index]?.kind === 'draw';
  const run = [...new Map(members.map((member) => [member.index, member])).values()];
  const byRow = new Map(run.flatMap((each) => (each.endReason === 'non-finite' ? [] : [[each.index, each] as const])));
  const draws = [...byRow.values()].filter(isDraw).sort((a, b) => a.index - b.index);
  const finished = run.filter(isDraw).length;
  const ofHeadlines = <T>(read: (name: HeadlineName) => T) =>
    Object.fromEntries(HEADLINE_NAMES.map((name) => [name, read(name)])) as Record<HeadlineName, T>;
  return {
    finished,
    members: design.members,
    failed: finished - draws.length,
    times_s: ensembleTimes(design.scenario),
    oil_mL: curveBand(draws.map((member) => member.oil_mL)),
    recovery: curveBand(draws.map((member) => member.recovery)),
    headline: ofHeadlines((name) => numberBand(draws.map((member) => member.headline[name]))),
    asPlanned: byRow.get(0)?.headline ?? null,
    influences: ofHeadlines((name) => influencesOn(name, design, byRow, draws)),
  };
}
