/**
 * Fit to logged runs: weighted least squares of up to three correction factors. Parameters are the logarithms of the
 * factors, so that none turns negative and an interval is a ratio.
 */
import { leastSquares, normalMatrix } from '../../maths/least-squares.ts';
import type { NonFinite, RunResult } from '../../run/result.ts';
import { fieldAt } from '../../scenario/fields.ts';
import type { Scenario } from '../../scenario/scenario.ts';
import {
  MOST_OF_A_KIND,
  predictedReading,
  readingsOf,
  readingsProblem,
  thinned,
  type LoggedPoint,
  type Reading,
  type ReadingProblem,
  type StatedUncertainty,
} from './readings.ts';
import { BrokenOff, FactorModel, SLOPE_STEP, type LoggedStill, type ReadLog } from './factor-model.ts';
import { spreadOf, studentHalfWidth, type Matrix } from './statistics.ts';
import type { OwnBands } from '../ensemble/factors.ts';

/** The factors that readings of a run can bear out; bend, mixing and evaporation act on them by way of others. */
export type FitName = Exclude<keyof Scenario['factors'], 'curvature' | 'jetMixing' | 'evaporation'>;
export const FIT_NAMES: readonly FitName[] = [
  'oilContent',
  'release',
  'condensingFilm',
  'coolantFilm',
  'rivulet',
  'heatLoss',
  'fouling',
  'dropSize',
];

export interface FittedFactor {
  readonly name: FitName;
  readonly start: number;
  readonly value: number;
  /** 90 % interval. */
  readonly low: number;
  readonly high: number;
  /** Held at its start, because the readings say nothing about it. */
  readonly held: boolean;
}

export interface Residual extends Reading {
  /** Place of its log among those that were fitted together. */
  readonly log: number;
  readonly predicted: number;
  /** Reading less prediction, over the reading's uncertainty. */
  readonly scaled: number;
}

/** Two factors that the readings cannot tell apart. */
export interface AlikePair {
  readonly names: readonly [FitName, FitName];
  /** Correlation of their logarithms, near −1 or 1. */
  readonly correlation: number;
}

export interface Fit {
  readonly ok: true;
  readonly factors: readonly FittedFactor[];
  readonly residuals: readonly Residual[];
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  readonly reducedChiSquare: number;
  /** Of the logarithms of the factors that were not held, in their order. */
  readonly correlation: Matrix;
  readonly alike: readonly AlikePair[];
  readonly converged: boolean;
  /** Runs of the model that the fit took. */
  readonly runs: number;
  /** What the user should know of the result. */
  readonly notes: readonly FitNote[];
}

export type FitNote =
  /** So many readings were drawn together into so many means, which are as sure as all of them. */
  | { readonly kind: 'thinned'; readonly readings: number; readonly means: number }
  /** Doubling the factor would not show in the readings, so it was held where it was. */
  | { readonly kind: 'not-shown'; readonly factor: FitName; readonly held: number }
  | ({ readonly kind: 'alike' } & AlikePair)
  /** Only some mixture of the factors can be told. */
  | { readonly kind: 'mixture'; readonly factors: readonly FitName[] }
  /** The factor went to an end of its range. */
  | { readonly kind: 'at-limit'; readonly factor: FitName; readonly value: number }
  /** The model misses the readings by so many of their uncertainties, and the intervals are wider by as much. */
  | { readonly kind: 'misses'; readonly times: number }
  /** Readings beyond the number of factors. */
  | { readonly kind: 'few-readings'; readonly spare: number }
  /** It was still moving when it was stopped. */
  | { readonly kind: 'unfinished' };

/** Why there is no fit. */
export type CalibrationProblem =
  | { readonly kind: 'factor-count'; readonly count: number; readonly most: number }
  | ReadingProblem
  | { readonly kind: 'too-few-readings'; readonly readings: number; readonly factors: number; readonly needed: number }
  /** The run broke off. */
  | ({ readonly kind: 'broke-off' } & NonFinite)
  /** None of the factors shows in the readings. */
  | { readonly kind: 'nothing-shown'; readonly factors: readonly FitName[] };

export type Calibration = Fit | { readonly ok: false; readonly problem: CalibrationProblem };

