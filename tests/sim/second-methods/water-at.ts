/** Properties that the calculations by hand need, from the IAPWS formulations. */
import * as water from '../../../sim/fluids/water.ts';

export const G = 9.80665;

export interface Liquid {
  readonly rho: number;
  readonly k: number;
  readonly mu: number;
  readonly cp: number;
  readonly nu: number;
  readonly Pr: number;
}

/** Liquid water on the saturation line at T, K; SI. */
export function liquidAt(T: number): Liquid {
  const rho = water.liquidDensity(T);
  const k = water.liquidConductivity(T);
  const mu = water.liquidViscosity(T);
  const cp = water.liquidHeatCapacity(T);
  return { rho, k, mu, cp, nu: mu / rho, Pr: (mu * cp) / k };
}
