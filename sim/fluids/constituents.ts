/**
 * The oil constituents and their properties as functions of temperature.
 *
 * The data stand in `constituents/`, one file a constituent, with the source of every value. Functions here accept
 * 253.15–453.15 K, the span in which an oil is handled, unless they say otherwise, and throw a `RangeError` outside. A
 * vapour-pressure curve joins the room's value to a published equation, `vapour-curve.ts`.
 */
import { GAS_CONSTANT } from '../constants.ts';
import type { Constituent } from './constituent.ts';
import { constituents } from './constituent-list.ts';
import { canFreeze, dissolvedFraction, type Freezing } from './freezing.ts';
import { requireWithin } from './range.ts';
import { curvePressure, vapourCurve, type VapourCurve } from './vapour-curve.ts';

export { CONSTITUENT_GROUPS, type Constituent, type ConstituentGroup } from './constituent.ts';

/** Lowest temperature of the constituent functions, K. */
export const OIL_MIN_TEMPERATURE = 253.15;
/** Highest temperature of the constituent functions, K. */
export const OIL_MAX_TEMPERATURE = 453.15;

export { constituents } from './constituent-list.ts';

const byId: ReadonlyMap<string, Constituent> = new Map(constituents.map((entry) => [entry.id, entry]));

/** The constituent of that id, such as `alpha_pinene`. Throws a `RangeError` that names an unknown id. */
export function constituentById(id: string): Constituent {
  const found = byId.get(id);
  if (found === undefined) throw new RangeError(`constituent: no data for “${id}”`);
  return found;
}

const requireTemperature = (quantity: string, constituent: Constituent, T: number): void =>
  requireWithin(`${quantity} of ${constituent.name}`, 'temperature', T, 'K', OIL_MIN_TEMPERATURE, OIL_MAX_TEMPERATURE);

const curves: ReadonlyMap<string, VapourCurve> = new Map(
  constituents.map((entry) => [entry.id, vapourCurve(entry.vapourPressure, entry.roomVapour)]),
);

/** The vapour-pressure curve of a constituent from room to boil. */
export const curveOf = ({ id }: Constituent): VapourCurve => curves.get(id) as VapourCurve;

/** Vapour pressure of the pure liquid, subcooled where it would be solid: entries `oil-vapour-pressure-…`. */
export function vapourPressure(constituent: Constituent, T: number): number {
  const hottest = Math.max(OIL_MAX_TEMPERATURE, constituent.vapourPressure.validTo);
  requireWithin(`vapour pressure of ${constituent.name}`, 'temperature', T, 'K', OIL_MIN_TEMPERATURE, hottest);
  return curvePressure(curveOf(constituent), T);
}

/** Density of the liquid: entries `oil-density-…`. */
export function liquidDensity(constituent: Constituent, T: number): number {
  requireTemperature('liquid density', constituent, T);
  const { liquidDensity: reference, densitySlope } = constituent;
  return reference.value + densitySlope.value * (T - reference.at);
}

/** Heat of vaporisation: entries `oil-latent-heat-…`. */
export function latentHeat(constituent: Constituent, T: number): number {
  requireTemperature('latent heat', constituent, T);
  const cool = constituent.latentHeatAt25C.value;
  const hot = constituent.latentHeatAt100C.value;
  return (cool + ((hot - cool) * (T - 298.15)) / 75) / constituent.molarMass.value;
}

/** Heat capacity of the liquid: entries `oil-heat-capacity-…`. */
export function heatCapacity(constituent: Constituent, T: number): number {
  requireTemperature('heat capacity', constituent, T);
  const { valueAt25C, valueAt90C } = constituent.heatCapacity;
  return valueAt25C + ((valueAt90C - valueAt25C) * (T - 298.15)) / 65;
}

/** μ^−0.2661 in mPa s of a liquid of 10 Pa s; on anything thicker the law of Lewis and Squires says nothing. */
const LEAST_FLUIDITY = 10_000 ** -0.2661;

/** Lowest temperature at which `liquidViscosity` answers, K: 253.15, or where the liquid would pass 10 Pa s. */
export function coldestPourable(constituent: Constituent): number {
  const { value, at } = constituent.viscosity;
  return Math.max(OIL_MIN_TEMPERATURE, at - 233 * ((value * 1e3) ** -0.2661 - LEAST_FLUIDITY));
}

/** Viscosity of the liquid: entries `oil-viscosity-…`. */
export function liquidViscosity(constituent: Constituent, T: number): number {
  const { value, at } = constituent.viscosity;
  const quantity = `liquid viscosity of ${constituent.name}`;
  requireWithin(quantity, 'temperature', T, 'K', coldestPourable(constituent), OIL_MAX_TEMPERATURE);
  return 1e-3 * ((value * 1e3) ** -0.2661 + (T - at) / 233) ** (-1 / 0.2661);
}

/**
 * Heat of solution behind the temperature factor of the solubility, J/mol. Estimated: dissolution of terpenoids was
 * measured as endothermic between 25 and 50 °C (abstract of Martins et al., 2017), and liquid aromatic hydrocarbons
 * double their solubility between 25 and 80–90 °C; 12 kJ/mol gives 1.25 at 40 °C and 2.4 at 90 °C. Between 4 and
 * 20 kJ/mol is as likely.
 */
export const SOLUTION_HEAT = 12_000;

/** Factor on the solubility at 25 °C: exp[ΔH/R (1/298.15 − 1/T)]. T in K, no range check, for the step loop. */
export const solubilityFactor = (T: number): number => Math.exp((SOLUTION_HEAT / GAS_CONSTANT) * (1 / 298.15 - 1 / T));

const ROOM = 298.15;

/** Whether it is solid at 25 °C, where its solubility in water was measured. */
export const isCrystalAtRoom = (constituent: Constituent): constituent is Freezing =>
  canFreeze(constituent) && constituent.meltingPoint.value > ROOM;

/**
 * How many times more soluble the subcooled liquid is than the crystal at 25 °C: exp[ΔH_f/R (1/298.15 − 1/T_m)], the
 * ideal-solution law; 1 for a liquid. An oil gives its constituents to water as liquids, whatever they are alone.
 */
const liquidOverCrystal = (constituent: Constituent): number =>
  isCrystalAtRoom(constituent) ? 1 / dissolvedFraction(constituent, ROOM) : 1;

/** Solubility of the liquid in water, subcooled where it would be solid: entries `oil-water-solubility-…`. */
export function waterSolubility(constituent: Constituent, T: number): number {
  requireWithin(`water solubility of ${constituent.name}`, 'temperature', T, 'K', 273.15, 373.15);
  return constituent.waterSolubility.value * liquidOverCrystal(constituent) * solubilityFactor(T);
}