export const MOST_FACTORS = 3;
/** Fitted where the user names none: what differs most from crop to crop. */
export const USUAL_FIT: readonly FitName[] = ['oilContent', 'release'];
/** Readings beyond the number of factors. */
const SPARE_READINGS = 2;
const LEAST_FACTOR = 0.05;
const GREATEST_FACTOR = 10;
/** A factor whose doubling moves all readings together by less than this many uncertainties has no influence. */
const LEAST_INFLUENCE = 1;
const ALIKE = 0.95;
const ILL_CONDITIONED = 1e4;
/** Reduced chi square above which the model misses the readings, and spare readings below which intervals are wide. */
const POOR_FIT = 4;
const FEW_SPARE = 3;
const MOST_STEPS = 15;
const SETTLED = 1e-4;
const LEAST_MOVE = 1e-3;

/** Least and greatest value of a factor. */
const rangeOf = (name: FitName): readonly [number, number] => {
  const field = fieldAt(`factors.${name}`);
  return [Math.max(LEAST_FACTOR, field?.min ?? 0), Math.min(GREATEST_FACTOR, field?.max ?? GREATEST_FACTOR)];
};
/** Their logarithms. */
const boundsOf = (name: FitName): readonly [number, number] => {
  const [least, most] = rangeOf(name);
  return [Math.log(least), Math.log(most)];
};
/** A factor from its logarithm; at an end of the range exactly that end, which the exponential may overstep by a bit. */
const valueAt = (name: FitName, log: number): number => {
  const [least, most] = rangeOf(name);
  return Math.min(most, Math.max(least, Math.exp(log)));
};

const alikePairs = (names: readonly FitName[], correlation: Matrix): AlikePair[] =>
  names.flatMap((name, i) =>
    names.slice(i + 1).flatMap((other, k): AlikePair[] => {
      const r = correlation[i]?.[i + 1 + k] ?? 0;
      return Math.abs(r) > ALIKE ? [{ names: [name, other], correlation: r }] : [];
    }),
  );

/** Pairs that cannot be told apart, factors at their limits and a poor fit. */
function notesOn(
  names: readonly FitName[],
  logs: readonly number[],
  alike: readonly AlikePair[],
  condition: number,
  reduced: number,
  degrees: number,
): FitNote[] {
  const notes: FitNote[] = alike.map((pair) => ({ kind: 'alike', ...pair }));
  if (condition > ILL_CONDITIONED && notes.length === 0) notes.push({ kind: 'mixture', factors: names });
  names.forEach((factor, index) => {
    const [least, most] = boundsOf(factor);
    const log = logs[index] ?? 0;
    if (log <= least + 1e-9 || log >= most - 1e-9)
      notes.push({ kind: 'at-limit', factor, value: valueAt(factor, log) });
  });
  if (reduced > POOR_FIT) notes.push({ kind: 'misses', times: Math.sqrt(reduced) });
  if (degrees < FEW_SPARE) notes.push({ kind: 'few-readings', spare: degrees });
  return notes;
}

/**
 * @param points the log; @param names one to three factors to find; @param stated uncertainties that replace the
 * default ones
 */
export const calibrate = (
  scenario: Scenario,
  points: readonly LoggedPoint[],
  names: readonly FitName[],
  stated: StatedUncertainty = {},
): Calibration => calibrateTogether([{ scenario, points }], names, stated);

/**
 * One set of factors for several runs of a still, which may differ in charge, heat and water. The first is the one
 * whose factors are the start.
 */
export function calibrateTogether(
  stills: readonly LoggedStill[],
  names: readonly FitName[],
  stated: StatedUncertainty = {},
): Calibration {
  try {
    return fitted(stills, names, stated);
  } catch (error) {
    if (!(error instanceof BrokenOff)) throw error;
    return { ok: false, problem: { kind: 'broke-off', ...error.failure } };
  }
}

