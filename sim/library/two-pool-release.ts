/** The law behind published distillation curves and its least-squares fit. */
import { leastSquares } from '../maths/least-squares.ts';
import type { PublishedCurve } from './published-curves.ts';

export interface FittedRelease {
  /** Id of the published curve. */
  readonly curve: string;
  /** In the curve's own unit. */
  readonly finalYield: number;
  /** Share f of the oil that leaves at the fast rate; 0 when one rate serves for all. */
  readonly readyShare: number;
  /** 1/s; null when the ready oil had gone before the first point, or when there is none. */
  readonly fastRate_1_s: number | null;
  /** 1/s. */
  readonly heldRate_1_s: number;
  /** Root mean square of the residuals as a share of the final yield. */
  readonly residual: number;
}

/**
 * Cumulative yield of a charge whose ready oil leaves first-order at `fastRate` and whose held oil leaves
 * first-order at `heldRate`: y = y_end [1 − f exp(−k_A t) − (1 − f) exp(−k_B t)]. The form of the washing and
 * diffusion law of Milojević et al., Hem. Ind. 67 (2013) 843–859 (abstract read). An infinite fast rate is allowed.
 */
export const twoPoolYield = (
  finalYield: number,
  readyShare: number,
  fastRate: number,
  heldRate: number,
  time: number,
): number => finalYield * (1 - readyShare * Math.exp(-fastRate * time) - (1 - readyShare) * Math.exp(-heldRate * time));

const SECONDS = 60;
/** Bounds on rates, 1/min: slower than a day, faster than a first fraction can show. */
const SLOWEST = 1e-4;
const FASTEST = 3;

type Parameters = Omit<FittedRelease, 'curve' | 'residual'>;

/** The free numbers of each law: their start, their bounds, and what they mean. */
const unknownsOf = (
  curve: PublishedCurve,
): { start: number[]; least: number[]; most: number[]; read: (free: number[]) => Parameters } => {
  const last = Math.max(...curve.points.map(([, yielded]) => yielded));
  const known = curve.finalYield;
  const start = known === undefined ? [last * 1.1] : [];
  const least = known === undefined ? [last * 0.9] : [];
  const most = known === undefined ? [last * 4] : [];
  const finalYield = (free: number[]): number => known ?? (free[0] as number);
  const from = start.length;
  const middle = curve.points[Math.floor(curve.points.length / 2)] as readonly [number, number];
  const rate = (free: number[], index: number): number => Math.exp(free[from + index] as number) / SECONDS;

  if (curve.law === 'first-order') {
    return {
      start: [...start, -Math.log(middle[0])],
      least: [...least, Math.log(SLOWEST)],
      most: [...most, Math.log(FASTEST)],
      read: (free) => ({
        finalYield: finalYield(free),
        readyShare: 0,
        fastRate_1_s: null,
        heldRate_1_s: rate(free, 0),
      }),
    };
  }
  if (curve.law === 'emptied-pool') {
    return {
      start: [...start, 0.5, Math.log(0.01)],
      least: [...least, 0, Math.log(SLOWEST)],
      most: [...most, 1, Math.log(FASTEST)],
      read: (free) => ({
        finalYield: finalYield(free),
        readyShare: free[from] as number,
        fastRate_1_s: null,
        heldRate_1_s: rate(free, 1),
      }),
    };
  }
  return {
    start: [...start, 0.3, Math.log(0.2), Math.log(0.01)],
    least: [...least, 0, Math.log(SLOWEST), Math.log(SLOWEST)],
    most: [...most, 1, Math.log(FASTEST), Math.log(FASTEST)],
    read: (free) => {
      const share = free[from] as number;
      const rates = [rate(free, 1), rate(free, 2)] as const;
      const swapped = rates[0] < rates[1];
      return {
        finalYield: finalYield(free),
        readyShare: swapped ? 1 - share : share,
        fastRate_1_s: Math.max(...rates),
        heldRate_1_s: Math.min(...rates),
      };
    },
  };
};

/** Yield that a fit predicts after `time` seconds, in the curve's unit. */
export const fittedYield = (fit: Parameters, time: number): number =>
  twoPoolYield(fit.finalYield, fit.readyShare, fit.fastRate_1_s ?? Infinity, fit.heldRate_1_s, time);

/** The one rate that takes a charge to `yielded` of `finalYield` in `time` seconds. */
const rateThroughOnePoint = (finalYield: number, time: number, yielded: number): number =>
  -Math.log(1 - yielded / finalYield) / time;

/**
 * Least-squares fit of the curve's law to its points, unweighted, by the Levenberg–Marquardt method; a single point
 * with a known final yield is solved exactly.
 */
export const fitCurve = (curve: PublishedCurve): FittedRelease => {
  const { start, least, most, read } = unknownsOf(curve);
  const times = curve.points.map(([minutes]) => minutes * SECONDS);
  const yields = curve.points.map(([, yielded]) => yielded);
  if (curve.finalYield !== undefined && times.length === 1) {
    const heldRate_1_s = rateThroughOnePoint(curve.finalYield, times[0] as number, yields[0] as number);
    return {
      curve: curve.id,
      finalYield: curve.finalYield,
      readyShare: 0,
      fastRate_1_s: null,
      heldRate_1_s,
      residual: 0,
    };
  }
  const { parameters } = leastSquares((free) => times.map((time) => fittedYield(read([...free]), time)), yields, {
    start,
    least,
    most,
    slopeStep: 1e-6,
    leastGain: 0,
    leastMove: 1e-12,
    mostSteps: 2000,
  });
  const found = read([...parameters]);
  const squares = times.reduce(
    (sum, time, index) => sum + (fittedYield(found, time) - (yields[index] as number)) ** 2,
    0,
  );
  return { curve: curve.id, ...found, residual: Math.sqrt(squares / times.length) / found.finalYield };
};
