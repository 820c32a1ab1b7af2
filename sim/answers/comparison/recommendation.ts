/**
 * Which of some compared runs to take, why, and how sure that is: facts from paired draws, in which every still meets the
 * same values of what is uncertain.
 *
 * Safety goes before oil: a run that raises an alarm as it is set, or in more than one draw of ten, is not recommended.
 * Then comes the oil; where it is the same the time, and then the price. One run betters another when it does so, by more
 * than is worth telling, in at least seven draws of ten; else the two are the same. Seven of ten is judgement: for a
 * difference spread normally its mean is then half its standard deviation.
 */
import type { EventKind } from '../../run/result.ts';
import { quantile } from '../ensemble/summary.ts';
import { WORTH_TELLING } from './conclusion.ts';
import type { PairedRun } from './paired-draws.ts';
import type { CompareRun } from './table.ts';

/** Share of the draws in which the better one must be better. */
const CLEARLY = 0.7;
/** Share of the draws in which an alarm is put up with. */
const ALARMS_ALLOWED = 0.1;

export type DecidedBy = 'oil' | 'time' | 'cost';

/** One run against another in one number, draw by draw. */
export interface Duel {
  readonly by: DecidedBy;
  readonly run: number;
  readonly rival: number;
  /** Draws in which `run` is the better one, and in which `rival` is; in the others they are alike. */
  readonly better: number;
  readonly worse: number;
  /** Of the number of `run` less that of `rival`, mL, s or the currency. */
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/** A run that raises alarms. */
export interface Unsafe {
  readonly run: number;
  /** Whether it does as it is set. */
  readonly asSet: boolean;
  readonly events: readonly EventKind[];
  /** Draws in which it raises one. */
  readonly draws: number;
}

export type Choice =
  /** Every run raises alarms. */
  | { readonly kind: 'none-safe' }
  | { readonly kind: 'no-oil' }
  /** The only one that is safe; `oil` against the others, which is not why. */
  | { readonly kind: 'only-safe'; readonly run: number; readonly oil: Duel }
  | {
      readonly kind: 'take';
      readonly run: number;
      readonly because: Duel;
      /** Where oil does not decide: that it is the same. */
      readonly alike: Duel | null;
      /** What it takes more of, time or money, than the one it betters. */
      readonly prices: readonly Duel[];
    }
  | { readonly kind: 'alike'; readonly runs: readonly number[]; readonly oil: Duel };

export interface Recommendation {
  readonly seed: number;
  /** Draws that count: those in which every run could be calculated. */
  readonly draws: number;
  readonly failed: number;
  /** Runs that are dangerous as set or under doubt, the worst first; those within what is put up with too. */
  readonly unsafe: readonly Unsafe[];
  readonly choice: Choice;
}

/** The runs of a draw, by still. */
type Draw = readonly PairedRun[];

const NUMBERS: Readonly<Record<DecidedBy, { read: (run: PairedRun) => number | null; more: boolean }>> = {
  oil: { read: ({ oil_mL }) => oil_mL, more: true },
  time: { read: ({ t90_s }) => t90_s, more: false },
  cost: { read: ({ cost }) => cost, more: false },
};

function duel(draws: readonly Draw[], by: DecidedBy, run: number, rival: number): Duel {
  const { read, more } = NUMBERS[by];
  let [better, worse] = [0, 0];
  const differences: number[] = [];
  for (const draw of draws) {
    const [own, other] = [read(draw[run] as PairedRun), read(draw[rival] as PairedRun)];
    if (own === null || other === null) continue;
    differences.push(own - other);
    if (Math.abs(own - other) <= WORTH_TELLING * Math.max(Math.abs(own), Math.abs(other))) continue;
    if (own > other === more) better++;
    else worse++;
  }
  differences.sort((a, b) => a - b);
  const at = (share: number): number => (differences.length > 0 ? quantile(differences, share) : 0);
  return { by, run, rival, better, worse, p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}

/** Against each of the others; the nearest of them first. */
const duels = (draws: readonly Draw[], by: DecidedBy, run: number, others: readonly number[]): readonly Duel[] =>
  others
    .filter((rival) => rival !== run)
    .map((rival) => duel(draws, by, run, rival))
    .sort((a, b) => a.better - a.worse - (b.better - b.worse));

const wins = ({ better }: Duel, draws: readonly Draw[]): boolean => better >= CLEARLY * draws.length;
const loses = ({ worse }: Duel, draws: readonly Draw[]): boolean => worse >= CLEARLY * draws.length;

function unsafeRuns(heads: readonly Pick<CompareRun, 'cautions'>[], draws: readonly Draw[]): readonly Unsafe[] {
  return heads
    .flatMap(({ cautions }, run): Unsafe[] => {
      const own = cautions.filter(({ severity }) => severity === 'alarm').map(({ kind }) => kind);
      const drawn = draws.map((draw) => (draw[run] as PairedRun).alarms).filter((alarms) => alarms.length > 0);
      if (own.length === 0 && drawn.length === 0) return [];
      const events = [...new Set([...own, ...drawn.flat()])];
      return [{ run, asSet: own.length > 0, events, draws: drawn.length }];
    })
    .sort((a, b) => Number(b.asSet) - Number(a.asSet) || b.draws - a.draws);
}

const PRICES: readonly DecidedBy[] = ['time', 'cost'];

/** The run that betters every other of a group, by the first number that says so. */
function decided(draws: readonly Draw[], group: readonly number[], numbers: readonly DecidedBy[]): Duel | null {
  for (const by of numbers)
    for (const run of group) {
      const all = duels(draws, by, run, group);
      const [nearest] = all;
      if (nearest && all.every((each) => wins(each, draws))) return nearest;
    }
  return null;
}

function choose(draws: readonly Draw[], unsafe: readonly Unsafe[], runs: readonly number[]): Choice {
  const shunned = new Set(
    unsafe.filter((each) => each.asSet || each.draws > ALARMS_ALLOWED * draws.length).map(({ run }) => run),
  );
  const safe = runs.filter((run) => !shunned.has(run));
  if (safe.length === 0) return { kind: 'none-safe' };
  if (!draws.some((draw) => draw.some(({ oil_mL }) => oil_mL > 0))) return { kind: 'no-oil' };
  const [only] = safe;
  if (safe.length === 1 && only !== undefined)
    return { kind: 'only-safe', run: only, oil: duels(draws, 'oil', only, runs)[0] as Duel };
  const byOil = decided(draws, safe, ['oil']);
  if (byOil) {
    const prices = PRICES.map((by) => duel(draws, by, byOil.run, byOil.rival)).filter((each) => loses(each, draws));
    return { kind: 'take', run: byOil.run, because: byOil, alike: null, prices };
  }
  // Those that none of the others betters share the first place.
  const first = safe.filter((run) => !duels(draws, 'oil', run, safe).some((each) => loses(each, draws)));
  const group = first.length > 1 ? first : safe;
  const other = decided(draws, group, PRICES);
  if (other)
    return {
      kind: 'take',
      run: other.run,
      because: other,
      alike: duel(draws, 'oil', other.run, other.rival),
      prices: [],
    };
  return { kind: 'alike', runs: group, oil: duels(draws, 'oil', group[0] as number, group)[0] as Duel };
}

/**
 * What to take of the compared runs; `null` while no draw has been run by all of them.
 * @param heads the compared runs as they are set
 * @param paired runs of a design, in any order; a draw that lacks one does not count
 */
export function recommend(
  heads: readonly Pick<CompareRun, 'cautions'>[],
  paired: readonly PairedRun[],
  seed: number,
): Recommendation | null {
  const byDraw = new Map<number, PairedRun[]>();
  for (const run of paired) {
    const draw = byDraw.get(run.draw) ?? [];
    draw[run.still] = run;
    byDraw.set(run.draw, draw);
  }
  const whole = [...byDraw.values()].filter((draw) => heads.every((_, still) => draw[still] !== undefined));
  const draws = whole.filter((draw) => !draw.some(({ failed }) => failed));
  if (draws.length === 0) return null;
  const unsafe = unsafeRuns(heads, draws);
  const choice = choose(
    draws,
    unsafe,
    heads.map((_, run) => run),
  );
  return { seed, draws: draws.length, failed: whole.length - draws.length, unsafe, choice };
}
