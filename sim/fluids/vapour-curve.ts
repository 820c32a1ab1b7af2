/**
 * The vapour pressure of a constituent from a cold room to the boiling still, as one curve. From the join up it is the
 * published Antoine curve; at 298.15 K it is the room's value; below, Clausius and Clapeyron's straight line of ln p
 * against 1/T with the heat of vaporisation there; between room and join a cubic of ln p in 1/T that meets both with
 * value and slope. The pressure rises with temperature everywhere.
 */
import { GAS_CONSTANT } from '../constants.ts';
import type { AntoineFit, RoomVapour } from './constituent.ts';

/** Room temperature at which the pressures of `RoomVapour` hold, K. */
export const ROOM = 298.15;
/** The join lies where the Antoine curve begins to hold, but not nearer to the room or to the boil than this, K. */
const JOIN_RANGE = [333.15, 353.15] as const;

export interface VapourCurve {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  /** Temperature from which the Antoine curve counts, K. */
  readonly join: number;
  /** ln(p/Pa) = c0 + c1 u + c2 u² + c3 u³ with u = 1/T − 1/298.15 K, between 298.15 K and the join. */
  readonly cubic: readonly [number, number, number, number];
}

/** Antoine equation exp(A − B/(T + C)), Pa, without a range check, for the step loop. T and C in K, B in K. */
export const antoinePressure = (A: number, B: number, C: number, T: number): number => Math.exp(A - B / (T + C));

export function vapourCurve({ A, B, C, validFrom }: AntoineFit, room: RoomVapour): VapourCurve {
  const join = Math.min(Math.max(validFrom, JOIN_RANGE[0]), JOIN_RANGE[1]);
  const width = 1 / join - 1 / ROOM;
  const start = Math.log(room.pressure);
  const slope = -room.heat / GAS_CONSTANT;
  const rise = A - B / (join + C) - start;
  const endSlope = -B * (join / (join + C)) ** 2;
  return {
    A,
    B,
    C,
    join,
    cubic: [
      start,
      slope,
      (3 * rise) / width ** 2 - (2 * slope + endSlope) / width,
      (-2 * rise) / width ** 3 + (slope + endSlope) / width ** 2,
    ],
  };
}

/** ln(p/Pa) below the join; T in K. */
function logBelowJoin({ cubic: [c0, c1, c2, c3] }: VapourCurve, T: number): number {
  const u = 1 / T - 1 / ROOM;
  return u >= 0 ? c0 + c1 * u : c0 + u * (c1 + u * (c2 + u * c3));
}

/** Vapour pressure, Pa. T in K, without a range check, for the step loop. */
export const curvePressure = (curve: VapourCurve, T: number): number =>
  T >= curve.join ? antoinePressure(curve.A, curve.B, curve.C, T) : Math.exp(logBelowJoin(curve, T));

/** d ln p/dT, 1/K. T in K. */
export function curveLogSlope(curve: VapourCurve, T: number): number {
  if (T >= curve.join) return curve.B / (T + curve.C) ** 2;
  const [, c1, c2, c3] = curve.cubic;
  const u = 1 / T - 1 / ROOM;
  return -(u >= 0 ? c1 : c1 + u * (2 * c2 + 3 * u * c3)) / (T * T);
}
