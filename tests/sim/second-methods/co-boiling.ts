/** Two liquids that do not mix, by hand: the temperature by halving an interval, pressures by IF97 and Antoine. */
import { region4SaturationPressure } from '../../../sim/fluids/if97-region4.ts';

const WATER = 0.018015268;

/** Antoine coefficients with ln(p/Pa) = A − B/(T + C), and molar mass in kg/mol. */
export interface Antoine {
  readonly A: number;
  readonly B: number;
  readonly C: number;
  readonly molarMass: number;
}

/** Boiling point in K at P, pressure of the oil in Pa, and kg of water with a kilogram of oil. */
export function boilTogether({ A, B, C, molarMass }: Antoine, P: number) {
  const oilAt = (T: number): number => Math.exp(A - B / (T + C));
  let [cold, hot] = [300, 373.2];
  for (let step = 0; step < 60; step++) {
    const T = (cold + hot) / 2;
    if (oilAt(T) + region4SaturationPressure(T) > P) hot = T;
    else cold = T;
  }
  const oil = oilAt(cold);
  return { T: cold, oil, waterPerOil: ((P - oil) * WATER) / (oil * molarMass) };
}
