import { type Argument, type Correlation, positionalCorrelation } from '../correlation.ts';

/**
 * Resistance of a cylindrical shell per metre of tube, m K/W: ln(D_o/D_i)/(2π k). Tube wall, insulation, scale.
 * @param D_i, D_o inner and outer diameter, m; @param k conductivity, W/mK. Equal diameters give 0. Exact (Fourier).
 */
export const cylinderResistance = (D_i: number, D_o: number, k: number): number =>
  Math.log(D_o / D_i) / (2 * Math.PI * k);

/** Resistance of a flat layer, m²K/W: thickness/k. Exact (Fourier). */
export const planeResistance = (thickness: number, k: number): number => thickness / k;

/**
 * Overall coefficient on the outside area of a tube, W/m²K: film inside, wall and film outside in series:
 * 1/U = D_o/(h_i D_i) + D_o ln(D_o/D_i)/(2k) + R_f + 1/h_o.
 *
 * @param h_i, h_o film coefficients, W/m²K; either at or below zero gives 0
 * @param D_i, D_o bore and outside diameter, m; @param k wall conductivity, W/mK
 * @param R_f fouling on the outside area, m²K/W. Exact for a long tube.
 */
export const overallOutsideCoefficient = (
  h_i: number,
  h_o: number,
  D_i: number,
  D_o: number,
  k: number,
  R_f: number,
): number => (h_i > 0 && h_o > 0 ? 1 / (D_o / (h_i * D_i) + (D_o * Math.log(D_o / D_i)) / (2 * k) + R_f + 1 / h_o) : 0);

const shell: Readonly<Record<string, Argument>> = {
  D_i: { unit: 'm', says: 'inner diameter' },
  D_o: { unit: 'm', says: 'outer diameter' },
};
const conductivity: Argument = { unit: 'W/(m K)', says: 'conductivity of the solid' };
const source = 'Fourier; Incropera et al. 6e section 3.3';
const outside = 'exact; no limits';

export const conductionCorrelations: readonly Correlation[] = [
  positionalCorrelation(
    {
      name: 'cylinder-resistance',
      says: 'Thermal resistance of a tube wall or a layer of insulation, per metre of tube.',
      arguments: { ...shell, k: conductivity },
      result: { symbol: 'R′', unit: 'm K/W' },
      tex: "R' = \\frac{\\ln(D_o/D_i)}{2\\pi k}",
      source,
      outside,
    },
    cylinderResistance,
  ),
  positionalCorrelation(
    {
      name: 'plane-resistance',
      says: 'Thermal resistance of a flat layer, per square metre.',
      arguments: { thickness: { unit: 'm', says: 'thickness' }, k: conductivity },
      result: { symbol: 'R″', unit: 'm² K/W' },
      tex: "R'' = \\frac{s}{k}",
      source,
      outside,
    },
    planeResistance,
  ),
  positionalCorrelation(
    {
      name: 'overall-outside-coefficient',
      says: 'Overall coefficient of a tube on its outside area, from the films, the wall and fouling.',
      arguments: {
        h_i: { unit: 'W/(m² K)', says: 'film coefficient inside' },
        h_o: { unit: 'W/(m² K)', says: 'film coefficient outside' },
        ...shell,
        k: conductivity,
        R_f: { unit: 'm² K/W', says: 'fouling on the outside area' },
      },
      result: { symbol: 'U_o', unit: 'W/(m² K)' },
      tex: '\\frac{1}{U_o} = \\frac{D_o}{h_iD_i}+\\frac{D_o\\ln(D_o/D_i)}{2k}+R_f+\\frac{1}{h_o}',
      source: 'Incropera et al. 6e eq. 11.1',
      outside: 'zero when a film coefficient is not positive',
    },
    overallOutsideCoefficient,
  ),
];
