/**
 * A whole condenser tube by hand: Chato inside, the wall, the water outside, the two wall temperatures found by going
 * round until they stand. Where the reference halves an interval, this goes round with half steps.
 */
import * as water from '../../../sim/fluids/water.ts';
import { chato } from './condensing-steam.ts';
import { tubeInWater } from './outside-films.ts';
import { annulus } from './vdi-forms.ts';
import { liquidAt } from './water-at.ts';

interface Tube {
  readonly D_i: number;
  readonly D_o: number;
  readonly k: number;
}

/** W/m of tube from steam at T_s to water at T_c, and the outer wall in K. */
function chain(T_s: number, T_c: number, { D_i, D_o, k }: Tube, outside: (T_w: number) => number) {
  const wall = Math.log(D_o / D_i) / (2 * Math.PI * k);
  let T_wi = T_s - 5;
  let T_wo = T_s - 6;
  let perMetre = 0;
  for (let pass = 0; pass < 400; pass++) {
    const inner = 1 / (chato(T_s, T_wi, D_i) * Math.PI * D_i);
    const outer = 1 / (outside(T_wo) * Math.PI * D_o);
    perMetre = (T_s - T_c) / (inner + wall + outer);
    T_wi = 0.5 * (T_wi + T_s - perMetre * inner);
    T_wo = 0.5 * (T_wo + T_c + perMetre * outer);
  }
  return { perMetre, T_wo };
}

/** A coil turn in still water: U on the outside in W/m²K, outer wall in K, heat in W/m. */
export function inTub(T_s: number, T_c: number, tube: Tube) {
  const { perMetre, T_wo } = chain(T_s, T_c, tube, (T_w) => tubeInWater(T_w, T_c, tube.D_o));
  return { U: perMetre / (Math.PI * tube.D_o * (T_s - T_c)), T_wo, perMetre };
}

/** Length of coil that condenses m kg/s in still water of one temperature, m. */
export const coilLength = (m: number, T_s: number, T_c: number, tube: Tube): number =>
  (m * water.latentHeat(T_s)) / inTub(T_s, T_c, tube).perMetre;

/** A straight jacketed tube that condenses m kg/s with m_c kg/s of water from T_in. */
export function inJacket(m: number, m_c: number, T_in: number, T_s: number, D_s: number, tube: Tube) {
  const duty = m * water.latentHeat(T_s);
  let T_out = T_in;
  for (let pass = 0; pass < 50; pass++) T_out = T_in + duty / (m_c * water.liquidHeatCapacity((T_in + T_out) / 2));
  const { k, mu, Pr } = liquidAt((T_in + T_out) / 2);
  const Re = (4 * m_c) / (Math.PI * (D_s + tube.D_o) * mu);
  const difference = (T_out - T_in) / Math.log((T_s - T_in) / (T_s - T_out));
  let L = 1;
  let h_o = 0;
  for (let pass = 0; pass < 100; pass++) {
    h_o = (annulus(Re, Pr, tube.D_o, D_s, L) * k) / (D_s - tube.D_o);
    const film = h_o;
    L = duty / chain(T_s, T_s - difference, tube, () => film).perMetre;
  }
  return { T_out, Re, h_o, U: duty / (Math.PI * tube.D_o * L * difference), L };
}
