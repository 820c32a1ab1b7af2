/** A straight tube or a bundle of them in its jacket: how wide the jacket must be, and the section left to the water. */
import { isBundle, type OfKind } from './condenser-kind.ts';

export interface TubesShape extends OfKind {
  /** Tubes of a bundle; other kinds have one, whatever stands here. */
  readonly tubes: number;
  readonly outsideDiameter_m: number;
}

/** Tubes side by side: those of a bundle, else one. */
export const tubeCount = (shape: Pick<TubesShape, 'kind' | 'tubes'>): number => (isBundle(shape) ? shape.tubes : 1);

/** Circle round a bundle over the circles of its tubes, by area; judgement (the closest packing of many has 1.10). */
const BUNDLE_SPREAD = 1.2;
/** Least bore of a jacket over the width of what stands in it, so that water passes all round. */
const JACKET_CLEARANCE = 1.02;

/** Width of the tube, or of the bundle as far as it can be packed, m: D_o √(1.2 N). */
export const bundleWidth = (shape: TubesShape): number =>
  isBundle(shape) ? shape.outsideDiameter_m * Math.sqrt(shape.tubes * BUNDLE_SPREAD) : shape.outsideDiameter_m;

/** Least bore of a jacket round the tube or bundle, m. */
export const narrowestJacket = (tubes: TubesShape): number => bundleWidth(tubes) * JACKET_CLEARANCE;

/**
 * Free section of a jacket round N tubes, m²: π (D_s² − N D_o²)/4. Exact.
 * @param D_s bore of the jacket, @param D_o outside diameter of the tubes, m; @param N tubes
 */
export const jacketFlowArea = (D_s: number, D_o: number, N: number): number =>
  (Math.PI / 4) * (D_s * D_s - N * D_o * D_o);

/** Hydraulic diameter of that section, m: four times the section over its wetted rim. Arguments as `jacketFlowArea`. */
export const jacketHydraulicDiameter = (D_s: number, D_o: number, N: number): number =>
  (4 * jacketFlowArea(D_s, D_o, N)) / (Math.PI * (D_s + N * D_o));
