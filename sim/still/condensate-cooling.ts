/**
 * The condensate after the last vapour in one piece of tube: a rivulet in a sloping or coiled tube, a film on the whole
 * bore of an upright one, and the wall and water that take its heat.
 *
 * A rivulet touches the lower part of the bore only. Its heat passes the wall there and leaves by that part of the
 * outside, and by the dry wall above it as far as the metal conducts.
 */
import { isCoil } from '../geometry/condenser-kind.ts';
import { STANDARD_GRAVITY } from '../constants.ts';
import {
  tableLiquidConductivity,
  tableLiquidDensity,
  tableLiquidHeatCapacity,
  tableLiquidViscosity,
} from '../fluids/water-table.ts';
import { coilFall } from '../geometry/coil.ts';
import { findMaterial } from '../library/materials.ts';
import type { Scenario } from '../scenario/scenario.ts';
import { cylinderResistance } from '../transfer/conduction.ts';
import { fallingFilmConductance } from '../transfer/falling-film.ts';
import { rivuletConductance, rivuletConductanceCoil, rivuletHalfAngle, rivuletWallShare } from '../transfer/rivulet.ts';

/** Coldest water whose properties the condensate takes, K. */
const LEAST_TEMPERATURE = 275;
/** Least part of a piece over which the entry counts, however close to its end the last vapour condenses. */
const LEAST_STRETCH = 0.25;

/** Terms of the last evaluation for one piece of tube, by the symbols of the relations; lengths in m. */
export class CondensateFilm {
  /** Condensate in one tube, kg/s, and its temperature, K. */
  m = NaN;
  T = NaN;
  rho_l = NaN;
  mu_l = NaN;
  k_l = NaN;
  cp_l = NaN;
  /** Angle that a rivulet wets; π in an upright tube. */
  phi = NaN;
  /** Distances from the last vapour at which the piece begins and ends. */
  z_1 = NaN;
  z_2 = NaN;
  /** From condensate to wall, without the factor of the scenario, W/mK. */
  conductance = NaN;
  /** Film and fouling outside together, W/m²K, and the share of the outside that gives off the heat. */
  outside = NaN;
  share = NaN;
  /** Of the whole way, and of the film outside alone, per metre of one tube, mK/W. */
  resistance = NaN;
  outerResistance = NaN;
}

/** The tube as its condensate sees it. */
export class CondensateCooling {
  readonly upright: boolean;
  /** Slope, rad, and diameter of the coil, m; infinite for a straight tube. */
  readonly slope: number;
  readonly coilDiameter: number;
  readonly curvature: number;
  readonly factor: number;
  readonly wallThickness: number;
  readonly wallConductivity: number;
  /** Fouling, m²K/W. */
  readonly fouling: number;
  private readonly D_i: number;
  private readonly D_o: number;
  private readonly wallResistance: number;

  constructor({ condenser, factors }: Scenario) {
    const coil = isCoil(condenser);
    this.upright = !coil && condenser.orientation === 'upright';
    this.slope = coil ? Math.asin(coilFall(condenser.coilDiameter_m, condenser.coilPitch_m)) : condenser.slope_rad;
    this.coilDiameter = coil ? condenser.coilDiameter_m : Infinity;
    this.curvature = factors.curvature;
    this.factor = factors.rivulet;
    this.D_i = condenser.insideDiameter_m;
    this.D_o = condenser.outsideDiameter_m;
    this.wallThickness = 0.5 * (this.D_o - this.D_i);
    this.wallConductivity = findMaterial(condenser.material).conductivity_W_mK.value;
    this.wallResistance = cylinderResistance(this.D_i, this.D_o, this.wallConductivity);
    this.fouling = condenser.fouling_m2K_W * factors.fouling;
  }

  /**
   * Works out one piece.
   * @param m condensate in one tube, kg/s; @param T its temperature, K
   * @param from distance of the piece's beginning from the last vapour, m, negative before it; @param length of the piece
   * @param outside film on the water side, W/m²K
   */
  evaluate(film: CondensateFilm, m: number, T: number, from: number, length: number, outside: number): void {
    const { D_i, D_o } = this;
    film.m = m;
    film.T = Math.max(LEAST_TEMPERATURE, T);
    film.rho_l = tableLiquidDensity(film.T);
    film.mu_l = tableLiquidViscosity(film.T);
    film.k_l = tableLiquidConductivity(film.T);
    film.cp_l = tableLiquidHeatCapacity(film.T);
    film.z_1 = Math.max(0, from);
    film.z_2 = from + length > 0 ? Math.max(film.z_1 + LEAST_STRETCH * length, from + length) : length;
    film.outside = 1 / (1 / outside + this.fouling);
    if (this.upright) {
      film.phi = Math.PI;
      film.share = 1;
      film.conductance = fallingFilmConductance(m, D_i, film.rho_l, film.mu_l, film.k_l, STANDARD_GRAVITY);
    } else {
      film.phi = rivuletHalfAngle(m, D_i, this.slope, film.rho_l, film.mu_l, STANDARD_GRAVITY);
      film.share = rivuletWallShare(film.phi, D_i, this.wallThickness, this.wallConductivity, film.outside);
      film.conductance = this.rivulet(film);
    }
    film.outerResistance = 1 / (outside * Math.PI * D_o * film.share);
    film.resistance =
      1 / (this.factor * film.conductance) +
      (this.wallResistance * Math.PI) / film.phi +
      1 / (film.outside * Math.PI * D_o * film.share);
  }

  private rivulet({ phi, m, z_1, z_2, mu_l, k_l, cp_l }: CondensateFilm): number {
    return this.coilDiameter < Infinity
      ? rivuletConductanceCoil(phi, m, this.D_i, this.coilDiameter, this.curvature, z_1, z_2, mu_l, k_l, cp_l)
      : rivuletConductance(phi, m, this.D_i, z_1, z_2, mu_l, k_l, cp_l);
  }
}
