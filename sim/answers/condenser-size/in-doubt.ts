/**
 * The length that nine runs in ten need, with what is not known for sure drawn anew for each: the films, the condensate,
 * the coil's bend, the hose, the tap, and everything else that an ensemble doubts.
 *
 * Every draw runs once with a tube that is long enough for most; where its distillate had cooled to the limit tells about
 * what length it needs. The draws next to the ninth tenth are then sized exactly.
 */
import type { Scenario } from '../../scenario/scenario.ts';
import { normalMatrix, solveSymmetric, type Matrix } from '../../maths/least-squares.ts';
import { ensembleDesign, USUAL_SEED } from '../ensemble/ensemble.ts';
import { withDrawn, type OwnBands, type UncertainId } from '../ensemble/factors.ts';
import { coarseTrial } from './coarse-length.ts';
import { LONGEST_TUBE, sizeCondenser, withLength, type CondenserSize, type SizeOptions } from './shortest-length.ts';

/** Share of the runs for which the length is enough, where the reader names none. */
export const NINE_IN_TEN = 0.9;
/**
 * Draws of the doubts, spread evenly over each; a seed fixes them. Half as many left the length that nine runs in ten need
 * uncertain by several runs in a hundred.
 */
export const SIZING_DRAWS = 80;
/** Draws on either side of the deciding one that are sized exactly: first estimates may change places with them. */
const NEIGHBOURS = 2;
/** Draws that stand for all when other tubes are sized: the deciding one and one on either side. */
const DECIDING = 1;
/** Tube of the first look, over what the plan needs. */
const FIRST_LOOK = 1.6;

/** Drawn values of the doubts. */
export type Draw = Readonly<Partial<Record<UncertainId, number>>>;

export interface LengthInDoubt {
  /** What so many of the runs need, or why more of them than may fail cannot be helped. */
  readonly size: CondenserSize;
  /** What the run as planned needs, m; `null` when no length is enough for it. */
  readonly typical_m: number | null;
  /** Largest rate of steam into the condenser in the run as planned, kg/s. */
  readonly peakVapour_kg_s: number;
  /** The doubt that the length goes with most; `null` when none was looked at. */
  readonly decidedBy: UncertainId | null;
  /** Draws that need about that length, for sizing other tubes; the plan itself when none were looked at. */
  readonly deciding: readonly Draw[];
}

const PLAN_ALONE: readonly Draw[] = [{}];

/** Stands for the length of a draw for which the first look was too short, over the look. */
const BEYOND = 1.25;

/** Numbers less their mean, over their spread; `null` where they do not vary. */
function standardised(numbers: readonly number[]): readonly number[] | null {
  const mean = numbers.reduce((sum, next) => sum + next, 0) / numbers.length;
  const spread = Math.sqrt(numbers.reduce((sum, next) => sum + (next - mean) ** 2, 0) / numbers.length);
  return spread > 0 ? numbers.map((next) => (next - mean) / spread) : null;
}

/** The doubt with the steepest slope, per spread of its own, in a plane laid through the logarithms of the lengths. */
function mostMoving(ids: readonly UncertainId[], values: Matrix, needs: readonly number[]): UncertainId | null {
  const lengths = standardised(needs.map((need) => Math.log(need)));
  const columns = ids.flatMap((id, index) => {
    const column = standardised(values.map((drawn) => drawn[index] as number));
    return column === null ? [] : [{ id, column }];
  });
  if (lengths === null || columns.length === 0) return null;
  const right = columns.map(({ column }) =>
    column.reduce((sum, value, row) => sum + value * (lengths[row] as number), 0),
  );
  const slopes = solveSymmetric(normalMatrix(columns.map(({ column }) => column)), right).map(Math.abs);
  return columns[slopes.indexOf(Math.max(...slopes))]?.id ?? null;
}

export interface DoubtOptions extends SizeOptions {
  /** Share of the runs for which the length must be enough; `NINE_IN_TEN` when left out. */
  readonly confidence?: number;
}

/** Size of the scenario's own tube with doubts; `own` narrows some of them. */
export function lengthInDoubt(
  scenario: Scenario,
  { confidence = NINE_IN_TEN, ...options }: DoubtOptions = {},
  own: OwnBands = {},
): LengthInDoubt {
  const planned = sizeCondenser(scenario, options);
  const { peakVapour_kg_s } = planned.trial;
  if (planned.length_m === null || planned.verdict !== 'holds')
    return { size: planned, typical_m: planned.length_m, peakVapour_kg_s, decidedBy: null, deciding: PLAN_ALONE };
  const { doubts, rows } = ensembleDesign(scenario, SIZING_DRAWS, USUAL_SEED, own);
  const values = rows.filter(({ kind }) => kind === 'draw').map((row) => row.values);
  const draws = values.map((drawn): Draw =>
    Object.fromEntries(doubts.map(({ id }, index) => [id, drawn[index] as number])),
  );
  const look = Math.min(LONGEST_TUBE, FIRST_LOOK * planned.length_m);
  const needs = draws.map((draw) => {
    const trial = coarseTrial(withLength(withDrawn(scenario, draw), look));
    return trial.holds ? trial.cooledBy_m : BEYOND * look;
  });
  const order = draws.map((_, index) => index).sort((a, b) => (needs[a] as number) - (needs[b] as number));
  // Of n runs the k-th shortest need is met in k of n + 1 further runs, on the average.
  const rank = Math.min(draws.length, Math.ceil(confidence * (draws.length + 1))) - 1;
  const first = Math.max(0, Math.min(rank - NEIGHBOURS, draws.length - 2 * NEIGHBOURS - 1));
  const near = order.slice(first, first + 2 * NEIGHBOURS + 1).map((index) => {
    const start_m = 1.02 * (needs[index] as number);
    const draw = draws[index] as Draw;
    return { draw, size: sizeCondenser(withDrawn(scenario, draw), { confirm: false, start_m }) };
  });
  near.sort((a, b) => (a.size.length_m ?? Infinity) - (b.size.length_m ?? Infinity));
  const at = rank - first;
  return {
    size: (near[at] as (typeof near)[number]).size,
    typical_m: planned.length_m,
    peakVapour_kg_s,
    decidedBy: mostMoving(
      doubts.map(({ id }) => id),
      values,
      needs,
    ),
    deciding: near
      .slice(Math.max(0, Math.min(at - DECIDING, near.length - 2 * DECIDING - 1)))
      .slice(0, 2 * DECIDING + 1)
      .map(({ draw }) => draw),
  };
}
