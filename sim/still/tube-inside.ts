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

/** Rohsenow’s subcooling factor in h′ = h_fg + c c_p ΔT for vertical films. */
export const VERTICAL_SUBCOOLING = 0.68;
const WAVY_FILM_REYNOLDS = 30;
/** Below this J_G the film counts as stratified, wherever the transition lies. */
const SHEAR_VELOCITY = 1.5;

/** The relations among which the film chooses, by their names in the desk reference. */
export type InsideRelation =
  | 'film-coefficient-chato'
  | 'film-coefficient-cavallini'
  | 'film-coefficient-nusselt-vertical'
  | 'film-coefficient-wavy-vertical';

/**
 * The film in one piece of tube, with the terms of its last evaluation, by the symbols of the relations: what it was
 * given, the properties of the water in it, which relation decided, and the coefficient.
 */
export class InsideFilm {
  relation: InsideRelation = 'film-coefficient-chato';
  /** Dew temperature less inner wall, K, at least a thousandth. */
  dT = NaN;
  /** Of a sloping tube: bore, m, vapour mass flux at the inlet, kg/m²s, and share of it left. */
  D_i = NaN;
  G = NaN;
  x = NaN;
  /** Of an upright tube: condensing length, m. */
  L = NaN;
  rho_l = NaN;
  rho_v = NaN;
  k_l = NaN;
  mu_l = NaN;
  mu_v = NaN;
  cp_l = NaN;
  h_fg = NaN;
  /** W/m²K. */
  coefficient = NaN;

  private between(T_s: number, T_w: number): void {
    this.dT = Math.max(1e-3, T_s - T_w);
    const film = T_s - this.dT / 2;
    this.rho_l = tableLiquidDensity(film);
    this.rho_v = tableVapourDensity(T_s);
    this.k_l = tableLiquidConductivity(film);
    this.mu_l = tableLiquidViscosity(film);
    this.cp_l = tableLiquidHeatCapacity(film);
    this.h_fg = tableLatentHeat(T_s);
  }

  /**
   * Film coefficient in a sloping or coiled tube, W/m²K.
   * @param D_i bore, m @param T_s dew temperature, K @param T_w inner wall, K @param G vapour mass flux at the inlet,
   * kg/m²s @param x vapour share left
   */
  sloping(D_i: number, T_s: number, T_w: number, G: number, x: number): number {
    this.between(T_s, T_w);
    const { dT, h_fg, rho_l, rho_v, k_l, mu_l, cp_l } = this;
    const g = STANDARD_GRAVITY;
    this.D_i = D_i;
    this.G = G;
    this.x = x;
    const J_G = dimensionlessVapourVelocity(G, x, D_i, rho_l, rho_v, g);
    this.relation = 'film-coefficient-chato';
    this.coefficient = filmCoefficientChato(D_i, dT, h_fg, rho_l, rho_v, k_l, mu_l, cp_l, g);
    if (J_G < SHEAR_VELOCITY) return this.coefficient;
    const mu_v = tableVapourViscosity(T_s);
    this.mu_v = mu_v;
    if (J_G < cavalliniTransition(x, rho_l, rho_v, mu_l, mu_v)) return this.coefficient;
    const sheared = filmCoefficientCavallini(G, x, D_i, dT, h_fg, rho_l, rho_v, k_l, mu_l, mu_v, cp_l, g);
    this.coefficient = Math.max(this.coefficient, sheared);
    if (this.coefficient === sheared) this.relation = 'film-coefficient-cavallini';
    return this.coefficient;
  }

  /**
   * Mean film coefficient in an upright tube over its condensing length L, W/m²K; other arguments as `sloping`.
   * The vapour's help or hindrance is left out.
   */
  upright(L: number, T_s: number, T_w: number): number {
    this.between(T_s, T_w);
    const { dT, h_fg, rho_l, rho_v, k_l, mu_l, cp_l } = this;
    const g = STANDARD_GRAVITY;
    this.L = L;
    if (filmReynoldsWavyVertical(L, dT, h_fg, rho_l, k_l, mu_l, cp_l, g) > WAVY_FILM_REYNOLDS) {
      this.relation = 'film-coefficient-wavy-vertical';
      this.coefficient = filmCoefficientWavyVertical(L, dT, h_fg, rho_l, k_l, mu_l, cp_l, g);
    } else {
      this.relation = 'film-coefficient-nusselt-vertical';
      this.coefficient = filmCoefficientNusseltVertical(
        L,
        dT,
        h_fg,
        rho_l,
        rho_v,
        k_l,
        mu_l,
        cp_l,
        VERTICAL_SUBCOOLING,
        g,
      );
    }
    return this.coefficient;
  }
}
