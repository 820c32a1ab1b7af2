/**
 * Pressure that the vapour loses in the tubes of the condenser: Müller-Steinhagen–Heck, averaged in closed form over the
 * length that condenses, and all liquid after it.
 */
import {
  tableLiquidDensity,
  tableLiquidViscosity,
  tableVapourDensity,
  tableVapourViscosity,
} from '../fluids/water-table.ts';
import { frictionGradient, meanTwoPhaseGradient } from '../transfer/pressure-drop.ts';
import type { CondenserTerms } from './condenser-terms.ts';
import { HIGHEST_GAUGE } from './pot.ts';

export class TubeFriction {
  private readonly D_i: number;
  private readonly length: number;
  /** Section of all tubes, m². */
  private readonly section: number;

  /** @param tubes side by side, @param D_i their bore and @param length each one's length, m */
  constructor(tubes: number, D_i: number, length: number) {
    this.D_i = D_i;
    this.length = length;
    this.section = tubes * (Math.PI / 4) * D_i ** 2;
  }

  /** Flux in each tube for a rate into all of them, kg/m²s. */
  massFlux(rate: number): number {
    return rate / this.section;
  }

  /**
   * Drop, Pa, at most `HIGHEST_GAUGE`; none without vapour.
   * @param rate vapour, kg/s, @param T_s dew temperature, K, @param escapingShare of the vapour at the outlet,
   * @param condensingLength m
   */
  drop(rate: number, T_s: number, escapingShare: number, condensingLength: number, terms: CondenserTerms): number {
    if (!(rate > 0)) return 0;
    const { D_i } = this;
    const G = this.massFlux(rate);
    const liquid = frictionGradient(G, D_i, tableLiquidDensity(T_s), tableLiquidViscosity(T_s), 0);
    const steam = frictionGradient(G, D_i, tableVapourDensity(T_s), tableVapourViscosity(T_s), 0);
    const mean = meanTwoPhaseGradient(liquid, steam, 1, escapingShare);
    terms.liquidGradient = liquid;
    terms.steamGradient = steam;
    terms.meanGradient = mean;
    terms.escapingShare = escapingShare;
    return Math.min(HIGHEST_GAUGE, condensingLength * mean + (this.length - condensingLength) * liquid);
  }
}
