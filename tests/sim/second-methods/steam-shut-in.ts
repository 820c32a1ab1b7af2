/** Steam at a vent and in a closed pot by hand, with IAPWS-IF97. SI. */
import { region1State } from '../../../sim/fluids/if97-region1.ts';
import { region2State } from '../../../sim/fluids/if97-region2.ts';
import { region4SaturationPressure, region4SaturationTemperature } from '../../../sim/fluids/if97-region4.ts';

const OUTSIDE = 101_325;
const C_D = 0.62;
const K = 1.32;

/** Steam through a sharp hole with the expansibility of ISO 5167 for a small orifice, kg/s. */
export function orifice(d: number, dp: number): number {
  const p = OUTSIDE + dp;
  const rho = 1 / region2State(region4SaturationTemperature(p), p).volume;
  const Y = 1 - 0.351 * (1 - (OUTSIDE / p) ** (1 / K));
  return C_D * (Math.PI / 4) * d ** 2 * Y * (2 * rho * dp) ** 0.5;
}

/** Mass flux through a sharp hole by isentropic expansion, from the speed and density at the outside, kg/m²s. */
export function isentropicFlux(dp: number): number {
  const p = OUTSIDE + dp;
  const T = region4SaturationTemperature(p);
  const R = 461.5;
  const T_out = T * (OUTSIDE / p) ** ((K - 1) / K);
  const speed = (2 * (K / (K - 1)) * R * (T - T_out)) ** 0.5;
  return C_D * speed * (OUTSIDE / (R * T_out));
}

/** Heat that takes a closed pot of volume V with m of liquid and metal of C from the boil at p_0 up by dp, J. */
export function closedPotHeat(m: number, V: number, C: number, p_0: number, dp: number): number {
  const at = (p: number) => {
    const T = region4SaturationTemperature(p);
    const p_s = region4SaturationPressure(T);
    const [liquid, steam] = [region1State(T, p_s), region2State(T, p_s)];
    return {
      T,
      v: [liquid.volume, steam.volume] as const,
      u: [liquid.enthalpy - p_s * liquid.volume, steam.enthalpy - p_s * steam.volume] as const,
    };
  };
  const [cold, hot] = [at(p_0), at(p_0 + dp)];
  const steamCold = (V - m * cold.v[0]) / cold.v[1];
  const mass = m + steamCold;
  const steamHot = (V - mass * hot.v[0]) / (hot.v[1] - hot.v[0]);
  return (
    mass * hot.u[0] + steamHot * (hot.u[1] - hot.u[0]) - m * cold.u[0] - steamCold * cold.u[1] + C * (hot.T - cold.T)
  );
}
