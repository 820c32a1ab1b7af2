/**
 * Least squares with a few parameters within bounds, by the Levenberg–Marquardt method (Marquardt, J. SIAM 11 (1963)
 * 431–441): a step solves (JᵀJ + λ w I) δ = Jᵀ r with w the largest diagonal element of JᵀJ, and λ falls after a step
 * that helped and grows after one that did not. A parameter pulled out of its bounds is held there for the step.
 */

export type Matrix = readonly (readonly number[])[];

/** Predictions at given parameters. */
export type Predict = (parameters: readonly number[]) => ArrayLike<number>;

export interface Unknowns {
  readonly start: readonly number[];
  readonly least: readonly number[];
  readonly most: readonly number[];
  /** Step in each parameter by which slopes are taken. */
  readonly slopeStep: number;
  /** Settled when a step gains less than this share of one and the sum of squares, or moves every parameter by less. */
  readonly leastGain: number;
  readonly leastMove: number;
  readonly mostSteps: number;
}

export interface LeastSquares {
  readonly parameters: readonly number[];
  /** Sum of the squared differences between targets and predictions. */
  readonly squares: number;
  readonly converged: boolean;
}

const FIRST_DAMPING = 1e-3;
const LEAST_DAMPING = 1e-6;
/** Damping at which no step helps any more. */
const MOST_DAMPING = 10;
const EASED = 9;
const TIGHTENED = 30;
/** Keeps the damping alive where no parameter moves anything. */
const LEAST_WEIGHT = 1e-6;

/** Slopes of the predictions by central differences: one row a parameter. */
export const slopesOf = (predict: Predict, at: readonly number[], step: number): number[][] =>
  at.map((_, index) => {
    const moved = (by: number) => predict(at.map((value, k) => (k === index ? value + by : value)));
    const up = moved(step);
    const down = moved(-step);
    return Array.from(up, (value, k) => (value - (down[k] as number)) / (2 * step));
  });

const dot = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += (a[k] as number) * (b[k] as number);
  return sum;
};

/** JᵀJ of slopes with one row a parameter. */
export const normalMatrix = (slopes: Matrix): number[][] => slopes.map((row) => slopes.map((other) => dot(row, other)));

/** Solves a system with a symmetric positive definite matrix, by Cholesky's L Lᵀ. */
export function solveSymmetric(matrix: Matrix, right: readonly number[]): number[] {
  const lower: number[][] = [];
  const solution: number[] = [];
  matrix.forEach((row, i) => {
    const built: number[] = [];
    lower.push(built);
    for (let j = 0; j < i; j++) {
      const other = lower[j] as number[];
      built.push(((row[j] as number) - dot(other.slice(0, j), built)) / (other[j] as number));
    }
    const pivot = Math.sqrt((row[i] as number) - dot(built, built));
    solution.push(((right[i] as number) - dot(built, solution)) / pivot);
    built.push(pivot);
  });
  for (let i = solution.length - 1; i >= 0; i--) {
    for (let j = i + 1; j < solution.length; j++)
      solution[i] = (solution[i] as number) - (lower[j]?.[i] as number) * (solution[j] as number);
    solution[i] = (solution[i] as number) / (lower[i]?.[i] as number);
  }
  return solution;
}

/** Parameters that bring the predictions closest to their targets. */
export function leastSquares(predict: Predict, targets: readonly number[], unknowns: Unknowns): LeastSquares {
  const { start, least, most, slopeStep, leastGain, leastMove, mostSteps } = unknowns;
  const missesAt = (parameters: readonly number[]): number[] => {
    const predicted = predict(parameters);
    return targets.map((target, k) => target - (predicted[k] as number));
  };
  const squaresOf = (misses: readonly number[]): number => dot(misses, misses);
  let parameters = start;
  let squares = squaresOf(missesAt(parameters));
  let damping = FIRST_DAMPING;
  for (let step = 0; step < mostSteps; step++) {
    const misses = missesAt(parameters);
    const slopes = slopesOf(predict, parameters, slopeStep);
    const pulls = slopes.map((row) => dot(row, misses));
    const isFree = (i: number): boolean => {
      const [value, pull] = [parameters[i] as number, pulls[i] as number];
      return pull < 0 ? value > (least[i] as number) : value < (most[i] as number);
    };
    const free = parameters.map((_, i) => i).filter(isFree);
    const normal = normalMatrix(free.map((i) => slopes[i] as number[]));
    const weight = Math.max(LEAST_WEIGHT, ...normal.map((row, k) => row[k] as number));
    const damped = normal.map((row, k) => row.map((value, l) => (k === l ? value + damping * weight : value)));
    const change = solveSymmetric(
      damped,
      free.map((i) => pulls[i] as number),
    );
    const next = [...parameters];
    free.forEach((i, k) => {
      const wanted = (parameters[i] as number) + (change[k] as number);
      next[i] = Math.min(most[i] as number, Math.max(least[i] as number, wanted));
    });
    const found = squaresOf(missesAt(next));
    if (found < squares) {
      const gained = squares - found;
      const moved = Math.max(...next.map((value, i) => Math.abs(value - (parameters[i] as number))));
      parameters = next;
      squares = found;
      damping = Math.max(LEAST_DAMPING, damping / EASED);
      if (gained < leastGain * (1 + squares) || moved < leastMove) return { parameters, squares, converged: true };
    } else {
      if (damping > MOST_DAMPING) return { parameters, squares, converged: true };
      damping *= TIGHTENED;
    }
  }
  return { parameters, squares, converged: false };
}
