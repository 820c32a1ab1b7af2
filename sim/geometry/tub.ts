/** The tub or barrel of cooling water as an upright cylinder: exact geometry in metres. */
import { cylinderDiameter, cylinderVolume } from './cylinder.ts';

export interface TubShape {
  readonly tubDiameter_m: number;
  /** Height of the water up to the overflow. */
  readonly tubHeight_m: number;
  /** Share of that height filled at the start. */
  readonly tubFill: number;
}

/** Volume up to the overflow, m³. */
export const tubCapacity = ({ tubDiameter_m, tubHeight_m }: TubShape): number =>
  cylinderVolume(tubDiameter_m, tubHeight_m);

/** Volume of water filled at the start, m³. */
export const tubVolume = (tub: TubShape): number => tubCapacity(tub) * tub.tubFill;

/** Diameter of a tub that takes a volume of water at the start, as deep and as full as this one, m. */
export const tubDiameterFor = ({ tubHeight_m, tubFill }: TubShape, volume_m3: number): number =>
  cylinderDiameter(volume_m3, tubHeight_m * tubFill);
