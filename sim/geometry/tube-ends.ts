/**
 * What a condenser tube needs beside its cooled length: the legs at its ends, and what cutting and bending take. Sizes of
 * a workshop, stated here; common practice, no source.
 */
import { isBundle, isCoil, type CondenserKind } from './condenser-kind.ts';

export interface TubeEnds {
  /** From the joint with the neck down to the first turn, or into the jacket, m. */
  readonly inlet_m: number;
  /** From the last turn out through the tub's wall, or out of the jacket, m. */
  readonly outlet_m: number;
  /** Squared ends, the grip that bending needs, and a spoilt piece, m. */
  readonly cutting_m: number;
}

/** A coil's tube rises so far above the overflow to its joint, clear of rim and splashes, m. */
export const JOINT_OVER_WATER = 0.12;
/** A coil's tube sticks out of the tub's wall so far, for nut and spout, m. */
export const SPOUT = 0.12;
/** Straight tubes stick out of their jacket so far at each end; those of a bundle only through its end plates, m. */
const OUT_OF_JACKET = 0.08;
const THROUGH_PLATE = 0.02;
/** Squaring both ends, m, and what a bent tube loses to grip and a spoilt start, share of its length. */
const SQUARED = 0.05;
const SPOILT = 0.05;

interface Laid {
  readonly condenser: {
    readonly kind: CondenserKind;
    readonly coilDiameter_m: number;
    readonly coilTopDepth_m: number;
  };
  readonly cooling: { readonly tubDiameter_m: number };
}

/** Ends of each tube of a cooled length. */
export function tubeEnds({ condenser, cooling }: Laid, length_m: number): TubeEnds {
  if (isBundle(condenser)) return { inlet_m: THROUGH_PLATE, outlet_m: THROUGH_PLATE, cutting_m: SQUARED };
  if (!isCoil(condenser)) return { inlet_m: OUT_OF_JACKET, outlet_m: OUT_OF_JACKET, cutting_m: SQUARED };
  return {
    inlet_m: condenser.coilTopDepth_m + JOINT_OVER_WATER,
    outlet_m: Math.max(0, (cooling.tubDiameter_m - condenser.coilDiameter_m) / 2) + SPOUT,
    cutting_m: SQUARED + SPOILT * length_m,
  };
}

/** Length of one tube to buy: cooled length, ends and cutting, m. */
export const tubeToBuy = (length_m: number, { inlet_m, outlet_m, cutting_m }: TubeEnds): number =>
  length_m + inlet_m + outlet_m + cutting_m;
