/**
 * The inside of the condenser tube: the film that condenses and the rivulet that cools.
 *
 * Sloping or coiled tube: Chato's stratified laminar film; where the vapour is faster than Cavallini's transition the
 * shear-aware Cavallini coefficient, if higher. Upright tube: Nusselt's film, wavy above a film Reynolds number of 30.
 * All multiplied by the oil-film factor (judgement) and the condensing-film factor of the scenario.
 */
import { STANDARD_GRAVITY } from '../constants.ts';
import {
  tableLatentHeat,
  tableLiquidConductivity,
  tableLiquidDensity,
  tableLiquidHeatCapacity,
  tableLiquidViscosity,
  tableVapourDensity,
  tableVapourViscosity,
} from '../fluids/water-table.ts';
import {
  cavalliniTransition,
  dimensionlessVapourVelocity,
  filmCoefficientCavallini,
  filmCoefficientChato,
} from '../transfer/film-condensation.ts';
import {
  filmCoefficientNusseltVertical,
  filmCoefficientWavyVertical,
  filmReynoldsWavyVertical,
} from '../transfer/film-condensation-on-surfaces.ts';

/** Rohsenow's subcooling factor in h′ = h_fg + c c_p ΔT for vertical films. */
const VERTICAL_SUBCOOLING = 0.68;
const WAVY_FILM_REYNOLDS = 30;

/**
 * Film coefficient in a sloping or coiled tube, W/m²K.
 * @param D_i bore, m @param T_s dew temperature, K @param T_w inner wall, K @param G vapour mass flux at the inlet,
 * kg/m²s @param x vapour share left
 */
export function slopingFilm(D_i: number, T_s: number, T_w: number, G: number, x: number): number {
  const dT = Math.max(1e-3, T_s - T_w);
  const film = T_s - dT / 2;
  const rho_l = tableLiquidDensity(film);
  const k_l = tableLiquidConductivity(film);
  const mu_l = tableLiquidViscosity(film);
  const cp_l = tableLiquidHeatCapacity(film);
  const rho_v = tableVapourDensity(T_s);
  const h_fg = tableLatentHeat(T_s);
  const stratified = filmCoefficientChato(D_i, dT, h_fg, rho_l, rho_v, k_l, mu_l, cp_l, STANDARD_GRAVITY);
  if (dimensionlessVapourVelocity(G, x, D_i, rho_l, rho_v, STANDARD_GRAVITY) < 1.5) return stratified;
  const mu_v = tableVapourViscosity(T_s);
  const speed = dimensionlessVapourVelocity(G, x, D_i, rho_l, rho_v, STANDARD_GRAVITY);
  if (speed < cavalliniTransition(x, rho_l, rho_v, mu_l, mu_v)) return stratified;
  const sheared = filmCoefficientCavallini(G, x, D_i, dT, h_fg, rho_l, rho_v, k_l, mu_l, mu_v, cp_l, STANDARD_GRAVITY);
  return Math.max(stratified, sheared);
}

/**
 * Mean film coefficient in an upright tube over its condensing length L, W/m²K; other arguments as `slopingFilm`.
 * The vapour's help or hindrance is left out.
 */
export function uprightFilm(L: number, T_s: number, T_w: number): number {
  const dT = Math.max(1e-3, T_s - T_w);
  const film = T_s - dT / 2;
  const rho_l = tableLiquidDensity(film);
  const k_l = tableLiquidConductivity(film);
  const mu_l = tableLiquidViscosity(film);
  const cp_l = tableLiquidHeatCapacity(film);
  const h_fg = tableLatentHeat(T_s);
  const Re = filmReynoldsWavyVertical(L, dT, h_fg, rho_l, k_l, mu_l, cp_l, STANDARD_GRAVITY);
  return Re > WAVY_FILM_REYNOLDS
    ? filmCoefficientWavyVertical(L, dT, h_fg, rho_l, k_l, mu_l, cp_l, STANDARD_GRAVITY)
    : filmCoefficientNusseltVertical(
        L,
        dT,
        h_fg,
        rho_l,
        tableVapourDensity(T_s),
        k_l,
        mu_l,
        cp_l,
        VERTICAL_SUBCOOLING,
        STANDARD_GRAVITY,
      );
}
