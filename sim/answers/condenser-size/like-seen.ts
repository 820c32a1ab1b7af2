/**
 * The length of a tube from what was seen of tubes like it.
 *
 * Of tubes far from all others every deciding draw is tried, and the middle one, whose need more than half meet, with
 * those close to it once more as the scenario asks for. From such a tube those like it take in which order the draws come, how a coarse trial
 * compares with one as asked for, and when the worst of the run is over; for them one coarse trial of the middle draw is
 * nearly always enough.
 */
import type { Scenario } from '../../scenario/scenario.ts';
import { coarseLength, OVER, TELLING } from './coarse-length.ts';
import { COARSE_GUARD, LONGEST_TUBE, sizeCondenser, withLength, type CondenserSize } from './shortest-length.ts';
import { searchStep, TUBE_PRESSURE_LIMIT, tryCondenser } from './trial.ts';

/** What was seen of a tube. */
export interface TubeSeen {
  readonly outsideDiameter_m: number;
  readonly insideDiameter_m: number;
  readonly material: string;
  /** About what each of the deciding draws needs, m. */
  readonly needs_m: readonly number[];
  /** What the middle one needs by a trial as the scenario asks for, over what it needs by a coarse one. */
  readonly over: number;
  /** Time after which nothing worse comes, s. */
  readonly until_s: number;
  /** Whether all that was tried with this very tube, and not taken from one like it. */
  readonly isWhole: boolean;
}

type Measures = Pick<TubeSeen, 'outsideDiameter_m' | 'insideDiameter_m' | 'material'>;

/** How far apart two tubes are, by the logarithms of their diameters. */
const apart = (a: Measures, b: Measures): number =>
  Math.abs(Math.log(a.outsideDiameter_m / b.outsideDiameter_m)) +
  Math.abs(Math.log(a.insideDiameter_m / b.insideDiameter_m)) +
  (a.material === b.material ? 0 : 1);

/** Tubes no farther apart than this are alike. */
const ALIKE = 0.12;

/** A single trial is a few thousandths off by where the segments of the tube end: so many tubes' are taken together. */
const TOGETHER = 3;

/** A trial as asked for over a coarse one, of the tubes most like a tube. */
function usualOver(whole: readonly TubeSeen[], tube: Measures): number {
  const closest = [...whole].sort((a, b) => apart(a, tube) - apart(b, tube)).slice(0, TOGETHER);
  return closest.reduce((sum, { over }) => sum + over, 0) / closest.length;
}

function nearest(seen: readonly TubeSeen[], tube: Measures): TubeSeen | null {
  return seen.reduce<TubeSeen | null>(
    (best, each) => (best && apart(best, tube) <= apart(each, tube) ? best : each),
    null,
  );
}

/** A length goes about so with the outside, until two tubes have shown it. */
const USUAL_POWER = -0.6;
const LEAST_POWER = -2;
/** Diameters must differ by so much before two tubes show it. */
const TELLS_POWER = 0.05;

const middleOf = (needs: readonly number[]): number =>
  needs.map((_, index) => index).sort((a, b) => (needs[a] as number) - (needs[b] as number))[
    Math.floor(needs.length / 2)
  ] as number;
const middleNeed = ({ needs_m }: TubeSeen): number => needs_m[middleOf(needs_m)] as number;

/** What a tube may need over what one like it needs. */
function scaleFrom(like: TubeSeen, seen: readonly TubeSeen[], tube: Measures): number {
  const ratio = (a: Measures, b: Measures) => Math.log(a.outsideDiameter_m / b.outsideDiameter_m);
  const others = seen.filter((each) => each.material === like.material && Math.abs(ratio(each, like)) > TELLS_POWER);
  const other = nearest(others, tube);
  const power = other ? Math.log(middleNeed(other) / middleNeed(like)) / ratio(other, like) : USUAL_POWER;
  return Math.exp(Math.min(0, Math.max(LEAST_POWER, power)) * ratio(tube, like));
}

/** Looked-at over guessed length. */
const GUESS = 1.03;
/** Length of a trial as asked for over a coarse one, before any has been compared. */
const USUALLY_OVER = 1;
/** Where trials as asked for and coarse ones differ by more than this share, each tube is tried for itself. */
const MUCH_OVER = 0.02;
/** Share of the pressure that a tube may hold back from which on every draw is looked at. */
const MUCH_PRESSURE = 0.6;
/** Share from which on coarse trials can't tell whether a draw fails by it. */
const NEARLY_TOO_MUCH = 0.85;
/** A tube's worst may come a little later than that of one like it. */
const LATER = 1.1;
const LATER_s = 300;

export interface SizedLike {
  readonly size: CondenserSize;
  readonly seen: TubeSeen;
}

/** `null` where coarse trials find no length, so that all must be tried as asked for. */
export function sizeLikeSeen(
  among: readonly Scenario[],
  {
    start_m,
    seen,
    confirm,
  }: { readonly start_m: number; readonly seen: readonly TubeSeen[]; readonly confirm: boolean },
): SizedLike | null {
  const [first] = among;
  if (!first) return null;
  const { outsideDiameter_m, insideDiameter_m, material } = first.condenser;
  const tube = { outsideDiameter_m, insideDiameter_m, material };
  const whole = seen.filter(({ needs_m, isWhole }) => isWhole && needs_m.length === among.length);
  const like = nearest(whole, tube);
  if (like && !confirm && apart(like, tube) <= ALIKE) {
    const quick = sizeAlike(among, tube, { like, over: usualOver(whole, tube), seen });
    if (quick) return quick;
  }
  return sizeWhole(among, tube, { start_m, seen, confirm });
}

