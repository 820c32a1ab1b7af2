/**
 * Films outside tubes, pots and tubs by hand: published relations written out once more. Temperatures in K, lengths in
 * m, results in W/m²K or W/m².
 */
import { airConductivity, airDensity, airHeatCapacity, airViscosity } from '../../../sim/fluids/air.ts';
import * as water from '../../../sim/fluids/water.ts';
import { G, liquidAt } from './water-at.ts';

/** Natural convection round a horizontal tube in water (Churchill and Chu 1975), at the film temperature. */
export function tubeInWater(T_w: number, T_c: number, D: number): number {
  const T = (T_w + T_c) / 2;
  const { nu, Pr, k } = liquidAt(T);
  const Ra = ((G * water.liquidExpansivity(T) * (T_w - T_c) * D ** 3) / nu ** 2) * Pr;
  return (k / D) * (0.6 + (0.387 * Ra ** (1 / 6)) / (1 + (0.559 / Pr) ** (9 / 16)) ** (8 / 27)) ** 2;
}

/** Cross flow of water over a tube (Churchill and Bernstein 1977), properties at T. */
export function tubeInStream(V: number, T: number, D: number): number {
  const { nu, Pr, k } = liquidAt(T);
  const Re = (V * D) / nu;
  const Nu =
    0.3 +
    ((0.62 * Re ** 0.5 * Pr ** (1 / 3)) / (1 + (0.4 / Pr) ** (2 / 3)) ** 0.25) * (1 + (Re / 282000) ** 0.625) ** 0.8;
  return (Nu * k) / D;
}

/** Prandtl number and Rayleigh number of dry air at the film temperature, and its conductivity. */
function airFilm(T_s: number, T_a: number, L: number, p: number) {
  const film = (T_s + T_a) / 2;
  const nu = airViscosity(film) / airDensity(film, p);
  const Pr = (airViscosity(film) * airHeatCapacity(film)) / airConductivity(film);
  return { Pr, Ra: ((G * (T_s - T_a) * L ** 3) / (film * nu ** 2)) * Pr, k: airConductivity(film) };
}

/** The upright side of a pot in air (Churchill and Chu 1975). */
export function potSide(T_s: number, T_a: number, H: number, p = 101_325): number {
  const { Pr, Ra, k } = airFilm(T_s, T_a, H, p);
  return (k / H) * (0.825 + (0.387 * Ra ** (1 / 6)) / (1 + (0.492 / Pr) ** (9 / 16)) ** (8 / 27)) ** 2;
}

/** A hot round lid in air (McAdams 1954) on area over perimeter. */
export function potLid(T_s: number, T_a: number, D: number, p = 101_325): number {
  const { Ra, k } = airFilm(T_s, T_a, D / 4, p);
  return (k / (D / 4)) * (Ra > 1e7 ? 0.15 * Ra ** (1 / 3) : 0.54 * Ra ** 0.25);
}

/** Radiation of a small grey body. */
export const radiation = (emissivity: number, T_s: number, T_a: number): number =>
  emissivity * 5.670374e-8 * (T_s ** 4 - T_a ** 4);

/** Heat lost to air at 20 °C by bare sides and lids at T. */
export const bareLoss = (
  vessels: readonly { readonly D: number; readonly H: number }[],
  emissivity: number,
  T: number,
  p: number,
): number =>
  vessels.reduce((sum, { D, H }) => {
    const radiant = radiation(emissivity, T, 293.15);
    const side = potSide(T, 293.15, H, p) * (T - 293.15) + radiant;
    const lid = potLid(T, 293.15, D, p) * (T - 293.15) + radiant;
    return sum + side * Math.PI * D * H + lid * (Math.PI / 4) * D ** 2;
  }, 0);

/** Evaporation from open water (Carrier 1918): heat in W/m² and water in kg/m²s. */
export function carrier(T_w: number, T_a: number, RH: number, V: number): readonly [heat: number, water: number] {
  const heat = (water.saturationPressure(T_w) - RH * water.saturationPressure(T_a)) * (0.089 + 0.0782 * V);
  return [heat, heat / water.latentHeat(T_w)];
}
