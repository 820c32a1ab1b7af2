/**
 * Turns, height, fall, mass and bend of a coil, and whether it goes into its tub: exact geometry of a helix. The entries
 * stand in `coil-entries.ts`, so that the first view, which needs the functions, need not fetch them.
 */
import type { TubShape } from './tub.ts';

/** Length of tube in one turn: entry `coil-turn-length`. */
export const turnLength = (D: number, p: number): number => Math.hypot(Math.PI * D, p);

/** Turns of a coil: entry `coil-turns`. */
export const coilTurns = (L: number, D: number, p: number): number => L / turnLength(D, p);

/** Rise of a coil's centre line from its lowest to its uppermost turn: entry `coil-rise`. */
export const coilRise = (L: number, D: number, p: number): number => coilTurns(L, D, p) * p;

/** Height of a coil with its tube: entry `coil-height`. */
export const coilHeight = (L: number, D: number, p: number, D_o: number): number => coilRise(L, D, p) + D_o;

/** Fall of a coil's tube over its own length, the sine of its slope: entry `coil-fall`. */
export const coilFall = (D: number, p: number): number => p / turnLength(D, p);

/** Radius to which the tube of a coil is bent: entry `coil-bend-radius`. */
export const coilBendRadius = (D: number, p: number): number => (D / 2) * (1 + (p / (Math.PI * D)) ** 2);

/** Mass of plain tube: entry `tube-mass`. */
export const tubeMass = (D_i: number, D_o: number, L: number, rho: number): number =>
  0.25 * Math.PI * (D_o * D_o - D_i * D_i) * rho * L;

/** A coil in its tub, as a scenario gives it. */
export interface CoilShape {
  readonly length_m: number;
  /** Of a turn, centre to centre. */
  readonly coilDiameter_m: number;
  readonly coilPitch_m: number;
  /** Depth of the uppermost turn below the overflow. */
  readonly coilTopDepth_m: number;
  readonly outsideDiameter_m: number;
}

/** Lengths that differ by less than a nanometre differ by rounding only. */
const ROUNDING = 1e-9;

/** Room that a coil needs, m, against that of its tub. */
export interface CoilFit {
  readonly turns: number;
  /** From the overflow to the underside of the lowest turn. */
  readonly depth_m: number;
  readonly width_m: number;
  readonly isTooDeep: boolean;
  readonly isTooWide: boolean;
}

/** Whether a coil goes into its tub under the overflow. Exact; a coil may touch wall and base. */
export function coilFit(coil: CoilShape, tub: Pick<TubShape, 'tubDiameter_m' | 'tubHeight_m'>): CoilFit {
  const { length_m, coilDiameter_m, coilPitch_m, coilTopDepth_m, outsideDiameter_m } = coil;
  const depth_m = coilTopDepth_m + coilHeight(length_m, coilDiameter_m, coilPitch_m, outsideDiameter_m);
  const width_m = coilDiameter_m + outsideDiameter_m;
  return {
    turns: coilTurns(length_m, coilDiameter_m, coilPitch_m),
    depth_m,
    width_m,
    isTooDeep: depth_m > tub.tubHeight_m + ROUNDING,
    isTooWide: width_m > tub.tubDiameter_m + ROUNDING,
  };
}

/** Longest tube that goes under the overflow as a coil of this diameter and pitch, m; zero when none does. */
export function longestCoil(coil: Omit<CoilShape, 'length_m'>, { tubHeight_m }: Pick<TubShape, 'tubHeight_m'>): number {
  const { coilDiameter_m, coilPitch_m, coilTopDepth_m, outsideDiameter_m } = coil;
  const turns = (tubHeight_m - coilTopDepth_m - outsideDiameter_m) / coilPitch_m;
  return Math.max(0, turns) * turnLength(coilDiameter_m, coilPitch_m);
}