/**
 * Where the worst is over in this share of the run, it is a short rush of steam, which long steps blur; trials as asked for
 * are quick enough then.
 */
const SOON = 0.4;

/** Of a tube like one that was seen: only the middle draw, only coarsely, only until the worst is over. */
function sizeAlike(
  among: readonly Scenario[],
  tube: Measures,
  { like, over, seen }: { readonly like: TubeSeen; readonly over: number; readonly seen: readonly TubeSeen[] },
): SizedLike | null {
  const closest = nearest(seen, tube) ?? like;
  const middle = middleOf(like.needs_m);
  const guess = GUESS * middleNeed(closest) * scaleFrom(closest, seen, tube);
  const still = among[middle] as Scenario;
  const isSoon = like.until_s < SOON * still.run.duration_s;
  const found = coarseLength(still, guess, like.until_s, isSoon ? 'as-asked' : 'coarse');
  if (found === null || found.trial.drop_Pa > MUCH_PRESSURE * TUBE_PRESSURE_LIMIT) return null;
  const { need_m, trial } = found;
  const needed = isSoon ? need_m : over * need_m;
  const scale = needed / (like.needs_m[middle] as number);
  return {
    size: { verdict: 'holds', length_m: guarded(needed), trial, trials: 1 },
    seen: { ...tube, needs_m: like.needs_m.map((need) => need * scale), over, until_s: like.until_s, isWhole: false },
  };
}

const guarded = (need_m: number): number => Math.min(LONGEST_TUBE, COARSE_GUARD * need_m);

function sizeWhole(
  among: readonly Scenario[],
  tube: Measures,
  {
    start_m,
    seen,
    confirm,
  }: { readonly start_m: number; readonly seen: readonly TubeSeen[]; readonly confirm: boolean },
): SizedLike | null {
  const closest = nearest(seen, tube);
  const scale = closest ? scaleFrom(closest, seen, tube) : 1;
  const needs: number[] = [];
  let isNarrow = false;
  for (const [index, drawn] of among.entries()) {
    const known = closest?.needs_m[index];
    const before = needs.at(-1);
    const ratio = known && index > 0 ? known / (closest.needs_m[index - 1] as number) : 1;
    const guess = before === undefined ? (known ? known * scale : start_m / GUESS) : before * ratio;
    const found = coarseLength(drawn, GUESS * guess);
    if (found === null) return null;
    needs.push(found.need_m);
    isNarrow ||= found.trial.drop_Pa > NEARLY_TOO_MUCH * TUBE_PRESSURE_LIMIT;
  }
  const middle = middleOf(needs);
  const asked = askedFor(among[middle] as Scenario, needs[middle] as number, closest?.over ?? USUALLY_OVER, confirm);
  if (asked === null) return null;
  const over = asked.need_m / (needs[middle] as number);
  const until_s = LATER * asked.size.trial.worstOver_s + LATER_s;
  // Where draws need nearly the same, coarse trials can't tell which stands in the middle.
  const each = needs.map((need, index) => {
    if (index === middle) return asked;
    const isClose = Math.abs(Math.log(need / (needs[middle] as number))) < CLOSE_DRAWS;
    return (isClose || isNarrow) && !confirm ? askedFor(among[index] as Scenario, need, over, confirm, until_s) : null;
  });
  if (isNarrow && each.includes(null)) return null;
  const told = needs.map((need, index) => each[index]?.need_m ?? over * need);
  const deciding = middleOf(told);
  const { size } = each[deciding] ?? asked;
  const seenNow = {
    ...tube,
    needs_m: told,
    over: (told[deciding] as number) / (needs[deciding] as number),
    until_s,
    isWhole: Math.abs(Math.log(over)) < MUCH_OVER && !isNarrow,
  };
  return { size, seen: seenNow };
}

/** Draws whose needs are nearer to each other than this, as a share. */
const CLOSE_DRAWS = 0.025;

/** One draw by trials as asked for, from what a coarse one needs. */
function askedFor(
  still: Scenario,
  need_m: number,
  over: number,
  confirm: boolean,
  until_s?: number,
): { readonly size: CondenserSize; readonly need_m: number } | null {
  const look = OVER * need_m * over;
  if (!confirm) {
    const trial = tryCondenser(withLength(still, look), searchStep(still), until_s);
    if (trial.holds && look <= TELLING * trial.cooledBy_m)
      return {
        size: { verdict: 'holds', length_m: guarded(trial.cooledBy_m), trial, trials: 1 },
        need_m: trial.cooledBy_m,
      };
  }
  const size = sizeCondenser(still, { confirm, start_m: look, stride: STRIDE, closeness: CLOSENESS });
  if (size.length_m === null || size.verdict !== 'holds') return null;
  // Where a longer tube hardly cools more, the profile in it tells too little.
  const passing = size.length_m / COARSE_GUARD;
  const { cooledBy_m } = size.trial;
  return { size, need_m: cooledBy_m >= CLOSENESS * passing ? cooledBy_m : passing };
}

/** How far to go on where the look was too short, and how near is near enough. */
const STRIDE = 1.006;
const CLOSENESS = 0.994;
