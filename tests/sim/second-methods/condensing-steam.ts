/**
 * Condensing steam by hand: the published relations written out once more, film properties at the mean of saturation
 * and wall, steam at saturation. Temperatures in K, lengths in m, results in W/m²K.
 */
import * as water from '../../../sim/fluids/water.ts';
import { G, liquidAt } from './water-at.ts';

/** g ρ_l (ρ_l − ρ_v) k³ h′/(μ ΔT L), the group whose fourth root every laminar film has. */
function filmGroup(T_s: number, T_w: number, L: number, subcooling: number): number {
  const dT = T_s - T_w;
  const { rho, k, mu, cp } = liquidAt((T_s + T_w) / 2);
  const heat = water.latentHeat(T_s) + subcooling * cp * dT;
  return (G * rho * (rho - water.vapourDensity(T_s)) * k ** 3 * heat) / (mu * dT * L);
}

/** Vertical plate (Nusselt 1916, Rohsenow 1956). */
export const verticalPlate = (T_s: number, T_w: number, L: number): number =>
  ((2 * Math.SQRT2) / 3) * filmGroup(T_s, T_w, L, 0.68) ** 0.25;

/** Outside a horizontal tube. */
export const outsideTube = (T_s: number, T_w: number, D: number): number =>
  0.729 * filmGroup(T_s, T_w, D, 0.68) ** 0.25;

/** Inside a horizontal tube (Chato 1962). */
export const chato = (T_s: number, T_w: number, D: number): number => 0.555 * filmGroup(T_s, T_w, D, 0.375) ** 0.25;

/** Reynolds number of steam that fills the bore. */
export const steamReynolds = (m: number, D: number, T_s: number): number =>
  (4 * m) / (Math.PI * D * water.vapourViscosity(T_s));

/** J_G of Wallis, and the value at which shear takes over (Cavallini and others 2006, C_T = 2.6). */
export function vapourSpeeds(
  m: number,
  x: number,
  D: number,
  T_s: number,
): { readonly J: number; readonly J_T: number } {
  const { rho, mu } = liquidAt(T_s);
  const rho_v = water.vapourDensity(T_s);
  const flux = (4 * m) / (Math.PI * D * D);
  const X = ((1 - x) / x) ** 0.9 * (rho_v / rho) ** 0.5 * (mu / water.vapourViscosity(T_s)) ** 0.1;
  return {
    J: (x * flux) / (G * D * rho_v * (rho - rho_v)) ** 0.5,
    J_T: ((7.5 / (4.3 * X ** 1.111 + 1)) ** -3 + 2.6 ** -3) ** (-1 / 3),
  };
}

/** Local coefficient inside a horizontal tube (Cavallini and others 2006), all properties at saturation. */
export function cavallini(m: number, x: number, D: number, T_s: number, dT: number): number {
  const { rho, k, mu, Pr } = liquidAt(T_s);
  const rho_v = water.vapourDensity(T_s);
  const mu_v = water.vapourViscosity(T_s);
  const flux = (4 * m) / (Math.PI * D * D);
  const h_LO = ((0.023 * k) / D) * ((flux * D) / mu) ** 0.8 * Pr ** 0.4;
  const h_A =
    h_LO *
    (1 + 1.128 * x ** 0.817 * (rho / rho_v) ** 0.3685 * (mu / mu_v) ** 0.2363 * (1 - mu_v / mu) ** 2.144 * Pr ** -0.1);
  const { J, J_T } = vapourSpeeds(m, x, D, T_s);
  if (J > J_T) return h_A;
  const film = (k ** 3 * rho * (rho - rho_v) * G * water.latentHeat(T_s)) / (mu * D * dT);
  const h_S = (0.725 / (1 + 0.741 * ((1 - x) / x) ** 0.3321)) * film ** 0.25 + (1 - x ** 0.087) * h_LO;
  return (h_A * (J_T / J) ** 0.8 - h_S) * (J / J_T) + h_S;
}

/** Shah's shear term of 2009: h_LS of Dittus and Boelter, Z and the viscosity factor as he prints them. */
export function shah2009(m: number, x: number, D: number, T_s: number): number {
  const { k, mu, Pr } = liquidAt(T_s);
  const flux = (4 * m) / (Math.PI * D * D);
  const p_r = water.saturationPressure(T_s) / 22.064e6;
  const Z = (1 / x - 1) ** 0.8 * p_r ** 0.4;
  const h_LT = ((0.023 * k) / D) * ((flux * D) / mu) ** 0.8 * Pr ** 0.4;
  const h_LS = h_LT * (1 - x) ** 0.8;
  return h_LS * (1 + 3.8 / Z ** 0.95) * (mu / (14 * water.vapourViscosity(T_s))) ** (0.0058 + 0.557 * p_r);
}
