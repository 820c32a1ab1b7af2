/**
 * Oils that freeze: a constituent that melts high crystallises out of a cold oil, and its crystals can clog a tube.
 *
 * Ideal solution of a pure crystal (Schröder and van Laar), ln x = −ΔH_f/R (1/T − 1/T_m): no mixed crystals, activity
 * coefficients 1, one heat of fusion down from the melting point. Real oils may stay liquid some kelvin colder, for want
 * of a seed.
 */
import { GAS_CONSTANT } from '../constants.ts';
import type { Constituent } from './constituent.ts';
import { requireWithin } from './range.ts';

/** A constituent with what its crystals need to be known of. */
export interface Freezing extends Constituent {
  readonly meltingPoint: NonNullable<Constituent['meltingPoint']>;
  readonly fusionHeat: NonNullable<Constituent['fusionHeat']>;
}

/** Whether anything is known of its crystals; of the others none is expected in a condenser. */
export const canFreeze = (constituent: Constituent): constituent is Freezing =>
  constituent.fusionHeat !== undefined && constituent.meltingPoint !== null;

/** Least mole fraction for which the ideal law is asked. */
export const LEAST_FROZEN_FRACTION = 0.05;
/** Coldest oil for which the ideal law is asked, K. */
export const COLDEST_OIL = 263.15;

/** Mole fraction that an oil holds dissolved, 1 from the melting point up, without a range check, for the step loop. */
export const dissolvedFraction = ({ fusionHeat, meltingPoint }: Freezing, T: number): number =>
  Math.min(1, Math.exp((-fusionHeat.value / GAS_CONSTANT) * (1 / T - 1 / meltingPoint.value)));

/** Mole fraction that an oil holds dissolved at T: entries `oil-crystal-solubility-…`. */
export function crystalSolubility(constituent: Freezing, T: number): number {
  const quantity = `solubility of crystals of ${constituent.name}`;
  requireWithin(quantity, 'temperature', T, 'K', COLDEST_OIL, constituent.meltingPoint.value);
  return dissolvedFraction(constituent, T);
}

/** Temperature at which an oil begins to crystallise: entries `oil-freezing-temperature-…`. */
export function freezingTemperature(constituent: Freezing, x: number): number {
  requireWithin(`freezing of ${constituent.name}`, 'mole fraction', x, '1', LEAST_FROZEN_FRACTION, 1);
  const { fusionHeat, meltingPoint } = constituent;
  return 1 / (1 / meltingPoint.value - (GAS_CONSTANT * Math.log(x)) / fusionHeat.value);
}
