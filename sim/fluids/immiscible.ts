/**
 * Vapour over water and an oil that does not mix with it, and mixtures of oil constituents.
 *
 * Each liquid exerts its own pressure whatever the other does, so the pair boils where p_w(T) + Σ x_i p_i(T) = P,
 * below the boiling point of water (Raoult's law within the oil, activity coefficients 1). Constituents that dissolve
 * noticeably in water stay below this ideal when there is little oil for much water.
 */
import { WATER_MOLAR_MASS } from '../constants.ts';
import type { Constituent } from './constituent.ts';
import { curveOf, liquidViscosity } from './constituents.ts';
import { saturationPressureUnchecked, saturationTemperatureUnchecked } from './if97-region4.ts';
import { requireWithin } from './range.ts';
import { curveLogSlope, curvePressure, type VapourCurve } from './vapour-curve.ts';
import { saturationPressure, WATER_MAX_PRESSURE, WATER_MIN_PRESSURE, WATER_MIN_TEMPERATURE } from './water.ts';
import { tableSaturationSlope } from './water-table.ts';

/** Pressure of the oil's vapour Σ x_i p_i, Pa, without a range check. x mole fractions in the oil, T in K. */
export function oilVapourPressure(x: ArrayLike<number>, curves: readonly VapourCurve[], T: number): number {
  return curves.reduce((sum, curve, i) => sum + (x[i] as number) * curvePressure(curve, T), 0);
}

const MOST_PASSES = 60;
/** A step this small, K, leaves an error below 1e-9 K: what a Newton step leaves is about 0.02/K times its square. */
const CLOSE_ENOUGH = 1e-4;

/**
 * Temperature at which water and oil boil together, K; NaN where there is none between 273.15 K
 * and water's own boiling point. Newton's method within a bracket that it never leaves, so the root is always found,
 * to within 1e-9 K.
 * @param P total pressure, Pa. @param x mole fractions in the oil (all zero: no oil, water's boiling point).
 * @param guess where to start, K, such as the last step's result; NaN starts from water's boiling point.
 */
export function coBoilingTemperatureQuick(
  P: number,
  x: ArrayLike<number>,
  curves: readonly VapourCurve[],
  guess: number,
): number {
  if (!(P >= WATER_MIN_PRESSURE && P <= WATER_MAX_PRESSURE)) return Number.NaN;
  let high = saturationTemperatureUnchecked(P);
  let low = WATER_MIN_TEMPERATURE;
  let T = guess > low && guess < high ? guess : high;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    let excess = saturationPressureUnchecked(T) - P;
    let slope = tableSaturationSlope(T);
    curves.forEach((curve, i) => {
      const share = x[i] as number;
      if (share === 0) return;
      const partial = share * curvePressure(curve, T);
      excess += partial;
      slope += partial * curveLogSlope(curve, T);
    });
    if (excess > 0) high = T;
    else low = T;
    const next = T - excess / slope;
    if (Math.abs(next - T) < CLOSE_ENOUGH) return next >= WATER_MIN_TEMPERATURE ? next : Number.NaN;
    T = next > low && next < high ? next : (low + high) / 2;
  }
  return Number.NaN;
}

/** Checks a composition: as many fractions as constituents, none negative, adding up to one within 1e-6. */
function requireFractions(quantity: string, fractions: readonly number[], oil: readonly Constituent[]): void {
  if (fractions.length !== oil.length) {
    throw new RangeError(`${quantity}: ${fractions.length} fractions for ${oil.length} constituents`);
  }
  let sum = 0;
  for (const fraction of fractions) {
    requireWithin(quantity, 'fraction', fraction, '1', 0, 1 + 1e-6);
    sum += fraction;
  }
  requireWithin(quantity, 'sum of the fractions', sum, '1', 1 - 1e-6, 1 + 1e-6);
}

/**
 * Temperature at which water and an immiscible oil boil together: entries `co-boiling-temperature-…`. The mole fractions
 * x add up to one, and a pressure at which the oil alone would boil below 0 °C is out of range.
 */
export function coBoilingTemperature(P: number, x: readonly number[], oil: readonly Constituent[]): number {
  requireWithin('co-boiling temperature', 'pressure', P, 'Pa', WATER_MIN_PRESSURE, WATER_MAX_PRESSURE);
  requireFractions('co-boiling temperature', x, oil);
  const curves = oil.map(curveOf);
  const least = WATER_MIN_PRESSURE + oilVapourPressure(x, curves, WATER_MIN_TEMPERATURE);
  requireWithin('co-boiling temperature', 'pressure', P, 'Pa', least, WATER_MAX_PRESSURE);
  return coBoilingTemperatureQuick(P, x, curves, Number.NaN);
}

/** Mass of constituent vapour that goes with a kilogram of steam, kg/kg, from partial pressures in Pa and kg/mol. */
export const oilPerSteam = (oilPressure: number, waterPressure: number, molarMass: number): number =>
  (oilPressure * molarMass) / (waterPressure * WATER_MOLAR_MASS);

/** Mass of oil vapour per mass of steam over both liquids: entries `oil-per-steam-…`. */
export function saturationOilPerSteam(T: number, x: readonly number[], oil: readonly Constituent[]): number {
  requireFractions('oil per steam', x, oil);
  const water = saturationPressure(T);
  let sum = 0;
  oil.forEach((entry, i) => {
    sum += oilPerSteam((x[i] as number) * curvePressure(curveOf(entry), T), water, entry.molarMass.value);
  });
  return sum;
}

/** Mass share of oil in the condensate of both: entries `co-boiling-oil-share-…`. */
export function coBoilingOilShare(P: number, x: readonly number[], oil: readonly Constituent[]): number {
  const ratio = saturationOilPerSteam(coBoilingTemperature(P, x, oil), x, oil);
  return ratio / (1 + ratio);
}

/** Mole fractions from mass fractions. Throws a RangeError for fractions that are none. */
export function moleFractions(massFractions: readonly number[], oil: readonly Constituent[]): number[] {
  requireFractions('mole fractions', massFractions, oil);
  const moles = oil.map(({ molarMass }, i) => (massFractions[i] as number) / molarMass.value);
  const total = moles.reduce((sum, amount) => sum + amount, 0);
  return moles.map((amount) => amount / total);
}

/**
 * Viscosity of an oil, Pa s: ln μ = Σ x_i ln μ_i (Arrhenius mixing). Mass fractions; T in K, 253.15–453.15.
 * Expect no better than 10–30 %: several of the constituent values are remembered or estimated.
 */
export function oilViscosity(T: number, massFractions: readonly number[], oil: readonly Constituent[]): number {
  const x = moleFractions(massFractions, oil);
  return Math.exp(oil.reduce((sum, entry, i) => sum + (x[i] as number) * Math.log(liquidViscosity(entry, T)), 0));
}