function fitted(stills: readonly LoggedStill[], names: readonly FitName[], stated: StatedUncertainty): Calibration {
  const refuse = (problem: CalibrationProblem): Calibration => ({ ok: false, problem });
  const chosen = [...new Set(names)];
  if (chosen.length === 0 || chosen.length > MOST_FACTORS)
    return refuse({ kind: 'factor-count', count: chosen.length, most: MOST_FACTORS });
  const whole = stills.map((still): ReadLog => ({ still, readings: readingsOf(still.points, stated) }));
  const problem = whole.map(({ readings }) => readingsProblem(readings)).find((found) => found !== null);
  if (problem) return refuse(problem);
  const logs = whole
    .filter(({ readings }) => readings.length > 0)
    .map(({ still, readings }): ReadLog => ({
      still,
      readings: readings.length > MOST_OF_A_KIND ? thinned(readings) : readings,
    }));
  const given = whole.reduce((sum, log) => sum + log.readings.length, 0);
  const readings = logs.flatMap((log) => log.readings);
  const [main] = stills;
  if (!main)
    return refuse({
      kind: 'too-few-readings',
      readings: 0,
      factors: chosen.length,
      needed: chosen.length + SPARE_READINGS,
    });
  const { scenario } = main;
  const needed = chosen.length + SPARE_READINGS;
  if (readings.length < needed)
    return refuse({ kind: 'too-few-readings', readings: readings.length, factors: chosen.length, needed });

  const startOf = (name: FitName): number => Math.min(GREATEST_FACTOR, Math.max(LEAST_FACTOR, scenario.factors[name]));
  const first = new FactorModel(logs, chosen);
  const start = chosen.map((name) => Math.log(startOf(name)));
  const influence = first.slopes(start).map((row) => Math.LN2 * Math.hypot(...row));
  const free = chosen.filter((_, index) => (influence[index] ?? 0) >= LEAST_INFLUENCE);
  const held = chosen.filter((name) => !free.includes(name));
  if (free.length === 0) return refuse({ kind: 'nothing-shown', factors: chosen });

  const model = held.length === 0 ? first : new FactorModel(logs, free);
  const bounds = free.map(boundsOf);
  const {
    parameters: found,
    squares: chiSquare,
    converged,
  } = leastSquares(
    (at) => model.scaled(at),
    readings.map(({ value, sigma }) => value / sigma),
    {
      start: free.map((name) => Math.log(startOf(name))),
      least: bounds.map(([least]) => least),
      most: bounds.map(([, most]) => most),
      slopeStep: SLOPE_STEP,
      leastGain: SETTLED,
      leastMove: LEAST_MOVE,
      mostSteps: MOST_STEPS,
    },
  );
  const { covariance, correlation, condition } = spreadOf(normalMatrix(model.slopes(found)));
  const alike = alikePairs(free, correlation);
  const degrees = readings.length - free.length;
  const reduced = chiSquare / degrees;
  // Stated uncertainties may prove too small, but good luck does not make them smaller.
  const widening = studentHalfWidth(0.9, degrees) * Math.sqrt(Math.max(1, reduced));
  const factors = chosen.map((name): FittedFactor => {
    const index = free.indexOf(name);
    const was = scenario.factors[name];
    if (index < 0) return { name, start: was, value: was, low: LEAST_FACTOR, high: GREATEST_FACTOR, held: true };
    const log = found[index] ?? 0;
    const half = widening * Math.sqrt(covariance[index]?.[index] ?? 0);
    return {
      name,
      start: was,
      value: valueAt(name, log),
      low: valueAt(name, log - half),
      high: valueAt(name, log + half),
      held: false,
    };
  });
  const best = model.results(found);
  return {
    ok: true,
    factors,
    residuals: logs.flatMap(({ still, readings: own }, place) =>
      own.map((reading) => {
        const predicted = predictedReading(best[place] as RunResult, reading);
        const scaled = (reading.value - predicted) / reading.sigma;
        return { ...reading, log: stills.indexOf(still), predicted, scaled };
      }),
    ),
    chiSquare,
    degreesOfFreedom: degrees,
    reducedChiSquare: reduced,
    correlation,
    alike,
    converged,
    runs: model.runs + (model === first ? 0 : first.runs),
    notes: [
      ...(readings.length < given ? [{ kind: 'thinned', readings: given, means: readings.length } as const] : []),
      ...held.map((factor): FitNote => ({ kind: 'not-shown', factor, held: scenario.factors[factor] })),
      ...notesOn(free, found, alike, condition, reduced, degrees),
      ...(converged ? [] : [{ kind: 'unfinished' } as const]),
    ],
  };
}

/** The scenario with the factors of a fit. */
export const fittedScenario = (scenario: Scenario, fit: Fit): Scenario => ({
  ...scenario,
  factors: {
    ...scenario.factors,
    ...Object.fromEntries(fit.factors.filter(({ held }) => !held).map(({ name, value }) => [name, value])),
  },
});

/** What the fit leaves in doubt, for an ensemble about the fitted scenario: its 90 % intervals as ratios. */
export function bandsOfFit(fit: Fit): OwnBands {
  const bands = fit.factors
    .filter(({ held }) => !held)
    .map(({ name, value, low, high }) => {
      const band = { low: low / value, high: high / value, origin: 'fit' } as const;
      return name === 'release' ? { heldRate: band, takeUp: band } : { [name]: band };
    });
  return Object.assign({}, ...bands) as OwnBands;
}
